package dev.penstock.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The JSON object that a request carries. A body that is not sent in full holds a thread until its patience ends; so no browser sends
 * more than {@value #MOST_SENDING} at once, and all together no more than leave threads for others.
 */
final class RequestBody {

    /** Far more than the connections that a browser opens. */
    static final int MOST_SENDING = 16;

    /** Fewer than half the threads that the server has for requests. */
    private static final int MOST_IN_ALL = 96;

    private static final int LARGEST = 2 * Workspace.LARGEST;
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Clients whose bodies are being read, and how many of each. */
    private static final Map<String, Integer> SENDING = new HashMap<>();

    private final JsonNode object;

    private RequestBody(JsonNode object) {
        this.object = object;
    }

    /**
     * @param request request
     * @return its object
     * @throws Refusal if it is too large, or no object, or if too many are being sent
     */
    static RequestBody of(Context request) {
        byte[] bytes;
        String client = Gate.client(request);
        begin(client);
        try {
            bytes = LoopbackConnector.read(request.req(), RequestBody::read);
        } catch (IOException e) {
            throw new Refusal(400, "the request broke off");
        } finally {
            end(client);
        }
        if (bytes.length > LARGEST) {
            throw new Refusal(413, "a request may hold " + LARGEST / 1024 + " KiB");
        }
        try {
            JsonNode node = JSON.readTree(new String(bytes, java.nio.charset.StandardCharsets.UTF_8));
            if (node != null && node.isObject()) {
                return new RequestBody(node);
            }
        } catch (JsonProcessingException e) {
            throw new Refusal(400, "the request is not JSON");
        }
        throw new Refusal(400, "the request is not a JSON object");
    }

    private static void begin(String client) {
        synchronized (SENDING) {
            int all = SENDING.values().stream().mapToInt(Integer::intValue).sum();
            if (all >= MOST_IN_ALL || SENDING.getOrDefault(client, 0) >= MOST_SENDING) {
                throw new Refusal(503, "too many requests are half sent; send this one again");
            }
            SENDING.merge(client, 1, Integer::sum);
        }
    }

    private static void end(String client) {
        synchronized (SENDING) {
            SENDING.computeIfPresent(client, (name, count) -> count == 1 ? null : count - 1);
        }
    }

    /** Reads it all, but neither more than is allowed nor for longer than anybody needs to send it. */
    private static byte[] read(InputStream in) throws IOException {
        long end = System.nanoTime() + LoopbackConnector.REQUEST_PATIENCE.toNanos();
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] part = new byte[8192];
        for (int n = in.read(part); n >= 0 && all.size() <= LARGEST; n = in.read(part)) {
            all.write(part, 0, n);
            if (System.nanoTime() - end > 0) {
                throw new Refusal(
                        408, "a request must be sent within " + LoopbackConnector.REQUEST_PATIENCE.toSeconds() + " s");
            }
        }
        return all.toByteArray();
    }

    /**
     * @param name name of a field
     * @return its text; empty if there is none
     */
    String text(String name) {
        return object.path(name).asText("");
    }

    long number(String name) {
        return object.path(name).asLong(0);
    }

    double decimal(String name) {
        return object.path(name).asDouble(0);
    }

    /**
     * @param name name of a field that holds a list of numbers
     * @return the numbers; none if there is no such list
     */
    List<Double> decimals(String name) {
        List<Double> numbers = new ArrayList<>();
        object.path(name).forEach(element -> numbers.add(element.asDouble(0)));
        return numbers;
    }

    boolean flag(String name) {
        return object.path(name).asBoolean(false);
    }

    /**
     * @param name name of a field that holds a list of texts
     * @return the texts; none if there is no such list
     */
    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        object.path(name).forEach(element -> texts.add(element.asText("")));
        return texts;
    }

    /**
     * @param name name of a field that holds values by dotted path
     * @return the values; an empty one takes out what stands at its path
     * @throws Refusal if a path is none
     */
    Map<String, String> changes(String name) {
        Map<String, String> changes = new LinkedHashMap<>();
        object.path(name).properties().forEach(field -> {
            String value = field.getValue().asText("").strip();
            if (!field.getKey().matches("[\\w-]+(\\[\\d+])?(\\.[\\w-]+(\\[\\d+])?)*")) {
                throw new Refusal(422, field.getKey() + " is no path of an input");
            }
            changes.put(field.getKey(), value);
        });
        return changes;
    }
}

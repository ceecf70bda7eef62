package dev.penstock.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The JSON object that a request carries. */
final class RequestBody {

    private static final int LARGEST = 2 * Workspace.LARGEST;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonNode object;

    private RequestBody(JsonNode object) {
        this.object = object;
    }

    /**
     * @param request request
     * @return its object
     * @throws Refusal if it is too large, or no object
     */
    static RequestBody of(Context request) {
        byte[] bytes;
        try {
            bytes = LoopbackConnector.read(request.req(), RequestBody::read);
        } catch (IOException e) {
            throw new Refusal(400, "the request broke off");
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

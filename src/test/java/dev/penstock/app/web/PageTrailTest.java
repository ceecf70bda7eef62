package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import dev.penstock.quantities.Constants;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number on a page opens where it comes from, and what opens is that number. */
class PageTrailTest {

    private static final Pattern SHOWN =
            Pattern.compile("(?:at most |at least |± )?([-+−]?[\\d.]+(?:e[-+]?\\d+)?)\\s*(.*)");
    private static final Pattern IN_TITLE = Pattern.compile(".*\\((.+)\\)");
    private static final Map<String, Double> SCALE = Map.ofEntries(
            Map.entry("", 1.0),
            Map.entry("s", 1.0),
            Map.entry("K", 1.0),
            Map.entry("m/s", 1.0),
            Map.entry("times the limit", 1.0),
            Map.entry("kg", 1.0),
            Map.entry("kg/s", 1.0),
            Map.entry("m", 1.0),
            Map.entry("m³", 1.0),
            Map.entry("t", 1e3),
            Map.entry("%", 1e-2),
            Map.entry("mm", 1e-3),
            Map.entry("bar", 1e5),
            Map.entry("kPa", 1e3),
            Map.entry("m/s²", 1.0),
            Map.entry("kN", 1e3),
            Map.entry("kJ/kg", 1e3),
            Map.entry("W", 1.0),
            Map.entry("kW", 1e3),
            Map.entry("MW", 1e6),
            Map.entry("MW/m²", 1e6),
            Map.entry("rpm", 2 * Math.PI / 60));

    private static Served served;

    @TempDir
    static Path folder;

    /** A number as shown. */
    private record Shown(String text, String unit, String path) {}

    @BeforeAll
    static void serve() throws IOException {
        served = new Served(folder);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    static List<String> concepts() {
        List<String> files = new ArrayList<>();
        Served.json(served.get("/api/files")).get("concepts").forEach(f -> files.add(f.asText()));
        return files;
    }

    @ParameterizedTest
    @MethodSource("concepts")
    void everyNumberOfAConceptOpens(String file) throws IOException {
        ObjectNode question = Served.JSON.createObjectNode().put("file", file).put("text", served.text(file));
        question.putObject("changes");
        HttpResponse<String> answer = served.post("/api/balance", question.toString());
        assertThat(answer.body().length()).as("bytes before the figures show").isLessThan(130_000);
        JsonNode balance = Served.json(answer);
        List<Shown> numbers = new ArrayList<>();
        balance.get("measures").forEach(m -> numbers.add(shown(m, "")));
        numbers.add(shown(balance.get("residual"), ""));
        for (JsonNode limit : balance.get("limits")) {
            numbers.add(shown(limit.get("value"), ""));
            numbers.add(shown(limit.get("bound"), ""));
            numbers.add(shown(limit.get("margin"), ""));
        }
        balance.get("tables").forEach(table -> addTable(table, numbers));
        JsonNode cooling = Served.json(served.post("/api/cooling", question.toString()));
        cooling.path("tables").forEach(table -> addTable(table, numbers));
        assertThat(numbers).hasSizeGreaterThan(40);
        check(numbers, "/api/why", question);
    }

    @Test
    void aConceptSideBySideOpensItsNumbersByItsFile() {
        JsonNode concept = Served.json(served.post("/api/together", "{\"files\":[\"dunlin.toml\"]}"))
                .get("concepts")
                .get(0);
        List<Shown> numbers = new ArrayList<>();
        concept.get("measures").forEach(m -> numbers.add(shown(m, "")));
        ObjectNode question = Served.JSON.createObjectNode().put("file", "dunlin.toml");
        check(numbers, "/api/why", question);
        question.put("path", concept.at("/binding/path").asText());
        assertThat(served.post("/api/why", question.toString()).statusCode()).isEqualTo(200);
    }

    static List<String> vehicles() {
        List<String> files = new ArrayList<>();
        Served.json(served.get("/api/files")).get("vehicles").forEach(f -> files.add(f.asText()));
        return files;
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void everyNumberOfAVehicleOpens(String file) {
        ObjectNode question = Served.JSON.createObjectNode().put("file", file);
        checkVehicle(Served.json(served.post("/api/vehicle", question.toString())), question);
    }

    @Test
    void everyNumberOfAFlightOpens() throws InterruptedException {
        ObjectNode question = Served.JSON.createObjectNode().put("file", "vehicles/skerry.toml");
        String id = Served.json(served.post("/api/flight", question.toString()))
                .get("id")
                .asText();
        while (Served.json(served.get("/api/flight/" + id)).get("running").asBoolean()) {
            Thread.sleep(100);
        }
        JsonNode flown = Served.json(served.get("/api/flight/" + id + "/result"));
        assertThat(flown.get("flown").asBoolean()).isTrue();
        checkVehicle(flown, question.put("flight", id));
    }

    private static void checkVehicle(JsonNode answer, ObjectNode question) {
        List<Shown> numbers = new ArrayList<>();
        answer.get("measures").forEach(m -> numbers.add(shown(m, "")));
        answer.get("tables").forEach(table -> addTable(table, numbers));
        assertThat(numbers).hasSizeGreaterThan(30);
        check(numbers, "/api/vehicle/why", question);
    }

    private static void addTable(JsonNode table, List<Shown> numbers) {
        JsonNode columns = table.get("columns");
        for (JsonNode row : table.get("rows")) {
            String rowUnit = "";
            for (int i = 0; i < columns.size(); i++) {
                if (columns.get(i).path("title").asText().equals("unit")) {
                    JsonNode cell = row.get("cells").get(i);
                    rowUnit =
                            cell.isTextual() ? cell.asText() : cell.path("text").asText();
                }
            }
            for (int i = 0; i < columns.size(); i++) {
                String title = columns.get(i).get("title").asText();
                // A row of totals has no number below some of the titles.
                boolean number = !row.get("cells").get(i).equals(TextNode.valueOf(""));
                if (number && !columns.get(i).get("text").asBoolean() && !title.equals("no.")) {
                    Matcher unit = IN_TITLE.matcher(title);
                    numbers.add(shown(row.get("cells").get(i), unit.matches() ? unit.group(1) : rowUnit));
                }
            }
        }
    }

    private static Shown shown(JsonNode cell, String unit) {
        assertThat(cell.path("path").asText()).as("trail of %s", cell).isNotEmpty();
        return new Shown(cell.get("text").asText(), unit, cell.get("path").asText());
    }

    /** Identity: the number shown, read back in its unit, is the one that the trail explains, to the digits shown. */
    private static void check(List<Shown> numbers, String address, ObjectNode question) {
        List<String> faults = new ArrayList<>();
        // A number that is shown in several places is asked for once.
        Map<String, HttpResponse<String>> answers = new HashMap<>();
        for (Shown number : numbers) {
            HttpResponse<String> answer = answers.computeIfAbsent(
                    number.path(),
                    path -> served.post(address, question.put("path", path).toString()));
            if (answer.statusCode() != 200) {
                faults.add(number + " does not open: " + answer.body());
                continue;
            }
            JsonNode step = Served.json(answer);
            double explained = step.get("value").asDouble();
            if (number.text().equals("over 999 %") && explained > 9.99) {
                continue;
            }
            Matcher text = SHOWN.matcher(number.text());
            if (!text.matches()) {
                faults.add(number + " does not read as a number");
                continue;
            }
            String unit = text.group(2).isEmpty() ? number.unit() : text.group(2);
            boolean seconds = unit.equals("s") && step.get("unit").asText().equals("m/s");
            double scale = seconds ? Constants.STANDARD_GRAVITY : SCALE.getOrDefault(unit, 1.0);
            double value = scale * Double.parseDouble(text.group(1).replace('−', '-'));
            if (Math.abs(value - explained) > 5e-3 * Math.abs(explained) + lastDigit(text.group(1)) * scale) {
                faults.add(number + " shows " + value + ", explained is " + explained + " " + step.get("unit"));
            }
            if (step.at("/model/equation").asText().isEmpty()
                    || step.at("/model/sources").isEmpty()) {
                faults.add(number + " has no equation or source");
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Half a unit of the last digit shown, and a little for rounding twice. */
    private static double lastDigit(String number) {
        int dot = number.indexOf('.');
        return dot < 0 ? 0.51 : 0.51 * Math.pow(10, -(number.length() - dot - 1));
    }
}

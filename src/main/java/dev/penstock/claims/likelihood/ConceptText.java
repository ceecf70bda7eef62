package dev.penstock.claims.likelihood;

import java.util.LinkedHashMap;
import java.util.Map;

/** Writes what is certain of a hypothesis as the text of a concept file. */
final class ConceptText {

    private ConceptText() {}

    static String of(String name, Hypothesis hypothesis, Map<String, String> given, boolean vehicle) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("propellants.oxidizer", '"' + hypothesis.oxidizer().id() + '"');
        all.put("propellants.fuel", '"' + hypothesis.fuel().id() + '"');
        if (hypothesis.cycle().traits().livesOnJacketHeat()) {
            all.put("cooling.coolant", "\"fuel\"");
        }
        if (vehicle) {
            all.put("vehicle.stages", "1");
        }
        all.putAll(given);
        StringBuilder text = new StringBuilder();
        text.append("name = \"")
                .append(name.replace("\\", "").replace("\"", ""))
                .append("\"\n");
        text.append("cycle = \"").append(hypothesis.cycle().id()).append("\"\n");
        tables(all).forEach((table, keys) -> {
            text.append("\n[").append(table).append("]\n");
            keys.forEach(
                    (key, value) -> text.append(key).append(" = ").append(value).append('\n'));
        });
        return text.toString();
    }

    /** Keys with their values by table, both in the order of the paths. */
    static Map<String, Map<String, String>> tables(Map<String, String> values) {
        Map<String, Map<String, String>> tables = new LinkedHashMap<>();
        values.forEach((path, value) -> {
            int dot = path.lastIndexOf('.');
            tables.computeIfAbsent(dot < 0 ? "" : path.substring(0, dot), t -> new LinkedHashMap<>())
                    .put(path.substring(dot + 1), value);
        });
        return tables;
    }
}

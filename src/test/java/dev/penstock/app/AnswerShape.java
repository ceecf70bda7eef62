package dev.penstock.app;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What documents of one kind have in common, as a JSON Schema: types, keys, and which keys all of them have. Not thread-safe. */
final class AnswerShape {

    /** Objects whose keys are names of what a case has or varies, not keys of ours. */
    private static final Set<String> NAMED = Set.of(
            "gas_temperatures_K",
            "inputs",
            "results",
            "values",
            "medians",
            "figures",
            "pumps",
            "turbines",
            "mole_fractions",
            "shares",
            "composition",
            "bounds");

    private final Set<String> types = new TreeSet<>();
    private final Map<String, AnswerShape> keys = new TreeMap<>();
    private final Map<String, Integer> seen = new TreeMap<>();
    private AnswerShape element;
    private AnswerShape named;
    private int objects;

    /** Takes another document, or part of one. */
    void add(JsonNode node, String key) {
        if (node.isObject()) {
            types.add("object");
            if (NAMED.contains(key)) {
                named = named == null ? new AnswerShape() : named;
                node.forEach(value -> named.add(value, ""));
                return;
            }
            objects++;
            node.fields().forEachRemaining(entry -> {
                seen.merge(entry.getKey(), 1, Integer::sum);
                keys.computeIfAbsent(entry.getKey(), k -> new AnswerShape()).add(entry.getValue(), entry.getKey());
            });
        } else if (node.isArray()) {
            types.add("array");
            for (JsonNode value : node) {
                element = element == null ? new AnswerShape() : element;
                element.add(value, "");
            }
        } else {
            types.add(node.isNumber() ? "number" : node.isBoolean() ? "boolean" : node.isNull() ? "null" : "string");
        }
    }

    /**
     * @param titles what keys of figures mean
     * @return the schema
     */
    Map<String, Object> schema(Map<String, String> titles) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("type", types.size() == 1 ? types.iterator().next() : List.copyOf(types));
        if (!keys.isEmpty()) {
            Map<String, Object> properties = new LinkedHashMap<>();
            List<String> required = new ArrayList<>();
            keys.forEach((key, shape) -> {
                Map<String, Object> inside = new LinkedHashMap<>();
                if (titles.containsKey(key)) {
                    inside.put("description", titles.get(key));
                }
                inside.putAll(shape.schema(titles));
                properties.put(key, inside);
                if (seen.get(key) == objects) {
                    required.add(key);
                }
            });
            map.put("properties", properties);
            if (!required.isEmpty()) {
                map.put("required", required);
            }
        }
        if (named != null) {
            map.put("additionalProperties", named.schema(titles));
        }
        if (element != null) {
            map.put("items", element.schema(titles));
        }
        return map;
    }
}

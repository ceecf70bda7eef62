package dev.penstock.input;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * Describes a file to editors: the declaration of its inputs as JSON Schema, draft 4, the highest that TOML editors are
 * known to read. What depends on other values of the file is left to the reader.
 */
public final class JsonSchema {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /** A number with a unit; which units fit is left to the reader. */
    private static final String WITH_UNIT = "^\\s*[-+]?(\\d[\\d_]*\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?\\s*[^\\s\\d.].*$";

    private static final String PLAIN = "^\\s*[-+]?(\\d[\\d_]*\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?\\s*\\D*$";

    private JsonSchema() {}

    /**
     * @param file declaration of a whole file
     * @return its schema
     */
    public static JsonNode of(InputGroup file) {
        ObjectNode schema = JSON.objectNode();
        schema.put("$schema", "http://json-schema.org/draft-04/schema#");
        schema.put("title", file.title());
        schema.setAll(table(file));
        return schema;
    }

    private static ObjectNode table(InputGroup group) {
        ObjectNode table = JSON.objectNode();
        table.put("type", "object");
        table.put("description", group.title() + ".");
        ObjectNode properties = table.putObject("properties");
        ArrayNode required = JSON.arrayNode();
        for (Input<?> input : group.inputs()) {
            properties.set(input.key(), property(input));
            if (input.silence() == Input.Silence.REQUIRED) {
                required.add(input.key());
            }
        }
        for (InputGroup inside : group.groups()) {
            properties.set(
                    inside.key(),
                    switch (inside.presence()) {
                        case REPEATED -> list(inside);
                        case NAMED -> named(inside);
                        case ALWAYS, IF_WRITTEN -> table(inside);
                    });
            if (inside.presence() == InputGroup.Presence.ALWAYS && mustBeWritten(inside)) {
                required.add(inside.key());
            }
        }
        if (!required.isEmpty()) {
            table.set("required", required);
        }
        if (group.free().isPresent()) {
            table.set("additionalProperties", kind(group.free().get()));
        } else {
            table.put("additionalProperties", false);
        }
        return table;
    }

    private static ObjectNode named(InputGroup group) {
        ObjectNode tables = JSON.objectNode();
        tables.put("type", "object");
        tables.set("additionalProperties", table(group));
        return tables;
    }

    private static ObjectNode list(InputGroup group) {
        ObjectNode list = JSON.objectNode();
        list.put("type", "array");
        list.set("items", table(group));
        return list;
    }

    private static boolean mustBeWritten(InputGroup group) {
        return group.inputs().stream().anyMatch(i -> i.silence() == Input.Silence.REQUIRED)
                || group.groups().stream()
                        .anyMatch(g -> g.presence() == InputGroup.Presence.ALWAYS && mustBeWritten(g));
    }

    private static <T> ObjectNode property(Input<T> input) {
        ObjectNode property = JSON.objectNode();
        String absent = input.whenAbsent().isEmpty() ? "" : " If left out: " + input.whenAbsent() + ".";
        property.put("description", input.title() + ": " + input.kind().allowed() + "." + absent);
        property.setAll(kind(input.kind()));
        input.usual()
                .filter(u -> !u.value().equals(""))
                .ifPresent(u -> property.set("default", value(input, u.value())));
        return property;
    }

    private static <T> JsonNode value(Input<T> input, T value) {
        if (value instanceof Boolean flag) {
            return JSON.booleanNode(flag);
        }
        if (value instanceof Integer whole) {
            return JSON.numberNode(whole);
        }
        if (value instanceof Double number && input.kind().unit().isEmpty()) {
            return JSON.numberNode(number);
        }
        if (value instanceof List<?>) {
            return JSON.arrayNode();
        }
        return value instanceof Double number
                ? JSON.textNode(Digits.readable(number, input.kind().unit()))
                : JSON.textNode(input.kind().text(value));
    }

    private static ObjectNode kind(InputKind<?> kind) {
        ObjectNode node = JSON.objectNode();
        if (kind instanceof InputKind.Quantity quantity) {
            return quantity(quantity);
        } else if (kind instanceof InputKind.Whole whole) {
            return node.put("type", "integer").put("minimum", whole.low()).put("maximum", whole.high());
        } else if (kind instanceof InputKind.Word word) {
            return words(word.names());
        } else if (kind instanceof InputKind.Choice<?> choice) {
            return words(choice.names());
        } else if (kind instanceof InputKind.Any) {
            return node;
        } else if (kind instanceof InputKind.Flag) {
            return node.put("type", "boolean");
        } else if (kind instanceof InputKind.Bounds) {
            return node.put("type", "array").put("minItems", 3).put("maxItems", 3);
        } else if (kind instanceof InputKind.Many<?> many) {
            ArrayNode either = node.putArray("anyOf");
            either.add(kind(many.element()));
            ObjectNode list = JSON.objectNode().put("type", "array");
            list.set("items", kind(many.element()));
            either.add(list);
            return node;
        }
        return node.put("type", "string");
    }

    private static ObjectNode quantity(InputKind.Quantity quantity) {
        ObjectNode text = JSON.objectNode().put("type", "string");
        if (!quantity.unit().isEmpty()) {
            return text.put("pattern", WITH_UNIT);
        }
        ObjectNode number = JSON.objectNode().put("type", "number");
        if (Double.isFinite(quantity.range().low())) {
            number.put("minimum", quantity.range().low());
        }
        if (Double.isFinite(quantity.range().high())) {
            number.put("maximum", quantity.range().high());
        }
        ObjectNode node = JSON.objectNode();
        node.putArray("anyOf").add(number).add(text.put("pattern", PLAIN));
        return node;
    }

    private static ObjectNode words(List<String> names) {
        ObjectNode node = JSON.objectNode().put("type", "string");
        ArrayNode words = node.putArray("enum");
        names.forEach(words::add);
        return node;
    }
}

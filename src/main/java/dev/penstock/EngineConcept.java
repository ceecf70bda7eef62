package dev.penstock;

import dev.penstock.errors.InvalidInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * What is asked of an engine: the keys of a concept file with their values. It may start from a file, from TOML text, or from
 * nothing but a name. Keys, dimensions, ranges and defaults are those of a concept file, and are checked in the same way when the
 * concept is put to {@link Penstock}; {@code penstock new} writes a file with all of them. Immutable.
 *
 * <pre>{@code
 * EngineConcept concept = EngineConcept.named("First try")
 *         .with("cycle", "gas-generator")
 *         .with("propellants.oxidizer", "oxygen")
 *         .with("propellants.fuel", "methane")
 *         .with("propellants.mixture_ratio", 3.2)
 *         .with("engine.thrust_vacuum", 500, "kN")
 *         .with("engine.chamber_pressure", 8, "MPa")
 *         .with("nozzle.area_ratio", 30);
 * }</pre>
 */
public final class EngineConcept {

    private final String source;
    private final String text;
    private final Map<String, String> changes;

    private EngineConcept(String source, String text, Map<String, String> changes) {
        this.source = source;
        this.text = text;
        this.changes = Collections.unmodifiableMap(changes);
    }

    /**
     * A concept with a name and nothing else.
     *
     * @param name name of the engine, for tables and messages
     * @return the concept
     */
    public static EngineConcept named(String name) {
        return new EngineConcept(name, "", new LinkedHashMap<>()).with("name", name);
    }

    /**
     * @param file concept file in TOML
     * @return what it says
     * @throws InvalidInput if it cannot be read
     */
    public static EngineConcept read(Path file) {
        try {
            return parse(file.toString(), Files.readString(file));
        } catch (IOException e) {
            throw new InvalidInput("", "file", file.toString(), "it must be a readable text file in UTF-8");
        }
    }

    /**
     * @param source what to call the text in messages
     * @param text text of a concept file in TOML
     * @return what it says
     */
    public static EngineConcept parse(String source, String text) {
        return new EngineConcept(source, text, new LinkedHashMap<>());
    }

    /**
     * @param key dotted key, for example {@code "propellants.fuel"}
     * @param value word or text; a quantity with its unit, for example {@code "8 MPa"}, is one too
     * @return the concept with that value in place of any other
     */
    public EngineConcept with(String key, String value) {
        return withToml(key, quoted(value));
    }

    /**
     * @param key dotted key of a number without dimension, for example {@code "propellants.mixture_ratio"}
     * @param value the number (-)
     * @return the concept with that value in place of any other
     */
    public EngineConcept with(String key, double value) {
        return withToml(key, number(key, value));
    }

    /**
     * @param key dotted key of a quantity, for example {@code "engine.chamber_pressure"}
     * @param value the quantity, in {@code unit}; a pressure is absolute
     * @param unit its unit as a concept file writes it, for example {@code "MPa"}, {@code "kN"}, {@code "K"}
     * @return the concept with that value in place of any other
     */
    public EngineConcept with(String key, double value, String unit) {
        return with(key, number(key, value) + " " + unit);
    }

    /**
     * @param key dotted key of a switch
     * @param value on or off
     * @return the concept with that value in place of any other
     */
    public EngineConcept with(String key, boolean value) {
        return withToml(key, String.valueOf(value));
    }

    /**
     * @param key dotted key
     * @param value the value as TOML writes it: for lists and tables, for example {@code "[{ payload = \"2 t\" }]"}
     * @return the concept with that value in place of any other
     */
    public EngineConcept withToml(String key, String value) {
        Map<String, String> all = new LinkedHashMap<>(changes);
        all.put(key, value);
        return new EngineConcept(source, text, all);
    }

    String source() {
        return source;
    }

    String text() {
        return text;
    }

    Map<String, String> changes() {
        return changes;
    }

    private static String number(String key, double value) {
        if (!Double.isFinite(value)) {
            throw new InvalidInput("", key, Double.toString(value), "write a finite number");
        }
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(value);
    }

    private static String quoted(String value) {
        StringBuilder toml = new StringBuilder("\"");
        for (char sign : value.toCharArray()) {
            if (sign == '"' || sign == '\\') {
                toml.append('\\').append(sign);
            } else if (sign < ' ' || sign == 0x7f) {
                toml.append(String.format(Locale.ROOT, "\\u%04x", (int) sign));
            } else {
                toml.append(sign);
            }
        }
        return toml.append('"').toString();
    }
}

package dev.penstock.provenance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the numbers of one result come from: each under its path, with the model that made it and the paths of the values
 * that went in. What depends on an arrangement is written down while that is laid out; what lies within a model is declared
 * with its figures. Not thread-safe; one per result.
 */
public final class Trail {

    /**
     * One value and its origin.
     *
     * @param path dotted path, as in the JSON result, for example "engine.isp_vacuum_s"
     * @param value the value, SI
     * @param unit SI unit as text
     * @param model the model that made it
     * @param inputs paths of the values that went in
     */
    public record Entry(String path, double value, String unit, ModelCard model, List<String> inputs) {

        public Entry {
            inputs = List.copyOf(inputs);
        }
    }

    private final Map<String, Entry> entries = new LinkedHashMap<>();

    /**
     * Records a value and hands it back.
     *
     * @param path dotted path of the value
     * @param value the value, SI
     * @param unit SI unit as text
     * @param model the model that made it
     * @param inputs paths of the values that went in
     * @return the value
     */
    public double record(String path, double value, String unit, ModelCard model, String... inputs) {
        entries.put(path, new Entry(path, value, unit, model, List.of(inputs)));
        return value;
    }

    /**
     * @param path dotted path of the value
     * @param value the value, SI
     * @param unit SI unit as text
     * @param origin model and paths of the values that went in
     */
    public void record(String path, double value, String unit, Origin origin) {
        entries.put(path, new Entry(path, value, unit, origin.model(), origin.inputs()));
    }

    /**
     * Records a value that comes from outside the calculation and hands it back.
     *
     * @param path dotted path of the value
     * @param value the value, SI
     * @param unit SI unit as text
     * @param what what kind of origin, for example "stated by the concept"
     * @param source who says so: a source key, a file, the words of the concept
     * @return the value
     */
    public double given(String path, double value, String unit, String what, String source) {
        return given(path, value, unit, what, source, List.of());
    }

    /**
     * Records a value that comes from outside, or a default that follows such values, and hands it back.
     *
     * @param path dotted path of the value
     * @param value the value, SI
     * @param unit SI unit as text
     * @param what what kind of origin, for example "default of the concept"
     * @param source who says so: a source key, a file, the words of the concept
     * @param follows paths of the values that it was made from; empty for one that stands alone
     * @return the value
     */
    public double given(String path, double value, String unit, String what, String source, List<String> follows) {
        record(path, value, unit, Origin.given(what, source, follows));
        return value;
    }

    /** @param entry a value that a calculation wrote down */
    public void add(Entry entry) {
        entries.put(entry.path(), entry);
    }

    /**
     * @param other trail of a result that this one contains
     * @return this trail with all of its entries
     */
    public Trail include(Trail other) {
        entries.putAll(other.entries);
        return this;
    }

    /**
     * @param name name of a part, for example "fuel pump"
     * @return the name as one part of a path, for example "fuel-pump"
     */
    public static String slug(String name) {
        String stripped = name.strip();
        StringBuilder slug = new StringBuilder(stripped.length());
        boolean between = false;
        for (int i = 0; i < stripped.length(); i++) {
            char c = stripped.charAt(i);
            boolean separates = c == '/' || c == ' ' || c >= '\t' && c <= '\r';
            if (!separates) {
                slug.append(c);
            } else if (!between) {
                slug.append('-');
            }
            between = separates;
        }
        return slug.toString();
    }

    /**
     * @param path dotted path
     * @return whether the value was recorded
     */
    public boolean has(String path) {
        return entries.containsKey(path);
    }

    /**
     * @param path dotted path
     * @return the entry, if the value was recorded
     */
    public Optional<Entry> entry(String path) {
        return Optional.ofNullable(entries.get(path));
    }

    /** @return every entry in the order of recording */
    public List<Entry> entries() {
        return List.copyOf(new ArrayList<>(entries.values()));
    }
}

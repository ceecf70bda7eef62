package dev.penstock.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A table of an input file, declared once with its inputs and the tables inside it.
 *
 * @param key key of the table; empty for the top of a file
 * @param title what it is about, as a sentence without its full stop
 * @param presence when it is there
 * @param inputs inputs, in the order of a template
 * @param groups tables inside it
 * @param free kind of the values under keys of the file's own choice; empty where every key is declared
 */
public record InputGroup(
        String key,
        String title,
        Presence presence,
        List<Input<?>> inputs,
        List<InputGroup> groups,
        Optional<InputKind<?>> free) {

    /** When a table is there. */
    public enum Presence {
        /** Its inputs count whether the file has the table or not. */
        ALWAYS,
        /** What it describes is there if the table is. */
        IF_WRITTEN,
        /** Headed {@code [[key]]}, as often as needed. */
        REPEATED,
        /** Headed {@code [key.name]} for each of some names of the file's own choice. */
        NAMED
    }

    public InputGroup {
        inputs = List.copyOf(inputs);
        groups = List.copyOf(groups);
    }

    /**
     * @param key key of the table
     * @param title what it is about
     * @param inputs its inputs
     * @return a table that always counts
     */
    public static InputGroup table(String key, String title, Input<?>... inputs) {
        return new InputGroup(key, title, Presence.ALWAYS, Arrays.asList(inputs), List.of(), Optional.empty());
    }

    /**
     * @param key key of the table
     * @param title what it is about
     * @param values kind of the values, whatever their keys are
     * @return a table whose keys the file chooses
     */
    public static InputGroup free(String key, String title, InputKind<?> values) {
        return new InputGroup(key, title, Presence.ALWAYS, List.of(), List.of(), Optional.of(values));
    }

    /**
     * @param inside tables inside it
     * @return the same table with these, besides those it has
     */
    public InputGroup with(InputGroup... inside) {
        List<InputGroup> all = new ArrayList<>(groups);
        all.addAll(Arrays.asList(inside));
        return new InputGroup(key, title, presence, inputs, all, free);
    }

    /**
     * @param more inputs
     * @return the same table with these, besides those it has
     */
    public InputGroup and(Input<?>... more) {
        List<Input<?>> all = new ArrayList<>(inputs);
        all.addAll(Arrays.asList(more));
        return new InputGroup(key, title, presence, all, groups, free);
    }

    /** @return the same table, whose subject is there if the table is */
    public InputGroup ifWritten() {
        return new InputGroup(key, title, Presence.IF_WRITTEN, inputs, groups, free);
    }

    /** @return the same table, headed {@code [[key]]} as often as needed */
    public InputGroup repeated() {
        return new InputGroup(key, title, Presence.REPEATED, inputs, groups, free);
    }

    /** @return the same table, headed {@code [key.name]} for each of some names of the file's own choice */
    public InputGroup named() {
        return new InputGroup(key, title, Presence.NAMED, inputs, groups, free);
    }

    /**
     * @param newKey key of the table
     * @param newTitle what it is about
     * @return the same inputs in another place
     */
    public InputGroup as(String newKey, String newTitle) {
        return new InputGroup(newKey, newTitle, presence, inputs, groups, free);
    }

    /**
     * @param name key of a table inside it
     * @return that table
     */
    public Optional<InputGroup> group(String name) {
        return groups.stream().filter(g -> g.key().equals(name)).findFirst();
    }

    /** @return keys of its inputs and of the tables inside it */
    public List<String> keys() {
        List<String> keys = new ArrayList<>();
        inputs.forEach(i -> keys.add(i.key()));
        groups.forEach(g -> keys.add(g.key()));
        return keys;
    }

    /** @return all inputs below it by dotted key, repeated tables with {@code []}, in the order of a template */
    public Map<String, Input<?>> all() {
        Map<String, Input<?>> all = new LinkedHashMap<>();
        collect("", all);
        return all;
    }

    private void collect(String path, Map<String, Input<?>> all) {
        inputs.forEach(i -> all.put(path + i.key(), i));
        groups.forEach(g -> g.collect(path + g.key() + mark(g.presence()) + ".", all));
    }

    private static String mark(Presence presence) {
        return switch (presence) {
            case REPEATED -> "[]";
            case NAMED -> ".*";
            case ALWAYS, IF_WRITTEN -> "";
        };
    }
}

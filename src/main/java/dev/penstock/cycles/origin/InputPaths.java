package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.input.InputKey;
import dev.penstock.input.InputValue;
import dev.penstock.input.TableKey;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Paths of a concept's inputs in a trail. An input that is left open, or a word, has no number and so no path. */
public final class InputPaths {

    private static final String ROOT = "concept.";

    private final Set<String> keys = new LinkedHashSet<>();

    public InputPaths(Concept concept) {
        for (InputValue input : concept.document().inputs()) {
            if (input.number().isPresent()) {
                keys.add(input.key());
            }
        }
    }

    /** Path of an input, whether it has a number or not. */
    public static String path(InputKey input) {
        return ROOT + input.path();
    }

    /** The input's path, if it has a number. */
    public List<String> of(InputKey input) {
        return of(input.path());
    }

    /** Those of the keys that have a number. */
    public List<String> of(String... wanted) {
        List<String> paths = new ArrayList<>();
        for (String key : wanted) {
            if (keys.contains(key)) {
                paths.add(ROOT + key);
            }
        }
        return paths;
    }

    /** Every input that has a number. */
    public List<String> all() {
        return keys.stream().map(key -> ROOT + key).toList();
    }

    /** Those of a table that have a number, its inner tables included. */
    public List<String> table(TableKey table) {
        List<String> paths = new ArrayList<>();
        for (String key : keys) {
            if (key.startsWith(table.path() + ".")) {
                paths.add(ROOT + key);
            }
        }
        return paths;
    }

    /** Those keys of a table that have a number. */
    public List<String> in(TableKey table, List<String> wanted) {
        return of(wanted.stream().map(key -> table.path() + "." + key).toArray(String[]::new));
    }
}

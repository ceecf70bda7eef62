package dev.penstock.input;

import java.util.Objects;

/**
 * Which table of an input file is meant: declared once, so that what reads a table, lists it and names its inputs in a trail
 * say the same.
 *
 * @param path dotted path from the root of the file
 */
public record TableKey(String path) {

    public TableKey {
        Objects.requireNonNull(path, "path");
    }

    /**
     * @param key key of a table inside this one
     * @return that table
     */
    public TableKey in(String key) {
        return new TableKey(path + "." + key);
    }

    /**
     * @param input declaration of an input of this table
     * @return that input
     */
    public InputKey of(Input<?> input) {
        return new InputKey(this, input);
    }

    /** @return key of this table in the one that it stands in */
    public String key() {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}

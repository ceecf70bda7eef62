package dev.penstock.input;

/**
 * Which input of a file is meant: a declaration in its table.
 *
 * @param table where it stands
 * @param input what it is
 */
public record InputKey(TableKey table, Input<?> input) {

    /** @return dotted path from the root of the file */
    public String path() {
        return table.path() + "." + input.key();
    }
}

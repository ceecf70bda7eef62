package dev.penstock.provenance;

import java.util.List;

/** Dotted paths of tables and keys, as files, changes and figures write them: {@code pumps.fuel-pump.speed}. */
public final class KeyPath {

    private KeyPath() {}

    /**
     * @param path dotted path; empty for the top
     * @return its keys from the top down, none for the top; a repeated table keeps its number, as in {@code sections[1]}
     */
    public static List<String> keys(String path) {
        return path.isEmpty() ? List.of() : List.of(path.split("\\.", -1));
    }

    /**
     * @param path dotted path
     * @return the same for people: {@code engine, chamber pressure}
     */
    public static String words(String path) {
        return String.join(", ", keys(path)).replace('_', ' ');
    }
}

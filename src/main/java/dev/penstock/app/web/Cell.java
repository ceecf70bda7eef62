package dev.penstock.app.web;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.Place;
import java.util.Map;

/**
 * A number on a page, with the path by which its trail opens.
 *
 * @param text number as shown
 * @param path path in the trail
 */
record Cell(String text, String path) {

    /** A figure of a thing where it stands. */
    static <T> Map<String, Object> of(FigureTable<T> table, String key, T thing, String at) {
        return new Cell(table.figure(key).text(thing), Place.at(at).own(key)).map();
    }

    Map<String, Object> map() {
        return Map.of("text", text, "path", path);
    }
}

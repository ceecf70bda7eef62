package dev.penstock.app.answer;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.Place;
import java.util.Map;

/**
 * A number on a page, with the path by which its trail opens.
 *
 * @param text number as shown
 * @param path path in the trail
 */
public record Cell(String text, String path) {

    /** A figure of a thing where it stands. */
    public static <T> Map<String, Object> of(FigureTable<T> table, String key, T thing, String at) {
        return new Cell(table.figure(key).text(thing), Place.at(at).own(key)).map();
    }

    public Map<String, Object> map() {
        return Map.of("text", text, "path", path);
    }
}

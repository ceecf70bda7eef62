package dev.penstock.app.web;

import java.util.Map;

/**
 * A number on a page, with the path by which its trail opens.
 *
 * @param text number as shown
 * @param path path in the trail
 */
record Cell(String text, String path) {

    Map<String, Object> map() {
        return Map.of("text", text, "path", path);
    }
}

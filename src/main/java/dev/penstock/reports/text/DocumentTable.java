package dev.penstock.reports.text;

import dev.penstock.provenance.KeyPath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A part of a JSON document as comma-separated lines under one heading line: a line for each entry of a list or of an object of
 * objects, one line for anything else. Columns are the keys, with dots where objects lie in objects, in the order in which they
 * first appear; lists of objects inside an entry are parts of their own and are left out.
 */
public final class DocumentTable {

    private static final String NAME = "name";

    private final Map<String, Object> document;

    /** @param document maps, lists, texts, numbers, booleans and optionals of them, as {@link JsonText} takes them */
    public DocumentTable(Map<String, Object> document) {
        this.document = document;
    }

    /**
     * @param path keys to the part, with dots between them; empty text for the whole
     * @return its lines; empty if the document has no such part
     */
    public Optional<String> csv(String path) {
        Object part = document;
        for (String key : KeyPath.keys(path)) {
            part = part instanceof Map<?, ?> map ? plain(map.get(key)) : null;
        }
        if (!(part instanceof Map<?, ?> || part instanceof Iterable<?>)) {
            return Optional.empty();
        }
        List<Map<String, String>> rows = rows(part, path.isEmpty());
        Set<String> columns = new LinkedHashSet<>();
        rows.forEach(row -> columns.addAll(row.keySet()));
        StringBuilder text = new StringBuilder();
        CsvLine.add(text, List.copyOf(columns));
        rows.forEach(row -> CsvLine.add(
                text, columns.stream().map(c -> row.getOrDefault(c, "")).toList()));
        return Optional.of(text.toString());
    }

    /** @return the paths of everything that {@link #csv} has lines for, sorted */
    public List<String> parts() {
        Set<String> paths = new TreeSet<>();
        collect("", document, paths);
        return List.copyOf(paths);
    }

    private static void collect(String path, Map<?, ?> map, Set<String> paths) {
        map.forEach((key, value) -> {
            String here = path + key;
            Object inside = plain(value);
            if (inside instanceof Map<?, ?> deeper) {
                paths.add(here);
                collect(here + ".", deeper, paths);
            } else if (inside instanceof Iterable<?> list && hasObjects(list)) {
                paths.add(here);
            }
        });
    }

    private static List<Map<String, String>> rows(Object part, boolean whole) {
        List<Map<String, String>> rows = new ArrayList<>();
        if (part instanceof Iterable<?> list) {
            list.forEach(entry -> {
                Map<String, String> row = new LinkedHashMap<>();
                add(row, "", plain(entry));
                rows.add(row);
            });
        } else if (part instanceof Map<?, ?> map) {
            boolean named = !whole && !map.isEmpty() && map.values().stream().allMatch(v -> plain(v) instanceof Map);
            if (named) {
                map.forEach((key, value) -> {
                    Map<String, String> row = new LinkedHashMap<>();
                    row.put(NAME, key.toString());
                    add(row, "", plain(value));
                    rows.add(row);
                });
            } else {
                Map<String, String> row = new LinkedHashMap<>();
                add(row, "", map);
                rows.add(row);
            }
        }
        return rows;
    }

    private static void add(Map<String, String> row, String path, Object value) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inside) -> add(row, path.isEmpty() ? key.toString() : path + "." + key, plain(inside)));
        } else if (value instanceof Iterable<?> list) {
            if (!hasObjects(list)) {
                List<String> words = new ArrayList<>();
                list.forEach(v -> words.add(String.valueOf(plain(v))));
                row.put(named(path), String.join(" ", words));
            }
        } else {
            row.put(named(path), value == null ? "" : value.toString());
        }
    }

    /** An entry that is no object has one column. */
    private static String named(String path) {
        return path.isEmpty() ? "value" : path;
    }

    private static boolean hasObjects(Iterable<?> list) {
        for (Object entry : list) {
            if (plain(entry) instanceof Map) {
                return true;
            }
        }
        return false;
    }

    private static Object plain(Object value) {
        return value instanceof Optional<?> optional ? optional.orElse(null) : value;
    }
}

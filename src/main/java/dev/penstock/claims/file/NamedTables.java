package dev.penstock.claims.file;

import dev.penstock.input.InputGroup;
import dev.penstock.input.InputTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tables whose names are paths: {@code [claims."engine.mass"]} or {@code [claims.engine.mass]}, which mean the same. */
final class NamedTables {

    private NamedTables() {}

    /** The tables of each path, in the order of the file; where a path stands twice, the later one adds to the first. */
    static Map<String, List<InputTable>> of(InputTable table, InputGroup group) {
        Map<String, List<InputTable>> found = new LinkedHashMap<>();
        collect(table, "", group, found);
        return found;
    }

    private static void collect(InputTable table, String path, InputGroup group, Map<String, List<InputTable>> found) {
        Map<String, InputTable> inside = table.tables();
        if (!path.isEmpty() && table.keys().stream().anyMatch(k -> !inside.containsKey(k))) {
            found.computeIfAbsent(path, p -> new ArrayList<>()).add(table);
        } else if (path.isEmpty()) {
            table.keys().stream()
                    .filter(k -> !inside.containsKey(k))
                    .forEach(k -> table.problem(k, "a value", "write a table [" + table.pathOf(k) + "]"));
        }
        inside.forEach((key, child) -> collect(child, path.isEmpty() ? key : path + "." + key, group, found));
    }
}

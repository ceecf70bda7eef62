package dev.penstock.study.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The columns of a study's rows.
 *
 * @param columns columns in their order, each name once
 */
public record RowSchema(List<Column> columns) {

    public RowSchema {
        columns = List.copyOf(columns);
        if (columns.stream().map(Column::name).distinct().count() != columns.size()) {
            throw new IllegalArgumentException("a column name stands twice in " + columns);
        }
    }

    /** @return the columns as a document holds them: name, kind, role, unit and title of each */
    public List<Map<String, Object>> document() {
        List<Map<String, Object>> list = new ArrayList<>();
        for (Column column : columns) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("name", column.name());
            map.put("kind", column.kind().name().toLowerCase(Locale.ROOT));
            map.put("role", column.role().name().toLowerCase(Locale.ROOT));
            map.put("unit", column.unit());
            map.put("title", column.title());
            list.add(map);
        }
        return list;
    }

    /** @return names and types as SQL declares them */
    String declaration() {
        return columns.stream().map(c -> c.quoted() + " " + c.kind().sql()).collect(Collectors.joining(", "));
    }
}

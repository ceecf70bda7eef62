package dev.penstock.reports.text;

import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.FigureTable.Presence;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Figures as JSON objects; keys end in the SI unit of the value. */
public final class FigureJson {

    private FigureJson() {}

    /**
     * @param table what a kind of thing publishes
     * @param thing a thing of that kind
     * @param <T> kind of thing
     * @return JSON object of its figures and parts
     */
    public static <T> Map<String, Object> of(FigureTable<T> table, T thing) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (FigureTable.Member<T> member : table.members()) {
            Object value = member instanceof FigureTable.Branch<T, ?> branch
                    ? parts(branch, thing)
                    : ((Figure<T>) member).value(thing);
            boolean there = !(value instanceof Optional<?> optional && optional.isEmpty()
                    || value instanceof List<?> list && list.isEmpty());
            if (member.presence() == Presence.ALWAYS || member.presence() == Presence.IF_THERE && there) {
                map.put(member.key(), value instanceof Optional<?> optional && there ? optional.get() : value);
            }
        }
        return map;
    }

    /**
     * @param table what a kind of thing publishes
     * @param things things of that kind
     * @param <T> kind of thing
     * @return JSON array
     */
    public static <T> List<Map<String, Object>> each(FigureTable<T> table, List<T> things) {
        return things.stream().map(thing -> of(table, thing)).toList();
    }

    private static <T, C> Object parts(FigureTable.Branch<T, C> branch, T thing) {
        List<C> things = branch.parts().apply(thing);
        List<Map<String, Object>> parts = each(branch.table(), things);
        return switch (branch.shape()) {
            case ONE -> parts.stream().findFirst();
            case LIST -> parts;
            case KEYED -> {
                Map<String, Object> map = new LinkedHashMap<>();
                for (int i = 0; i < parts.size(); i++) {
                    map.put(branch.table().name(things.get(i), i), parts.get(i));
                }
                yield map;
            }
        };
    }
}

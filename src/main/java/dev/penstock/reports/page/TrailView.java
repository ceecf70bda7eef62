package dev.penstock.reports.page;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Where a number comes from, as JSON document and as an indented text for a terminal. */
public final class TrailView {

    /** Of a long list of like values, such as those along a jacket, this many are named. */
    private static final int NAMED = 6;

    private final Trail trail;
    private final List<Warning> warnings;

    /**
     * @param trail trail of a result
     * @param warnings warnings of that result
     */
    public TrailView(Trail trail, List<Warning> warnings) {
        this.trail = trail;
        this.warnings = List.copyOf(warnings);
    }

    /**
     * @param path recorded path
     * @param depth how many steps back to follow
     * @return JSON document
     */
    public Map<String, Object> json(String path, int depth) {
        return json(trail.entry(path).orElseThrow(), depth, new HashSet<>());
    }

    private Map<String, Object> json(Trail.Entry entry, int depth, Set<String> seen) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", entry.path());
        map.put("value", entry.value());
        map.put("unit", entry.unit());
        if (!seen.add(entry.path())) {
            map.put("explained_above", true);
            return map;
        }
        map.put("model", model(entry.model()));
        map.put("warnings", about(entry.model()).stream().map(Warning::message).toList());
        map.put("input_paths", entry.inputs());
        if (depth > 0) {
            map.put(
                    "inputs",
                    entry.inputs().stream()
                            .map(input -> json(trail.entry(input).orElseThrow(), depth - 1, seen))
                            .toList());
        }
        return map;
    }

    private static Map<String, Object> model(ModelCard card) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", card.id());
        map.put("title", card.title());
        map.put("equation", card.equation());
        map.put("range", card.range());
        map.put("uncertainty", card.uncertainty());
        map.put("sources", card.sources());
        return map;
    }

    /**
     * @param path recorded path
     * @param depth how many steps back to follow
     * @return text for a terminal
     */
    public String text(String path, int depth) {
        StringBuilder text = new StringBuilder();
        write(text, trail.entry(path).orElseThrow(), "", depth, new HashSet<>());
        return text.toString();
    }

    private void write(StringBuilder text, Trail.Entry entry, String indent, int depth, Set<String> seen) {
        String line = System.lineSeparator();
        text.append(indent).append(entry.path()).append(" = ").append(Notation.significant(entry.value(), 6));
        text.append(entry.unit().isEmpty() ? "" : " " + entry.unit());
        if (!seen.add(entry.path())) {
            text.append("  (explained above)").append(line);
            return;
        }
        text.append(line);
        ModelCard card = entry.model();
        String inner = indent + "    ";
        boolean given = entry.inputs().isEmpty() && card.isGiven();
        if (given) {
            text.append(inner)
                    .append(card.title())
                    .append(": ")
                    .append(String.join(", ", card.sources()))
                    .append(line);
            return;
        }
        text.append(inner)
                .append(card.title())
                .append(": ")
                .append(card.equation())
                .append(line);
        text.append(inner)
                .append("holds for ")
                .append(card.range())
                .append("; uncertainty ")
                .append(card.uncertainty());
        text.append("; source ").append(String.join(", ", card.sources())).append(line);
        about(card).forEach(w -> text.append(inner)
                .append("warning: ")
                .append(w.message())
                .append(line));
        List<String> shown = shown(entry.inputs());
        if (depth == 0) {
            text.append(inner).append("from ").append(String.join(", ", shown)).append(more(entry.inputs(), shown));
            text.append(line);
            return;
        }
        shown.forEach(input -> write(text, trail.entry(input).orElseThrow(), inner, depth - 1, seen));
        if (shown.size() < entry.inputs().size()) {
            text.append(inner).append(more(entry.inputs(), shown).strip()).append(line);
        }
    }

    private static String more(List<String> all, List<String> shown) {
        return all.size() > shown.size() ? " and " + (all.size() - shown.size()) + " more like the last" : "";
    }

    private static List<String> shown(List<String> inputs) {
        return inputs.size() > 3 * NAMED ? new ArrayList<>(inputs.subList(0, NAMED)) : inputs;
    }

    private List<Warning> about(ModelCard card) {
        return warnings.stream()
                .filter(w -> w.source().equals(card.id()))
                .distinct()
                .toList();
    }
}

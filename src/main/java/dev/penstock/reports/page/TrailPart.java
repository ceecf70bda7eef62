package dev.penstock.reports.page;

import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.text.PageTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The trail of a result as parts of a page: the models at work, and every number with what it was made from. */
public final class TrailPart {

    /** The many like values along a jacket are traced on the command line; a page names their first. */
    private static final Pattern PROFILE = Pattern.compile("(cooling|circuits\\.[^.]+)\\.profile\\.(?!0\\.).*");

    private static final int NAMED = 8;

    private final Trail trail;

    public TrailPart(Trail trail) {
        this.trail = trail;
    }

    public PageTable models() {
        Map<String, ModelCard> cards = new LinkedHashMap<>();
        trail.entries().forEach(e -> cards.putIfAbsent(e.model().id(), e.model()));
        PageTable.Builder table =
                PageTable.titled("Models at work", "<model", "<equation", "<holds for", "<uncertainty", "<source");
        cards.values().stream()
                .filter(c -> !c.isGiven() && !c.isDefinition())
                .forEach(c ->
                        table.row(c.title(), c.equation(), c.range(), c.uncertainty(), String.join(", ", c.sources())));
        return table.table();
    }

    /** @return one map for each number, for the template */
    public List<Map<String, Object>> numbers() {
        List<Map<String, Object>> list = new ArrayList<>();
        for (Trail.Entry entry : trail.entries()) {
            if (shown(entry.path())) {
                list.add(number(entry));
            }
        }
        return list;
    }

    static boolean shown(String path) {
        return !PROFILE.matcher(path).matches();
    }

    private static Map<String, Object> number(Trail.Entry entry) {
        boolean given = entry.model().isGiven();
        List<String> inputs =
                entry.inputs().stream().filter(TrailPart::shown).limit(NAMED).toList();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", entry.path());
        map.put("value", Notation.significant(entry.value(), 6) + (entry.unit().isEmpty() ? "" : " " + entry.unit()));
        map.put("model", entry.model().title());
        map.put("source", given ? String.join(", ", entry.model().sources()) : "");
        map.put("inputs", inputs);
        map.put("more", entry.inputs().size() - inputs.size());
        return map;
    }
}

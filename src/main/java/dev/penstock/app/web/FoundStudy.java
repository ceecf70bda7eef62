package dev.penstock.app.web;

import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.app.answer.Grid;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.Software;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What a study of the page has found.
 *
 * @param title what was asked
 * @param complete whether it came to its end
 * @param sections what the page shows
 * @param document its JSON document
 * @param html its report
 * @param opened address of the page that shows each point: of an optimum that closes one, of a frontier its points in order, of
 *     others none
 */
record FoundStudy(
        String title,
        boolean complete,
        List<PageSection> sections,
        Map<String, Object> document,
        Function<Software, String> html,
        List<String> opened) {

    FoundStudy {
        sections = List.copyOf(sections);
        opened = List.copyOf(opened);
    }

    /** @return it as the pages' script draws it */
    Map<String, Object> answer() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("title", title);
        map.put("complete", complete);
        map.put("opened", opened);
        map.put("sections", sections.stream().map(FoundStudy::section).toList());
        return map;
    }

    /** A section of a report as the pages' script draws it. */
    static Map<String, Object> section(PageSection section) {
        return Map.of(
                "id", section.id(),
                "title", section.title(),
                "question", section.question(),
                "text", section.paragraphs(),
                "figures", section.figures().stream().map(EngineAnswer::figure).toList(),
                "tables", section.tables().stream().map(Grid::of).toList());
    }

    /**
     * @param file name of a case in the workspace
     * @param vehicle whether it is a vehicle
     * @param changes values that replace or add to what it says
     * @return address of the page that shows it so
     */
    static String address(String file, boolean vehicle, Map<String, String> changes) {
        StringBuilder address = new StringBuilder(vehicle ? "/vehicle?file=" : "/?file=").append(encoded(file));
        changes.forEach((path, value) ->
                address.append("&set.").append(encoded(path)).append('=').append(encoded(value)));
        return address.toString();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}

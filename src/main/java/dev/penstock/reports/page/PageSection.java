package dev.penstock.reports.page;

import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.text.PageTable;
import java.util.ArrayList;
import java.util.List;

/**
 * A section of a page.
 *
 * @param id anchor
 * @param title title
 * @param question the question that the section answers
 * @param paragraphs text
 * @param figures drawings
 * @param tables tables
 * @param folded tables that are folded away on a screen
 */
public record PageSection(
        String id,
        String title,
        String question,
        List<String> paragraphs,
        List<Drawing> figures,
        List<PageTable> tables,
        List<PageTable> folded) {

    public PageSection {
        paragraphs = List.copyOf(paragraphs);
        figures = List.copyOf(figures);
        tables = List.copyOf(tables);
        folded = List.copyOf(folded);
    }

    /**
     * @param first a drawing
     * @return the same section with that drawing before its others
     */
    public PageSection beginning(Drawing first) {
        List<Drawing> all = new ArrayList<>(List.of(first));
        all.addAll(figures);
        return new PageSection(id, title, question, paragraphs, all, tables, folded);
    }
}

package dev.penstock.reports.print;

import dev.penstock.reports.chart.ChartFont;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Tables made ready for paper: units and keys stay in one piece, a short table stays on one sheet, and one that would be
 * wider than the sheet is printed in parts, each with the first column. Not thread-safe.
 */
final class PrintTables {

    /** Size of the text of tables in the style sheet of paper, with a little to spare (points). */
    private static final double TEXT = 7.3;
    /** Padding of a cell, both sides, in the style sheet of paper (points). */
    private static final double PADDING = 8;

    private static final int LONGEST_KEY = 44;
    private static final int SHORT = 14;
    private static final int ONE_LINE = 60;
    /** Height of a row of one line (points). */
    private static final double ROW = 14;

    private static final String BREAKS = "(?<=[-/])|\\s+";

    private final Document document;
    private final double width;

    /**
     * @param document page, changed in place
     * @param width width that a table may have (points)
     */
    PrintTables(Document document, double width) {
        this.document = document;
        this.width = width;
    }

    void fit() {
        for (Element table : elements(document.getDocumentElement(), "table")) {
            keepWhole(table);
            split(table);
        }
    }

    private void keepWhole(Element table) {
        for (Element head : elements(table, "th")) {
            String title = head.getTextContent();
            int unit = title.lastIndexOf('(');
            if (head.getAttribute("scope").equals("row")) {
                if (title.length() <= LONGEST_KEY && title.indexOf(' ') < 0) {
                    mark(head, "key");
                }
            } else if (unit > 0 && title.endsWith(")")) {
                Element whole = document.createElement("span");
                mark(whole, "key");
                whole.setTextContent(title.substring(unit));
                head.setTextContent(title.substring(0, unit));
                head.appendChild(whole);
            }
        }
        if (isShort(table)) {
            mark((Element) table.getParentNode(), "whole");
        }
    }

    private static boolean isShort(Element table) {
        return elements(table, "tr").size() <= SHORT
                && elements(table, "td").stream()
                        .allMatch(c -> c.getTextContent().length() <= ONE_LINE);
    }

    /**
     * @param section a section
     * @return room that its first table needs where it must stay on one sheet; else zero (points)
     */
    static double heightOfFirst(Element section) {
        return elements(section, "table").stream()
                .limit(1)
                .filter(PrintTables::isShort)
                .mapToDouble(t -> ROW * elements(t, "tr").size())
                .sum();
    }

    private void split(Element table) {
        double[] widths = widths(table);
        List<Integer> starts = new ArrayList<>();
        starts.add(1);
        double used = widths[0];
        for (int i = 1; i < widths.length; i++) {
            if (used + widths[i] > width && i > starts.get(starts.size() - 1)) {
                starts.add(i);
                used = widths[0];
            }
            used += widths[i];
        }
        int parts = starts.size();
        if (parts == 1) {
            return;
        }
        int each = (widths.length - 1 + parts - 1) / parts;
        Node after = table.getNextSibling();
        for (int part = 1; part < parts; part++) {
            int from = even(starts, each, part);
            int to = part + 1 < parts ? even(starts, each, part + 1) : widths.length;
            Element copy = (Element) table.cloneNode(true);
            keepColumns(copy, from, to);
            mark(copy, "part");
            table.getParentNode().insertBefore(copy, after);
        }
        keepColumns(table, 1, even(starts, each, 1));
    }

    /** Parts of even length look better, where they fit. */
    private static int even(List<Integer> starts, int each, int part) {
        return Math.min(starts.get(part), 1 + part * each);
    }

    private static void keepColumns(Element table, int from, int to) {
        for (Element row : elements(table, "tr")) {
            List<Element> cells = cells(row);
            for (int i = 1; i < cells.size(); i++) {
                if (i < from || i >= to) {
                    row.removeChild(cells.get(i));
                }
            }
        }
    }

    /** @return the least width that each column needs (points) */
    private static double[] widths(Element table) {
        List<Element> rows = elements(table, "tr");
        int columns = rows.stream().mapToInt(r -> cells(r).size()).max().orElse(0);
        double[] widths = new double[columns];
        for (Element row : rows) {
            List<Element> cells = cells(row);
            for (int i = 0; i < cells.size(); i++) {
                widths[i] = Math.max(widths[i], PADDING + width(cells.get(i)));
            }
        }
        return widths;
    }

    private static double width(Element cell) {
        String kind = " " + cell.getAttribute("class") + " ";
        String text = cell.getTextContent().strip();
        boolean head = cell.getAttribute("scope").equals("col");
        if (kind.contains(" key ") || kind.contains(" n ") && !head) {
            return ChartFont.width(text, TEXT);
        }
        double widest = 0;
        for (String word : text.split(BREAKS)) {
            widest = Math.max(widest, ChartFont.width(word, TEXT) * (head ? 1.1 : 1));
        }
        return widest;
    }

    private static void mark(Element element, String kind) {
        element.setAttribute("class", (element.getAttribute("class") + " " + kind).strip());
    }

    private static List<Element> cells(Element row) {
        List<Element> list = new ArrayList<>();
        for (Node child = row.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element cell) {
                list.add(cell);
            }
        }
        return list;
    }

    private static List<Element> elements(Element within, String name) {
        NodeList found = within.getElementsByTagName(name);
        List<Element> list = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            list.add((Element) found.item(i));
        }
        return list;
    }
}

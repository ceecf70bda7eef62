package dev.penstock.reports.text;

import java.util.List;
import java.util.stream.Collectors;

/** A line of comma-separated values as RFC 4180 quotes them, ended by a line feed. */
public final class CsvLine {

    private CsvLine() {}

    /**
     * @param text text that gets the line
     * @param cells values of the line
     */
    public static void add(StringBuilder text, List<String> cells) {
        text.append(cells.stream().map(CsvLine::quoted).collect(Collectors.joining(",")))
                .append("\n");
    }

    private static String quoted(String cell) {
        return cell.matches("(?s).*[\",\n\r].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}

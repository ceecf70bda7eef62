package dev.penstock.reports.study;

import dev.penstock.quantities.Notation;
import dev.penstock.reports.text.CsvLine;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.sample.SamplePlan;
import dev.penstock.study.sample.SampleRun;
import dev.penstock.study.store.Column;
import dev.penstock.study.store.StoredRows;
import dev.penstock.study.store.StudySummary;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A study of many points as document, text and comma-separated lines. */
public final class SampleView {

    private static final int SHOWN = 12;

    private SampleView() {}

    /**
     * @param plan a study
     * @param software what its rows are made with
     * @return what stands beside its rows
     */
    public static Map<String, Object> schema(SamplePlan plan, Software software) {
        Map<String, Object> made = new LinkedHashMap<>();
        made.put("penstock", software.penstock());
        made.put("coolprop", software.coolProp());
        made.put("data", software.data());
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("study", plan.request().name());
        map.put("points", plan.points());
        map.put("batch", plan.request().batch());
        map.put("batches", plan.batches());
        map.put("software", made);
        map.put("columns", plan.schema().document());
        return map;
    }

    /**
     * @param folder folder of the study
     * @param run what a run has done
     * @return how far the study is
     */
    public static Map<String, Object> document(Path folder, SampleRun run) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("out", folder.toString());
        map.put("complete", run.complete());
        map.put("skipped_batches", run.skipped());
        map.put("worked_batches", run.worked());
        return map;
    }

    /**
     * @param summary what the rows say together
     * @return it as a document, SI
     */
    public static Map<String, Object> document(StudySummary summary) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", summary.name());
        map.put("points", (int) summary.points());
        map.put("batches", (int) summary.batches());
        map.put("finished_batches", (int) summary.finished());
        map.put("rows", (int) summary.rows());
        map.put("answered", (int) summary.answered());
        map.put("within_limits", (int) summary.withinLimits());
        summary.constraintsKept().ifPresent(kept -> map.put(StoredRows.CONSTRAINTS_KEPT, (int) kept));
        map.put("figures", summary.figures().stream().map(SampleView::spread).toList());
        map.put("limits_missed", shares(summary.missed(), summary.rows()));
        map.put("tightest_limits", shares(summary.tightest(), summary.rows()));
        List<Map<String, Object>> failures = new ArrayList<>();
        for (StudySummary.Reason reason : summary.failures()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("kind", reason.kind());
            one.put("subject", reason.subject());
            one.put("words", reason.words());
            one.put("example", reason.example());
            one.put("rows", (int) reason.count());
            one.put("share", reason.count() / (double) summary.rows());
            failures.add(one);
        }
        map.put("failures", failures);
        summary.frontier().ifPresent(rows -> map.put("frontier", rows));
        return map;
    }

    private static Map<String, Object> spread(StudySummary.Spread spread) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", spread.figure().name());
        map.put("title", spread.figure().title());
        map.put("unit", spread.figure().unit());
        map.put("rows", (int) spread.count());
        map.put("least", spread.least());
        for (int i = 0; i < StudySummary.PERCENTILES.size(); i++) {
            map.put("p" + StudySummary.PERCENTILES.get(i), spread.percentiles().get(i));
        }
        map.put("most", spread.most());
        map.put("mean", spread.mean());
        return map;
    }

    private static List<Map<String, Object>> shares(List<StudySummary.Share> shares, long rows) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (StudySummary.Share share : shares) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("name", share.name());
            map.put("rows", (int) share.count());
            map.put("share", share.count() / (double) rows);
            list.add(map);
        }
        return list;
    }

    /**
     * @param folder folder of the study
     * @param run what a run has done
     * @return how far the study is, in a sentence
     */
    public static String text(Path folder, SampleRun run) {
        int open = run.batches() - run.skipped() - run.worked();
        return (run.skipped() > 0 ? count(run.skipped(), "batch was", "batches were") + " finished before, " : "")
                + count(run.worked(), "batch is", "batches are") + " new"
                + (open > 0 ? ", " + count(open, "is", "are") + " left: the same line goes on with them" : "")
                + "; the rows are in " + folder + "\n";
    }

    private static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /**
     * @param summary what the rows say together
     * @return it for people
     */
    public static String text(StudySummary summary) {
        StringBuilder text = new StringBuilder();
        text.append(String.format(
                Locale.ROOT,
                "%s: %d of %d points in %d of %d batches; %s have an answer, %s keep all limits%s%n",
                summary.name(),
                summary.rows(),
                summary.points(),
                summary.finished(),
                summary.batches(),
                percent(summary.answered(), summary.rows()),
                percent(summary.withinLimits(), summary.rows()),
                summary.constraintsKept().isEmpty()
                        ? ""
                        : ", " + percent(summary.constraintsKept().getAsLong(), summary.rows())
                                + " keep the constraints"));
        TextTable figures = new TextTable();
        figures.header("Figure", "<", "least", "5 %", "25 %", "50 %", "75 %", "95 %", "most");
        for (StudySummary.Spread spread : summary.figures()) {
            Notation notation = Notation.ofUnit(spread.figure().unit());
            List<String> cells = new ArrayList<>(List.of(spread.figure().title(), notation.unit()));
            cells.add(notation.write(spread.least()));
            spread.percentiles().forEach(p -> cells.add(notation.write(p)));
            cells.add(notation.write(spread.most()));
            figures.row(cells.toArray(String[]::new));
        }
        section(text, figures);
        section(text, shares("Limit missed", summary.missed(), summary.rows()));
        section(text, shares("Limit with the least margin", summary.tightest(), summary.rows()));
        TextTable failures = new TextTable();
        failures.header("Share", "rows", "<why there is no answer (# for each number)");
        for (StudySummary.Reason reason : summary.failures()) {
            failures.row(percent(reason.count(), summary.rows()), Long.toString(reason.count()), reason.words());
        }
        section(text, failures);
        section(text, frontier(summary.frontier().orElse(List.of())));
        return text.toString();
    }

    private static void section(StringBuilder text, TextTable table) {
        if (!table.isEmpty()) {
            text.append(System.lineSeparator()).append(table.text());
        }
    }

    private static TextTable shares(String title, List<StudySummary.Share> shares, long rows) {
        TextTable table = new TextTable();
        table.header(title, "share", "rows");
        shares.stream()
                .limit(SHOWN)
                .forEach(share -> table.row(share.name(), percent(share.count(), rows), Long.toString(share.count())));
        return table;
    }

    private static TextTable frontier(List<Map<String, Object>> rows) {
        TextTable table = new TextTable();
        if (!rows.isEmpty()) {
            table.header(rows.get(0).keySet().toArray(String[]::new));
            rows.forEach(row -> table.row(row.values().stream()
                    .map(value -> value instanceof Double number ? Notation.significant(number, 5) : value.toString())
                    .toArray(String[]::new)));
        }
        return table;
    }

    private static String percent(long count, long of) {
        return Notation.PERCENT.write(of == 0 ? 0 : count / (double) of);
    }

    /**
     * Prints every row, one after the other.
     *
     * @param rows rows of a study
     * @param out takes the lines
     */
    public static void csv(StoredRows rows, PrintWriter out) {
        StringBuilder line = new StringBuilder();
        CsvLine.add(line, rows.columns().stream().map(Column::name).toList());
        out.print(line);
        rows.forEach(cells -> {
            line.setLength(0);
            CsvLine.add(line, cells.stream().map(SampleView::cell).toList());
            out.print(line);
        });
    }

    private static String cell(Optional<Object> cell) {
        return cell.map(value -> value instanceof List<?> words
                        ? String.join("; ", words.stream().map(String::valueOf).toList())
                        : value.toString())
                .orElse("");
    }
}

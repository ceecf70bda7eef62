package dev.penstock.reports.study;

import dev.penstock.numerics.variance.Screening;
import dev.penstock.numerics.variance.SobolIndices;
import dev.penstock.provenance.KeyPath;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.search.SensitivityResult;
import dev.penstock.study.space.StudyFigure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Which inputs move which figures: JSON document, terminal tables, page with charts. */
public final class SensitivityView {

    /** Standard error of an index from which on it tells little (-); a choice, no source. */
    private static final double ROUGH = 0.1;

    /** Part of the document that is there only where many inputs were sifted first. */
    public static final String SCREENING = "screening";

    private final SensitivityResult result;

    /** @param result what a study found */
    public SensitivityView(SensitivityResult result) {
        this.result = result;
    }

    /** @return JSON document, SI */
    public Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", result.subject().name());
        map.put(
                "figures",
                IntStream.range(0, result.figures().size())
                        .mapToObj(this::figure)
                        .toList());
        map.put("share_that_closes", result.shareThatCloses());
        map.put("failures", result.failures());
        if (!result.screened().isEmpty()) {
            map.put(SCREENING, screening());
        }
        map.put("evaluations", result.evaluations());
        map.put("vary", PointWords.vary(result.space()));
        map.put("seed", (int) result.seed());
        map.put("complete", result.complete());
        return map;
    }

    private Map<String, Object> figure(int f) {
        SobolIndices.Result found = result.results().get(f);
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", result.figures().get(f).path());
        if (Double.isFinite(found.mean())) {
            map.put("mean", found.mean());
            map.put("standard_deviation", found.deviation());
        }
        map.put("share_with_value", found.share());
        List<Map<String, Object>> inputs = new ArrayList<>();
        for (int i = 0; i < result.space().size(); i++) {
            SobolIndices.Index index = found.indices().get(i);
            Map<String, Object> input = new LinkedHashMap<>();
            input.put("path", result.space().variables().get(i).path());
            if (varies(found) && Double.isFinite(index.total())) {
                input.put("first", index.first());
                input.put("first_error", index.firstError());
                input.put("total", index.total());
                input.put("total_error", index.totalError());
            }
            inputs.add(input);
        }
        map.put("inputs", inputs);
        return map;
    }

    private static boolean varies(SobolIndices.Result found) {
        return found.deviation() > 1e-12 * Math.abs(found.mean());
    }

    private List<Map<String, Object>> screening() {
        List<Map<String, Object>> list = new ArrayList<>();
        result.screened().forEach((path, effects) -> {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("path", path);
            map.put("kept", kept(path));
            map.put(
                    "effects",
                    IntStream.range(0, effects.size())
                            .mapToObj(f -> effect(f, effects.get(f)))
                            .toList());
            list.add(map);
        });
        return list;
    }

    private Map<String, Object> effect(int f, Screening.Effect effect) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("figure", result.figures().get(f).path());
        map.put("mean", effect.mean());
        map.put("deviation", effect.deviation());
        return map;
    }

    private boolean kept(String path) {
        return result.space().variables().stream().anyMatch(v -> v.path().equals(path));
    }

    private PageTable table(int f) {
        StudyFigure figure = result.figures().get(f);
        SobolIndices.Result found = result.results().get(f);
        PageTable.Builder table = PageTable.titled(
                figure.title() + ", mean " + PointWords.text(figure, found.mean()) + ", deviation "
                        + PointWords.text(figure, found.deviation()),
                "<input",
                "first",
                "± error",
                "total",
                "± error");
        for (int i : order(found)) {
            SobolIndices.Index index = found.indices().get(i);
            table.row(
                    result.space().variables().get(i).words(),
                    three(index.first()),
                    three(index.firstError()),
                    three(index.total()),
                    three(index.totalError()));
        }
        return table.table();
    }

    private static List<Integer> order(SobolIndices.Result found) {
        return IntStream.range(0, found.indices().size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -found.indices().get(i).total()))
                .toList();
    }

    private static String three(double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%.3f", value) : "-";
    }

    private PageTable screened() {
        List<String> titles = new ArrayList<>(List.of("<input"));
        for (int f = 0; f < result.figures().size(); f++) {
            titles.add(result.figures().get(f).title());
        }
        titles.add("<");
        PageTable.Builder table =
                PageTable.titled("Screening: mean effect over the whole range", titles.toArray(String[]::new));
        result.screened().forEach((path, effects) -> {
            List<String> cells = new ArrayList<>(List.of(KeyPath.words(path)));
            for (int f = 0; f < effects.size(); f++) {
                Screening.Effect effect = effects.get(f);
                cells.add(PointWords.text(result.figures().get(f), effect.mean()));
            }
            cells.add(kept(path) ? "" : "left at the file's value");
            table.row(cells.toArray(String[]::new));
        });
        return table.table();
    }

    private List<String> sentences() {
        List<String> lines = new ArrayList<>();
        lines.add(Notation.PERCENT.write(result.shareThatCloses()) + " of the points close"
                + (result.failures().isEmpty() ? "." : "; why the others do not: " + reasons() + "."));
        if (!result.failures().isEmpty()) {
            lines.add(
                    "Indices are those of the points that close; which inputs decide on that is told as a figure of its own.");
        }
        lines.add(
                "First: share of the variance that is gone if the input is known. Total: share that stays if all others are."
                        + " Each input is varied over its range alike, independently of the others.");
        double error = result.results().stream()
                .flatMap(found -> found.indices().stream())
                .mapToDouble(i -> Math.max(i.firstError(), i.totalError()))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        if (error > ROUGH) {
            lines.add("The largest standard error is " + three(error)
                    + ": read the order of the inputs and no more; four times the points halve it.");
        }
        if (!result.complete()) {
            lines.add("Stopped on the way: this is what the points that were done say.");
        }
        return lines;
    }

    private String reasons() {
        List<String> reasons = new ArrayList<>();
        result.failures().entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(e -> reasons.add(e.getKey() + " " + e.getValue()));
        return String.join(", ", reasons);
    }

    /** Figures worth a table: whether the case closes only where it does not always. */
    private List<Integer> shown() {
        return IntStream.range(0, result.figures().size())
                .filter(f -> f < result.figures().size() - 1
                        || varies(result.results().get(f)))
                .boxed()
                .toList();
    }

    /** @return tables for a terminal */
    public String text() {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(title()).append(line).append(line);
        if (!result.screened().isEmpty()) {
            text.append(TextTable.of(screened())).append(line);
        }
        for (int f : shown()) {
            text.append(TextTable.of(table(f))).append(line);
        }
        sentences().forEach(s -> text.append(s).append(line));
        return text.toString();
    }

    /** @return what was asked */
    public String title() {
        return result.subject().name() + ": what matters, of " + result.space().size()
                + (result.space().size() == 1 ? " input" : " inputs");
    }

    /**
     * @param software what the numbers were made with
     * @return the page
     */
    public String html(Software software) {
        return OptimumView.page(result.subject(), title(), "Sensitivity", sections(), software);
    }

    /** @return what the page holds */
    public List<PageSection> sections() {
        List<PageSection> sections = new ArrayList<>();
        for (int f : shown()) {
            StudyFigure figure = result.figures().get(f);
            boolean varies = varies(result.results().get(f));
            sections.add(new PageSection(
                    "figure-" + f,
                    figure.title(),
                    "Which inputs move it?",
                    sections.isEmpty() ? sentences() : List.of(),
                    varies ? List.of(chart(f)) : List.of(),
                    List.of(table(f)),
                    List.of()));
        }
        if (!result.screened().isEmpty()) {
            sections.add(new PageSection(
                    "screening",
                    "Screening",
                    "Which inputs were looked at?",
                    List.of(),
                    List.of(),
                    List.of(screened()),
                    List.of()));
        }
        return sections;
    }

    private Drawing chart(int f) {
        SobolIndices.Result found = result.results().get(f);
        List<SpanChart.Bar> bars = new ArrayList<>();
        for (int i : order(found)) {
            SobolIndices.Index index = found.indices().get(i);
            String input = result.space().variables().get(i).words();
            bars.add(new SpanChart.Bar(
                    input + ": first",
                    0,
                    Math.max(0, index.first()),
                    Ink.STEEL,
                    error(index.first(), index.firstError())));
            bars.add(new SpanChart.Bar(
                    input + ": total",
                    0,
                    Math.max(0, index.total()),
                    Ink.GAS,
                    error(index.total(), index.totalError())));
        }
        return new Drawing(
                SpanChart.svg("indices-" + f, result.figures().get(f).title(), "share of the variance", true, bars),
                "First and total index of each input, with the standard error.",
                true);
    }

    private static String error(double value, double error) {
        return three(value) + " ± " + three(error);
    }
}

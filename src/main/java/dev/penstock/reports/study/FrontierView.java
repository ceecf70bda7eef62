package dev.penstock.reports.study;

import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.search.FrontierResult;
import dev.penstock.study.search.Objective;
import dev.penstock.study.search.Question;
import dev.penstock.study.space.Constraint;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What one objective costs of another: JSON document, terminal table, page with charts. */
public final class FrontierView {

    private final FrontierResult result;
    private final Question question;
    private final StudySpace space;
    private final PointWords words;
    private final int knee;

    /** @param result what a search found */
    public FrontierView(FrontierResult result) {
        this.result = result;
        this.question = result.question();
        this.space = question.space();
        this.words = new PointWords(question);
        this.knee = result.knee();
    }

    /** @return JSON document, SI */
    public Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", question.subject().name());
        map.put(
                "objectives",
                question.objectives().stream().map(PointWords::goal).toList());
        map.put(
                "points",
                result.points().stream().map(p -> words.document(space, p)).toList());
        map.put("knee", knee);
        map.put("hypervolume", result.hypervolume());
        map.put("hypervolume_by_generation", result.growth());
        map.put("reference", result.reference());
        map.put(
                "constraints",
                question.constraints().stream().map(Constraint::text).toList());
        Map<String, Object> filed = new LinkedHashMap<>();
        filed.put("figures", words.figures(result.filed()));
        filed.put("feasible", question.feasible(result.filed()));
        map.put("file", filed);
        map.put("evaluations", result.evaluations());
        map.put("vary", PointWords.vary(space));
        map.put("seed", (int) result.seed());
        map.put("complete", result.complete());
        return map;
    }

    /** @return what was asked */
    public String title() {
        return question.subject().name() + ": "
                + question.objectives().stream().map(Objective::readable).collect(Collectors.joining(" against "));
    }

    private List<String> sentences() {
        List<String> lines = new ArrayList<>();
        if (result.points().isEmpty()) {
            lines.add("No point that was tried closes and keeps every constraint.");
        }
        if (!result.complete()) {
            lines.add("Stopped on the way: these are the generations that were done.");
        }
        lines.add(result.evaluations() + " points tried, " + result.points().size()
                + " of them on the frontier. The hypervolume grew by " + lastGrowth()
                + " in the last quarter of the generations; little growth says that more of them find little more.");
        return lines;
    }

    private String lastGrowth() {
        List<Double> growth = result.growth();
        double last = growth.get(growth.size() - 1);
        double before = growth.get((int) (0.75 * (growth.size() - 1)));
        return last > 0 ? String.format(Locale.ROOT, "%.2g %%", 100 * (last - before) / last) : "nothing";
    }

    private PageTable table() {
        List<String> titles = new ArrayList<>(List.of("no."));
        List<StudyFigure> figures = question.figures();
        question.objectives().forEach(o -> titles.add(o.figure().title()));
        space.variables().forEach(v -> titles.add(v.words()));
        titles.add("<");
        PageTable.Builder table = PageTable.titled("Frontier", titles.toArray(String[]::new));
        for (int i = 0; i < result.points().size(); i++) {
            StudyPoint point = result.points().get(i);
            List<String> cells = new ArrayList<>(List.of(Integer.toString(i + 1)));
            for (int k = 0; k < question.objectives().size(); k++) {
                cells.add(PointWords.text(figures.get(k), point.figures()[k]));
            }
            for (int k = 0; k < space.size(); k++) {
                Variable variable = space.variables().get(k);
                cells.add(PointWords.text(variable, point.values()[k]));
            }
            cells.add(i == knee ? "knee" : "");
            table.row(cells.toArray(String[]::new));
        }
        return table.table();
    }

    /** @return table for a terminal */
    public String text() {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(title()).append(line).append(line);
        if (!result.points().isEmpty()) {
            text.append(TextTable.of(table())).append(line);
        }
        sentences().forEach(s -> text.append(s).append(line));
        if (knee >= 0) {
            text.append(line)
                    .append("See the knee: ")
                    .append(words.here(space, result.points().get(knee)))
                    .append(line);
        }
        return text.toString();
    }

    /**
     * @param software what the numbers were made with
     * @return the page
     */
    public String html(Software software) {
        return OptimumView.page(question.subject(), title(), "Frontier", sections(), software);
    }

    /** @return what the page holds */
    public List<PageSection> sections() {
        List<Drawing> drawings = new ArrayList<>();
        if (result.points().size() > 1) {
            drawings.add(front());
            drawings.add(growth());
        }
        List<String> ways = IntStream.range(0, result.points().size())
                .mapToObj(i -> "Point " + (i + 1) + (i == knee ? " (knee): " : ": ")
                        + words.again(space, result.points().get(i)))
                .toList();
        return List.of(
                new PageSection(
                        "frontier",
                        "Frontier",
                        "What does one cost of the other?",
                        sentences(),
                        drawings,
                        List.of(table()),
                        List.of()),
                new PageSection("points", "Points", "How is each seen again?", ways, List.of(), List.of(), List.of()));
    }

    private Drawing front() {
        FigureAxis across = axis(question.objectives().get(0).figure());
        List<LineChart.Panel> panels = new ArrayList<>();
        for (int k = 1; k < question.objectives().size(); k++) {
            int which = k;
            StudyFigure figure = question.objectives().get(k).figure();
            FigureAxis up = axis(figure);
            List<Curve.Point> points = result.points().stream()
                    .map(p -> new Curve.Point(across.at(p.figures()[0]), up.at(p.figures()[which])))
                    .toList();
            panels.add(new LineChart.Panel(
                    up.label(), 1, false, List.of(new Curve(figure.title(), Ink.GAS, false, points).marked())));
        }
        List<LineChart.Mark> marks = knee < 0
                ? List.of()
                : List.of(new LineChart.Mark(across.at(result.points().get(knee).figures()[0]), "knee"));
        return new Drawing(
                LineChart.svg("front", title(), across.label(), panels, 120 + 220 * panels.size(), List.of(), marks),
                "Each mark is an engine or vehicle of its own that nothing tried beats in everything. The upright line is the"
                        + " knee: the point farthest from the straight line between the ends.",
                true);
    }

    private Drawing growth() {
        List<Curve.Point> points = IntStream.range(0, result.growth().size())
                .mapToObj(g -> new Curve.Point(g, result.growth().get(g)))
                .toList();
        return new Drawing(
                LineChart.svg(
                        "growth",
                        "Hypervolume as it grows",
                        "generation",
                        List.of(new LineChart.Panel(
                                "hypervolume", 1, false, List.of(new Curve("hypervolume", Ink.STEEL, false, points)))),
                        260),
                "The volume that the frontier encloses, against the generation.",
                true);
    }

    static FigureAxis axis(StudyFigure figure) {
        return FigureAxis.of(figure.title(), figure.notation());
    }
}

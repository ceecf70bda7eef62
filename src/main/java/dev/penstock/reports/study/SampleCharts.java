package dev.penstock.reports.study;

import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.PageTable;
import dev.penstock.study.space.CaseFigures;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.store.Column;
import dev.penstock.study.store.StudySummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the rows of a sample say together, as sections of a page. */
public final class SampleCharts {

    /** Of the value (-). */
    private static final double LEAST_SPREAD = 1e-6;

    /** More figures than that are told by the table alone. */
    private static final int DRAWN = 6;

    private static final int MOST_LIMITS = 12;

    private SampleCharts() {}

    /**
     * @param summary what the rows say together
     * @return sections: how each figure is spread, which limits are missed, why points have no answer
     */
    public static List<PageSection> sections(StudySummary summary) {
        List<PageSection> sections = new ArrayList<>();
        List<Drawing> spreads = summary.figures().stream()
                .filter(SampleCharts::varies)
                .limit(DRAWN)
                .map(SampleCharts::spread)
                .toList();
        sections.add(section(
                "spread",
                "Figures",
                "How are the figures spread?",
                List.of(said(summary)),
                spreads,
                List.of(figures(summary))));
        if (!summary.missed().isEmpty()) {
            sections.add(section(
                    "limits",
                    "Limits",
                    "Which limits are missed, and how often?",
                    List.of(),
                    List.of(missed(summary)),
                    List.of()));
        }
        if (!summary.failures().isEmpty()) {
            sections.add(section(
                    "failures",
                    "Without an answer",
                    "Why do points have no answer?",
                    List.of(),
                    List.of(),
                    List.of(failures(summary))));
        }
        return sections;
    }

    /** What a solver leaves is no spread. */
    private static boolean varies(StudySummary.Spread spread) {
        double largest = Math.max(Math.abs(spread.least()), Math.abs(spread.most()));
        return spread.most() - spread.least() > LEAST_SPREAD * largest;
    }

    private static Notation notation(Column figure) {
        return CaseFigures.ofConceptNamed(figure.name())
                .or(() -> CaseFigures.ofVehicleNamed(figure.name(), List.of()))
                .map(StudyFigure::notation)
                .orElseGet(() -> Notation.ofUnit(figure.unit()));
    }

    private static PageSection section(
            String id, String title, String question, List<String> said, List<Drawing> drawn, List<PageTable> tables) {
        return new PageSection(id, title, question, said, drawn, tables, List.of());
    }

    private static String said(StudySummary summary) {
        return String.format(
                Locale.ROOT,
                "%d of %d points are done; %s have an answer, %s keep all limits%s.",
                summary.rows(),
                summary.points(),
                share(summary.answered(), summary),
                share(summary.withinLimits(), summary),
                summary.constraintsKept().isEmpty()
                        ? ""
                        : ", " + share(summary.constraintsKept().getAsLong(), summary) + " keep the constraints");
    }

    private static String share(long count, StudySummary summary) {
        return Notation.PERCENT.write(count / (double) Math.max(1, summary.rows()));
    }

    private static PageTable figures(StudySummary summary) {
        List<String> titles = new ArrayList<>(List.of("<figure", "least"));
        StudySummary.PERCENTILES.forEach(p -> titles.add(p + " %"));
        titles.add("most");
        PageTable.Builder table = PageTable.titled("Figures over the points", titles.toArray(String[]::new));
        for (StudySummary.Spread spread : summary.figures()) {
            Notation notation = notation(spread.figure());
            List<String> cells = new ArrayList<>(List.of(spread.figure().title()));
            cells.add(notation.writeWithUnit(spread.least()));
            spread.percentiles().forEach(p -> cells.add(notation.writeWithUnit(p)));
            cells.add(notation.writeWithUnit(spread.most()));
            table.row(cells.toArray(String[]::new));
        }
        return table.table();
    }

    private static PageTable failures(StudySummary summary) {
        PageTable.Builder table =
                PageTable.titled("Why there is no answer (# for each number)", "<reason", "points", "share");
        summary.failures()
                .forEach(reason ->
                        table.row(reason.words(), Long.toString(reason.count()), share(reason.count(), summary)));
        return table.table();
    }

    /** Share of the points below a value of the figure, through least, percentiles and most. */
    private static Drawing spread(StudySummary.Spread spread) {
        FigureAxis axis = FigureAxis.of(spread.figure().title(), notation(spread.figure()));
        List<Curve.Point> points = new ArrayList<>();
        points.add(new Curve.Point(axis.at(spread.least()), 0));
        for (int i = 0; i < StudySummary.PERCENTILES.size(); i++) {
            points.add(new Curve.Point(axis.at(spread.percentiles().get(i)), StudySummary.PERCENTILES.get(i)));
        }
        points.add(new Curve.Point(axis.at(spread.most()), 100));
        return new Drawing(
                LineChart.svg(
                        "spread-" + spread.figure().name().replaceAll("[^\\w]", "-"),
                        spread.figure().title(),
                        axis.label(),
                        List.of(new LineChart.Panel(
                                "points below (%)",
                                1, true, List.of(new Curve("", Ink.STEEL, false, points).marked()))),
                        240),
                spread.figure().title() + ": share of the points that have less.",
                true);
    }

    private static Drawing missed(StudySummary summary) {
        List<SpanChart.Bar> bars = summary.missed().stream()
                .limit(MOST_LIMITS)
                .map(limit -> new SpanChart.Bar(
                        limit.name(),
                        0,
                        100.0 * limit.count() / Math.max(1, summary.rows()),
                        Ink.GAS,
                        share(limit.count(), summary)))
                .toList();
        return new Drawing(
                SpanChart.svg("limits", "Limits missed", "share of the points (%)", true, bars),
                "Share of the points that miss each limit.",
                true);
    }
}

package dev.penstock.reports.engine;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.PageTable;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.MassItem;
import java.util.ArrayList;
import java.util.List;

/** Mass of an engine, part by part with its band: section of a page. */
public final class MassView {

    private MassView() {}

    /**
     * @param balance balanced engine
     * @return section of a page
     */
    public static PageSection section(EngineBalance balance) {
        EngineMass mass = balance.mass();
        List<SpanChart.Bar> bars = new ArrayList<>();
        for (MassItem item : mass.items()) {
            if (item.mass().mode() > 0) {
                bars.add(new SpanChart.Bar(
                        item.name(),
                        item.mass().low(),
                        item.mass().high(),
                        Ink.STEEL,
                        Notation.MASS.writeWithUnit(item.mass().mode()) + " likely",
                        item.mass().mode()));
            }
        }
        return new PageSection(
                "mass",
                "Mass",
                "How heavy is the engine, and how sure is that?",
                List.of(EngineMass.SCOPE
                        + " Each part by a relation of its own with its scatter; the scatters of parts are taken as"
                        + " independent and add in squares, with them what all parts of built engines miss together."),
                List.of(new Drawing(
                        SpanChart.svg("c-mass", "Mass of the parts", "mass (kg)", true, bars),
                        "Mass of each part from the lightest to the heaviest believed; the mark and the figure are the most likely.",
                        false)),
                List.of(EngineTables.mass(balance).and(thrustToWeight(balance))),
                mass.wholeEngine().isEmpty() ? List.of() : List.of(EngineTables.wholeEngine(balance)));
    }

    private static PageTable thrustToWeight(EngineBalance balance) {
        return FigureRows.rows(
                EngineFigures.HEADLINE,
                balance,
                "engine",
                List.of("thrust_to_weight thrust_to_weight_low thrust_to_weight_high"));
    }
}

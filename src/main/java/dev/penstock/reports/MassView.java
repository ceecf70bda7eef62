package dev.penstock.reports;

import dev.penstock.cycles.EngineBalance;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.Trail;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.MassItem;
import java.util.ArrayList;
import java.util.List;

/** Mass of an engine, part by part with its band: table for a terminal and section of a page. */
final class MassView {

    /** What the mass counts. */
    static final String SCOPE =
            "The engine from the tank outlets to the nozzle exit, dry. Tanks, pressurant and propellant"
                    + " belong to the vehicle.";

    private MassView() {}

    static String text(EngineBalance balance) {
        EngineMass mass = balance.mass();
        TextTable table = new TextTable().header("mass", "kg", "lowest", "highest", "<source");
        mass.items().forEach(item -> table.row(cells(item)));
        Spread total = mass.total();
        table.row("engine, dry", kilogram(total.mode()), kilogram(total.low()), kilogram(total.high()), "");
        return table.text();
    }

    private static String[] cells(MassItem item) {
        Spread m = item.mass();
        return new String[] {item.name(), kilogram(m.mode()), kilogram(m.low()), kilogram(m.high()), item.source()};
    }

    private static String[] traces(String list, MassItem item) {
        return EngineTables.traces(list + Trail.slug(item.name()), "", "mass_kg", "low_kg", "high_kg");
    }

    static String kilogram(double mass) {
        return Figures.significant(mass, 3);
    }

    static String between(Spread spread) {
        return Figures.significant(spread.low(), 3) + " to " + Figures.significant(spread.high(), 3);
    }

    static PageSection section(EngineBalance balance) {
        EngineMass mass = balance.mass();
        Spread total = mass.total();
        Spread ratio = mass.thrustToWeight();
        List<SpanChart.Bar> bars = new ArrayList<>();
        for (MassItem item : mass.items()) {
            if (item.mass().mode() > 0) {
                bars.add(new SpanChart.Bar(
                        item.name(),
                        item.mass().low(),
                        item.mass().high(),
                        Ink.STEEL,
                        kilogram(item.mass().mode()) + " kg"));
            }
        }
        PageTable.Builder table =
                PageTable.titled("Engine mass", "<part", "mass (kg)", "lowest (kg)", "highest (kg)", "<source");
        for (MassItem item : mass.items()) {
            table.row(cells(item)).traced(traces("mass.items.", item));
        }
        table.row("engine, dry", kilogram(total.mode()), kilogram(total.low()), kilogram(total.high()), "")
                .traced(EngineTables.traces("engine", "", "mass_kg", "mass_low_kg", "mass_high_kg"));
        table.row(
                        "thrust to weight, vacuum",
                        Figures.significant(ratio.mode(), 3),
                        Figures.significant(ratio.low(), 3),
                        Figures.significant(ratio.high(), 3),
                        "")
                .traced(EngineTables.traces(
                        "engine", "", "thrust_to_weight", "thrust_to_weight_low", "thrust_to_weight_high"));
        PageTable.Builder whole = PageTable.titled(
                "What relations for whole engines say",
                "<relation",
                "mass (kg)",
                "lowest (kg)",
                "highest (kg)",
                "<source");
        mass.wholeEngine().forEach(item -> whole.row(cells(item)).traced(traces("mass.whole_engine.", item)));
        return new PageSection(
                "mass",
                "Mass",
                "How heavy is the engine, and how sure is that?",
                List.of(SCOPE
                        + " Each part by a relation of its own with its scatter; the scatters are taken as independent"
                        + " and add in squares."),
                List.of(new Figure(
                        SpanChart.svg("c-mass", "Mass of the parts", "mass (kg)", true, bars),
                        "Mass of each part from the lightest to the heaviest believed; the figure is the most likely.",
                        false)),
                List.of(table.table()),
                mass.wholeEngine().isEmpty() ? List.of() : List.of(whole.table()));
    }
}

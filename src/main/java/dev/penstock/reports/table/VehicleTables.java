package dev.penstock.reports.table;

import dev.penstock.provenance.Trail;
import dev.penstock.reports.chart.Figure;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;

/** The tables of a sized vehicle. */
public final class VehicleTables {

    private VehicleTables() {}

    public static PageSection section(VehicleSizing vehicle) {
        Figure masses = masses(vehicle);
        List<PageTable> dry =
                vehicle.stages().stream().map(VehicleTables::dryMass).toList();
        return new PageSection(
                "vehicle",
                "Vehicle",
                "What does a vehicle with this engine weigh?",
                VehicleSizing.DEFINITIONS,
                List.of(masses),
                List.of(summary(vehicle), stages(vehicle), budget(vehicle)),
                dry);
    }

    public static Figure masses(VehicleSizing vehicle) {
        List<SpanChart.Bar> bars = new ArrayList<>();
        double at = 0;
        for (StageSizing s : vehicle.stages()) {
            if (s.boosters().isPresent()) {
                at = boosters(bars, at, s.boosters().get());
            }
            at = bar(bars, s.name() + ": oxidizer", at, s.propellant().oxidizer(), Ink.OXIDIZER);
            at = bar(bars, s.name() + ": fuel", at, s.propellant().fuel(), Ink.FUEL);
            at = bar(bars, s.name() + ": dry", at, s.dryMass().total(), Ink.STEEL);
        }
        bar(bars, "payload", at, vehicle.payload(), Ink.GAIN);
        return new Figure(
                SpanChart.svg("v-mass", "Start mass by part", "mass (t)", true, bars),
                "How the start mass adds up, lowest stage first.",
                false);
    }

    private static double boosters(List<SpanChart.Bar> bars, double from, BoosterSizing b) {
        int n = b.count();
        double at =
                bar(bars, n + " boosters: oxidizer", from, n * b.propellant().oxidizer(), Ink.OXIDIZER);
        at = bar(bars, n + " boosters: fuel", at, n * b.propellant().fuel(), Ink.FUEL);
        return bar(bars, n + " boosters: dry", at, n * b.dryMass().total(), Ink.STEEL);
    }

    private static double bar(List<SpanChart.Bar> bars, String label, double from, double mass, Ink ink) {
        bars.add(new SpanChart.Bar(label, from / 1e3, (from + mass) / 1e3, ink, tonnes(mass) + " t"));
        return from + mass;
    }

    static PageTable summary(VehicleSizing v) {
        return PageTable.titled(v.plan().name(), "<quantity", "value", "<unit")
                .row("start mass", tonnes(v.startMass()), "t")
                .traced("", "start_mass_kg")
                .row("propellant mass, all stages", tonnes(v.propellantMass()), "t")
                .traced("", "propellant_mass_kg")
                .row("dry mass, all stages", tonnes(v.dryMass()), "t")
                .traced("", "dry_mass_kg")
                .row("payload", tonnes(v.payload()), "t")
                .traced("", "payload_kg")
                .row("payload share of the start mass", Figures.significant(v.payloadFraction() * 100, 3), "%")
                .traced("", "payload_fraction")
                .row("ideal speed gain", Figures.fixed(v.deltaV(), 0), "m/s")
                .traced("", "delta_v_m_s")
                .table();
    }

    static PageTable stages(VehicleSizing v) {
        PageTable.Builder table = PageTable.titled(
                "Stages",
                "<stage",
                "engines",
                "start mass (t)",
                "oxidizer (t)",
                "fuel (t)",
                "dry (t)",
                "oxidizer tank (m³)",
                "fuel tank (m³)",
                "speed gain (m/s)",
                "Isp (s)",
                "thrust / weight",
                "burn (s)");
        v.stages().forEach(s -> table.row(
                        s.name(),
                        Integer.toString(s.engines()),
                        tonnes(s.startMass()),
                        tonnes(s.propellant().oxidizer()),
                        tonnes(s.propellant().fuel()),
                        tonnes(s.dryMass().total()),
                        Figures.significant(s.oxidizerTankVolume(), 4),
                        Figures.significant(s.fuelTankVolume(), 4),
                        Figures.fixed(s.deltaV(), 0),
                        Figures.fixed(s.isp(), 1),
                        Figures.fixed(s.thrustToWeight(), 2),
                        Figures.fixed(s.burnTime(), 0))
                .traced(PageTable.traces(
                        "stages." + Trail.slug(s.name()),
                        "",
                        "engines",
                        "start_mass_kg",
                        "oxidizer_mass_kg",
                        "fuel_mass_kg",
                        "dry_mass_kg",
                        "oxidizer_tank_m3",
                        "fuel_tank_m3",
                        "delta_v_m_s",
                        "isp_s",
                        "thrust_to_weight",
                        "burn_time_s")));
        return table.table();
    }

    static PageTable budget(VehicleSizing v) {
        PageTable.Builder table = PageTable.titled("Speed budget", "<term", "m/s", "<source");
        v.plan().mission().terms().forEach(t -> table.row(t.name(), Figures.fixed(t.value(), 0), t.source())
                .traced("", "delta_v_budget." + Trail.slug(t.name()) + ".delta_v_m_s"));
        table.row("sum", Figures.fixed(v.plan().mission().total(), 0), "").traced("", "delta_v_budget.total_m_s");
        return table.table();
    }

    private static PageTable dryMass(StageSizing s) {
        PageTable.Builder table =
                PageTable.titled("Dry mass of " + s.name(), "<part", "mass (kg)", "share", "scatter", "<source");
        String path = "stages." + Trail.slug(s.name());
        s.dryMass().lines().forEach(l -> table.row(
                        l.name(),
                        Figures.significant(l.mass(), 4),
                        Figures.percent(s.dryMass().share(l)),
                        "± " + Figures.fixed(100 * l.scatter(), 0) + " %",
                        l.source())
                .traced(PageTable.traces(
                        path + ".dry_mass." + Trail.slug(l.name()), "", "mass_kg", "share", "scatter")));
        table.row(
                        "growth margin",
                        Figures.significant(s.dryMass().growth(), 4),
                        Figures.percent(s.dryMass().growth() / s.dryMass().total()),
                        "",
                        "margin of the plan")
                .traced("", path + ".dry_mass_growth_margin_kg", path + ".dry_mass_growth_share");
        table.row(
                        "dry mass",
                        Figures.significant(s.dryMass().total(), 4),
                        "100.0 %",
                        "± "
                                + Figures.fixed(
                                        100
                                                * s.dryMass().scatter()
                                                / s.dryMass().total(),
                                        0) + " %",
                        "lines taken as independent")
                .traced("", path + ".dry_mass_kg", path + ".dry_mass_share", path + ".dry_mass_scatter_share");
        return table.table();
    }

    public static String tonnes(double kilograms) {
        return Figures.significant(kilograms / 1e3, 4);
    }
}

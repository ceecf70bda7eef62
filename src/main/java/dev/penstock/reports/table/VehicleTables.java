package dev.penstock.reports.table;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Notation;
import dev.penstock.quantities.Scale;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.PageTable;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.PropellantLoad;
import dev.penstock.vehicle.stage.StageFigures;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleFigures;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;

/** The tables of a sized vehicle. */
public final class VehicleTables {

    private static final String ONE_BOOSTER = "one booster";
    private static final String BOOSTERS = ".boosters";
    private static final List<String> TANKS = List.of(
            "oxidizer_tank_m3 oxidizer_tank_diameter_m oxidizer_tank_length_m",
            "fuel_tank_m3 fuel_tank_diameter_m fuel_tank_length_m");

    private VehicleTables() {}

    /**
     * @param vehicle sized vehicle
     * @return section of a page
     */
    public static PageSection section(VehicleSizing vehicle) {
        Drawing masses = masses(vehicle);
        return new PageSection(
                "vehicle",
                "Vehicle",
                "What does a vehicle with this engine weigh?",
                VehicleSizing.DEFINITIONS,
                List.of(masses),
                List.of(summary(vehicle), stages(vehicle), budget(vehicle)),
                dryMasses(vehicle));
    }

    /**
     * @param vehicle sized vehicle
     * @return dry mass of each stage line by line, after that of a booster beside it
     */
    public static List<PageTable> dryMasses(VehicleSizing vehicle) {
        List<PageTable> tables = new ArrayList<>();
        for (StageSizing stage : vehicle.stages()) {
            stage.boosters().ifPresent(b -> tables.add(dryMass(stage, b)));
            tables.add(dryMass(stage));
        }
        return tables;
    }

    /**
     * @param vehicle sized vehicle
     * @return how its start mass adds up
     */
    public static Drawing masses(VehicleSizing vehicle) {
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
        return new Drawing(
                SpanChart.svg("v-mass", "Start mass by part", Scale.of("t").label("mass"), true, bars),
                "How the start mass adds up, lowest stage first.",
                false);
    }

    private static double boosters(List<SpanChart.Bar> bars, double from, BoosterSizing b) {
        int n = b.count();
        double at = from;
        if (b.liquid().isPresent()) {
            PropellantLoad load = b.liquid().get().propellant();
            at = bar(bars, n + " boosters: oxidizer", at, n * load.oxidizer(), Ink.OXIDIZER);
            at = bar(bars, n + " boosters: fuel", at, n * load.fuel(), Ink.FUEL);
        } else {
            at = bar(bars, n + " boosters: solid propellant", at, n * b.loadedEach(), Ink.FUEL);
        }
        return bar(bars, n + " boosters: dry", at, n * b.dryMass().total(), Ink.STEEL);
    }

    private static double bar(List<SpanChart.Bar> bars, String label, double from, double mass, Ink ink) {
        Scale tonnes = Scale.of("t");
        bars.add(new SpanChart.Bar(
                label, tonnes.of(from), tonnes.of(from + mass), ink, Notation.TONNES.writeWithUnit(mass)));
        return from + mass;
    }

    static PageTable summary(VehicleSizing v) {
        return FigureRows.sheet(
                v.plan().name(),
                VehicleFigures.ALL,
                v,
                "",
                "start_mass_kg propellant_mass_kg dry_mass_kg payload_kg payload_fraction delta_v_m_s height_m");
    }

    /** @return one line for each stage and for the boosters beside it */
    public static PageTable stages(VehicleSizing v) {
        return stages(v, "Stages, the lowest first; boosters stand before the stage beside which they burn");
    }

    /**
     * @param v sized vehicle
     * @param caption what the table shows
     * @return one line for each stage, after one for the boosters beside it
     */
    public static PageTable stages(VehicleSizing v, String caption) {
        String both = "name engines start_mass_kg propellant_mass_kg oxidizer_mass_kg fuel_mass_kg dry_mass_kg isp_s";
        boolean third = v.stages().stream().anyMatch(s -> s.propellant().diluentShare() > 0);
        String keys = both + " delta_v_m_s thrust_to_weight burn_time_s oxidizer_tank_m3 fuel_tank_m3"
                + (third ? " diluent_mass_kg" : "") + " diameter_m length_m";
        PageTable table = FigureRows.list(caption, StageFigures.STAGES, "stages", List.of(), keys);
        for (FigureTable.Placed<StageSizing> stage : StageFigures.STAGES.placed("stages", v.stages())) {
            List<FigureTable.Placed<BoosterSizing>> beside = stage.thing().boosters().stream()
                    .map(b -> new FigureTable.Placed<>(b, Place.at(stage.at().path() + BOOSTERS)))
                    .toList();
            table = table.and(FigureRows.list("", StageFigures.BOOSTERS, beside, b -> "", both))
                    .and(FigureRows.list("", StageFigures.STAGES, List.of(stage), s -> "", keys));
        }
        return table;
    }

    /** @return terms of the velocity budget and their sum */
    public static PageTable budget(VehicleSizing v) {
        PageTable terms = FigureRows.list(
                "Velocity budget",
                VehicleFigures.BUDGET,
                "delta_v_budget",
                v.plan().mission().terms(),
                "name delta_v_m_s source");
        return terms.and(FigureRows.rows(VehicleFigures.ALL, v, "", List.of("delta_v_budget.total_m_s")));
    }

    /**
     * @param v sized vehicle
     * @return size of every tank
     */
    public static PageTable tanks(VehicleSizing v) {
        PageTable table = PageTable.titled(
                        "Tanks",
                        "<tank",
                        Scale.of("m³").label("volume"),
                        Scale.of("m").label("diameter"),
                        Scale.of("m").label("length"))
                .table();
        for (FigureTable.Placed<StageSizing> stage : StageFigures.STAGES.placed("stages", v.stages())) {
            StageSizing s = stage.thing();
            String at = stage.at().path();
            if (s.boosters().flatMap(BoosterSizing::liquid).isPresent()) {
                table = table.and(
                        FigureRows.rows(StageFigures.BOOSTERS, s.boosters().get(), at + BOOSTERS, TANKS)
                                .named(ONE_BOOSTER));
            }
            table = table.and(FigureRows.rows(StageFigures.STAGES, s, at, TANKS).named(s.name()));
        }
        return table;
    }

    /** Dry mass of one of the boosters of a stage, line by line. */
    private static PageTable dryMass(StageSizing s, BoosterSizing boosters) {
        return dryMass(ONE_BOOSTER, path(s) + BOOSTERS + ".dry_mass_of_one", boosters.dryMass());
    }

    /** @return dry mass of a stage, line by line */
    public static PageTable dryMass(StageSizing s) {
        return dryMass(s.name(), path(s) + ".dry_mass", s.dryMass());
    }

    private static String path(StageSizing s) {
        return "stages." + Trail.slug(s.name());
    }

    private static PageTable dryMass(String name, String path, MassTable m) {
        PageTable lines = FigureRows.list(
                "Dry mass of " + name,
                StageFigures.DRY_MASS,
                path,
                StageFigures.DryLine.of(m),
                "name mass_kg share scatter source");
        return lines.and(PageTable.titled("")
                .row(
                        "growth margin",
                        kilograms(m.growth()),
                        Notation.PERCENT.write(m.share(m.growth())),
                        "",
                        "margin of the plan")
                .traced("", path + "_growth_margin_kg", path + "_growth_share")
                .row(
                        "dry mass",
                        kilograms(m.total()),
                        "100.0 %",
                        "± " + Notation.fixed(100 * m.share(m.scatter()), 0) + " %",
                        "fifteen flown stages beside the lines")
                .traced("", path + "_kg", path + "_share", path + "_scatter_share")
                .table());
    }

    private static String kilograms(double mass) {
        return Notation.significant("kg", 4).write(mass);
    }
}

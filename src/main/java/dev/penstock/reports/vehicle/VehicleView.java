package dev.penstock.reports.vehicle;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.reports.chart.Figure;
import dev.penstock.reports.concept.Grounds;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.Assumptions;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.page.TrailPart;
import dev.penstock.reports.table.VehicleTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.SizingTrail;
import dev.penstock.vehicle.StageReturn;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A sized vehicle as JSON document, terminal tables and page. */
public final class VehicleView {

    private VehicleView() {}

    /**
     * @param vehicle sized vehicle
     * @return JSON document
     */
    public static Map<String, Object> json(VehicleSizing vehicle) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", vehicle.plan().name());
        map.put("start_mass_kg", vehicle.startMass());
        map.put("payload_kg", vehicle.payload());
        map.put("payload_fraction", vehicle.payloadFraction());
        map.put("propellant_mass_kg", vehicle.propellantMass());
        map.put("dry_mass_kg", vehicle.dryMass());
        map.put("delta_v_m_s", vehicle.deltaV());
        vehicle.ispFactor().ifPresent(factor -> map.put("isp_needed_over_isp", factor));
        map.put("stages", vehicle.stages().stream().map(VehicleView::stage).toList());
        map.put(
                "delta_v_budget",
                vehicle.plan().mission().terms().stream()
                        .map(t -> {
                            Map<String, Object> term = new LinkedHashMap<>();
                            term.put("name", t.name());
                            term.put("delta_v_m_s", t.value());
                            term.put("source", t.source());
                            return term;
                        })
                        .toList());
        map.put("definitions", VehicleSizing.DEFINITIONS);
        map.put("warnings", FigureJson.each(CheckFigures.WARNINGS, vehicle.warnings()));
        return map;
    }

    private static Map<String, Object> stage(StageSizing s) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", s.name());
        map.put("engine", s.engine().name());
        map.put("engines", s.engines());
        map.put("start_mass_kg", s.startMass());
        map.put("propellant_mass_kg", s.propellant().loaded());
        map.put("oxidizer_mass_kg", s.propellant().oxidizer());
        map.put("fuel_mass_kg", s.propellant().fuel());
        map.put("oxidizer_tank_m3", s.oxidizerTankVolume());
        map.put("fuel_tank_m3", s.fuelTankVolume());
        map.put("dry_mass_kg", s.dryMass().total());
        map.put("delta_v_m_s", s.deltaV());
        map.put("isp_s", s.isp());
        map.put("burned_propellant_kg", s.propellant().burned());
        map.put("residual_propellant_kg", s.propellant().residual());
        map.put("final_mass_kg", s.finalMass());
        map.put("mass_ratio", s.massRatio());
        map.put("thrust_to_weight", s.thrustToWeight());
        map.put("burn_time_s", s.burnTime());
        map.put("diameter_m", s.contents().diameter());
        map.put("length_m", s.contents().length());
        map.put("recovery_propellant_kg", s.propellant().recovery());
        map.put("structural_coefficient", s.structuralCoefficient());
        map.put("dry_mass_scatter_kg", s.dryMass().scatter());
        map.put("dry_mass_growth_margin_kg", s.dryMass().growth());
        map.put("dry_mass", lines(s.dryMass()));
        s.boosters().ifPresent(b -> map.put("boosters", boosters(b)));
        return map;
    }

    private static Map<String, Object> boosters(BoosterSizing b) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("count", b.count());
        map.put("engine", b.engine().name());
        map.put("start_mass_kg", b.startMass());
        map.put("propellant_mass_kg", b.count() * b.propellant().loaded());
        map.put("oxidizer_mass_kg", b.count() * b.propellant().oxidizer());
        map.put("fuel_mass_kg", b.count() * b.propellant().fuel());
        map.put("dry_mass_kg", b.count() * b.dryMass().total());
        map.put("isp_s", b.engine().vacuumIsp());
        map.put("burn_time_s", b.burnTime());
        map.put("dry_mass_of_one", lines(b.dryMass()));
        return map;
    }

    private static List<Map<String, Object>> lines(MassTable table) {
        return table.lines().stream()
                .map(l -> {
                    Map<String, Object> line = new LinkedHashMap<>();
                    line.put("name", l.name());
                    line.put("mass_kg", l.mass());
                    line.put("share", table.share(l));
                    line.put("scatter", l.scatter());
                    line.put("source", l.source());
                    return line;
                })
                .toList();
    }

    /**
     * @param vehicle sized vehicle
     * @return tables for a terminal
     */
    public static String text(VehicleSizing vehicle) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(brief(vehicle));
        TextTable budget = new TextTable().header("speed budget", "m/s", "<source");
        vehicle.plan().mission().terms().forEach(t -> budget.row(t.name(), Figures.fixed(t.value(), 0), t.source()));
        budget.row("sum", Figures.fixed(vehicle.plan().mission().total(), 0));
        text.append(line).append(budget.text());
        for (StageSizing stage : vehicle.stages()) {
            stage.boosters().ifPresent(b -> text.append(line).append(dry("one booster", b.dryMass())));
            text.append(line).append(dry(stage.name(), stage.dryMass()));
        }
        text.append(line);
        VehicleSizing.DEFINITIONS.forEach(d -> text.append(d).append(line));
        text.append(BalanceText.warnings(vehicle.warnings()));
        return text.toString();
    }

    private static String dry(String name, MassTable masses) {
        TextTable dry = new TextTable().header("dry mass of " + name, "kg", "share %", "scatter %", "<source");
        masses.lines()
                .forEach(l -> dry.row(
                        l.name(),
                        Figures.significant(l.mass(), 4),
                        Figures.fixed(100 * masses.share(l), 1),
                        Figures.fixed(100 * l.scatter(), 0),
                        l.source()));
        dry.row(
                "growth margin",
                Figures.significant(masses.growth(), 4),
                Figures.fixed(100 * masses.growth() / masses.total(), 1));
        dry.row(
                "dry mass",
                Figures.significant(masses.total(), 4),
                "100.0",
                Figures.fixed(100 * masses.scatter() / masses.total(), 0),
                "lines taken as independent");
        return dry.text();
    }

    /**
     * @param vehicle sized vehicle
     * @return its masses, and one line for each stage
     */
    public static String brief(VehicleSizing vehicle) {
        String line = System.lineSeparator();
        TextTable table = new TextTable()
                .header(
                        "stage",
                        "engines",
                        "start t",
                        "propellant t",
                        "oxidizer t",
                        "fuel t",
                        "dry t",
                        "tanks m³",
                        "speed gain m/s",
                        "Isp s",
                        "thrust/weight");
        for (StageSizing s : vehicle.stages()) {
            s.boosters()
                    .ifPresent(b -> table.row(
                            b.count() + " boosters",
                            Integer.toString(b.count() * b.plan().engines()),
                            VehicleTables.tonnes(b.startMass()),
                            VehicleTables.tonnes(b.count() * b.propellant().loaded()),
                            VehicleTables.tonnes(b.count() * b.propellant().oxidizer()),
                            VehicleTables.tonnes(b.count() * b.propellant().fuel()),
                            VehicleTables.tonnes(b.count() * b.dryMass().total()),
                            "",
                            "",
                            Figures.fixed(b.engine().vacuumIsp(), 1)));
            table.row(
                    s.name(),
                    Integer.toString(s.engines()),
                    VehicleTables.tonnes(s.startMass()),
                    VehicleTables.tonnes(s.propellant().loaded()),
                    VehicleTables.tonnes(s.propellant().oxidizer()),
                    VehicleTables.tonnes(s.propellant().fuel()),
                    VehicleTables.tonnes(s.dryMass().total()),
                    Figures.significant(s.oxidizerTankVolume(), 3) + " + " + Figures.significant(s.fuelTankVolume(), 3),
                    Figures.fixed(s.deltaV(), 0),
                    Figures.fixed(s.isp(), 1),
                    Figures.fixed(s.thrustToWeight(), 2));
        }
        return vehicle.plan().name() + ": start mass " + VehicleTables.tonnes(vehicle.startMass())
                + " t (of it propellant "
                + VehicleTables.tonnes(vehicle.propellantMass()) + " t, dry " + VehicleTables.tonnes(vehicle.dryMass())
                + " t, payload " + VehicleTables.tonnes(vehicle.payload()) + " t)" + line + line + table.text();
    }

    /**
     * @param vehicle sized vehicle
     * @return how its start mass adds up
     */
    public static Figure masses(VehicleSizing vehicle) {
        return VehicleTables.masses(vehicle);
    }

    /**
     * @param vehicle sized vehicle
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(VehicleSizing vehicle, Software software) {
        return html(vehicle, List.of(), software);
    }

    /**
     * @param flown vehicle and flight
     * @param back way back of the first stage, if it is recovered
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(FlownSizing flown, Optional<StageReturn> back, Software software) {
        return html(flown.sizing(), List.of(FlightView.section(flown, back)), software);
    }

    private static String html(VehicleSizing vehicle, List<PageSection> more, Software software) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", vehicle.plan().name());
        model.put("subtitle", vehicle.plan().description());
        model.put(
                "kind",
                "Vehicle of " + vehicle.stages().size() + (vehicle.stages().size() == 1 ? " stage" : " stages"));
        model.put(
                "figures",
                List.of(
                        figure("start mass", VehicleTables.tonnes(vehicle.startMass()), "t", "start_mass_kg"),
                        figure(
                                "of it propellant",
                                VehicleTables.tonnes(vehicle.propellantMass()),
                                "t",
                                "propellant_mass_kg"),
                        figure("of it dry mass", VehicleTables.tonnes(vehicle.dryMass()), "t", "dry_mass_kg"),
                        figure("payload", VehicleTables.tonnes(vehicle.payload()), "t", "payload_kg"),
                        figure(
                                "payload share",
                                Figures.significant(100 * vehicle.payloadFraction(), 3),
                                "%",
                                "payload_fraction")));
        model.put(
                "warnings",
                FigureJson.each(
                        CheckFigures.WARNINGS,
                        vehicle.warnings().stream().distinct().toList()));
        List<PageSection> parts = new ArrayList<>();
        parts.add(VehicleTables.section(vehicle));
        parts.addAll(more);
        parts.add(Grounds.of(vehicle));
        model.put("parts", parts);
        TrailPart trail = new TrailPart(SizingTrail.of(vehicle));
        model.put("models", trail.models());
        model.put("numbers", trail.numbers());
        model.put("assumptions", Assumptions.ofVehicle());
        model.put("cautions", Assumptions.CAUTIONS);
        model.put("software", software);
        model.put("file", "CASE");
        return Pages.fill("vehicle.ftlh", model);
    }

    private static Map<String, String> figure(String name, String value, String unit, String trail) {
        return Map.of("name", name, "value", value, "unit", unit, "trail", trail);
    }
}

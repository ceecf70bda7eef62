package dev.penstock.app.web;

import dev.penstock.provenance.Trail;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.vehicle.FlightView;
import dev.penstock.reports.vehicle.VehicleView;
import dev.penstock.study.VehicleTrail;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.mass.MassLine;
import dev.penstock.vehicle.mass.TankShape;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page of a vehicle is told: figures, tables and drawings; every number names its path in the trail. */
final class VehicleAnswer {

    private final VehicleSizing vehicle;
    private final Optional<AscentResult> flight;

    VehicleAnswer(VehicleSizing vehicle, Optional<AscentResult> flight) {
        this.vehicle = vehicle;
        this.flight = flight;
    }

    Map<String, Object> map() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", vehicle.plan().name());
        map.put("description", vehicle.plan().description());
        map.put("flown", flight.isPresent());
        map.put("measures", measures());
        map.put("warnings", EngineAnswer.warnings(vehicle.warnings()));
        List<Map<String, Object>> tables = new ArrayList<>(List.of(stages(), tanks(), budget()));
        flight.ifPresent(a -> tables.add(0, flight(a)));
        vehicle.stages().forEach(s -> tables.add(dryMass(s)));
        map.put("tables", tables);
        List<Map<String, Object>> figures = new ArrayList<>();
        figures.add(EngineAnswer.figure(VehicleView.masses(vehicle)));
        flight.ifPresent(a -> FlightView.figures(a).forEach(f -> figures.add(EngineAnswer.figure(f))));
        map.put("figures", figures);
        map.put("definitions", VehicleSizing.DEFINITIONS);
        return map;
    }

    private List<Map<String, Object>> measures() {
        List<Map<String, Object>> list = new ArrayList<>();
        measure(list, "start_mass_kg", "start mass", -1, vehicle.startMass(), tonnes(vehicle.startMass()));
        measure(
                list,
                "propellant_mass_kg",
                "of it propellant",
                -1,
                vehicle.propellantMass(),
                tonnes(vehicle.propellantMass()));
        measure(list, "dry_mass_kg", "of it dry mass", -1, vehicle.dryMass(), tonnes(vehicle.dryMass()));
        measure(list, "payload_kg", "payload", 1, vehicle.payload(), tonnes(vehicle.payload()));
        String share = Figures.significant(100 * vehicle.payloadFraction(), 4) + " %";
        measure(list, "payload_fraction", "payload over start mass", 1, vehicle.payloadFraction(), share);
        measure(
                list,
                "delta_v_m_s",
                "ideal speed gain",
                0,
                vehicle.deltaV(),
                Figures.fixed(vehicle.deltaV(), 0) + " m/s");
        vehicle.ispFactor()
                .ifPresent(f -> measure(
                        list,
                        "isp_needed_over_isp",
                        "impulse needed over that of the engines",
                        -1,
                        f,
                        Figures.significant(f, 4)));
        return list;
    }

    private static void measure(
            List<Map<String, Object>> list, String key, String name, int better, double value, String text) {
        list.add(Map.of(
                "key", key, "name", name, "better", better, "value", value, "text", text, "path", "vehicle." + key));
    }

    private Map<String, Object> stages() {
        Grid grid = new Grid(
                "Stages, the lowest first",
                "<stage",
                "engines",
                "start mass (t)",
                "propellant (t)",
                "oxidizer (t)",
                "fuel (t)",
                "dry mass (t)",
                "speed gain (m/s)",
                "specific impulse (s)",
                "thrust over weight",
                "burn (s)");
        for (StageSizing s : vehicle.stages()) {
            String p = VehicleTrail.stage(s);
            grid.row(
                    s.name(),
                    new Cell(Integer.toString(s.engines()), p + "engines"),
                    new Cell(plainTonnes(s.startMass()), p + "start_mass_kg"),
                    new Cell(plainTonnes(s.propellant().loaded()), p + "propellant_mass_kg"),
                    new Cell(plainTonnes(s.propellant().oxidizer()), p + "oxidizer_mass_kg"),
                    new Cell(plainTonnes(s.propellant().fuel()), p + "fuel_mass_kg"),
                    new Cell(plainTonnes(s.dryMass().total()), p + "dry_mass_kg"),
                    new Cell(Figures.fixed(s.deltaV(), 0), p + "delta_v_m_s"),
                    new Cell(Figures.fixed(s.isp(), 1), p + "isp_s"),
                    new Cell(Figures.fixed(s.thrustToWeight(), 2), p + "thrust_to_weight"),
                    new Cell(Figures.fixed(s.burnTime(), 0), p + "burn_time_s"));
        }
        return grid.map();
    }

    private Map<String, Object> tanks() {
        Grid grid = new Grid("Tanks", "<tank", "volume (m³)", "diameter (m)", "length (m)");
        for (StageSizing s : vehicle.stages()) {
            tank(grid, s, "oxidizer", s.contents().oxidizerTank());
            tank(grid, s, "fuel", s.contents().fuelTank());
        }
        return grid.map();
    }

    private static void tank(Grid grid, StageSizing stage, String side, TankShape tank) {
        String p = VehicleTrail.stage(stage) + side + "_tank_";
        grid.row(
                stage.name() + ", " + side,
                new Cell(Figures.significant(tank.volume(), 4), p + "m3"),
                new Cell(Figures.fixed(2 * tank.radius(), 2), p + "diameter_m"),
                new Cell(Figures.fixed(tank.length(), 2), p + "length_m"));
    }

    private Map<String, Object> budget() {
        Grid grid = new Grid("Speed budget", "<term", "speed (m/s)", "<source");
        vehicle.plan()
                .mission()
                .terms()
                .forEach(t -> grid.row(
                        t.name(),
                        new Cell(
                                Figures.fixed(t.value(), 0), "delta_v_budget." + Trail.slug(t.name()) + ".delta_v_m_s"),
                        t.source()));
        double total = vehicle.plan().mission().total();
        return grid.row("sum", new Cell(Figures.fixed(total, 0), "delta_v_budget.total_m_s"), "")
                .map();
    }

    private static Map<String, Object> dryMass(StageSizing s) {
        String p = VehicleTrail.stage(s);
        Grid grid = new Grid("Dry mass of " + s.name(), "<part", "mass (kg)", "<share", "<scatter", "<source");
        for (MassLine line : s.dryMass().lines()) {
            grid.row(
                    line.name(),
                    new Cell(
                            Figures.significant(line.mass(), 4),
                            p + "dry_mass." + Trail.slug(line.name()) + ".mass_kg"),
                    Figures.percent(s.dryMass().share(line)),
                    "± " + Figures.fixed(100 * line.scatter(), 0) + " %",
                    line.source());
        }
        grid.row(
                "growth margin",
                new Cell(Figures.significant(s.dryMass().growth(), 4), p + "dry_mass_growth_margin_kg"),
                Figures.percent(s.dryMass().growth() / s.dryMass().total()),
                "",
                "margin of the plan");
        return grid.row(
                        "dry mass",
                        new Cell(Figures.significant(s.dryMass().total(), 4), p + "dry_mass_kg"),
                        "100.0 %",
                        "± "
                                + Figures.fixed(
                                        100
                                                * s.dryMass().scatter()
                                                / s.dryMass().total(),
                                        0) + " %",
                        "lines taken as independent")
                .map();
    }

    private static Map<String, Object> flight(AscentResult a) {
        Grid grid = new Grid("Flight to orbit", "<quantity", "value");
        speed(grid, "speed in orbit", a.inertialSpeed(), "inertial_speed_m_s");
        speed(grid, "speed of the turning air there", a.rotationCredit(), "rotation_credit_m_s");
        speed(grid, "gravity loss", a.gravityLoss(), "gravity_loss_m_s");
        speed(grid, "drag loss", a.dragLoss(), "drag_loss_m_s");
        speed(grid, "steering loss", a.steeringLoss(), "steering_loss_m_s");
        speed(grid, "back-pressure loss", a.backPressureLoss(), "back_pressure_loss_m_s");
        speed(grid, "ideal speed gain", a.idealDeltaV(), "ideal_delta_v_m_s");
        speed(grid, "left in the stages", a.margin(), "delta_v_left_m_s");
        grid.row("mean specific impulse", new Cell(Figures.fixed(a.meanIsp(), 1) + " s", "flight.isp_mean_s"));
        grid.row("time to orbit", new Cell(Figures.fixed(a.insertionTime(), 0) + " s", "flight.insertion_time_s"));
        grid.row(
                "highest dynamic pressure",
                new Cell(
                        Figures.significant(a.maxDynamicPressure() / 1e3, 4) + " kPa",
                        "flight.dynamic_pressure_max_Pa"));
        return grid.row(
                        "highest acceleration",
                        new Cell(Figures.fixed(a.maxAcceleration(), 1) + " m/s²", "flight.acceleration_max_m_s2"))
                .map();
    }

    private static void speed(Grid grid, String name, double speed, String key) {
        grid.row(name, new Cell(Figures.fixed(speed, 1) + " m/s", "flight." + key));
    }

    private static String plainTonnes(double mass) {
        return Figures.significant(mass / 1e3, 4);
    }

    private static String tonnes(double mass) {
        return plainTonnes(mass) + " t";
    }
}

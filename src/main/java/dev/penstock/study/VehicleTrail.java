package dev.penstock.study;

import dev.penstock.cycles.Definitions;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import dev.penstock.vehicle.DeltaVBudget;
import dev.penstock.vehicle.LagrangeStaging;
import dev.penstock.vehicle.RocketEquation;
import dev.penstock.vehicle.StageSizing;
import dev.penstock.vehicle.VehicleSizing;
import dev.penstock.vehicle.ascent.AscentDynamics;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.engine.EngineMassEstimate;
import dev.penstock.vehicle.engine.EngineMassRelation;
import dev.penstock.vehicle.mass.FeedLines;
import dev.penstock.vehicle.mass.MassLine;
import dev.penstock.vehicle.mass.OwnVapour;
import dev.penstock.vehicle.mass.PressurantSupply;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.mass.ScalingRelations;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.mass.TankShell;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Records where the numbers of a sized vehicle come from, down to the trails of its engines. */
public final class VehicleTrail {

    private static final String PLAN = "vehicle file";
    private static final String GRAVITY = "constants.standard_gravity_m_s2";
    private static final ModelCard TANK_VOLUME = relation(
            "tank-volume",
            "Volume of a tank",
            "V = m/(ρ (1 − u)); u gas volume as a fraction of the tank",
            "full tanks");
    private static final ModelCard TANK_SHAPE = relation(
            "tank-shape",
            "Shape of a tank",
            "cylinder between ellipsoidal heads of height R/√2",
            "round tanks, one above the other");
    private static final ModelCard THRUST_TO_WEIGHT =
            relation("thrust-to-weight", "Thrust over weight", "n F/(m g₀)", "at ignition");
    private static final ModelCard LOADING =
            relation("loading", "Oxidizer and fuel of a load", "m_o = m r/(1 + r); m_f = m/(1 + r)", "r as loaded");
    private static final ModelCard GROWTH =
            relation("growth", "Growth of an early estimate", "Δm = g Σ m", "g of the vehicle file, or usual practice");

    private final VehicleSizing vehicle;
    private final Optional<AscentResult> flight;
    private final Trail trail = new Trail();

    private VehicleTrail(VehicleSizing vehicle, Optional<AscentResult> flight) {
        this.vehicle = vehicle;
        this.flight = flight;
    }

    /**
     * @param vehicle sized vehicle
     * @param flight its flight, if it was sized on one
     * @param engines its engines by name
     * @return the trail of its numbers
     */
    public static Trail of(VehicleSizing vehicle, Optional<AscentResult> flight, Map<String, EngineBalance> engines) {
        VehicleTrail vehicleTrail = new VehicleTrail(vehicle, flight);
        engines.forEach((name, balance) -> EngineTrail.of(balance)
                .entries()
                .forEach(e -> vehicleTrail.trail.record(
                        engine(name) + e.path(),
                        e.value(),
                        e.unit(),
                        e.model(),
                        e.inputs().stream().map(i -> engine(name) + i).toArray(String[]::new))));
        return vehicleTrail.make();
    }

    private static ModelCard relation(String id, String title, String equation, String range) {
        return new ModelCard("vehicle." + id, title, equation, range, "exact", List.of("definition"));
    }

    private static String engine(String name) {
        return "engines." + Trail.slug(name) + ".";
    }

    /**
     * @param stage a stage
     * @return path of its numbers, without the last part
     */
    public static String stage(StageSizing stage) {
        return "stages." + Trail.slug(stage.name()) + ".";
    }

    private Trail make() {
        trail.given(
                GRAVITY,
                dev.penstock.quantities.Constants.STANDARD_GRAVITY,
                "m/s²",
                "constant by definition",
                "3rd CGPM, 1901");
        budget();
        for (int i = vehicle.stages().size() - 1; i >= 0; i--) {
            stage(i);
        }
        flight.ifPresent(this::flight);
        whole();
        return trail;
    }

    private void budget() {
        List<String> terms = new ArrayList<>();
        for (DeltaVBudget.Term term : vehicle.plan().mission().terms()) {
            String path = "delta_v_budget." + Trail.slug(term.name()) + ".delta_v_m_s";
            boolean flown = flight.isPresent()
                    && term.kind() != DeltaVBudget.Kind.MANOEUVRE
                    && term.kind() != DeltaVBudget.Kind.RESERVE;
            if (flown) {
                put(path, term.value(), "m/s", AscentDynamics.CARD, flown());
            } else {
                trail.given(path, term.value(), "m/s", "term of the mission", term.source());
            }
            terms.add(path);
        }
        put("delta_v_budget.total_m_s", vehicle.plan().mission().total(), "m/s", Definitions.SUM, terms);
    }

    /** What a flight depends on. */
    private List<String> flown() {
        List<String> paths = new ArrayList<>(List.of(GRAVITY));
        for (StageSizing s : vehicle.stages()) {
            paths.addAll(List.of(stage(s) + "start_mass_kg", stage(s) + "isp_s", stage(s) + "thrust_to_weight"));
        }
        return paths;
    }

    private void stage(int index) {
        StageSizing s = vehicle.stages().get(index);
        String p = stage(s);
        String engine = engine(s.engine().name()) + "engine.";
        boolean last = index == vehicle.stages().size() - 1;
        put(
                p + "above_kg",
                s.above(),
                "kg",
                Definitions.SAME,
                List.of(last ? "vehicle.payload_kg" : stage(vehicle.stages().get(index + 1)) + "start_mass_kg"));
        trail.given(p + "engines", s.engines(), "", "as many as the stage needs, or as given", PLAN);
        put(p + "isp_s", s.isp(), "s", Definitions.SAME, List.of(engine + "isp_vacuum_s"));
        List<String> start = new ArrayList<>(List.of(p + "above_kg", p + "propellant_mass_kg", p + "dry_mass_kg"));
        s.boosters().ifPresent(b -> {
            trail.given(p + "boosters_kg", b.startMass(), "kg", "boosters as given, with their dry mass", PLAN);
            start.add(p + "boosters_kg");
        });
        put(p + "start_mass_kg", s.startMass(), "kg", Definitions.SUM, start);
        boolean shared = vehicle.plan().stages().get(index).deltaVShare().isPresent();
        if (shared) {
            double share = vehicle.plan().stages().get(index).deltaVShare().getAsDouble();
            trail.given(p + "delta_v_share", share, "", "share of the speed gain", PLAN);
            put(
                    p + "delta_v_m_s",
                    s.deltaV(),
                    "m/s",
                    Definitions.PRODUCT,
                    List.of("delta_v_budget.total_m_s", p + "delta_v_share"));
        } else {
            put(
                    p + "delta_v_m_s",
                    s.deltaV(),
                    "m/s",
                    LagrangeStaging.CARD,
                    List.of("delta_v_budget.total_m_s", p + "isp_s"));
        }
        propellant(s, p, engine);
        shape(s, p);
        dryMass(s, p, engine);
        put(
                p + "thrust_to_weight",
                s.thrustToWeight(),
                "",
                THRUST_TO_WEIGHT,
                List.of(engine + "thrust_vacuum_N", p + "engines", p + "start_mass_kg", GRAVITY));
        put(
                p + "burn_time_s",
                s.burnTime(),
                "s",
                Definitions.RATIO,
                List.of(p + "burned_propellant_kg", engine + "mass_flow_kg_s", p + "engines"));
    }

    private void propellant(StageSizing s, String p, String engine) {
        put(
                p + "burned_propellant_kg",
                s.propellant().burned(),
                "kg",
                RocketEquation.CARD,
                List.of(p + "delta_v_m_s", p + "isp_s", p + "above_kg", p + "dry_mass_kg"));
        double rest = s.propellant().loaded() - s.propellant().burned();
        trail.given(
                p + "allowances_kg", rest, "kg", "start-up, boil-off, residual and recovery, by the allowances", PLAN);
        put(
                p + "propellant_mass_kg",
                s.propellant().loaded(),
                "kg",
                Definitions.SUM,
                List.of(p + "burned_propellant_kg", p + "allowances_kg"));
        List<String> load = List.of(p + "propellant_mass_kg", engine + "mixture_ratio");
        put(p + "oxidizer_mass_kg", s.propellant().oxidizer(), "kg", LOADING, load);
        put(p + "fuel_mass_kg", s.propellant().fuel(), "kg", LOADING, load);
    }

    private void shape(StageSizing s, String p) {
        trail.given(
                p + "oxidizer_density_kg_m3",
                s.engine().oxidizer().density(),
                "kg/m³",
                "density as loaded",
                "engine concept");
        trail.given(
                p + "fuel_density_kg_m3", s.engine().fuel().density(), "kg/m³", "density as loaded", "engine concept");
        for (String side : List.of("oxidizer", "fuel")) {
            boolean oxidizer = side.equals("oxidizer");
            var tank = oxidizer ? s.contents().oxidizerTank() : s.contents().fuelTank();
            put(
                    p + side + "_tank_m3",
                    tank.volume(),
                    "m³",
                    TANK_VOLUME,
                    List.of(p + side + "_mass_kg", p + side + "_density_kg_m3"));
            put(
                    p + side + "_tank_diameter_m",
                    2 * tank.radius(),
                    "m",
                    TANK_SHAPE,
                    List.of(p + side + "_tank_m3", p + "diameter_m"));
            put(
                    p + side + "_tank_length_m",
                    tank.length(),
                    "m",
                    TANK_SHAPE,
                    List.of(p + side + "_tank_m3", p + "diameter_m"));
        }
        trail.given(p + "diameter_m", s.contents().diameter(), "m", "as given, or six diameters of tank length", PLAN);
        put(
                p + "length_m",
                s.contents().length(),
                "m",
                TANK_SHAPE,
                List.of(p + "oxidizer_tank_length_m", p + "fuel_tank_length_m", p + "diameter_m"));
    }

    private void dryMass(StageSizing s, String p, String engine) {
        List<String> lines = new ArrayList<>();
        List<String> sizes = List.of(
                p + "start_mass_kg",
                p + "oxidizer_tank_m3",
                p + "fuel_tank_m3",
                p + "diameter_m",
                p + "length_m",
                engine + "thrust_vacuum_N",
                engine + "chamber_pressure_Pa");
        for (MassLine line : s.dryMass().lines()) {
            String path = p + "dry_mass." + Trail.slug(line.name()) + ".mass_kg";
            Optional<ModelCard> card = card(line);
            if (card.isPresent()) {
                put(path, line.mass(), "kg", card.get(), sizes);
            } else {
                trail.given(path, line.mass(), "kg", "mass that the plan or usual practice states", line.source());
            }
            lines.add(path);
        }
        put(p + "dry_mass_growth_margin_kg", s.dryMass().growth(), "kg", GROWTH, lines);
        List<String> all = new ArrayList<>(lines);
        all.add(p + "dry_mass_growth_margin_kg");
        put(p + "dry_mass_kg", s.dryMass().total(), "kg", Definitions.SUM, all);
    }

    /** The model behind a line of the mass table, by what it is about and the publication it names. */
    private static Optional<ModelCard> card(MassLine line) {
        if (line.source().equals("given")) {
            return Optional.empty();
        }
        List<ModelCard> byName = line.name().contains("engine")
                ? List.of(EngineMassEstimate.CARD, EngineMassRelation.CARD, StructuralCoefficient.CARD)
                : line.name().equals("feed lines")
                        ? List.of(FeedLines.CARD)
                        : line.name().contains("recovery") || line.name().startsWith("legs")
                                ? List.of(RecoveryHardware.CARD)
                                : line.name().equals("pressurising vapour")
                                        ? List.of(OwnVapour.CARD)
                                        : line.name().startsWith("pressurant")
                                                ? List.of(PressurantSupply.CARD)
                                                : List.of(TankShell.CARD, ScalingRelations.CARD);
        return byName.stream()
                .filter(c -> c.sources().stream().anyMatch(s -> line.source().contains(s)))
                .findFirst();
    }

    private void flight(AscentResult a) {
        List<String> from = flown();
        put("flight.inertial_speed_m_s", a.inertialSpeed(), "m/s", AscentDynamics.CARD, from);
        put("flight.rotation_credit_m_s", a.rotationCredit(), "m/s", AscentDynamics.CARD, from);
        put("flight.gravity_loss_m_s", a.gravityLoss(), "m/s", AscentDynamics.CARD, from);
        put("flight.drag_loss_m_s", a.dragLoss(), "m/s", AscentDynamics.CARD, from);
        put("flight.steering_loss_m_s", a.steeringLoss(), "m/s", AscentOptimizer.CARD, from);
        put("flight.back_pressure_loss_m_s", a.backPressureLoss(), "m/s", AscentDynamics.CARD, from);
        put("flight.ideal_delta_v_m_s", a.idealDeltaV(), "m/s", AscentDynamics.CARD, from);
        put("flight.delta_v_left_m_s", a.margin(), "m/s", RocketEquation.CARD, from);
        put("flight.isp_mean_s", a.meanIsp(), "s", AscentDynamics.CARD, from);
        put("flight.tilt_rad", a.tilt(), "rad", AscentOptimizer.CARD, from);
        put("flight.insertion_time_s", a.insertionTime(), "s", AscentDynamics.CARD, from);
        put("flight.dynamic_pressure_max_Pa", a.maxDynamicPressure(), "Pa", AscentDynamics.CARD, from);
        put("flight.acceleration_max_m_s2", a.maxAcceleration(), "m/s²", AscentDynamics.CARD, from);
    }

    private void whole() {
        StageSizing first = vehicle.stages().get(0);
        if (vehicle.plan().startMass().isPresent()) {
            trail.given("vehicle.start_mass_kg", vehicle.startMass(), "kg", "start mass asked for", PLAN);
        } else {
            put(
                    "vehicle.start_mass_kg",
                    vehicle.startMass(),
                    "kg",
                    Definitions.SAME,
                    List.of(stage(first) + "start_mass_kg"));
        }
        if (vehicle.plan().payload().isPresent()) {
            trail.given("vehicle.payload_kg", vehicle.payload(), "kg", "payload asked for", PLAN);
        } else {
            put(
                    "vehicle.payload_kg",
                    vehicle.payload(),
                    "kg",
                    Definitions.CLOSING,
                    List.of("vehicle.start_mass_kg", "delta_v_budget.total_m_s"));
        }
        put(
                "vehicle.payload_fraction",
                vehicle.payloadFraction(),
                "",
                Definitions.RATIO,
                List.of("vehicle.payload_kg", "vehicle.start_mass_kg"));
        put("vehicle.propellant_mass_kg", vehicle.propellantMass(), "kg", Definitions.SUM, each("propellant_mass_kg"));
        put("vehicle.dry_mass_kg", vehicle.dryMass(), "kg", Definitions.SUM, each("dry_mass_kg"));
        put("vehicle.delta_v_m_s", vehicle.deltaV(), "m/s", Definitions.SUM, each("delta_v_m_s"));
        vehicle.ispFactor()
                .ifPresent(f -> put(
                        "vehicle.isp_needed_over_isp",
                        f,
                        "",
                        Definitions.CLOSING,
                        List.of("vehicle.payload_kg", "vehicle.start_mass_kg")));
    }

    private List<String> each(String key) {
        List<String> paths = new ArrayList<>(
                vehicle.stages().stream().map(s -> stage(s) + key).toList());
        boolean boosted = vehicle.stages().get(0).boosters().isPresent();
        if (boosted && key.endsWith("_kg")) {
            paths.add(stage(vehicle.stages().get(0)) + "boosters_kg");
        }
        return paths;
    }

    private void put(String path, double value, String unit, ModelCard card, List<String> inputs) {
        trail.record(path, value, unit, card, inputs.toArray(String[]::new));
    }
}

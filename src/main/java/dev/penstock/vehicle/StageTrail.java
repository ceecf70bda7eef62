package dev.penstock.vehicle;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import dev.penstock.vehicle.mass.FeedLines;
import dev.penstock.vehicle.mass.MassLine;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.OwnVapour;
import dev.penstock.vehicle.mass.PressurantSupply;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.mass.ScalingRelations;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.mass.TankShape;
import dev.penstock.vehicle.mass.TankShell;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.LagrangeStaging;
import dev.penstock.vehicle.stage.PropellantLoad;
import dev.penstock.vehicle.stage.RocketEquation;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Records the numbers of the stages of a vehicle. */
final class StageTrail {

    static final ModelCard CHAIN = SizingTrail.card(
            "chain",
            "Stage by stage from start mass to payload, or back",
            "carried = m0 − loaded − dry; the start mass at which it equals what stands on top",
            "where the stage closes");
    private static final ModelCard LOADED = SizingTrail.card(
            "loaded",
            "Propellant loaded",
            "(burned + start-up + kept for recovery)/(1 − residual − boil-off)",
            "everywhere");
    private static final ModelCard PART = SizingTrail.card(
            "mixture", "Oxidizer and fuel by the mixture ratio", "m_o = m r/(1 + r); m_f = m/(1 + r)", "everywhere");
    private static final ModelCard TANK =
            SizingTrail.card("tank", "Tank volume", "V = m/ρ/(1 − ullage)", "loading density of the propellant");
    private static final ModelCard SHAPE = SizingTrail.card(
            "shape",
            "Shape of the stage",
            "cylinder with heads that holds both tanks; diameter given or from the slenderness",
            "everywhere");
    private static final ModelCard COUNT = SizingTrail.card(
            "engine-count",
            "Fewest engines that suffice",
            "n F/(m0 g0) ≥ thrust to weight, also with those lost that may be",
            "everywhere");
    private static final ModelCard THRUST_TO_WEIGHT =
            SizingTrail.card("thrust-to-weight", "Thrust to weight", "n F/(m0 g0)", "at ignition");
    private static final ModelCard BURN = SizingTrail.card("burn-time", "Burn time", "t = m_burned/ṁ", "full thrust");
    private static final ModelCard BULKHEAD = new ModelCard(
            "vehicle.mass.common-bulkhead",
            "Common bulkhead",
            "12 kg/m² of its area",
            "two thin sheets and a core",
            "± 30 %, judgement",
            List.of("common practice, no source"));
    private static final ModelCard SQUARES =
            SizingTrail.card("scatter", "Scatter of a sum", "√Σ(scatter × mass)²", "lines independent of each other");

    private final Trail trail;
    private final VehicleSizing vehicle;
    private final List<String> budget;

    StageTrail(Trail trail, VehicleSizing vehicle, List<String> budget) {
        this.trail = trail;
        this.vehicle = vehicle;
        this.budget = budget;
    }

    /** @return path of the stage */
    String stage(int index) {
        StageSizing s = vehicle.stages().get(index);
        String p = "stages." + Trail.slug(s.name()) + ".";
        String engine = "engines." + Trail.slug(s.engine().name()) + ".";
        List<String> plan = new ArrayList<>(SizingTrail.plan(trail, "stage[" + index + "]."));
        boolean own = plan.isEmpty();
        if (own) {
            plan.addAll(SizingTrail.plan(trail, "allowances.", "dry_mass.", "thrust_to_weight", "engines", "diameter"));
        }
        List<String> dry = plan.stream().filter(x -> x.contains("dry_mass.")).toList();
        List<String> allowances =
                plan.stream().filter(x -> x.contains("allowances.")).toList();
        List<String> beside = s.boosters().isPresent() ? List.of(p + "boosters.start_mass_kg") : List.of();
        put(p + "isp_s", s.isp(), "s", Definitions.SAME, List.of(engine + "isp_vacuum_s"));
        put(p + "delta_v_m_s", s.deltaV(), "m/s", LagrangeStaging.CARD, budget, shares(plan));
        boolean last = index == vehicle.stages().size() - 1;
        String above = last
                ? "payload_kg"
                : "stages." + Trail.slug(vehicle.stages().get(index + 1).name()) + ".start_mass_kg";
        trail.record(p + "above_kg", s.above(), "kg", Definitions.SAME, above);
        trail.record(
                p + "start_mass_kg",
                s.startMass(),
                "kg",
                Definitions.SUM,
                Stream.concat(Stream.of(p + "above_kg", p + "propellant_mass_kg", p + "dry_mass_kg"), beside.stream())
                        .toArray(String[]::new));
        put(
                p + "engines",
                s.engines(),
                "",
                COUNT,
                List.of(p + "start_mass_kg", engine + "thrust_vacuum_N"),
                thrust(plan));
        put(
                p + "burned_propellant_kg",
                s.propellant().burned(),
                "kg",
                RocketEquation.CARD,
                List.of(p + "start_mass_kg", p + "delta_v_m_s", p + "isp_s"),
                allowances);
        put(
                p + "recovery_propellant_kg",
                s.propellant().recovery(),
                "kg",
                Recovery.CARD,
                List.of(p + "isp_s", p + "start_mass_kg"),
                plan.stream().filter(x -> x.contains("recovery.")).toList());
        put(
                p + "propellant_mass_kg",
                s.propellant().loaded(),
                "kg",
                LOADED,
                List.of(p + "burned_propellant_kg", p + "recovery_propellant_kg"),
                allowances);
        put(
                p + "residual_propellant_kg",
                s.propellant().residual(),
                "kg",
                LOADED,
                List.of(p + "propellant_mass_kg"),
                allowances);
        propellant(p, engine, 1, s.propellant());
        put(
                p + "oxidizer_tank_m3",
                s.oxidizerTankVolume(),
                "m³",
                TANK,
                List.of(p + "oxidizer_mass_kg", engine + "oxidizer_density_kg_m3"),
                allowances);
        put(
                p + "fuel_tank_m3",
                s.fuelTankVolume(),
                "m³",
                TANK,
                List.of(p + "fuel_mass_kg", engine + "fuel_density_kg_m3"),
                allowances);
        List<String> diameter =
                plan.stream().filter(x -> x.endsWith(".diameter")).toList();
        put(
                p + "diameter_m",
                s.contents().diameter(),
                "m",
                SHAPE,
                List.of(p + "oxidizer_tank_m3", p + "fuel_tank_m3"),
                diameter);
        put(
                p + "length_m",
                s.contents().length(),
                "m",
                SHAPE,
                List.of(p + "diameter_m", p + "oxidizer_tank_m3", p + "fuel_tank_m3"));
        tanks(p, s);
        table(
                p,
                "dry_mass.",
                engine,
                s.dryMass(),
                dry,
                List.of(
                        p + "start_mass_kg",
                        p + "propellant_mass_kg",
                        p + "engines",
                        p + "oxidizer_tank_m3",
                        p + "fuel_tank_m3",
                        p + "diameter_m",
                        engine + "thrust_vacuum_N"));
        put(
                p + "dry_mass_scatter_kg",
                s.dryMass().scatter(),
                "kg",
                SQUARES,
                lines(p + "dry_mass.", s.dryMass(), "scatter"),
                lines(p + "dry_mass.", s.dryMass(), "mass_kg"));
        s.boosters().ifPresent(b -> boosters(p + "boosters.", b));
        put(
                p + "final_mass_kg",
                s.finalMass(),
                "kg",
                Definitions.DIFFERENCE,
                List.of(p + "start_mass_kg", p + "burned_propellant_kg"),
                beside,
                allowances);
        put(
                p + "mass_ratio",
                s.massRatio(),
                "",
                Definitions.RATIO,
                List.of(p + "burned_propellant_kg", p + "final_mass_kg"));
        put(
                p + "thrust_to_weight",
                s.thrustToWeight(),
                "",
                THRUST_TO_WEIGHT,
                List.of(p + "engines", engine + "thrust_vacuum_N", p + "start_mass_kg"),
                beside);
        put(
                p + "burn_time_s",
                s.burnTime(),
                "s",
                BURN,
                List.of(p + "burned_propellant_kg", p + "engines", engine + "mass_flow_kg_s"));
        put(
                p + "structural_coefficient",
                s.structuralCoefficient(),
                "",
                Definitions.RATIO,
                List.of(p + "dry_mass_kg", p + "propellant_mass_kg"));
        return p.substring(0, p.length() - 1);
    }

    private void tanks(String p, StageSizing s) {
        for (String side : List.of("oxidizer", "fuel")) {
            TankShape tank = side.equals("oxidizer")
                    ? s.contents().oxidizerTank()
                    : s.contents().fuelTank();
            List<String> from = List.of(p + side + "_tank_m3", p + "diameter_m");
            put(p + side + "_tank_diameter_m", 2 * tank.radius(), "m", SHAPE, from);
            put(p + side + "_tank_length_m", tank.length(), "m", SHAPE, from);
        }
    }

    private static List<String> shares(List<String> plan) {
        return plan.stream().filter(x -> x.endsWith("delta_v_share")).toList();
    }

    private static List<String> thrust(List<String> plan) {
        return plan.stream()
                .filter(x -> x.contains("thrust_to_weight") || x.contains(".engines"))
                .toList();
    }

    /** Oxidizer and fuel of so many loads. */
    private void propellant(String p, String engine, int loads, PropellantLoad load) {
        List<String> from = List.of(p + "propellant_mass_kg", engine + "mixture_ratio");
        put(p + "oxidizer_mass_kg", loads * load.oxidizer(), "kg", PART, from);
        put(p + "fuel_mass_kg", loads * load.fuel(), "kg", PART, from);
    }

    private void boosters(String p, BoosterSizing b) {
        String engine = "engines." + Trail.slug(b.engine().name()) + ".";
        List<String> plan = SizingTrail.plan(trail, "boosters.");
        List<String> dry = plan.stream().filter(x -> x.contains("dry_mass.")).toList();
        put(p + "count", b.count(), "", Definitions.SAME, List.of("plan.boosters.count"));
        put(p + "isp_s", b.engine().vacuumIsp(), "s", Definitions.SAME, List.of(engine + "isp_vacuum_s"));
        put(
                p + "propellant_mass_kg",
                b.count() * b.propellant().loaded(),
                "kg",
                LOADED,
                List.of(p + "count", "plan.boosters.propellant"));
        propellant(p, engine, b.count(), b.propellant());
        table(
                p,
                "dry_mass_of_one.",
                engine,
                b.dryMass(),
                dry,
                List.of(p + "propellant_mass_kg", engine + "thrust_vacuum_N", p + "count"));
        put(
                p + "dry_mass_kg",
                b.count() * b.dryMass().total(),
                "kg",
                Definitions.SUM,
                lines(p + "dry_mass_of_one.", b.dryMass(), "mass_kg"),
                List.of(p + "count"),
                growth(dry));
        put(
                p + "start_mass_kg",
                b.startMass(),
                "kg",
                Definitions.SUM,
                List.of(p + "propellant_mass_kg", p + "dry_mass_kg"));
        put(
                p + "burn_time_s",
                b.burnTime(),
                "s",
                BURN,
                List.of(p + "propellant_mass_kg", p + "count", engine + "mass_flow_kg_s"));
    }

    private static List<String> growth(List<String> dry) {
        return dry.stream().filter(x -> x.endsWith("growth_margin")).toList();
    }

    private static List<String> lines(String base, MassTable table, String key) {
        return table.lines().stream()
                .map(l -> base + Trail.slug(l.name()) + "." + key)
                .toList();
    }

    private void table(String p, String list, String engine, MassTable table, List<String> plan, List<String> stage) {
        List<String> tanks = List.of(engine + "oxidizer_tank_pressure_Pa", engine + "fuel_tank_pressure_Pa");
        for (MassLine line : table.lines()) {
            String at = p + list + Trail.slug(line.name());
            if (line.source().equals("given")) {
                trail.given(at + ".mass_kg", line.mass(), "kg", "stated by the plan", "vehicle file");
            } else if (line.name().equals("engines")) {
                put(at + ".mass_kg", line.mass(), "kg", model(line), List.of(engine + "mass_kg", stage.get(2)));
            } else {
                put(at + ".mass_kg", line.mass(), "kg", model(line), stage, tanks, keys(line, plan));
            }
            trail.given(at + ".scatter", line.scatter(), "", "scatter of the relation", line.source());
        }
        List<String> masses = lines(p + list, table, "mass_kg");
        if (list.equals("dry_mass.")) {
            put(p + "dry_mass_growth_margin_kg", table.growth(), "kg", Definitions.SUM, masses, growth(plan));
            put(
                    p + "dry_mass_kg",
                    table.total(),
                    "kg",
                    Definitions.SUM,
                    masses,
                    List.of(p + "dry_mass_growth_margin_kg"));
            List<String> whole = List.of(p + "dry_mass_kg");
            put(p + "dry_mass_share", 1, "", Definitions.RATIO, whole);
            put(
                    p + "dry_mass_growth_share",
                    table.growth() / table.total(),
                    "",
                    Definitions.RATIO,
                    List.of(p + "dry_mass_growth_margin_kg"),
                    whole);
            put(p + "dry_mass_scatter_share", table.scatter() / table.total(), "", SQUARES, masses, whole);
        }
        for (MassLine line : table.lines()) {
            String at = p + list + Trail.slug(line.name());
            put(
                    at + ".share",
                    table.share(line),
                    "",
                    Definitions.RATIO,
                    List.of(at + ".mass_kg"),
                    masses,
                    growth(plan));
        }
    }

    /** Inputs of the plan that a line depends on. */
    private static List<String> keys(MassLine line, List<String> plan) {
        String name = line.name();
        List<String> words = name.startsWith("pressur")
                ? List.of("bottle", "pressurant", "collapse")
                : name.contains("legs")
                        ? List.of("recovery")
                        : name.startsWith("structure") ? List.of("structural_coefficient") : List.of();
        return plan.stream()
                .filter(path -> words.stream().anyMatch(path.substring(path.lastIndexOf('.') + 1)::contains))
                .toList();
    }

    private static ModelCard model(MassLine line) {
        String name = line.name();
        if (line.source().startsWith("nasa-sp-8007")) {
            return TankShell.CARD;
        }
        if (name.equals("engines")) {
            return Definitions.PRODUCT;
        }
        if (name.equals("common bulkhead")) {
            return BULKHEAD;
        }
        if (name.equals("pressurising vapour")) {
            return OwnVapour.CARD;
        }
        if (name.startsWith("pressurant")) {
            return PressurantSupply.CARD;
        }
        if (name.equals("feed lines")) {
            return FeedLines.CARD;
        }
        if (name.contains("legs") || name.contains("heat protection")) {
            return RecoveryHardware.CARD;
        }
        return name.startsWith("structure") ? StructuralCoefficient.CARD : ScalingRelations.CARD;
    }

    @SafeVarargs
    private void put(String path, double value, String unit, ModelCard card, List<String>... inputs) {
        trail.record(
                path,
                value,
                unit,
                card,
                List.of(inputs).stream()
                        .flatMap(List::stream)
                        .filter(x -> trail.has(x) || x.startsWith("stages."))
                        .distinct()
                        .toArray(String[]::new));
    }
}

package dev.penstock.vehicle.stage;

import static dev.penstock.quantities.Notation.fixed;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.vehicle.mass.MassLine;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.plan.DeltaVBudget;
import java.util.List;

/** What a sized vehicle publishes: the whole, its speed budget, each stage with its dry mass line by line. */
public final class VehicleFigures {

    private static final Notation TONNES = significant("kg", "t", 1e-3, 4);
    private static final Notation SPEED = fixed("m/s", "m/s", 1, 0);
    private static final Notation VOLUME = significant("m³", 4);
    private static final Notation KILOGRAMS = significant("kg", 4);
    private static final Notation TIME = fixed("s", "s", 1, 0);
    private static final Notation SCATTER = new Notation("", "", share -> "± " + fixed(100 * share, 0) + " %");

    /**
     * A line of the dry mass with the table that it stands in.
     *
     * @param table the table
     * @param line the line
     */
    public record DryLine(MassTable table, MassLine line) {

        /**
         * @param table dry mass of a stage or a booster
         * @return its lines
         */
        public static List<DryLine> of(MassTable table) {
            return table.lines().stream().map(line -> new DryLine(table, line)).toList();
        }
    }

    /** Figures of a line of the dry mass. */
    public static final FigureTable<DryLine> DRY_MASS = FigureTable.<DryLine>named(
                    dry -> dry.line().name())
            .word("name", "part", dry -> dry.line().name())
            .number("mass_kg", "mass", KILOGRAMS, dry -> dry.line().mass())
            .number("share", "share", Notation.PERCENT, dry -> dry.table().share(dry.line()))
            .number("scatter", "scatter", SCATTER, dry -> dry.line().scatter())
            .word("source", "source", dry -> dry.line().source())
            .table();

    /** Figures of all boosters of a stage together. */
    public static final FigureTable<BoosterSizing> BOOSTERS = FigureTable.<BoosterSizing>ofOne()
            .count("count", "boosters", BoosterSizing::count)
            .word("engine", "engine", b -> b.engine().name())
            .number("start_mass_kg", "start mass", TONNES, BoosterSizing::startMass)
            .number(
                    "propellant_mass_kg",
                    "propellant",
                    TONNES,
                    b -> b.count() * b.propellant().loaded())
            .number(
                    "oxidizer_mass_kg",
                    "oxidizer",
                    TONNES,
                    b -> b.count() * b.propellant().oxidizer())
            .number(
                    "fuel_mass_kg",
                    "fuel",
                    TONNES,
                    b -> b.count() * b.propellant().fuel())
            .number("dry_mass_kg", "dry", TONNES, b -> b.count() * b.dryMass().total())
            .number("isp_s", "Isp", fixed("s", "s", 1, 1), b -> b.engine().vacuumIsp())
            .number("burn_time_s", "burn", TIME, BoosterSizing::burnTime)
            .each("dry_mass_of_one", b -> DryLine.of(b.dryMass()), DRY_MASS)
            .count("engines", "engines", b -> b.count() * b.plan().engines())
            .outsideDocuments()
            .word("name", "stage", b -> b.count() + " boosters")
            .outsideDocuments()
            .table();

    /** Figures of a stage. */
    public static final FigureTable<StageSizing> STAGES = FigureTable.named(StageSizing::name)
            .word("name", "stage", StageSizing::name)
            .word("engine", "engine", s -> s.engine().name())
            .count("engines", "engines", StageSizing::engines)
            .number("start_mass_kg", "start mass", TONNES, StageSizing::startMass)
            .number("propellant_mass_kg", "propellant", TONNES, s -> s.propellant()
                    .loaded())
            .number("oxidizer_mass_kg", "oxidizer", TONNES, s -> s.propellant().oxidizer())
            .number("fuel_mass_kg", "fuel", TONNES, s -> s.propellant().fuel())
            .number("oxidizer_tank_m3", "oxidizer tank", VOLUME, StageSizing::oxidizerTankVolume)
            .number("fuel_tank_m3", "fuel tank", VOLUME, StageSizing::fuelTankVolume)
            .number("dry_mass_kg", "dry", TONNES, s -> s.dryMass().total())
            .number("delta_v_m_s", "speed gain", SPEED, StageSizing::deltaV)
            .number("isp_s", "Isp", fixed("s", "s", 1, 1), StageSizing::isp)
            .number("burned_propellant_kg", "burned", TONNES, s -> s.propellant()
                    .burned())
            .number("residual_propellant_kg", "residual", TONNES, s -> s.propellant()
                    .residual())
            .number("final_mass_kg", "final mass", TONNES, StageSizing::finalMass)
            .number("mass_ratio", "mass ratio", significant("", 4), StageSizing::massRatio)
            .number("thrust_to_weight", "thrust / weight", fixed("", "", 1, 2), StageSizing::thrustToWeight)
            .number("burn_time_s", "burn", TIME, StageSizing::burnTime)
            .number("diameter_m", "diameter", significant("m", 4), s -> s.contents()
                    .diameter())
            .number("length_m", "length", significant("m", 4), s -> s.contents().length())
            .number("recovery_propellant_kg", "kept for recovery", TONNES, s -> s.propellant()
                    .recovery())
            .number(
                    "structural_coefficient",
                    "structural coefficient",
                    significant("", 4),
                    StageSizing::structuralCoefficient)
            .number("dry_mass_scatter_kg", "scatter of the dry mass", KILOGRAMS, s -> s.dryMass()
                    .scatter())
            .number("dry_mass_growth_margin_kg", "growth margin", KILOGRAMS, s -> s.dryMass()
                    .growth())
            .each("dry_mass", s -> DryLine.of(s.dryMass()), DRY_MASS)
            .part("boosters", StageSizing::boosters, BOOSTERS)
            .leftOutIfAbsent()
            .table();

    /** Figures of a term of the speed budget. */
    public static final FigureTable<DeltaVBudget.Term> BUDGET = FigureTable.named(DeltaVBudget.Term::name)
            .word("name", "term", DeltaVBudget.Term::name)
            .number("delta_v_m_s", "speed", SPEED, DeltaVBudget.Term::value)
            .word("source", "source", DeltaVBudget.Term::source)
            .table();

    /** The whole vehicle. */
    public static final FigureTable<VehicleSizing> ALL = FigureTable.<VehicleSizing>ofOne()
            .word("name", "vehicle", v -> v.plan().name())
            .number("start_mass_kg", "start mass", TONNES, VehicleSizing::startMass)
            .number("payload_kg", "payload", TONNES, VehicleSizing::payload)
            .number(
                    "payload_fraction",
                    "payload share of the start mass",
                    significant("", "%", 100, 3),
                    VehicleSizing::payloadFraction)
            .number("propellant_mass_kg", "propellant mass, all stages", TONNES, VehicleSizing::propellantMass)
            .number("dry_mass_kg", "dry mass, all stages", TONNES, VehicleSizing::dryMass)
            .number("delta_v_m_s", "ideal speed gain", SPEED, VehicleSizing::deltaV)
            .optional(
                    "isp_needed_over_isp",
                    "specific impulse needed over that there is",
                    significant("", 4),
                    VehicleSizing::ispFactor)
            .leftOutIfAbsent()
            .each("stages", VehicleSizing::stages, STAGES)
            .each("delta_v_budget", v -> v.plan().mission().terms(), BUDGET)
            .word("definitions", "definitions", v -> VehicleSizing.DEFINITIONS)
            .each("warnings", VehicleSizing::warnings, CheckFigures.WARNINGS)
            .table();

    private VehicleFigures() {}
}

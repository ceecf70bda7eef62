package dev.penstock.vehicle.mass;

import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.engine.LoadedPropellant;
import dev.penstock.vehicle.engine.StartNeeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Dry mass built up line by line from published relations and from loads.
 *
 * @param design how the stage is built
 */
public record BuiltUpDryMass(DryMassDesign design) implements DryMassModel {

    /** Interstage length over diameter: room for the nozzle above. Common practice, no source. */
    private static final double INTERSTAGE_LENGTH = 1.0;

    /** Length of skirts and intertank shell over diameter, and what a common bulkhead leaves of it. No source. */
    private static final double SHELL_LENGTH = 1.0;

    private static final double SHELL_LENGTH_COMMON = 0.6;

    /** Above this tank pressure (Pa) the relation by volume, which knows none, gives way to the loads. */
    private static final double LOW_PRESSURE = 0.7e6;

    /** Two thin sheets and a core (kg/m²): common practice, no source. */
    private static final double BULKHEAD_AREAL_MASS = 12;

    /** Liquid over volume of a third fluid's tank, which is small and stands in a bay: common practice, no source. */
    private static final double DILUENT_FILLING = 0.95;

    /** Dry mass over propellant, to tell roughly what the stage weighs and what it carries: judgement. */
    private static final double DRY_GUESS = 0.06;

    /** Scatter of what is carried for starts: judgement. */
    private static final double START_SCATTER = 0.5;

    private static final ModelCard BULKHEAD = new ModelCard(
            "vehicle.mass.common-bulkhead",
            "Common bulkhead",
            "12 kg/m² of its area",
            "two thin sheets and a core",
            "± 30 %, judgement",
            List.of("common practice, no source"));

    private static final MassLine.Made PRESSURANT = MassLine.Made.of(
            PressurantSupply.CARD,
            DryMassInputs.COLLAPSE_FACTOR,
            DryMassInputs.BOTTLE_PRESSURE,
            DryMassInputs.BOTTLE_TEMPERATURE,
            DryMassInputs.PRESSURANT_TEMPERATURE);

    @Override
    public double fairing() {
        return design.fairing();
    }

    @Override
    public boolean growsWithEngines() {
        return true;
    }

    @Override
    public DryMassModel recovering(UnaryOperator<Optional<RecoveryHardware>> change) {
        return new BuiltUpDryMass(design.withRecovery(change.apply(design.recovery())));
    }

    @Override
    public MassTable estimate(StageContents stage) {
        List<MassLine> lines = new ArrayList<>(20);
        tanks(stage, lines);
        LoadedPropellant oxidizer = stage.engine().oxidizer();
        LoadedPropellant fuel = stage.engine().fuel();
        add(
                lines,
                ScalingRelations.insulation(
                        "oxidizer tank insulation",
                        oxidizer,
                        stage.oxidizerTank().area()));
        add(
                lines,
                ScalingRelations.insulation(
                        "fuel tank insulation", fuel, stage.fuelTank().area()));
        stage.engine()
                .diluent()
                .ifPresent(d -> add(
                        lines,
                        ScalingRelations.tank(
                                "diluent tank", d, stage.diluentMass() / (DILUENT_FILLING * d.density()))));
        pressurant(stage, lines);
        engines(stage, lines);
        starts(stage, lines);
        lines.add(FeedLines.of(stage));
        double own = (1 + DRY_GUESS) * stage.propellantMass();
        lines.add(ScalingRelations.avionics(own));
        lines.add(ScalingRelations.wiring(own, stage.length()));
        double ring = Math.PI * stage.diameter() * stage.diameter();
        double shell = stage.commonBulkhead() ? SHELL_LENGTH_COMMON : SHELL_LENGTH;
        lines.add(ScalingRelations.shell("skirts and intertank", shell * ring));
        if (design.interstage()) {
            lines.add(ScalingRelations.shell("interstage", INTERSTAGE_LENGTH * ring));
        }
        add(lines, FairedDryMass.line(design.fairing()));
        design.recovery().ifPresent(recovery -> {
            double rest = 0;
            for (MassLine line : lines) {
                rest += line.mass();
            }
            lines.addAll(recovery.lines(stage, rest));
        });
        return new MassTable(lines, design.growthMargin());
    }

    private void engines(StageContents stage, List<MassLine> lines) {
        double each = design.engineMass().orElse(stage.engine().mass());
        lines.add(new MassLine(
                "engines",
                stage.engines() * each,
                design.engineMass().isPresent() ? 0.05 : 0.2, // -14 to +24 % over seven built engines
                design.engineMass().isPresent() ? "given" : "sum of the engine's parts",
                design.engineMass().isPresent()
                        ? MassLine.Made.engines(DryMassInputs.ENGINE_MASS)
                        : MassLine.Made.engines()));
        lines.add(ScalingRelations.thrustStructure(stage.vacuumThrust()));
        add(
                lines,
                ScalingRelations.gimbals(
                        stage.engines(),
                        stage.engine().vacuumThrust(),
                        stage.engine().chamberPressure()));
    }

    /**
     * What is carried for starts: gas, bottles and igniter fluid by the cycle of the engine, and pressurant for gas that has cooled in the
     * half-empty tanks before each start after the first.
     */
    private void starts(StageContents stage, List<MassLine> lines) {
        if (design.starts().isEmpty()) {
            return;
        }
        StartNeeds.Bottle bottle = design.starts().get();
        StartNeeds needs = stage.engine().starts(bottle);
        MassLine.Made made = MassLine.Made.of(
                StartNeeds.CARD, DryMassInputs.STARTS, DryMassInputs.BOTTLE_PRESSURE, DryMassInputs.BOTTLE_TEMPERATURE);
        String source = "spin-up of the engine's shafts; common practice, no source";
        add(lines, new MassLine("start gas", stage.engines() * needs.gas(), START_SCATTER, source, made));
        add(lines, new MassLine("start bottles", stage.engines() * needs.bottles(), START_SCATTER, source, made));
        add(lines, new MassLine("igniter fluid", stage.engines() * needs.igniter(), START_SCATTER, source, made));
        design.pressurant().ifPresent(supply -> {
            double gas = (bottle.count() - 1)
                    * (cooled(
                                    supply,
                                    stage.engine().oxidizer(),
                                    stage.oxidizerTank().volume())
                            + cooled(
                                    supply,
                                    stage.engine().fuel(),
                                    stage.fuelTank().volume()));
            add(lines, new MassLine("pressurant for restarts", gas, START_SCATTER, "nasa-sp-8112", made));
            add(
                    lines,
                    new MassLine(
                            "its bottles",
                            supply.bottleMass(gas),
                            START_SCATTER,
                            "bottle performance, from memory",
                            made));
        });
    }

    /** Gas that fills up a half-empty tank whose gas has cooled to its propellant (kg): what a collapse factor takes beyond one. */
    private double cooled(PressurantSupply supply, LoadedPropellant propellant, double volume) {
        if (design.ownVapour() && propellant.cryogenic()) {
            return 0;
        }
        double factor = design.collapseFactor().orElse(CollapseFactor.usual(propellant, false));
        return factor > 1 ? supply.gasFor(propellant.tankPressure(), volume / 2, factor - 1) : 0;
    }

    private void tanks(StageContents stage, List<MassLine> lines) {
        LoadedPropellant oxidizer = stage.engine().oxidizer();
        LoadedPropellant fuel = stage.engine().fuel();
        Optional<TankShell.Kind> kind = kind(oxidizer, fuel);
        MassLine forward;
        MassLine aft;
        if (kind.isEmpty()) {
            forward = ScalingRelations.tank(
                    "oxidizer tank", oxidizer, stage.oxidizerTank().volume());
            aft = ScalingRelations.tank("fuel tank", fuel, stage.fuelTank().volume());
        } else {
            MassLine.Made shell = MassLine.Made.of(TankShell.CARD);
            double carried = Math.max(0, stage.startMass() - (1 + DRY_GUESS) * stage.propellantMass());
            double full = stage.vacuumThrust() / stage.startMass();
            double empty = stage.vacuumThrust() / (stage.startMass() - stage.propellantMass());
            double onFuelTank = Math.max(carried * empty, (carried + stage.oxidizerMass()) * full);
            forward = new MassLine(
                    "oxidizer tank",
                    shell(kind.get(), stage.oxidizerTank(), oxidizer, full, carried * empty),
                    0.25,
                    "nasa-sp-8007",
                    shell);
            aft = new MassLine(
                    "fuel tank",
                    shell(kind.get(), stage.fuelTank(), fuel, full, onFuelTank),
                    0.25,
                    "nasa-sp-8007",
                    shell);
        }
        if (!stage.commonBulkhead()) {
            lines.add(forward);
            lines.add(aft);
            return;
        }
        double headArea = stage.oxidizerTank().headArea();
        double kept = 1 - headArea / stage.oxidizerTank().area();
        lines.add(new MassLine(
                forward.name(), kept * forward.mass(), forward.scatter(), forward.source(), forward.made()));
        lines.add(aft);
        lines.add(new MassLine(
                "common bulkhead",
                BULKHEAD_AREAL_MASS * headArea,
                0.3,
                "areal mass: common practice, no source",
                MassLine.Made.of(BULKHEAD)));
    }

    private Optional<TankShell.Kind> kind(LoadedPropellant oxidizer, LoadedPropellant fuel) {
        boolean pressureFed = Math.max(oxidizer.tankPressure(), fuel.tankPressure()) > LOW_PRESSURE;
        return design.tankKind().isPresent() || !pressureFed ? design.tankKind() : Optional.of(TankShell.Kind.INTEGRAL);
    }

    private double shell(
            TankShell.Kind kind, TankShape tank, LoadedPropellant propellant, double acceleration, double load) {
        return TankShell.size(
                        tank,
                        kind,
                        design.material(),
                        propellant.tankPressure(),
                        propellant.density(),
                        acceleration,
                        load)
                .mass();
    }

    private void pressurant(StageContents stage, List<MassLine> lines) {
        LoadedPropellant oxidizer = stage.engine().oxidizer();
        LoadedPropellant fuel = stage.engine().fuel();
        double vapour = 0;
        double bottled = 0;
        for (boolean first : new boolean[] {true, false}) {
            LoadedPropellant propellant = first ? oxidizer : fuel;
            double volume = (first ? stage.oxidizerTank() : stage.fuelTank()).volume();
            boolean own = design.ownVapour() && propellant.cryogenic();
            double factor = design.collapseFactor().orElse(CollapseFactor.usual(propellant, own));
            if (own) {
                vapour += OwnVapour.mass(propellant, volume, factor);
            } else if (design.pressurant().isPresent()) {
                bottled += design.pressurant().get().gasFor(propellant.tankPressure(), volume, factor);
            }
        }
        add(
                lines,
                new MassLine(
                        "pressurising vapour",
                        vapour,
                        0.3,
                        "nasa-sp-8112",
                        MassLine.Made.of(OwnVapour.CARD, DryMassInputs.COLLAPSE_FACTOR)));
        if (bottled > 0) {
            lines.add(new MassLine("pressurant", bottled, 0.2, "sutton-rpe", PRESSURANT));
            lines.add(new MassLine(
                    "pressurant bottles",
                    design.pressurant().get().bottleMass(bottled),
                    0.25,
                    "bottle performance, from memory",
                    PRESSURANT));
        }
    }

    private static void add(List<MassLine> lines, MassLine line) {
        if (line.mass() > 0) {
            lines.add(line);
        }
    }
}

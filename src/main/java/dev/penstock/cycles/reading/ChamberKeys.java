package dev.penstock.cycles.reading;

import dev.penstock.chamber.design.AltitudeCompensation;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.ContractionRatio;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.InjectionState;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.design.SeparationCriterion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads what a concept says about its thrust chamber. */
final class ChamberKeys {

    /** Dotted key of the chamber pressure. */
    static final String PRESSURE =
            ConceptTables.ENGINE.of(EngineInputs.CHAMBER_PRESSURE).path();

    /** Dotted key of the contraction ratio. */
    static final String CONTRACTION =
            ConceptTables.CHAMBER.of(ChamberInputs.CONTRACTION_RATIO).path();

    private static final String CHAMBERS =
            ConceptTables.ENGINE.of(EngineInputs.CHAMBERS).path();

    private static final double VACUUM_COEFFICIENT = 1.75;
    private static final double SEA_LEVEL_COEFFICIENT = 1.5;

    private ChamberKeys() {}

    static Supplier<ChamberDesign> read(
            InputTable root,
            double pressure,
            Optional<ThrustTarget> thrust,
            UsualLength usualLength,
            InjectorDesign usualInjector,
            CoolingKeys.WallShield shield,
            AltitudeCompensation compensation) {
        Supplier<NozzleDesign> nozzle = nozzle(root.at(ConceptTables.NOZZLE), pressure, compensation);
        InputTable keys = root.at(ConceptTables.CHAMBER);
        double contraction = keys.read(
                ChamberInputs.CONTRACTION_RATIO,
                Usual.of(
                                thrust.filter(t -> pressure > 0)
                                        .map(t -> ContractionRatio.usual(throatDiameter(t, pressure)))
                                        .orElse(2.5),
                                "usual for a throat of this size",
                                "humble-1995")
                        .following(sizeOf(thrust)));
        InjectionState state =
                keys.read(ChamberInputs.INJECTION, Usual.of(usualInjector.state(), "by cycle, fuel and coolant", ""));
        InjectorDesign ofState = state == usualInjector.state()
                ? usualInjector
                : InjectorDesign.of(state, usualInjector.oxidizer().gas());
        Usual<Double> length = usualLength.in(contraction, pressure, ofState, sizeOf(thrust));
        double characteristicLength = keys.read(ChamberInputs.CHARACTERISTIC_LENGTH, length);
        double angle = keys.read(ChamberInputs.CONVERGENT_HALF_ANGLE);
        keys.replaced("film_fuel_fraction", "cooling.film.fuel_fraction, which cools the wall and costs impulse");
        OptionalDouble drops = keys.number(ChamberInputs.DROP_RADIUS);
        InjectorDesign injector = ofState.developedFor(length.value(), drops);
        ExpansionMode expansion = keys.read(ChamberInputs.EXPANSION);
        Supplier<Efficiencies> efficiencies = efficiencies(root.at(ConceptTables.EFFICIENCIES));
        return () -> new ChamberDesign(
                pressure,
                new CombustorDesign(
                        contraction, characteristicLength, angle, shield.film(), injector, shield.outerZone()),
                nozzle.get(),
                expansion,
                efficiencies.get());
    }

    /** Inputs that the throat's diameter is taken from. */
    private static String[] sizeOf(Optional<ThrustTarget> thrust) {
        return thrust.map(t -> {
                    String size = ConceptTables.ENGINE.of(t.kind().input()).path();
                    return t.kind() == ThrustTarget.Kind.THROAT_DIAMETER
                            ? new String[] {size}
                            : new String[] {size, PRESSURE, CHAMBERS};
                })
                .orElse(new String[0]);
    }

    /** Near enough to tell a large engine from a small one (m). */
    private static double throatDiameter(ThrustTarget thrust, double chamberPressure) {
        return switch (thrust.kind()) {
            case THROAT_DIAMETER -> thrust.valueOfOne();
            case VACUUM_THRUST -> diameter(thrust.valueOfOne() / (VACUUM_COEFFICIENT * chamberPressure));
            case SEA_LEVEL_THRUST -> diameter(thrust.valueOfOne() / (SEA_LEVEL_COEFFICIENT * chamberPressure));
        };
    }

    private static double diameter(double area) {
        return Math.sqrt(4 * area / Math.PI);
    }

    private static Supplier<NozzleDesign> nozzle(
            InputTable keys, double chamberPressure, AltitudeCompensation compensation) {
        boolean ratioGiven = keys.has(ChamberInputs.AREA_RATIO);
        boolean pressureGiven = keys.has(ChamberInputs.EXIT_PRESSURE);
        OptionalDouble ratio = keys.number(ChamberInputs.AREA_RATIO);
        OptionalDouble exit = keys.number(ChamberInputs.EXIT_PRESSURE);
        if (ratioGiven == pressureGiven) {
            keys.problem(
                    ChamberInputs.AREA_RATIO,
                    ratioGiven ? "given together with exit_pressure" : "missing",
                    "write exactly one of area_ratio and exit_pressure");
        }
        if (exit.isPresent() && chamberPressure <= exit.getAsDouble() * 1.9) {
            keys.problem(
                    ChamberInputs.EXIT_PRESSURE,
                    exit.getAsDouble() + " Pa",
                    "it must lie below half the chamber pressure");
        }
        NozzleDesign.Shape shape = keys.read(ChamberInputs.SHAPE);
        double length = keys.read(ChamberInputs.LENGTH_FRACTION);
        double angle = keys.read(ChamberInputs.CONE_HALF_ANGLE);
        SeparationCriterion separation = keys.read(ChamberInputs.SEPARATION);
        if (compensation.inTwo() && ratio.isPresent() && compensation.innerAreaRatio() >= ratio.getAsDouble()) {
            keys.problem(
                    ChamberInputs.INNER_AREA_RATIO,
                    String.valueOf(compensation.innerAreaRatio()),
                    "it must be below the area ratio of " + ratio.getAsDouble());
        }
        return () -> NozzleDesign.usual(ratio, exit, shape, length, angle)
                .withSeparation(separation)
                .with(compensation);
    }

    /** How the nozzle follows the ambient pressure or stows; in one piece after a noted problem. */
    static AltitudeCompensation compensation(InputTable root) {
        InputTable keys = root.at(ConceptTables.NOZZLE);
        AltitudeCompensation.Kind kind = keys.read(ChamberInputs.COMPENSATION);
        OptionalDouble inner = keys.number(ChamberInputs.INNER_AREA_RATIO);
        AltitudeCompensation chosen = new AltitudeCompensation(kind, inner.orElse(1));
        if (chosen.inTwo() == keys.has(ChamberInputs.INNER_AREA_RATIO)) {
            return chosen;
        }
        keys.problem(
                ChamberInputs.INNER_AREA_RATIO,
                chosen.inTwo() ? "missing" : String.valueOf(inner.orElse(1)),
                "compensation = \"dual-bell\", \"extendible\" and \"stowed\" need it, nothing else takes it");
        return AltitudeCompensation.NONE;
    }

    private static Supplier<Efficiencies> efficiencies(InputTable keys) {
        Map<LossKind, Double> stated = new EnumMap<>(LossKind.class);
        for (LossKind kind : LossKind.values()) {
            keys.number(kind.efficiency()).ifPresent(value -> stated.put(kind, value));
        }
        return () -> new Efficiencies(stated);
    }
}

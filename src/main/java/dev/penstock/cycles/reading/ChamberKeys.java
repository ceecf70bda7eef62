package dev.penstock.cycles.reading;

import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.ContractionRatio;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.InjectionState;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.design.SeparationCriterion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads what a concept says about its thrust chamber. */
final class ChamberKeys {

    private static final double VACUUM_COEFFICIENT = 1.75;
    private static final double SEA_LEVEL_COEFFICIENT = 1.5;

    private ChamberKeys() {}

    static Supplier<ChamberDesign> read(
            ConceptKeys root,
            double pressure,
            Optional<ThrustTarget> thrust,
            double usualCharacteristicLength,
            InjectionState usualInjection) {
        Supplier<NozzleDesign> nozzle = nozzle(root.table("nozzle"), pressure);
        ConceptKeys keys = root.table("chamber");
        double contraction = keys.quantity(
                "contraction_ratio",
                Dimension.RATIO,
                Range.of(1.1, 20),
                thrust.filter(t -> pressure > 0)
                        .map(t -> ContractionRatio.usual(throatDiameter(t, pressure)))
                        .orElse(2.5),
                "usual for a throat of this size, humble-1995");
        double length = keys.quantity(
                "characteristic_length",
                Dimension.LENGTH,
                Range.of(0.1, 10),
                usualCharacteristicLength,
                "usual for the pair, nasa-sp-125");
        double angle = keys.quantity(
                "convergent_half_angle",
                Dimension.ANGLE,
                Range.of(Math.toRadians(10), Math.toRadians(60)),
                Math.toRadians(30),
                "20 to 45 degrees are usual, nasa-sp-125");
        double film = keys.quantity("film_fuel_fraction", Dimension.RATIO, Range.of(0, 0.5), 0, "no film");
        InjectionState injection = keys.choice("injection", InjectionState.class, usualInjection, "by cycle and fuel");
        ExpansionMode expansion = keys.choice(
                "expansion", ExpansionMode.class, ExpansionMode.SHIFTING, "losses are taken off shifting equilibrium");
        Supplier<Efficiencies> efficiencies = efficiencies(root.table("efficiencies"));
        return () -> new ChamberDesign(
                pressure,
                new CombustorDesign(contraction, length, angle, film, injection),
                nozzle.get(),
                expansion,
                efficiencies.get());
    }

    /** Near enough to tell a large engine from a small one (m). */
    private static double throatDiameter(ThrustTarget thrust, double chamberPressure) {
        return switch (thrust.kind()) {
            case THROAT_DIAMETER -> thrust.value();
            case VACUUM_THRUST -> diameter(thrust.value() / (VACUUM_COEFFICIENT * chamberPressure));
            case SEA_LEVEL_THRUST -> diameter(thrust.value() / (SEA_LEVEL_COEFFICIENT * chamberPressure));
        };
    }

    private static double diameter(double area) {
        return Math.sqrt(4 * area / Math.PI);
    }

    private static Supplier<NozzleDesign> nozzle(ConceptKeys keys, double chamberPressure) {
        boolean ratioGiven = keys.has("area_ratio");
        boolean pressureGiven = keys.has("exit_pressure");
        OptionalDouble ratio =
                keys.optional("area_ratio", Dimension.RATIO, Range.of(1.05, 2000), "from the exit pressure");
        OptionalDouble exit =
                keys.optional("exit_pressure", Dimension.PRESSURE, Range.of(10, 1e7), "from the area ratio");
        if (ratioGiven == pressureGiven) {
            keys.problem(
                    "area_ratio",
                    ratioGiven ? "given together with exit_pressure" : "missing",
                    "write exactly one of area_ratio and exit_pressure");
        }
        if (exit.isPresent() && chamberPressure <= exit.getAsDouble() * 1.9) {
            keys.problem("exit_pressure", exit.getAsDouble() + " Pa", "it must lie below half the chamber pressure");
        }
        NozzleDesign.Shape shape =
                keys.choice("shape", NozzleDesign.Shape.class, NozzleDesign.Shape.BELL, ConceptKeys.COMMON);
        double length = keys.quantity(
                "length_fraction",
                Dimension.RATIO,
                Range.of(0.5, 1.2),
                NozzleDesign.USUAL_LENGTH_FRACTION,
                ConceptKeys.COMMON);
        double angle = keys.quantity(
                "cone_half_angle",
                Dimension.ANGLE,
                Range.of(Math.toRadians(5), Math.toRadians(40)),
                Math.toRadians(15),
                ConceptKeys.COMMON);
        SeparationCriterion separation =
                keys.choice("separation", SeparationCriterion.class, SeparationCriterion.SCHMUCKER, "schmucker-1973");
        return () -> NozzleDesign.usual(ratio, exit, shape, length, angle).withSeparation(separation);
    }

    private static Supplier<Efficiencies> efficiencies(ConceptKeys keys) {
        Map<LossKind, Double> stated = new EnumMap<>(LossKind.class);
        for (LossKind kind : LossKind.values()) {
            keys.optional(kind.key(), Dimension.RATIO, Range.of(0.1, 1), "by the model of this loss")
                    .ifPresent(value -> stated.put(kind, value));
        }
        return () -> new Efficiencies(stated);
    }
}

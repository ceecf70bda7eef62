package dev.penstock.turbomachinery.metal;

import static dev.penstock.provenance.Place.Role.INLET;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What the check of metals publishes: a part, and the whole. */
public final class MetalFigures {

    private static final ModelCard PARTIAL = ModelCard.definition(
            "turbomachinery.partial-pressure", "Partial pressure", "x p, x mole fraction", "ideal mixture");
    private static final ModelCard NEAREST = ModelCard.definition(
            "turbomachinery.metal-nearest",
            "Part that is nearest to its limit",
            "the worst of the parts",
            "everywhere");

    /** Figures of one part. */
    public static final FigureTable<MetalCheck> PARTS = FigureTable.named(MetalCheck::name)
            .word("name", "part", MetalCheck::name)
            .word("metal", "metal", part -> part.metal().id())
            .word("medium", "medium", MetalCheck::medium)
            .number("pressure_Pa", "pressure", Notation.PRESSURE, MetalCheck::pressure)
            .by(ModelCard.SAME, of(INLET, "pressure_Pa"))
            .number("temperature_K", "temperature", Notation.TEMPERATURE, MetalCheck::temperature)
            .by(ModelCard.SAME, of(INLET, "temperature_K"))
            .optional("oxygen_pressure_Pa", "oxygen pressure", Notation.PRESSURE, MetalCheck::oxygenPressure)
            .by(PARTIAL, own("pressure_Pa"))
            .optional("oxygen_threshold_Pa", "burning threshold", Notation.PRESSURE, part -> threshold(part))
            .from((part, at) -> Origin.given("published test", part.source()))
            .optional(
                    MetalLimit.OXYGEN_OVER_THRESHOLD.key(),
                    "oxygen over threshold",
                    significant("", 3),
                    MetalCheck::overThreshold)
            .by(PromotedCombustion.CARD, own("oxygen_pressure_Pa", "oxygen_threshold_Pa"))
            .optional("hydrogen_pressure_Pa", "hydrogen pressure", Notation.PRESSURE, MetalCheck::hydrogenPressure)
            .by(PARTIAL, own("pressure_Pa"))
            .optional(
                    MetalLimit.STRENGTH_IN_HYDROGEN.key(),
                    "strength in hydrogen",
                    significant("", 3),
                    MetalCheck::strengthRatio)
            .by(HydrogenEmbrittlement.CARD, own("hydrogen_pressure_Pa"))
            .word("verdict", "verdict", MetalCheck::verdict)
            .word("usual", "what is usual", MetalCheck::note)
            .word("source", "source", MetalCheck::source)
            .table();

    /** Figures of the whole. */
    public static final FigureTable<MetalReport> WORST = FigureTable.<MetalReport>ofOne()
            .optional(
                    MetalLimit.OXYGEN_OVER_THRESHOLD.key(),
                    "oxygen over threshold",
                    significant("", 3),
                    report -> number(report.nearestToBurning()
                            .map(part -> part.overThreshold().orElseThrow())))
            .from((report, at) -> nearest(report, at, MetalLimit.OXYGEN_OVER_THRESHOLD, MetalCheck::overThreshold))
            .lessIsBetter()
            .optional(
                    MetalLimit.STRENGTH_IN_HYDROGEN.key(),
                    "strength in hydrogen",
                    significant("", 3),
                    report -> number(
                            report.weakest().map(part -> part.strengthRatio().orElseThrow())))
            .from((report, at) -> nearest(report, at, MetalLimit.STRENGTH_IN_HYDROGEN, MetalCheck::strengthRatio))
            .moreIsBetter()
            .table();

    private MetalFigures() {}

    /** The parts that have the figure; the others have no number to start from. */
    private static Origin nearest(
            MetalReport report, Place at, MetalLimit kind, Function<MetalCheck, OptionalDouble> figure) {
        List<MetalCheck> judged = report.parts().stream()
                .filter(part -> figure.apply(part).isPresent())
                .toList();
        return new Origin(NEAREST, PARTS.paths(at.own("parts"), judged, kind.key()));
    }

    private static OptionalDouble threshold(MetalCheck part) {
        return number(part.oxygenTest().map(AlloyFamily.OxygenTest::threshold));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}

package dev.penstock.cooling.design;

import dev.penstock.errors.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The way of the coolant along the wall.
 *
 * @param kind route
 * @param startAreaRatio nozzle area ratio at which the jacket begins (-); empty begins it at the injector
 * @param endAreaRatio nozzle area ratio at which the jacket ends (-); empty ends it at the nozzle exit or at
 *     {@value #LARGEST_DEFAULT_AREA_RATIO}, whichever comes first, and before a radiating sheet where that lasts
 * @param entryAreaRatio nozzle area ratio of the inlet manifold for {@link Kind#PASS_AND_A_HALF} and {@link Kind#SPLIT}
 *     (-); empty takes half the end area ratio, or the throat for a split
 * @param upstreamShare share of the flow that goes towards the injector in a split (-)
 */
public record CoolantRoute(
        Kind kind,
        OptionalDouble startAreaRatio,
        OptionalDouble endAreaRatio,
        OptionalDouble entryAreaRatio,
        double upstreamShare) {

    /** Beyond this area ratio a nozzle is left to an extension unless the design says otherwise. */
    public static final double LARGEST_DEFAULT_AREA_RATIO = 40;

    /** Kinds of route. */
    public enum Kind {
        /** In at the nozzle end, out at the injector. */
        COUNTERFLOW,
        /** In at the injector, out at the nozzle end. */
        PARALLEL,
        /** Down every second channel from the injector, back up the others. */
        TWO_PASS,
        /** In at a manifold on the nozzle, down every second channel, back up the others, then on to the injector. */
        PASS_AND_A_HALF,
        /** In at a manifold between, part to the injector, the rest to the nozzle end. */
        SPLIT,
        /** Around the wall, every channel fed from one manifold and emptied into another, as in a calorimeter. */
        CIRCUMFERENTIAL
    }

    public CoolantRoute {
        Objects.requireNonNull(kind, "kind");
        startAreaRatio.ifPresent(e -> Require.within("coolant route", "start area ratio (-)", e, 1, 1e4));
        endAreaRatio.ifPresent(e -> Require.within("coolant route", "end area ratio (-)", e, 1, 1e4));
        entryAreaRatio.ifPresent(e -> Require.within("coolant route", "entry area ratio (-)", e, 1, 1e4));
        Require.within("coolant route", "share towards the injector (-)", upstreamShare, 0.01, 0.99);
    }

    /**
     * @param areaRatio nozzle area ratio at which the jacket begins (-)
     * @return the same route from there
     */
    public CoolantRoute from(double areaRatio) {
        return new CoolantRoute(kind, OptionalDouble.of(areaRatio), endAreaRatio, entryAreaRatio, upstreamShare);
    }

    /**
     * @param areaRatio nozzle area ratio at which the jacket ends (-)
     * @return the same route up to there
     */
    public CoolantRoute to(double areaRatio) {
        return new CoolantRoute(kind, startAreaRatio, OptionalDouble.of(areaRatio), entryAreaRatio, upstreamShare);
    }
}

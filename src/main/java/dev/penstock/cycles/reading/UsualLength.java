package dev.penstock.cycles.reading;

import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.chamber.loss.Vaporisation;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.Usual;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * L* of a chamber of which nothing is said: that of its pair, longer where the finest drops would not vaporise in it.
 *
 * @param oxidizer oxidizer
 * @param fuel fuel
 * @param mixtureRatio mass of oxidizer over that of fuel (-)
 */
record UsualLength(Propellant oxidizer, Propellant fuel, double mixtureRatio) {

    private static final String[] PAIR = {
        new FeedInputs(Side.OXIDIZER).propellantPath(),
        new FeedInputs(Side.FUEL).propellantPath(),
        ConceptTables.PROPELLANTS.of(EngineInputs.MIXTURE_RATIO).path()
    };

    /** That of the pair (m): what the oxidizer's file states goes before what the fuel's does. */
    double ofPair() {
        OptionalDouble ofOxidizer = oxidizer.combustion().characteristicLength();
        return ofOxidizer.orElseGet(() -> fuel.needed(
                fuel.combustion().characteristicLength(),
                "combustion.characteristic_length",
                "a length, or chamber.characteristic_length in the concept"));
    }

    /**
     * @param contractionRatio of the chamber (-)
     * @param pressure chamber pressure (Pa); not positive after a noted problem
     * @param injector with usual losses
     * @param sizeFrom inputs that the size of the throat, and with it the contraction ratio, is taken from
     * @return L* (m)
     */
    Usual<Double> in(double contractionRatio, double pressure, InjectorDesign injector, String... sizeFrom) {
        double pair = ofPair();
        double needed = pressure > 0 && mixtureRatio > 0
                ? Vaporisation.lengthFor(
                        pair, contractionRatio, injector, pressure, new Vaporisation.Pair(oxidizer, fuel, mixtureRatio))
                : pair;
        if (needed <= pair) {
            return Usual.of(pair, "usual for the pair", "nasa-sp-125");
        }
        String[] from = Stream.of(PAIR, new String[] {ChamberKeys.CONTRACTION, ChamberKeys.PRESSURE}, sizeFrom)
                .flatMap(Stream::of)
                .distinct()
                .toArray(String[]::new);
        return Usual.of(needed, "for the finest drops to vaporise in so wide a chamber", "priem-heidmann-1960")
                .following(from);
    }
}

package dev.penstock.cooling.gas;

import dev.penstock.errors.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How a film of fuel enters along the hot wall; how much of it there is follows from the chamber, which loses impulse by it.
 * Where the fuel cools the jacket the film enters as the jacket's coolant does, else as stored, unless a temperature is stated.
 *
 * @param kind state in which it enters
 * @param areaRatio cross-section over throat area where it enters (-); empty takes the injector face
 * @param upstream whether that place is upstream of the throat
 * @param temperature temperature with which it enters (K); empty takes that of the jacket's inlet or of the tank
 * @param slotHeight height of the slot (m), for a gaseous film
 * @param efficiency share of a liquid film that stays on the wall until it evaporates (-)
 */
public record FilmDesign(
        Kind kind,
        OptionalDouble areaRatio,
        boolean upstream,
        OptionalDouble temperature,
        double slotHeight,
        double efficiency) {

    /** State in which the film enters. */
    public enum Kind {
        GASEOUS,
        LIQUID
    }

    public FilmDesign {
        Objects.requireNonNull(kind, "kind");
        areaRatio.ifPresent(e -> Require.within("film", "area ratio (-)", e, 1, 1e4));
        temperature.ifPresent(t -> Require.positive("film", "temperature (K)", t));
        Require.within("film", "slot height (m)", slotHeight, 1e-5, 0.1);
        Require.within("film", "efficiency (-)", efficiency, 0.01, 1);
    }

    /** @return a liquid film from the injector's rim, half of which stays on the wall */
    public static FilmDesign liquid() {
        return of(Kind.LIQUID, GasSideInputs.FILM_EFFICIENCY.standing().value());
    }

    /** @return a gaseous film from a slot of 1 mm at the injector's rim */
    public static FilmDesign gaseous() {
        return of(Kind.GASEOUS, 1);
    }

    private static FilmDesign of(Kind kind, double efficiency) {
        return new FilmDesign(
                kind,
                OptionalDouble.empty(),
                GasSideInputs.FILM_UPSTREAM.standing().value(),
                OptionalDouble.empty(),
                GasSideInputs.FILM_SLOT_HEIGHT.standing().value(),
                efficiency);
    }
}

package dev.penstock.cycles.trail;

import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Trail;
import java.util.List;

/**
 * Records where the numbers of a search for the highest chamber pressure come from: those of the engine there, whose
 * chamber pressure follows from the limits that the search held, and those of the search itself.
 */
public final class LimitTrail {

    private LimitTrail() {}

    /**
     * @param trail trail of the engine at the highest chamber pressure
     * @param result result of the search that found it
     * @return the same trail, with the numbers of the search
     */
    public static Trail extend(Trail trail, LimitResult result) {
        List<String> held = SearchFigures.bounds(result.held());
        if (held.isEmpty()) {
            trail.given(
                    SearchFigures.PRESSURE,
                    result.chamberPressure(),
                    "Pa",
                    "end of what closes",
                    "search over chamber pressure, no limit held");
        } else {
            trail.record(
                    SearchFigures.PRESSURE,
                    result.chamberPressure(),
                    "Pa",
                    SearchFigures.SEARCH,
                    held.toArray(String[]::new));
        }
        SearchFigures.SEARCHED.record(result, Place.at(""), trail);
        return trail;
    }
}

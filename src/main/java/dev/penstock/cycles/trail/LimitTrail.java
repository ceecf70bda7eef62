package dev.penstock.cycles.trail;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.questions.LimitResult.Sensitivity;
import dev.penstock.cycles.questions.LimitSearch;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import java.util.ArrayList;
import java.util.List;

/**
 * Records where the numbers of a search for the highest chamber pressure come from: those of the engine there, whose
 * chamber pressure follows from the limits that the search held, and those of the search itself.
 */
public final class LimitTrail {

    private static final String PRESSURE = "concept.engine.chamber_pressure";

    private static final ModelCard SEARCH = new ModelCard(
            "cycles.limit-search",
            "Highest chamber pressure that keeps every limit that counts",
            "p_c such that the least margin of the limits that count is zero, or where solutions turn back",
            "one crossing between the last pressure that keeps them and the first that does not",
            "tolerance of the search",
            List.of("definition"));
    private static final ModelCard BEST = new ModelCard(
            "cycles.best-pressure",
            "Best chamber pressure within the limits",
            "p_c at or below the highest at which impulse is greatest, or start mass over payload least",
            "one best pressure between two rungs of the search",
            "1.5 % of the pressure; impulse is flat there",
            List.of("definition"));
    private static final ModelCard WORTH = new ModelCard(
            "cycles.limit-worth",
            "What a limit is worth",
            "(Δp_c/p_c)/(Δlimit/limit), the search run again with that limit changed",
            "small changes, all other limits as they are",
            "that of the search",
            List.of("definition"));

    private LimitTrail() {}

    /**
     * @param trail trail of the engine at the highest chamber pressure
     * @param result result of the search that found it
     * @return the same trail, with the numbers of the search
     */
    public static Trail extend(Trail trail, LimitResult result) {
        String[] held = result.held().stream()
                .map(l -> l.path() + ".limit")
                .filter(trail::has)
                .toArray(String[]::new);
        if (held.length == 0) {
            trail.given(
                    PRESSURE,
                    result.chamberPressure(),
                    "Pa",
                    "end of what closes",
                    "search over chamber pressure, no limit held");
        } else {
            trail.record(PRESSURE, result.chamberPressure(), "Pa", SEARCH, held);
        }
        trail.record("chamber_pressure_Pa", result.chamberPressure(), "Pa", Definitions.SAME, PRESSURE);
        result.best().ifPresent(best -> {
            trail.record("best.chamber_pressure_Pa", best.chamberPressure(), "Pa", BEST, "chamber_pressure_Pa");
            trail.record("best.value", best.value(), best.unit(), BEST, "best.chamber_pressure_Pa");
        });
        for (LimitCheck limit : result.held()) {
            String from = limit.path();
            String to = "held." + Trail.slug(limit.name());
            trail.record(to + ".value", limit.value(), limit.unit(), Definitions.SAME, from + ".value");
            trail.record(to + ".limit", limit.limit(), limit.unit(), Definitions.SAME, from + ".limit");
            trail.record(to + ".margin", limit.margin(), "", Definitions.SAME, from + ".margin");
        }
        for (int i = 0; i < result.sensitivities().size(); i++) {
            Sensitivity s = result.sensitivities().get(i);
            String to = "sensitivities." + i;
            trail.given(to + ".relative_change", s.change(), "", "step of the search", "chosen here");
            List<String> from = new ArrayList<>(changed(trail, result, s.limit()));
            from.add(to + ".relative_change");
            trail.record(to + ".chamber_pressure_Pa", s.chamberPressure(), "Pa", SEARCH, from.toArray(String[]::new));
            trail.record(
                    to + ".elasticity",
                    s.elasticity(),
                    "",
                    WORTH,
                    to + ".chamber_pressure_Pa",
                    "chamber_pressure_Pa",
                    to + ".relative_change");
        }
        for (int i = 0; i < result.points().size(); i++) {
            trail.given(
                    "points." + i + ".chamber_pressure_Pa",
                    result.points().get(i).chamberPressure(),
                    "Pa",
                    "step of the search",
                    "chosen here");
        }
        return trail;
    }

    /** The limits that are changed together, since one key of the concept sets them. */
    private static List<String> changed(Trail trail, LimitResult result, String key) {
        return result.held().stream()
                .filter(limit -> LimitSearch.key(limit).equals(key))
                .map(limit -> limit.path() + ".limit")
                .filter(trail::has)
                .toList();
    }
}

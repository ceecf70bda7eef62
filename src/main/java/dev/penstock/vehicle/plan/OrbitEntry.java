package dev.penstock.vehicle.plan;

import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import dev.penstock.vehicle.plan.DeltaVBudget.Term;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How an orbit is entered: level at a height, at the perigee of an ellipse whose apogee is the orbit, then made round there.
 *
 * <pre>
 * v_insertion = √(μ(2/r_p − 1/a)),   Δv = √(μ/r_a) − √(μ(2/r_a − 1/a))
 * </pre>
 *
 * The burn at the apogee is taken as sudden.
 *
 * @param planet the planet
 * @param insertion height at which the ascent ends (m)
 * @param orbit height of the circular orbit (m)
 */
public record OrbitEntry(Planet planet, double insertion, double orbit) {

    static final String ORBITAL_SPEED = "orbital speed";
    static final String CIRCULARISATION = "circularisation";

    private static final List<String> INPUTS = List.of(
            "mission." + MissionInputs.ORBIT_ALTITUDE.key(), "mission." + MissionInputs.INSERTION_ALTITUDE.key());

    /** Heights (m) nearer to each other than this are one. */
    private static final double SAME = 1;

    /** @return speed change that makes the orbit round (m/s) */
    public double circularisation() {
        return orbit - insertion < SAME ? 0 : planet.circularSpeed(orbit) - planet.speed(orbit, insertion, orbit);
    }

    /** @return terms of a speed budget: the speed at insertion, and what makes the orbit round */
    public List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        if (circularisation() == 0) {
            terms.add(term(Kind.SPEED, ORBITAL_SPEED, planet.circularSpeed(orbit), "circular at %.0f km", orbit));
            return terms;
        }
        terms.add(term(
                Kind.SPEED,
                ORBITAL_SPEED,
                planet.speed(insertion, insertion, orbit),
                "at the perigee of %.0f by %.0f km",
                insertion,
                orbit));
        terms.add(circularisationTerm());
        return terms;
    }

    Term circularisationTerm() {
        return term(Kind.MANOEUVRE, CIRCULARISATION, circularisation(), "at the apogee of %.0f km", orbit);
    }

    private static Term term(Kind kind, String name, double value, String source, double... metres) {
        Object[] kilometres = Arrays.stream(metres).mapToObj(m -> m / 1e3).toArray();
        return new Term(
                kind, name, value, String.format(Locale.ROOT, source, kilometres), Optional.of(Planet.ORBIT), INPUTS);
    }
}

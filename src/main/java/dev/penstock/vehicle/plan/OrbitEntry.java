package dev.penstock.vehicle.plan;

import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import dev.penstock.vehicle.plan.DeltaVBudget.Term;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a target is entered: level at a height, at the perigee of an ellipse whose apogee is that of the orbit, whose perigee is then
 * raised at the apogee; or out of a circular orbit at that height by a second burn.
 *
 * <pre>
 * v_insertion = √(μ(2/r − 1/a)), or √(2μ/r + C3) on the way out;  second burn Δv = v_insertion − √(μ/r)
 * at the apogee  Δv = √(μ(2/r_a − 1/a)) − √(μ(2/r_a − 2/(r + r_a)))
 * </pre>
 *
 * Burns after the ascent are taken as sudden.
 *
 * @param planet the planet
 * @param insertion height at which the ascent ends (m)
 * @param target orbit, or way out
 * @param parked whether the ascent ends in a circular orbit, out of which a second burn leads
 */
public record OrbitEntry(Planet planet, double insertion, Target target, boolean parked) {

    private static final String ORBITAL_SPEED = "orbital speed";
    /** Speed change at the apogee of a way to a circular orbit, and to one that is not. */
    private static final String CIRCULARISATION = "circularisation";

    private static final String RAISING = "raising the perigee";
    private static final String SECOND_BURN = "second burn";

    private static final List<String> INPUTS = MissionInputs.TARGETS.stream()
            .map(input -> "mission." + input.key())
            .toList();

    /** Heights (m) nearer to each other than this are one. */
    private static final double SAME = 1;

    /**
     * @param mission a mission
     * @return how its target is entered
     */
    public static OrbitEntry of(AscentMission mission) {
        return new OrbitEntry(
                mission.planet(),
                mission.insertionAltitude(),
                mission.target(),
                mission.parkingCoast().isPresent());
    }

    /** @return speed change at the apogee that raises the perigee to that of the orbit (m/s) */
    public double raising() {
        if (!(target instanceof Target.Orbit orbit) || orbit.perigee() - insertion < SAME) {
            return 0;
        }
        return planet.speed(orbit.apogee(), orbit.perigee(), orbit.apogee())
                - planet.speed(orbit.apogee(), insertion, orbit.apogee());
    }

    /** @return terms of a velocity budget: the speed at insertion, a second burn, and what raises the perigee */
    public List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        double circular = planet.circularSpeed(insertion);
        double speed = target.speedFrom(planet, insertion);
        double gain = speed - circular;
        if (parked) {
            terms.add(term(Kind.SPEED, ORBITAL_SPEED, circular, "circular at %.0f km", insertion));
            terms.add(term(Kind.SPEED, SECOND_BURN, gain, way(), insertion, end()));
        } else if (gain < 1e-9 * circular) {
            terms.add(term(Kind.SPEED, ORBITAL_SPEED, circular, "circular at %.0f km", insertion));
        } else {
            terms.add(term(Kind.SPEED, ORBITAL_SPEED, speed, way(), insertion, end()));
        }
        raisingTerm().ifPresent(terms::add);
        return terms;
    }

    Optional<Term> raisingTerm() {
        if (raising() == 0) {
            return Optional.empty();
        }
        Target.Orbit orbit = (Target.Orbit) target;
        String name = orbit.apogee() - orbit.perigee() < SAME ? CIRCULARISATION : RAISING;
        return Optional.of(term(Kind.RAISING, name, raising(), "at the apogee of %.0f km", orbit.apogee()));
    }

    private String way() {
        return target instanceof Target.Escape escape
                ? String.format(Locale.ROOT, "away from %%.0f km with C3 = %.4g km²/s²", escape.c3() / 1e6)
                : "at the perigee of %.0f by %.0f km";
    }

    private double end() {
        return target.highest().orElse(0);
    }

    private static Term term(Kind kind, String name, double value, String source, double... metres) {
        Object[] kilometres = Arrays.stream(metres).mapToObj(m -> m / 1e3).toArray();
        return new Term(
                kind, name, value, String.format(Locale.ROOT, source, kilometres), Optional.of(Planet.ORBIT), INPUTS);
    }
}

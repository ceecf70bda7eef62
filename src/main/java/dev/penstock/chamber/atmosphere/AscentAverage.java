package dev.penstock.chamber.atmosphere;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Specific impulse averaged over an ascent at constant mass flow.
 * <pre>Ī = ∫ F(p_a(t)) dt / (g₀ ṁ T)</pre>
 * The pressure along the way is given as a function of time: through an atmosphere from an altitude profile, or falling
 * exponentially, p = p₀ exp(−t/τ). Definition, exact; the integral by Simpson's rule.
 *
 * @param specificImpulse average specific impulse (s)
 * @param initialSpecificImpulse at the start (s)
 * @param finalSpecificImpulse at the end (s)
 * @param totalImpulse ∫ F dt (N·s)
 * @param propellant propellant used (kg)
 */
public record AscentAverage(
        double specificImpulse,
        double initialSpecificImpulse,
        double finalSpecificImpulse,
        double totalImpulse,
        double propellant) {

    public static final ModelCard CARD = new ModelCard(
            "chamber.ascent_average",
            "Specific impulse averaged over an ascent",
            "Ī = ∫ F(p_a(t)) dt/(g₀ ṁ T)",
            "constant mass flow",
            "exact for the given profile",
            List.of("common practice, no source"));

    private static final int INTERVALS = 400;

    public AscentAverage {
        Require.positive(CARD.title(), "specific impulse (s)", specificImpulse);
        Require.positive(CARD.title(), "propellant (kg)", propellant);
    }

    /**
     * One point of an altitude profile.
     *
     * @param time time from lift-off (s)
     * @param altitude geometric altitude (m)
     */
    public record Waypoint(double time, double altitude) {}

    /**
     * @param thrustAt thrust (N) against ambient pressure (Pa)
     * @param massFlow mass flow (kg/s)
     * @param pressureAt ambient pressure (Pa) against time (s)
     * @param duration burn time (s)
     * @return the average
     */
    public static AscentAverage over(
            DoubleUnaryOperator thrustAt, double massFlow, DoubleUnaryOperator pressureAt, double duration) {
        Require.positive(CARD.title(), "mass flow (kg/s)", massFlow);
        Require.positive(CARD.title(), "burn time (s)", duration);
        double sum = 0;
        for (int i = 0; i <= INTERVALS; i++) {
            double weight = i == 0 || i == INTERVALS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * thrustAt.applyAsDouble(pressureAt.applyAsDouble(duration * i / INTERVALS));
        }
        double total = sum * duration / (3 * INTERVALS);
        double scale = 1 / (Constants.STANDARD_GRAVITY * massFlow);
        return new AscentAverage(
                total * scale / duration,
                thrustAt.applyAsDouble(pressureAt.applyAsDouble(0)) * scale,
                thrustAt.applyAsDouble(pressureAt.applyAsDouble(duration)) * scale,
                total,
                massFlow * duration);
    }

    /**
     * Pressure along an altitude profile, straight between its points.
     *
     * @param atmosphere the air
     * @param profile at least two points, time rising
     * @return pressure (Pa) against time (s); the ends are kept before and after
     */
    public static DoubleUnaryOperator through(Atmosphere atmosphere, List<Waypoint> profile) {
        Require.within(CARD.title(), "points of the altitude profile", profile.size(), 2, Integer.MAX_VALUE);
        List<Waypoint> points = List.copyOf(profile);
        for (int i = 1; i < points.size(); i++) {
            Require.positive(
                    CARD.title(),
                    "step in time (s)",
                    points.get(i).time() - points.get(i - 1).time());
        }
        return time -> atmosphere.at(altitude(points, time)).pressure();
    }

    /**
     * Pressure falling exponentially.
     *
     * @param startPressure pressure at lift-off (Pa)
     * @param timeConstant time in which it falls to 1/e (s); 30 to 50 s for boosters (common practice, no source)
     * @return pressure (Pa) against time (s)
     */
    public static DoubleUnaryOperator exponential(double startPressure, double timeConstant) {
        Require.positive(CARD.title(), "start pressure (Pa)", startPressure);
        Require.positive(CARD.title(), "time constant (s)", timeConstant);
        return time -> startPressure * Math.exp(-time / timeConstant);
    }

    private static double altitude(List<Waypoint> points, double time) {
        Waypoint before = points.get(0);
        for (Waypoint after : points) {
            if (time <= after.time()) {
                double width = after.time() - before.time();
                return width == 0
                        ? after.altitude()
                        : before.altitude()
                                + (after.altitude() - before.altitude()) * Math.max(0, time - before.time()) / width;
            }
            before = after;
        }
        return before.altitude();
    }
}

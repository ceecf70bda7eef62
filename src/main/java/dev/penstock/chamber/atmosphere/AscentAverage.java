package dev.penstock.chamber.atmosphere;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Specific impulse averaged over an ascent at constant mass flow.
 * <pre>Ī = ∫ F(p_a(t)) dt / (g₀ ṁ T)</pre>
 * The pressure along the way is given as a function of time, for example falling exponentially, p = p₀ exp(−t/τ).
 * Definition, exact; the integral by Simpson's rule.
 */
public final class AscentAverage {

    public static final ModelCard CARD = new ModelCard(
            "chamber.ascent_average",
            "Specific impulse averaged over an ascent",
            "Ī = ∫ F(p_a(t)) dt/(g₀ ṁ T)",
            "constant mass flow",
            "exact for the given profile",
            List.of("common practice, no source"));

    private static final int INTERVALS = 400;

    private AscentAverage() {}

    /**
     * @param thrustAt thrust (N) against ambient pressure (Pa)
     * @param massFlow mass flow (kg/s)
     * @param pressureAt ambient pressure (Pa) against time (s)
     * @param duration burn time (s)
     * @return average specific impulse (s)
     */
    public static double specificImpulse(
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
        return Require.positive(CARD.title(), "specific impulse (s)", total * scale / duration);
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
}

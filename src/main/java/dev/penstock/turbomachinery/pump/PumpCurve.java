package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Generic head and efficiency of a pump over flow, relative to its design point and scaled by the affinity laws.
 * <pre>
 * x = (Q/Q_d)/(ω/ω_d)
 * H/H_d = (ω/ω_d)² [h0 - (h0 - 1) x²],   η/η_d = 2x - x² up to x = 1, 1 - (1 - x)² above: the same parabola
 * h0 = 1.25 exp(-0.3 nq/100)/(1.21 exp(-0.77 nq/100)), centrifugal; 1.5, axial
 * </pre>
 * The shut-off head is the ratio of Gülich's regressions of head coefficient at zero and at best flow. Steeper for high specific
 * speed. Reynolds number effects are left out: less than two points down to half speed.
 */
public final class PumpCurve {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.pump-curve",
            "Pump head and efficiency off the design point",
            "H/H_d = n² [h0 - (h0-1) x²], η/η_d = 1 - (1-x)², x = (Q/Q_d)/n, h0 = 1.033 exp(0.47 nq/100)",
            "nq 5 to 100; x 0.4 to 1.4; below that a pump stalls and recirculates",
            "shut-off head 10 %; efficiency 3 points at x 0.7",
            List.of("gulich-2014", "nasa-sp-8109"));

    /** Flow ratio below which centrifugal stages recirculate and surge (-), 0.3 to 0.6 [nasa-sp-8109, from memory]. */
    static final double CENTRIFUGAL_STALL = 0.5;

    /** Flow ratio below which axial stages stall (-), 0.7 to 0.85 [nasa-sp-8125, from memory]. */
    static final double AXIAL_STALL = 0.75;

    private static final double AXIAL_SHUT_OFF = 1.5;
    private static final double LEAST_EFFICIENCY_RATIO = 0.02;

    private PumpCurve() {}

    /**
     * @param type kind of stages
     * @param metricSpecificSpeed nq of a stage
     * @return head at zero flow over head at design flow, same speed (-), above 1
     */
    public static double shutOff(PumpType type, double metricSpecificSpeed) {
        if (type == PumpType.AXIAL) {
            return AXIAL_SHUT_OFF;
        }
        double nq = Require.positive(CARD.id(), "metric specific speed", metricSpecificSpeed);
        return 1.25 * Math.exp(-0.3 * nq / 100) / (1.21 * Math.exp(-0.77 * nq / 100));
    }

    /**
     * @param flowRatio x (-), 0 or more
     * @param shutOff h0 (-)
     * @return head over design head at the same speed (-); negative where the pump chokes the flow
     */
    public static double head(double flowRatio, double shutOff) {
        double x = Require.notNegative(CARD.id(), "flow ratio (-)", flowRatio);
        return shutOff - (shutOff - 1) * x * x;
    }

    /**
     * @param flowRatio x (-), 0 or more
     * @return efficiency over design efficiency (-); continued as a small positive number beyond the parabola
     */
    public static double efficiency(double flowRatio) {
        double x = Require.notNegative(CARD.id(), "flow ratio (-)", flowRatio);
        double ratio = 1 - (1 - x) * (1 - x);
        // smooth floor: same value and slope as the parabola far above it
        return 0.5 * (ratio + Math.sqrt(ratio * ratio + 4 * LEAST_EFFICIENCY_RATIO * LEAST_EFFICIENCY_RATIO));
    }

    /**
     * @param type kind of stages
     * @return flow ratio at which it stalls (-)
     */
    public static double stallRatio(PumpType type) {
        return type == PumpType.AXIAL ? AXIAL_STALL : CENTRIFUGAL_STALL;
    }
}

package dev.penstock.cycles.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.cycles.concept.ExhaustDesign;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.turbomachinery.PerfectGas;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Identities of a perfect gas. */
class ExhaustNozzleTest {

    private static final double CP = 2000;
    private static final double GAMMA = 1.3;
    private static final double R = CP * 0.3 / 1.3;
    private static final double T0 = 900;
    private static final double P0 = 4e5;
    private static final double FLOW = 5;

    private static ExhaustJet jet(double areaRatio, double cant) {
        ExhaustDesign design = new ExhaustDesign(OptionalDouble.empty(), areaRatio, 0.95, 0, cant, 0);
        return ExhaustNozzle.jet(PartKey.EXHAUST, new PerfectGas(CP, GAMMA), P0, CP * T0, FLOW, design);
    }

    /** v = a* = √(2γRT0/(γ+1)), p/(ρv) = v/γ, A = ṁ√(RT0)/(p0 Γ) with Γ = √γ (2/(γ+1))^((γ+1)/(2(γ−1))). */
    @Test
    void asSonicOpening() {
        ExhaustJet sonic = jet(1, 0);
        double v = Math.sqrt(2 * GAMMA * R * T0 / (GAMMA + 1));
        assertThat(sonic.vacuumThrust()).isCloseTo(0.95 * FLOW * v * (1 + 1 / GAMMA), withinPercentage(1e-6));
        double flux = Math.sqrt(GAMMA) * Math.pow(2 / 2.3, 2.3 / 0.6);
        assertThat(sonic.throatArea()).isCloseTo(FLOW * Math.sqrt(R * T0) / (P0 * flux), withinPercentage(1e-6));
        assertThat(sonic.exitArea()).isEqualTo(sonic.throatArea());
    }

    /** At Mach 2.5: ε = [2/(γ+1) (1 + (γ−1)/2 M²)]^((γ+1)/(2(γ−1)))/M and F = η ṁ cos θ v (1 + 1/(γM²)). */
    @Test
    void expandedToMachTwoAndAHalf() {
        double warmth = 1 + 0.15 * 6.25;
        double areaRatio = Math.pow(2 / 2.3 * warmth, 2.3 / 0.6) / 2.5;
        double v = 2.5 * Math.sqrt(GAMMA * R * T0 / warmth);
        ExhaustJet wide = jet(areaRatio, 0.3);
        assertThat(wide.vacuumThrust())
                .isCloseTo(0.95 * FLOW * Math.cos(0.3) * v * (1 + 1 / (GAMMA * 6.25)), withinPercentage(1e-6));
        assertThat(wide.exitArea()).isCloseTo(areaRatio * wide.throatArea(), withinPercentage(1e-9));
        assertThat(wide.cant()).isEqualTo(0.3);
        assertThat(wide.gamma()).isCloseTo(GAMMA, withinPercentage(1e-9));
    }
}

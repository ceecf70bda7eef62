package dev.penstock.turbomachinery.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.turbomachinery.PerfectGas;
import org.junit.jupiter.api.Test;

/** The relations of turbine blading at one point each, worked by hand from the equations of their cards. */
class BladingByHandTest {

    private static final double ALPHA = Math.toRadians(20);
    private static final PerfectGas GAS = new PerfectGas(2650, 1.10);

    /** φ cos α − ν = 0.702105; the second rotor gets 0.85 (0.85 · 0.702105 − 0.2) − 0.2 = 0.137271; 2 · 0.2 · 1.85 times the sum. */
    @Test
    void twoRowsWithLosses() {
        assertThat(ImpulseBlading.twoRows(0.2, ALPHA, 0.96, 0.85)).isCloseTo(0.6211380, within(1e-7));
        // η is quadratic in ν: the best is half the zero
        assertThat(ImpulseBlading.bestTwoRows(ALPHA, 0.96, 0.85)).isCloseTo(0.2174774, within(1e-7));
        assertThat(ImpulseBlading.bestOneRow(ALPHA, 0.96)).isCloseTo(0.4510525, within(1e-7));
    }

    /** x = 0.7, two stages: ξ = 0.0850694, work 0.8255697, drop 0.9542467, so that ν = 0.7/√(2 · 0.9542467) = 0.5067021. */
    @Test
    void reactionStagesOffTheirBest() {
        assertThat(ReactionBlading.efficiency(0.5067021063685354, 2, ALPHA, 0.96))
                .isCloseTo(0.8651533, within(1e-7));
        assertThat(ReactionBlading.jetOverSpouting(0.5067021063685354, 2, ALPHA, 0.96))
                .isCloseTo(0.7238602, within(1e-7));
        assertThat(ReactionBlading.best(2, ALPHA, 0.96)).isCloseTo(0.6653498, within(1e-7));
    }

    /**
     * M = 34.5129 g/mol from R = 2650 · 0.1/1.1; at 800 K and 0.2 bar μ = 3.83881·10⁻⁵ Pa·s and ρ = 0.103774 kg/m³, so Re = 40 549 at 500
     * m/s and 30 mm; the loss grows by (0.202746)^−0.4 = 1.893299: 0.8/(0.8 + 0.2 · 1.893299). The gap of 0.25 mm is under 2 %.
     */
    @Test
    void aLowReynoldsNumberCostsEfficiency() {
        assertThat(SizeLoss.efficiency(0.8, 0.2, 0.03, GAS.atPressureTemperature(2e4, 800), 500))
                .isCloseTo(0.6787370, within(1e-6));
    }

    /** D_max = k τ^(1/3) with τ = 0.6 ṁ Δhs/ω; far from the blade speed's limit the smooth minimum is that. */
    @Test
    void theWheelIsNoLargerThanItsTorqueAsks() {
        TurbineDesign design = TurbineDefaults.of(false);
        GasExpansion gas = new GasExpansion(new TurbineDuty(GAS, 5e6, 2650 * 900, 2.5e6, 10));
        double torque = 0.6 * 10 * gas.drop / 1000;
        assertThat(TurbineWheel.greatestPitchLineSpeed(gas, 1000, design))
                .isCloseTo(0.5 * 1000 * 0.026 * Math.cbrt(torque), withinPercentage(1e-6));
        // and of a fast shaft the blade speed's limit
        assertThat(TurbineWheel.greatestPitchLineSpeed(gas, 60_000, design))
                .isCloseTo(design.pitchLineSpeedLimit(), withinPercentage(1e-3));
    }

    /** Identity: ω√A goes with ω at a given flow area, so the limit is reached where the wheel at this speed, its nozzles at 30°, says. */
    @Test
    void theAnnulusBoundsTheSpeedWhereItsLimitIsReached() {
        TurbineDesign design = TurbineDefaults.of(false)
                .withStages(TurbineType.IMPULSE, 1)
                .withNozzleAngle(Math.toRadians(30))
                .withMeanDiameter(0.3);
        TurbineDuty duty = new TurbineDuty(GAS, 5e6, 2650 * 900, 0.5e6, 20);
        TurbineSizing sized = new TurbineModel().size("turbine", duty, 2000, design);
        assertThat(sized.design().nozzleAngle()).isCloseTo(Math.toRadians(30), withinPercentage(0.1));
        double area = Math.pow(sized.annulusSpeed() / 2000, 2) * sized.admission();
        assertThat(new TurbineModel().annulusLimit(duty, 2000, design).speed() * Math.sqrt(area))
                .isCloseTo(design.annulusSpeedLimit(), withinPercentage(0.2));
    }

    /** Identities of a sized turbine: U = ωD/2, ν = U/C0, ω²A with A = π D h, σ = ρ (ω²A)/(2π), limits by those values. */
    @Test
    void aSizedTurbineFitsTogether() {
        TurbineSizing t = new TurbineModel()
                .size("turbine", new TurbineDuty(GAS, 5e6, 2650 * 900, 1e6, 18), 2500, TurbineDefaults.of(false));
        assertThat(t.pitchLineSpeed()).isCloseTo(0.5 * 2500 * t.meanDiameter(), withinPercentage(1e-9));
        assertThat(t.spoutingVelocity()).isCloseTo(Math.sqrt(2 * t.isentropicDrop()), withinPercentage(1e-9));
        assertThat(t.velocityRatio()).isCloseTo(t.pitchLineSpeed() / t.spoutingVelocity(), withinPercentage(1e-9));
        assertThat(t.annulusSpeed())
                .isCloseTo(2500 * Math.sqrt(Math.PI * t.meanDiameter() * t.bladeHeight()), withinPercentage(1e-9));
        assertThat(t.rootStress())
                .isCloseTo(8200 * t.annulusSpeed() * t.annulusSpeed() / (2 * Math.PI), withinPercentage(1e-9));
        assertThat(t.power()).isCloseTo(18 * t.efficiency() * t.isentropicDrop(), withinPercentage(1e-9));
        assertThat(t.outlet().enthalpy())
                .isCloseTo(2650 * 900 - t.efficiency() * t.isentropicDrop(), withinPercentage(1e-9));
        assertThat(limit(t, TurbineLimit.PITCH_LINE_SPEED)).isEqualTo(t.pitchLineSpeed());
        assertThat(limit(t, TurbineLimit.ANNULUS_SPEED)).isEqualTo(t.annulusSpeed());
        assertThat(limit(t, TurbineLimit.INLET_TEMPERATURE)).isCloseTo(900, withinPercentage(1e-9));
    }

    private static double limit(TurbineSizing turbine, TurbineLimit kind) {
        return turbine.limits().stream()
                .filter(l -> l.kind() == kind)
                .findFirst()
                .orElseThrow()
                .value();
    }

    /**
     * The choice counts two points for each stage beyond the first and 0.3 for each unit by which the annulus passes its limit: no other
     * stages score higher.
     */
    @Test
    void noOtherStagesScoreHigher() {
        TurbineModel model = new TurbineModel();
        for (double speed : new double[] {1500, 4000, 9000}) {
            TurbineDuty duty = new TurbineDuty(GAS, 20e6, 2650 * 800, 9e6, 40);
            TurbineDesign open = TurbineDefaults.of(false);
            int chosen = model.choose(duty, speed, open.withStages(TurbineType.REACTION, 1))
                    .stages()
                    .orElseThrow();
            assertThat(chosen).isEqualTo(1); // stated stages are kept
            TurbineDesign free = model.choose(duty, speed, open);
            double best = Double.NEGATIVE_INFINITY;
            TurbineDesign expected = null;
            for (TurbineType type : new TurbineType[] {TurbineType.REACTION, TurbineType.IMPULSE}) {
                for (int n = 1; n <= 4; n++) {
                    TurbineSizing sized = model.size("t", duty, speed, open.withStages(type, n));
                    double excess = Math.max(0, sized.annulusSpeed() / open.annulusSpeedLimit() - 1);
                    double score = sized.efficiency() - 0.02 * (n - 1) - 0.3 * excess;
                    boolean starved = type == TurbineType.REACTION && sized.admission() < 0.9;
                    if (!starved && score > best) {
                        best = score;
                        expected = open.withStages(type, n);
                    }
                }
            }
            assertThat(free).as("at " + speed + " rad/s").isEqualTo(expected);
        }
    }
}

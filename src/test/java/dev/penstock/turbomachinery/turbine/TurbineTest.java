package dev.penstock.turbomachinery.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.RealFluidWorkingFluid;
import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.turbomachinery.PerfectGas;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurbineTest {

    private static final double BTU_PER_POUND = 2326;
    private static final double ALPHA = Math.toRadians(20);

    private final TurbineModel model = new TurbineModel();

    @ParameterizedTest // textbook formula, φ 0.96, ψ 0.85, 20°; values computed independently
    @CsvSource({"0.1, 0.297", "0.2, 0.520", "0.3, 0.668", "0.4, 0.743", "0.45, 0.753", "0.5, 0.744"})
    void oneRowFollowsTheTextbook(double ratio, double expected) {
        assertThat(ImpulseBlading.oneRow(ratio, ALPHA, 0.96, 0.85)).isCloseTo(expected, within(6e-4));
    }

    @ParameterizedTest // loss-free limits, computed independently
    @CsvSource({"1, 0.2, 0.5918", "1, 0.3, 0.7676", "2, 0.2, 0.8635", "2, 0.25, 0.8794", "2, 0.3, 0.8153"})
    void withoutLossesTheClassicalLimitsAppear(int rows, double ratio, double expected) {
        double got = rows == 1 ? ImpulseBlading.oneRow(ratio, ALPHA, 1, 1) : ImpulseBlading.twoRows(ratio, ALPHA, 1, 1);
        assertThat(got).isCloseTo(expected, within(2e-4));
    }

    @Test
    void statedBestVelocityRatiosAreTheBest() {
        double one = ImpulseBlading.bestOneRow(ALPHA, 0.96);
        double two = ImpulseBlading.bestTwoRows(ALPHA, 0.96, 0.85);
        for (double step : new double[] {-0.02, 0.02}) {
            assertThat(ImpulseBlading.oneRow(one + step, ALPHA, 0.96, 0.85))
                    .isLessThan(ImpulseBlading.oneRow(one, ALPHA, 0.96, 0.85));
            assertThat(ImpulseBlading.twoRows(two + step, ALPHA, 0.96, 0.85))
                    .isLessThan(ImpulseBlading.twoRows(two, ALPHA, 0.96, 0.85));
        }
    }

    /** Peaks and places of built turbines [nasa-sp-8110, from memory], with the usual factor for secondary losses. */
    @Test
    void peaksLieInThePublishedBands() {
        double factor = TurbineDefaults.of(false).efficiencyFactor();
        double one = ImpulseBlading.bestOneRow(ALPHA, 0.96);
        double two = ImpulseBlading.bestTwoRows(ALPHA, 0.96, 0.85);
        double reaction = ReactionBlading.best(2, ALPHA, 0.96);
        assertThat(one).isBetween(0.40, 0.47);
        assertThat(factor * ImpulseBlading.oneRow(one, ALPHA, 0.96, 0.85)).isBetween(0.65, 0.78);
        assertThat(two).isBetween(0.20, 0.30);
        assertThat(factor * ImpulseBlading.twoRows(two, ALPHA, 0.96, 0.85)).isBetween(0.55, 0.68);
        assertThat(reaction).isBetween(0.60, 0.75);
        assertThat(factor * ReactionBlading.efficiency(reaction, 2, ALPHA, 0.96))
                .isBetween(0.80, 0.90);
    }

    @Test
    void reactionWithoutRowLossLosesTheLeavingVelocityOnly() {
        // axial leaving: w = cos²α, c2² = 1 - cos²α, so η = w/(w + c2²/2n)
        double cos2 = Math.cos(ALPHA) * Math.cos(ALPHA);
        double nu = ReactionBlading.best(3, ALPHA, 1);
        assertThat(ReactionBlading.efficiency(nu, 3, ALPHA, 1))
                .isCloseTo(cos2 / (cos2 + (1 - cos2) / 6), within(1e-12));
    }

    /** Published: [nasa-sp-125] A-1 turbine, 27 140 bhp, η 0.582, pressure ratio 23.7, 1400 °F; gas constants from memory. */
    @Test
    void samplePumpTurbineNeedsThePublishedFlow() {
        PerfectGas gas = new PerfectGas(0.653 * 4186.8, 1.124); // 0.653 Btu/(lb·°R)
        double inlet = gas.heatCapacity() * (1400 + 459.67) / 1.8;
        TurbineDuty duty = new TurbineDuty(gas, 4.5e6, inlet, 4.5e6 / 23.7, 1);
        TurbineWork work = model.work(duty, 733, TurbineDefaults.of(false).withEfficiency(0.582));
        assertThat(work.isentropicDrop() / BTU_PER_POUND).isCloseTo(358.0, withinPercentage(0.5));
        double spouting = Math.sqrt(2 * work.isentropicDrop()) / 0.3048;
        assertThat(spouting).isCloseTo(4234, withinPercentage(0.5)); // ft/s
        double flow = 27140 * 745.6999 / work.power() / 0.45359237;
        assertThat(flow).isCloseTo(92.06, withinPercentage(0.5)); // lb/s; the book has 92
    }

    @Test
    void secondTurbineAgreesWithAnIndependentCalculation() {
        PerfectGas gas = new PerfectGas(2650, 1.10);
        TurbineDuty duty = new TurbineDuty(gas, 10e6, 2650 * 900, 0.5e6, 14.66);
        double speed = 2000;
        TurbineSizing turbine = model.size(
                "turbine",
                duty,
                speed,
                TurbineDefaults.of(false).withEfficiency(0.60).withMeanDiameter(2 * 400 / speed));
        assertThat(turbine.isentropicDrop()).isCloseTo(568.59e3, withinPercentage(0.01));
        assertThat(turbine.spoutingVelocity()).isCloseTo(1066.4, withinPercentage(0.01));
        assertThat(turbine.velocityRatio()).isCloseTo(0.3751, withinPercentage(0.03));
        assertThat(turbine.power()).isCloseTo(5e6, withinPercentage(0.05)); // pumps of 5 MW need 14.66 kg/s
    }

    @Test
    void bladeRootStressAgreesWithAnIndependentCalculation() {
        // D 0.25 m, h 0.02 m, 20 000 rpm, 8200 kg/m³: AN² 9.739e9 in²·rpm², 89.9 MPa untapered
        double omega = 20000 * Math.PI / 30;
        double annulus = omega * Math.sqrt(Math.PI * 0.25 * 0.02);
        double an2 = annulus * annulus * Math.pow(30 / Math.PI, 2) / (0.0254 * 0.0254);
        assertThat(an2).isCloseTo(9.739e9, withinPercentage(0.05));
        assertThat(TurbineModel.untaperedRootStress(annulus)).isCloseTo(89.9e6, withinPercentage(0.1));
    }

    /** Saturated oxygen at 30 bar is near 142 K (from memory): gas of 160 K at 100 bar crosses that line on its way, gas of 400 K does not. */
    @Test
    void wetExitsAndColdOxidizersAreTold() {
        assertThat(warnings(160)).anyMatch(w -> w.contains("leaves wet")).anyMatch(w -> w.contains("cold oxidizer"));
        assertThat(warnings(400)).noneMatch(w -> w.contains("leaves wet")).anyMatch(w -> w.contains("hot gas"));
    }

    private List<String> warnings(double inletTemperature) {
        RealFluidWorkingFluid oxygen =
                new RealFluidWorkingFluid(FluidLibrary.open().propellant("oxygen"));
        double enthalpy = oxygen.atPressureTemperature(10e6, inletTemperature).enthalpy();
        return model
                .size("turbine", new TurbineDuty(oxygen, 10e6, enthalpy, 3e6, 15), 3600, TurbineDefaults.of(true))
                .warnings()
                .stream()
                .map(Warning::message)
                .toList();
    }

    @Test
    void kindFollowsPressureRatioAndSpeed() {
        PerfectGas gas = new PerfectGas(2650, 1.10);
        TurbineDesign open = TurbineDefaults.of(false);
        TurbineDuty slow = new TurbineDuty(gas, 5e6, 2650 * 1000, 0.25e6, 30);
        assertThat(model.choose(slow, 600, open).type()).isEqualTo(TurbineType.VELOCITY_COMPOUNDED);
        TurbineDuty closed = new TurbineDuty(gas, 30e6, 2650 * 800, 20e6, 80);
        assertThat(model.choose(closed, 3000, open).type()).isEqualTo(TurbineType.REACTION);
        TurbineDuty tiny = new TurbineDuty(gas, 30e6, 2650 * 800, 20e6, 0.02);
        assertThat(model.choose(tiny, 9000, open).type()).isEqualTo(TurbineType.IMPULSE);
    }

    /** From memory: 0.93/cos α₂ of the tip gap [kacker-okapuu-1982], about 2; a small wheel pays, a large one does not. */
    @Test
    void aSmallWheelPaysForItsTipGap() {
        PerfectGas gas = new PerfectGas(2650, 1.10);
        WorkingState exit = gas.atPressureTemperature(2e6, 800);
        double large = SizeLoss.efficiency(0.8, 0.25, 0.03, exit, 500);
        double small = SizeLoss.efficiency(0.8, 0.086, 0.003, exit, 500);
        assertThat(large).isCloseTo(0.8, withinPercentage(1));
        // gap 0.25 mm of 3 mm: 8.3 % less the usual 2 %, twice that
        assertThat(0.8 / small - 1).isCloseTo(2 * (0.25 / 3 - 0.02), within(0.01));
        assertThat(SizeLoss.efficiency(0.8, 0.25, 0.03, gas.atPressureTemperature(2e3, 800), 500))
                .isLessThan(large - 0.02);
    }

    /** Identity: flow through the last annulus at the density of the gas that leaves, which is warmer than behind the isentrope. */
    @Test
    void theLastAnnulusPassesTheGasThatLeaves() {
        PerfectGas gas = new PerfectGas(2650, 1.10);
        TurbineDuty duty = new TurbineDuty(gas, 10e6, 2650 * 900, 0.5e6, 14.66);
        TurbineSizing turbine = model.size("turbine", duty, 2000, TurbineDefaults.of(false));
        double area = Math.PI * turbine.meanDiameter() * turbine.bladeHeight() * turbine.admission();
        TurbineDesign settled = turbine.design();
        double stage = turbine.spoutingVelocity() / Math.sqrt(turbine.stages());
        double axial = Triangles.of(settled, turbine.pitchLineSpeed() / stage).axialVelocity() * stage;
        double density = duty.massFlow() / (area * axial);
        double isentropic =
                gas.atPressureEntropy(0.5e6, turbine.inlet().entropy()).density();
        assertThat(density).isLessThan(0.97 * isentropic);
        assertThat(density).isCloseTo(turbine.outlet().density(), withinPercentage(4));
    }

    @Property(tries = 200)
    void smallChangesOfTheDutyMakeSmallChangesOfThePower(
            @ForAll @DoubleRange(min = 0.01, max = 300) double flow,
            @ForAll @DoubleRange(min = 1.1, max = 40) double ratio,
            @ForAll @DoubleRange(min = 300, max = 15000) double speed) {
        PerfectGas gas = new PerfectGas(3000, 1.25);
        TurbineDuty duty = new TurbineDuty(gas, 8e6, 3000 * 900, 8e6 / ratio, flow);
        TurbineDesign settled = model.choose(duty, speed, TurbineDefaults.of(false));
        double here = model.work(duty, speed, settled).power();
        TurbineDuty near = new TurbineDuty(gas, 8e6, 3000 * 900, 8e6 / ratio / (1 + 1e-6), flow * (1 + 1e-6));
        assertThat(model.work(near, speed * (1 + 1e-6), settled).power() / here - 1)
                .isBetween(-2e-5, 2e-5);
    }

    @Property(tries = 200)
    void powerNeverExceedsTheIsentropicDrop(
            @ForAll @DoubleRange(min = -3, max = 2.5) double logFlow,
            @ForAll @DoubleRange(min = 1.02, max = 60) double ratio,
            @ForAll @DoubleRange(min = 100, max = 20000) double speed) {
        double flow = Math.pow(10, logFlow);
        PerfectGas gas = new PerfectGas(1100, 1.3);
        TurbineDuty duty = new TurbineDuty(gas, 20e6, 1100 * 700, 20e6 / ratio, flow);
        TurbineSizing turbine = model.size("turbine", duty, speed, TurbineDefaults.of(true));
        assertThat(turbine.power()).isPositive().isLessThan(0.92 * flow * turbine.isentropicDrop());
        assertThat(turbine.outlet().entropy()).isGreaterThan(turbine.inlet().entropy());
        assertThat(turbine.pitchLineSpeed())
                .isLessThanOrEqualTo(turbine.design().pitchLineSpeedLimit());
    }

    @Test
    void nozzlesOpenWhereTheAnnulusWouldPassItsLimit() {
        PerfectGas gas = new PerfectGas(9000, 1.35);
        TurbineDesign design = TurbineDefaults.of(false).withStages(TurbineType.REACTION, 1);
        TurbineSizing slow = model.size("t", new TurbineDuty(gas, 20e6, 9000 * 870, 14e6, 40), 2000, design);
        TurbineSizing fast = model.size("t", new TurbineDuty(gas, 20e6, 9000 * 870, 14e6, 40), 4000, design);
        assertThat(slow.design().nozzleAngle()).isLessThan(fast.design().nozzleAngle());
        // with the same angle ω√A would grow with the speed, past the limit
        assertThat(2 * slow.annulusSpeed()).isGreaterThan(design.annulusSpeedLimit());
        assertThat(fast.annulusSpeed()).isLessThanOrEqualTo(design.annulusSpeedLimit());
    }

    @Test
    void theReaderIsToldOfPartialAdmissionAndSlowWheels() {
        PerfectGas gas = new PerfectGas(2650, 1.10);
        TurbineSizing small = model.size(
                "turbine", new TurbineDuty(gas, 5e6, 2650 * 1000, 0.25e6, 0.02), 4000, TurbineDefaults.of(false));
        assertThat(small.admission()).isLessThan(0.5);
        assertThat(small.warnings()).anyMatch(w -> w.message().contains("of the circumference only"));
        assertThat(small.warnings()).anyMatch(w -> w.message().contains("velocity ratio"));
        TurbineSizing large = model.size(
                "turbine", new TurbineDuty(gas, 5e6, 2650 * 1000, 0.25e6, 40), 2500, TurbineDefaults.of(false));
        assertThat(large.warnings()).isEmpty();
        assertThat(model.size("turbine", large.duty(), 2500, TurbineDefaults.of(true))
                        .warnings())
                .anyMatch(w -> w.message().contains("oxygen-rich"));
    }

    /** Worked by hand: the axial velocity is φ sin α of the spouting velocity behind a nozzle, φ ψ³ sin α behind three rows of blades. */
    @Test
    void theGasLeavesWithWhatTheRowsLeaveIt() {
        TurbineDesign design = TurbineDefaults.of(false).withNozzleAngle(ALPHA);
        double jet = design.nozzleCoefficient() * Math.sin(ALPHA);
        double blade = design.bladeCoefficient();
        assertThat(Triangles.of(design.withStages(TurbineType.IMPULSE, 1), 0.4).axialVelocity())
                .isCloseTo(jet, within(1e-12));
        assertThat(Triangles.of(design.withStages(TurbineType.VELOCITY_COMPOUNDED, 1), 0.2)
                        .axialVelocity())
                .isCloseTo(jet * blade * blade * blade, within(1e-12));
        assertThat(Triangles.of(design.withStages(TurbineType.REACTION, 2), 0.6).axialVelocity())
                .isCloseTo(
                        ReactionBlading.jetOverSpouting(0.6, 2, ALPHA, design.nozzleCoefficient()) * Math.sin(ALPHA),
                        within(1e-12));
    }

    /** Identity: stages share the wheel's speed, so that losses of partial admission see the ratio of the whole turbine. */
    @Test
    void partialAdmissionSeesTheWholeTurbine() {
        TurbineDesign design = TurbineDefaults.of(false).withStages(TurbineType.REACTION, 4);
        Triangles triangles = Triangles.of(design, 0.6);
        assertThat(triangles.withLosses(design, 0.6, 0.3))
                .isEqualTo(PartialAdmission.efficiency(
                        triangles.efficiency() * design.efficiencyFactor(), 0.3, 0.3, 0.6 / triangles.axialVelocity()));
    }

    /** Energy: what the turbine did not take stays in the gas, less the velocity with which it leaves; never colder than ideal. */
    @Test
    void theStateBehindTheRotorClosesTheEnergy() {
        GasExpansion gas = new GasExpansion(new TurbineDuty(new PerfectGas(4000, 1.3), 9e6, 4000 * 900, 3e6, 20));
        WorkingState behind = gas.behind(0.6, 400);
        assertThat(behind.enthalpy()).isCloseTo(4000 * 900 - 0.6 * gas.drop - 0.5 * 400 * 400, withinPercentage(1e-9));
        assertThat(behind.pressure()).isEqualTo(3e6);
        assertThat(gas.behind(0.99, 3000).enthalpy()).isCloseTo(gas.ideal.enthalpy(), withinPercentage(1e-9));
    }

    @Test
    void statedStagesAndEfficiencyAreKept() {
        TurbineDuty duty = new TurbineDuty(new PerfectGas(4000, 1.3), 9e6, 4000 * 900, 0.5e6, 20);
        TurbineDesign open = TurbineDefaults.of(false);
        assertThat(model.choose(duty, 2000, open.withStages(TurbineType.AUTOMATIC, 3))
                        .type())
                .isEqualTo(TurbineType.REACTION);
        TurbineWork work = model.work(duty, 2000, open.withEfficiency(0.5));
        assertThat(work.efficiency()).isEqualTo(0.5);
        assertThat(work.power()).isCloseTo(20 * 0.5 * work.isentropicDrop(), withinPercentage(1e-9));
    }
}

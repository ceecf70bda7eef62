package dev.penstock.turbomachinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.turbomachinery.pump.PumpCurve;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpMap;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpPoint;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.pump.PumpType;
import dev.penstock.turbomachinery.turbine.TurbineDefaults;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import dev.penstock.turbomachinery.turbine.TurbineModel;
import dev.penstock.turbomachinery.turbine.TurbinePoint;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import dev.penstock.turbomachinery.turbine.TurbineType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MapsTest {

    private static final Propellant OXYGEN = FluidLibrary.open().propellant("oxygen");

    private final FluidState inlet = OXYGEN.fluid().atPressureTemperature(0.5e6, 91);
    private final PumpSizing pump =
            new PumpModel().size("pump", new PumpDuty(OXYGEN, inlet, 18e6, 200), PumpDefaults.of(OXYGEN));
    private final PumpMap pumpMap = new PumpMap(pump);
    private final PerfectGas gas = new PerfectGas(4000, 1.3);

    private TurbineSizing turbine(TurbineType type) {
        TurbineDesign design = TurbineDefaults.of(false).withStages(type, type == TurbineType.REACTION ? 2 : 1);
        return new TurbineModel().size("turbine", new TurbineDuty(gas, 9e6, 4000 * 900, 6e6, 20), 3000, design);
    }

    @Test
    void pumpMapReturnsItsDesignPoint() {
        PumpPoint point = pumpMap.at(inlet, pump.speed(), 200);
        assertThat(point.dischargePressure()).isCloseTo(18e6, withinPercentage(1e-5));
        assertThat(point.power())
                .isCloseTo(pump.power(), withinPercentage(0.1)); // smooth floor of the efficiency curve
        assertThat(point.cavitationMargin() + 1)
                .isCloseTo(
                        (pump.netPositiveSuctionHead() + pump.suppressionHead()) / pump.requiredSuctionHead(),
                        withinPercentage(1e-6));
        assertThat(point.stallMargin()).isPositive();
    }

    @Test
    void affinityLawsHold() {
        PumpPoint full = pumpMap.at(inlet, pump.speed(), 200);
        PumpPoint half = pumpMap.at(inlet, 0.5 * pump.speed(), 100);
        assertThat(half.head()).isCloseTo(full.head() / 4, withinPercentage(1e-9));
        assertThat(half.power()).isCloseTo(full.power() / 8, withinPercentage(1e-9));
        assertThat(half.flowRatio()).isCloseTo(full.flowRatio(), within(1e-12));
    }

    @Test
    void headFallsWithFlow() {
        double last = Double.MAX_VALUE;
        for (double flow = 20; flow < 400; flow += 20) {
            double head = pumpMap.at(inlet, pump.speed(), flow).head();
            assertThat(head).isLessThan(last);
            last = head;
        }
    }

    @Test
    void stallAndCavitationAreSeen() {
        assertThat(pumpMap.at(inlet, pump.speed(), 60).stallMargin()).isNegative();
        FluidState low = OXYGEN.fluid().atPressureTemperature(0.12e6, 91);
        assertThat(pumpMap.at(low, pump.speed(), 200).cavitationMargin()).isNegative();
    }

    @ParameterizedTest
    @ValueSource(doubles = {15, 30, 60})
    void shutOffHeadLiesInThePublishedRange(double nq) {
        // 1.1 to 1.4 for radial and mixed-flow pumps [gulich-2014, from memory]
        assertThat(PumpCurve.shutOff(PumpType.CENTRIFUGAL, nq)).isBetween(1.08, 1.42);
    }

    @ParameterizedTest
    @EnumSource(value = TurbineType.class, names = "AUTOMATIC", mode = EnumSource.Mode.EXCLUDE)
    void turbineMapReturnsItsDesignPoint(TurbineType type) {
        TurbineSizing sized = turbine(type);
        TurbinePoint point = new TurbineMap(sized).at(gas, 9e6, 4000 * 900, 6e6, 3000);
        assertThat(point.massFlow()).isCloseTo(20, withinPercentage(1e-9));
        assertThat(point.power()).isCloseTo(sized.power(), withinPercentage(1e-9));
        assertThat(point.outletEnthalpy()).isCloseTo(sized.outlet().enthalpy(), withinPercentage(1e-9));
    }

    @ParameterizedTest
    @EnumSource(value = TurbineType.class, names = "AUTOMATIC", mode = EnumSource.Mode.EXCLUDE)
    void turbineFlowRisesWithPressureRatioUntilItChokes(TurbineType type) {
        TurbineMap map = new TurbineMap(turbine(type));
        double last = 0;
        boolean choked = false;
        for (double exit = 8.9e6; exit > 0.1e6; exit *= 0.8) {
            TurbinePoint point = map.at(gas, 9e6, 4000 * 900, exit, 3000);
            assertThat(point.massFlow()).isGreaterThanOrEqualTo(last);
            if (choked) {
                assertThat(point.massFlow()).isCloseTo(last, withinPercentage(1e-9));
            }
            choked = point.choked();
            last = point.massFlow();
        }
        assertThat(choked).isTrue();
    }

    @Test
    void chokedSingleNozzlePassesTheGasDynamicFlow() {
        // identity: A p √(γ/(RT)) (2/(γ+1))^((γ+1)/(2(γ-1))) for the design's own area
        TurbineMap map = new TurbineMap(turbine(TurbineType.IMPULSE));
        TurbinePoint point = map.at(gas, 5e6, 4000 * 800, 0.5e6, 3000);
        double gasConstant = 4000 * 0.3 / 1.3;
        double expected = map.nozzleArea() * 5e6 * Math.sqrt(1.3 / (gasConstant * 800)) * Math.pow(2 / 2.3, 2.3 / 0.6);
        assertThat(point.massFlow()).isCloseTo(expected, withinPercentage(1e-9));
    }

    /** Worked by hand from the published parabolas of the card: x = Q/Q_d/n, head n² [h0 − (h0 − 1) x²], floor of 0.02. */
    @Test
    void pumpMapFollowsItsParabolas() {
        double n = 0.8;
        PumpPoint point = pumpMap.at(inlet, n * pump.speed(), 120);
        double x = 120 / 200.0 / n;
        double h0 = pumpMap.shutOff();
        assertThat(point.flowRatio()).isCloseTo(x, within(1e-9));
        assertThat(point.head()).isCloseTo(pump.head() * n * n * (h0 - (h0 - 1) * x * x), withinPercentage(1e-9));
        double parabola = 1 - (1 - x) * (1 - x);
        double floored = 0.5 * (parabola + Math.sqrt(parabola * parabola + 4 * 0.02 * 0.02));
        assertThat(PumpCurve.efficiency(x)).isCloseTo(floored, within(1e-12));
        assertThat(point.efficiency()).isCloseTo(pump.efficiency() * floored, withinPercentage(1e-9));
        assertThat(point.power()).isCloseTo(120 * point.head() / point.efficiency(), withinPercentage(1e-9));
        assertThat(point.stallMargin()).isCloseTo(x / 0.5 - 1, within(1e-9));
        // identity: the isentrope to the pressure found has the head
        double rise =
                OXYGEN.fluid().enthalpyAtPressureEntropy(point.dischargePressure(), inlet.entropy()) - inlet.enthalpy();
        assertThat(rise).isCloseTo(point.head(), withinPercentage(1e-5));
    }

    /** Beyond the flow that it can lift a pump is a resistance: the head turns negative, the work does not. */
    @Test
    void aPumpBeyondItsFlowIsAResistance() {
        PumpPoint point = pumpMap.at(inlet, 0.3 * pump.speed(), 200);
        assertThat(point.head()).isNegative();
        assertThat(point.power()).isPositive();
        assertThat(point.dischargePressure())
                .isCloseTo(Math.max(0.5e6 + point.head() * inlet.density(), 500), withinPercentage(1e-9));
        assertThat(point.outletEnthalpy()).isGreaterThan(inlet.enthalpy());
    }

    /**
     * Identity for a perfect gas, worked from the card: ellipse between the critical ratio of all rows and 1, which a two-stage
     * reaction turbine of four rows has at (2/(γ+1))^(4γ/(γ−1)).
     */
    @Test
    void fourRowsPassTheEllipse() {
        TurbineSizing sized = turbine(TurbineType.REACTION);
        TurbineMap map = new TurbineMap(sized);
        double critical = Math.pow(2 / 2.3, 4 * 1.3 / 0.3);
        double design = Math.sqrt(1 - Math.pow((6 / 9.0 - critical) / (1 - critical), 2));
        double here = Math.sqrt(1 - Math.pow((0.5 - critical) / (1 - critical), 2));
        assertThat(map.at(gas, 9e6, 4000 * 900, 4.5e6, 3000).massFlow())
                .isCloseTo(20 * here / design, withinPercentage(1e-9));
        assertThat(map.at(gas, 9e6, 4000 * 900, 0.99 * critical * 9e6, 3000).choked())
                .isTrue();
        assertThat(map.at(gas, 9e6, 4000 * 900, 1.01 * critical * 9e6, 3000).choked())
                .isFalse();
    }

    /** Identity: at the design's velocity ratio the efficiency is the design's, and it falls on both sides of the best. */
    @ParameterizedTest
    @EnumSource(value = TurbineType.class, names = "AUTOMATIC", mode = EnumSource.Mode.EXCLUDE)
    void turbineEfficiencyDependsOnTheVelocityRatioAlone(TurbineType type) {
        TurbineSizing sized = turbine(type);
        TurbineMap map = new TurbineMap(sized);
        double drop = sized.isentropicDrop();
        assertThat(map.efficiency(3000, drop)).isCloseTo(sized.efficiency(), within(1e-9));
        assertThat(map.efficiency(1500, drop / 4)).isCloseTo(sized.efficiency(), within(1e-9));
        assertThat(map.efficiency(300, drop)).isLessThan(0.5 * sized.efficiency());
        TurbinePoint point = map.at(gas, 9e6, 4000 * 900, 6e6, 2000);
        assertThat(point.velocityRatio())
                .isCloseTo(0.5 * 2000 * sized.meanDiameter() / Math.sqrt(2 * drop), withinPercentage(1e-9));
        assertThat(point.power()).isCloseTo(20 * point.efficiency() * drop, withinPercentage(1e-9));
    }
}

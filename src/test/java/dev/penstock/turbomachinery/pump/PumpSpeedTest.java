package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.turbomachinery.ConstantDensityLiquid;
import dev.penstock.turbomachinery.speed.ShaftTorsion;
import dev.penstock.turbomachinery.speed.SpeedBound;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import org.junit.jupiter.api.Test;

/** What bounds the speed of a pump: at each bound just that limit is reached. Heads: what an equation of state gives. */
class PumpSpeedTest {

    private static final ConstantDensityLiquid LIQUID = new ConstantDensityLiquid(1141, 1700, 1e5);
    private static final double RISE = 12e6;
    private static final double FLOW = 60;

    private static PumpDuty duty(double inletPressure) {
        return new PumpDuty(
                LIQUID.asOxidizer(), LIQUID.atPressureTemperature(inletPressure, 90), inletPressure + RISE, FLOW);
    }

    private static double bound(PumpDuty duty, PumpDesign design, SpeedBound which) {
        return new PumpModel()
                .speedLimits(duty, design).stream()
                        .filter(l -> l.bound() == which)
                        .mapToDouble(SpeedLimit::speed)
                        .findFirst()
                        .orElseThrow();
    }

    /** Identity: at the speed that suction bounds, the inducer needs the head that is there, less its margin. */
    @Test
    void suctionBoundsWhereTheHeadIsUsedUp() {
        for (double inlet : new double[] {1.5e5, 3e5, 9e5}) {
            PumpDuty duty = duty(inlet);
            PumpDesign design = PumpDefaults.of(LIQUID.asOxidizer()).withStages(PumpType.CENTRIFUGAL, 1);
            double speed = bound(duty, design, SpeedBound.SUCTION);
            double usable = new PumpSuction().usableHead(duty, design);
            assertThat(PumpSuction.requiredHead(duty, design, speed)).isCloseTo(usable, withinPercentage(1e-6));
            assertThat(usable * design.suctionMargin())
                    .isCloseTo((inlet - 1e5) / (1141 * 9.80665), withinPercentage(1e-9));
            assertThat(new PumpModel().inletPressureFor(duty, design, speed)).isCloseTo(inlet, withinPercentage(1e-6));
        }
        assertThatThrownBy(() -> bound(duty(0.9e5), PumpDefaults.of(LIQUID.asOxidizer()), SpeedBound.SUCTION))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("boils");
    }

    /** Identities: specific speed, inducer tip and bearings are at their limits at the speeds that they bound. */
    @Test
    void everyOtherBoundIsWhereItsLimitIsReached() {
        PumpDuty duty = duty(4e5);
        PumpDesign design = PumpDefaults.of(LIQUID.asOxidizer()).withStages(PumpType.CENTRIFUGAL, 2);
        double head = RISE / 1141;
        double specific = bound(duty, design, SpeedBound.SPECIFIC_SPEED);
        assertThat(SpecificSpeed.of(specific, duty.volumeFlow(), head / 2))
                .isCloseTo(design.specificSpeedLimit(), withinPercentage(1e-6));
        double tip = bound(duty, design, SpeedBound.INDUCER_TIP);
        assertThat(0.5 * tip * InducerSuction.diameter(duty.volumeFlow(), tip, 0.3, design.inducerHubRatio()))
                .isCloseTo(design.inducerTipSpeedLimit(), withinPercentage(1e-6));
        double bearing = bound(duty, design, SpeedBound.BEARINGS);
        double torque = FLOW * head / 0.7 / bearing;
        assertThat(0.5 * bearing * ShaftTorsion.diameter(torque, design.shaftStress()))
                .isCloseTo(design.bearingSpeedLimit(), withinPercentage(1e-6));
        double smallest = bound(duty, design, SpeedBound.SMALLEST_BEARINGS);
        assertThat(0.5 * smallest * design.minimumShaftDiameter())
                .isCloseTo(design.bearingSpeedLimit(), withinPercentage(1e-9));
    }

    /** Limit: more suction head never slows a pump, and a faster inducer with it takes a larger flow coefficient. */
    @Test
    void moreSuctionHeadIsMoreSpeed() {
        PumpDesign design = PumpDefaults.of(LIQUID.asOxidizer()).withStages(PumpType.CENTRIFUGAL, 1);
        double last = 0;
        double lastCoefficient = 0;
        for (double inlet = 1.2e5; inlet < 4e6; inlet *= 1.3) {
            double speed = bound(duty(inlet), design, SpeedBound.SUCTION);
            double coefficient = PumpSuction.flowCoefficient(duty(inlet), design, speed);
            assertThat(speed).isGreaterThan(last);
            assertThat(coefficient)
                    .isGreaterThanOrEqualTo(lastCoefficient * (1 - 1e-9))
                    .isLessThanOrEqualTo(0.3);
            assertThat(0.5
                            * speed
                            * InducerSuction.diameter(
                                    duty(inlet).volumeFlow(), speed, coefficient, design.inducerHubRatio()))
                    .isLessThanOrEqualTo(design.inducerTipSpeedLimit() * (coefficient < 0.29 ? 1 : 10));
            last = speed;
            lastCoefficient = coefficient;
        }
    }

    /** Identity: a liquid that does not give way rises by Δp/ρ; asked often, and for many inlets in turn, the answer stays. */
    @Test
    void theHeadOfAnIncompressibleLiquidIsPressureOverDensity() {
        PumpHead heads = new PumpHead();
        for (int round = 0; round < 3; round++) {
            for (int inlet = 0; inlet < 12; inlet++) {
                FluidState state = LIQUID.atPressureTemperature(2e5 + 1e4 * inlet, 90);
                for (double pressure = 5e6; pressure < 30e6; pressure += 4e6) {
                    assertThat(heads.rise(LIQUID.asOxidizer(), state, pressure))
                            .isCloseTo((pressure - state.pressure()) / 1141, withinPercentage(1e-6));
                }
            }
        }
    }

    /** Against the equation of state itself: what is interpolated for an inlet that is asked often is not off. */
    @Test
    void theHeadOfHydrogenIsThatOfItsEquationOfState() {
        Propellant hydrogen = FluidLibrary.open().propellant("hydrogen");
        PumpHead heads = new PumpHead();
        for (double temperature : new double[] {19, 23}) {
            FluidState state = hydrogen.fluid().atPressureTemperature(3e5, temperature);
            for (double pressure = 4e6; pressure < 45e6; pressure *= 1.21) {
                double exact = hydrogen.fluid()
                                .atPressureEntropy(pressure, state.entropy())
                                .enthalpy()
                        - state.enthalpy();
                assertThat(heads.rise(hydrogen, state, pressure)).isCloseTo(exact, withinPercentage(1e-4));
            }
        }
    }

    /** Limit: the more head, the more stages; a stage keeps its tip speed, or there are as many as there may be. */
    @Test
    void stagesKeepTheTipSpeed() {
        int last = 1;
        PumpModel model = new PumpModel();
        PumpDesign asked = PumpDefaults.of(LIQUID.asOxidizer());
        for (double rise = 2e6; rise < 300e6; rise *= 1.6) {
            FluidState inlet = LIQUID.atPressureTemperature(5e5, 90);
            PumpDuty duty = new PumpDuty(LIQUID.asOxidizer(), inlet, 5e5 + rise, FLOW);
            PumpSizing pump = model.size("pump", duty, asked);
            assertThat(pump.stages()).isBetween(last, 6);
            if (pump.stages() < 6) {
                assertThat(pump.tipSpeed()).isLessThanOrEqualTo(asked.tipSpeedLimit() * (1 + 1e-9));
            }
            last = pump.stages();
        }
        assertThat(last).isGreaterThan(1);
    }
}

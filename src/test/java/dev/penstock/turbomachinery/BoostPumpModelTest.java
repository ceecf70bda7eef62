package dev.penstock.turbomachinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.FluidState;
import dev.penstock.fluids.Propellant;
import org.junit.jupiter.api.Test;

class BoostPumpModelTest {

    private static final Propellant OXYGEN = FluidLibrary.open().propellant("oxygen");

    private final PumpModel pumps = new PumpModel();
    private final BoostPumpModel boost = new BoostPumpModel(pumps);
    private final FluidState tank = OXYGEN.fluid().atPressureTemperature(0.35e6, 91);
    private final PumpDesign open = PumpDefaults.of(OXYGEN);

    @Test
    void aBoostPumpLetsTheMainPumpRunFaster() {
        double without = pumps.fastestSpeed(new PumpDuty(OXYGEN, tank, 40e6, 500), open);
        double pressure = BoostPumpModel.usualPressure(tank, 40e6);
        PumpSizing sized = pumps.size("boost pump", new PumpDuty(OXYGEN, tank, pressure, 500), open);
        double with = pumps.fastestSpeed(new PumpDuty(OXYGEN, sized.outlet(), 40e6, 500), open);
        assertThat(with).isGreaterThan(1.5 * without);
        assertThat(sized.speed()).isLessThan(with);
    }

    @Test
    void thePressureForASpeedLetsThePumpRunAtThatSpeed() {
        PumpDuty main = new PumpDuty(OXYGEN, tank, 40e6, 500);
        double pressure = boost.pressureForSpeed(main, open, 1500);
        FluidState raised = OXYGEN.fluid().atPressureTemperature(pressure, 91);
        PumpSizing sized = pumps.size("main", new PumpDuty(OXYGEN, raised, 40e6, 500), open.withSpeed(1500));
        // identity up to the liquid's compression between the two inlet pressures
        assertThat((sized.netPositiveSuctionHead() + sized.suppressionHead()) / sized.requiredSuctionHead())
                .isCloseTo(open.suctionMargin(), withinPercentage(1));
    }

    @Test
    void theDriveFlowCarriesThePowerOfTheBoostPump() {
        FluidState behind = OXYGEN.fluid().atPressureTemperature(40e6, 104);
        PumpDuty duty = new PumpDuty(OXYGEN, tank, 2.35e6, 500);
        BoostPumpModel.BoostPump sized = boost.size("boost pump", duty, open, behind, 0.7);
        double drop = behind.enthalpy()
                - OXYGEN.fluid().atPressureEntropy(2.35e6, behind.entropy()).enthalpy();
        assertThat(sized.driveFlow() * 0.7 * drop).isCloseTo(sized.pump().power(), withinPercentage(1e-4));
        // a tenth of the head at a similar efficiency costs about a tenth of the flow
        assertThat(sized.driveFlow() / 500).isBetween(0.05, 0.2);
    }
}

package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;
import org.junit.jupiter.api.Test;

class HydraulicTurbineTest {

    private static final Propellant OXYGEN = FluidLibrary.open().propellant("oxygen");

    private final PumpModel pumps = new PumpModel();
    private final FluidState tank = OXYGEN.fluid().atPressureTemperature(0.35e6, 91);
    private final PumpDesign open = PumpDefaults.of(OXYGEN);

    @Test
    void moreInletPressureLetsTheMainPumpRunFaster() {
        double without = pumps.fastestSpeed(new PumpDuty(OXYGEN, tank, 40e6, 500), open);
        FluidState raised = OXYGEN.fluid().atPressureTemperature(2.35e6, 91);
        double with = pumps.fastestSpeed(new PumpDuty(OXYGEN, raised, 40e6, 500), open);
        assertThat(with).isGreaterThan(1.5 * without);
    }

    @Test
    void thePressureForASpeedLetsThePumpRunAtThatSpeed() {
        PumpDuty main = new PumpDuty(OXYGEN, tank, 40e6, 500);
        double pressure = pumps.inletPressureFor(main, open, 1500);
        FluidState raised = OXYGEN.fluid().atPressureTemperature(pressure, 91);
        PumpSizing sized = pumps.size("main", new PumpDuty(OXYGEN, raised, 40e6, 500), open.withSpeed(1500));
        // identity up to the liquid's compression between the two inlet pressures
        assertThat((sized.netPositiveSuctionHead() + sized.suppressionHead()) / sized.requiredSuctionHead())
                .isCloseTo(open.suctionMargin(), withinPercentage(1));
    }

    @Test
    void theDriveFlowCarriesThePower() {
        FluidState behind = OXYGEN.fluid().atPressureTemperature(40e6, 104);
        double flow = HydraulicTurbine.driveFlow(1.5e6, OXYGEN.fluid(), behind, 2.35e6, 0.7, new KnownStates());
        // identity: along an isentrope dh = dp/ρ, added up by Simpson's rule from densities alone
        int steps = 20;
        double step = (40e6 - 2.35e6) / steps;
        double drop = 0;
        for (int i = 0; i <= steps; i++) {
            double weight = i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4;
            drop += weight
                    * step
                    / 3
                    / OXYGEN.fluid()
                            .atPressureEntropy(2.35e6 + i * step, behind.entropy())
                            .density();
        }
        assertThat(flow).isCloseTo(1.5e6 / (0.7 * drop), withinPercentage(1e-3));
    }

    @Test
    void theLiquidThatComesBackBringsWhatTheMainPumpPutInLessWhatTheTurbineTook() {
        double boost = 1000;
        double mixed = HydraulicTurbine.mixedEnthalpy(boost, 100, 8, 50_000, 150_000);
        double behindTurbine = mixed + 50_000 - 150_000 / 8.0;
        // worked by hand: 8 kg/s bring 400 kW and give 150 kW, so that 100 kg/s gain 2500 J/kg
        assertThat(mixed).isCloseTo(3500, withinPercentage(1e-9));
        // identity: mixing of the two streams, of which one has been through pump and turbine
        assertThat((100 * boost + 8 * behindTurbine) / 108).isCloseTo(mixed, withinPercentage(1e-9));
    }
}

package dev.penstock.turbomachinery.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.turbomachinery.ConstantDensityLiquid;
import dev.penstock.turbomachinery.PerfectGas;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineDefaults;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbineModel;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShaftModelTest {

    private final ConstantDensityLiquid liquid = new ConstantDensityLiquid(1141, 1700, 1e5);
    private final PumpSizing oxidizerPump = pump(Propellant.Role.OXIDIZER);
    private final PumpSizing fuelPump = pump(Propellant.Role.FUEL);
    private final PerfectGas gas = new PerfectGas(2650, 1.10);

    private PumpSizing pump(Propellant.Role role) {
        Propellant propellant = liquid.asPropellant(role, 90);
        FluidState inlet = liquid.atPressureTemperature(3e5, 90);
        PumpDesign design = PumpDefaults.of(propellant)
                .withSpeed(20000 * Math.PI / 30)
                .withEfficiency(0.7)
                .withHeadCoefficient(0.5);
        return new PumpModel()
                .size(
                        role == Propellant.Role.FUEL ? "fuel pump" : "oxidizer pump",
                        new PumpDuty(propellant, inlet, 10.3e6, 100),
                        design);
    }

    private TurbineSizing turbine(double power, boolean oxygenRich) {
        TurbineModel model = new TurbineModel();
        TurbineDesign design = TurbineDefaults.of(oxygenRich).withEfficiency(0.6);
        double unit = model.work(new TurbineDuty(gas, 5e6, 2650 * 900, 0.25e6, 1), oxidizerPump.speed(), design)
                .power();
        return model.size(
                "turbine", new TurbineDuty(gas, 5e6, 2650 * 900, 0.25e6, power / unit), oxidizerPump.speed(), design);
    }

    @Test
    void shaftBalancesWhenTheTurbineMakesUpTheLosses() {
        MechanicalLosses losses = new MechanicalLosses(0.985, 0.98, 20e3);
        double needed = losses.turbinePower(oxidizerPump.power() + fuelPump.power());
        ShaftBalance shaft = new ShaftModel()
                .balance(
                        "shaft", List.of(oxidizerPump, fuelPump), List.of(turbine(needed, false)), losses, 0, "stated");
        assertThat(shaft.imbalance()).isCloseTo(0, within(1e-12));
        assertThat(shaft.powerDelivered())
                .isCloseTo(shaft.powerAbsorbed() + shaft.mechanicalLoss(), withinPercentage(1e-9));
    }

    /** Identity: what a gear takes off for a boost pump is no loss of the shaft's own bearings. */
    @Test
    void powerTakenOffIsNoMechanicalLoss() {
        MechanicalLosses losses = new MechanicalLosses(0.985, 1, 0);
        double boost = 50e3;
        double needed = losses.turbinePower(oxidizerPump.power() + boost);
        ShaftBalance shaft = new ShaftModel()
                .balance("shaft", List.of(oxidizerPump), List.of(turbine(needed, false)), losses, boost, "stated");
        assertThat(shaft.imbalance()).isCloseTo(0, within(1e-12));
        assertThat(shaft.powerTakenOff()).isEqualTo(boost);
        assertThat(shaft.mechanicalLoss()).isCloseTo(0.015 * shaft.powerDelivered(), withinPercentage(1e-6));
    }

    @Test
    void massOfTheSamplePumpAgreesWithAnIndependentCalculation() {
        // [humble-1995] from memory, torque 597.8 N·m: 69.5 kg, upper bound 185 kg
        assertThat(TurbopumpMass.of(597.8)).isCloseTo(69.5, withinPercentage(0.1));
        assertThat(TurbopumpMass.spread(597.8).high()).isCloseTo(185, withinPercentage(0.3));
    }

    @Test
    void onlyShaftsWithOxidizerAndFuelArePurged() {
        ShaftModel model = new ShaftModel();
        MechanicalLosses losses = MechanicalLosses.usual(false);
        assertThat(model.balance("s", List.of(oxidizerPump), List.of(turbine(2e6, true)), losses, 0, "stated")
                        .purgeFlow())
                .isZero();
        assertThat(model.balance("s", List.of(fuelPump), List.of(turbine(2e6, false)), losses, 0, "stated")
                        .purgeFlow())
                .isZero();
        assertThat(model.balance("s", List.of(oxidizerPump), List.of(turbine(2e6, false)), losses, 0, "stated")
                        .purgeFlow())
                .isPositive();
        assertThat(model.balance("s", List.of(oxidizerPump, fuelPump), Optional.empty(), 3e6, losses, 0, "stated")
                        .purgeFlow())
                .isPositive();
    }

    @Test
    void shaftCarriesItsTorque() {
        ShaftBalance shaft = new ShaftModel()
                .balance("s", List.of(fuelPump), Optional.empty(), 4e6, MechanicalLosses.usual(false), 0, "stated");
        double torque = shaft.powerDelivered() / shaft.speed();
        // identity: torsional stress of a round bar is 16 τ/(π d³)
        assertThat(16 * torque / (Math.PI * Math.pow(shaft.diameter(), 3)))
                .isCloseTo(fuelPump.design().shaftStress(), withinPercentage(1e-9));
    }
}

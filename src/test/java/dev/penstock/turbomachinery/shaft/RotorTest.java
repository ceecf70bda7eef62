package dev.penstock.turbomachinery.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.Propellant;
import dev.penstock.turbomachinery.ConstantDensityLiquid;
import dev.penstock.turbomachinery.SampleTurbine;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Discs half filled: a wheel of diameter d and thickness t weighs ρ π d² t/8 and has m d²/8 about its axis. */
class RotorTest {

    private static final double SHAFT = 0.05;

    private static PumpSizing pump(double density) {
        ConstantDensityLiquid liquid = new ConstantDensityLiquid(density, 1700, 1e5);
        Propellant propellant = liquid.asPropellant(Propellant.Role.FUEL, 90);
        return new PumpModel()
                .size(
                        "pump",
                        new PumpDuty(propellant, liquid.atPressureTemperature(3e5, 90), 10.3e6, 0.09 * density),
                        PumpDefaults.of(propellant)
                                .withSpeed(2000)
                                .withEfficiency(0.7)
                                .withHeadCoefficient(0.5));
    }

    private static double wheels(double density, double diameter, double thickness, int stages) {
        return stages * 0.5 * density * Math.PI / 4 * diameter * diameter * thickness;
    }

    /** A bar of 8000 kg/m³ as long as the bearings are apart. */
    private static double bar(double span) {
        return 8000 * Math.PI / 4 * SHAFT * SHAFT * span;
    }

    @Test
    void aPumpAloneIsItsWheelsOnABar() {
        PumpSizing pump = pump(1141);
        Rotor rotor = Rotor.of(List.of(pump), List.of(), SHAFT, pump.speed());
        double d = pump.impellerDiameter();
        double span = 2 * SHAFT
                + pump.inducerDiameter() / 2
                + pump.stages() * Math.max(0.35 * d, 2 * pump.impellerTipWidth());
        double wheels = wheels(8000, d, 0.1 * d, pump.stages());
        assertThat(rotor.span()).isCloseTo(span, withinPercentage(1e-9));
        assertThat(rotor.mass()).isCloseTo(wheels + bar(span), withinPercentage(1e-9));
        assertThat(rotor.inertia())
                .isCloseTo(wheels * d * d / 8 + bar(span) * SHAFT * SHAFT / 8, withinPercentage(1e-9));
    }

    /** Light liquids are pumped by wheels of titanium, 4500 kg/m³. */
    @Test
    void wheelsForLightLiquidsAreLight() {
        PumpSizing pump = pump(70);
        Rotor rotor = Rotor.of(List.of(pump), List.of(), SHAFT, pump.speed());
        double d = pump.impellerDiameter();
        assertThat(rotor.mass() - bar(rotor.span()))
                .isCloseTo(wheels(4500, d, 0.1 * d, pump.stages()), withinPercentage(1e-9));
    }

    /** Behind a gear of ratio i a wheel counts i² times at the turbine's speed. */
    @Test
    void inertiaBehindAGearCountsWithItsSquare() {
        PumpSizing pump = pump(1141);
        Rotor direct = Rotor.of(List.of(pump), List.of(), SHAFT, pump.speed());
        Rotor geared = Rotor.of(List.of(pump), List.of(), SHAFT, 3 * pump.speed());
        double own = bar(direct.span()) * SHAFT * SHAFT / 8;
        assertThat(geared.inertia() - own).isCloseTo((direct.inertia() - own) / 9, withinPercentage(1e-9));
        assertThat(geared.mass()).isEqualTo(direct.mass());
    }

    @Test
    void aTurbineAddsItsDiscs() {
        PumpSizing pump = pump(1141);
        TurbineSizing turbine = SampleTurbine.twoRows();
        Rotor without = Rotor.of(List.of(pump), List.of(), SHAFT, pump.speed());
        Rotor with = Rotor.of(List.of(pump), List.of(turbine), SHAFT, pump.speed());
        double d = turbine.meanDiameter();
        double disc = wheels(8000, d, 0.12 * d, turbine.stages());
        double longer = 0.2 * d * turbine.stages();
        assertThat(with.span() - without.span()).isCloseTo(longer, withinPercentage(1e-7));
        assertThat(with.mass() - without.mass()).isCloseTo(disc + bar(longer), withinPercentage(1e-7));
        assertThat(with.inertia() - without.inertia())
                .isCloseTo(disc * d * d / 8 + bar(longer) * SHAFT * SHAFT / 8, withinPercentage(1e-7));
    }
}

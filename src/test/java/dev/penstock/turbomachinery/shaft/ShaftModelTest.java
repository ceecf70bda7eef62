package dev.penstock.turbomachinery.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.ConstantDensityLiquid;
import dev.penstock.turbomachinery.PerfectGas;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.speed.CriticalSpeed;
import dev.penstock.turbomachinery.start.SpinUpDemand;
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
        // [humble-1995] from memory, torque 597.8 N·m: 69.5 kg
        assertThat(TurbopumpMass.of(597.8)).isCloseTo(69.5, withinPercentage(0.1));
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

    private static LimitCheck limit(ShaftBalance shaft, ShaftLimit kind) {
        return shaft.limits().stream().filter(l -> l.kind() == kind).findFirst().orElseThrow();
    }

    private ShaftBalance motorShaft(double power, PumpSizing... pumps) {
        return new ShaftModel()
                .balance("s", List.of(pumps), Optional.empty(), power, MechanicalLosses.usual(false), 0, "stated");
    }

    /** Surface speed of a shaft is ω d/2, whatever runs on it. */
    @Test
    void bearingAndSealRunAtTheSurfaceOfTheShaft() {
        ShaftBalance shaft = motorShaft(4e6, fuelPump);
        double surface = shaft.speed() * shaft.diameter() / 2;
        assertThat(limit(shaft, ShaftLimit.BEARING_SPEED).value()).isCloseTo(surface, withinPercentage(1e-9));
        assertThat(limit(shaft, ShaftLimit.BEARING_SPEED).limit())
                .isEqualTo(fuelPump.design().bearingSpeedLimit());
        assertThat(limit(shaft, ShaftLimit.SEAL_SPEED).value()).isCloseTo(surface, withinPercentage(1e-9));
        assertThat(limit(shaft, ShaftLimit.SEAL_SPEED).limit()).isEqualTo(120);
    }

    /** A light shaft is no thinner than can be built. */
    @Test
    void theSmallestShaftIsThatOfThePumps() {
        assertThat(motorShaft(1, fuelPump).diameter())
                .isEqualTo(fuelPump.design().minimumShaftDiameter());
    }

    @Test
    void aTurbopumpWeighsByTheTorqueOfAllItsPumps() {
        assertThat(motorShaft(4e6, fuelPump, oxidizerPump).mass())
                .isCloseTo(TurbopumpMass.of(fuelPump.torque() + oxidizerPump.torque()), withinPercentage(1e-9));
    }

    /** The distance to the critical speed is kept: at least a fifth of it above, or well below. */
    @Test
    void runningSpeedKeepsItsDistanceFromTheCriticalOne() {
        for (double power : new double[] {1e3, 1e5, 1e6, 4e6, 1e7, 3e7}) {
            ShaftBalance shaft = motorShaft(power, fuelPump, oxidizerPump);
            double ratio = shaft.speed() / shaft.criticalSpeed();
            LimitCheck distance = limit(shaft, ShaftLimit.CRITICAL_SPEED_DISTANCE);
            assertThat(distance.value()).isCloseTo(Math.abs(1 - ratio), withinPercentage(1e-9));
            assertThat(distance.met()).isTrue();
            double plain = CriticalSpeed.first(
                    shaft.diameter(), shaft.rotor().span(), shaft.rotor().mass());
            boolean far = shaft.speed() < plain * 0.8 || shaft.speed() > plain * 1.2;
            if (far) {
                assertThat(shaft.criticalSpeed()).isEqualTo(plain);
            } else {
                assertThat(shaft.criticalSpeed()).isCloseTo(shaft.speed() / 0.8, withinPercentage(1e-6));
            }
        }
    }

    /** Thrust by discharge pressure on the eye of the last wheel less the shaft; above 5 kN it is said. */
    @Test
    void unbalancedThrustIsThatOnTheEye() {
        ShaftBalance shaft = motorShaft(4e6, fuelPump);
        double eye = Math.min(fuelPump.inducerDiameter(), fuelPump.impellerDiameter());
        double area = Math.PI / 4 * (eye * eye - fuelPump.shaftDiameter() * fuelPump.shaftDiameter());
        double rise =
                fuelPump.duty().dischargePressure() - fuelPump.duty().inlet().pressure();
        assertThat(shaft.axialThrust()).isCloseTo(area * rise, withinPercentage(1e-9));
        assertThat(motorShaft(4e6, fuelPump, oxidizerPump).axialThrust())
                .isCloseTo(2 * shaft.axialThrust(), withinPercentage(1e-6));
        assertThat(shaft.axialThrust()).isGreaterThan(5000);
        assertThat(shaft.warnings()).anySatisfy(w -> assertThat(w.message()).contains("axial thrust"));
    }

    /** Identity: what is left over is a share of what the turbine gives; the purge and the thrust are said. */
    @Test
    void whatIsLeftOverIsAShareOfWhatIsDelivered() {
        MechanicalLosses losses = new MechanicalLosses(0.98, 1, 10e3);
        TurbineSizing strong = turbine(1.5 * losses.turbinePower(oxidizerPump.power()), false);
        ShaftBalance shaft = new ShaftModel().balance("s", List.of(oxidizerPump), List.of(strong), losses, 0, "stated");
        double left = 0.98 * strong.power() - 10e3 - oxidizerPump.power();
        assertThat(shaft.imbalance()).isCloseTo(left / strong.power(), withinPercentage(1e-6));
        assertThat(shaft.imbalance()).isBetween(0.3, 0.4);
        assertThat(shaft.warnings())
                .extracting(Warning::message)
                .anyMatch(text -> text.startsWith("oxidizer and fuel share this shaft"))
                .anyMatch(text -> text.contains(String.format("%.3g kN", shaft.axialThrust() / 1000)));
        ShaftBalance alone = motorShaft(4e6, fuelPump);
        assertThat(alone.warnings()).extracting(Warning::message).noneMatch(text -> text.contains("share this shaft"));
    }

    /** A gear costs its own share; without one nothing is lost in it. */
    @Test
    void onlyAGearedShaftLosesInItsGears() {
        assertThat(MechanicalLosses.usual(false).gearEfficiency()).isEqualTo(1);
        assertThat(MechanicalLosses.usual(true).gearEfficiency())
                .isEqualTo(MechanicalLosses.GEAR_EFFICIENCY.standing().value());
    }

    /** Teeth stand on twice the diameter of the shaft; the fastest pinion runs at 100 m/s on the shaft of a pump of 70 %. */
    @Test
    void thePinionRunsAsFastAsItsTeethBear() {
        assertThat(GearTeeth.speed(2000, 0.05)).isEqualTo(100);
        PumpDesign design = fuelPump.design();
        double power = 80e6;
        double speed = GearTeeth.fastest(power, design, 100);
        double diameter = Math.cbrt(16 * power / 0.7 / speed / (Math.PI * design.shaftStress()));
        assertThat(GearTeeth.speed(speed, diameter)).isCloseTo(100, withinPercentage(5));
        assertThat(GearTeeth.fastest(1e-3, design, 100))
                .isCloseTo(100 / design.minimumShaftDiameter(), withinPercentage(1));
    }

    /** Published: coefficients of 1.3 to 2.6, a factor of two. */
    @Test
    void turbopumpsScatterByAFactorOfTwo() {
        assertThat(TurbopumpMass.SCATTER.high() / TurbopumpMass.SCATTER.low()).isCloseTo(2.6 / 1.3, within(1e-12));
        assertThat(TurbopumpMass.SCATTER.mode()).isEqualTo(1);
    }

    /** What drives a shaft and what it drives are the machines themselves; a motor is no turbine. */
    @Test
    void aShaftKnowsItsMachines() {
        TurbineSizing turbine = turbine(2e6, false);
        ShaftBalance driven = new ShaftModel()
                .balance("s", List.of(fuelPump), List.of(turbine), MechanicalLosses.usual(false), 0, "stated");
        assertThat(driven.pumps()).containsExactly(fuelPump);
        assertThat(driven.turbines()).containsExactly(turbine);
        assertThat(driven.driven()).containsExactly("fuel pump");
        assertThat(driven.drivers()).containsExactly("turbine");
        assertThat(motorShaft(2e6, fuelPump).drivers()).isEmpty();
        ShaftBalance liquid = new ShaftModel()
                .balance(
                        "s",
                        List.of(fuelPump),
                        Optional.of("hydraulic turbine"),
                        2e6,
                        MechanicalLosses.usual(false),
                        0,
                        "stated");
        assertThat(liquid.turbines()).isEmpty();
        assertThat(liquid.drivers()).containsExactly("hydraulic turbine");
    }

    /** Pump power goes with the cube of speed: half the speed asks an eighth. */
    @Test
    void theDemandOfASpinUpFollowsFromTheShaft() {
        MechanicalLosses losses = new MechanicalLosses(0.985, 0.98, 20e3);
        double needed = losses.turbinePower(oxidizerPump.power());
        ShaftBalance shaft = new ShaftModel()
                .balance("shaft", List.of(oxidizerPump), List.of(turbine(needed, false)), losses, 0, "stated");
        SpinUpDemand demand = SpinUpDemand.of(shaft, 0.5, 1.5);
        assertThat(demand.speed()).isCloseTo(0.5 * shaft.speed(), withinPercentage(1e-9));
        assertThat(demand.pumpPower()).isCloseTo(shaft.powerAbsorbed() / 8, withinPercentage(1e-9));
        assertThat(demand.inertia()).isEqualTo(shaft.rotor().inertia());
        assertThat(demand.duration()).isEqualTo(1.5);
    }
}

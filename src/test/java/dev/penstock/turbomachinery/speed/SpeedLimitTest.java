package dev.penstock.turbomachinery.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.turbomachinery.PerfectGas;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.turbine.TurbineDefaults;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbineModel;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import dev.penstock.turbomachinery.turbine.TurbineType;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpeedLimitTest {

    private static final double RPM = Math.PI / 30;
    private static final Propellant HYDROGEN = FluidLibrary.open().propellant("hydrogen");

    private final PumpModel pumps = new PumpModel();

    private PumpDuty hydrogen(double massFlow, double discharge) {
        return new PumpDuty(HYDROGEN, HYDROGEN.fluid().atPressureTemperature(0.25e6, 20.4), discharge, massFlow);
    }

    @Test
    void theTightestLimitIsNamedAndNeverPassed() {
        SpeedLimit least = SpeedLimit.least(List.of(
                new SpeedLimit(SpeedBound.SUCTION, 300),
                new SpeedLimit(SpeedBound.BEARINGS, 200),
                new SpeedLimit(SpeedBound.ANNULUS, 1e9)));
        assertThat(least.name()).isEqualTo("bearings");
        assertThat(least.speed()).isLessThanOrEqualTo(200).isCloseTo(200, withinPercentage(0.1));
        assertThat(least.of("pump", bound -> List.of()).name()).isEqualTo("bearings of the pump");
        assertThat(new SpeedLimit(SpeedBound.SUCTION, 300).geared(0.5).speed()).isEqualTo(150);
    }

    /** The runner-up is handed on with what all but the tightest were made from, for whoever asks what would come next. */
    @Test
    void theNextLimitKnowsWhatTheOthersWereMadeFrom() {
        SpeedLimit suction = new SpeedLimit(SpeedBound.SUCTION, 300).of("pump", bound -> List.of("a", "b"));
        SpeedLimit annulus = new SpeedLimit(SpeedBound.ANNULUS, 900).of("turbine", bound -> List.of("c", "a"));
        SpeedLimit bearings = new SpeedLimit(SpeedBound.BEARINGS, 200).with(List.of("d"));
        SpeedLimit least = SpeedLimit.least(List.of(annulus, bearings, suction));
        assertThat(least.from()).containsExactly("d");
        SpeedLimit next = least.next().orElseThrow();
        assertThat(next.name()).isEqualTo("suction of the pump");
        assertThat(next.speed()).isEqualTo(300);
        assertThat(next.from()).containsExactlyInAnyOrder("a", "b", "c");
        assertThat(least.geared(2).next().orElseThrow().speed()).isEqualTo(600);
        assertThat(SpeedLimit.least(List.of(bearings)).next()).isEmpty();
        assertThat(SpeedLimit.least(List.of(suction, annulus))
                        .next()
                        .orElseThrow()
                        .from())
                .containsExactly("c", "a");
    }

    @Test
    void aStatedOrBuiltSpeedIsNotChosen() {
        for (SpeedBound bound : SpeedBound.values()) {
            boolean given = bound == SpeedBound.STATED || bound == SpeedBound.BUILT;
            assertThat(new SpeedLimit(bound, 100).chosen()).isEqualTo(!given);
        }
    }

    @Test
    void aSmallHydrogenPumpIsHeldBackByItsSmallestBearings() {
        PumpDesign design = PumpDefaults.of(HYDROGEN);
        SpeedLimit limit = SpeedLimit.least(pumps.speedLimits(hydrogen(3, 6e6), design));
        assertThat(limit.name()).isEqualTo("smallest bearings");
        // DN 1.6 million mm·rpm [nasa-sp-8048, from memory] on 25 mm is 64 000 rpm
        assertThat(limit.speed() / RPM).isCloseTo(64_000, withinPercentage(1.5));
    }

    @Test
    void aLargeHydrogenPumpIsNot() {
        assertThat(SpeedLimit.least(pumps.speedLimits(hydrogen(80, 12e6), PumpDefaults.of(HYDROGEN)))
                        .name())
                .isEqualTo("suction");
    }

    @Test
    void theFastestSpeedIsTheLeastOfTheLimits() {
        PumpDuty duty = hydrogen(20, 15e6);
        PumpDesign design = pumps.choose(duty, PumpDefaults.of(HYDROGEN));
        assertThat(pumps.fastestSpeed(duty, design))
                .isEqualTo(SpeedLimit.least(pumps.speedLimits(duty, design)).speed());
    }

    @Test
    void gearTeethRunAtTheirLimitAtTheFastestSpeed() {
        PumpDesign design = PumpDefaults.of(HYDROGEN);
        double speed = GearTeeth.fastest(20e6, design, 100);
        double shaft = ShaftTorsion.diameter(20e6 / 0.70 / speed, design.shaftStress());
        // identity: torque gives the shaft, the shaft the pinion, the pinion the speed of its teeth
        assertThat(GearTeeth.speed(speed, shaft)).isCloseTo(100, within(0.01));
        // limit: a small shaft of 25 mm, whatever it carries; 100 m/s on a pinion of 50 mm is 38 200 rpm
        assertThat(GearTeeth.fastest(1e4, design, 100) / RPM).isCloseTo(38_197, withinPercentage(0.1));
    }

    @Test
    void atItsAnnulusLimitATurbineKeepsItsAnnulusSpeed() {
        WorkingFluid gas = new PerfectGas(8000, 1.36);
        TurbineDuty duty = new TurbineDuty(gas, 18e6, 8000 * 870, 14e6, 45);
        TurbineModel model = new TurbineModel();
        TurbineDesign design = TurbineDefaults.of(false).withStages(TurbineType.REACTION, 2);
        double speed = 4000;
        for (int i = 0; i < 20; i++) {
            speed = model.annulusLimit(duty, speed, design).speed();
        }
        TurbineSizing turbine = model.size("turbine", duty, speed, design);
        assertThat(turbine.annulusSpeed() / design.annulusSpeedLimit()).isBetween(0.94, 1.0);
        // [nasa-sp-8110], from memory: nozzles of 15° to 30°
        assertThat(Math.toDegrees(turbine.design().nozzleAngle())).isBetween(28.0, 33.0);
    }

    @Test
    void coldBladesBearTwiceTheRootStress() {
        double hot = TurbineModel.untaperedRootStress(TurbineDefaults.of(false).annulusSpeedLimit());
        double cold =
                TurbineModel.untaperedRootStress(TurbineDefaults.of(false, true).annulusSpeedLimit());
        assertThat(cold / hot).isCloseTo(2, within(0.01));
    }
}

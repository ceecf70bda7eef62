package dev.penstock.vehicle.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.plan.DeltaVBudget;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RocketEquationTest {

    /** Rounded gravity of the values below. */
    private static final double G = 9.81;

    @Test
    void givesTheFiguresEveryoneKnows() {
        // common practice, no source: 330 s and 9.81 m/s2 give 3237 m/s; 9400 m/s needs 18.24, and 13.3 at 370 s
        assertThat(330 * G).isCloseTo(3237, within(0.5));
        assertThat(RocketEquation.massRatio(9400, 330 * G)).isCloseTo(18.24, within(0.005));
        assertThat(RocketEquation.massRatio(9400, 370 * G)).isCloseTo(13.3, within(0.05));
    }

    @Test
    void lowOrbitTakesItsSpeedPlusLosses() {
        // common practice, no source: 7800 m/s orbital speed, 9400 m/s with losses
        DeltaVBudget budget = new DeltaVBudget(java.util.List.of(
                new DeltaVBudget.Term(DeltaVBudget.Kind.SPEED, "orbital speed", 7800, "given"),
                new DeltaVBudget.Term(DeltaVBudget.Kind.LOSS, "gravity loss", 1300, "given"),
                new DeltaVBudget.Term(DeltaVBudget.Kind.LOSS, "other losses", 300, "given")));
        assertThat(budget.total()).isEqualTo(9400);
    }

    @Test
    void circularSpeedAndGroundSpeedAreThoseOfTheHandbooks() {
        // computed from [wgs-84] constants: 7784.3 m/s at 200 km; 465.1 m/s at the equator, 408.7 at 28.5 deg
        assertThat(Planet.EARTH.circularSpeed(200e3)).isCloseTo(7784.3, within(0.05));
        assertThat(Planet.EARTH.rotationCredit(0)).isCloseTo(465.1, within(0.05));
        assertThat(Planet.EARTH.rotationCredit(Math.toRadians(28.5))).isCloseTo(408.7, within(0.05));
    }

    @Test
    void refusesAFinalMassAboveTheStartMass() {
        assertThatThrownBy(() -> RocketEquation.deltaV(3000, 100, 101)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> RocketEquation.deltaV(3000, 100, Double.NaN)).isInstanceOf(OutsideValidity.class);
    }

    @Property(tries = 200)
    void massRatioAndSpeedGainAreInverse(
            @ForAll @DoubleRange(min = 1, max = 12000) double deltaV,
            @ForAll @DoubleRange(min = 1500, max = 5000) double exhaustVelocity) {
        double ratio = RocketEquation.massRatio(deltaV, exhaustVelocity);
        assertThat(RocketEquation.deltaV(exhaustVelocity, ratio, 1)).isCloseTo(deltaV, within(1e-8 * deltaV + 1e-9));
    }
}

package dev.penstock.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.atmosphere.AscentAverage;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.quantities.Constants;
import org.junit.jupiter.api.Test;

/** Thrust and impulse on the way up: bells, plugs, averages. */
class AltitudeTest {

    private static final Reactants MIXTURE = Mixtures.mix(Mixtures.OXYGEN, Mixtures.METHANE, 3.4);
    private static final ChamberPerformance BELL = chamber(60);

    private static ChamberPerformance chamber(double areaRatio) {
        ChamberDesign design = new ChamberDesign(
                10e6,
                Designs.combustor(2.5, 1.2),
                Designs.bell(areaRatio),
                ExpansionMode.SHIFTING,
                Efficiencies.MODELLED);
        return new ThrustChamber(Mixtures.nozzle(MIXTURE)).forVacuumThrust(design, Injection.of(MIXTURE), 1e6);
    }

    /** Limit: the ideal plug equals the bell where both are matched, and beats it at sea level. */
    @Test
    void plugEqualsTheMatchedBellAndBeatsItAtSeaLevel() {
        PlugNozzle plug = new PlugNozzle(BELL);
        double matched = BELL.ideal().exit().pressure();
        // The bell's losses act on the vacuum impulse, the plug's on the matched one: they differ by η on p_e A_e.
        assertThat(plug.thrustAt(matched) / BELL.thrustAt(matched)).isCloseTo(1, within(3e-3));
        assertThat(plug.thrustAt(101_325)).isGreaterThan(BELL.thrustAt(101_325));
        assertThat(plug.thrustAt(0)).isCloseTo(BELL.vacuumThrust(), within(1.0));
    }

    /** Limit: an upper bound is nowhere below what it bounds. */
    @Test
    void plugIsNeverBelowTheBell() {
        PlugNozzle plug = new PlugNozzle(BELL);
        for (double p = 0; p < 3e5; p += 2e3) {
            assertThat(plug.thrustAt(p)).as(p + " Pa").isGreaterThan(BELL.thrustAt(p) * (1 - 1e-9));
        }
    }

    @Test
    void plugThrustIsContinuousAndFallsWithAmbientPressure() {
        PlugNozzle plug = new PlugNozzle(BELL);
        double matched = BELL.ideal().exit().pressure();
        assertThat(plug.thrustAt(matched * (1 + 1e-7)) / plug.thrustAt(matched * (1 - 1e-7)))
                .isCloseTo(1, within(1e-6));
        double last = Double.MAX_VALUE;
        for (double p = 0; p < 3e5; p += 5e3) {
            assertThat(plug.thrustAt(p)).isLessThan(last);
            last = plug.thrustAt(p);
        }
        assertThatThrownBy(() -> plug.thrustAt(9e6)).isInstanceOf(OutsideValidity.class);
    }

    /** Closed form: F = F_vac − p A_e with p = p₀ exp(−t/τ) averages to F_vac − A_e p₀ τ/T (1 − exp(−T/τ)). */
    @Test
    void averageOverAnExponentialPressureHasItsClosedForm() {
        double vacuum = 1e6;
        double area = 2;
        double average =
                AscentAverage.specificImpulse(p -> vacuum - p * area, 300, AscentAverage.exponential(101_325, 40), 150);
        double expected = vacuum - area * 101_325 * 40 / 150.0 * (1 - Math.exp(-150 / 40.0));
        assertThat(average * Constants.STANDARD_GRAVITY * 300).isCloseTo(expected, within(1e-4 * expected * 0.01));
    }

    @Test
    void averageLiesBetweenStartAndEndOfAnAscent() {
        ChamberPerformance booster = chamber(25);
        double average = AscentAverage.specificImpulse(
                booster::thrustAt, booster.massFlow(), AscentAverage.exponential(101_325, 40), 160);
        assertThat(average).isBetween(booster.seaLevelSpecificImpulse(), booster.vacuumSpecificImpulse());
    }
}

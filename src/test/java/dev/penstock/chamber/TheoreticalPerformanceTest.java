package dev.penstock.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.chamber.flow.NozzleStation;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.quantities.Constants;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Theoretical performance against tables, and identities of the one-dimensional flow. */
class TheoreticalPerformanceTest {

    private static final double PC = 6_894_757.3; // 1000 psia in the tables
    private static final double PE = 101_325; // 14.7 psia
    private static final Reactants EXAMPLE = Mixtures.mix(Mixtures.OXYGEN, Mixtures.HYDROGEN, 5.55157);
    private static final double EXAMPLE_PRESSURE = 53.3172e5;

    /** Equilibrium calculation of the handbook table, same inputs; tolerances as it states (T ±20 K, c* ±0.5 %, Is ±0.7 %), tightened. */
    @ParameterizedTest(name = "{0}/{1} {2}")
    @CsvFileSource(resources = "/chamber/theoretical-performance.csv", numLinesToSkip = 1)
    void agreesWithTheTabulatedPerformance(
            String oxidizer,
            String fuel,
            double mixtureRatio,
            double temperature,
            double molarMass,
            double shiftingVelocity,
            double frozenVelocity,
            double shiftingImpulse,
            double frozenImpulse,
            String source) {
        Reactants reactants = Mixtures.mix(Mixtures.named(oxidizer), Mixtures.named(fuel), mixtureRatio);
        NozzleFlow nozzle = Mixtures.nozzle(reactants);
        IdealExpansion shifting =
                nozzle.expand(reactants, PC, ExpansionMode.SHIFTING).toExitPressure(PE);
        IdealExpansion frozen =
                nozzle.expand(reactants, PC, ExpansionMode.FROZEN).toExitPressure(PE);
        assertThat(shifting.chamber().temperature()).isCloseTo(temperature, within(8.0));
        assertThat(shifting.chamber().molarMass() * 1000).isCloseTo(molarMass, within(0.03));
        assertThat(shifting.characteristicVelocity() / shiftingVelocity).isCloseTo(1, within(0.002));
        assertThat(frozen.characteristicVelocity() / frozenVelocity).isCloseTo(1, within(0.002));
        assertThat(shifting.matchedImpulse() / Constants.STANDARD_GRAVITY / shiftingImpulse)
                .isCloseTo(1, within(0.002));
        assertThat(frozen.matchedImpulse() / Constants.STANDARD_GRAVITY / frozenImpulse)
                .isCloseTo(1, within(0.002));
    }

    /** Inputs of NASA RP-1311 part II example 8; stations computed by the handbook from the same formulas, to 0.1 %. */
    @ParameterizedTest(name = "{0} bar")
    @CsvSource({
        "5.33172, 2568.5, 2968.5, 3516.6, 2.3491",
        "0.533172, 1758.5, 3882.7, 4167.9, 12.221",
        "0.2045, 1466.3, 4125.2, 4349.0, 25",
        "0.0474, 1088.0, 4399.5, 4555.2, 75"
    })
    void publishedExampleIsReproducedStationByStation(
            double bar, double temperature, double velocity, double vacuumImpulse, double areaRatio) {
        NozzleFlow nozzle = Mixtures.nozzle(EXAMPLE);
        IdealExpansion byRatio = nozzle.toAreaRatio(EXAMPLE, EXAMPLE_PRESSURE, areaRatio, ExpansionMode.SHIFTING);
        assertThat(byRatio.exit().pressure() / 1e5 / bar).isCloseTo(1, within(2e-3));
        assertThat(byRatio.exit().temperature() / temperature).isCloseTo(1, within(1e-3));
        assertThat(byRatio.exit().velocity() / velocity).isCloseTo(1, within(1e-3));
        assertThat(byRatio.vacuumImpulse() / vacuumImpulse).isCloseTo(1, within(1e-3));
        IdealExpansion byPressure = nozzle.expand(EXAMPLE, EXAMPLE_PRESSURE, ExpansionMode.SHIFTING)
                .toExitPressure(byRatio.exit().pressure());
        assertThat(byPressure.areaRatio() / areaRatio).isCloseTo(1, within(1e-9));
    }

    /** As above: chamber and throat. */
    @Test
    void publishedExampleHasItsChamberAndThroat() {
        IdealExpansion e = Mixtures.nozzle(EXAMPLE).toAreaRatio(EXAMPLE, EXAMPLE_PRESSURE, 25, ExpansionMode.SHIFTING);
        assertThat(e.chamber().temperature()).isCloseTo(3388.2, within(3.4));
        assertThat(e.chamber().density()).isCloseTo(2.4075, within(0.0024));
        assertThat(e.chamber().enthalpy()).isCloseTo(-1_026_050, within(50.0));
        assertThat(e.characteristicVelocity()).isCloseTo(2333.3, within(2.3));
        assertThat(e.throat().pressure() / EXAMPLE_PRESSURE).isCloseTo(0.5749, within(3e-4));
        assertThat(e.throat().temperature()).isCloseTo(3189.5, within(3.2));
    }

    @ParameterizedTest
    @EnumSource(ExpansionMode.class)
    void massAndEnergyAreConservedToTheExit(ExpansionMode mode) {
        IdealExpansion e = Mixtures.nozzle(EXAMPLE).toAreaRatio(EXAMPLE, EXAMPLE_PRESSURE, 60, mode);
        double total = e.chamber().enthalpy();
        for (NozzleStation s : new NozzleStation[] {e.throat(), e.exit()}) {
            double kinetic = s.velocity() * s.velocity() / 2;
            assertThat((s.enthalpy() + kinetic - total) / kinetic).isCloseTo(0, within(1e-12));
            assertThat(s.massFlux() * s.areaRatio() * e.characteristicVelocity() / EXAMPLE_PRESSURE)
                    .isCloseTo(1, within(1e-10));
        }
        if (mode != ExpansionMode.FROZEN_AT_THROAT) {
            assertThat(e.throat().mach()).isCloseTo(1, within(1e-10));
        }
        double thrust = (e.exit().massFlux() * e.exit().velocity() + e.exit().pressure()) * e.areaRatio();
        assertThat(e.vacuumThrustCoefficient() * EXAMPLE_PRESSURE / thrust).isCloseTo(1, within(1e-10));
    }

    /** Momentum: vacuum thrust equals the throat's p A + ṁ v plus the integral of wall pressure over the divergent area. */
    @Test
    void wallPressureIntegralEqualsTheThrustGainedDownstreamOfTheThroat() {
        NozzleFlow nozzle = Mixtures.nozzle(EXAMPLE);
        Expansion expansion = nozzle.expand(EXAMPLE, EXAMPLE_PRESSURE, ExpansionMode.SHIFTING);
        GasProfile profile = expansion.profile(40);
        NozzleStation t = profile.throat();
        double sum = t.pressure() + t.massFlux() * t.velocity();
        int n = 4000;
        double lnEnd = Math.log(40);
        for (int i = 0; i < n; i++) {
            double a = Math.exp(lnEnd * i / n);
            double b = Math.exp(lnEnd * (i + 1) / n);
            double middle = Math.exp(lnEnd * (i + 0.5) / n);
            sum += profile.at(middle, true).pressure() * (b - a);
        }
        double cf = sum / EXAMPLE_PRESSURE;
        // Midpoint rule across the square-root start at the throat leaves a few parts in a million.
        assertThat(cf / expansion.toAreaRatio(40).vacuumThrustCoefficient()).isCloseTo(1, within(2e-5));
    }

    @Test
    void profileReproducesTheExpansion() {
        NozzleFlow nozzle = Mixtures.nozzle(EXAMPLE);
        Expansion expansion = nozzle.expand(EXAMPLE, EXAMPLE_PRESSURE, ExpansionMode.SHIFTING);
        GasProfile profile = expansion.profile(80);
        for (double areaRatio : new double[] {1.02, 1.5, 3, 10, 30, 79}) {
            NozzleStation exact = expansion.toAreaRatio(areaRatio).exit();
            NozzleStation quick = profile.at(areaRatio, true);
            assertThat(quick.temperature() / exact.temperature()).isCloseTo(1, within(3e-5));
            assertThat(quick.pressure() / exact.pressure()).isCloseTo(1, within(3e-5));
            assertThat(quick.velocity() / exact.velocity()).isCloseTo(1, within(1e-5));
            assertThat(quick.specificHeat() / exact.specificHeat()).isCloseTo(1, within(5e-3));
            assertThat(quick.viscosity() / exact.viscosity()).isCloseTo(1, within(2e-3));
        }
    }

    /** Water condenses on the way and makes cp jump twentyfold; nothing may overshoot to where no gas can be. */
    @Test
    void profileRunsThroughCondensation() {
        Reactants cold = Mixtures.mix(Mixtures.OXYGEN, Mixtures.HYDROGEN, 1.306);
        GasProfile profile = Mixtures.nozzle(cold)
                .expand(cold, 1.7e6, ExpansionMode.SHIFTING)
                .profile(165);
        double last = Double.MAX_VALUE;
        for (double areaRatio = 1; areaRatio <= 165; areaRatio += 0.5) {
            NozzleStation station = profile.at(areaRatio, true);
            assertThat(station.temperature()).isLessThanOrEqualTo(last);
            assertThat(station.specificHeat()).isGreaterThan(1000);
            last = station.temperature();
        }
        assertThat(profile.exitCondensedFraction()).isGreaterThan(0.05);
    }

    @Test
    void areaRatioOneLeavesTheThroatThrust() {
        IdealExpansion e = Mixtures.nozzle(EXAMPLE).toAreaRatio(EXAMPLE, EXAMPLE_PRESSURE, 1, ExpansionMode.SHIFTING);
        NozzleStation t = e.throat();
        assertThat(e.exit().pressure()).isEqualTo(t.pressure());
        assertThat(e.vacuumThrustCoefficient())
                .isCloseTo((t.pressure() + t.massFlux() * t.velocity()) / EXAMPLE_PRESSURE, within(1e-12));
    }

    @Property(tries = 25)
    void frozenFlowDeliversLessThanThroatFrozenThanShifting(
            @ForAll @DoubleRange(min = 2.0, max = 4.5) double mixtureRatio,
            @ForAll @DoubleRange(min = 1e6, max = 3e7) double pressure,
            @ForAll @DoubleRange(min = 2, max = 150) double areaRatio) {
        Reactants r = Mixtures.mix(Mixtures.OXYGEN, Mixtures.METHANE, mixtureRatio);
        NozzleFlow nozzle = Mixtures.nozzle(r);
        double shifting = nozzle.toAreaRatio(r, pressure, areaRatio, ExpansionMode.SHIFTING)
                .vacuumImpulse();
        double atThroat = nozzle.toAreaRatio(r, pressure, areaRatio, ExpansionMode.FROZEN_AT_THROAT)
                .vacuumImpulse();
        double frozen =
                nozzle.toAreaRatio(r, pressure, areaRatio, ExpansionMode.FROZEN).vacuumImpulse();
        assertThat(frozen).isLessThanOrEqualTo(atThroat * (1 + 1e-9));
        assertThat(atThroat).isLessThanOrEqualTo(shifting * (1 + 1e-9));
    }

    @Test
    void exitPressureAboveChamberPressureIsRefused() {
        assertThatThrownBy(() -> Mixtures.nozzle(EXAMPLE)
                        .expand(EXAMPLE, 5e6, ExpansionMode.SHIFTING)
                        .toExitPressure(6e6))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("exit pressure (Pa) is 6.00000e+06")
                .hasMessageContaining("below the throat pressure");
    }
}

package dev.penstock.turbomachinery.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.LimitReached;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PressurantBottleTest {

    private static final Fluid HELIUM = FluidLibrary.open().propellant("helium").fluid();
    private static final List<PressurantBottle.Demand> TANK = List.of(new PressurantBottle.Demand(2e6, 1, 1.1));

    /** Independent library: the same steps with CoolProp 8.0.0 called from Python; 30 MPa, 293.15 K, 1 m³ at 2 MPa. */
    @Test
    void unheatedHeliumFollowsItsEquationOfState() {
        PressurantBottle bottle = PressurantBottle.of(HELIUM, 30e6, 293.15, OptionalDouble.empty(), TANK);
        assertThat(bottle.endPressure()).isEqualTo(3e6);
        assertThat(bottle.endTemperature()).isCloseTo(117.541, within(0.01));
        assertThat(bottle.tankTemperature()).isCloseTo(217.223, within(0.01));
        assertThat(bottle.used()).isCloseTo(4.81104, withinPercentage(0.01));
        assertThat(bottle.loaded()).isCloseTo(6.63184, withinPercentage(0.01));
        assertThat(bottle.volume()).isCloseTo(0.153637, withinPercentage(0.01));
        assertThat(bottle.heat()).isZero();
    }

    /** Independent library: as above, heated to 600 K. */
    @Test
    void heatedHeliumWeighsLessAndTakesItsHeat() {
        PressurantBottle bottle = PressurantBottle.of(HELIUM, 30e6, 293.15, OptionalDouble.of(600), TANK);
        assertThat(bottle.used()).isCloseTo(1.75764, withinPercentage(0.01));
        assertThat(bottle.loaded()).isCloseTo(2.42284, withinPercentage(0.01));
        assertThat(bottle.heat()).isCloseTo(3.493824e6, withinPercentage(0.01));
    }

    /** Limit: for an ideal gas m0 = γ p V/(R T0 (1 - p_end/p0)) [sutton-rpe, from memory], with γ 5/3 and R 2077.1 J/(kg·K). */
    @Test
    void aThinGasFollowsTheFormulaOfTheIdealGas() {
        PressurantBottle.Demand demand = new PressurantBottle.Demand(5e3, 1, 1);
        PressurantBottle bottle = PressurantBottle.of(HELIUM, 1e5, 293.15, OptionalDouble.empty(), List.of(demand));
        // Delivered enthalpy of an ideal gas is γ times what this formula takes when the end pressure is the tank's;
        // here
        // the bottle ends at 1.5 times that, so the balance is taken with that end.
        double gamma = 5.0 / 3;
        double left = Math.pow(0.075, 1 / gamma);
        double tank = 293.15 / gamma * (1 - 0.075) / (1 - left);
        double loaded = 5e3 / (2077.1 * tank) / (1 - left);
        assertThat(bottle.tankTemperature()).isCloseTo(tank, within(0.3));
        assertThat(bottle.loaded()).isCloseTo(loaded, withinPercentage(0.2));
        assertThat(bottle.loaded()).isCloseTo(gamma * 5e3 / (2077.1 * 293.15) / (1 - 0.075), withinPercentage(0.2));
    }

    @Test
    void aBottleThatCannotServeTheTankSaysWhatToRaise() {
        assertThatThrownBy(() -> PressurantBottle.of(HELIUM, 3e6, 293.15, OptionalDouble.empty(), TANK))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("raise pressurization.bottle_pressure");
    }
}

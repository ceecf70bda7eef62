package dev.penstock.vehicle.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.vehicle.engine.LoadedPropellant;
import org.junit.jupiter.api.Test;

class CoastBoilOffTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open(HomeFolder.find());

    private static LoadedPropellant cold(String id, double density, double temperature) {
        return new LoadedPropellant(FLUIDS.propellant(id), density, temperature, 0.2e6);
    }

    /** Heats of vaporisation at one atmosphere, from memory: hydrogen 446 kJ/kg, oxygen 213 kJ/kg; an ideal vapour gives up to 13 % more. */
    @Test
    void theHeatOfVaporisationIsSomewhatTooLarge() {
        assertThat(CoastBoilOff.heatOfVaporisation(cold("hydrogen", 70.8, 20.3)) / 446e3)
                .isBetween(1.0, 1.14);
        assertThat(CoastBoilOff.heatOfVaporisation(cold("oxygen", 1141, 90.2)) / 213e3)
                .isBetween(1.0, 1.14);
    }

    /** An hour at 50 W/m² boils 180 kJ/m² over the heat of vaporisation; kerosene at room temperature loses nothing. */
    @Test
    void heatLeakTimesTimeOverHeat() {
        LoadedPropellant hydrogen = cold("hydrogen", 70.8, 20.3);
        assertThat(CoastBoilOff.perArea(hydrogen, 50, 3600) * CoastBoilOff.heatOfVaporisation(hydrogen))
                .isCloseTo(180e3, within(1e-6));
        assertThat(CoastBoilOff.perArea(hydrogen, 50, 0)).isZero();
        assertThat(CoastBoilOff.perArea(cold("rp-1", 810, 288), 50, 3600)).isZero();
    }
}

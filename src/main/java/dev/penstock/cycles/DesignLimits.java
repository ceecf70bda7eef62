package dev.penstock.cycles;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * Hardware limits of a concept that belong to no single machine; pumps, turbines and the jacket carry their own.
 *
 * @param fuelRichTemperature highest temperature of fuel-rich turbine gas (K)
 * @param oxidizerRichTemperature highest temperature of oxidizer-rich turbine gas (K)
 * @param dischargePressure highest pump discharge pressure (Pa)
 * @param tankPressure highest tank pressure (Pa), for pressure-fed cycles
 * @param chamberPressure highest chamber pressure looked at by a search (Pa); empty for 100 MPa
 */
public record DesignLimits(
        double fuelRichTemperature,
        double oxidizerRichTemperature,
        double dischargePressure,
        double tankPressure,
        OptionalDouble chamberPressure) {

    public DesignLimits {
        Require.positive("limits", "fuel-rich gas temperature (K)", fuelRichTemperature);
        Require.positive("limits", "oxidizer-rich gas temperature (K)", oxidizerRichTemperature);
        Require.positive("limits", "discharge pressure (Pa)", dischargePressure);
        Require.positive("limits", "tank pressure (Pa)", tankPressure);
    }
}

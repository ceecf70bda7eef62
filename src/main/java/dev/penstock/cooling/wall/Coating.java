package dev.penstock.cooling.wall;

import dev.penstock.errors.Require;

/**
 * Insulating layer on the gas side of the wall.
 *
 * @param thickness thickness (m)
 * @param conductivity thermal conductivity (W/(m·K))
 * @param maximumTemperature highest temperature it stands (K)
 */
public record Coating(double thickness, double conductivity, double maximumTemperature) {

    public Coating {
        Require.positive("coating", "thickness (m)", thickness);
        Require.positive("coating", "conductivity (W/(m·K))", conductivity);
        Require.positive("coating", "maximum temperature (K)", maximumTemperature);
    }

    /** @return thermal resistance (m²·K/W) */
    public double resistance() {
        return thickness / conductivity;
    }
}

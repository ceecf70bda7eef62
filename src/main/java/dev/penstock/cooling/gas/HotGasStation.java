package dev.penstock.cooling.gas;

import dev.penstock.errors.Require;

/**
 * Free-stream gas at one place along the wall.
 *
 * @param x axial distance from the throat, negative upstream (m)
 * @param radius inner radius of the wall (m)
 * @param mach Mach number of the free stream (-)
 * @param pressure static pressure (Pa)
 * @param temperature static temperature (K)
 * @param density density (kg/m³)
 * @param velocity velocity (m/s)
 * @param gamma isentropic exponent (-)
 */
public record HotGasStation(
        double x,
        double radius,
        double mach,
        double pressure,
        double temperature,
        double density,
        double velocity,
        double gamma) {

    public HotGasStation {
        Require.finite("hot gas", "axial position (m)", x);
        Require.positive("hot gas", "wall radius (m)", radius);
        Require.notNegative("hot gas", "Mach number (-)", mach);
        Require.positive("hot gas", "pressure (Pa)", pressure);
        Require.positive("hot gas", "temperature (K)", temperature);
        Require.positive("hot gas", "density (kg/m³)", density);
        Require.notNegative("hot gas", "velocity (m/s)", velocity);
        Require.within("hot gas", "isentropic exponent (-)", gamma, 1.0, 2.0);
    }
}

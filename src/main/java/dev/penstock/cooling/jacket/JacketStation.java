package dev.penstock.cooling.jacket;

import dev.penstock.errors.Require;

/**
 * State of gas, wall and coolant at one place along the jacket; the middle of a cell. Where two passes lie side by side
 * it is that of the hotter wall.
 *
 * @param x axial distance from the throat, negative upstream (m)
 * @param radius inner radius of the wall (m)
 * @param areaRatio cross-section over throat area (-)
 * @param heatFlux heat flux into the wall, radiation included (W/m²)
 * @param radiativeHeatFlux part of it that is gas radiation (W/m²)
 * @param adiabaticWallTemperature adiabatic wall temperature of the gas, film included (K)
 * @param gasSideWallTemperature hottest temperature of the wall metal (K)
 * @param coolantSideWallTemperature temperature of the channel floor (K)
 * @param coolantTemperature bulk temperature of the coolant (K)
 * @param coolantPressure static pressure of the coolant (Pa)
 * @param coolantVelocity velocity of the coolant (m/s)
 * @param gasSideCoefficient convective coefficient of the gas (W/(m²·K))
 * @param coolantSideCoefficient convective coefficient of the coolant on its own surface, without fin effect (W/(m²·K))
 * @param channelWidth channel width, or inner diameter of a tube (m)
 * @param channelHeight channel height, or inner diameter of a tube (m)
 * @param landWidth metal between two channels (m)
 * @param wallThickness metal between gas and channel floor (m)
 * @param finEfficiency efficiency of the lands as fins (-)
 * @param coolantReynolds Reynolds number on the hydraulic diameter (-)
 */
public record JacketStation(
        double x,
        double radius,
        double areaRatio,
        double heatFlux,
        double radiativeHeatFlux,
        double adiabaticWallTemperature,
        double gasSideWallTemperature,
        double coolantSideWallTemperature,
        double coolantTemperature,
        double coolantPressure,
        double coolantVelocity,
        double gasSideCoefficient,
        double coolantSideCoefficient,
        double channelWidth,
        double channelHeight,
        double landWidth,
        double wallThickness,
        double finEfficiency,
        double coolantReynolds) {

    public JacketStation {
        Require.finite("jacket station", "axial position (m)", x);
        Require.positive("jacket station", "radius (m)", radius);
        Require.positive("jacket station", "area ratio (-)", areaRatio);
        Require.finite("jacket station", "heat flux (W/m²)", heatFlux);
        Require.notNegative("jacket station", "radiative heat flux (W/m²)", radiativeHeatFlux);
        Require.positive("jacket station", "adiabatic wall temperature (K)", adiabaticWallTemperature);
        Require.positive("jacket station", "gas-side wall temperature (K)", gasSideWallTemperature);
        Require.positive("jacket station", "coolant-side wall temperature (K)", coolantSideWallTemperature);
        Require.positive("jacket station", "coolant temperature (K)", coolantTemperature);
        Require.positive("jacket station", "coolant pressure (Pa)", coolantPressure);
        Require.positive("jacket station", "coolant velocity (m/s)", coolantVelocity);
        Require.positive("jacket station", "gas-side coefficient (W/(m²·K))", gasSideCoefficient);
        Require.positive("jacket station", "coolant-side coefficient (W/(m²·K))", coolantSideCoefficient);
        Require.positive("jacket station", "channel width (m)", channelWidth);
        Require.positive("jacket station", "channel height (m)", channelHeight);
        Require.notNegative("jacket station", "land width (m)", landWidth);
        Require.positive("jacket station", "wall thickness (m)", wallThickness);
        Require.within("jacket station", "fin efficiency (-)", finEfficiency, 0, 1);
        Require.positive("jacket station", "coolant Reynolds number (-)", coolantReynolds);
    }
}

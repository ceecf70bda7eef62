package dev.penstock.cooling.wall;

import dev.penstock.errors.Require;
import java.util.List;
import java.util.Objects;

/**
 * A wall material, from a file in {@code fluids/walls}.
 *
 * @param id file name without its ending
 * @param name name for people
 * @param density density (kg/m³)
 * @param maximumTemperature highest temperature of use under load (K)
 * @param poissonRatio Poisson's ratio (-)
 * @param reductionOfArea reduction of area at fracture, for the ductile part of fatigue life (-)
 * @param emissivity total emissivity of the surface in service (-)
 * @param conductivity thermal conductivity (W/(m·K))
 * @param heatCapacity specific heat (J/(kg·K))
 * @param expansion mean coefficient of thermal expansion from room temperature (1/K)
 * @param modulus Young's modulus (Pa)
 * @param yieldStrength 0.2 % yield strength (Pa)
 * @param ultimateStrength ultimate strength (Pa)
 * @param sources where the figures come from, with how far they are to be trusted
 */
public record WallMaterial(
        String id,
        String name,
        double density,
        double maximumTemperature,
        double poissonRatio,
        double reductionOfArea,
        double emissivity,
        TemperatureTable conductivity,
        TemperatureTable heatCapacity,
        TemperatureTable expansion,
        TemperatureTable modulus,
        TemperatureTable yieldStrength,
        TemperatureTable ultimateStrength,
        List<String> sources) {

    public WallMaterial {
        Objects.requireNonNull(id, "id");
        Require.positive(id, "density (kg/m³)", density);
        Require.positive(id, "maximum temperature (K)", maximumTemperature);
        Require.within(id, "Poisson's ratio (-)", poissonRatio, 0, 0.5);
        Require.within(id, "reduction of area (-)", reductionOfArea, 0.01, 0.99);
        Require.within(id, "emissivity (-)", emissivity, 0.01, 1);
        sources = List.copyOf(sources);
    }
}

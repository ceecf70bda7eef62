package dev.penstock.cooling.gas;

import dev.penstock.errors.Require;
import java.util.Map;
import java.util.TreeMap;

/**
 * Combustion gas at stagnation, as the gas side of the wall needs it.
 *
 * @param pressure stagnation pressure at the throat (Pa)
 * @param temperature stagnation temperature as delivered, combustion losses taken off (K)
 * @param characteristicVelocity delivered characteristic velocity (m/s)
 * @param viscosity dynamic viscosity (Pa·s)
 * @param frozenHeatCapacity cp with frozen composition (J/(kg·K))
 * @param frozenPrandtl Prandtl number with frozen composition (-)
 * @param equilibriumHeatCapacity cp with shifting composition (J/(kg·K))
 * @param equilibriumPrandtl Prandtl number with shifting composition (-)
 * @param moleFractions mole fraction by species, for radiation (-)
 */
public record HotGas(
        double pressure,
        double temperature,
        double characteristicVelocity,
        double viscosity,
        double frozenHeatCapacity,
        double frozenPrandtl,
        double equilibriumHeatCapacity,
        double equilibriumPrandtl,
        Map<String, Double> moleFractions) {

    public HotGas {
        Require.positive("hot gas", "stagnation pressure (Pa)", pressure);
        Require.positive("hot gas", "stagnation temperature (K)", temperature);
        Require.positive("hot gas", "characteristic velocity (m/s)", characteristicVelocity);
        Require.positive("hot gas", "viscosity (Pa·s)", viscosity);
        Require.positive("hot gas", "frozen cp (J/(kg·K))", frozenHeatCapacity);
        Require.positive("hot gas", "frozen Prandtl number (-)", frozenPrandtl);
        Require.positive("hot gas", "equilibrium cp (J/(kg·K))", equilibriumHeatCapacity);
        Require.positive("hot gas", "equilibrium Prandtl number (-)", equilibriumPrandtl);
        moleFractions = Map.copyOf(new TreeMap<>(moleFractions));
    }

    /**
     * @param properties composition of the gas while it crosses the boundary layer
     * @return cp at that composition (J/(kg·K))
     */
    public double heatCapacity(GasSideDesign.Properties properties) {
        return properties == GasSideDesign.Properties.FROZEN ? frozenHeatCapacity : equilibriumHeatCapacity;
    }

    /**
     * @param properties composition of the gas while it crosses the boundary layer
     * @return Prandtl number at that composition (-)
     */
    public double prandtl(GasSideDesign.Properties properties) {
        return properties == GasSideDesign.Properties.FROZEN ? frozenPrandtl : equilibriumPrandtl;
    }

    /**
     * @param species species name
     * @return its mole fraction (-), zero if absent
     */
    public double moleFraction(String species) {
        return moleFractions.getOrDefault(species, 0.0);
    }
}

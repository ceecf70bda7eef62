package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.start.Bottle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Gas that replaces the propellant in the tanks, from bottles that empty without heat, real gas throughout.
 *
 * <pre>
 * bottle       s = const from (p0, T0) to p_end:  usable = 1 − ρ_end/ρ0
 * energy       m0 u0 = m_end u_end + m_tank h_tank          (gas does p V work on the liquid)
 * tank gas     m_tank = CF · p_tank V M / (R T_tank)
 * bottle gas   m0 = Σ m_tank / usable,   V_bottle = m0/ρ0
 * </pre>
 *
 * T_tank follows from the energy, or is that of a heat exchanger. For an ideal gas without heating and CF = 1 this is the
 * formula of [sutton-rpe]: m0 = p V/(R T0) · γ/(1 − p_end/p0). CF, the collapse factor, is the gas actually used over the
 * gas so found; it stands for cooling by the propellant and condensation. A bottle is spent at {@value #SPENT} times the
 * tank pressure, what regulator and lines need. The fluid model is asked once, at a row of end pressures.
 *
 * @param id fluid id of the gas
 * @param molarMass molar mass (kg/mol)
 * @param fullPressure bottle pressure when full (Pa)
 * @param fullDensity gas density in the full bottle (kg/m³)
 * @param bottlePerformance bottle pressure times volume over bottle mass (J/kg)
 * @param spent bottle when spent, end pressure rising
 */
public record PressurantSupply(
        String id,
        double molarMass,
        double fullPressure,
        double fullDensity,
        double bottlePerformance,
        List<Spent> spent) {

    /** Spent bottle pressure over tank pressure: common practice, no source. */
    static final double SPENT = 1.5;

    private static final double LEAST_END = 2e5;
    private static final int ENDS = 12;

    /**
     * A bottle when spent.
     *
     * @param pressure its pressure (Pa)
     * @param density gas density in it (kg/m³)
     * @param tankTemperature temperature of the gas that has gone into the tanks (K)
     */
    public record Spent(double pressure, double density, double tankTemperature) {

        public Spent {
            Require.positive("spent bottle", "pressure (Pa)", pressure);
            Require.positive("spent bottle", "gas density (kg/m³)", density);
            Require.positive("spent bottle", "tank gas temperature (K)", tankTemperature);
        }
    }

    public static final ModelCard CARD = new ModelCard(
            "vehicle.pressurant",
            "Pressurant gas and its bottles",
            "m0 = Σ CF p V M/(R T_tank) / (1 − ρ_end/ρ0), bottle isentropic, tank gas by energy balance",
            "gas phase throughout; tank pressures to 5 MPa (tank gas taken as ideal)",
            "that of the collapse factor: ±20 %",
            List.of("sutton-rpe", "nasa-sp-8112"));

    /** Working pressure times volume over mass (J/kg): wound carbon fibre over a liner; from memory. */
    public static final double COMPOSITE_BOTTLE = Bottle.SHELL_PERFORMANCE;

    /** The same for a titanium sphere with a burst factor of 1.5; from memory. */
    public static final double TITANIUM_BOTTLE = 1.1e5;

    public PressurantSupply {
        Require.positive(id, "molar mass (kg/mol)", molarMass);
        Require.positive(id, "bottle pressure (Pa)", fullPressure);
        Require.positive(id, "gas density in the full bottle (kg/m³)", fullDensity);
        Require.positive(id, "bottle performance (J/kg)", bottlePerformance);
        Require.within(id, "end states", spent.size(), 2, 1000);
        spent = List.copyOf(spent);
    }

    /**
     * @param gas property model of the gas
     * @param fullPressure bottle pressure when full (Pa)
     * @param fullTemperature bottle temperature when full (K)
     * @param heatedTo temperature behind a heat exchanger (K); empty for none
     * @param bottlePerformance bottle pressure times volume over bottle mass (J/kg)
     * @return the supply
     */
    public static PressurantSupply of(
            Fluid gas, double fullPressure, double fullTemperature, OptionalDouble heatedTo, double bottlePerformance) {
        Require.within(gas.id(), "bottle pressure (Pa)", fullPressure, 10 * LEAST_END, 1e8);
        FluidState full = gas.atPressureTemperature(fullPressure, fullTemperature);
        List<Spent> ends = new ArrayList<>();
        double step = Math.log(0.8 * fullPressure / LEAST_END) / (ENDS - 1);
        for (int i = 0; i < ENDS; i++) {
            double pressure = LEAST_END * Math.exp(i * step);
            FluidState end = gas.atPressureEntropy(pressure, full.entropy());
            double ratio = end.density() / full.density();
            double delivered = (internalEnergy(full) - ratio * internalEnergy(end)) / (1 - ratio);
            double temperature = heatedTo.isPresent()
                    ? heatedTo.getAsDouble()
                    : gas.atPressureEnthalpy(pressure / SPENT, delivered).temperature();
            ends.add(new Spent(pressure, end.density(), temperature));
        }
        return new PressurantSupply(gas.id(), gas.molarMass(), fullPressure, full.density(), bottlePerformance, ends);
    }

    private static double internalEnergy(FluidState state) {
        return state.enthalpy() - state.pressure() / state.density();
    }

    /**
     * @param tankPressure tank pressure (Pa)
     * @param volume volume to fill (m³)
     * @param collapseFactor gas used over gas without collapse (-)
     * @return gas to load for it (kg)
     */
    public double gasFor(double tankPressure, double volume, double collapseFactor) {
        Require.within(id, "tank pressure (Pa)", tankPressure, 1, highestTankPressure());
        double end = Math.max(LEAST_END, SPENT * tankPressure);
        int i = 1;
        while (i < spent.size() - 1 && spent.get(i).pressure() < end) {
            i++;
        }
        Spent low = spent.get(i - 1);
        Spent high = spent.get(i);
        double t = Math.log(end / low.pressure()) / Math.log(high.pressure() / low.pressure());
        double density = low.density() * Math.pow(high.density() / low.density(), t);
        double temperature = low.tankTemperature() + t * (high.tankTemperature() - low.tankTemperature());
        double inTank =
                collapseFactor * tankPressure * volume * molarMass / (Constants.MOLAR_GAS_CONSTANT * temperature);
        return inTank / (1 - density / fullDensity);
    }

    /** @return highest tank pressure that the bottles serve (Pa) */
    public double highestTankPressure() {
        return spent.get(spent.size() - 1).pressure() / SPENT;
    }

    /**
     * @param gas gas loaded (kg)
     * @return mass of the bottles that hold it (kg)
     */
    public double bottleMass(double gas) {
        return fullPressure * gas / fullDensity / bottlePerformance;
    }
}

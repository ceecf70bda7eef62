package dev.penstock.turbomachinery.feed;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.ModelCard;
import dev.penstock.turbomachinery.start.Bottle;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Bottle whose gas a regulator feeds into the tanks at constant pressure, with or without a heat exchanger behind it.
 * <pre>
 * bottle       s = s0 down to p_end = 1.5 times the highest tank pressure
 * delivered    h = (u0 - ρ_end/ρ0 u_end)/(1 - ρ_end/ρ0)           energy of the bottle, no heat from outside
 * in a tank    m = CF ρ(p_tank, h or T_heated) V                   the gas fills the volume at constant pressure
 * loaded       m0 = Σ m/(1 - ρ_end/ρ0),   V = m0/ρ0
 * heat         Q = Σ m (h(p_tank, T_heated) - h)
 * </pre>
 *
 * @param loaded gas in the full bottle (kg)
 * @param used gas that goes into the tanks (kg)
 * @param volume bottle volume (m³)
 * @param bottleMass mass of the empty bottle (kg)
 * @param endPressure pressure of the spent bottle (Pa)
 * @param endTemperature temperature of the spent bottle (K)
 * @param tankTemperature temperature of the gas as it enters the tanks, mean over the life (K)
 * @param heat heat put into the gas (J); zero without a heat exchanger
 */
public record PressurantBottle(
        double loaded,
        double used,
        double volume,
        double bottleMass,
        double endPressure,
        double endTemperature,
        double tankTemperature,
        double heat) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.pressurant-bottle",
            "Regulated pressurant, heated or not",
            "m0 = Σ CF ρ(p_tank, T) V/(1 - ρ_end/ρ0), bottle isentropic; Q = Σ m (h(T_heated) - h_delivered)",
            "gas phase throughout",
            "that of the collapse factor: ±20 %",
            List.of("sutton-rpe", "nasa-sp-8112"));

    /** Spent bottle over tank pressure, for regulator and lines: common practice, no source. */
    private static final double SPENT = 1.5;

    /**
     * A volume to fill.
     *
     * @param pressure tank pressure (Pa)
     * @param volume volume (m³)
     * @param collapseFactor gas used over gas without cooling by the propellant (-)
     */
    public record Demand(double pressure, double volume, double collapseFactor) {

        public Demand {
            Require.positive("pressurant", "tank pressure (Pa)", pressure);
            Require.positive("pressurant", "volume to fill (m³)", volume);
            Require.within("pressurant", "collapse factor (-)", collapseFactor, 1, 5);
        }
    }

    /**
     * @param gas the gas
     * @param fullPressure pressure of the full bottle (Pa)
     * @param temperature temperature of the full bottle (K)
     * @param heatedTo temperature behind the heat exchanger (K); empty without one
     * @param demands tanks to fill
     * @return the bottle that does
     * @throws LimitReached if the bottle pressure is too low to serve the tanks
     */
    public static PressurantBottle of(
            Fluid gas, double fullPressure, double temperature, OptionalDouble heatedTo, List<Demand> demands) {
        double end =
                SPENT * demands.stream().mapToDouble(Demand::pressure).max().orElse(0);
        if (!(end < 0.9 * fullPressure)) {
            throw new LimitReached(
                    "pressurization.bottle_pressure",
                    String.format(
                            Locale.ROOT,
                            "a bottle of %.4g MPa is spent at %.4g MPa, 1.5 times the tank pressure; raise"
                                    + " pressurization.bottle_pressure or lower the tank pressure",
                            fullPressure / 1e6,
                            end / 1e6));
        }
        FluidState full = gas.atPressureTemperature(fullPressure, temperature);
        FluidState spent = gas.atPressureEntropy(end, full.entropy());
        double left = spent.density() / full.density();
        double delivered = (internalEnergy(full) - left * internalEnergy(spent)) / (1 - left);
        double used = 0;
        double heat = 0;
        double warmth = 0;
        for (Demand demand : demands) {
            FluidState entering = heatedTo.isPresent()
                    ? gas.atPressureTemperature(demand.pressure(), heatedTo.getAsDouble())
                    : gas.atPressureEnthalpy(demand.pressure(), delivered);
            double mass = demand.collapseFactor() * entering.density() * demand.volume();
            used += mass;
            heat += heatedTo.isPresent() ? mass * (entering.enthalpy() - delivered) : 0;
            warmth += mass * entering.temperature();
        }
        double loaded = used / (1 - left);
        double volume = loaded / full.density();
        return new PressurantBottle(
                loaded,
                used,
                volume,
                Bottle.shellMass(fullPressure, volume),
                end,
                spent.temperature(),
                warmth / used,
                heat);
    }

    private static double internalEnergy(FluidState state) {
        return state.enthalpy() - state.pressure() / state.density();
    }

    /** @return gas and bottle together (kg) */
    public double mass() {
        return loaded + bottleMass;
    }
}

package dev.penstock.turbomachinery.start;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * A bottle of real gas.
 * <pre>
 * withdrawal: what stays behind expands at constant entropy, ρ = ρ1 - m/V
 * re-warming: back to the first temperature at constant density
 * </pre>
 *
 * @param gas what is in it
 * @param volume V (m³)
 * @param state state of the gas
 */
public record Bottle(Fluid gas, double volume, FluidState state) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.bottle-blowdown",
            "Blowdown of a gas bottle with real-gas properties",
            "s = const, ρ2 = ρ1 - m/V during withdrawal; T back to the first temperature at constant ρ between withdrawals",
            "withdrawals too short for heat from the wall",
            "conservative: wall heat leaves 5 to 15 % more gas usable",
            List.of("common practice, no source"));

    /** Working pressure times volume over mass of a wound carbon-fibre bottle (J/kg): from memory. */
    public static final double SHELL_PERFORMANCE = 2.2e5;

    private static final int NEWTON_STEPS = 8;
    private static final double TOLERANCE = 1e-8;

    public Bottle {
        Require.positive("bottle", "volume (m³)", volume);
    }

    /**
     * @param pressure pressure of the full bottle (Pa)
     * @param volume volume (m³)
     * @return mass of the empty bottle (kg), whatever the gas: a vessel is sized by p V
     */
    public static double shellMass(double pressure, double volume) {
        return pressure * volume / SHELL_PERFORMANCE;
    }

    /** @return mass of the gas in it (kg) */
    public double mass() {
        return volume * state.density();
    }

    /**
     * @param withdrawn mass taken out quickly (kg), less than is inside
     * @return the bottle afterwards
     * @throws dev.penstock.errors.NotConverged if the density cannot be met
     */
    public Bottle without(double withdrawn) {
        Require.within("bottle", "mass taken out (kg)", withdrawn, 0, 0.999 * mass());
        double target = state.density() - withdrawn / volume;
        if (withdrawn == 0) {
            return this;
        }
        // a perfect gas of the local exponent, then Newton on ln p: d ln ρ = p/(ρ c²) d ln p
        FluidState now = state;
        double exponent = 0;
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double missing = Math.log(target / now.density());
            if (Math.abs(missing) < TOLERANCE) {
                return new Bottle(gas, volume, now);
            }
            exponent += missing * now.density() * now.soundSpeed() * now.soundSpeed() / now.pressure();
            if (!(exponent < 0 && exponent > steepest(target))) {
                break;
            }
            now = expanded(exponent);
        }
        // liquid appears: its speed of sound says nothing about the mixture
        return new Bottle(
                gas,
                volume,
                expanded(RootFinder.between(
                                "blowdown of the bottle of " + gas.name(),
                                x -> Math.log(expanded(x).density() / target),
                                steepest(target),
                                0,
                                TOLERANCE)
                        .value()));
    }

    /** Pressure falls with at most the third power of density: 1.67 for a perfect monatomic gas, 2.5 for dense nitrogen. */
    private double steepest(double targetDensity) {
        return 3 * Math.log(targetDensity / state.density());
    }

    private FluidState expanded(double logPressureRatio) {
        return gas.atPressureEntropy(state.pressure() * Math.exp(logPressureRatio), state.entropy());
    }

    /**
     * @param temperature temperature to come back to (K)
     * @return the bottle after heat from outside has warmed (or cooled) it there
     */
    public Bottle at(double temperature) {
        double density = state.density();
        double guess = state.pressure() * temperature / state.temperature();
        double pressure = RootFinder.between(
                        "re-warming of the bottle of " + gas.name(),
                        p -> Math.log(gas.atPressureTemperature(p, temperature).density() / density),
                        0.5 * guess,
                        2 * guess,
                        1e-10)
                .value();
        return new Bottle(gas, volume, gas.atPressureTemperature(pressure, temperature));
    }
}

package dev.penstock.turbomachinery.feed;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.turbomachinery.start.Bottle;
import java.util.List;

/**
 * Gas closed into the ullage of a tank that expands as the propellant leaves. Density follows the volume exactly; the law
 * says what pressure goes with it.
 * <pre>
 * isothermal   T = T0,           p from ρ0/B and T0           walls and propellant keep it warm: long, pulsed lives
 * isentropic   s = s0,           p from ρ0/B and s0           no heat: one fast burn
 * polytropic   p = p0 B^-n,      T from p and ρ0/B            between the two, n as tested
 * </pre>
 * B is the volume over the volume at the start. Real-gas states [sutton-rpe for the use of the laws, from memory].
 *
 * @param gas the gas
 * @param start its state at the start; its pressure is the partial pressure of the gas
 * @param law how it expands
 * @param exponent n (-), used by the polytropic law alone
 */
public record UllageGas(Fluid gas, FluidState start, Law law, double exponent) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.ullage-expansion",
            "Expansion of the gas closed into a tank",
            "ρ = ρ0/B; T = T0, or s = s0, or p = p0 B^-n",
            "no gas added, none dissolved; B to 20",
            "the law: from isothermal to isentropic the pressure of helium differs by B^0.67",
            List.of("sutton-rpe"));

    private static final double LARGEST_RATIO = 20;

    /** How the gas expands. */
    public enum Law {
        ISOTHERMAL,
        POLYTROPIC,
        ISENTROPIC
    }

    public UllageGas {
        Require.within("ullage", "polytropic exponent (-)", exponent, 0.9, 2);
    }

    /**
     * @param volumeRatio B (-), 1 to 20
     * @return state of the gas there
     */
    public FluidState at(double volumeRatio) {
        Require.within("ullage", "volume ratio (-)", volumeRatio, 1, LARGEST_RATIO);
        if (volumeRatio == 1) {
            return start;
        }
        double density = start.density() / volumeRatio;
        return switch (law) {
            case ISOTHERMAL -> {
                double guess = start.pressure() / volumeRatio;
                double pressure = RootFinder.between(
                                "isothermal expansion of " + gas.name(),
                                p -> Math.log(gas.atPressureTemperature(p, start.temperature())
                                                .density()
                                        / density),
                                0.5 * guess,
                                1.5 * guess,
                                1e-11)
                        .value();
                yield gas.atPressureTemperature(pressure, start.temperature());
            }
            case ISENTROPIC ->
                new Bottle(gas, 1, start).without(start.density() - density).state();
            case POLYTROPIC -> {
                double pressure = start.pressure() * Math.pow(volumeRatio, -exponent);
                double guess = start.temperature() * Math.pow(volumeRatio, 1 - exponent);
                double temperature = RootFinder.between(
                                "polytropic expansion of " + gas.name(),
                                t -> Math.log(
                                        gas.atPressureTemperature(pressure, t).density() / density),
                                0.8 * guess,
                                1.25 * guess,
                                1e-11)
                        .value();
                yield gas.atPressureTemperature(pressure, temperature);
            }
        };
    }
}

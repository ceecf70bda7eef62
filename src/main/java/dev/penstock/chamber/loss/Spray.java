package dev.penstock.chamber.loss;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;

/**
 * A propellant as the spray of an injector, with what its drops' life depends on.
 *
 * @param share its share of all that is injected, by mass (-)
 * @param velocity injection velocity at the design point (m/s)
 * @param flowShare its flow over that of the design point (-)
 * @param reducedTemperature temperature over critical temperature as injected (-)
 * @param latentHeat heat of vaporisation (J/kg)
 * @param molarMass molar mass (kg/mol)
 * @param burning how many times as fast its drops burn as they would evaporate (-)
 */
record Spray(
        double share,
        double velocity,
        double flowShare,
        double reducedTemperature,
        double latentHeat,
        double molarMass,
        double burning) {

    private static final double DISCHARGE = 0.8;
    private static final double USUAL_REDUCED_TEMPERATURE = 0.5;
    private static final double USUAL_ACENTRIC_FACTOR = 0.3;
    private static final double USUAL_CRITICAL_TEMPERATURE = 600;
    private static final double HIGHEST = 0.98;

    /**
     * Of a propellant at its storage temperature: drops heat up on their way whatever the jacket has done, so the usual state is
     * near enough. Heat of vaporisation by Pitzer's corresponding states [poling-2001].
     *
     * @param propellant propellant
     * @param share its share of all that is injected, by mass (-)
     * @param pressureDrop drop of the injector at the design point (Pa)
     * @param flowShare its flow over that of the design point (-)
     * @return the spray
     */
    static Spray of(Propellant propellant, double share, double pressureDrop, double flowShare) {
        Fluid fluid = propellant.fluid();
        FluidState stored = propellant.storageState();
        double critical = fluid.criticalTemperature().orElse(USUAL_CRITICAL_TEMPERATURE);
        double reduced = fluid.criticalTemperature().isPresent()
                ? Math.min(HIGHEST, stored.temperature() / critical)
                : USUAL_REDUCED_TEMPERATURE;
        double omega = fluid.acentricFactor().isPresent()
                ? Math.max(0, Math.min(1, fluid.acentricFactor().getAsDouble()))
                : USUAL_ACENTRIC_FACTOR;
        double left = 1 - reduced;
        double latent = Constants.MOLAR_GAS_CONSTANT
                * critical
                / fluid.molarMass()
                * (7.08 * Math.pow(left, 0.354) + 10.95 * omega * Math.pow(left, 0.456));
        return new Spray(
                share,
                DISCHARGE * Math.sqrt(2 * pressureDrop / stored.density()),
                flowShare,
                reduced,
                latent,
                fluid.molarMass(),
                propellant.combustion().dropBurning());
    }

    /**
     * @param radius mass-median drop radius at the design point (m)
     * @param length effective length of the chamber (m)
     * @param pressure chamber pressure (Pa)
     * @return generalised length (m)
     */
    double generalisedLength(double radius, double length, double pressure) {
        double now = radius / Math.sqrt(flowShare);
        double speed = velocity * flowShare;
        return burning
                * length
                * Math.pow(pressure / 2.0684e6, 0.66)
                / (Math.pow(1 - reducedTemperature, 0.4)
                        * Math.pow(now / 76.2e-6, 1.45)
                        * Math.pow(speed / 30.48, 0.75)
                        * Math.pow(latentHeat / 325.6e3, 0.8)
                        * Math.pow(molarMass / 0.1, 0.35));
    }

    /** @return this spray at the design point */
    Spray atDesign() {
        return new Spray(share, velocity, 1, reducedTemperature, latentHeat, molarMass, burning);
    }
}

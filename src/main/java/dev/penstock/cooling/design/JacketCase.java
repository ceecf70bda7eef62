package dev.penstock.cooling.design;

import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import java.util.Objects;
import java.util.Optional;

/**
 * One question to the jacket solver.
 *
 * @param gas hot side
 * @param coolant coolant
 * @param inletPressure pressure in the inlet manifold (Pa)
 * @param inletEnthalpy coolant enthalpy in the inlet manifold, on the fluid model's own zero (J/kg)
 * @param massFlow coolant flow through the jacket (kg/s)
 * @param design jacket as designed
 * @param heatFluxFactor factor on the computed gas-side coefficient, for uncertainty studies (-); 1 is the model itself
 * @param otherFilm what a film along the wall is made of where that is not this jacket's own coolant
 * @param exhaust turbine gas led into the nozzle; empty if none is
 */
public record JacketCase(
        HotGasProfile gas,
        Propellant coolant,
        double inletPressure,
        double inletEnthalpy,
        double massFlow,
        JacketDesign design,
        double heatFluxFactor,
        Optional<FilmSource> otherFilm,
        Optional<ExhaustFilm> exhaust) {

    public JacketCase {
        Objects.requireNonNull(gas, "gas");
        Objects.requireNonNull(coolant, "coolant");
        Objects.requireNonNull(design, "design");
        Require.positive("jacket", "inlet pressure (Pa)", inletPressure);
        Require.finite("jacket", "inlet enthalpy (J/kg)", inletEnthalpy);
        Require.positive("jacket", "coolant flow (kg/s)", massFlow);
        Require.positive("jacket", "heat flux factor (-)", heatFluxFactor);
    }

    /** A case without turbine gas along the wall. */
    public JacketCase(
            HotGasProfile gas,
            Propellant coolant,
            double inletPressure,
            double inletEnthalpy,
            double massFlow,
            JacketDesign design,
            double heatFluxFactor,
            Optional<FilmSource> otherFilm) {
        this(gas, coolant, inletPressure, inletEnthalpy, massFlow, design, heatFluxFactor, otherFilm, Optional.empty());
    }

    /** A case whose film, if there is one, is made of its own coolant. */
    public JacketCase(
            HotGasProfile gas,
            Propellant coolant,
            double inletPressure,
            double inletEnthalpy,
            double massFlow,
            JacketDesign design,
            double heatFluxFactor) {
        this(gas, coolant, inletPressure, inletEnthalpy, massFlow, design, heatFluxFactor, Optional.empty());
    }

    /** @return what a film along the wall is made of */
    public FilmSource film() {
        return otherFilm.orElseGet(() -> new FilmSource(coolant, inletEnthalpy));
    }

    /** @return radius of the gas-side wall where the jacket is narrowest (m) */
    public double narrowestRadius() {
        return gas.throatRadius() * Math.sqrt(design.route().startAreaRatio().orElse(1));
    }

    /**
     * @param source what a film along the wall is made of
     * @return the same case with that film
     */
    public JacketCase withFilmOf(FilmSource source) {
        return new JacketCase(
                gas,
                coolant,
                inletPressure,
                inletEnthalpy,
                massFlow,
                design,
                heatFluxFactor,
                Optional.of(source),
                exhaust);
    }

    /**
     * @param newDesign another design
     * @return the same case with that design
     */
    public JacketCase withDesign(JacketDesign newDesign) {
        return new JacketCase(
                gas, coolant, inletPressure, inletEnthalpy, massFlow, newDesign, heatFluxFactor, otherFilm, exhaust);
    }

    /**
     * @param pressure pressure in the inlet manifold (Pa)
     * @param enthalpy coolant enthalpy in the inlet manifold (J/kg)
     * @param flow coolant flow (kg/s)
     * @return the same case with another coolant inlet
     */
    public JacketCase withInlet(double pressure, double enthalpy, double flow) {
        return new JacketCase(gas, coolant, pressure, enthalpy, flow, design, heatFluxFactor, otherFilm, exhaust);
    }
}

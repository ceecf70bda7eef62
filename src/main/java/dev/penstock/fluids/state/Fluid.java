package dev.penstock.fluids.state;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.store.FluidStore;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pure fluid or fixed mixture with consistent thermodynamic and transport properties. Implementations are safe to
 * share between threads; a {@link FluidCursor} is not. Every method throws
 * {@link dev.penstock.errors.PropertyFailure} when no state exists or the inputs leave the range of the model.
 *
 * <p>Two fluids are equal if they were made of the same data, and then give the same answers to the last bit: what is kept
 * of a fluid for later is kept by the fluid, not by its id. No answer depends on what was asked before.
 */
public interface Fluid {

    /** @return id, as in {@code fluids/<id>.toml} */
    String id();

    /** @return name for people */
    String name();

    /** @return molar mass (kg/mol) */
    double molarMass();

    /** @return the model behind its states */
    ModelCard model();

    /** @return range in which the model holds */
    FluidRange range();

    /** @return critical temperature (K) if the model has one */
    OptionalDouble criticalTemperature();

    /** @return critical pressure (Pa) if the model has one */
    OptionalDouble criticalPressure();

    /**
     * Pitzer's acentric factor, by its definition ω = −1 − log₁₀(pᵥ(0.7 T_c)/p_c) [poling-2001].
     *
     * @return acentric factor (-); empty if the model has no critical point or no vapour pressure there
     */
    default OptionalDouble acentricFactor() {
        if (criticalTemperature().isEmpty() || criticalPressure().isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double pressure = vapourPressure(0.7 * criticalTemperature().getAsDouble());
            return OptionalDouble.of(-Math.log10(pressure / criticalPressure().getAsDouble()) - 1);
        } catch (OutsideValidity | PropertyFailure e) {
            return OptionalDouble.empty();
        }
    }

    /**
     * @param pressure absolute pressure (Pa)
     * @param temperature temperature (K)
     * @return the single-phase state there
     */
    FluidState atPressureTemperature(double pressure, double temperature);

    /**
     * @param pressure absolute pressure (Pa)
     * @param enthalpy specific enthalpy (J/kg)
     * @return the state there, two-phase ones included where the model has them
     */
    FluidState atPressureEnthalpy(double pressure, double enthalpy);

    /**
     * The same, sought from a state that is known.
     *
     * @param pressure absolute pressure (Pa)
     * @param enthalpy specific enthalpy (J/kg)
     * @param known states of this fluid found lately; the one found is added
     * @return the state there, the same as without them to 1e-10
     */
    default FluidState atPressureEnthalpy(double pressure, double enthalpy, KnownStates known) {
        return atPressureEnthalpy(pressure, enthalpy);
    }

    /**
     * @param pressure absolute pressure (Pa)
     * @param entropy specific entropy (J/(kg·K))
     * @return the state there, two-phase ones included where the model has them
     */
    FluidState atPressureEntropy(double pressure, double entropy);

    /**
     * What an expansion asks of the state at a pressure and enthalpy, sought from a state that is known.
     *
     * @param pressure absolute pressure (Pa)
     * @param enthalpy specific enthalpy (J/kg)
     * @param known states of this fluid found lately; the one found is added
     * @return the state there, the same as without them to 1e-10
     */
    default ExpansionState expansionAtPressureEnthalpy(double pressure, double enthalpy, KnownStates known) {
        return ExpansionState.of(atPressureEnthalpy(pressure, enthalpy, known));
    }

    /**
     * What an expansion asks of the state at a pressure and entropy, sought from a state that is known.
     *
     * @param pressure absolute pressure (Pa)
     * @param entropy specific entropy (J/(kg·K))
     * @param known states of this fluid found lately; the one found is added
     * @return the state there, the same as without them to 1e-10
     */
    default ExpansionState expansionAtPressureEntropy(double pressure, double entropy, KnownStates known) {
        return ExpansionState.of(atPressureEntropy(pressure, entropy));
    }

    /**
     * What {@link #atPressureEntropy} gives, without its other properties, whose making takes longer than the search.
     *
     * @param pressure absolute pressure (Pa)
     * @param entropy specific entropy (J/(kg·K))
     * @return specific enthalpy there (J/kg)
     */
    default double enthalpyAtPressureEntropy(double pressure, double entropy) {
        return atPressureEntropy(pressure, entropy).enthalpy();
    }

    /**
     * The same, sought from a state that is known.
     *
     * @param pressure absolute pressure (Pa)
     * @param entropy specific entropy (J/(kg·K))
     * @param known states of this fluid found lately; the one found is added
     * @return specific enthalpy there (J/kg), the same as without them to 1e-10
     */
    default double enthalpyAtPressureEntropy(double pressure, double entropy, KnownStates known) {
        return enthalpyAtPressureEntropy(pressure, entropy);
    }

    /**
     * @param temperature temperature (K)
     * @return saturated liquid
     */
    FluidState saturatedLiquid(double temperature);

    /**
     * @param temperature temperature (K)
     * @return vapour pressure (Pa)
     */
    double vapourPressure(double temperature);

    /**
     * The boiling line at many pressures, as a table needs it.
     *
     * @param pressures pressures below the critical one (Pa)
     * @return both ends of the line; empty if the model has no vapour
     */
    default Optional<SaturationSamples> saturation(double[] pressures) {
        return Optional.empty();
    }

    /**
     * @param state a state of this fluid
     * @return what a reader must know of it: properties extrapolated beyond their data
     */
    default List<Warning> warnings(FluidState state) {
        return List.of();
    }

    /** @return where numbers worked out of this fluid at length are kept between runs */
    default FluidStore store() {
        return FluidStore.NONE;
    }

    /** @return a new cursor for hot loops; the caller closes it, on the thread that made it */
    FluidCursor cursor();
}

package dev.penstock.fluids.state;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.numerics.Cancellation;

/**
 * A movable state for hot loops: set it, read what is needed; nothing is allocated. Belongs to the thread that made it.
 * Between the phases heat capacity, speed of sound, viscosity and conductivity are those of the saturated liquid.
 * Getters before the first {@code set} or after a failed one are undefined. {@code set} methods throw
 * {@link dev.penstock.errors.PropertyFailure}.
 */
public interface FluidCursor extends AutoCloseable {

    /**
     * @param pressure absolute pressure (Pa)
     * @param temperature temperature (K)
     */
    void setPressureTemperature(double pressure, double temperature);

    /**
     * @param pressure absolute pressure (Pa)
     * @param enthalpy specific enthalpy (J/kg)
     */
    void setPressureEnthalpy(double pressure, double enthalpy);

    /**
     * @param pressure absolute pressure (Pa)
     * @param entropy specific entropy (J/(kg·K))
     */
    void setPressureEntropy(double pressure, double entropy);

    /** @return absolute pressure (Pa) */
    double pressure();

    /** @return temperature (K) */
    double temperature();

    /** @return density (kg/m³) */
    double density();

    /** @return specific enthalpy (J/kg) */
    double enthalpy();

    /** @return specific entropy (J/(kg·K)) */
    double entropy();

    /** @return specific heat at constant pressure (J/(kg·K)) */
    double isobaricHeatCapacity();

    /** @return speed of sound (m/s) */
    double soundSpeed();

    /** @return dynamic viscosity (Pa·s) */
    double viscosity();

    /** @return thermal conductivity (W/(m·K)) */
    double conductivity();

    /** @return phase */
    default Phase phase() {
        return snapshot().phase();
    }

    /** @return effort of the states set so far, in times that a table takes for one: counted, not timed; 0 where only a table answered */
    default long effort() {
        return 0;
    }

    /**
     * Many states of one phase at once, for tables; moves the cursor anywhere. Neighbours in the list should lie near each
     * other, which shortens the search. Throws nothing for a state that the model does not have, or that is not found quickly:
     * it is not held.
     *
     * @param pressures absolute pressures (Pa)
     * @param enthalpies specific enthalpies (J/kg), as many
     * @param densities guesses of the densities (kg/m³), as many; NaN where there is none
     * @param temperatures guesses of the temperatures (K), as many; NaN where there is none
     * @return the states
     */
    default FluidSamples sample(double[] pressures, double[] enthalpies, double[] densities, double[] temperatures) {
        FluidSamples samples = new FluidSamples(pressures.length);
        for (int i = 0; i < pressures.length; i++) {
            Cancellation.check();
            try {
                setPressureEnthalpy(pressures[i], enthalpies[i]);
                if (phase() != Phase.TWO_PHASE) {
                    samples.take(i, this);
                }
            } catch (PropertyFailure e) {
                continue; // not held
            }
        }
        return samples;
    }

    /** @return the state as an immutable record */
    FluidState snapshot();

    @Override
    void close();
}

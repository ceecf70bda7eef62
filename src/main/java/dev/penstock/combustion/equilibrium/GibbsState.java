package dev.penstock.combustion.equilibrium;

import dev.penstock.quantities.Constants;
import java.util.Arrays;

/**
 * State of a mixture on its way to equilibrium, per kilogram: amounts, element potentials, temperature and pressure.
 * {@link GibbsNewton} moves it. Not thread-safe.
 */
final class GibbsState {

    private static final double R = Constants.MOLAR_GAS_CONSTANT;

    final ActiveSpecies species;
    final int elements;
    final int gas;
    final int condensed;

    /** Moles of atoms of each element (mol/kg). */
    final double[] b;
    /** Chemical potential of a mole of atoms of each element over RT (-). */
    final double[] potentials;
    /** ln of the moles of each gas species. */
    final double[] logMoles;
    /** Moles of each gas species (mol/kg). */
    final double[] moles;
    /** Moles of each condensed species (mol/kg), zero where it is not active. */
    final double[] condensedMoles;
    /** By how much of RT per mole the gas stays above saturation with each condensed species; usually zero. */
    final double[] supersaturation;
    /** The active condensed species, in the first activeCount places. */
    final int[] active;

    private final boolean[] isActive;
    private int activeCount;

    double logGas;
    /** Moles of all gas (mol/kg). */
    double gasMoles;

    double temperature;
    double pressure;

    GibbsState(ActiveSpecies species) {
        this.species = species;
        elements = species.elementCount;
        gas = species.gasCount;
        condensed = species.condensedCount;
        b = new double[elements];
        potentials = new double[elements];
        logMoles = new double[gas];
        moles = new double[gas];
        condensedMoles = new double[condensed];
        supersaturation = new double[condensed];
        active = new int[condensed];
        isActive = new boolean[condensed];
    }

    /**
     * Forgets the last solution and takes likely products.
     *
     * @param startTemperature temperature to start from (K)
     */
    void start(double startTemperature) {
        double[] amounts = species.start.amounts(b);
        double sum = 0;
        for (int j = 0; j < gas; j++) {
            logMoles[j] = Math.log(amounts[j]);
            sum += amounts[j];
        }
        gasMoles = sum;
        logGas = Math.log(sum);
        Arrays.fill(potentials, 0);
        Arrays.fill(supersaturation, 0);
        for (int c = 0; c < condensed; c++) {
            setActive(c, false);
        }
        temperature = startTemperature;
    }

    /**
     * Forgets the last solution and takes likely products at the temperature where they have an enthalpy.
     *
     * @param enthalpy enthalpy (J/kg)
     */
    void startFromEnthalpy(double enthalpy) {
        start(0);
        temperature = species.start.temperature(enthalpy / R);
    }

    boolean isActive(int c) {
        return isActive[c];
    }

    int activeCount() {
        return activeCount;
    }

    /** Puts a condensed species in, with nothing of it yet, or takes it out. */
    void setActive(int c, boolean value) {
        if (isActive[c] == value) {
            return;
        }
        isActive[c] = value;
        condensedMoles[c] = 0;
        activeCount = 0;
        for (int i = 0; i < condensed; i++) {
            if (isActive[i]) {
                active[activeCount++] = i;
            }
        }
    }

    boolean anySupersaturation() {
        for (double each : supersaturation) {
            if (each != 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * @param c a condensed species
     * @return by how much of RT per mole the gas is above saturation with it; below zero it does not form
     */
    double affinity(int c) {
        int j = gas + c;
        double affinity = species.thermo.s[j] - species.thermo.h[j];
        for (int k = 0; k < elements; k++) {
            affinity += species.atoms[k][j] * potentials[k];
        }
        return affinity;
    }

    /** @return volume over RT/p (mol/kg): the moles of gas, and what they take up beyond ideal ones */
    double volume() {
        return species.thermo.volume(gasMoles, moles, gas);
    }

    /** @return enthalpy (J/kg) */
    double enthalpy() {
        return sum(species.thermo.h) * R * temperature;
    }

    /** @return entropy (J/(kg·K)) */
    double entropy() {
        double offset = Math.log(pressure / Constants.STANDARD_STATE_PRESSURE) - logGas;
        double mixing = 0;
        for (int j = 0; j < gas; j++) {
            mixing += moles[j] * (logMoles[j] + offset);
        }
        return (sum(species.thermo.s) - mixing) * R;
    }

    /** @return cp with frozen composition (J/(kg·K)) */
    double frozenHeatCapacity() {
        return sum(species.thermo.cp) * R;
    }

    private double sum(double[] property) {
        double sum = 0;
        for (int j = 0; j < gas; j++) {
            sum += moles[j] * property[j];
        }
        for (int c = 0; c < condensed; c++) {
            sum += condensedMoles[c] * property[gas + c];
        }
        return sum;
    }
}

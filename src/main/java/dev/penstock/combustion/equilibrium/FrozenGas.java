package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.gas.FrozenTransport;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.combustion.species.Species;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.combustion.species.ThermoTable;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.quantities.Constants;
import java.util.Locale;

/**
 * Gas whose composition no longer changes, condensed species carried along at the gas's temperature. Ideal gas, or one that takes up
 * room where its species set does; volume of condensed species left out. Data end as in {@link EquilibriumSolver}. Not thread-safe.
 */
public final class FrozenGas implements GasCursor {

    private static final double R = Constants.MOLAR_GAS_CONSTANT;
    private static final double LOWEST_TEMPERATURE = 50;
    private static final double HIGHEST_TEMPERATURE = 8000;
    private static final int MOST_STEPS = 60;
    private static final double TOLERANCE = 1e-13;

    private final SpeciesSet set;
    private final double[] moles;
    private final ThermoTable thermo;
    private final double gasMoles;
    private final double mixingEntropy;
    private double pressure;
    private double temperature = 1000;

    /**
     * @param set species
     * @param molesPerKilogram moles of each species of the set in a kilogram of mixture (mol/kg)
     */
    public FrozenGas(SpeciesSet set, double[] molesPerKilogram) {
        this.set = set;
        this.moles = molesPerKilogram.clone();
        this.thermo = set.thermo();
        double sum = 0;
        for (int j = 0; j < set.gasCount(); j++) {
            Species one = set.species().get(j);
            sum += Require.notNegative("frozen gas", () -> "moles of " + one.name(), moles[j]);
        }
        gasMoles = Require.positive("frozen gas", "moles of gas (mol/kg)", sum);
        double mixing = 0;
        for (int j = 0; j < set.gasCount(); j++) {
            mixing -= moles[j] > 0 ? moles[j] * Math.log(moles[j] / sum) : 0;
        }
        mixingEntropy = mixing;
    }

    /** @return the species of the mixture */
    public SpeciesSet speciesSet() {
        return set;
    }

    /**
     * @param species name of a species
     * @return moles of it per mole of gas, condensed species left out (-)
     */
    public double moleFraction(String species) {
        int index = set.indexOf(species);
        return index >= 0 && index < set.gasCount() ? moles[index] / gasMoles : 0;
    }

    /**
     * @param species index in the species set
     * @return its amount (mol/kg)
     */
    public double moles(int species) {
        return moles[species];
    }

    /**
     * @param newPressure absolute pressure (Pa)
     * @param newTemperature temperature (K)
     */
    public void setPressureTemperature(double newPressure, double newTemperature) {
        pressure = Require.within("frozen gas", "pressure (Pa)", newPressure, 1e-3, 1e9);
        temperature = Require.within(
                "frozen gas", "temperature (K)", newTemperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE);
        thermo.evaluate(temperature, pressure);
    }

    /**
     * @param newPressure absolute pressure (Pa)
     * @param enthalpy specific enthalpy relative to the elements at 298.15 K (J/kg)
     */
    public void setPressureEnthalpy(double newPressure, double enthalpy) {
        Require.finite("frozen gas", "enthalpy (J/kg)", enthalpy);
        pressure = Require.within("frozen gas", "pressure (Pa)", newPressure, 1e-3, 1e9);
        newton(true, enthalpy);
    }

    @Override
    public void setPressureEntropy(double newPressure, double entropy) {
        Require.finite("frozen gas", "entropy (J/(kg·K))", entropy);
        pressure = Require.within("frozen gas", "pressure (Pa)", newPressure, 1e-3, 1e9);
        newton(false, entropy);
    }

    /** cp is positive throughout, so both functions rise and Newton in ln T, with its step bounded, cannot cycle far. */
    private void newton(boolean enthalpyGiven, double target) {
        for (int iterations = 1; iterations <= MOST_STEPS; iterations++) {
            thermo.evaluate(temperature, pressure);
            double step = enthalpyGiven
                    ? (target - enthalpy()) / (frozenHeatCapacity() * temperature)
                    : (target - entropy()) / frozenHeatCapacity();
            temperature *= Math.exp(Math.max(-0.5, Math.min(0.5, step)));
            if (!(temperature >= LOWEST_TEMPERATURE && temperature <= HIGHEST_TEMPERATURE)) {
                double reached = temperature;
                temperature = 1000;
                throw new OutsideValidity(
                        String.format(
                                Locale.ROOT,
                                "frozen gas at %.6g Pa and %.6g %s",
                                pressure,
                                target,
                                enthalpyGiven ? "J/kg" : "J/(kg·K)"),
                        "temperature (K)",
                        reached,
                        "50 K to 8000 K");
            }
            if (Math.abs(step) < TOLERANCE || iterations > 8 && Math.abs(step) < 1e-11) {
                thermo.evaluate(temperature, pressure);
                return;
            }
        }
        throw new NotConverged(
                "temperature of frozen gas", MOST_STEPS, Double.POSITIVE_INFINITY, "last at " + temperature + " K");
    }

    @Override
    public double pressure() {
        return pressure;
    }

    @Override
    public double temperature() {
        return temperature;
    }

    @Override
    public double density() {
        return pressure / (volume() * R * temperature);
    }

    @Override
    public double enthalpy() {
        return sum(thermo.h) * R * temperature;
    }

    @Override
    public double entropy() {
        double mixed = mixingEntropy - gasMoles * Math.log(pressure / Constants.STANDARD_STATE_PRESSURE);
        return (mixed + sum(thermo.s)) * R;
    }

    @Override
    public double molarMass() {
        return 1 / gasMoles;
    }

    @Override
    public double frozenHeatCapacity() {
        return sum(thermo.cp) * R;
    }

    @Override
    public double isentropicExponent() {
        return heatCapacityRatio() * volume() / gasMoles;
    }

    @Override
    public double soundSpeed() {
        return Math.sqrt(isentropicExponent() * volume() * R * temperature);
    }

    private double volume() {
        return thermo.volume(gasMoles, moles, set.gasCount());
    }

    /** cp/cv, with cp − cv = R (p dv/dT/R)²/n. */
    private double heatCapacityRatio() {
        double cp = frozenHeatCapacity();
        double expansion = volume();
        for (int j = 0; j < set.gasCount() && thermo.dense(); j++) {
            expansion -= moles[j] * thermo.crowdingHeat(j);
        }
        return cp / (cp - R * expansion * expansion / gasMoles);
    }

    private double sum(double[] property) {
        double sum = 0;
        for (int j = 0; j < moles.length; j++) {
            sum += moles[j] * property[j];
        }
        return sum;
    }

    @Override
    public FrozenTransport frozenTransport() {
        return new GasSnapshot(set).transport(this);
    }

    @Override
    public double condensedMassFraction() {
        return GasSnapshot.condensedMassFraction(set, moles);
    }
}

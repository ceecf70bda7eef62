package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.gas.Departure;
import dev.penstock.combustion.gas.SoaveGas;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Burnt or decomposed gas of fixed composition as a real gas: an ideal gas, that of {@link FrozenGas} or one from a table, and the
 * departure of {@link SoaveGas}. gamma is −(∂ln p/∂ln v)_s = ρ a²/p. Safe to share between threads.
 */
public final class DenseWorkingFluid implements WorkingFluid {

    private static final int MOST_STEPS = 60;
    private static final double TOLERANCE = 1e-13;
    private static final double UNKNOWN = 0.02;
    private static final double DENSE = 10e6;

    private final WorkingFluid ideal;
    private final SoaveGas real;
    private final ModelCard model;
    private final double gasMoles;

    /**
     * @param gas the gas; moved by every question put to this fluid, and by nothing else from now on
     * @param description what it is, for reports
     */
    public DenseWorkingFluid(FrozenGas gas, String description) {
        this(gas, description, SoaveGas.CARD);
    }

    /**
     * @param gas the gas
     * @param description what it is, for reports
     * @param model the model that its composition comes from, if that says more than the equation of state
     */
    public DenseWorkingFluid(FrozenGas gas, String description, ModelCard model) {
        this(new FrozenWorkingFluid(gas, description), gas.molarMass(), departures(gas), model);
    }

    /**
     * @param ideal the gas as an ideal one
     * @param molarMass its molar mass (kg/mol)
     * @param real its departure from that
     * @param model the model that its composition comes from
     */
    public DenseWorkingFluid(WorkingFluid ideal, double molarMass, SoaveGas real, ModelCard model) {
        this.model = model;
        this.ideal = ideal;
        this.real = real;
        this.gasMoles = 1 / molarMass;
    }

    private static SoaveGas departures(FrozenGas gas) {
        int count = gas.speciesSet().gasCount();
        double[] moles = new double[count];
        for (int j = 0; j < count; j++) {
            moles[j] = gas.moles(j);
        }
        return new SoaveGas(gas.speciesSet().species().subList(0, count), moles);
    }

    @Override
    public String description() {
        return ideal.description() + ", real gas";
    }

    @Override
    public ModelCard model() {
        return model;
    }

    /**
     * @param pressure pressure of the burner (Pa)
     * @return a warning if much of the gas has no critical point and counts as ideal
     */
    public Optional<Warning> warning(double pressure) {
        if (pressure < DENSE || real.unknownShare() < UNKNOWN) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                SoaveGas.CARD.id(),
                String.format(
                        Locale.ROOT,
                        "%.0f %% of the gas has no critical point in its file and counts as ideal",
                        100 * real.unknownShare())));
    }

    /**
     * A gas of unknown or moving composition stays ideal; above some 10 MPa that is felt.
     *
     * @param pressure pressure of the burner (Pa)
     * @return a warning that says how far it is felt
     */
    static List<Warning> takenAsIdeal(double pressure) {
        if (pressure < DENSE) {
            return List.of();
        }
        return List.of(new Warning(
                SoaveGas.CARD.id(),
                String.format(
                        Locale.ROOT,
                        "burner gas at %.3g MPa is taken as an ideal gas; a real one works %.0f to %.0f %% more over the same"
                                + " pressure ratio",
                        pressure / 1e6,
                        pressure / 1e7,
                        2.5 * pressure / 1e7)));
    }

    @Override
    public OptionalDouble moleFraction(String species, double pressure, double temperature) {
        return ideal.moleFraction(species, pressure, temperature);
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        WorkingState gas = ideal.atPressureTemperature(pressure, temperature);
        Departure d = real.at(pressure, temperature);
        double n = gasMoles;
        double perMole = n * Constants.MOLAR_GAS_CONSTANT;
        double volume = d.compressibility() * Constants.MOLAR_GAS_CONSTANT * temperature / pressure;
        double isochoric = gas.isobaricHeatCapacity() - perMole + n * d.isochoricHeatCapacity();
        double isobaric = isochoric + n * temperature * d.thermalPressure() * d.thermalPressure() / d.stiffness();
        double gamma = volume / pressure * isobaric / isochoric * d.stiffness();
        double density = 1 / (n * volume);
        return new WorkingState(
                pressure,
                temperature,
                density,
                gas.enthalpy() + n * d.enthalpy(),
                gas.entropy() + n * d.entropy(),
                isobaric,
                gamma,
                Math.sqrt(gamma * pressure / density));
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        return search(ideal.atPressureEnthalpy(pressure, enthalpy), enthalpy, true);
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        return search(ideal.atPressureEntropy(pressure, entropy), entropy, false);
    }

    /** Newton in ln T from the ideal gas; cp is positive, so both functions rise. */
    private WorkingState search(WorkingState first, double target, boolean enthalpyGiven) {
        double temperature = first.temperature();
        for (int i = 0; i < MOST_STEPS; i++) {
            WorkingState state = atPressureTemperature(first.pressure(), temperature);
            double step = enthalpyGiven
                    ? (target - state.enthalpy()) / (state.isobaricHeatCapacity() * temperature)
                    : (target - state.entropy()) / state.isobaricHeatCapacity();
            if (Math.abs(step) < TOLERANCE || i > 8 && Math.abs(step) < 1e-11) {
                return state;
            }
            temperature *= Math.exp(Math.max(-0.3, Math.min(0.3, step)));
        }
        throw new NotConverged(
                "temperature of dense gas", MOST_STEPS, Double.POSITIVE_INFINITY, "last at " + temperature + " K");
    }
}

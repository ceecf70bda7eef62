package dev.penstock.combustion;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;

/**
 * A perfect gas with measured heat capacity and exponent, for gas that no equilibrium describes. The zero of enthalpy is
 * placed so that the gas at its inlet temperature has the enthalpy of the reactants, which keeps energy audits closed.
 * Entropy counts from the inlet temperature and 1 bar. Immutable.
 * <pre>
 * h = h_in + cp (T - T_in);  s = cp ln(T/T_in) - R ln(p/p°);  R = cp (γ - 1)/γ
 * </pre>
 */
public final class EmpiricalWorkingFluid implements WorkingFluid {

    private static final String MODEL = "empirical gas";

    private final String description;
    private final double heatCapacity;
    private final double gamma;
    private final double gasConstant;
    private final double inletTemperature;
    private final double inletEnthalpy;

    /**
     * @param description what it is, for reports
     * @param heatCapacity cp (J/(kg·K))
     * @param gamma ratio of specific heats (-)
     * @param inletTemperature temperature of the gas as generated (K)
     * @param inletEnthalpy enthalpy of the reactants relative to the elements (J/kg)
     */
    public EmpiricalWorkingFluid(
            String description, double heatCapacity, double gamma, double inletTemperature, double inletEnthalpy) {
        this.description = description;
        this.heatCapacity = Require.positive(MODEL, "cp (J/(kg·K))", heatCapacity);
        this.gamma = Require.within(MODEL, "gamma (-)", gamma, 1.0001, 1.67);
        this.gasConstant = heatCapacity * (gamma - 1) / gamma;
        this.inletTemperature = Require.positive(MODEL, "inlet temperature (K)", inletTemperature);
        this.inletEnthalpy = Require.finite(MODEL, "inlet enthalpy (J/kg)", inletEnthalpy);
    }

    /** @return molar mass that cp and gamma imply (kg/mol) */
    public double molarMass() {
        return Constants.MOLAR_GAS_CONSTANT / gasConstant;
    }

    /** @return temperature of the gas as generated (K) */
    public double inletTemperature() {
        return inletTemperature;
    }

    @Override
    public String description() {
        return description;
    }

    @Override
    public ModelCard model() {
        return MeasuredGeneratorGas.CARD;
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        Require.positive(MODEL, "pressure (Pa)", pressure);
        Require.positive(MODEL, "temperature (K)", temperature);
        return new WorkingState(
                pressure,
                temperature,
                pressure / (gasConstant * temperature),
                inletEnthalpy + heatCapacity * (temperature - inletTemperature),
                heatCapacity * Math.log(temperature / inletTemperature)
                        - gasConstant * Math.log(pressure / Constants.STANDARD_STATE_PRESSURE),
                heatCapacity,
                gamma,
                Math.sqrt(gamma * gasConstant * temperature));
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        double temperature = inletTemperature + (enthalpy - inletEnthalpy) / heatCapacity;
        if (!(temperature > 0)) {
            throw new OutsideValidity(MODEL, "enthalpy (J/kg)", enthalpy, "what a temperature above 0 K gives");
        }
        return atPressureTemperature(pressure, temperature);
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        Require.positive(MODEL, "pressure (Pa)", pressure);
        double logRatio =
                (entropy + gasConstant * Math.log(pressure / Constants.STANDARD_STATE_PRESSURE)) / heatCapacity;
        return atPressureTemperature(pressure, inletTemperature * Math.exp(logRatio));
    }
}

package dev.penstock.combustion.species;

import dev.penstock.errors.Require;

/**
 * One temperature interval of a seven-coefficient fit, in the form of [nasa-tm-4513].
 * <pre>
 * cp/R = a1 + a2 T + a3 T² + a4 T³ + a5 T⁴
 * h/RT = a1 + a2 T/2 + a3 T²/3 + a4 T³/4 + a5 T⁴/5 + a6/T
 * s/R  = a1 ln T + a2 T + a3 T²/2 + a4 T³/3 + a5 T⁴/4 + a7
 * </pre>
 *
 * @param low lowest temperature (K)
 * @param high highest temperature (K)
 * @param a1 constant of cp/R (-)
 * @param a2 (1/K)
 * @param a3 (1/K²)
 * @param a4 (1/K³)
 * @param a5 (1/K⁴)
 * @param a6 constant of integration of h/R (K)
 * @param a7 constant of integration of s/R (-)
 */
public record ThermoInterval(
        double low, double high, double a1, double a2, double a3, double a4, double a5, double a6, double a7) {

    public ThermoInterval {
        Require.within("thermodynamic fit", "lowest temperature (K)", low, 0, high);
        Require.finite("thermodynamic fit", "coefficients", a1 + a2 + a3 + a4 + a5 + a6 + a7);
    }

    /**
     * @param t temperature (K)
     * @return cp/R (-)
     */
    public double heatCapacity(double t) {
        return a1 + t * (a2 + t * (a3 + t * (a4 + t * a5)));
    }

    /**
     * @param t temperature (K)
     * @return h/(R T) (-), relative to the elements at 298.15 K
     */
    public double enthalpy(double t) {
        return a1 + t * (a2 / 2 + t * (a3 / 3 + t * (a4 / 4 + t * a5 / 5))) + a6 / t;
    }

    /**
     * @param t temperature (K)
     * @return s/R at 1 bar (-)
     */
    public double entropy(double t) {
        return a1 * Math.log(t) + t * (a2 + t * (a3 / 2 + t * (a4 / 3 + t * a5 / 4))) + a7;
    }

    /**
     * The same curve moved so that enthalpy and entropy join another interval without a step.
     *
     * @param other interval to join
     * @param t temperature of the joint (K)
     * @return this interval with a6 and a7 changed; the steps in the published fits are below 3e-6 in h/RT and s/R
     */
    ThermoInterval joinedTo(ThermoInterval other, double t) {
        double shiftH = t * (other.enthalpy(t) - enthalpy(t));
        double shiftS = other.entropy(t) - entropy(t);
        return new ThermoInterval(low, high, a1, a2, a3, a4, a5, a6 + shiftH, a7 + shiftS);
    }

    /**
     * Beyond the end of the fit: cp held at its value there, enthalpy and entropy continuous.
     *
     * @param end the end of the fit (K)
     * @param newLow lowest temperature (K)
     * @param newHigh highest temperature (K)
     * @return an interval of constant cp
     */
    ThermoInterval heldBeyond(double end, double newLow, double newHigh) {
        double cp = heatCapacity(end);
        return new ThermoInterval(newLow, newHigh, cp, 0, 0, 0, 0, 0, 0).joinedTo(this, end);
    }
}

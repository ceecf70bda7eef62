package dev.penstock.combustion;

import dev.penstock.provenance.ModelCard;
import java.util.OptionalDouble;

/**
 * Whatever drives a turbine: burnt gas in equilibrium or frozen, an empirical gas, or a heated real fluid. Enthalpies are
 * absolute (relative to the elements at 298.15 K), so that an energy audit can add them up.
 */
public interface WorkingFluid {

    /** @return what the gas is and how it is modelled, for reports */
    String description();

    /** @return the model that its states come from */
    ModelCard model();

    /**
     * @param pressure absolute pressure (Pa)
     * @param temperature temperature (K)
     * @return state there
     */
    WorkingState atPressureTemperature(double pressure, double temperature);

    /**
     * @param pressure absolute pressure (Pa)
     * @param enthalpy absolute specific enthalpy (J/kg)
     * @return state there
     */
    WorkingState atPressureEnthalpy(double pressure, double enthalpy);

    /**
     * @param pressure absolute pressure (Pa)
     * @param entropy specific entropy (J/(kg·K))
     * @return state there
     */
    WorkingState atPressureEntropy(double pressure, double entropy);

    /**
     * @param species name of a gas species, for example "O2"
     * @param pressure absolute pressure (Pa)
     * @param temperature temperature (K)
     * @return moles of it per mole of gas (-); empty if the composition is not known
     */
    default OptionalDouble moleFraction(String species, double pressure, double temperature) {
        return OptionalDouble.empty();
    }
}

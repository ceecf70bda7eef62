package dev.penstock.combustion;

import dev.penstock.errors.Warning;
import java.util.List;

/**
 * Gas made in a gas generator or preburner, as it enters a turbine.
 *
 * @param fluid how it behaves as it expands
 * @param inlet its state as generated
 * @param molarMass molar mass (kg/mol)
 * @param model the model that was used; never {@link GasModel#AUTOMATIC}
 * @param warnings what the reader must know
 */
public record TurbineGas(
        WorkingFluid fluid, WorkingState inlet, double molarMass, GasModel model, List<Warning> warnings) {

    public TurbineGas {
        warnings = List.copyOf(warnings);
    }
}

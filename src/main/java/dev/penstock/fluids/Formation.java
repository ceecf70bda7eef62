package dev.penstock.fluids;

import dev.penstock.fluids.property.Composition;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.quantities.Units;
import java.util.Optional;

/**
 * Enthalpy of formation and the state it belongs to, from the table {@code [formation]} of a fluid's file.
 *
 * @param enthalpy enthalpy relative to the elements at 298.15 K and 1 bar (J/kg)
 * @param temperature temperature of the state (K)
 * @param pressure pressure of the state (Pa)
 */
record Formation(double enthalpy, double temperature, double pressure) {

    static Formation read(InputTable table, Composition composition) {
        table.optionalText("source");
        table.optionalText("uncertainty");
        double temperature = table.quantity("temperature", Dimension.TEMPERATURE, Range.of(1, 3000));
        double pressure = table.quantity("pressure", Dimension.PRESSURE, Range.of(1, 1e8));
        String text = table.text("enthalpy");
        Optional<Double> perKilogram = Units.parse(text, Dimension.SPECIFIC_ENERGY)
                .or(() -> Units.parse(text, Dimension.MOLAR_ENERGY).map(molar -> molar / composition.formulaMass()));
        if (perKilogram.isEmpty() && !text.isEmpty()) {
            table.problem("enthalpy", '"' + text + '"', "write an energy such as \"-89.2 kJ/mol\" or \"1570 kJ/kg\"");
        }
        return new Formation(perKilogram.orElse(0.0), temperature, pressure);
    }
}

package dev.penstock.cycles.concept;

import dev.penstock.combustion.GasModel;
import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * A gas generator or preburner.
 *
 * @param temperature gas temperature (K); empty if the balance is to find it
 * @param injectorLoss injector loss over burner pressure (-)
 * @param gasModel how the gas is modelled
 */
public record BurnerDesign(OptionalDouble temperature, double injectorLoss, GasModel gasModel) {

    public BurnerDesign {
        temperature.ifPresent(t -> Require.within("burner", "temperature (K)", t, 200, 4000));
        Require.within("burner", "injector loss (-)", injectorLoss, 0, 1);
    }

    /**
     * @param kelvin gas temperature (K)
     * @return this burner run at that temperature
     */
    public BurnerDesign withTemperature(double kelvin) {
        return new BurnerDesign(OptionalDouble.of(kelvin), injectorLoss, gasModel);
    }
}

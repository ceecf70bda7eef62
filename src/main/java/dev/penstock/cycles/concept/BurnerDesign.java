package dev.penstock.cycles.concept;

import dev.penstock.combustion.GasModel;
import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * A gas generator or preburner. Where its gas is made as hot as the turbine behind it stands, that limit chooses the
 * temperature and is no margin.
 *
 * @param temperature gas temperature (K); empty if the balance is to find it
 * @param injectorLoss injector loss over burner pressure (-)
 * @param gasModel how the gas is modelled
 * @param asHotAsTurbine whether the temperature was chosen by what the turbine behind it stands
 */
public record BurnerDesign(OptionalDouble temperature, double injectorLoss, GasModel gasModel, boolean asHotAsTurbine) {

    public BurnerDesign {
        temperature.ifPresent(t -> Require.within("burner", "temperature (K)", t, 200, 4000));
        Require.within("burner", "injector loss (-)", injectorLoss, 0, 1);
    }

    /**
     * @param temperature stated gas temperature (K); empty if the balance is to find it
     * @param injectorLoss injector loss over burner pressure (-)
     * @param gasModel how the gas is modelled
     */
    public BurnerDesign(OptionalDouble temperature, double injectorLoss, GasModel gasModel) {
        this(temperature, injectorLoss, gasModel, false);
    }

    /**
     * @param kelvin gas temperature that the turbine behind it stands (K)
     * @return this burner run at that temperature
     */
    BurnerDesign asHotAs(double kelvin) {
        return new BurnerDesign(OptionalDouble.of(kelvin), injectorLoss, gasModel, true);
    }
}

package dev.penstock.cycles.concept;

import dev.penstock.combustion.GasModel;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A gas generator or preburner. Where its gas is made as hot as the turbine behind it stands, that limit chooses the
 * temperature and is no margin.
 *
 * @param temperature gas temperature (K); empty if the balance is to find it
 * @param injectorLoss injector loss over burner pressure (-)
 * @param gasModel how the gas is modelled
 * @param asHotAsTurbine whether the temperature was chosen by what the turbine behind it stands
 * @param diluent a third fluid injected to keep the gas cool, if any
 */
public record BurnerDesign(
        OptionalDouble temperature,
        double injectorLoss,
        GasModel gasModel,
        boolean asHotAsTurbine,
        Optional<Diluent> diluent) {

    /**
     * A third fluid that is injected beside the propellants, from a tank of its own.
     *
     * @param fluid what it is
     * @param share its share of the burner's gas (-)
     * @param tankPressure pressure in its tank (Pa)
     */
    public record Diluent(Propellant fluid, double share, double tankPressure) {

        public Diluent {
            Require.within("diluent", "share (-)", share, 1e-4, 0.9);
            Require.positive("diluent", "tank pressure (Pa)", tankPressure);
        }
    }

    public BurnerDesign {
        temperature.ifPresent(t -> Require.within("burner", "temperature (K)", t, 200, 4000));
        Require.within("burner", "injector loss (-)", injectorLoss, 0, 1);
    }

    /**
     * @param temperature stated gas temperature (K); empty if the balance is to find it
     * @param injectorLoss injector loss over burner pressure (-)
     * @param gasModel how the gas is modelled
     * @param diluent a third fluid injected to keep the gas cool, if any
     */
    public BurnerDesign(OptionalDouble temperature, double injectorLoss, GasModel gasModel, Optional<Diluent> diluent) {
        this(temperature, injectorLoss, gasModel, false, diluent);
    }

    /**
     * @param kelvin gas temperature that the turbine behind it stands (K)
     * @return this burner run at that temperature
     */
    BurnerDesign asHotAs(double kelvin) {
        return new BurnerDesign(OptionalDouble.of(kelvin), injectorLoss, gasModel, true, diluent);
    }
}

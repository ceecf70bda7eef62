package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.InjectionState;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.traits.EnergyRelease;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;

/**
 * Share of the theoretical characteristic velocity that a developed injector releases, by kind of injection, as the fuel's
 * file states it in {@code [combustion.energy_release]}. Of several fuels that which weighs most decides; of
 * monopropellants it is their own.
 *
 * <p>Where the values come from: [nasa-sp-125] takes 0.975 as nominal (range 0.93 to 0.99); developed hydrogen coaxial
 * injectors reach 0.98 to 0.995, small storable ones 0.92 to 0.96 (common practice, no source); large baffled kerosene
 * injectors, which also film-cool the wall, about 0.94 [oefelein-yang-1993]. One round choice within these ranges for all
 * engines: the file does not know the injector. Uncertainty ±1.5 %.
 */
public final class EnergyReleaseLoss implements LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.energy_release",
            "Energy release of a developed injector",
            "c*_delivered/c*_ideal = value of the fuel's file by injection",
            "developed injectors at their design point",
            "1.5 %",
            List.of("nasa-sp-125", "oefelein-yang-1993", "common practice, no source"));

    @Override
    public LossKind kind() {
        return LossKind.ENERGY_RELEASE;
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public boolean dependsOnSize() {
        return false;
    }

    @Override
    public Result evaluate(LossCase chamber) {
        InjectionState state = chamber.design().combustor().injection();
        Propellant burnt = chamber.injection()
                .mixed()
                .leading()
                .map(Reactants.Part::propellant)
                .orElseThrow(() -> new InvalidInput(
                        "", "injection", "a mixture of unnamed propellants", "the injector's losses are kept by fuel"));
        EnergyRelease release = burnt.combustion()
                .energyRelease()
                .orElseThrow(() -> burnt.missing(
                        "combustion.energy_release",
                        "what a developed injector releases of the characteristic velocity"));
        double efficiency =
                switch (state) {
                    case LIQUID_LIQUID -> release.liquidLiquid();
                    case GAS_LIQUID -> release.gasLiquid();
                    case GAS_GAS -> release.gasGas();
                };
        return Result.combustor(
                efficiency, state.name().toLowerCase(Locale.ROOT).replace('_', '-') + " injection, " + burnt.name());
    }
}

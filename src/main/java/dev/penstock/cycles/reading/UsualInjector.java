package dev.penstock.cycles.reading;

import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputTable;

/** How the propellants of a concept that says nothing about it arrive at the injector. */
final class UsualInjector {

    /**
     * Critical temperature below which the heat of a jacket makes a gas of a fuel (K): jackets heat by 100 to 300 K (common practice,
     * no source), which takes methane and hydrogen beyond it, and no fuel that is a liquid at room temperature.
     */
    private static final double HEATED_BEYOND = 250;

    private UsualInjector() {}

    /**
     * What arrives as a gas: what a burner has made, a fuel that is usually injected so, and a fuel that a jacket heats beyond its
     * critical temperature.
     *
     * @param root the concept's file
     * @param traits its cycle
     * @param fuel its fuel
     * @return the injector, with usual losses
     */
    static InjectorDesign of(InputTable root, CycleTraits traits, Propellant fuel) {
        boolean oxidizerGas =
                traits.ownGas() || traits.gasInjector() && traits.burners().contains(Burner.OXIDIZER_RICH);
        boolean jacket = traits.livesOnJacketHeat()
                || root.has(JacketInputs.GROUP)
                        && root.table(JacketInputs.GROUP)
                                .optionalText(ConceptInputs.COOLANT.key())
                                .orElse(ConceptInputs.COOLANT.standing().value())
                                .equals(Side.FUEL.key());
        boolean heated = jacket && fuel.fluid().criticalTemperature().orElse(Double.MAX_VALUE) < HEATED_BEYOND;
        boolean fuelGas = traits.ownGas()
                || traits.gasInjector() && !oxidizerGas
                || fuel.combustion().injectedAsGas()
                || heated;
        return InjectorDesign.of(oxidizerGas, fuelGas);
    }

    /** The chamber with the injector losses that its feeds have. */
    static ChamberDesign withLosses(ChamberDesign chamber, FeedDesign oxidizer, FeedDesign fuel) {
        return chamber.withInjector(
                chamber.combustor().injector().withLosses(oxidizer.injectorLoss(), fuel.injectorLoss()));
    }
}

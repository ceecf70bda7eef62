package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.InjectionState;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Share of the theoretical characteristic velocity that the combustor releases.
 * <pre>
 * η = (1 − u) η_mix (1 − z)
 * </pre>
 * u is what {@link Vaporisation} leaves. η_mix is what the elements of a developed injector leave by mixing: 0.975 where two liquids
 * meet (nominal value of [nasa-sp-125]), 0.9875 where a gas meets a liquid (middle of the 0.98 to 0.995 of coaxial elements, from
 * memory), 0.99 for two gases (common practice, no source). z is what the fuel-rich outer zone costs that injectors of carbon and
 * hydrazine fuels lay along the wall, from the fuel's file; a stated film comes on top of it. What engines say of the
 * constants, each left out in turn, is on the page of delivered performance.
 */
public final class EnergyReleaseLoss extends LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.energy_release",
            "Energy release by vaporisation, mixing and wall zone",
            "c*_delivered/c*_ideal = (1 − u) η_mix (1 − z), η_mix 0.975, 0.9875, 0.99 for two liquids, gas and liquid, two gases",
            "developed injectors of fixed orifices",
            "1.5 %",
            List.of("nasa-sp-125", "oefelein-yang-1993", "priem-heidmann-1960", "common practice, no source"));

    /** Part of the usual characteristic length below which mixing of gases is in doubt (-): common practice, no source. */
    private static final double SHORT = 0.5;

    public EnergyReleaseLoss() {
        super(LossKind.ENERGY_RELEASE, CARD);
    }

    @Override
    public Result evaluate(LossCase chamber) {
        Propellant burnt = burnt(chamber.injection().mixed());
        InjectionState state = chamber.design().combustor().injector().state();
        double zone = burnt.combustion()
                .wallZone()
                .orElseThrow(() -> burnt.missing(
                        "combustion.wall_zone_loss",
                        "what a fuel-rich zone along the wall costs in characteristic velocity"));
        Vaporisation spray = vaporisation(chamber);
        double unvaporised = spray.unvaporised();
        double released = (1 - unvaporised) * mixing(state) * (1 - zone);
        return new Result(
                released,
                released,
                () -> Words.of(state) + " injection, " + burnt.name() + drops(spray),
                shortForGases(chamber.design().combustor()));
    }

    private static String drops(Vaporisation spray) {
        return spray.liquid()
                ? String.format(
                        Locale.ROOT,
                        ", %.2f %% unvaporised (drops of %.0f µm radius at the design point)",
                        100 * spray.unvaporised(),
                        1e6 * spray.dropRadius())
                : "";
    }

    /** Two gases have no drops, so that nothing here says what a chamber costs in which they have no room to mix. */
    private static Optional<Warning> shortForGases(CombustorDesign combustor) {
        InjectorDesign injector = combustor.injector();
        double usual = injector.usualLength().orElse(0);
        double length = combustor.characteristicLength();
        if (injector.state() != InjectionState.GAS_GAS || length >= SHORT * usual) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                CARD.id(),
                String.format(
                        Locale.ROOT,
                        "characteristic length %.3g m, %.3g m is usual: what two gases lose that have no room to mix is not estimated",
                        length,
                        usual)));
    }

    /** Vaporised share over that at the injector's design point. */
    @Override
    public double partFlow(LossCase chamber) {
        return vaporisation(chamber).partFlow();
    }

    private static Vaporisation vaporisation(LossCase chamber) {
        return new Vaporisation(
                chamber.design().combustor(),
                chamber.design().chamberPressure(),
                chamber.injection().mixed());
    }

    private static double mixing(InjectionState state) {
        return switch (state) {
            case LIQUID_LIQUID -> 0.975;
            case GAS_LIQUID -> 0.9875;
            case GAS_GAS -> 0.99;
        };
    }

    private static Propellant burnt(Reactants mixture) {
        return mixture.leading()
                .map(Reactants.Part::propellant)
                .orElseThrow(() -> new InvalidInput(
                        "", "injection", "a mixture of unnamed propellants", "the injector's losses are kept by fuel"));
    }
}

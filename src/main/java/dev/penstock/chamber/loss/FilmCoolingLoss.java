package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Impulse lost because part of the fuel runs along the wall as a cool zone, by two stream tubes that share the pressure but
 * do not mix in the nozzle.
 * <pre>
 * wall zone   film fuel with as much core gas again as the film has mass
 * core        the rest, so that both together are what is injected
 * c*  = Σ w c*_i,   I_vac = Σ w I_vac,i     (w mass fractions, one area ratio)
 * </pre>
 * Source: stream-tube method of [cpia-246]; the share of core gas drawn into the film is an assumption (entrained mass equal
 * to the film's own), so the loss is good to about half of itself. With no film there is no loss; when the sides of the
 * injection are not known a film cannot be modelled and a warning says so.
 */
public final class FilmCoolingLoss implements LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.film_cooling",
            "Film-cooling zone by two stream tubes",
            "c* = Σ w c*_i; I_vac = Σ w I_vac,i",
            "film of fuel up to half of the fuel",
            "half of the loss",
            List.of("cpia-246"));

    private static final double ENTRAINED = 1.0; // core gas over film, by mass

    @Override
    public LossKind kind() {
        return LossKind.FILM_COOLING;
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
        double share = chamber.design().combustor().filmFuelFraction();
        if (share == 0) {
            return Result.combustor(1, "no film");
        }
        Injection injection = chamber.injection();
        if (injection.fuel().isEmpty() || injection.oxidizer().isEmpty()) {
            return new Result(
                    1,
                    1,
                    "film not modelled",
                    Optional.of(new Warning(
                            CARD.id(), "the loss to the film is not taken: which part is fuel is not known")));
        }
        Reactants fuel = injection.fuel().get();
        double film = share * injection.fuelFraction();
        double zone = film * (1 + ENTRAINED);
        if (!(zone < 1)) {
            throw new OutsideValidity(CARD.title(), "film over everything by mass (-)", film, "below 0.5");
        }
        Reactants core = injection.oxidizer().get().mixedWith(fuel, (injection.fuelFraction() - film) / (1 - film));
        Reactants wall = core.mixedWith(fuel, 1 / (1 + ENTRAINED));
        IdealExpansion whole = chamber.ideal();
        IdealExpansion coreFlow = expand(chamber, core);
        IdealExpansion wallFlow = expand(chamber, wall);
        double impulse = (1 - zone) * coreFlow.vacuumImpulse() + zone * wallFlow.vacuumImpulse();
        double velocity = (1 - zone) * coreFlow.characteristicVelocity() + zone * wallFlow.characteristicVelocity();
        return new Result(
                impulse / whole.vacuumImpulse(),
                velocity / whole.characteristicVelocity(),
                String.format(
                        Locale.ROOT,
                        "%.1f %% of the fuel as film; wall zone %.1f %% of the flow at %.0f K",
                        100 * share,
                        100 * zone,
                        wallFlow.chamber().temperature()),
                Optional.empty());
    }

    private static IdealExpansion expand(LossCase chamber, Reactants reactants) {
        EquilibriumSolver solver = chamber.solver();
        return new Expansion(
                        solver,
                        reactants,
                        chamber.design().chamberPressure(),
                        chamber.design().expansion())
                .toAreaRatio(chamber.ideal().areaRatio());
    }
}

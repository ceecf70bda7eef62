package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.OuterZone;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.OutsideValidity;
import java.util.Optional;

/**
 * What is injected, parted into tubes that share the pressure but do not mix: the core, an outer row at a mixture ratio of its
 * own, and the film of fuel with the gas that it draws in.
 * <pre>
 * film    φ = share · fuel;  with as much gas again as it has mass, from the tube beside it
 * outer   z of the flow at b times the mixture ratio of the whole
 * core    the rest, so that all of them together are what is injected
 * </pre>
 *
 * @param core mixture of the core
 * @param outer mixture of the outer row, if there is one
 * @param film mixture of film and the gas it draws in, if there is one
 * @param outerShare mass of the outer row that stays outside the film, over everything (-)
 * @param filmShare mass of the film tube over everything (-)
 */
public record StreamTubes(
        Reactants core, Optional<Reactants> outer, Optional<Reactants> film, double outerShare, double filmShare) {

    /** Gas drawn into the film over the film, by mass (-). */
    public static final double ENTRAINED = 1.0;

    private static final String MODEL = "film and outer zone";

    /** @return mass of the core over everything (-) */
    public double coreShare() {
        return 1 - outerShare - filmShare;
    }

    /**
     * @param combustor combustor with a film or an outer zone
     * @param injection what is injected
     * @return its tubes; empty if nothing shields the wall or the sides of the injection are not known
     * @throws OutsideValidity if a tube would have to hold more of a propellant than there is
     */
    public static Optional<StreamTubes> of(CombustorDesign combustor, Injection injection) {
        if (!combustor.shieldsWall()
                || injection.fuel().isEmpty()
                || injection.oxidizer().isEmpty()) {
            return Optional.empty();
        }
        Reactants fuel = injection.fuel().get();
        Reactants oxidizer = injection.oxidizer().get();
        double allFuel = injection.fuelFraction();
        double film = combustor.filmFuelFraction() * allFuel;
        double outer = combustor.outerZone().map(OuterZone::flowFraction).orElse(0.0);
        double ratio = combustor.outerZone().map(OuterZone::mixtureRatioBias).orElse(1.0) * (1 - allFuel) / allFuel;
        double outerFuel = outer / (1 + ratio);
        double coreFuel = allFuel - film - outerFuel;
        double coreOxidizer = 1 - allFuel - (outer - outerFuel);
        if (!(coreFuel > 0)) {
            throw new OutsideValidity(
                    MODEL, "fuel of film and outer zone over all fuel (-)", (film + outerFuel) / allFuel, "below 1");
        }
        if (!(coreOxidizer > 0)) {
            throw new OutsideValidity(
                    MODEL,
                    "oxidizer of the outer zone over all oxidizer (-)",
                    (outer - outerFuel) / (1 - allFuel),
                    "below 1");
        }
        double drawn = ENTRAINED * film;
        double beside = outer > 0 ? outer : coreFuel + coreOxidizer;
        if (!(drawn < beside)) {
            throw new OutsideValidity(
                    MODEL, "film over everything by mass (-)", film, "below the flow of the zone beside it");
        }
        Reactants core = oxidizer.mixedWith(fuel, coreFuel / (coreFuel + coreOxidizer));
        Optional<Reactants> row = outer > 0 ? Optional.of(oxidizer.mixedWith(fuel, 1 / (1 + ratio))) : Optional.empty();
        Optional<Reactants> layer =
                film > 0 ? Optional.of(row.orElse(core).mixedWith(fuel, 1 / (1 + ENTRAINED))) : Optional.empty();
        return Optional.of(new StreamTubes(core, row, layer, outer > 0 ? outer - drawn : 0, film + drawn));
    }
}

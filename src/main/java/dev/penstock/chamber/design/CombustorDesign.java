package dev.penstock.chamber.design;

import dev.penstock.errors.Require;
import java.util.Optional;

/**
 * What a concept says about its combustor.
 *
 * @param contractionRatio chamber cross-section over throat area (-)
 * @param characteristicLength L*: volume from injector face to throat over throat area (m)
 * @param convergentHalfAngle half angle of the convergent cone (rad)
 * @param filmFuelFraction share of the chamber's fuel injected as a film along the wall (-)
 * @param injector main injector
 * @param outerZone outer row of the injector, if it burns at a ratio of its own
 */
public record CombustorDesign(
        double contractionRatio,
        double characteristicLength,
        double convergentHalfAngle,
        double filmFuelFraction,
        InjectorDesign injector,
        Optional<OuterZone> outerZone) {

    private static final String MODEL = "combustor";

    public CombustorDesign {
        Require.within(MODEL, "contraction ratio (-)", contractionRatio, 1.1, 20);
        Require.within(MODEL, "characteristic length (m)", characteristicLength, 0.1, 10);
        Require.within(
                MODEL, "convergent half angle (rad)", convergentHalfAngle, Math.toRadians(10), Math.toRadians(60));
        Require.within(MODEL, "film share of the fuel (-)", filmFuelFraction, 0, 0.5);
    }

    /**
     * @param zone outer row of the injector
     * @return this combustor with that row
     */
    public CombustorDesign withOuterZone(OuterZone zone) {
        return new CombustorDesign(
                contractionRatio,
                characteristicLength,
                convergentHalfAngle,
                filmFuelFraction,
                injector,
                Optional.of(zone));
    }

    /** @return whether the gas along the wall is another than that of the core */
    public boolean shieldsWall() {
        return filmFuelFraction > 0 || outerZone.isPresent();
    }

    /**
     * @param newInjector main injector
     * @return this combustor with that injector
     */
    public CombustorDesign withInjector(InjectorDesign newInjector) {
        return new CombustorDesign(
                contractionRatio, characteristicLength, convergentHalfAngle, filmFuelFraction, newInjector, outerZone);
    }
}

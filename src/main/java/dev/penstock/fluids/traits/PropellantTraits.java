package dev.penstock.fluids.traits;

import java.util.Map;

/**
 * What the models of engine and vehicle must know of a propellant besides its states.
 *
 * @param combustion for chamber and burners
 * @param tank for tank, pressurisation and feed line
 * @param cooling for the cooling jacket
 * @param metals what it does to metals; a metal that is not there is not known to suffer
 */
public record PropellantTraits(
        CombustionTraits combustion, TankTraits tank, CoolantTraits cooling, Map<Metal, MetalAttack> metals) {

    /** Nothing known. */
    public static final PropellantTraits NONE =
            new PropellantTraits(CombustionTraits.NONE, TankTraits.NONE, CoolantTraits.NONE, Map.of());

    public PropellantTraits {
        metals = Map.copyOf(metals);
    }
}

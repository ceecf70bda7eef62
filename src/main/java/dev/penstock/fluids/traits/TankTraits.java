package dev.penstock.fluids.traits;

import java.util.OptionalDouble;

/**
 * What tank, pressurisation and feed line must know of a propellant, from the table {@code [tank]} of its file. Loaded
 * below {@link #COLD_BELOW} a tank carries insulation.
 *
 * @param collapseFactor pressurant used over the gas that would fill the tank without cooling or condensing (-)
 * @param coldCollapseFactor the same where it is loaded cold (-); empty if that makes no difference
 * @param ownVapourCollapseFactor the same for its own vapour (-)
 * @param ownVapourTemperature temperature of its own vapour behind the engine's heat exchanger (K)
 * @param tankMass mass of a launch vehicle's tank over its volume (kg/m³)
 * @param insulationMass mass of the insulation over the tank's surface (kg/m²)
 * @param lineVelocity usual velocity in the feed line of a stage (m/s)
 */
public record TankTraits(
        OptionalDouble collapseFactor,
        OptionalDouble coldCollapseFactor,
        OptionalDouble ownVapourCollapseFactor,
        OptionalDouble ownVapourTemperature,
        OptionalDouble tankMass,
        OptionalDouble insulationMass,
        OptionalDouble lineVelocity) {

    /** Loading temperature (K) below which a propellant counts as cold: common practice, no source. */
    public static final double COLD_BELOW = 200;

    /** Nothing known, as of a fluid that no tank of a stage holds. */
    public static final TankTraits NONE = new TankTraits(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
}

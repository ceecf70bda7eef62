package dev.penstock.fluids.state;

/**
 * What an expansion asks of a state: a {@link FluidState} without transport properties and saturation, whose making takes as long as
 * the search for the state.
 *
 * @param pressure absolute pressure (Pa)
 * @param temperature temperature (K)
 * @param density density (kg/m³)
 * @param enthalpy specific enthalpy on the fluid's own zero (J/kg)
 * @param entropy specific entropy on the fluid's own zero (J/(kg·K))
 * @param isobaricHeatCapacity specific heat capacity at constant pressure (J/(kg·K))
 * @param soundSpeed speed of sound (m/s)
 * @param twoPhase whether liquid and vapour are both there
 */
public record ExpansionState(
        double pressure,
        double temperature,
        double density,
        double enthalpy,
        double entropy,
        double isobaricHeatCapacity,
        double soundSpeed,
        boolean twoPhase) {

    /**
     * @param state a whole state
     * @return the part of it
     */
    public static ExpansionState of(FluidState state) {
        return new ExpansionState(
                state.pressure(),
                state.temperature(),
                state.density(),
                state.enthalpy(),
                state.entropy(),
                state.isobaricHeatCapacity(),
                state.soundSpeed(),
                state.phase() == Phase.TWO_PHASE);
    }
}

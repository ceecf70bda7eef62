package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;

/** How well turbulent flow in a passage takes heat from its wall. Implementations hold no state. */
public interface CoolantSideHeatTransfer {

    /** @return what the model is and where it holds */
    ModelCard card();

    /**
     * @param flow bulk, wall and place
     * @return Nusselt number on hydraulic diameter, conductivity as the model's card says (-)
     */
    double nusselt(ChannelFlow flow);

    /**
     * @param flow bulk, wall and place
     * @return conductivity that turns the Nusselt number into a coefficient (W/(m·K))
     */
    default double conductivity(ChannelFlow flow) {
        return flow.bulkConductivity;
    }

    /**
     * @param flow bulk, wall and place
     * @return whether the flow lies inside the range of the fit
     */
    boolean covers(ChannelFlow flow);

    /** @return whether fluid properties at the wall temperature are needed */
    default boolean needsWallProperties() {
        return false;
    }

    /** @return whether fluid properties at the film temperature are needed */
    default boolean needsFilmProperties() {
        return false;
    }

    /** @return whether properties averaged from bulk to wall temperature are needed */
    default boolean needsMeanProperties() {
        return false;
    }
}

package dev.penstock.turbomachinery.turbine;

/** Kind of turbine blading. */
public enum TurbineType {
    /** Chosen by {@link TurbineModel#choose} from the velocity ratio that the speed allows. */
    AUTOMATIC,
    /** Pressure drop in the nozzles only, one rotor row per stage. */
    IMPULSE,
    /** One nozzle row, two rotor rows with a turning row between them. */
    VELOCITY_COMPOUNDED,
    /** Half of the drop in the rotor. */
    REACTION
}

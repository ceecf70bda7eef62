package dev.penstock.vehicle.ascent;

/** Told how far a long calculation has come. */
@FunctionalInterface
public interface FlightProgress {

    /** Tells nobody. */
    FlightProgress NONE = (fraction, what) -> {};

    /**
     * @param fraction how much is done (-), 0 to 1
     * @param what what is being done
     */
    void at(double fraction, String what);
}

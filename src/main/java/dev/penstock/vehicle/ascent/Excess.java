package dev.penstock.vehicle.ascent;

/** How far a flight is beyond a limit, as a search wants it: squared, so that it sees no edge, and linear far beyond. */
public final class Excess {

    /** A search aims at this share of a limit, so that what it leaves open stays inside. */
    private static final double AIM = 0.98;

    private Excess() {}

    /**
     * @param value what must stay below the limit
     * @param limit the limit, in the same unit
     * @return excess over what a search aims at, over that (-); below zero for none
     */
    public static double over(double value, double limit) {
        return value / (AIM * limit) - 1;
    }

    /**
     * @param value what must stay below the limit
     * @param limit the limit, in the same unit
     * @return excess over what a search aims at, over that, squared (-); zero for none
     */
    public static double beyond(double value, double limit) {
        return squared(over(value, limit));
    }

    /**
     * @param excess excess (-); zero or less for none
     * @return its square, or itself where it is above one
     */
    public static double squared(double excess) {
        double over = Math.max(0, excess);
        return over * Math.min(1, over);
    }
}

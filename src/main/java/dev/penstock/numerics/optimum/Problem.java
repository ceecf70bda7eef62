package dev.penstock.numerics.optimum;

/** What is searched: a function of the unit cube. Safe to ask from several threads; an answer depends on the place alone. */
public interface Problem {

    /** @return number of coordinates */
    int dimensions();

    /**
     * @param i a coordinate
     * @return how many values it takes, each with an equal part of the unit length; 0 for a continuous one
     */
    default int count(int i) {
        return 0;
    }

    /**
     * @param i a coordinate
     * @return whether its values are names without an order
     */
    default boolean named(int i) {
        return false;
    }

    /**
     * @param place coordinates in the unit cube
     * @return what is found there
     */
    Trial at(double[] place);
}

package dev.penstock.cooling.march;

/**
 * One straight run of the coolant over part of the cells.
 *
 * @param first cell where it starts
 * @param last cell where it ends; below {@code first} for a run towards the injector
 * @param share share of the channels and of the circumference that it uses (-)
 * @param flowShare share of the jacket's coolant flow that it carries (-)
 * @param channelShare share of the channels that it uses (-); that of the circumference unless they run around the wall
 */
public record Leg(int first, int last, double share, double flowShare, double channelShare) {

    Leg(int first, int last, double share, double flowShare) {
        this(first, last, share, flowShare, share);
    }

    int step() {
        return last >= first ? 1 : -1;
    }

    int cells() {
        return Math.abs(last - first) + 1;
    }
}

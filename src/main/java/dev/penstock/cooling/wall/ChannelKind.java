package dev.penstock.cooling.wall;

/** How the coolant passages are made. */
public enum ChannelKind {
    /** Rectangular slots milled into a liner and closed from outside; the lands work as fins. */
    MILLED,
    /** Round tubes brazed side by side; heated on the half that faces the gas. */
    TUBE,
    /** Rectangular passages grown in one piece; rough, with the lands as fins. */
    PRINTED
}

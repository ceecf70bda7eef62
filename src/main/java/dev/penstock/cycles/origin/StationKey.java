package dev.penstock.cycles.origin;

/**
 * Where a station is: a way out of a part.
 *
 * @param part the part
 * @param port its way out
 */
public record StationKey(PartKey part, Port port) {

    /** Name for people, for example "fuel pump discharge". */
    public String title() {
        return port.of(part);
    }
}

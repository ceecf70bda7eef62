package dev.penstock.reports.diagram;

import dev.penstock.cycles.sheet.Station;
import java.util.Optional;

/** A line from a node to one in a lower layer; after layering, the very next one. */
final class Link {

    /** What the line stands for. */
    enum Kind {
        FLOW,
        SHAFT
    }

    final Kind kind;
    final Node from;
    final Node to;
    /** What flows; empty for a shaft. */
    final Optional<Station> station;
    /** The line that this is a piece of; itself where it skips no layer. */
    final Link whole;

    double fromX;
    double toX;
    int track;

    private Link(Node from, Node to, Optional<Station> station, Optional<Link> whole) {
        this.kind = station.isPresent() ? Kind.FLOW : Kind.SHAFT;
        this.from = from;
        this.to = to;
        this.station = station;
        this.whole = whole.orElse(this);
        from.down.add(this);
        to.up.add(this);
    }

    /** Lets a station flow from one node to another. */
    static void flow(Node from, Node to, Station station) {
        new Link(from, to, Optional.of(station), Optional.empty());
    }

    /** Joins two nodes by a shaft, the one that flow reaches first above, a source above what has none. */
    static void shaft(Node one, Node other) {
        boolean turned = other.leadsTo(one) || other.up.isEmpty();
        new Link(turned ? other : one, turned ? one : other, Optional.empty(), Optional.empty());
    }

    /** A piece of this line. */
    Link piece(Node above, Node below) {
        return new Link(above, below, station, Optional.of(whole));
    }

    boolean bends() {
        return Math.abs(fromX - toX) > 0.5;
    }
}

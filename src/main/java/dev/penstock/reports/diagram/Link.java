package dev.penstock.reports.diagram;

import java.util.Optional;

/** A line from a node to one in a lower layer; after layering, the very next one. */
final class Link {

    /** What the line stands for. */
    enum Kind {
        FLOW,
        /** Flow that passes a part a second time, and does not say where things stand. */
        LOOP,
        SHAFT
    }

    final Kind kind;
    final Node from;
    final Node to;
    /** What flows; empty for a shaft. */
    final Optional<StationPlate> station;
    /** The line that this is a piece of; itself where it skips no layer. */
    final Link whole;

    double fromX;
    double toX;
    int track;

    private Link(Node from, Node to, Optional<StationPlate> station, Optional<Link> whole) {
        this.kind = station.map(Link::kind).orElse(Kind.SHAFT);
        this.from = from;
        this.to = to;
        this.station = station;
        this.whole = whole.orElse(this);
        from.down.add(this);
        to.up.add(this);
    }

    private static Kind kind(StationPlate plate) {
        return plate.course() == StationPlate.Course.ONWARD ? Kind.FLOW : Kind.LOOP;
    }

    /** Lets a station flow from one node to another; what leads back upwards hangs from where it ends. */
    static void flow(Node from, Node to, StationPlate station) {
        boolean upwards = station.course() == StationPlate.Course.DRAWN_OFF;
        new Link(upwards ? to : from, upwards ? from : to, Optional.of(station), Optional.empty());
    }

    /** Whether what flows here leads upwards. */
    boolean upwards() {
        return station.filter(s -> s.course() == StationPlate.Course.DRAWN_OFF).isPresent();
    }

    /** Joins two nodes by a shaft, the one that flow reaches first above; what no flow reaches stands above what it turns. */
    static void shaft(Node one, Node other) {
        boolean turned = other.leadsTo(one) || !other.flows() && !one.leadsTo(other);
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

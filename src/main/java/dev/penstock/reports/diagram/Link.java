package dev.penstock.reports.diagram;

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
    /** Station or shaft that the line shows, for its colour. */
    final String key;

    double fromX;
    double toX;
    int track;

    Link(Kind kind, Node from, Node to, String key) {
        this.kind = kind;
        this.from = from;
        this.to = to;
        this.key = key;
    }

    boolean bends() {
        return Math.abs(fromX - toX) > 0.5;
    }
}

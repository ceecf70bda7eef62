package dev.penstock.reports.diagram;

import java.util.ArrayList;
import java.util.List;

/** A box of the diagram, or the place where a long line passes a layer. Mutable while the layout is made. */
final class Node {

    /** What stands behind a node. */
    enum Role {
        COMPONENT,
        STATION,
        PASSAGE
    }

    final Role role;
    final String key;
    final double width;
    final double height;
    final List<Link> up = new ArrayList<>();
    final List<Link> down = new ArrayList<>();
    int layer;
    /** Where it belongs from left (-1, oxidizer) to right (1, fuel), before the neighbours have their say. */
    double side;

    double x;
    double y;

    Node(Role role, String key, double width, double height) {
        this.role = role;
        this.key = key;
        this.width = width;
        this.height = height;
    }

    double left() {
        return x - width / 2;
    }

    double right() {
        return x + width / 2;
    }

    double top() {
        return y - height / 2;
    }

    double bottom() {
        return y + height / 2;
    }
}

package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Component;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A box of the diagram, or the place where a long line passes a layer. Mutable while the layout is made. */
final class Node {

    /** What stands behind a node. */
    enum Role {
        COMPONENT,
        STATION,
        PASSAGE
    }

    final Role role;
    final Optional<Component> component;
    final Optional<StationPlate> station;
    final double width;
    final double height;
    final List<Link> up = new ArrayList<>();
    final List<Link> down = new ArrayList<>();
    int layer;
    /** Where it belongs from left (-1, oxidizer) to right (1, fuel), before the neighbours have their say. */
    double side;

    double x;
    double y;

    private Node(
            Role role, Optional<Component> component, Optional<StationPlate> station, double width, double height) {
        this.role = role;
        this.component = component;
        this.station = station;
        this.width = width;
        this.height = height;
    }

    static Node of(Component component, double width, double height) {
        return new Node(Role.COMPONENT, Optional.of(component), Optional.empty(), width, height);
    }

    static Node of(StationPlate station, double width, double height) {
        return new Node(Role.STATION, Optional.empty(), Optional.of(station), width, height);
    }

    static Node passage(double width) {
        return new Node(Role.PASSAGE, Optional.empty(), Optional.empty(), width, 0);
    }

    /** Whether it stays on top however near what it feeds is. */
    boolean onTop() {
        return component.filter(c -> c.kind() == PartKind.TANK).isPresent();
    }

    /** Whether anything flows into it or out of it. */
    boolean flows() {
        return Stream.concat(up.stream(), down.stream()).anyMatch(link -> link.station.isPresent());
    }

    /** Whether lines lead from here to another node. */
    boolean leadsTo(Node other) {
        return leads(this, other, new HashSet<>());
    }

    private static boolean leads(Node from, Node to, Set<Node> seen) {
        return from == to || seen.add(from) && from.down.stream().anyMatch(link -> leads(link.to, to, seen));
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

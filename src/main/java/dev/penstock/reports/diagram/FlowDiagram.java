package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.ChartFont;
import dev.penstock.reports.chart.Ink;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Draws an arrangement of components and stations as SVG: tanks above, chamber below, every station with its figures. */
public final class FlowDiagram {

    /**
     * A shaft to be drawn.
     *
     * @param name name of the shaft
     * @param driven ids of the components that take its power
     * @param driving ids of the components that give it
     */
    public record Shaft(String name, List<String> driven, List<String> driving) {

        public Shaft {
            driven = List.copyOf(driven);
            driving = List.copyOf(driving);
        }
    }

    private static final double MARGIN = 14;
    private static final double COMPONENT_HEIGHT = 40;
    private static final double FITTING_HEIGHT = 22;
    private static final double SPLIT_SIZE = 8;
    /** Bold letters are wider than those that are measured. */
    private static final double BOLD = 1.1;

    private static final double CHIP_HEIGHT = 31;

    private final Map<String, Component> components = new LinkedHashMap<>();
    private final Map<Integer, Station> stations = new LinkedHashMap<>();
    private final Map<String, Node> nodes = new LinkedHashMap<>();

    private FlowDiagram(List<Component> components, List<Station> stations) {
        components.forEach(c -> this.components.put(c.id(), c));
        stations.forEach(s -> this.stations.put(s.number(), s));
    }

    /**
     * @param id identifier, unique in a page
     * @param title what the diagram shows
     * @param components components of the engine
     * @param stations stations of the engine
     * @param shafts shafts that join pumps and turbines
     * @return SVG with the colours of light paper
     * @throws IllegalArgumentException if the arrangement flows in a circle
     */
    public static String svg(
            String id, String title, List<Component> components, List<Station> stations, List<Shaft> shafts) {
        FlowDiagram diagram = new FlowDiagram(components, stations);
        diagram.connect(shafts);
        Layers layers = Layers.of(diagram.nodes.values());
        java.awt.geom.Rectangle2D size = Placement.place(layers, MARGIN);
        return diagram.draw(id, title, layers, size);
    }

    private void connect(List<Shaft> shafts) {
        for (Component component : components.values()) {
            boolean fitting = isFitting(component);
            double text = Math.max(
                    ChartFont.width(component.label(), fitting ? 10.5 : 12) * (fitting ? 1 : BOLD),
                    ChartFont.width(Symbols.figure(component, this::outlet), 11));
            boolean split = isJunction(component);
            double width = split ? SPLIT_SIZE : text + (fitting ? 34 : 54);
            double height = split ? SPLIT_SIZE : fitting ? FITTING_HEIGHT : COMPONENT_HEIGHT;
            nodes.put(component.id(), new Node(Node.Role.COMPONENT, component.id(), width, height));
        }
        for (Station station : stations.values()) {
            double width = 34 + Math.max(ChartFont.width(upper(station), 10.5), ChartFont.width(lower(station), 10.5));
            Node node = new Node(Node.Role.STATION, key(station.number()), width, CHIP_HEIGHT);
            node.side = side(station);
            nodes.put(node.key, node);
        }
        for (Component component : components.values()) {
            Node node = nodes.get(component.id());
            component.inlets().forEach(n -> link(Link.Kind.FLOW, nodes.get(key(n)), node, key(n)));
            component.outlets().forEach(n -> link(Link.Kind.FLOW, node, nodes.get(key(n)), key(n)));
            node.side = side(component);
        }
        nodes.values().removeIf(node -> node.up.isEmpty() && node.down.isEmpty());
        shafts.forEach(this::connect);
    }

    private void connect(Shaft shaft) {
        List<String> driving =
                shaft.driving().stream().filter(nodes::containsKey).toList();
        List<String> driven = shaft.driven().stream().filter(nodes::containsKey).toList();
        for (int i = 1; i < driving.size(); i++) {
            join(driving.get(i - 1), driving.get(i), shaft.name());
        }
        driven.forEach(pump -> driving.stream().findFirst().ifPresent(turbine -> join(pump, turbine, shaft.name())));
    }

    private void join(String one, String other, String shaft) {
        Node a = nodes.get(one);
        Node b = nodes.get(other);
        boolean turned = reaches(b, a, new java.util.HashSet<>())
                || components.get(other).inlets().isEmpty();
        link(Link.Kind.SHAFT, turned ? b : a, turned ? a : b, shaft);
    }

    private static boolean reaches(Node from, Node to, Set<Node> seen) {
        return from == to || seen.add(from) && from.down.stream().anyMatch(link -> reaches(link.to, to, seen));
    }

    private static void link(Link.Kind kind, Node from, Node to, String key) {
        if (from == null || to == null) {
            return;
        }
        Link link = new Link(kind, from, to, key);
        from.down.add(link);
        to.up.add(link);
    }

    private String draw(String id, String title, Layers layers, java.awt.geom.Rectangle2D size) {
        Pen pen = new Pen();
        pen.open(id, title, size.getWidth(), size.getHeight());
        Map<Integer, Double> rowBottom = new HashMap<>();
        for (List<Node> row : layers.rows()) {
            row.forEach(node -> rowBottom.merge(node.layer, node.bottom(), Math::max));
        }
        List<Link> flows = new ArrayList<>(layers.links());
        flows.sort(java.util.Comparator.comparing(link -> link.kind == Link.Kind.FLOW));
        for (Link link : flows) {
            boolean flow = link.kind == Link.Kind.FLOW;
            boolean arrow = flow && link.to.role == Node.Role.COMPONENT;
            double level = Placement.level(rowBottom.get(link.from.layer), link);
            pen.route(link, level, flow ? ink(link.key) : Ink.STEEL, !flow, arrow);
        }
        for (Node node : nodes.values()) {
            if (node.role == Node.Role.STATION) {
                Station station = stations.get(Integer.parseInt(node.key.substring(1)));
                pen.chip(node, station.number(), station.name(), upper(station), lower(station), ink(node.key));
            } else {
                Component component = components.get(node.key);
                Ink ink = component.outlets().isEmpty()
                        ? Ink.TEXT
                        : ink(key(component.outlets().get(0)));
                pen.component(
                        node,
                        component,
                        Symbols.figure(component, this::outlet),
                        isFitting(component),
                        Symbols.inkOf(component, ink));
            }
        }
        return pen.close();
    }

    private Station outlet(Component component) {
        List<Integer> numbers = component.outlets().isEmpty() ? component.inlets() : component.outlets();
        return stations.get(numbers.get(0));
    }

    private Ink ink(String stationKey) {
        return Ink.of(stations.get(Integer.parseInt(stationKey.substring(1))).content());
    }

    private double side(Station station) {
        return switch (station.content()) {
            case OXIDIZER -> -1;
            case FUEL -> 1;
            case BURNT_GAS -> 0;
        };
    }

    private double side(Component component) {
        return java.util.stream.Stream.concat(component.inlets().stream(), component.outlets().stream())
                .filter(stations::containsKey)
                .mapToDouble(n -> side(stations.get(n)))
                .average()
                .orElse(0);
    }

    private static boolean isFitting(Component component) {
        return switch (component.kind()) {
            case LINE, VALVE, ORIFICE, SPLIT, MERGE -> true;
            default -> false;
        };
    }

    static boolean isJunction(Component component) {
        return component.kind() == PartKind.SPLIT || component.kind() == PartKind.MERGE;
    }

    private static String key(int number) {
        return "#" + number;
    }

    private static String upper(Station station) {
        return Notation.PRESSURE.write(station.pressure()) + " bar · "
                + Notation.TEMPERATURE.write(station.temperature()) + " K";
    }

    private static String lower(Station station) {
        return Notation.MASS_FLOW.write(station.massFlow()) + " kg/s";
    }
}

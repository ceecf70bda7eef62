package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.reports.chart.ChartFont;
import dev.penstock.reports.chart.Ink;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/** Draws an arrangement of components and stations as SVG: tanks above, chamber below, every station with its figures. */
public final class FlowDiagram {

    /**
     * A shaft to be drawn.
     *
     * @param driven ids of the components that take its power
     * @param driving ids of the components that give it
     */
    public record Shaft(List<String> driven, List<String> driving) {

        public Shaft {
            driven = List.copyOf(driven);
            driving = List.copyOf(driving);
        }
    }

    private static final double MARGIN = 14;
    private static final double COMPONENT_HEIGHT = 40;
    private static final double FITTING_HEIGHT = 22;
    private static final double SPLIT_SIZE = 8;

    private static final double CHIP_HEIGHT = 31;

    private final DrawnEngine engine;
    private final DrawnStates states;
    private final Map<String, Node> parts = new LinkedHashMap<>();
    private final Map<Integer, Node> plates = new LinkedHashMap<>();

    private FlowDiagram(DrawnEngine engine) {
        this.engine = engine;
        this.states = new DrawnStates(engine);
    }

    /**
     * @param id identifier, unique in a page
     * @param title what the diagram shows
     * @param engine what is drawn
     * @param links gives the address of a numbered station, so that its plate can be followed; empty for plates alone
     * @return SVG with the colours of light paper
     * @throws IllegalArgumentException if the arrangement flows in a circle
     */
    public static String svg(String id, String title, DrawnEngine engine, Optional<IntFunction<String>> links) {
        FlowDiagram diagram = new FlowDiagram(engine);
        diagram.connect();
        Layers layers = Layers.of(diagram.nodes());
        java.awt.geom.Rectangle2D size = Placement.place(layers, MARGIN);
        return diagram.draw(new Pen(links), id, title, layers, size);
    }

    private void connect() {
        for (Component component : engine.components) {
            boolean fitting = isFitting(component);
            double text = Math.max(
                    ChartFont.width(component.label(), fitting ? 10.5 : 12, !fitting),
                    ChartFont.width(engine.figure(component, states), 11));
            boolean split = isJunction(component);
            double width = split ? SPLIT_SIZE : text + (fitting ? 34 : 54);
            double height = split ? SPLIT_SIZE : fitting ? FITTING_HEIGHT : COMPONENT_HEIGHT;
            parts.put(component.id(), Node.of(component, width, height));
        }
        for (StationPlate station : states.all()) {
            double width = Pen.beside(station)
                    + 5
                    + Math.max(ChartFont.width(station.upper(), 10.5), ChartFont.width(station.lower(), 10.5));
            Node node = Node.of(station, width, CHIP_HEIGHT);
            node.side = DrawnStates.side(station);
            plates.put(station.number(), node);
        }
        for (Component component : engine.components) {
            Node node = parts.get(component.id());
            component.inlets().stream()
                    .filter(plates::containsKey)
                    .forEach(n -> Link.flow(plates.get(n), node, states.at(n)));
            component.outlets().stream()
                    .filter(plates::containsKey)
                    .forEach(n -> Link.flow(node, plates.get(n), states.at(n)));
            node.side = states.side(component);
        }
        engine.shafts.forEach(this::connect);
        parts.values().removeIf(node -> node.up.isEmpty() && node.down.isEmpty());
    }

    private void connect(Shaft shaft) {
        List<Node> driving = drawn(shaft.driving());
        for (int i = 1; i < driving.size(); i++) {
            Link.shaft(driving.get(i - 1), driving.get(i));
        }
        driving.stream().limit(1).forEach(turbine -> drawn(shaft.driven()).forEach(pump -> Link.shaft(pump, turbine)));
    }

    private List<Node> drawn(List<String> ids) {
        return ids.stream().filter(parts::containsKey).map(parts::get).toList();
    }

    private List<Node> nodes() {
        return Stream.concat(parts.values().stream(), plates.values().stream()).toList();
    }

    private String draw(Pen pen, String id, String title, Layers layers, java.awt.geom.Rectangle2D size) {
        pen.open(id, title, size.getWidth(), size.getHeight());
        List<Link> flows = new ArrayList<>(layers.links());
        flows.sort(java.util.Comparator.comparing(link -> link.kind != Link.Kind.SHAFT));
        for (Link link : flows) {
            boolean flow = link.kind != Link.Kind.SHAFT;
            Node end = link.upwards() ? link.from : link.to;
            boolean arrow = flow && end.role == Node.Role.COMPONENT;
            Ink ink = link.station.map(FlowDiagram::ink).orElse(Ink.STEEL);
            pen.route(link, Placement.level(layers, link), ink, !flow, arrow);
        }
        for (Node node : nodes()) {
            node.station.ifPresent(station -> pen.plate(node, station, ink(station)));
            node.component.ifPresent(component -> {
                Ink ink = component.outlets().isEmpty() ? Ink.TEXT : ink(states.outlet(component));
                pen.component(
                        node,
                        component,
                        engine.figure(component, states),
                        isFitting(component),
                        engine.sign(component, Symbols.inkOf(component, ink).rgb()),
                        Symbols.inkOf(component, ink));
            });
        }
        return pen.close();
    }

    private static Ink ink(StationPlate station) {
        return Ink.of(station.content());
    }

    private static boolean isFitting(Component component) {
        return switch (component.kind()) {
            case LINE, VALVE, ORIFICE, SPLIT, MERGE, REGULATOR -> true;
            default -> false;
        };
    }

    static boolean isJunction(Component component) {
        return component.kind() == PartKind.SPLIT || component.kind() == PartKind.MERGE;
    }
}

package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Station;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The main parts of an engine and what flows between them, without lines, valves and injectors: what is drawn where there is
 * room for little. Laid out as the flow diagram is.
 *
 * @param width width (px)
 * @param height height (px)
 * @param boxes main parts with their places
 * @param ways flows and shafts between them
 */
public record FlowOutline(double width, double height, List<Box> boxes, List<Way> ways) {

    /**
     * A main part.
     *
     * @param component the part
     * @param figure the one figure to read beside it; empty if there is none
     * @param place where it stands (px)
     */
    public record Box(Component component, String figure, Rectangle2D place) {}

    /**
     * A flow or a shaft from one main part to another.
     *
     * @param from id of the part it leaves
     * @param to id of the part it enters
     * @param content what flows; for a shaft it means nothing
     * @param shaft whether it is a shaft
     * @param bends its corners from end to end (px)
     */
    public record Way(String from, String to, Content content, boolean shaft, List<Point2D> bends) {}

    private static final double MARGIN = 4;
    private static final double SPACE = 26;

    /**
     * @param components components of the engine
     * @param stations its stations
     * @param shafts shafts that join pumps and turbines
     * @param width gives the width that a part's box needs (px)
     * @param boxHeight height of a box (px)
     * @return the outline
     */
    public static FlowOutline of(
            List<Component> components,
            List<Station> stations,
            List<FlowDiagram.Shaft> shafts,
            ToDoubleFunction<Component> width,
            double boxHeight) {
        Map<String, Component> kept = new LinkedHashMap<>();
        components.stream().filter(FlowOutline::main).forEach(c -> kept.put(c.id(), c));
        Map<Integer, Station> states = new HashMap<>();
        stations.forEach(s -> states.put(s.number(), s));
        Map<String, Node> nodes = new LinkedHashMap<>();
        kept.values()
                .forEach(c -> nodes.put(
                        c.id(), new Node(Node.Role.COMPONENT, c.id(), width.applyAsDouble(c), boxHeight + SPACE)));
        Map<String, String> ends = new HashMap<>();
        for (Component c : kept.values()) {
            Set<String> reached = new HashSet<>();
            for (int outlet : c.outlets()) {
                follow(c.id(), outlet, components, nodes, reached, ends);
            }
        }
        nodes.values().forEach(n -> n.side = side(n, kept.get(n.key), states));
        for (FlowDiagram.Shaft shaft : shafts) {
            join(shaft, nodes, ends);
        }
        Layers layers = Layers.of(nodes.values());
        Rectangle2D size = Placement.place(layers, MARGIN);
        return drawn(kept, states, layers, nodes, size, ends, boxHeight);
    }

    private static boolean main(Component c) {
        return switch (c.kind()) {
            case LINE, VALVE, ORIFICE, SPLIT, MERGE, INJECTOR, NOZZLE -> false;
            default -> true;
        };
    }

    /** Follows a station through small parts to the next main one. */
    private static void follow(
            String from,
            int station,
            List<Component> components,
            Map<String, Node> nodes,
            Set<String> reached,
            Map<String, String> ends) {
        for (Component next : components) {
            if (!next.inlets().contains(station)) {
                continue;
            }
            Node to = nodes.get(next.id());
            if (to == null) {
                next.outlets().forEach(outlet -> follow(from, outlet, components, nodes, reached, ends));
            } else if (reached.add(next.id())) {
                link(Link.Kind.FLOW, nodes.get(from), to, "#" + station, ends);
            }
        }
    }

    private static void join(FlowDiagram.Shaft shaft, Map<String, Node> nodes, Map<String, String> ends) {
        List<String> driving =
                shaft.driving().stream().filter(nodes::containsKey).toList();
        List<String> driven = shaft.driven().stream().filter(nodes::containsKey).toList();
        for (String pump : driven) {
            for (String turbine : driving.subList(0, Math.min(1, driving.size()))) {
                Node a = nodes.get(pump);
                Node b = nodes.get(turbine);
                boolean turned = leads(b, a, new HashSet<>()) || b.up.isEmpty();
                link(Link.Kind.SHAFT, turned ? b : a, turned ? a : b, shaft.name() + " " + pump, ends);
            }
        }
    }

    private static boolean leads(Node from, Node to, Set<Node> seen) {
        return from == to || seen.add(from) && from.down.stream().anyMatch(link -> leads(link.to, to, seen));
    }

    private static void link(Link.Kind kind, Node from, Node to, String key, Map<String, String> ends) {
        String own = key + "|" + from.key + "|" + to.key;
        Link link = new Link(kind, from, to, own);
        from.down.add(link);
        to.up.add(link);
        ends.put(own, from.key + "|" + to.key);
    }

    private static double side(Node node, Component c, Map<Integer, Station> states) {
        return java.util.stream.Stream.concat(c.inlets().stream(), c.outlets().stream())
                .filter(states::containsKey)
                .mapToDouble(n -> switch (states.get(n).content()) {
                    case OXIDIZER -> -1;
                    case FUEL -> 1;
                    case BURNT_GAS -> 0;
                })
                .average()
                .orElse(0);
    }

    private static FlowOutline drawn(
            Map<String, Component> kept,
            Map<Integer, Station> states,
            Layers layers,
            Map<String, Node> nodes,
            Rectangle2D size,
            Map<String, String> ends,
            double boxHeight) {
        List<Box> boxes = new ArrayList<>();
        for (Node node : nodes.values()) {
            Component c = kept.get(node.key);
            Rectangle2D place = new Rectangle2D.Double(node.left(), node.y - boxHeight / 2, node.width, boxHeight);
            boxes.add(new Box(c, Symbols.figure(c, part -> outlet(part, states)), place));
        }
        Map<Integer, Double> rowBottom = new HashMap<>();
        layers.rows().forEach(row -> row.forEach(n -> rowBottom.merge(n.layer, n.bottom(), Math::max)));
        List<Way> ways = new ArrayList<>();
        for (Link link : layers.links()) {
            double level = Placement.level(rowBottom.get(link.from.layer), link);
            boolean shaft = link.kind == Link.Kind.SHAFT;
            String[] both = ends.get(link.key).split("\\|");
            double y1 = edge(link.from, boxHeight, 1);
            double y2 = edge(link.to, boxHeight, -1);
            List<Point2D> bends = link.bends()
                    ? List.of(at(link.fromX, y1), at(link.fromX, level), at(link.toX, level), at(link.toX, y2))
                    : List.of(at(link.fromX, y1), at(link.toX, y2));
            Content content = shaft
                    ? Content.BURNT_GAS
                    : states.get(Integer.parseInt(link.key.substring(1, link.key.indexOf('|'))))
                            .content();
            ways.add(new Way(both[0], both[1], content, shaft, bends));
        }
        return new FlowOutline(size.getWidth(), size.getHeight(), boxes, ways);
    }

    private static double edge(Node node, double boxHeight, int sign) {
        return node.y + sign * (node.role == Node.Role.COMPONENT ? boxHeight : node.height) / 2;
    }

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }

    private static Station outlet(Component c, Map<Integer, Station> states) {
        return states.get((c.outlets().isEmpty() ? c.inlets() : c.outlets()).get(0));
    }
}

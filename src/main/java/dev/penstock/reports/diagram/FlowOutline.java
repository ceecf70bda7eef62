package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.sheet.Component;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleBiFunction;

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
    public record Box(Component component, String figure, Rectangle2D place) {

        private Box moved(DoubleUnaryOperator down) {
            double y = down.applyAsDouble(place.getY());
            return new Box(
                    component, figure, new Rectangle2D.Double(place.getX(), y, place.getWidth(), place.getHeight()));
        }
    }

    /**
     * A flow or a shaft from one main part to another.
     *
     * @param from id of the part it leaves
     * @param to id of the part it enters
     * @param content what flows; for a shaft it means nothing
     * @param shaft whether it is a shaft
     * @param upwards whether it flows from its end to its beginning, which stands above
     * @param bends its corners from end to end (px)
     */
    public record Way(String from, String to, Content content, boolean shaft, boolean upwards, List<Point2D> bends) {

        private Way moved(DoubleUnaryOperator down) {
            List<Point2D> places = bends.stream()
                    .map(p -> (Point2D) new Point2D.Double(p.getX(), down.applyAsDouble(p.getY())))
                    .toList();
            return new Way(from, to, content, shaft, upwards, places);
        }
    }

    /**
     * @param high height that it shall have (px), at least its own
     * @return the same with more room between its rows; boxes keep their size
     */
    public FlowOutline spread(double high) {
        List<double[]> rows = rows();
        double taken = rows.stream().mapToDouble(r -> r[1] - r[0]).sum();
        double stretch = Math.max(1, (high - taken) / (height - taken));
        DoubleUnaryOperator moved = y -> {
            double inside = 0;
            for (double[] row : rows) {
                inside += Math.max(0, Math.min(y, row[1]) - row[0]);
            }
            return inside + stretch * (y - inside);
        };
        return new FlowOutline(
                width,
                moved.applyAsDouble(height),
                boxes.stream().map(b -> b.moved(moved)).toList(),
                ways.stream().map(w -> w.moved(moved)).toList());
    }

    /** Where boxes stand, from top to bottom (px), those side by side together. */
    private List<double[]> rows() {
        List<double[]> rows = new ArrayList<>();
        boxes.stream()
                .map(Box::place)
                .sorted(Comparator.comparingDouble(Rectangle2D::getMinY))
                .forEach(place -> {
                    if (rows.isEmpty() || place.getMinY() >= rows.get(rows.size() - 1)[1]) {
                        rows.add(new double[] {place.getMinY(), place.getMaxY()});
                    }
                    double[] last = rows.get(rows.size() - 1);
                    last[1] = Math.max(last[1], place.getMaxY());
                });
        return rows;
    }

    private static final double MARGIN = 4;
    private static final double SPACE = 26;

    /**
     * @param engine what is drawn
     * @param width gives the width that a box needs for its label and figure (px)
     * @param boxHeight height of a box (px)
     * @return the outline
     */
    public static FlowOutline of(DrawnEngine engine, ToDoubleBiFunction<String, String> width, double boxHeight) {
        Map<String, Component> kept = new LinkedHashMap<>();
        engine.components.stream().filter(FlowOutline::main).forEach(c -> kept.put(c.id(), c));
        DrawnStates states = new DrawnStates(engine);
        Map<String, Node> nodes = new LinkedHashMap<>();
        for (Component c : kept.values()) {
            double needed = width.applyAsDouble(c.label(), engine.figure(c, states));
            nodes.put(c.id(), Node.of(c, needed, boxHeight + SPACE));
        }
        for (Component c : kept.values()) {
            Set<String> reached = new HashSet<>();
            for (int outlet : c.outlets()) {
                follow(nodes.get(c.id()), states.at(outlet), engine.components, nodes, reached, states);
            }
        }
        nodes.forEach((id, node) -> node.side = states.side(kept.get(id)));
        for (FlowDiagram.Shaft shaft : engine.shafts) {
            join(shaft, nodes);
        }
        Layers layers = Layers.of(nodes.values());
        Rectangle2D size = Placement.place(layers, MARGIN);
        return drawn(engine, states, layers, nodes.values(), size, boxHeight);
    }

    private static boolean main(Component c) {
        return switch (c.kind()) {
            case LINE, VALVE, ORIFICE, SPLIT, MERGE, INJECTOR, NOZZLE -> false;
            default -> true;
        };
    }

    /** Follows a station through small parts to the next main one. */
    private static void follow(
            Node from,
            StationPlate station,
            List<Component> components,
            Map<String, Node> nodes,
            Set<String> reached,
            DrawnStates states) {
        for (Component next : components) {
            if (!next.inlets().contains(station.number())) {
                continue;
            }
            Node to = nodes.get(next.id());
            if (to == null) {
                next.outlets().forEach(outlet -> follow(from, states.at(outlet), components, nodes, reached, states));
            } else if (reached.add(next.id())) {
                Link.flow(from, to, station);
            }
        }
    }

    private static void join(FlowDiagram.Shaft shaft, Map<String, Node> nodes) {
        shaft.driving().stream().filter(nodes::containsKey).limit(1).forEach(turbine -> shaft.driven().stream()
                .filter(nodes::containsKey)
                .forEach(pump -> Link.shaft(nodes.get(pump), nodes.get(turbine))));
    }

    private static FlowOutline drawn(
            DrawnEngine engine,
            DrawnStates states,
            Layers layers,
            Collection<Node> nodes,
            Rectangle2D size,
            double boxHeight) {
        List<Box> boxes = new ArrayList<>();
        for (Node node : nodes) {
            Component c = node.component.orElseThrow();
            Rectangle2D place = new Rectangle2D.Double(node.left(), node.y - boxHeight / 2, node.width, boxHeight);
            boxes.add(new Box(c, engine.figure(c, states), place));
        }
        List<Way> ways = new ArrayList<>();
        for (Link link : layers.links()) {
            double level = Placement.level(layers, link);
            double y1 = edge(link.from, boxHeight, 1);
            double y2 = edge(link.to, boxHeight, -1);
            List<Point2D> bends = link.bends()
                    ? List.of(at(link.fromX, y1), at(link.fromX, level), at(link.toX, level), at(link.toX, y2))
                    : List.of(at(link.fromX, y1), at(link.toX, y2));
            ways.add(new Way(
                    link.whole.from.component.orElseThrow().id(),
                    link.whole.to.component.orElseThrow().id(),
                    link.station.map(StationPlate::content).orElse(Content.BURNT_GAS),
                    link.kind == Link.Kind.SHAFT,
                    link.upwards(),
                    bends));
        }
        return new FlowOutline(size.getWidth(), size.getHeight(), boxes, ways);
    }

    private static double edge(Node node, double boxHeight, int sign) {
        return node.y + sign * (node.role == Node.Role.COMPONENT ? boxHeight : node.height) / 2;
    }

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }
}

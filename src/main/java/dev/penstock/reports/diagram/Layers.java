package dev.penstock.reports.diagram;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Distributes the nodes of a directed graph over layers, so that every line leads downwards, puts passages where a line
 * skips layers, and orders each layer so that few lines cross: longest path, then barycentre sweeps. The method is that
 * of [sugiyama-1981].
 */
final class Layers {

    private static final int SWEEPS = 40;
    private static final double FLOW_PASSAGE = 14;
    private static final double SHAFT_PASSAGE = 22;

    private final List<List<Node>> rows = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();

    private Layers() {}

    /**
     * @param nodes nodes of an acyclic graph, with their links
     * @return the layers from top to bottom
     */
    static Layers of(Collection<Node> nodes) {
        Layers layers = new Layers();
        layers.assign(nodes);
        layers.splitLongLinks(nodes);
        layers.order();
        return layers;
    }

    List<List<Node>> rows() {
        return rows;
    }

    List<Link> links() {
        return links;
    }

    /** Lower edge of the layer that a line leaves (px). */
    double bottom(Link link) {
        return rows.get(link.from.layer).stream()
                .mapToDouble(Node::bottom)
                .max()
                .orElseThrow();
    }

    private void assign(Collection<Node> nodes) {
        boolean moved = true;
        for (int round = 0; moved && round <= nodes.size(); round++) {
            moved = false;
            for (Node node : nodes) {
                for (Link link : node.down) {
                    if (link.to.layer <= node.layer) {
                        link.to.layer = node.layer + 1;
                        moved = true;
                    }
                }
            }
        }
        if (moved) {
            throw new IllegalArgumentException("the arrangement flows in a circle and cannot be drawn in layers");
        }
        // A source that waits for nothing stands right above what it feeds; tanks stay on top.
        for (Node node : nodes) {
            if (node.up.isEmpty() && !node.down.isEmpty() && !node.onTop()) {
                node.layer = node.down.stream().mapToInt(l -> l.to.layer).min().getAsInt() - 1;
            }
        }
    }

    private void splitLongLinks(Collection<Node> nodes) {
        int last = nodes.stream().mapToInt(n -> n.layer).max().orElse(0);
        for (int i = 0; i <= last; i++) {
            rows.add(new ArrayList<>());
        }
        nodes.forEach(node -> rows.get(node.layer).add(node));
        for (Node node : nodes) {
            for (Link link : List.copyOf(node.down)) {
                split(link);
            }
        }
    }

    private void split(Link link) {
        if (link.to.layer == link.from.layer + 1) {
            links.add(link);
            return;
        }
        link.from.down.remove(link);
        link.to.up.remove(link);
        Node above = link.from;
        for (int layer = above.layer + 1; layer <= link.to.layer; layer++) {
            Node below = link.to;
            if (layer < link.to.layer) {
                double width = link.kind == Link.Kind.SHAFT ? SHAFT_PASSAGE : FLOW_PASSAGE;
                below = Node.passage(width);
                below.layer = layer;
                // A shaft runs outside of the flow of its side.
                boolean shaft = link.kind == Link.Kind.SHAFT;
                below.side = shaft ? 1.5 * Math.signum(link.from.side) : (link.from.side + link.to.side) / 2;
                rows.get(layer).add(below);
            }
            links.add(link.piece(above, below));
            above = below;
        }
    }

    private void order() {
        for (List<Node> row : rows) {
            row.sort(Comparator.comparingDouble(n -> n.side));
        }
        List<List<Node>> best = copy();
        int fewest = crossings();
        for (int sweep = 0; sweep < SWEEPS && fewest > 0; sweep++) {
            boolean downwards = sweep % 2 == 0;
            for (int i = 0; i < rows.size(); i++) {
                sortByNeighbours(rows.get(downwards ? i : rows.size() - 1 - i), downwards);
            }
            int count = crossings();
            if (count < fewest) {
                fewest = count;
                best = copy();
            }
        }
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).clear();
            rows.get(i).addAll(best.get(i));
        }
    }

    private void sortByNeighbours(List<Node> row, boolean fromAbove) {
        double[] position = new double[row.size()];
        List<Node> before = List.copyOf(row);
        for (int i = 0; i < before.size(); i++) {
            List<Link> links = fromAbove ? before.get(i).up : before.get(i).down;
            double sum = 0;
            for (Link link : links) {
                Node other = fromAbove ? link.from : link.to;
                List<Node> otherRow = rows.get(other.layer);
                sum += (otherRow.indexOf(other) + 0.5) / otherRow.size();
            }
            position[i] = links.isEmpty() ? (i + 0.5) / before.size() : sum / links.size();
        }
        row.sort(Comparator.comparingDouble(n -> position[before.indexOf(n)]));
    }

    private int crossings() {
        int count = 0;
        for (int i = 0; i < links.size(); i++) {
            for (int j = i + 1; j < links.size(); j++) {
                count += cross(links.get(i), links.get(j)) ? 1 : 0;
            }
        }
        return count;
    }

    private boolean cross(Link a, Link b) {
        if (a.from.layer != b.from.layer || a.from == b.from || a.to == b.to) {
            return false;
        }
        List<Node> upper = rows.get(a.from.layer);
        List<Node> lower = rows.get(a.to.layer);
        return (upper.indexOf(a.from) - upper.indexOf(b.from)) * (lower.indexOf(a.to) - lower.indexOf(b.to)) < 0;
    }

    private List<List<Node>> copy() {
        return rows.stream().map(List::copyOf).toList();
    }
}

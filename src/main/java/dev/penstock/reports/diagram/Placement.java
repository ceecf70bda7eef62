package dev.penstock.reports.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Gives every node its coordinates. Horizontally each layer in turn moves towards its neighbours, kept in order and
 * apart by isotonic regression (pool adjacent violators); vertically layers follow each other with room for the tracks
 * on which lines change sides.
 */
final class Placement {

    private static final int SWEEPS = 200;
    private static final double APART = 14;
    private static final double GAP = 13;
    private static final double CLOSE = 9;
    private static final double TRACK = 9;
    private static final double NEARLY = 13;
    private static final double SMALL = 20;

    private Placement() {}

    /**
     * @param layers layers in their order; coordinates are set in the nodes and links
     * @param margin room around the drawing (px)
     * @return width and height of the drawing (px)
     */
    static java.awt.geom.Rectangle2D place(Layers layers, double margin) {
        List<List<Node>> rows = layers.rows();
        for (List<Node> row : rows) {
            double x = 0;
            for (Node node : row) {
                node.x = x + node.width / 2;
                x += node.width + APART;
            }
            double shift = -x / 2;
            row.forEach(node -> node.x += shift);
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean downwards = sweep % 2 == 0;
            for (int i = 0; i < rows.size(); i++) {
                settle(rows.get(downwards ? i : rows.size() - 1 - i), Placement::wish);
            }
        }
        alignChains(rows);
        rows.stream().flatMap(List::stream).forEach(node -> alignPassages(node, rows));
        double left = rows.stream()
                .flatMap(List::stream)
                .mapToDouble(Node::left)
                .min()
                .orElse(0);
        rows.stream().flatMap(List::stream).forEach(node -> node.x += margin - left);
        ports(rows);
        double height = stack(layers, margin);
        double right = rows.stream()
                .flatMap(List::stream)
                .mapToDouble(Node::right)
                .max()
                .orElse(0);
        return new java.awt.geom.Rectangle2D.Double(0, 0, right + margin, height + margin);
    }

    /**
     * @param layers the layers
     * @param link a line
     * @return height at which it changes sides (px)
     */
    static double level(Layers layers, Link link) {
        return layers.bottom(link) + GAP / 2 + TRACK * (link.track + 0.5);
    }

    /** A line that passes several layers runs straight as far as the boxes leave room, then moves aside once. */
    private static void alignPassages(Node first, List<List<Node>> rows) {
        if (first.role != Node.Role.PASSAGE || first.up.get(0).from.role == Node.Role.PASSAGE) {
            return;
        }
        List<Node> run = new ArrayList<>();
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (Node node = first; node.role == Node.Role.PASSAGE; node = node.down.get(0).to) {
            List<Node> row = rows.get(node.layer);
            int i = row.indexOf(node);
            double left = i == 0 ? Double.NEGATIVE_INFINITY : row.get(i - 1).right() + CLOSE;
            double right = i == row.size() - 1
                    ? Double.POSITIVE_INFINITY
                    : row.get(i + 1).left() - CLOSE;
            if (Math.max(low, left) > Math.min(high, right)) {
                straighten(run, low, high);
                run.clear();
                low = Double.NEGATIVE_INFINITY;
                high = Double.POSITIVE_INFINITY;
            }
            low = Math.max(low, left);
            high = Math.min(high, right);
            run.add(node);
        }
        straighten(run, low, high);
    }

    private static void straighten(List<Node> run, double low, double high) {
        double mean = run.stream().mapToDouble(n -> n.x).average().orElse(0);
        double x = Math.max(low, Math.min(high, mean));
        run.forEach(node -> node.x = x);
    }

    /** What has one source that feeds nothing else stands right below it. */
    private static void alignChains(List<List<Node>> rows) {
        for (List<Node> row : rows) {
            settle(row, Placement::below);
        }
    }

    private static double below(Node node) {
        List<Link> flows =
                node.up.stream().filter(l -> l.kind == Link.Kind.FLOW).toList();
        boolean only = flows.size() == 1
                && flows.get(0).from.down.stream()
                                .filter(l -> l.kind == Link.Kind.FLOW)
                                .count()
                        == 1;
        return only ? flows.get(0).from.x : node.x;
    }

    /** Least squares of the distances to the wished places, with the order kept and everything apart. */
    private static void settle(List<Node> row, ToDoubleFunction<Node> wish) {
        int n = row.size();
        double[] offset = new double[n];
        for (int i = 1; i < n; i++) {
            offset[i] = offset[i - 1] + (row.get(i - 1).width + row.get(i).width) / 2 + APART;
        }
        List<double[]> blocks = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Node node = row.get(i);
            double weight = node.role == Node.Role.PASSAGE ? 6 : 1;
            double[] block = {weight * (wish.applyAsDouble(node) - offset[i]), weight, 1};
            blocks.add(block);
            while (blocks.size() > 1 && mean(blocks, 2) > mean(blocks, 1)) {
                double[] last = blocks.remove(blocks.size() - 1);
                double[] merged = blocks.get(blocks.size() - 1);
                merged[0] += last[0];
                merged[1] += last[1];
                merged[2] += last[2];
            }
        }
        int i = 0;
        for (double[] block : blocks) {
            for (int k = 0; k < (int) block[2]; k++, i++) {
                row.get(i).x = block[0] / block[1] + offset[i];
            }
        }
    }

    private static double mean(List<double[]> blocks, int fromEnd) {
        double[] block = blocks.get(blocks.size() - fromEnd);
        return block[0] / block[1];
    }

    private static double wish(Node node) {
        double sum = 0;
        double weight = 0;
        for (Link link : node.up) {
            double w = pull(link);
            sum += w * link.from.x;
            weight += w;
        }
        for (Link link : node.down) {
            double w = pull(link);
            sum += w * link.to.x;
            weight += w;
        }
        return weight == 0 ? node.x : sum / weight;
    }

    /** Flow decides where things stand; a shaft follows. */
    private static double pull(Link link) {
        if (link.from.role == Node.Role.PASSAGE && link.to.role == Node.Role.PASSAGE) {
            return link.kind == Link.Kind.SHAFT ? 6 : 8;
        }
        return link.kind == Link.Kind.FLOW ? 1 : 0.15;
    }

    /** Spreads the ends of several lines over the edge of a box, in the order of where they lead. */
    private static void ports(List<List<Node>> rows) {
        List<Node> nodes = rows.stream().flatMap(List::stream).toList();
        for (Node node : nodes) {
            node.down.sort(Comparator.comparingDouble(l -> l.to.x));
            node.up.sort(Comparator.comparingDouble(l -> l.from.x));
            for (int i = 0; i < node.down.size(); i++) {
                Link link = node.down.get(i);
                link.fromX = port(node, i, node.down.size());
            }
            for (int i = 0; i < node.up.size(); i++) {
                Link link = node.up.get(i);
                link.toX = port(node, i, node.up.size());
            }
        }
        straighten(nodes);
    }

    /** Where two ends nearly face each other the line is made straight. */
    private static void straighten(List<Node> nodes) {
        for (Link link : nodes.stream().flatMap(n -> n.down.stream()).toList()) {
            double shift = Math.abs(link.fromX - link.toX);
            if (link.to.role != Node.Role.PASSAGE && shift < NEARLY && inside(link.to, link.fromX)) {
                link.toX = link.fromX;
            } else if (link.from.role != Node.Role.PASSAGE && shift < NEARLY && inside(link.from, link.toX)) {
                link.fromX = link.toX;
            }
        }
    }

    private static boolean inside(Node node, double x) {
        return x > node.left() + 8 && x < node.right() - 8;
    }

    private static double port(Node node, int index, int count) {
        if (node.role == Node.Role.PASSAGE || node.width < SMALL) {
            return node.x;
        }
        double room = Math.min(node.width - 16, 30.0 * count);
        return count == 1 ? node.x : node.x - room / 2 + room * (index + 0.5) / count;
    }

    private static double stack(Layers layers, double margin) {
        double y = margin;
        for (int i = 0; i < layers.rows().size(); i++) {
            List<Node> row = layers.rows().get(i);
            double height = row.stream().mapToDouble(n -> n.height).max().orElse(0);
            for (Node node : row) {
                node.y = y + height / 2;
            }
            int layer = i;
            int tracks = Tracks.assign(
                    layers.links().stream().filter(l -> l.from.layer == layer).toList());
            y += height + GAP + TRACK * Math.max(1, tracks);
        }
        return y - GAP - TRACK;
    }
}

package dev.penstock.reports.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lines of one level through values on a rectangular grid, straight between the edges of the grid's cells, where the value is
 * taken as linear. A cell with a corner that has no value has no line. Not thread-safe.
 */
public final class Contours {

    private final List<Double> xs;
    private final List<Double> ys;
    private final Map<Integer, Double> values = new HashMap<>();

    /**
     * @param xs horizontal places of the grid, rising
     * @param ys vertical places of the grid, rising
     */
    public Contours(List<Double> xs, List<Double> ys) {
        this.xs = List.copyOf(xs);
        this.ys = List.copyOf(ys);
    }

    /**
     * @param x one of the horizontal places
     * @param y one of the vertical places
     * @param value finite value there
     */
    public void put(double x, double y, double value) {
        int i = xs.indexOf(x);
        int j = ys.indexOf(y);
        if (i >= 0 && j >= 0 && Double.isFinite(value)) {
            values.put(corner(i, j), value);
        }
    }

    private int corner(int i, int j) {
        return j * xs.size() + i;
    }

    /**
     * @param level level
     * @return its lines, each as the places it runs through; the first place again at the end of a closed one
     */
    public List<List<Curve.Point>> at(double level) {
        Map<Integer, Curve.Point> crossings = new LinkedHashMap<>();
        Map<Integer, List<Integer>> next = new HashMap<>();
        for (int j = 0; j + 1 < ys.size(); j++) {
            for (int i = 0; i + 1 < xs.size(); i++) {
                cell(i, j, level, crossings, next);
            }
        }
        return chains(crossings, next);
    }

    /** Edges of a cell: below, right, above, left. Each edge of the grid has one number, whichever cell asks. */
    private void cell(
            int i, int j, double level, Map<Integer, Curve.Point> crossings, Map<Integer, List<Integer>> next) {
        int[][] corners = {{i, j}, {i + 1, j}, {i + 1, j + 1}, {i, j + 1}};
        double sum = 0;
        for (int[] c : corners) {
            Double value = values.get(corner(c[0], c[1]));
            if (value == null) {
                return;
            }
            sum += value - level;
        }
        int[] edges = {2 * corner(i, j), 2 * corner(i + 1, j) + 1, 2 * corner(i, j + 1), 2 * corner(i, j) + 1};
        List<Integer> crossed = new ArrayList<>();
        for (int k = 0; k < edges.length; k++) {
            int[] a = corners[k];
            int[] b = corners[(k + 1) % corners.length];
            double from = values.get(corner(a[0], a[1])) - level;
            double to = values.get(corner(b[0], b[1])) - level;
            if (from >= 0 != to >= 0) {
                double share = from / (from - to);
                crossings.putIfAbsent(
                        edges[k],
                        new Curve.Point(
                                xs.get(a[0]) + share * (xs.get(b[0]) - xs.get(a[0])),
                                ys.get(a[1]) + share * (ys.get(b[1]) - ys.get(a[1]))));
                crossed.add(edges[k]);
            }
        }
        if (crossed.size() == 2) {
            join(crossed.get(0), crossed.get(1), next);
        } else if (crossed.size() == edges.length) {
            // Two opposite corners stand above the level: the middle of the cell decides whether they hang together.
            boolean together = sum >= 0 == values.get(corner(i, j)) - level >= 0;
            join(crossed.get(0), crossed.get(together ? 1 : 3), next);
            join(crossed.get(2), crossed.get(together ? 3 : 1), next);
        }
    }

    private static void join(int a, int b, Map<Integer, List<Integer>> next) {
        next.computeIfAbsent(a, e -> new ArrayList<>()).add(b);
        next.computeIfAbsent(b, e -> new ArrayList<>()).add(a);
    }

    private static List<List<Curve.Point>> chains(
            Map<Integer, Curve.Point> crossings, Map<Integer, List<Integer>> next) {
        List<List<Curve.Point>> lines = new ArrayList<>();
        Set<Integer> left = new LinkedHashSet<>(crossings.keySet());
        List<Integer> starts = new ArrayList<>(
                left.stream().filter(e -> next.get(e).size() == 1).toList());
        starts.addAll(left);
        for (int start : starts) {
            if (!left.remove(start)) {
                continue;
            }
            List<Curve.Point> line = new ArrayList<>(List.of(crossings.get(start)));
            int here = start;
            for (boolean on = true; on; ) {
                int from = here;
                on = false;
                for (int to : next.get(from)) {
                    if (!on && left.remove(to)) {
                        line.add(crossings.get(to));
                        here = to;
                        on = true;
                    }
                }
            }
            if (line.size() > 2
                    && next.get(here).contains(start)
                    && next.get(start).size() == 2) {
                line.add(crossings.get(start));
            }
            lines.add(line);
        }
        return lines;
    }
}

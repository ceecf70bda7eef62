package dev.penstock.cooling.march;

import dev.penstock.cooling.design.CoolantRoute;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A {@link CoolantRoute} laid over the cells of a grid: branches side by side, each a list of legs one after another. */
final class RoutePlan {

    private RoutePlan() {}

    /**
     * @param route route
     * @param grid cells, from the injector to the jacket's end
     * @param endAreaRatio nozzle area ratio of the jacket's end (-)
     * @return branches, each with its legs in flow order
     */
    static List<List<Leg>> of(CoolantRoute route, JacketGrid grid, double endAreaRatio) {
        int start = grid.first;
        int end = grid.cells - 1;
        return switch (route.kind()) {
            case COUNTERFLOW -> List.of(List.of(new Leg(end, start, 1, 1)));
            case PARALLEL -> List.of(List.of(new Leg(start, end, 1, 1)));
            case TWO_PASS -> List.of(List.of(new Leg(start, end, 0.5, 1), new Leg(end, start, 0.5, 1)));
            case PASS_AND_A_HALF -> passAndAHalf(grid, cellAt(grid, entry(route, endAreaRatio)));
            case CIRCUMFERENTIAL -> around(grid);
            case SPLIT -> split(grid, cellAt(grid, entry(route, endAreaRatio)), route.upstreamShare());
        };
    }

    /** Where coolant enters between the ends: logarithm of the area ratio; no cell may straddle it. */
    static OptionalDouble joint(CoolantRoute route, double endAreaRatio) {
        return switch (route.kind()) {
            case PASS_AND_A_HALF, SPLIT -> OptionalDouble.of(Math.log(entry(route, endAreaRatio)));
            default -> OptionalDouble.empty();
        };
    }

    private static double entry(CoolantRoute route, double endAreaRatio) {
        return route.entryAreaRatio()
                .orElse(route.kind() == CoolantRoute.Kind.SPLIT ? 1 : Math.max(1, endAreaRatio / 2));
    }

    /** Every cell by itself, with its part of the channels. */
    private static List<List<Leg>> around(JacketGrid grid) {
        List<List<Leg>> circuits = new ArrayList<>();
        for (int c = grid.first; c < grid.cells; c++) {
            double part = grid.length[c] / grid.wallLength;
            circuits.add(List.of(new Leg(c, c, 1, part, part)));
        }
        return circuits;
    }

    private static List<List<Leg>> passAndAHalf(JacketGrid grid, int entry) {
        int end = grid.cells - 1;
        List<Leg> legs = new ArrayList<>();
        legs.add(new Leg(entry, end, 0.5, 1));
        legs.add(new Leg(end, entry, 0.5, 1));
        if (entry > grid.first) {
            legs.add(new Leg(entry - 1, grid.first, 1, 1));
        }
        return List.of(legs);
    }

    private static List<List<Leg>> split(JacketGrid grid, int entry, double upstreamShare) {
        int end = grid.cells - 1;
        int first = Math.max(grid.first + 1, Math.min(end, entry));
        return List.of(
                List.of(new Leg(first - 1, grid.first, 1, upstreamShare)),
                List.of(new Leg(first, end, 1, 1 - upstreamShare)));
    }

    /** First cell of the jacket on the nozzle whose area ratio reaches the given one. */
    private static int cellAt(JacketGrid grid, double areaRatio) {
        for (int c = grid.first; c < grid.cells; c++) {
            if (grid.x[c] >= 0 && grid.areaRatio[c] >= areaRatio) {
                return c;
            }
        }
        return grid.cells - 1;
    }
}

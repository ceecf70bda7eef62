package dev.penstock.reports.study;

import dev.penstock.study.Axis;
import dev.penstock.study.Sweep;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The combinations of a sweep as people read them, with fewer digits than they were balanced with. */
final class CombinationText {

    private final List<Map<String, String>> axes;

    CombinationText(Sweep.Result sweep) {
        this.axes = sweep.axes().stream().map(Axis::read).toList();
    }

    /**
     * @param point a combination
     * @return value of each axis, in a new list
     */
    List<String> of(Sweep.Point point) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            String value = point.values().get(i);
            cells.add(axes.get(i).getOrDefault(value, value));
        }
        return cells;
    }
}

package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MapChartTest {

    private static final List<MapChart.Cell> CELLS = List.of(
            new MapChart.Cell(1, 1, 4.3, true),
            new MapChart.Cell(1, 2, 4.3, true),
            new MapChart.Cell(2, 1, -4.3, false),
            new MapChart.Cell(2, 2, -4.3, false));

    /** Where a limit hangs on one input alone, its line is upright or level. */
    @Test
    void uprightAndLevelLinesAreDrawn() {
        MapChart.Line upright = new MapChart.Line("A", true, List.of(new Curve.Point(1.5, 1), new Curve.Point(1.5, 2)));
        MapChart.Line level = new MapChart.Line("B", false, List.of(new Curve.Point(1, 1.5), new Curve.Point(2, 1.5)));
        String with = MapChart.svg("m", "margin", "x", "y", "%", CELLS, List.of(upright, level));
        String without = MapChart.svg("m", "margin", "x", "y", "%", CELLS);
        assertThat(with).doesNotContain("NaN").contains("> A <", "> B <");
        assertThat(with.split("<path ")).hasSizeGreaterThanOrEqualTo(without.split("<path ").length + 4);
    }
}

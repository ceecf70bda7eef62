package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FieldChartTest {

    private static final double[] XS = {1, 2, 3};
    private static final double[] YS = {1, 2};
    private static final SmoothField FIELD =
            SmoothField.through(XS, YS, new double[][] {{1, 2, 3}, {2, 3, Double.NaN}});
    private static final SmoothField MARGIN =
            SmoothField.through(XS, YS, new double[][] {{0.5, 0, -0.5}, {0.5, 0, -0.5}});
    private static final MapChart.Line BOUND =
            new MapChart.Line("A", true, List.of(new Curve.Point(2, 1), new Curve.Point(2, 2)));

    @Test
    void theLegendSaysWhatIsDrawn() {
        String svg = FieldChart.svg(
                "f",
                "t",
                "x (m)",
                "y (m)",
                "value (K)",
                FIELD,
                List.of(MARGIN),
                List.of(BOUND),
                List.of("A: wall begins to be missed"));
        assertThat(svg)
                .contains(">a limit is missed<", ">no solution<", ">A: wall begins to be missed<", "> A <", "clip-path")
                .doesNotContain(">one value<", "NaN");
    }

    @Test
    void whatIsNotDrawnIsNotInTheLegend() {
        SmoothField whole = SmoothField.through(XS, YS, new double[][] {{1, 2, 3}, {2, 3, 4}});
        String svg = FieldChart.svg("f", "t", "x", "y", "value", whole, List.of(), List.of(), List.of());
        assertThat(svg).doesNotContain(">a limit is missed<", ">no solution<", ">one value<");
    }

    /** A map that hardly differs has figures on its axis that do. */
    @Test
    void ticksOfAShortScaleDiffer() {
        SmoothField flat =
                SmoothField.through(XS, YS, new double[][] {{0.0001, 0.0002, 0.0003}, {0.0001, 0.0002, 0.0003}});
        String svg = FieldChart.svg("f", "t", "x", "y", "value", flat, List.of(), List.of(), List.of());
        assertThat(svg).contains(">0.0002<", ">0.0003<");
    }
}

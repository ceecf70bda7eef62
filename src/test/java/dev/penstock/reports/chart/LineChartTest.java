package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Vertical axes show all that a panel holds, read off the numbers that a chart carries with it. */
class LineChartTest {

    private static final Pattern AXIS =
            Pattern.compile("panels&quot;:\\[.*?low&quot;:([^,]+),&quot;high&quot;:([^,]+),");

    private static final List<LineChart.Band> BAND = List.of(new LineChart.Band(
            Ink.GAIN, List.of(new LineChart.Band.Edge(0, -5, 4), new LineChart.Band.Edge(1, 1, 20))));

    @Test
    void aBandAndALevelAreInside() {
        double[] axis = axis(panel(false, BAND, 1, 3).with(List.of(new LineChart.Level(10, "limit", Ink.STEEL))));
        assertThat(axis[0]).isLessThan(-5);
        assertThat(axis[1]).isGreaterThan(20);
    }

    @Test
    void aBandAroundALevelCurveIsInside() {
        double[] axis = axis(panel(false, BAND, 3, 3));
        assertThat(axis[0]).isLessThanOrEqualTo(-5);
        assertThat(axis[1]).isGreaterThanOrEqualTo(20);
    }

    @Test
    void anAxisFromZeroBeginsThereWhateverItShows() {
        assertThat(axis(panel(true, List.of(), 300, 300))[0]).isZero();
        assertThat(axis(panel(true, List.of(), 300, 301).with(List.of(new LineChart.Level(310, "limit", Ink.STEEL))))[
                        0])
                .isZero();
    }

    @Test
    void whatASolverLeavesIsNoSlope() {
        double[] axis = axis(panel(false, List.of(), 300, 300 + 1e-6));
        assertThat(axis[1] - axis[0]).isGreaterThan(0.5);
    }

    @Test
    void eachOfSeveralPanelsHasTheKeyOfItsOwnCurvesAbove() {
        Curve low = new Curve("low", Ink.GAS, false, List.of(new Curve.Point(0, 1), new Curve.Point(1, 2)));
        Curve high = new Curve("high", Ink.STEEL, true, List.of(new Curve.Point(0, 3), new Curve.Point(1, 4)));
        Curve alone = new Curve("thrust", Ink.GAS, false, low.points());
        List<LineChart.Panel> panels = List.of(
                new LineChart.Panel("thrust (kN)", 1, false, List.of(alone)),
                new LineChart.Panel("pressure (bar)", 1, false, List.of(low, high, low.asBefore())));
        String svg = LineChart.svg("c", "title", "x", panels, 400);
        String drawn = svg.substring(svg.indexOf("<title"));
        assertThat(drawn).doesNotContain(">thrust<").containsOnlyOnce(">low<").containsOnlyOnce(">high<");
        double bottom = Double.parseDouble(Pattern.compile("from&quot;:([\\d.]+)")
                .matcher(svg)
                .results()
                .skip(1)
                .findFirst()
                .orElseThrow()
                .group(1));
        Matcher key = Pattern.compile("<text[^>]* y=\"([\\d.]+)\"[^>]*>high<").matcher(drawn);
        assertThat(key.find()).isTrue();
        assertThat(Double.parseDouble(key.group(1))).isGreaterThan(bottom);
    }

    private static LineChart.Panel panel(boolean fromZero, List<LineChart.Band> bands, double first, double last) {
        Curve curve = new Curve("a", Ink.GAIN, false, List.of(new Curve.Point(0, first), new Curve.Point(1, last)));
        return new LineChart.Panel("y (m)", 1, fromZero, List.of(curve), bands);
    }

    private static double[] axis(LineChart.Panel panel) {
        Matcher found = AXIS.matcher(LineChart.svg("c", "title", "x", List.of(panel), 300));
        assertThat(found.find()).isTrue();
        return new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))};
    }
}

package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Bars with a value marked on them: what is written stays legible and what is marked stays on the sheet. */
class SpanChartTest {

    @Test
    void aFigureStandsBehindTheMarkThatWouldStrikeThroughIt() {
        // By hand: a figure of 40 px that begins at 100 px; the mark needs 4 px on each side.
        assertThat(SpanChart.behind(100, 40, 120)).isEqualTo(124);
        assertThat(SpanChart.behind(100, 40, 98)).isEqualTo(102);
        assertThat(SpanChart.behind(100, 40, 90)).isEqualTo(100);
        assertThat(SpanChart.behind(100, 40, 160)).isEqualTo(100);
        assertThat(SpanChart.behind(100, 40, Double.NaN)).isEqualTo(100);
    }

    @Test
    void aMarkFarBehindTheLongestBarIsStillOnTheSheet() {
        String svg = SpanChart.svg(
                "bars", "Bars", "pressure (bar)", true, List.of(new SpanChart.Bar("a", 0, 10, Ink.GAIN, "10", 40)));
        Matcher tick = Pattern.compile(">(\\d+)</text>").matcher(svg);
        double highest = 0;
        while (tick.find()) {
            highest = Math.max(highest, Double.parseDouble(tick.group(1)));
        }
        assertThat(highest).isGreaterThanOrEqualTo(40);
    }
}

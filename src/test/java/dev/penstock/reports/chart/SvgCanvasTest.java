package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SvgCanvasTest {

    private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");

    @Test
    void textIsMeasuredAsItIsSet() {
        SvgCanvas canvas = SvgCanvas.of("chart");
        for (String text : List.of("specific impulse, vacuum", "heat flux (MW/m²)", "")) {
            double measured = canvas.getFontMetrics(ChartFont.of(12))
                    .getStringBounds(text, canvas)
                    .getWidth();
            assertThat(measured).as(text).isCloseTo(ChartFont.width(text, 12), within(1e-6));
        }
    }

    @Test
    void everyIdBeginsWithThatOfTheDrawing() {
        String svg = chart("flow");
        assertThat(ID.matcher(svg).results().map(m -> m.group(1)))
                .contains("flow", "flow-title")
                .doesNotHaveDuplicates()
                .allMatch(id -> id.startsWith("flow"));
    }

    @Test
    void nothingStandsBeforeTheDrawingThatAPageCannotHold() {
        assertThat(chart("flow")).startsWith("<svg ").endsWith("</svg>").doesNotContain("<!DOCTYPE", "<?xml");
    }

    @Test
    void whiteFollowsTheThemeAsEveryInkDoes() {
        SvgCanvas canvas = SvgCanvas.of("chart");
        for (Ink ink : Ink.values()) {
            canvas.setPaint(ink.color());
            canvas.fill(new Rectangle2D.Double(0, 0, 3, 4));
        }
        String themed = Ink.themed(canvas.svg("all inks", 10, 10));
        assertThat(themed).doesNotContain("rgb(", "white");
        for (Ink ink : Ink.values()) {
            assertThat(themed).contains("fill:" + ink.css());
        }
    }

    @Test
    void titlesAndTextAreEscapedAndKeepTheirSigns() {
        SvgCanvas canvas = SvgCanvas.of("chart");
        canvas.drawString("p < 3 & µ", 1f, 2f);
        assertThat(canvas.svg("a & b", 10, 10)).contains(">a &amp; b<", ">p &lt; 3 &amp; µ<");
    }

    @Test
    void coordinatesHaveOneDecimalAndClipsStayWithTheShapesThatTheyCut() {
        SvgCanvas canvas = SvgCanvas.of("chart");
        canvas.clip(new Rectangle(1, 2, 30, 40));
        canvas.fill(new Rectangle2D.Double(1.234, 2, 33, 4));
        String svg = canvas.svg("clipped", 100, 100);
        assertThat(svg).contains("x=\"1.2\"").contains("clip-path:url(#chart-");
    }

    @Test
    void whatLiesInsideItsClipNamesNone() {
        SvgCanvas canvas = SvgCanvas.of("chart");
        canvas.clip(new Rectangle(1, 2, 90, 40));
        canvas.fill(new Rectangle2D.Double(2, 3, 3, 4));
        canvas.draw(new Line2D.Double(1, 5, 91, 5));
        canvas.drawString("inside", 10f, 20f);
        assertThat(canvas.svg("inside", 100, 100)).doesNotContain("clip-path:");
        canvas.drawString("outside", 80f, 20f);
        assertThat(canvas.svg("outside", 100, 100)).containsOnlyOnce("clip-path:");
    }

    private static String chart(String id) {
        Curve curve =
                new Curve("thrust", Ink.FUEL, true, List.of(new Curve.Point(0, 1), new Curve.Point(1, 2))).marked();
        LineChart.Panel panel = new LineChart.Panel("thrust (kN)", 1, true, List.of(curve));
        return LineChart.svg(
                id,
                "Thrust",
                "time (s)",
                List.of(panel, panel),
                400,
                List.of(new LineChart.Shade(0.2, 0.4)),
                List.of(new LineChart.Mark(0.5, "half")));
    }
}

package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class InkTest {

    /** Text and lines against sheet and plate. WCAG 2.2, success criterion 1.4.3: at least 4.5 to 1. */
    @ParameterizedTest
    @EnumSource(
            value = Ink.class,
            names = {"PAPER", "RULE", "PANEL"},
            mode = EnumSource.Mode.EXCLUDE)
    void linesAndTextStandOutOnBothPapers(Ink ink) {
        for (Ink ground : new Ink[] {Ink.PAPER, Ink.PANEL}) {
            assertThat(contrast(ink.lightCss(), ground.lightCss()))
                    .as("light on %s", ground)
                    .isGreaterThan(4.5);
            assertThat(contrast(ink.darkCss(), ground.darkCss()))
                    .as("dark on %s", ground)
                    .isGreaterThan(4.5);
        }
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Relative luminance, WCAG 2.2. */
    private static double luminance(String css) {
        int rgb = Integer.parseInt(css.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    }

    private static double linear(int channel) {
        double c = (channel & 0xff) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @EnumSource(Ink.class)
    void everyColourFollowsTheTheme(Ink ink) {
        String rgb = "rgb(" + ink.color().getRed() + "," + ink.color().getGreen() + ","
                + ink.color().getBlue() + ")";
        assertThat(Ink.themed("<path style='stroke:" + rgb + "'/>"))
                .isEqualTo("<path style='stroke:" + ink.css() + "'/>");
        assertThat(Ink.lightTheme()).contains(ink.variable() + ":" + ink.lightCss());
        assertThat(Ink.darkTheme()).contains(ink.variable() + ":" + ink.darkCss());
    }
}

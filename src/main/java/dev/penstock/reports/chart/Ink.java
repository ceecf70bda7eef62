package dev.penstock.reports.chart;

import dev.penstock.cycles.origin.Content;
import java.awt.Color;

/**
 * The colours of charts and diagrams, one pair each for light and dark paper. The lines keep a contrast of 4.5 to 1
 * against their paper; blue, amber, plum and teal stay apart for the common kinds of colour blindness, and every line is
 * also told by a dash or a label. In a page the colour is a CSS variable, so that one drawing serves both themes.
 */
public enum Ink {
    PAPER(0xffffff, 0x10191d),
    TEXT(0x16262c, 0xe6eef0),
    MUTED(0x52646b, 0xa3b5bb),
    RULE(0xd3dcdd, 0x33444b),
    PANEL(0xeef3f2, 0x1b282d),
    OXIDIZER(0x0f5f9e, 0x74b8f4),
    FUEL(0x9c5300, 0xf2aa55),
    GAS(0x97276b, 0xee8dc4),
    GAIN(0x08705f, 0x52c9b5),
    STEEL(0x55579a, 0xb0b3f5);

    private final int light;
    private final int dark;

    Ink(int light, int dark) {
        this.light = light;
        this.dark = dark;
    }

    /** @return colour on light paper */
    public Color color() {
        return new Color(light);
    }

    /**
     * @param onLight whether the paper is light
     * @return colour on such paper
     */
    public Color on(boolean onLight) {
        return new Color(onLight ? light : dark);
    }

    /** @return colour on light paper as drawings write it */
    public String rgb() {
        Color c = color();
        return "rgb(" + c.getRed() + "," + c.getGreen() + "," + c.getBlue() + ")";
    }

    /** @return name of the CSS variable */
    public String variable() {
        return "--ink-" + name().toLowerCase(java.util.Locale.ROOT);
    }

    /** @return colour as a CSS value that follows the page's theme */
    public String css() {
        return "var(" + variable() + ")";
    }

    /** @return colour on light paper as a CSS value */
    public String lightCss() {
        return String.format("#%06x", light);
    }

    /** @return colour on dark paper as a CSS value */
    public String darkCss() {
        return String.format("#%06x", dark);
    }

    /**
     * @param content what flows
     * @return the colour of its lines
     */
    public static Ink of(Content content) {
        return switch (content) {
            case OXIDIZER -> OXIDIZER;
            case FUEL -> FUEL;
            case BURNT_GAS -> GAS;
            case PRESSURANT -> GAIN;
            case DILUENT -> STEEL;
        };
    }

    /**
     * @param svg drawing made with the colours of light paper
     * @return the drawing with CSS variables in their place
     */
    public static String themed(String svg) {
        String result = svg;
        for (Ink ink : values()) {
            result = result.replace(ink.rgb(), ink.css());
        }
        return result;
    }

    /** @return declarations of all variables for light paper */
    public static String lightTheme() {
        return theme(true);
    }

    /** @return declarations of all variables for dark paper */
    public static String darkTheme() {
        return theme(false);
    }

    private static String theme(boolean onLight) {
        StringBuilder css = new StringBuilder();
        for (Ink ink : values()) {
            css.append(ink.variable()).append(':').append(onLight ? ink.lightCss() : ink.darkCss());
            css.append(';');
        }
        return css.toString();
    }
}

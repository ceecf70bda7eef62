package dev.penstock.reports.chart;

/**
 * A drawing of a page.
 *
 * @param svg drawing with the colours of light paper
 * @param caption what it shows and how to read it
 * @param wide whether it needs the whole width
 */
public record Drawing(String svg, String caption, boolean wide) {

    /** @return the drawing in the colours of the page's theme */
    public String themed() {
        return Ink.themed(svg);
    }
}

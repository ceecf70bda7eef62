package dev.penstock.reports.text;

/** Text made safe for HTML and SVG written without a template. */
public final class Markup {

    private Markup() {}

    /**
     * @param text any text
     * @return the text with the characters that markup uses replaced
     */
    public static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}

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

    /**
     * @param words words, with or without spaces around them
     * @return the words with a capital at their beginning
     */
    public static String capitalized(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}

package dev.penstock.validation;

import java.util.Locale;

/**
 * A computed figure beside a published one.
 *
 * @param what the figure, with its unit
 * @param published as published
 * @param computed by this program
 * @param target largest deviation aimed at (-); zero if none is set
 */
record Comparison(String what, double published, double computed, double target) {

    double deviation() {
        return computed / published - 1;
    }

    boolean met() {
        return Math.abs(deviation()) <= target;
    }

    String row(String first) {
        String verdict = target == 0 ? "" : met() ? "met" : "**missed**";
        return String.format(
                        Locale.ROOT,
                        "| %s | %s | %s | %s | %+.0f %% | %s | %s |%n",
                        first,
                        what,
                        digits(published),
                        digits(computed),
                        100 * deviation(),
                        target == 0 ? "" : String.format(Locale.ROOT, "%.0f %%", 100 * target),
                        verdict)
                .replace("\r\n", "\n");
    }

    static String digits(double x) {
        double size = Math.abs(x);
        String format = size >= 1000 ? "%.0f" : size >= 100 ? "%.1f" : size >= 1 ? "%.2f" : "%.4f";
        return String.format(Locale.ROOT, format, x);
    }
}

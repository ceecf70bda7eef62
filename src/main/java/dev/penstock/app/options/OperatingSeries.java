package dev.penstock.app.options;

import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;
import java.util.Optional;

/** Settings that commands take one by one, as a list or as a range, about hardware as it is built. */
public final class OperatingSeries {

    /** How a series is written. */
    public static final String WRITTEN = "write a number, several as 1,0.7 or a range as 1..0.5:6";

    private static final Range THROTTLES = Range.of(0.02, 1.5);
    private static final Range RATIOS = Range.of(0.05, 50);

    private OperatingSeries() {}

    /**
     * @param reader collects what is wrong
     * @param text what --throttle says
     * @return chamber pressures over that of the design (-)
     */
    public static List<Double> throttles(OptionReader reader, String text) {
        return reader.series("--throttle", text, Dimension.RATIO, THROTTLES, WRITTEN);
    }

    /**
     * @param reader collects what is wrong
     * @param text what --mixture-ratio says
     * @return mixture ratios leaving the tanks (-); empty where the option is not given
     */
    public static Optional<List<Double>> mixtureRatios(OptionReader reader, Optional<String> text) {
        return text.map(ratios -> reader.series("--mixture-ratio", ratios, Dimension.RATIO, RATIOS, WRITTEN));
    }
}

package dev.penstock.input;

import dev.penstock.provenance.Spread;
import java.util.List;
import java.util.Optional;

/**
 * What an input is taken to be where a file leaves it out. How sure a number is goes with it: the most likely value of the
 * spread <em>is</em> the default, so that a study samples about the value that the calculation takes.
 *
 * @param value the default, SI
 * @param spread how sure it is; empty for what an engineer chooses or counts
 * @param reason why, as part of a sentence; may be empty
 * @param source key into docs/sources.md, {@link #COMMON}, or empty for a mere choice
 * @param follows dotted keys of the inputs that it is made from; empty for a constant
 * @param <T> type of the value
 */
public record Usual<T>(T value, Optional<Spread> spread, String reason, String source, List<String> follows) {

    public Usual {
        follows = List.copyOf(follows);
    }

    /** What a default rests on when no publication is cited. */
    public static final String COMMON = "common practice, no source";

    /**
     * @param value the default, SI
     * @param reason why, as part of a sentence
     * @param source where it is from, may be empty
     * @param <T> type of the value
     * @return a default that counts as exact
     */
    public static <T> Usual<T> of(T value, String reason, String source) {
        return new Usual<>(value, Optional.empty(), reason, source, List.of());
    }

    /**
     * @param value the default, SI
     * @param <T> type of the value
     * @return a default of common practice that counts as exact
     */
    public static <T> Usual<T> common(T value) {
        return of(value, "", COMMON);
    }

    /**
     * @param spread lowest, most likely and highest value, SI; the most likely is the default
     * @param reason why, as part of a sentence
     * @param source where it is from
     * @return a default known within bounds
     */
    public static Usual<Double> of(Spread spread, String reason, String source) {
        boolean exact = spread.low() == spread.high();
        return new Usual<>(spread.mode(), exact ? Optional.empty() : Optional.of(spread), reason, source, List.of());
    }

    /**
     * @param low lowest value believed possible, SI
     * @param mode the default, SI
     * @param high highest value believed possible, SI
     * @param source where it is from
     * @return a default known within bounds
     */
    public static Usual<Double> between(double low, double mode, double high, String source) {
        return of(new Spread(low, mode, high), "", source);
    }

    /**
     * @param why as part of a sentence
     * @return the same for that reason
     */
    public Usual<T> because(String why) {
        return new Usual<>(value, spread, why, source, follows);
    }

    /**
     * @param keys dotted keys of the inputs that the value is made from
     * @return the same, made from those
     */
    public Usual<T> following(String... keys) {
        return new Usual<>(value, spread, reason, source, List.of(keys));
    }

    /** @return reason and source */
    public String basis() {
        return reason.isEmpty() || source.isEmpty() ? reason + source : reason + ", " + source;
    }
}

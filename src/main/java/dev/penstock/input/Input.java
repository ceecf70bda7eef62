package dev.penstock.input;

import dev.penstock.provenance.Scatter;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;
import java.util.Optional;

/**
 * One input, declared once: what reads it, shows it in a template, checks it, lists it in a report, samples it in a study
 * and describes it to an editor all ask this declaration.
 *
 * @param key key in its table
 * @param title what it is, as a sentence without its full stop
 * @param kind how its values are read and written, and what is allowed
 * @param silence what a file that leaves it out means
 * @param usual the default, where it is the same for every file
 * @param basis what a default follows from, or how the calculation finds the value; empty otherwise
 * @param scatter how far a value that follows or is computed may be off; empty for what counts as exact
 * @param example a value as a TOML file has it, for templates; empty where there is a default to show
 * @param belief where the value lies if nothing is known of it, for studies of many engines; empty where nobody asks
 * @param <T> type of the value
 */
public record Input<T>(
        String key,
        String title,
        InputKind<T> kind,
        Silence silence,
        Optional<Usual<T>> usual,
        String basis,
        Optional<Scatter> scatter,
        String example,
        Optional<Belief> belief) {

    /** What a file means that leaves an input out. */
    public enum Silence {
        /** It must not. */
        REQUIRED,
        /** The default that stands in the declaration. */
        USUAL,
        /** A default that follows from what else the file says. */
        FOLLOWS,
        /** The calculation finds the value, or goes without. */
        COMPUTED
    }

    private static <T> Input<T> of(String key, InputKind<T> kind, String title) {
        return new Input<>(
                key, title, kind, Silence.REQUIRED, Optional.empty(), "", Optional.empty(), "", Optional.empty());
    }

    /**
     * @param key key in its table
     * @param dimension what it measures
     * @param range what is allowed, SI
     * @param title what it is
     * @return a required number with its unit
     */
    public static Input<Double> quantity(String key, Dimension dimension, Range range, String title) {
        return of(key, new InputKind.Quantity(dimension, range), title);
    }

    /**
     * @param key key in its table
     * @param range what is allowed
     * @param title what it is
     * @return a required plain number
     */
    public static Input<Double> ratio(String key, Range range, String title) {
        return quantity(key, Dimension.RATIO, range, title);
    }

    /**
     * @param key key in its table
     * @param dimension what its numbers measure
     * @param range what is allowed, SI
     * @param title what it is
     * @return a required list of numbers with their units
     */
    public static Input<List<Double>> quantities(String key, Dimension dimension, Range range, String title) {
        return of(key, new InputKind.Many<>(new InputKind.Quantity(dimension, range)), title);
    }

    /**
     * @param key key in its table
     * @param low smallest allowed
     * @param high largest allowed
     * @param title what it is
     * @return a required whole number
     */
    public static Input<Integer> whole(String key, int low, int high, String title) {
        return of(key, new InputKind.Whole(low, high), title);
    }

    /**
     * @param key key in its table
     * @param type enum whose constants, in lower case with hyphens, are the choices
     * @param title what it is
     * @param <E> the enum
     * @return a required choice
     */
    public static <E extends Enum<E>> Input<E> choice(String key, Class<E> type, String title) {
        return of(key, new InputKind.Choice<>(type), title);
    }

    /**
     * @param key key in its table
     * @param names the choices
     * @param title what it is
     * @return a required choice
     */
    public static Input<String> word(String key, List<String> names, String title) {
        return of(key, new InputKind.Word(names), title);
    }

    /**
     * @param key key in its table
     * @param title what it is
     * @return a required true or false
     */
    public static Input<Boolean> flag(String key, String title) {
        return of(key, new InputKind.Flag(), title);
    }

    /**
     * @param key key in its table
     * @param title what it is
     * @return a required text
     */
    public static Input<String> text(String key, String title) {
        return of(key, new InputKind.Text(), title);
    }

    /**
     * @param key key in its table
     * @param title what it is
     * @return a required list of texts
     */
    public static Input<List<String>> texts(String key, String title) {
        return of(key, new InputKind.Many<>(new InputKind.Text()), title);
    }

    /**
     * @param standing the default of every file
     * @return the same input with that default
     */
    public Input<T> usual(Usual<T> standing) {
        return new Input<>(key, title, kind, Silence.USUAL, Optional.of(standing), "", scatter, example, belief);
    }

    /**
     * @param from what the default follows from, as part of a sentence
     * @return the same input with a default that is known once the rest of the file is
     */
    public Input<T> follows(String from) {
        return new Input<>(key, title, kind, Silence.FOLLOWS, Optional.empty(), from, scatter, example, belief);
    }

    /**
     * @param how how the calculation finds the value, as part of a sentence
     * @return the same input, left to the calculation
     */
    public Input<T> computed(String how) {
        return new Input<>(key, title, kind, Silence.COMPUTED, Optional.empty(), how, scatter, example, belief);
    }

    /**
     * @param bounds how far a value that follows or is computed may be off
     * @return the same input, known within bounds
     */
    public Input<T> scatter(Scatter bounds) {
        return new Input<>(key, title, kind, silence, usual, basis, Optional.of(bounds), example, belief);
    }

    /**
     * @param toml a value as a TOML file has it
     * @return the same input with that value to start from
     */
    public Input<T> example(String toml) {
        return new Input<>(key, title, kind, silence, usual, basis, scatter, toml, belief);
    }

    /**
     * @param range where the value lies if nothing is known of it
     * @return the same input with that belief
     */
    public Input<T> believed(Belief range) {
        return new Input<>(key, title, kind, silence, usual, basis, scatter, example, Optional.of(range));
    }

    /**
     * @return the default of every file
     * @throws IllegalStateException if the declaration has none (a defect in the caller)
     */
    public Usual<T> standing() {
        return usual.orElseThrow(() -> new IllegalStateException(key + " has no default that stands alone"));
    }

    /** @return what a file that leaves it out gets, in words; empty for a required input */
    public String whenAbsent() {
        return switch (silence) {
            case REQUIRED -> "";
            case USUAL -> standing().basis();
            case FOLLOWS, COMPUTED -> basis;
        };
    }

    /** Of the key alone: inputs are looked up often, and few share one. */
    @Override
    public int hashCode() {
        return key.hashCode();
    }
}

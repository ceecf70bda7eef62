package dev.penstock.app.options;

import dev.penstock.errors.InvalidInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.quantities.Units;
import dev.penstock.study.Axis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Reads the values of command-line options. Problems are noted and thrown together by {@link #finish()}, which must be
 * called before the values are used. Not thread-safe.
 */
public final class OptionReader {

    private final List<InvalidInput.Problem> problems = new ArrayList<>();

    /**
     * @param option name of the option
     * @param text what was written, empty if nothing
     * @param dimension kind of quantity
     * @param allowed allowed range, SI
     * @return the value in SI; NaN after a noted problem
     */
    public double quantity(String option, Optional<String> text, Dimension dimension, Range allowed) {
        if (text.isEmpty()) {
            problem(option, "missing", "write " + dimension.description());
        }
        return optional(option, text, dimension, allowed).orElse(Double.NaN);
    }

    /**
     * @param option name of the option
     * @param text what was written, empty if nothing
     * @param dimension kind of quantity
     * @param allowed allowed range, SI
     * @return the value in SI; empty if nothing was written, or after a noted problem
     */
    public OptionalDouble optional(String option, Optional<String> text, Dimension dimension, Range allowed) {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<Double> value = Units.parse(text.get(), dimension);
        if (value.isEmpty()) {
            problem(option, text.get(), "write " + dimension.description());
            return OptionalDouble.empty();
        }
        if (!allowed.contains(value.get())) {
            problem(option, text.get(), "allowed is " + Units.describe(allowed, text.get(), dimension));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value.get());
    }

    /**
     * @param option name of the option
     * @param texts what was written
     * @param dimension kind of the elements
     * @param allowed allowed range of each element, SI
     * @return the values in SI that could be read
     */
    public List<Double> list(String option, List<String> texts, Dimension dimension, Range allowed) {
        List<Double> values = new ArrayList<>();
        texts.forEach(
                text -> optional(option, Optional.of(text), dimension, allowed).ifPresent(values::add));
        return values;
    }

    /**
     * @param option name of the option
     * @param text what was written, as a sweep writes it: one value, several with commas, or a range with a count
     * @param dimension kind of the values
     * @param allowed allowed range of each value, SI
     * @param expected what to write, as the end of a sentence
     * @return the values in SI that could be read, in the order written
     */
    public List<Double> series(String option, String text, Dimension dimension, Range allowed, String expected) {
        List<String> words;
        try {
            words = Axis.parse("value=" + text).values();
        } catch (InvalidInput e) {
            problem(option, text, expected);
            return List.of();
        }
        return list(option, words, dimension, allowed);
    }

    /**
     * Runs a look-up that throws {@link InvalidInput}, and notes its problems under the option's name.
     *
     * @param option name of the option
     * @param text what was written, empty if nothing
     * @param expected what to write, as the end of a sentence
     * @param lookUp the look-up
     * @param <T> what is looked up
     * @return what was found, if anything
     */
    public <T> Optional<T> named(
            String option, Optional<String> text, String expected, java.util.function.Function<String, T> lookUp) {
        if (text.isEmpty()) {
            problem(option, "missing", expected);
            return Optional.empty();
        }
        Supplier<T> found = () -> lookUp.apply(text.get());
        try {
            return Optional.of(found.get());
        } catch (InvalidInput e) {
            for (InvalidInput.Problem problem : e.problems()) {
                boolean own = problem.where().isEmpty();
                problems.add(own ? new InvalidInput.Problem("", option, problem.value(), problem.allowed()) : problem);
            }
            return Optional.empty();
        }
    }

    /**
     * @param option name of the option
     * @param value what was written
     * @param allowed what is allowed, as the end of a sentence
     */
    public void problem(String option, String value, String allowed) {
        problems.add(new InvalidInput.Problem("", option, value, allowed));
    }

    /** @param question something that refuses by itself; what it refuses is noted with the rest */
    public void check(Runnable question) {
        try {
            question.run();
        } catch (InvalidInput e) {
            problems.addAll(e.problems());
        }
    }

    /** @throws InvalidInput with every problem noted so far, if there is any */
    public void finish() {
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
    }
}

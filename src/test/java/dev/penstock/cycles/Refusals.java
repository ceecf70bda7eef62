package dev.penstock.cycles;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Random refusals of a balance, put to the test: at a pressure that the sentence names as tried in vain, the same concept must
 * not close when it is asked of that pressure by itself. The expectation is what the sentence itself says.
 */
final class Refusals {

    private static final Pattern UPWARDS = Pattern.compile(
            "at ([0-9.e+-]+) MPa, tried next, and at the ([0-9.e+-]+) MPa asked for no balance was found");
    private static final Pattern NOWHERE = Pattern.compile("tried from ([0-9.e+-]+) to ([0-9.e+-]+) MPa");

    /** One refusal, the pressures asked again, and those of them that close after all. */
    record Case(String sentence, List<Double> asked, List<Double> closed) {}

    private final WideConcepts draws;

    Refusals(long seed) {
        this.draws = new WideConcepts(seed);
    }

    /**
     * @param stop asked before each concept
     * @return the next refusal that names pressures; empty if stopped before
     */
    Optional<Case> next(BooleanSupplier stop) {
        while (!stop.getAsBoolean()) {
            try {
                Concept concept = draws.next().concept();
                Optional<String> sentence = refusal(concept);
                Optional<double[]> named = sentence.flatMap(Refusals::named);
                if (named.isPresent()) {
                    return Optional.of(askAgain(concept, sentence.get(), named.get()));
                }
            } catch (PenstockException e) {
                // not a concept at all
            }
        }
        return Optional.empty();
    }

    private static Case askAgain(Concept concept, String sentence, double[] named) {
        List<Double> asked = new ArrayList<>();
        List<Double> closed = new ArrayList<>();
        for (double pressure : named) {
            asked.add(pressure);
            try {
                Concepts.STUDY.balance(concept.withChamberPressure(pressure));
                closed.add(pressure);
            } catch (PenstockException e) {
                // as the sentence says
            }
        }
        return new Case(sentence, asked, closed);
    }

    private static Optional<String> refusal(Concept concept) {
        try {
            Concepts.STUDY.balance(concept);
            return Optional.empty();
        } catch (LimitReached e) {
            return Optional.of(e.getMessage());
        } catch (PenstockException e) {
            return Optional.empty();
        }
    }

    /** First and last pressure that a sentence names as tried in vain (Pa). */
    private static Optional<double[]> named(String sentence) {
        Matcher upwards = UPWARDS.matcher(sentence);
        Matcher matcher = upwards.find() ? upwards : NOWHERE.matcher(sentence);
        if (matcher != upwards && !matcher.find()) {
            return Optional.empty();
        }
        double a = Double.parseDouble(matcher.group(1)) * 1e6;
        double b = Double.parseDouble(matcher.group(2)) * 1e6;
        return Optional.of(new double[] {a, b});
    }
}

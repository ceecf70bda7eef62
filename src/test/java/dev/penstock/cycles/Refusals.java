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
 * Random refusals of a balance, put to the test: at a pressure that the sentence excludes, the same concept must not close.
 * The expectation is what the sentence itself says.
 */
final class Refusals {

    private static final Pattern UPWARDS =
            Pattern.compile("tried from ([0-9.e+-]+) MPa to the ([0-9.e+-]+) MPa asked for no balance was found");
    private static final Pattern NOWHERE = Pattern.compile("tried from ([0-9.e+-]+) to ([0-9.e+-]+) MPa");

    /** One refusal, the pressures asked again, and those of them that close after all. */
    record Case(String sentence, List<Double> asked, List<Double> closed) {}

    private final WideConcepts draws;
    private final Dice dice;

    Refusals(long seed) {
        this.draws = new WideConcepts(seed);
        this.dice = new Dice(seed + 1);
    }

    /**
     * @param asks pressures asked again
     * @param stop asked before each concept
     * @return the next refusal that names pressures; empty if stopped before
     */
    Optional<Case> next(int asks, BooleanSupplier stop) {
        while (!stop.getAsBoolean()) {
            try {
                Concept concept = draws.next().concept();
                Optional<String> sentence = refusal(concept);
                Optional<double[]> range = sentence.flatMap(Refusals::excluded);
                if (range.isPresent()) {
                    return Optional.of(askAgain(concept, sentence.get(), range.get(), asks));
                }
            } catch (PenstockException e) {
                // not a concept at all
            }
        }
        return Optional.empty();
    }

    private Case askAgain(Concept concept, String sentence, double[] range, int asks) {
        List<Double> asked = new ArrayList<>();
        List<Double> closed = new ArrayList<>();
        for (int i = 0; i < asks; i++) {
            double pressure = dice.logarithmic(range[0], range[1]);
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

    /** Lowest and highest pressure that a sentence excludes (Pa). */
    private static Optional<double[]> excluded(String sentence) {
        Matcher upwards = UPWARDS.matcher(sentence);
        Matcher matcher = upwards.find() ? upwards : NOWHERE.matcher(sentence);
        if (matcher != upwards && !matcher.find()) {
            return Optional.empty();
        }
        double a = Double.parseDouble(matcher.group(1)) * 1e6;
        double b = Double.parseDouble(matcher.group(2)) * 1e6;
        return Optional.of(new double[] {Math.min(a, b), Math.max(a, b)});
    }
}

package dev.penstock.study;

import dev.penstock.cycles.questions.BuiltEngineMiss;
import dev.penstock.input.InputValue;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an engine's figures may turn out to be, given how sure its inputs are.
 *
 * @param inputs the inputs that were varied, by dotted key
 * @param samples engines sampled
 * @param closed how many of them close
 * @param failures why the others do not, in groups with counts, the most frequent first
 * @param distributions one per figure
 * @param tornados one per figure: what moves it, the strongest first
 */
public record UncertaintyResult(
        Map<String, InputValue> inputs,
        int samples,
        int closed,
        Map<String, Integer> failures,
        List<Distribution> distributions,
        List<Tornado> tornados) {

    /**
     * Spread of one figure: that of the samples, and what built engines miss beyond them.
     *
     * @param measure the figure
     * @param likely its value with every input at its most likely value, SI
     * @param mean mean of the samples, SI
     * @param standardDeviation of the samples and of what built engines miss beyond them, SI
     * @param beyond what built engines miss beyond the spreads of inputs, a standard deviation of the logarithm (-)
     * @param miss what they miss, all causes together; empty for a figure of which nothing is published
     * @param percentile5 value that 5 % of all cases stay below, SI
     * @param percentile25 the same for 25 %
     * @param median the same for 50 %
     * @param percentile75 the same for 75 %
     * @param percentile95 the same for 95 %
     */
    public record Distribution(
            Measure measure,
            double likely,
            double mean,
            double standardDeviation,
            double beyond,
            Optional<BuiltEngineMiss> miss,
            double percentile5,
            double percentile25,
            double median,
            double percentile75,
            double percentile95) {

        /**
         * @return why the most likely value lies outside nine tenths of the samples, in a sentence; empty where it does not, or
         *     where all samples give the same
         */
        public Optional<String> aside() {
            double round = 1e-6 * Math.abs(likely);
            if (likely >= percentile5 - round && likely <= percentile95 + round) {
                return Optional.empty();
            }
            return Optional.of("the most likely " + measure.name() + " lies "
                    + (likely > percentile95 ? "above" : "below")
                    + " nine tenths of the samples: of several bounds the least counts, and most spreads reach farther to one"
                    + " side than to the other");
        }
    }

    /**
     * What moves one figure.
     *
     * @param measure the figure
     * @param bars one per input that moves it, the longest first
     */
    public record Tornado(Measure measure, List<Bar> bars) {

        public Tornado {
            bars = List.copyOf(bars);
        }
    }

    /**
     * One input moved by itself.
     *
     * @param input dotted key
     * @param low the input at its 5th percentile, as a concept file would have it
     * @param high the input at its 95th percentile
     * @param atLow the figure with the input low, SI
     * @param atHigh the figure with the input high, SI
     */
    public record Bar(String input, String low, String high, double atLow, double atHigh) {

        /** @return distance between the two, SI */
        public double length() {
            return Math.abs(atHigh - atLow);
        }
    }

    public UncertaintyResult {
        inputs = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(inputs));
        failures = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(failures));
        distributions = List.copyOf(distributions);
        tornados = List.copyOf(tornados);
    }
}

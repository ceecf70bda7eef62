package dev.penstock.study.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What the rows of a study say together.
 *
 * @param name name of the study
 * @param points points of the whole study
 * @param batches batches of the whole study
 * @param finished finished batches
 * @param rows rows in the finished batches
 * @param answered rows with an answer
 * @param withinLimits rows whose answer keeps all its limits
 * @param constraintsKept rows whose answer keeps the constraints of the study; empty if it has none
 * @param figures how each figure is spread over the rows that have it
 * @param missed limits that are missed, the most frequent first
 * @param tightest limits with the least margin, the most frequent first
 * @param failures why rows have no answer, the most frequent first
 * @param frontier rows that keep all limits and constraints and that no other of those beats in both figures asked for
 */
public record StudySummary(
        String name,
        long points,
        long batches,
        long finished,
        long rows,
        long answered,
        long withinLimits,
        OptionalLong constraintsKept,
        List<Spread> figures,
        List<Share> missed,
        List<Share> tightest,
        List<Reason> failures,
        Optional<List<Map<String, Object>>> frontier) {

    /** Percentiles that a spread holds. */
    public static final List<Integer> PERCENTILES = List.of(5, 25, 50, 75, 95);

    public StudySummary {
        figures = List.copyOf(figures);
        missed = List.copyOf(missed);
        tightest = List.copyOf(tightest);
        failures = List.copyOf(failures);
    }

    /**
     * A figure over the rows, SI.
     *
     * @param figure its column
     * @param count rows that have it
     * @param least smallest value
     * @param most largest value
     * @param mean mean
     * @param percentiles values at {@link #PERCENTILES}
     */
    public record Spread(Column figure, long count, double least, double most, double mean, List<Double> percentiles) {

        public Spread {
            percentiles = List.copyOf(percentiles);
        }
    }

    /**
     * How many rows something holds for.
     *
     * @param name what
     * @param count rows
     */
    public record Share(String name, long count) {}

    /**
     * Failures that are alike: the same kind about the same subject, in the same words but for the numbers.
     *
     * @param kind what went wrong
     * @param subject what could not be solved
     * @param words the sentence with a # for every number
     * @param example one of the sentences
     * @param count rows
     */
    public record Reason(String kind, String subject, String words, String example, long count) {}
}

package dev.penstock.errors;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is said of samples that do not close: how many, what that means for percentiles, and why, in groups. */
public final class NotClosed {

    private NotClosed() {}

    /**
     * @param reasons one sentence per sample
     * @return how often each comes, the most frequent first; sentences that differ by their numbers alone are one reason, told by the
     *     first of them
     */
    public static Map<String, Integer> grouped(List<String> reasons) {
        Map<String, String> first = new LinkedHashMap<>();
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String reason : reasons) {
            counts.merge(first.computeIfAbsent(FailureTally.shape(reason), s -> reason), 1, Integer::sum);
        }
        Map<String, Integer> sorted = new LinkedHashMap<>();
        counts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .forEach(e -> sorted.put(e.getKey(), e.getValue()));
        return sorted;
    }

    /** @return a sentence for each group of reasons, as {@link #grouped} counts them */
    public static List<String> sentences(Map<String, Integer> grouped) {
        return grouped.entrySet().stream()
                .map(e -> e.getValue()
                        + (e.getValue() == 1 ? " sample does not close: " : " samples do not close, for example: ")
                        + e.getKey())
                .toList();
    }

    /**
     * @param closed samples that close
     * @param samples all of them
     * @return what the percentiles are of, in two sentences; empty where all close
     */
    public static Optional<String> meaning(int closed, int samples) {
        return closed == samples
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%.0f %% of the samples do not close, and the percentiles are of those that do. They say what comes out if it closes,"
                                + " not how likely that is: what does not close is no engine with those values, or one that was not found.",
                        100.0 * (samples - closed) / samples));
    }
}

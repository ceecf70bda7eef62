package dev.penstock.errors;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;

/** Counts why cases fail; sentences that differ in their numbers alone count as one reason. Thread-safe. */
public final class FailureTally {

    /**
     * A reason.
     *
     * @param count how many cases failed for it
     * @param example the sentence of one of them, the first by alphabet, so that threads do not decide which
     */
    public record Reason(int count, String example) {

        private Reason and(Reason other) {
            return new Reason(count + other.count, example.compareTo(other.example) <= 0 ? example : other.example);
        }
    }

    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d[\\d.,]*(?:[eE][-+]?\\d+)?");

    private final Map<String, Reason> reasons = new ConcurrentHashMap<>();
    private final AtomicInteger all = new AtomicInteger();

    /** A sentence without its numbers: sentences that are alike there tell one reason. */
    static String shape(String sentence) {
        return NUMBER.matcher(sentence).replaceAll("#");
    }

    /** @param sentence why a case failed */
    public void count(String sentence) {
        all.incrementAndGet();
        reasons.merge(shape(sentence), new Reason(1, sentence), Reason::and);
    }

    /** @return how many failed */
    public int all() {
        return all.get();
    }

    /** @return the reasons, the most frequent first */
    public List<Reason> reasons() {
        return reasons.values().stream()
                .sorted(Comparator.comparingInt((Reason r) -> -r.count).thenComparing(Reason::example))
                .toList();
    }

    /** @return the reason that was met most often, as a sentence with the numbers of one case */
    public Optional<String> foremost() {
        return reasons().stream().findFirst().map(Reason::example);
    }
}

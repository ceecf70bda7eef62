package dev.penstock.claims.likelihood;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** Counts why candidates do not close; reasons that differ in their numbers alone count as one. Thread-safe. */
public final class Failures {

    private record Reason(AtomicInteger count, String example) {}

    private final Map<String, Reason> reasons = new ConcurrentHashMap<>();
    private final AtomicInteger all = new AtomicInteger();

    void count(String sentence) {
        all.incrementAndGet();
        reasons.merge(
                sentence.replaceAll("[-+]?\\d[\\d.]*(?:[eE][-+]?\\d+)?", "#"),
                new Reason(new AtomicInteger(1), sentence),
                (a, b) -> {
                    a.count.incrementAndGet();
                    // The least of all sentences, so that threads do not decide which is shown.
                    return a.example.compareTo(b.example) <= 0 ? a : new Reason(a.count, b.example);
                });
    }

    /** @param sentence why no candidate can be made at all */
    public void noted(String sentence) {
        count(sentence);
    }

    /** @return how many did not close */
    public int all() {
        return all.get();
    }

    /** @return the reason that was met most often, as a sentence with the numbers of one case */
    public Optional<String> foremost() {
        return reasons.entrySet().stream()
                .max(Comparator.<Map.Entry<String, Reason>>comparingInt(
                                e -> e.getValue().count.get())
                        .thenComparing(Map.Entry::getKey))
                .map(e -> e.getValue().example);
    }
}

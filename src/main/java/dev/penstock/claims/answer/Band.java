package dev.penstock.claims.answer;

import dev.penstock.claims.file.Claim;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Percentiles of a number.
 *
 * @param p05 5th percentile, SI
 * @param p50 median, SI
 * @param p95 95th percentile, SI
 */
public record Band(double p05, double p50, double p95) {

    /** Fewer draws say nothing of a spread. */
    private static final double FEWEST = 3;

    /**
     * The same with an error of its own besides, which acts as a factor where no percentile is zero or less.
     *
     * @param deviation standard deviation of that error about the median, SI
     */
    Band widened(double deviation) {
        double more = Claim.NINETY * deviation;
        if (p05 > 0) {
            double factor = more / p50;
            return new Band(
                    p50 * Math.exp(-Math.hypot(Math.log(p50 / p05), factor)),
                    p50,
                    p50 * Math.exp(Math.hypot(Math.log(p95 / p50), factor)));
        }
        return new Band(p50 - Math.hypot(p50 - p05, more), p50, p50 + Math.hypot(p95 - p50, more));
    }

    /**
     * The same for one more draw of the distribution of which only a few were seen: ends are as much farther from the median as a
     * prediction interval of so many normal draws is wider than one of known mean and deviation.
     * <pre>k = t √(1 + 1/n)/1.645,  t = 95th percentile of Student's distribution of n − 1 degrees</pre>
     * Ends act as factors where no percentile is zero or less.
     *
     * @param effective number n of independent draws; fewer than three count as three
     */
    Band ofFew(double effective) {
        double n = Math.max(FEWEST, effective);
        double k =
                new TDistribution(null, n - 1).inverseCumulativeProbability(0.95) * Math.sqrt(1 + 1 / n) / Claim.NINETY;
        return p05 > 0
                ? new Band(p50 * Math.pow(p05 / p50, k), p50, p50 * Math.pow(p95 / p50, k))
                : new Band(p50 - k * (p50 - p05), p50, p50 + k * (p95 - p50));
    }

    /** The same, between two ends at most. */
    Band within(double low, double high) {
        return new Band(Math.max(low, p05), p50, Math.min(high, p95));
    }

    /**
     * Numbers with weights. Not thread-safe.
     */
    static final class Collected {

        private record Item(double value, double weight) {}

        private final List<Item> items = new ArrayList<>();
        private double sum;

        void add(double value, double weight) {
            if (Double.isFinite(value) && weight > 0) {
                items.add(new Item(value, weight));
                sum += weight;
            }
        }

        double mean() {
            return items.stream().mapToDouble(i -> i.value * i.weight / sum).sum();
        }

        double deviation() {
            double mean = mean();
            return Math.sqrt(items.stream()
                    .mapToDouble(i -> i.weight / sum * (i.value - mean) * (i.value - mean))
                    .sum());
        }

        /** The percentiles; empty without a number. */
        Optional<Band> band() {
            if (items.isEmpty()) {
                return Optional.empty();
            }
            items.sort(Comparator.comparingDouble(Item::value).thenComparingDouble(Item::weight));
            return Optional.of(new Band(quantile(0.05), quantile(0.5), quantile(0.95)));
        }

        private double quantile(double share) {
            double below = 0;
            for (int i = 0; i < items.size(); i++) {
                double middle = (below + 0.5 * items.get(i).weight) / sum;
                if (middle >= share) {
                    if (i == 0) {
                        return items.get(0).value;
                    }
                    double before = (below - 0.5 * items.get(i - 1).weight) / sum;
                    double part = (share - before) / (middle - before);
                    return items.get(i - 1).value + part * (items.get(i).value - items.get(i - 1).value);
                }
                below += items.get(i).weight;
            }
            return items.get(items.size() - 1).value;
        }
    }
}

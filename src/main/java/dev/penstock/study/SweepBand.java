package dev.penstock.study;

import java.util.Map;
import java.util.Optional;

/**
 * How far the figures of one combination may spread, given how sure the engine's inputs are.
 *
 * @param samples engines sampled
 * @param closed how many of them close
 * @param spans span by key of the figure; none of a figure that fewer than two samples have
 */
public record SweepBand(int samples, int closed, Map<String, Span> spans) {

    /**
     * @param low value that 5 % of the samples stay below, SI
     * @param high value that 95 % of the samples stay below, SI
     */
    public record Span(double low, double high) {}

    public SweepBand {
        spans = Map.copyOf(spans);
    }

    /**
     * @param measure a figure
     * @return its span, if it has one
     */
    public Optional<Span> of(Measure measure) {
        return Optional.ofNullable(spans.get(measure.key()));
    }
}

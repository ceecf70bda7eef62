package dev.penstock.cooling.design;

import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.errors.Require;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Channels of a jacket. With no sections the solver sizes them: the smallest coolant velocity that keeps the wall limits,
 * within a share of the chamber pressure as pressure drop.
 *
 * @param kind how they are made
 * @param count number of channels side by side at the throat (-); a sized layout may carry a fraction, so that a cycle
 *     sees a smooth function, and is rounded by whoever draws it
 * @param sections channel size by place, from upstream to downstream; empty to have them sized
 * @param roughness mean roughness of the passage (m); empty takes 3 µm milled, 1.5 µm tube, 10 µm printed
 */
public record ChannelLayout(
        ChannelKind kind, OptionalDouble count, List<ChannelSection> sections, OptionalDouble roughness) {

    public ChannelLayout {
        Objects.requireNonNull(kind, "kind");
        count.ifPresent(n -> Require.within("channels", "count (-)", n, 1, 1e5));
        roughness.ifPresent(e -> Require.notNegative("channels", "roughness (m)", e));
        sections = List.copyOf(sections);
        for (int i = 1; i < sections.size(); i++) {
            Require.positive(
                    "channels",
                    "distance from section " + (i - 1) + " to the next on the logarithm of area ratio (-)",
                    sections.get(i).place() - sections.get(i - 1).place());
        }
    }

    /** @return whether the solver has to choose the sizes */
    public boolean open() {
        return sections.isEmpty();
    }

    /**
     * @param factor factor on every height (-)
     * @return the same channels with other heights
     */
    public ChannelLayout taller(double factor) {
        List<ChannelSection> scaled = sections.stream()
                .map(s -> new ChannelSection(s.areaRatio(), s.upstream(), s.width(), factor * s.height(), s.wall()))
                .toList();
        return new ChannelLayout(kind, count, scaled, roughness);
    }

    /**
     * @param number number of channels side by side at the throat (-)
     * @return the same channels with their number named
     */
    public ChannelLayout counted(double number) {
        return new ChannelLayout(kind, OptionalDouble.of(number), sections, roughness);
    }

    /** @return roughness used (m) */
    public double roughnessUsed() {
        return roughness.orElse(
                switch (kind) {
                    case MILLED -> 3e-6;
                    case TUBE -> 1.5e-6;
                    case PRINTED -> 10e-6;
                });
    }
}

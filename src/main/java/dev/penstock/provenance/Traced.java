package dev.penstock.provenance;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A number on its way through a calculation, with the recorded values that it was made from. Arithmetic carries the paths
 * along, so that nobody has to say afterwards what went in. Where nothing is recorded the lists are empty and cost
 * nothing. Immutable.
 *
 * @param value the number, SI
 * @param from paths of the recorded values that went in, each once
 */
public record Traced(double value, List<String> from) {

    /**
     * @param value a number that comes from nowhere else, such as zero
     * @return the number
     */
    public static Traced of(double value) {
        return new Traced(value, List.of());
    }

    /**
     * @param value a number computed from others
     * @param parts those others
     * @return the number, with what they were made from
     */
    public static Traced made(double value, Traced... parts) {
        List<String> from = List.of();
        for (Traced part : parts) {
            from = union(from, part.from);
        }
        return new Traced(value, from);
    }

    /**
     * @param other what is added
     * @return the sum
     */
    public Traced plus(Traced other) {
        return new Traced(value + other.value, union(from, other.from));
    }

    /**
     * @param other what is taken off
     * @return the difference
     */
    public Traced minus(Traced other) {
        return new Traced(value - other.value, union(from, other.from));
    }

    /**
     * @param other factor
     * @return the product
     */
    public Traced times(Traced other) {
        return new Traced(value * other.value, union(from, other.from));
    }

    /**
     * @param other divisor
     * @return the quotient
     */
    public Traced over(Traced other) {
        return new Traced(value / other.value, union(from, other.from));
    }

    /** @return one plus this number */
    public Traced onePlus() {
        return new Traced(1 + value, from);
    }

    /** @return one minus this number */
    public Traced oneMinus() {
        return new Traced(1 - value, from);
    }

    /**
     * @param a a number
     * @param b another
     * @return the smaller, made from both: either could have been it
     */
    public static Traced least(Traced a, Traced b) {
        return made(Math.min(a.value, b.value), a, b);
    }

    /**
     * @param a a number
     * @param b another
     * @return the larger, made from both: either could have been it
     */
    public static Traced largest(Traced a, Traced b) {
        return made(Math.max(a.value, b.value), a, b);
    }

    private static List<String> union(List<String> a, List<String> b) {
        if (b.isEmpty() || a == b) {
            return a;
        }
        if (a.isEmpty()) {
            return b;
        }
        Set<String> all = new LinkedHashSet<>(a);
        all.addAll(b);
        return List.copyOf(all);
    }
}

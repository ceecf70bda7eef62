package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * What a mission asks of the rocket equation, term by term.
 *
 * @param terms contributions in the order of the table; credits are negative
 */
public record DeltaVBudget(List<Term> terms) {

    /** What a term stands for. */
    public enum Kind {
        /** Speed at the end, or the whole speed gain. */
        SPEED,
        /** Speed that the ground gives. */
        CREDIT,
        /** Speed lost on the way. */
        LOSS,
        /** Speed for manoeuvres after the ascent. */
        MANOEUVRE,
        /** Speed that is kept back. */
        RESERVE
    }

    /**
     * One contribution.
     *
     * @param kind what it stands for
     * @param name name, for example "gravity loss"
     * @param value speed (m/s); negative for a credit
     * @param source where the figure comes from
     */
    public record Term(Kind kind, String name, double value, String source) {

        public Term {
            Require.finite("delta-v budget", name + " (m/s)", value);
        }
    }

    public DeltaVBudget {
        terms = List.copyOf(terms);
        Require.positive("delta-v budget", "total (m/s)", sum(terms));
    }

    /**
     * @param deltaV ideal speed gain (m/s)
     * @return a budget of that one figure
     */
    public static DeltaVBudget of(double deltaV) {
        return new DeltaVBudget(List.of(new Term(Kind.SPEED, "ideal speed gain", deltaV, "given")));
    }

    /** @return ideal speed gain that the stages must deliver together (m/s) */
    public double total() {
        return sum(terms);
    }

    /** @return what must be left when the ascent ends, for manoeuvres and as reserve (m/s) */
    public double afterAscent() {
        return terms.stream()
                .filter(t -> t.kind() == Kind.MANOEUVRE || t.kind() == Kind.RESERVE)
                .mapToDouble(Term::value)
                .sum();
    }

    /**
     * @param flown speed, credit and losses of the ascent as flown
     * @return this budget with these in place of the assumed ones
     */
    public DeltaVBudget withAscent(List<Term> flown) {
        List<Term> changed = new ArrayList<>(flown);
        terms.stream()
                .filter(t -> t.kind() == Kind.MANOEUVRE || t.kind() == Kind.RESERVE)
                .forEach(changed::add);
        return new DeltaVBudget(changed);
    }

    private static double sum(List<Term> terms) {
        return terms.stream().mapToDouble(Term::value).sum();
    }
}

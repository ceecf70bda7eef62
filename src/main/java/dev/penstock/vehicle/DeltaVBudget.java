package dev.penstock.vehicle;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * What a mission asks of the rocket equation, term by term.
 *
 * @param terms contributions in the order of the table; credits are negative
 */
public record DeltaVBudget(List<Term> terms) {

    /**
     * One contribution.
     *
     * @param name name, for example "gravity loss"
     * @param value speed (m/s); negative for a credit
     * @param source where the figure comes from
     */
    public record Term(String name, double value, String source) {

        public Term {
            Require.finite("delta-v budget", name + " (m/s)", value);
        }
    }

    public DeltaVBudget {
        terms = List.copyOf(terms);
        Require.positive(
                "delta-v budget",
                "total (m/s)",
                terms.stream().mapToDouble(Term::value).sum());
    }

    /** @return ideal speed gain that the stages must deliver together (m/s) */
    public double total() {
        return terms.stream().mapToDouble(Term::value).sum();
    }
}

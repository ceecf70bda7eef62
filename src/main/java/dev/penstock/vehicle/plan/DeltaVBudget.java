package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a mission asks of the rocket equation, term by term.
 *
 * @param terms contributions in the order of the table; credits are negative
 */
public record DeltaVBudget(List<Term> terms) {

    /** What a reserve is, where it is stated as a share. */
    public static final ModelCard SHARE_KEPT = ModelCard.definition(
            "vehicle.reserve", "Share of the budget kept back", "x Σ Δv", "everywhere", "exact within its assumptions");

    /** Usual gravity loss (m/s): common practice, no source. */
    public static final int USUAL_GRAVITY_LOSS = 1300;

    /** Usual loss by drag, by steering, and by back pressure, each (m/s): common practice, no source. */
    public static final int USUAL_OTHER_LOSS = 100;

    /** What a loss of the ascent is, where neither figures nor a flight are there. */
    public static final ModelCard USUAL_LOSSES = new ModelCard(
            "vehicle.usual-losses",
            "Usual losses of an ascent",
            "Δv = f × " + USUAL_GRAVITY_LOSS + " m/s of gravity, " + USUAL_OTHER_LOSS
                    + " m/s each of drag, steering and back-pressure",
            "two stages to a low orbit",
            "a third either way, drag by more than half",
            List.of("common practice, no source"));

    /** What a term stands for. */
    public enum Kind {
        /** Speed at the end, or the whole delta-v. */
        SPEED,
        /** Speed that the ground gives. */
        CREDIT,
        /** Speed lost to drag in the ascent. */
        DRAG_LOSS,
        /** Speed lost otherwise in the ascent. */
        LOSS,
        /** Speed that raises the perigee after the ascent. */
        RAISING,
        /** Speed for other manoeuvres after the ascent. */
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
     * @param model model that gives it; empty if it comes from outside
     * @param inputs beginnings of the keys of the plan's inputs that it is made from
     */
    public record Term(
            Kind kind, String name, double value, String source, Optional<ModelCard> model, List<String> inputs) {

        public Term {
            Require.finite("delta-v budget", name + " (m/s)", value);
            inputs = List.copyOf(inputs);
        }

        /** @return whether it is kept for what follows the ascent */
        public boolean afterAscent() {
            return kind == Kind.RAISING || kind == Kind.MANOEUVRE || kind == Kind.RESERVE;
        }

        /** A term from outside. */
        public Term(Kind kind, String name, double value, String source) {
            this(kind, name, value, source, Optional.empty(), List.of());
        }
    }

    public DeltaVBudget {
        terms = List.copyOf(terms);
        Require.positive("delta-v budget", "total (m/s)", sum(terms));
    }

    /**
     * @param deltaV ideal delta-v (m/s)
     * @return a budget of that one figure
     */
    public static DeltaVBudget of(double deltaV) {
        return new DeltaVBudget(List.of(new Term(Kind.SPEED, "ideal delta-v", deltaV, "given")));
    }

    /** @return ideal delta-v that the stages must deliver together (m/s) */
    public double total() {
        return sum(terms);
    }

    /** @return what must be left when the ascent ends, for manoeuvres and as reserve (m/s) */
    public double afterAscent() {
        return terms.stream().filter(Term::afterAscent).mapToDouble(Term::value).sum();
    }

    /**
     * @param entry how the orbit is entered
     * @return what must be left then, with that way of raising the perigee (m/s)
     */
    public double afterAscent(OrbitEntry entry) {
        double kept = 0;
        for (Term term : terms) {
            kept += term.afterAscent() && term.kind() != Kind.RAISING ? term.value() : 0;
        }
        return kept + entry.raising();
    }

    /**
     * @param flown speed, credit and losses of the ascent as flown
     * @return this budget with these in place of the assumed ones
     */
    public DeltaVBudget withAscent(List<Term> flown) {
        List<Term> changed = new ArrayList<>(flown);
        terms.stream().filter(Term::afterAscent).forEach(changed::add);
        return new DeltaVBudget(changed);
    }

    /**
     * @param entry how the orbit is entered
     * @return this budget with that way of raising the perigee
     */
    public DeltaVBudget entering(OrbitEntry entry) {
        List<Term> changed = new ArrayList<>();
        terms.stream().filter(term -> term.kind() != Kind.RAISING).forEach(changed::add);
        entry.raisingTerm().ifPresent(changed::add);
        return new DeltaVBudget(changed);
    }

    private static double sum(List<Term> terms) {
        return terms.stream().mapToDouble(Term::value).sum();
    }
}

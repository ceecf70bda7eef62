package dev.penstock.claims.answer;

import dev.penstock.claims.file.Claim;
import dev.penstock.claims.likelihood.Hypothesis;
import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What follows from claims.
 *
 * @param name what the claims are about
 * @param verdict whether they fit together
 * @param sentences the verdict in words: what strains most, and the least change that would do
 * @param kinds kinds of engine, the most probable first
 * @param claims the claims, in the order of the file
 * @param unknowns inputs that were not certain
 * @param figures headline figures
 * @param about figure that further facts should narrow
 * @param nextFacts further facts, the most telling first
 * @param pairs samples of the unknowns and figures that are tied to each other, for a plot
 * @param bestConcept the best-fitting concept as the text of a concept file; empty without one
 * @param effectiveSamples number of independent samples that say as much
 * @param evaluations balances that were made
 * @param impossible how many of them did not close
 * @param seed what the random numbers started from
 * @param complete whether nobody stopped it
 * @param cautions what the reader must know
 */
public record Judgement(
        String name,
        Verdict verdict,
        List<String> sentences,
        List<Kind> kinds,
        List<Held> claims,
        List<Finding> unknowns,
        List<Finding> figures,
        String about,
        List<NextFact> nextFacts,
        List<Series> pairs,
        Optional<String> bestConcept,
        double effectiveSamples,
        int evaluations,
        int impossible,
        long seed,
        boolean complete,
        List<String> cautions) {

    /** Whether claims fit together. */
    public enum Verdict {
        CONSISTENT,
        STRAINED,
        CONTRADICTED,
        /** no engine is found at all, or none within a hard range */
        IMPOSSIBLE,
        /** the claims were not held against each other */
        UNDECIDED;

        /** @return its name in documents */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A kind of engine.
     *
     * @param hypothesis the kind
     * @param probability its probability (-)
     * @param logEvidence natural logarithm of its evidence; negative infinity without any engine
     * @param evidenceError standard error of that
     * @param reason why it is less probable than the first, or why it leads
     * @param medians medians of headline figures by path, SI
     */
    public record Kind(
            Hypothesis hypothesis,
            double probability,
            double logEvidence,
            double evidenceError,
            String reason,
            Map<String, Double> medians) {}

    /**
     * A claim held against the others.
     *
     * @param claim the claim
     * @param notation how people read it
     * @param posterior what follows for it from all claims
     * @param predicted what the other claims predict for it
     * @param tension how many standard deviations the claim lies above that (-)
     */
    public record Held(
            Claim claim, Notation notation, Optional<Band> posterior, Optional<Band> predicted, double tension) {}

    /**
     * A number before and after the claims.
     *
     * @param path path
     * @param title what it is
     * @param notation how people read it
     * @param prior before
     * @param posterior after
     * @param source where the prior comes from; empty for a figure
     */
    public record Finding(
            String path, String title, Notation notation, Optional<Band> prior, Band posterior, String source) {}

    /**
     * A further fact.
     *
     * @param path path of the figure
     * @param title what it is
     * @param gain share by which its knowledge narrows the figure in question (-)
     */
    public record NextFact(String path, String title, double gain) {}

    /**
     * Samples of a number, for a plot.
     *
     * @param path what it is
     * @param notation how people read it
     * @param values the samples, SI; NaN where there is none
     */
    public record Series(String path, Notation notation, List<Double> values) {

        public Series {
            values = List.copyOf(values);
        }
    }

    public Judgement {
        sentences = List.copyOf(sentences);
        kinds = List.copyOf(kinds);
        claims = List.copyOf(claims);
        unknowns = List.copyOf(unknowns);
        figures = List.copyOf(figures);
        nextFacts = List.copyOf(nextFacts);
        pairs = List.copyOf(pairs);
        cautions = List.copyOf(cautions);
    }
}

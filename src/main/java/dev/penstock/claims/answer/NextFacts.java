package dev.penstock.claims.answer;

import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which further fact would narrow a figure most.
 * <pre>
 * gain = 1 − E[s(x | y)]/s(x),  y measured within 2 % (half of a 90 % interval) and predicted within its doubt
 * </pre>
 * The expectation is over the samples: each in turn is taken as the truth, a measurement of it weighs the others.
 */
final class NextFacts {

    static final ModelCard CARD = new ModelCard(
            "claims.next-facts",
            "Expected narrowing of a figure by a further fact",
            "gain = 1 - E[s(x|y)]/s(x)",
            "facts known within 2 %",
            "that of the samples",
            List.of("common practice, no source"));

    private static final double WITHIN = 0.02;
    private static final int TRUTHS = 60;
    private static final double LEAST = 0.01;
    private static final int SHOWN = 8;

    private NextFacts() {}

    static List<Judgement.NextFact> of(Mixture mixture, ClaimsFile file, String about) {
        Set<String> known = new HashSet<>(WatchList.HIDDEN);
        file.claims().forEach(c -> known.add(c.path()));
        List<ClaimFigure> candidates = new ArrayList<>(WatchList.of(file));
        List<Judgement.NextFact> facts = new ArrayList<>();
        double[] x = values(mixture, about);
        for (ClaimFigure figure : candidates) {
            boolean claimed = file.claims().stream()
                    .anyMatch(c -> dev.penstock.claims.figure.ClaimPaths.figure(c.path())
                            .map(f -> f.path().equals(figure.path()))
                            .orElse(false));
            if (claimed || known.contains(figure.path()) || figure.path().equals(about)) {
                continue;
            }
            double gain = gain(mixture, x, figure.path());
            if (gain > LEAST) {
                facts.add(new Judgement.NextFact(figure.path(), figure.title(), gain));
            }
        }
        facts.sort(Comparator.comparingDouble(f -> -f.gain()));
        return facts.stream().limit(SHOWN).toList();
    }

    private static double[] values(Mixture mixture, String path) {
        return mixture.samples().stream()
                .mapToDouble(s -> Mixture.value(s, path))
                .toArray();
    }

    private static double gain(Mixture mixture, double[] x, String path) {
        double[] y = values(mixture, path);
        int n = x.length;
        double[] w =
                mixture.samples().stream().mapToDouble(Mixture.Weighted::weight).toArray();
        double whole = deviation(x, w);
        if (!(whole > 0)) {
            return 0;
        }
        double sum = 0;
        double weights = 0;
        int step = Math.max(1, n / TRUTHS);
        for (int truth = 0; truth < n; truth += step) {
            if (!Double.isFinite(y[truth]) || w[truth] == 0) {
                continue;
            }
            double sigma = Math.hypot(
                    WITHIN * Math.abs(y[truth]) / dev.penstock.claims.file.Claim.NINETY,
                    Mixture.doubt(mixture.samples().get(truth), path));
            if (!(sigma > 0)) {
                return 0;
            }
            double[] weighed = new double[n];
            for (int i = 0; i < n; i++) {
                double distance = (y[i] - y[truth]) / (Math.sqrt(2) * sigma);
                weighed[i] = Double.isFinite(distance) ? w[i] * Math.exp(-0.5 * distance * distance) : 0;
            }
            sum += w[truth] * deviation(x, weighed);
            weights += w[truth];
        }
        return weights > 0 ? 1 - sum / weights / whole : 0;
    }

    private static double deviation(double[] x, double[] weights) {
        Band.Collected collected = new Band.Collected();
        for (int i = 0; i < x.length; i++) {
            collected.add(x[i], weights[i]);
        }
        double deviation = collected.deviation();
        return Double.isFinite(deviation) ? deviation : 0;
    }
}

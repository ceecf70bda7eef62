package dev.penstock.claims.answer;

import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.claims.likelihood.ClaimLadder;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Hypothesis;
import dev.penstock.claims.likelihood.Nuisances;
import dev.penstock.claims.likelihood.ScoutedLadder;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.claims.prior.MainUnknowns;
import dev.penstock.cycles.Concepts;
import dev.penstock.errors.FailureTally;
import dev.penstock.numerics.sampling.Evaluation;
import dev.penstock.numerics.sampling.SampledPosterior;
import dev.penstock.numerics.sampling.SamplerEffort;
import dev.penstock.numerics.sampling.TemperedSampler;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Simulation-based calibration [talts-2018]: engines drawn from the prior, claims made from them with noise, and the share of
 * the samples that lies below the truth. These shares are uniform if priors, likelihoods and sampler belong together.
 */
public final class Calibration {

    public static final List<String> RANKED =
            List.of("engine.chamber_pressure_Pa", "engine.mixture_ratio", "engine.area_ratio", "engine.mass_kg");

    private static final String FILE =
            """
            name = "Drawn engine"
            cycle = "%s"
            [propellants]
            oxidizer = "oxygen"
            fuel = "methane"
            [claims."engine.isp_vacuum"]
            value = "%s s"
            within = "5 s"
            [claims."engine.exit_diameter"]
            value = "%s m"
            within = "0.05 m"
            [given]
            "engine.thrust_vacuum" = "40 kN"
            """;

    private final String cycle;
    private final int points;
    private final Workers workers;
    private final Map<String, List<Double>> shares = new LinkedHashMap<>();

    public Calibration(String cycle, int points, Workers workers) {
        this.cycle = cycle;
        this.points = points;
        this.workers = workers;
        RANKED.forEach(path -> shares.put(path, new ArrayList<>()));
    }

    private ClaimsFile file(double impulse, double diameter) {
        String text = String.format(Locale.ROOT, FILE, cycle, Double.toString(impulse), Double.toString(diameter));
        return new ClaimsReader(Concepts.FLUIDS).parse("drawn.toml", text, Map.of());
    }

    /** Share of the samples below the truth, by figure, one for each engine. */
    public Map<String, List<Double>> run(int engines, long seed) {
        ClaimsFile first = file(330, 1);
        Hypothesis kind = new Hypothesis(
                first.cycles().get(0), Concepts.FLUIDS.propellant("oxygen"), Concepts.FLUIDS.propellant("methane"));
        EngineModel main = new EngineModel(
                JudgeTest.WORKSHOP,
                first,
                kind,
                MainUnknowns.of(first, kind.oxidizer(), kind.fuel()),
                WatchList.of(first));
        Nuisances.Result found = new Nuisances(main, workers).find();
        EngineModel model = found.model().orElseThrow();
        SplittableRandom random = new SplittableRandom(seed);
        for (int e = 0; e < engines; e++) {
            Sighting truth = drawn(model, found.further(), random);
            double[] claimed = new double[2];
            for (int i = 0; i < claimed.length; i++) {
                double sigma = first.claims().get(i).sigma();
                double whole = Math.hypot(sigma, found.further().get(i));
                claimed[i] = truth.claims().get(i) + whole * random.nextGaussian();
            }
            ClaimsFile stated = file(claimed[0], Math.max(0.05, claimed[1]));
            EngineModel judged =
                    new EngineModel(JudgeTest.WORKSHOP, stated, kind, model.unknowns(), WatchList.of(stated));
            SampledPosterior<Sighting> posterior = new TemperedSampler<>(
                            ScoutedLadder.of(new ClaimLadder(judged, found.further(), new FailureTally()), workers),
                            SamplerEffort.usual(seed + e, 8 * points, 2 * points, points),
                            workers,
                            () -> false,
                            n -> {})
                    .run();
            rank(judged, truth, posterior, random);
        }
        return shares;
    }

    /** From the prior, as far as it closes, with the likelihood of its limits. */
    private static Sighting drawn(EngineModel model, List<Double> further, SplittableRandom random) {
        ClaimLadder prior = new ClaimLadder(model, further, new FailureTally());
        while (true) {
            double[] point = new double[model.unknowns().size()];
            for (int i = 0; i < point.length; i++) {
                point[i] = random.nextGaussian();
            }
            Evaluation<Sighting> evaluation = prior.evaluate(1, point);
            if (evaluation.possible()) {
                Sighting sighting = evaluation.detail().orElseThrow();
                double missed = Math.min(0, sighting.margin()) / 0.1;
                if (random.nextDouble() < Math.exp(-0.5 * missed * missed)) {
                    return sighting;
                }
            }
        }
    }

    private void rank(
            EngineModel model, Sighting truth, SampledPosterior<Sighting> posterior, SplittableRandom random) {
        for (String path : RANKED) {
            int at = 0;
            while (!model.watched().get(at).path().equals(path)) {
                at++;
            }
            int below = 0;
            for (SampledPosterior.Sample<Sighting> s : posterior.samples()) {
                below += s.evaluation().detail().orElseThrow().figures().get(at)
                                < truth.figures().get(at)
                        ? 1
                        : 0;
            }
            int all = posterior.samples().size();
            shares.get(path).add((below + random.nextDouble()) / (all + 1));
        }
    }

    /** Sum of (found − expected)²/expected over equal bins of the shares. */
    public static double chiSquare(List<Double> shares, int bins) {
        int[] counts = counts(shares, bins);
        double expected = (double) shares.size() / bins;
        double sum = 0;
        for (int count : counts) {
            sum += (count - expected) * (count - expected) / expected;
        }
        return sum;
    }

    public static int[] counts(List<Double> shares, int bins) {
        int[] counts = new int[bins];
        shares.forEach(s -> counts[Math.min(bins - 1, (int) (s * bins))]++);
        return counts;
    }
}

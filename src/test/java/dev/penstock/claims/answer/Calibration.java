package dev.penstock.claims.answer;

import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.claims.likelihood.ClaimLadder;
import dev.penstock.claims.likelihood.Doubt;
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
import java.util.Optional;
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

    private static final int LEARNT = 64;

    private final String cycle;
    private final int points;
    private final Workers workers;
    private final Hypothesis kind;
    private final EngineModel model;
    private final Nuisances.Result found;
    private final ScoutedLadder learnt;

    public Calibration(String cycle, int points, Workers workers) {
        this.cycle = cycle;
        this.points = points;
        this.workers = workers;
        ClaimsFile first = file(330, 1);
        this.kind = new Hypothesis(
                first.cycles().get(0), Concepts.FLUIDS.propellant("oxygen"), Concepts.FLUIDS.propellant("methane"));
        EngineModel main = new EngineModel(
                JudgeTest.WORKSHOP,
                first,
                kind,
                MainUnknowns.of(first, kind.cycle(), kind.oxidizer(), kind.fuel()),
                WatchList.of(first));
        this.found = new Nuisances(main, workers).find();
        this.model = found.model().orElseThrow();
        ClaimLadder ladder = new ClaimLadder(model, found.claims(), new FailureTally());
        List<double[]> prior = TemperedSampler.prior(ladder.dimensions(), LEARNT);
        List<Optional<Sighting>> seen = prior.stream()
                .map(p -> ladder.evaluate(ladder.levels() - 1, p).detail())
                .toList();
        this.learnt = ScoutedLadder.of(ladder.led(prior, seen, workers), workers);
    }

    private ClaimsFile file(double impulse, double diameter) {
        String text = String.format(Locale.ROOT, FILE, cycle, Double.toString(impulse), Double.toString(diameter));
        return new ClaimsReader(Concepts.FLUIDS).parse("drawn.toml", text, Map.of());
    }

    /** Shares of the samples below the truth, by figure, one for each engine. */
    public Map<String, List<Double>> run(int engines, long seed) {
        Map<String, List<Double>> shares = new LinkedHashMap<>();
        RANKED.forEach(path -> shares.put(path, new ArrayList<>()));
        for (int e = 0; e < engines; e++) {
            List<Double> one = engine(seed + e);
            for (int i = 0; i < one.size(); i++) {
                shares.get(RANKED.get(i)).add(one.get(i));
            }
        }
        return shares;
    }

    /** One engine: share of the samples below the truth for each ranked figure. The seed alone decides which engine it is. */
    public List<Double> engine(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Sighting truth = drawn(model, found.claims(), random);
        double[] claimed = new double[2];
        for (int i = 0; i < claimed.length; i++) {
            double sigma = model.claims().get(i).sigma();
            double whole =
                    Math.hypot(sigma, found.claims().get(i).of(truth.claims().get(i)));
            claimed[i] = truth.claims().get(i) + whole * random.nextGaussian();
        }
        ClaimsFile stated = file(claimed[0], Math.max(0.05, claimed[1]));
        EngineModel judged = new EngineModel(JudgeTest.WORKSHOP, stated, kind, model.unknowns(), WatchList.of(stated));
        SampledPosterior<Sighting> posterior = new TemperedSampler<>(
                        learnt.against(judged),
                        SamplerEffort.usual(seed, 8 * points, 2 * points, points),
                        workers,
                        () -> false,
                        n -> {})
                .run();
        return ranks(judged, truth, posterior, random);
    }

    /** From the prior, as far as it closes, with the likelihood of its limits. */
    private static Sighting drawn(EngineModel model, List<Doubt> doubts, SplittableRandom random) {
        ClaimLadder prior = new ClaimLadder(model, doubts, new FailureTally());
        while (true) {
            double[] point = new double[model.unknowns().size()];
            for (int i = 0; i < point.length; i++) {
                point[i] = random.nextGaussian();
            }
            Evaluation<Sighting> evaluation = prior.evaluate(1, point);
            if (evaluation.possible()) {
                Sighting sighting = evaluation.detail().orElseThrow();
                if (random.nextDouble() < Math.exp(ClaimLadder.limitsLogLikelihood(sighting))) {
                    return sighting;
                }
            }
        }
    }

    private static List<Double> ranks(
            EngineModel model, Sighting truth, SampledPosterior<Sighting> posterior, SplittableRandom random) {
        List<Double> shares = new ArrayList<>();
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
            shares.add((below + random.nextDouble()) / (all + 1));
        }
        return shares;
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

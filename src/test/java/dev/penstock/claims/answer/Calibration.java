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
import dev.penstock.numerics.LowDiscrepancy;
import dev.penstock.numerics.sampling.Evaluation;
import dev.penstock.numerics.sampling.SampledPosterior;
import dev.penstock.numerics.sampling.SamplerEffort;
import dev.penstock.numerics.sampling.Streams;
import dev.penstock.numerics.sampling.TemperedSampler;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.distribution.NormalDistribution;

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
    /** Whether its limits keep an engine, and the errors of two claims. */
    private static final int FURTHER = 3;

    private static final int MOST = 4096;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final Map<Integer, List<double[]>> EVEN = new ConcurrentHashMap<>();

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

    /** Shares of the samples below the truth, by figure, one for each engine that can be. */
    public Map<String, List<Double>> run(int engines) {
        Map<String, List<Double>> shares = new LinkedHashMap<>();
        RANKED.forEach(path -> shares.put(path, new ArrayList<>()));
        for (int e = 0; e < engines; e++) {
            List<Double> one = engine(e);
            for (int i = 0; i < one.size(); i++) {
                shares.get(RANKED.get(i)).add(one.get(i));
            }
        }
        return shares;
    }

    /**
     * One engine: share of the samples below the truth for each ranked figure; none if it does not close or misses its limits. The number
     * alone decides which engine it is: the engines lie as evenly over prior and errors of the claims as Sobol's points, so that few of
     * them already have the means that many random ones would have.
     *
     * @param number number of the engine, from 0
     */
    public List<Double> engine(int number) {
        int unknowns = model.unknowns().size();
        double[] even = EVEN.computeIfAbsent(
                        unknowns + FURTHER, d -> LowDiscrepancy.shifted(d, MOST, new SplittableRandom(1)))
                .get(number);
        double[] point = new double[unknowns];
        Arrays.setAll(point, i -> NORMAL.inverseCumulativeProbability(even[i]));
        Optional<Sighting> drawn = drawn(model, found.claims(), point, even[unknowns]);
        if (drawn.isEmpty()) {
            return List.of();
        }
        SplittableRandom random = new Streams(1).of(number);
        Sighting truth = drawn.get();
        double[] claimed = new double[2];
        for (int i = 0; i < claimed.length; i++) {
            double sigma = model.claims().get(i).sigma();
            double whole =
                    Math.hypot(sigma, found.claims().get(i).of(truth.claims().get(i)));
            claimed[i] = truth.claims().get(i) + whole * NORMAL.inverseCumulativeProbability(even[unknowns + 1 + i]);
        }
        ClaimsFile stated = file(claimed[0], Math.max(0.05, claimed[1]));
        EngineModel judged = new EngineModel(JudgeTest.WORKSHOP, stated, kind, model.unknowns(), WatchList.of(stated));
        SampledPosterior<Sighting> posterior =
                new TemperedSampler<>(learnt.against(judged), usual(number), workers, () -> false, n -> {}).run();
        return ranks(judged, truth, posterior, random);
    }

    /** What a judgement spends on a kind of engine. */
    private SamplerEffort usual(long seed) {
        JudgeEffort effort = new JudgeEffort(points, seed);
        return SamplerEffort.usual(seed, effort.scouts(points), effort.chambers(points), points);
    }

    /** At a point of the prior, as far as it closes, with the likelihood of its limits. */
    private static Optional<Sighting> drawn(EngineModel model, List<Doubt> doubts, double[] point, double chance) {
        Evaluation<Sighting> evaluation = new ClaimLadder(model, doubts, new FailureTally()).evaluate(1, point);
        return evaluation.detail().filter(s -> chance < Math.exp(ClaimLadder.limitsLogLikelihood(s)));
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

package dev.penstock.claims.answer;

import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.numerics.sampling.SampledPosterior;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The samples of all kinds of engines together, each kind with its probability. */
final class Mixture {

    /** A sample with its weight and the cloud that it is from. */
    record Weighted(Cloud cloud, Sighting sighting, double weight) {}

    /** Share of the most probable kind below which a kind is not followed further (-). */
    private static final double HOPELESS = 0.01;

    private static final double ERRORS = 3;

    private final List<Cloud> clouds;
    private final double[] probabilities;
    private final List<Weighted> samples = new ArrayList<>();

    Mixture(List<Cloud> clouds) {
        this.clouds = List.copyOf(clouds);
        double most = clouds.stream().mapToDouble(Cloud::logEvidence).max().orElse(Double.NEGATIVE_INFINITY);
        probabilities = clouds.stream()
                .mapToDouble(c -> c.samples().isEmpty() ? 0 : Math.exp(c.logEvidence() - most))
                .toArray();
        double sum = 0;
        for (double p : probabilities) {
            sum += p;
        }
        for (int i = 0; i < probabilities.length; i++) {
            probabilities[i] = sum > 0 ? probabilities[i] / sum : 0;
            for (SampledPosterior.Sample<Sighting> s : clouds.get(i).samples()) {
                samples.add(new Weighted(
                        clouds.get(i),
                        s.evaluation().detail().orElseThrow(),
                        probabilities[i] / clouds.get(i).samples().size()));
            }
        }
    }

    List<Cloud> clouds() {
        return clouds;
    }

    double probability(int cloud) {
        return probabilities[cloud];
    }

    /**
     * How probable each kind may still be beside the most probable one, three errors of both evidences notwithstanding (-). Nothing where a first
     * answer leaves less than a hundredth. Kinds without an answer yet have one; so does one that was sampled in vain only where no kind was found.
     */
    List<Double> hopes() {
        Optional<SampledPosterior<Sighting>> most = clouds.stream()
                .filter(c -> !c.samples().isEmpty())
                .max(Comparator.comparingDouble(Cloud::logEvidence))
                .flatMap(Cloud::posterior);
        return clouds.stream()
                .map(c -> most.isEmpty() || c.posterior().isEmpty() ? 1.0 : hope(c, most.get()))
                .toList();
    }

    private static double hope(Cloud cloud, SampledPosterior<Sighting> most) {
        double error = Math.hypot(cloud.posterior().orElseThrow().evidenceError(), most.evidenceError());
        double hope = Math.min(1, Math.exp(cloud.logEvidence() - most.logEvidence() + ERRORS * error));
        return hope > HOPELESS ? hope : 0;
    }

    List<Weighted> samples() {
        return samples;
    }

    boolean empty() {
        return samples.isEmpty();
    }

    Band.Collected collected(ToDoubleFunction<Weighted> of) {
        Band.Collected collected = new Band.Collected();
        samples.forEach(s -> collected.add(of.applyAsDouble(s), s.weight()));
        return collected;
    }

    /** Where an unknown or figure stands in a sighting of a cloud; NaN where the cloud does not have it. */
    static double value(Weighted sample, String path) {
        return sample.cloud()
                .model()
                .map(model -> {
                    int unknown = indexOf(model.unknowns(), u -> u.path(), path);
                    if (unknown >= 0) {
                        return sample.sighting().unknowns().get(unknown);
                    }
                    int figure = indexOf(model.watched(), ClaimFigure::path, path);
                    return figure >= 0 ? sample.sighting().figures().get(figure) : Double.NaN;
                })
                .orElse(Double.NaN);
    }

    /** How far an engine may be from a watched figure of its candidate (standard deviation, SI); zero for an unknown. */
    static double doubt(Weighted sample, String path) {
        int figure = sample.cloud()
                .model()
                .map(m -> indexOf(m.watched(), ClaimFigure::path, path))
                .orElse(-1);
        double value = value(sample, path);
        return figure >= 0 && Double.isFinite(value)
                ? sample.cloud().doubts().get(figure).of(value)
                : 0;
    }

    private static <T> int indexOf(List<T> list, Function<T, String> name, String path) {
        for (int i = 0; i < list.size(); i++) {
            if (name.apply(list.get(i)).equals(path)) {
                return i;
            }
        }
        return -1;
    }

    double effective() {
        double squares = 0;
        for (int i = 0; i < probabilities.length; i++) {
            double p = probabilities[i];
            Optional<SampledPosterior<Sighting>> posterior = clouds.get(i).posterior();
            if (p > 0 && posterior.isPresent()) {
                squares += p * p / Math.max(1, posterior.get().effective());
            }
        }
        return squares > 0 ? 1 / squares : 0;
    }
}

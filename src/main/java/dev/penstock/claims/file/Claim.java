package dev.penstock.claims.file;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A fact that somebody states of an engine or a vehicle.
 * <pre>
 * ln L = −½ d²/(σ² + s²) − ½ ln(1 + s²/σ²),  d = distance of the predicted value from the value that is claimed, s = doubt of the
 *        prediction
 * ln L = −½ d²/(σ² + s²),  d = distance from the range, where a range is claimed
 * </pre>
 * Of masses and of what is divided by one the logarithm is normal: ln L of ln p, the ends of ranges and σ as shares of what is claimed.
 * They are positive, and stated or predicted within tens of per cent, where a normal error would allow none at all.
 * The second term of a value keeps a kind of engine that is predicted less surely from being the more probable for it.
 * The half of a 90 % interval is 1.645 σ. The edges of a hard range are not quite hard, so that a search finds its way into
 * it: σ is a fiftieth of the range, or half a per cent of a bound with nothing on its other side (a choice, no source).
 *
 * @param path path as the file has it
 * @param value the value claimed, SI; empty for a range
 * @param low lower end of a 90 % interval or of the range, SI; empty if there is none
 * @param high upper end, SI; empty if there is none
 * @param sigma standard deviation, of an edge for a range, SI
 * @param source where it was stated
 */
public record Claim(
        String path, OptionalDouble value, OptionalDouble low, OptionalDouble high, double sigma, String source) {

    public static final ModelCard CARD = new ModelCard(
            "claims.likelihood",
            "Likelihood of a claim",
            "ln L = -d^2/(sigma^2 + s^2)/2 - ln(1 + s^2/sigma^2)/2, sigma = half of a 90 % interval / 1.645, s = doubt",
            "claims whose errors are independent of each other",
            "not stated: it is what the claims file says of its own claims",
            List.of("common practice, no source"));

    /** Standard deviations to the 95th percentile of a normal distribution. */
    public static final double NINETY = 1.6448536269514722;

    /** Masses of engines and vehicles and what is divided by one; a payload may come out below nothing. */
    private static final Pattern POSITIVE =
            Pattern.compile("(engine|vehicle)\\.(?!payload|mass_flow).*(mass|thrust_to_weight).*");

    /** Half of the 90 % interval of a claim that does not say how sure it is, as a share: common practice, no source. */
    public static final double USUAL_SHARE = 0.02;

    private static final double EDGE_OF_RANGE = 0.02;
    private static final double EDGE_OF_BOUND = 0.005;

    public Claim {
        if (!(sigma > 0) || value.isEmpty() && low.isEmpty() && high.isEmpty()) {
            throw new IllegalArgumentException(path + " needs a value or a bound, and a positive deviation");
        }
    }

    /** A value with half of its 90 % interval. */
    static Claim within(String path, double value, double half, String source) {
        return new Claim(
                path,
                OptionalDouble.of(value),
                OptionalDouble.of(value - half),
                OptionalDouble.of(value + half),
                half / NINETY,
                source);
    }

    /** A range that is open on one side or on none. */
    static Claim range(String path, OptionalDouble low, OptionalDouble high, OptionalDouble half, String source) {
        double edge = low.isPresent() && high.isPresent()
                ? EDGE_OF_RANGE * (high.getAsDouble() - low.getAsDouble())
                : EDGE_OF_BOUND * Math.abs(low.orElse(high.orElse(0)));
        double sigma = half.isPresent() ? half.getAsDouble() / NINETY : edge > 0 ? edge : EDGE_OF_BOUND;
        return new Claim(path, OptionalDouble.empty(), low, high, sigma, source);
    }

    /**
     * @param predicted a predicted value, SI
     * @return how many standard deviations it lies above the claim (-); negative below, zero within a range
     */
    public double surplus(double predicted) {
        if (value.isPresent()) {
            return surplus(predicted, value.getAsDouble());
        }
        if (low.isPresent() && predicted < low.getAsDouble()) {
            return surplus(predicted, low.getAsDouble());
        }
        return high.isPresent() && predicted > high.getAsDouble() ? surplus(predicted, high.getAsDouble()) : 0;
    }

    private double surplus(double predicted, double stated) {
        return logarithmic() && predicted > 0
                ? Math.log(predicted / stated) * stated / sigma
                : (predicted - stated) / sigma;
    }

    /**
     * @param from a value, SI
     * @param to another, SI
     * @return how far the one is from the other as this claim counts, SI
     */
    public double distance(double from, double to) {
        return logarithmic() && from > 0 && to > 0 ? centre() * Math.log(to / from) : to - from;
    }

    /** @return whether the logarithm of what is claimed is normal */
    public boolean logarithmic() {
        return POSITIVE.matcher(path).matches() && low.orElse(1) > 0 && value.orElse(1) > 0 && high.orElse(1) > 0;
    }

    /**
     * @param predicted a predicted value, SI
     * @param further standard deviation of the prediction itself, SI
     * @return natural logarithm of the likelihood but for a constant
     */
    public double logLikelihood(double predicted, double further) {
        double doubt = logarithmic() && predicted > 0 ? further * centre() / predicted : further;
        double distance = surplus(predicted) * sigma;
        double spread = value.isPresent() ? Math.log1p(doubt * doubt / (sigma * sigma)) : 0;
        return -0.5 * (distance * distance / (sigma * sigma + doubt * doubt) + spread);
    }

    /** @return the value in the middle of the claim, or the bound that there is, SI */
    public double centre() {
        return value.orElseGet(() -> low.isPresent() && high.isPresent()
                ? 0.5 * (low.getAsDouble() + high.getAsDouble())
                : low.orElse(high.orElse(0)));
    }
}

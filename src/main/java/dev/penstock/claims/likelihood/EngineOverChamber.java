package dev.penstock.claims.likelihood;

import dev.penstock.numerics.sampling.ResponseSurface;
import dev.penstock.numerics.sampling.ShareSurface;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the whole engine does beside its chamber alone, learnt from the candidates of the prior that close: a surface of the
 * ratio of both where the chamber predicts the claimed figure, one of the figure itself where it does not (a mass, a turbine
 * power), and one of the share that closes within its limits. It only leads the way; what it is off by widens what it says. Immutable.
 */
final class EngineOverChamber {

    /** Nothing was seen yet. */
    static final EngineOverChamber UNKNOWN = new EngineOverChamber(List.of(), Optional.empty());

    /** A surface, and whether it is one of a ratio to what the chamber alone predicts. */
    private record Learnt(ResponseSurface surface, boolean ratio) {}

    private final List<Optional<Learnt>> claims;
    private final Optional<ShareSurface> closing;

    private EngineOverChamber(List<Optional<Learnt>> claims, Optional<ShareSurface> closing) {
        this.claims = List.copyOf(claims);
        this.closing = closing;
    }

    /**
     * @param places places of points, see {@link EngineModel#place}
     * @param alone what the chamber alone predicts there for each claim, SI; NaN where it says nothing of it
     * @param seen the engine there; empty where none closes
     * @param exact which claims speak of an unknown itself, of which nothing is to be learnt
     * @return what was learnt
     */
    static EngineOverChamber of(
            List<double[]> places, double[][] alone, List<Optional<Sighting>> seen, List<Boolean> exact) {
        List<Optional<Learnt>> claims = new ArrayList<>();
        for (int claim = 0; claim < exact.size(); claim++) {
            double[] values = new double[places.size()];
            boolean ratio = false;
            for (int i = 0; i < values.length; i++) {
                boolean both = seen.get(i).isPresent() && Double.isFinite(alone[i][claim]);
                ratio |= both;
                values[i] = seen.get(i).isEmpty()
                        ? Double.NaN
                        : seen.get(i).get().claims().get(claim) / (both ? alone[i][claim] : 1);
            }
            boolean ofChamber = ratio;
            claims.add(
                    exact.get(claim)
                            ? Optional.empty()
                            : ResponseSurface.of(places, values).map(s -> new Learnt(s, ofChamber)));
        }
        double[] kept = seen.stream()
                .mapToDouble(s ->
                        s.map(e -> Math.exp(ClaimLadder.limitsLogLikelihood(e))).orElse(0.0))
                .toArray();
        return new EngineOverChamber(claims, Optional.of(ShareSurface.of(places, kept)));
    }

    /**
     * @param place place of a point, see {@link EngineModel#place}
     * @return natural logarithm of the share of engines there that close within their limits, about
     */
    double closing(double[] place) {
        return closing.map(c -> Math.log(c.value(place))).orElse(0.0);
    }

    /**
     * A prediction for the whole engine.
     *
     * @param value prediction, SI; NaN where there is none
     * @param doubt its standard deviation, SI
     */
    record Led(double value, double doubt) {}

    /**
     * @param claim number of a claim
     * @param place place of a point, see {@link EngineModel#place}
     * @param alone what the chamber alone predicts, SI; NaN where it says nothing of it
     * @param doubt how far the engine may be from that where nothing better was learnt, SI
     */
    Led led(int claim, double[] place, double alone, double doubt) {
        Optional<Learnt> learnt = claims.isEmpty() ? Optional.empty() : claims.get(claim);
        if (learnt.isEmpty() || learnt.get().ratio() && !Double.isFinite(alone)) {
            return new Led(alone, doubt);
        }
        double scale = learnt.get().ratio() ? alone : 1;
        double value = learnt.get().surface().value(place);
        double error = learnt.get().surface().error(value) * Math.abs(scale);
        return learnt.get().ratio() && error > doubt ? new Led(alone, doubt) : new Led(value * scale, error);
    }
}

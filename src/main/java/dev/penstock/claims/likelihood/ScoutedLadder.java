package dev.penstock.claims.likelihood;

import dev.penstock.numerics.sampling.Evaluation;
import dev.penstock.numerics.sampling.Ladder;
import dev.penstock.numerics.sampling.ResponseSurface;
import dev.penstock.numerics.sampling.TemperedSampler;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A ladder of claims with a step before it that costs next to nothing: surfaces learnt from some thrust chambers. They lead
 * the way, each as far as it can be trusted; no answer is read off them.
 */
public final class ScoutedLadder implements Ladder<Sighting> {

    private final ClaimLadder ladder;
    private final List<Optional<ResponseSurface>> surfaces;

    private ScoutedLadder(ClaimLadder ladder, List<Optional<ResponseSurface>> surfaces) {
        this.ladder = ladder;
        this.surfaces = List.copyOf(surfaces);
    }

    /**
     * @param ladder what the chamber alone and the whole engine say of all claims
     * @param workers make the chambers to learn from
     * @return the ladder with a step before it
     */
    public static ScoutedLadder of(ClaimLadder ladder, Workers workers) {
        List<double[]> points = TemperedSampler.prior(ladder.dimensions(), ResponseSurface.wanted(ladder.dimensions()));
        List<double[]> places = points.stream().map(ladder::place).toList();
        double[][] predicted = new double[points.size()][];
        workers.forEach(predicted.length, i -> predicted[i] = ladder.byChamberAlone(points.get(i)));
        List<Optional<ResponseSurface>> surfaces = new ArrayList<>();
        for (int claim = 0; claim < ladder.claims(); claim++) {
            double[] values = new double[predicted.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = predicted[i][claim];
            }
            surfaces.add(ResponseSurface.of(places, values));
        }
        return new ScoutedLadder(ladder, surfaces);
    }

    /** @return the ladder behind the first step */
    public ClaimLadder claims() {
        return ladder;
    }

    /**
     * @param other a model with the same unknowns and with claims on the same paths, but other values claimed
     * @return the likelihood of those claims, led by what was learnt already
     */
    public ScoutedLadder against(EngineModel other) {
        return new ScoutedLadder(ladder.against(other), surfaces);
    }

    /**
     * @param claim number of a claim
     * @return the likelihood of all other claims
     */
    public ScoutedLadder without(int claim) {
        return new ScoutedLadder(ladder.without(claim), surfaces);
    }

    @Override
    public int dimensions() {
        return ladder.dimensions();
    }

    @Override
    public int levels() {
        return 1 + ladder.levels();
    }

    @Override
    public Evaluation<Sighting> evaluate(int level, double[] point) {
        return level == 0 ? scouted(point) : ladder.evaluate(level - 1, point);
    }

    private Evaluation<Sighting> scouted(double[] point) {
        double[] place = ladder.place(point);
        double[] predicted = new double[surfaces.size()];
        double[] errors = new double[surfaces.size()];
        for (int i = 0; i < predicted.length; i++) {
            Optional<ResponseSurface> surface = surfaces.get(i);
            predicted[i] = surface.isPresent() ? surface.get().value(place) : Double.NaN;
            errors[i] = surface.isPresent() ? surface.get().error(predicted[i]) : 0;
        }
        return ladder.loosely(place, predicted, errors);
    }
}

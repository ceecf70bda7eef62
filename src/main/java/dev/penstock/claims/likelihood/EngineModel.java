package dev.penstock.claims.likelihood;

import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.claims.figure.Candidate;
import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.prior.Unknown;
import dev.penstock.cycles.concept.Concept;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Makes the candidate of a hypothesis at given values of its unknowns, and reads off it what claims speak of. */
public final class EngineModel {

    private static final String EFFICIENCIES = ChamberInputs.EFFICIENCIES.key() + ".";

    private final Workshop workshop;
    private final ClaimsFile file;
    private final Hypothesis hypothesis;
    private final List<Unknown> unknowns;
    private final List<ClaimFigure> watched;
    private final Map<String, Integer> index = new LinkedHashMap<>();
    private final Map<String, ClaimFigure> figures = new LinkedHashMap<>();
    private final String text;

    /**
     * @param workshop makes candidates
     * @param file claims
     * @param hypothesis kind of engine
     * @param unknowns its unknowns
     * @param watched figures to keep of every candidate
     */
    public EngineModel(
            Workshop workshop,
            ClaimsFile file,
            Hypothesis hypothesis,
            List<Unknown> unknowns,
            List<ClaimFigure> watched) {
        this.workshop = workshop;
        this.file = file;
        this.hypothesis = hypothesis;
        this.unknowns = List.copyOf(unknowns);
        this.watched = List.copyOf(watched);
        for (int i = 0; i < unknowns.size(); i++) {
            index.put(unknowns.get(i).path(), i);
        }
        for (Claim claim : file.claims()) {
            ClaimPaths.figure(claim.path()).ifPresent(f -> figures.put(claim.path(), f));
        }
        this.text = ConceptText.of(file, hypothesis);
    }

    /** @return the kind of engine */
    public Hypothesis hypothesis() {
        return hypothesis;
    }

    /** @return the unknowns, in the order of the coordinates of a point */
    public List<Unknown> unknowns() {
        return unknowns;
    }

    /** @return the claims */
    public List<Claim> claims() {
        return file.claims();
    }

    /** @return figures that are kept of every candidate */
    public List<ClaimFigure> watched() {
        return watched;
    }

    /** @return text of a concept file without the unknowns */
    public String text() {
        return text;
    }

    /** The same with further unknowns. */
    EngineModel with(List<Unknown> all) {
        return new EngineModel(workshop, file, hypothesis, all, watched);
    }

    /** Where the unknown of a claim's input stands; empty if the claim is about a figure. */
    Optional<Integer> unknownOf(Claim claim) {
        return Optional.ofNullable(index.get(claim.path()));
    }

    /** Path of the figure of a claim; empty for an input that has none. */
    Optional<ClaimFigure> figureOf(Claim claim) {
        return Optional.ofNullable(figures.get(claim.path()));
    }

    /** Whether any unknown lies about a value that a model of the chamber gives. */
    private boolean aboutChamber() {
        return unknowns.stream().anyMatch(u -> u.prior().aboutModel());
    }

    private static Optional<LossKind> loss(Unknown unknown) {
        for (LossKind kind : LossKind.values()) {
            if (unknown.path().equals(EFFICIENCIES + kind.key())) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** Coordinates of a point in which surfaces over it are learnt. */
    double[] place(double[] point) {
        double[] place = new double[point.length];
        Arrays.setAll(place, i -> unknowns.get(i).prior().place(point[i]));
        return place;
    }

    /** The chamber at a point, by the models of its losses. */
    ChamberAlone chamber(double[] point) {
        Map<String, String> changes = new LinkedHashMap<>();
        for (int i = 0; i < unknowns.size(); i++) {
            Unknown u = unknowns.get(i);
            if (!u.prior().aboutModel()) {
                changes.put(u.path(), u.written(u.value(point[i], Double.NaN)));
            }
        }
        return workshop.chamber(workshop.concept(file.file(), text, changes));
    }

    /** Values of the unknowns; those about a model's value need the chamber. */
    double[] values(double[] point, Optional<ChamberAlone> chamber) {
        double[] values = new double[point.length];
        for (int i = 0; i < point.length; i++) {
            Unknown u = unknowns.get(i);
            double model =
                    u.prior().aboutModel() ? chamber.orElseThrow().lossFactor(loss(u).orElseThrow()) : Double.NaN;
            values[i] = u.value(point[i], model);
        }
        return values;
    }

    /** Efficiency of the losses that are unknown over what their models give (-). */
    double efficiency(double[] values, ChamberAlone chamber) {
        double product = 1;
        for (int i = 0; i < values.length; i++) {
            if (unknowns.get(i).prior().aboutModel()) {
                product *= values[i] / chamber.lossFactor(loss(unknowns.get(i)).orElseThrow());
            }
        }
        return product;
    }

    /**
     * @param point a point of the standard normal space
     * @return values of the unknowns there, by path, as a concept file has them
     */
    public Map<String, String> changes(double[] point) {
        double[] values = values(point, aboutChamber() ? Optional.of(chamber(point)) : Optional.empty());
        return changesOf(values);
    }

    private Map<String, String> changesOf(double[] values) {
        Map<String, String> changes = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            changes.put(unknowns.get(i).path(), unknowns.get(i).written(values[i]));
        }
        return changes;
    }

    /**
     * @param values values of the unknowns, SI
     * @param further further values by path
     * @return the candidate
     */
    Candidate candidate(double[] values, Map<String, String> further) {
        Map<String, String> changes = changesOf(values);
        changes.putAll(further);
        Concept concept = workshop.concept(file.file(), text, changes);
        return workshop.candidate(concept, file.aboutVehicle(), file.body());
    }

    /** What is kept of a candidate. */
    Sighting sighting(double[] values, Candidate candidate) {
        List<Double> claimed =
                file.claims().stream().map(c -> predicted(c, values, candidate)).toList();
        List<Double> seen = watched.stream()
                .map(f -> f.of().apply(candidate).orElse(Double.NaN))
                .toList();
        LimitPenalty.Tightest tightest = LimitPenalty.of(candidate.balance());
        return new Sighting(Arrays.stream(values).boxed().toList(), seen, claimed, tightest.margin(), tightest.name());
    }

    /** Value that a candidate has for a claim; NaN where it has none. */
    double predicted(Claim claim, double[] values, Candidate candidate) {
        Optional<ClaimFigure> figure = figureOf(claim);
        if (figure.isPresent()) {
            OptionalDouble value = figure.get().of().apply(candidate);
            return value.orElse(Double.NaN);
        }
        return unknownOf(claim)
                .map(i -> values[i])
                .orElseGet(() -> candidate.balance().concept().document().inputs().stream()
                        .filter(i -> i.key().equals(claim.path()) && i.number().isPresent())
                        .mapToDouble(i -> i.number().getAsDouble())
                        .findFirst()
                        .orElse(Double.NaN));
    }

    /**
     * @param values values of the unknowns, SI
     * @param path an input, unknown or given
     * @param value another value for it, SI
     * @param claim a claim, of this file or not
     * @return the value that the candidate then has for the claim, SI; NaN where it has none
     */
    public double predictedWith(double[] values, String path, double value, Claim claim) {
        String unit = ClaimPaths.dimension(path).orElseThrow().siUnit();
        String written = unit.isEmpty() ? Double.toString(value) : value + " " + unit;
        double[] moved = values.clone();
        Integer unknown = index.get(path);
        if (unknown != null) {
            moved[unknown] = value;
        }
        Candidate candidate = candidate(moved, Map.of(path, written));
        return ClaimPaths.figure(claim.path())
                .map(f -> f.of().apply(candidate).orElse(Double.NaN))
                .orElseGet(() -> predicted(claim, moved, candidate));
    }

    /** @return paths of everything that the file fixes or leaves unknown */
    Set<String> settled() {
        Set<String> paths = new LinkedHashSet<>(file.given().keySet());
        paths.addAll(index.keySet());
        return paths;
    }
}

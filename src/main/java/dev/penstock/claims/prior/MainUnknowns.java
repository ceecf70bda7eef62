package dev.penstock.claims.prior;

import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.cycles.concept.CycleKind;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.Input;
import dev.penstock.input.InputKind;
import dev.penstock.provenance.Spread;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The unknowns that any engine has: its size, chamber pressure, mixture ratio, area ratio; those of a vehicle where claims
 * speak of one; and every input that a claim or a prior names.
 */
public final class MainUnknowns {

    /** What is believed of it depends on the cycle. */
    private static final String PRESSURE = "engine.chamber_pressure";

    private static final String RATIO = "propellants.mixture_ratio";
    private static final List<String> SIZES =
            List.of("engine.thrust_vacuum", "engine.thrust_sea_level", "engine.throat_diameter");
    private static final List<String> EXPANSIONS = List.of("nozzle.area_ratio", "nozzle.exit_pressure");
    private static final List<String> MASSES = List.of("vehicle.start_mass", "vehicle.payload");
    private static final List<String> MISSIONS =
            List.of("vehicle.mission.delta_v", "vehicle.mission.orbit_altitude", "vehicle.mission.orbital_speed");

    private MainUnknowns() {}

    /**
     * @param path an input
     * @return whether it is what every judgement of an engine seeks, beside its size
     */
    public static boolean sought(String path) {
        return path.equals(PRESSURE) || path.equals(RATIO) || EXPANSIONS.contains(path);
    }

    /**
     * @param file claims
     * @param cycle what the engine is
     * @param oxidizer oxidizer
     * @param fuel fuel
     * @return the unknowns
     * @throws InvalidInput if a claim or a prior names an input of which nothing is believed
     */
    public static List<Unknown> of(ClaimsFile file, CycleKind cycle, Propellant oxidizer, Propellant fuel) {
        Set<String> paths = new LinkedHashSet<>(List.of(PRESSURE, RATIO));
        one(file, SIZES).ifPresent(paths::add);
        one(file, EXPANSIONS).ifPresent(paths::add);
        if (file.aboutVehicle()) {
            one(file, MASSES).ifPresent(paths::add);
            one(file, MISSIONS).ifPresent(paths::add);
        }
        file.claims().stream()
                .map(Claim::path)
                .filter(path -> ClaimPaths.input(path).isPresent()
                        && ClaimPaths.figure(path).isEmpty())
                .forEach(paths::add);
        paths.addAll(file.priors().keySet());
        paths.removeAll(file.given().keySet());
        Map<String, Unknown> unknowns = new LinkedHashMap<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        double stoichiometric = Stoichiometry.mixtureRatio(oxidizer, fuel);
        for (String path : paths) {
            unknown(file, cycle, path, stoichiometric)
                    .ifPresentOrElse(
                            u -> unknowns.put(path, u),
                            () -> problems.add(new InvalidInput.Problem(
                                    file.file(),
                                    path,
                                    "nothing is believed of it",
                                    "write a table [prior.\"" + path + "\"] with low and high")));
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
        return List.copyOf(unknowns.values());
    }

    /** Of several that say the same, the one that is claimed or narrowed, else the first; none if one is given. */
    private static Optional<String> one(ClaimsFile file, List<String> paths) {
        if (paths.stream().anyMatch(file.given()::containsKey)) {
            return Optional.empty();
        }
        Set<String> named = new LinkedHashSet<>(file.priors().keySet());
        file.claims().forEach(c -> named.add(c.path()));
        return Optional.of(paths.stream().filter(named::contains).findFirst().orElse(paths.get(0)));
    }

    private static Optional<Unknown> unknown(ClaimsFile file, CycleKind cycle, String path, double stoichiometric) {
        Input<?> input = ClaimPaths.input(path).orElseThrow();
        if (!(input.kind() instanceof InputKind.Quantity kind)) {
            return Optional.empty();
        }
        ClaimsFile.Narrowed narrowed = file.priors().get(path);
        Optional<Prior> prior;
        if (narrowed != null) {
            prior = Optional.of(narrowed(narrowed, input));
        } else if (path.equals(PRESSURE)) {
            prior = Optional.of(Prior.of(cycle.traits().pressures(), stoichiometric));
        } else if (input.belief().isPresent()) {
            prior = input.belief().map(b -> Prior.of(b, stoichiometric));
        } else if (input.usual().flatMap(u -> u.spread()).isPresent()) {
            prior = input.usual().flatMap(u -> u.spread().map(s -> new Prior.Triangle(s, u.basis())));
        } else {
            boolean bounded = Double.isFinite(kind.range().low())
                    && Double.isFinite(kind.range().high());
            prior = bounded ? Optional.of(Prior.of(kind.range())) : Optional.empty();
        }
        return prior.map(p -> new Unknown(path, input.title(), kind, p));
    }

    private static Prior narrowed(ClaimsFile.Narrowed n, Input<?> input) {
        boolean factors = input.belief().map(b -> b.factors()).orElse(false);
        return n.likely()
                .<Prior>map(likely -> new Prior.Triangle(new Spread(n.low(), likely, n.high()), n.source()))
                .orElseGet(() -> new Prior.Even(n.low(), n.high(), factors && n.low() > 0, n.source()));
    }
}

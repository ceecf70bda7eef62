package dev.penstock.claims.file;

import dev.penstock.claims.figure.Body;
import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.Input;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputTable;
import dev.penstock.provenance.KeyPath;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Reads claims files. Everything that is wrong with one is reported together, with line, key, value and what is allowed. */
public final class ClaimsReader {

    private static final List<String> TOP = ClaimsInputs.FILE.keys();
    private static final List<String> TEXTS = Stream.of(
                    ClaimsInputs.NAME, ClaimsInputs.DESCRIPTION, ClaimsInputs.ABOUT, ClaimsInputs.SOURCE)
            .map(Input::key)
            .toList();
    private static final String PROPELLANTS = ClaimsInputs.PROPELLANTS.key() + ".";

    private final FluidLibrary fluids;

    /** @param fluids where propellants are looked up */
    public ClaimsReader(FluidLibrary fluids) {
        this.fluids = fluids;
    }

    /**
     * @param file claims file
     * @param changes values by dotted path that replace or add to what the file says; what is no key of a claims file is
     *     taken as given, as in a concept file
     * @return the claims
     * @throws InvalidInput if anything in it cannot be used
     */
    public ClaimsFile read(Path file, Map<String, String> changes) {
        return read(InputFile.read(file, placed(changes)));
    }

    /**
     * @param name what to call the text in messages
     * @param text text of a claims file
     * @param changes values by dotted path, as above
     * @return the claims
     * @throws InvalidInput if anything in it cannot be used
     */
    public ClaimsFile parse(String name, String text, Map<String, String> changes) {
        return read(InputFile.parse(name, text, placed(changes)));
    }

    /**
     * @param path dotted path in a claims file
     * @return whether any text may stand there
     */
    public static boolean isText(String path) {
        return TEXTS.stream().anyMatch(key -> path.equals(key) || path.endsWith("." + key));
    }

    private static Map<String, String> placed(Map<String, String> changes) {
        Map<String, String> placed = new LinkedHashMap<>();
        changes.forEach((path, value) -> {
            boolean own = TOP.contains(KeyPath.keys(path).get(0));
            boolean mixed = path.startsWith(PROPELLANTS)
                    && !ClaimsInputs.PROPELLANTS.keys().contains(path.substring(PROPELLANTS.length()));
            placed.put(own && !mixed ? path : ClaimsInputs.GIVEN.key() + "." + path, value);
        });
        return placed;
    }

    private ClaimsFile read(InputFile file) {
        InputTable root = file.root().as(ClaimsInputs.FILE);
        String name = root.read(ClaimsInputs.NAME);
        root.read(ClaimsInputs.DESCRIPTION);
        List<String> ids = root.read(ClaimsInputs.CYCLE);
        Optional<String> about = root.find(ClaimsInputs.ABOUT);
        about.filter(path -> ClaimPaths.figure(path).isEmpty()
                        && ClaimPaths.input(path).isEmpty())
                .ifPresent(path -> root.problem(ClaimsInputs.ABOUT, path, ClaimPaths.near(path)));
        InputTable propellants = root.table(ClaimsInputs.PROPELLANTS);
        List<String> oxidizers = propellants(propellants, ClaimsInputs.OXIDIZER);
        List<String> fuels = propellants(propellants, ClaimsInputs.FUEL);
        Map<String, String> given = new LinkedHashMap<>();
        given(root.table(ClaimsInputs.GIVEN), "", given);
        List<Claim> claims = new ArrayList<>();
        NamedTables.of(root.table(ClaimsInputs.CLAIMS), ClaimsInputs.CLAIMS)
                .forEach((path, keys) -> new ClaimKeys(path, keys).claim(given).ifPresent(claims::add));
        Optional<Body> body = body(root);
        body.ifPresent(b -> claims.add(Claim.range(
                ClaimPaths.FILLING,
                OptionalDouble.empty(),
                OptionalDouble.of(b.filled()),
                OptionalDouble.empty(),
                "the body must hold the tanks")));
        Map<String, ClaimsFile.Narrowed> priors = new LinkedHashMap<>();
        NamedTables.of(root.table(ClaimsInputs.PRIOR), ClaimsInputs.PRIOR)
                .forEach((path, keys) -> new ClaimKeys(path, keys).narrowed().ifPresent(n -> priors.put(path, n)));
        priors.keySet().stream()
                .filter(given::containsKey)
                .forEach(path -> root.problem(
                        ClaimsInputs.PRIOR.key() + "." + path, "given too", "what is certain needs no prior"));
        if (claims.isEmpty() && !root.has(ClaimsInputs.CLAIMS)) {
            root.problem(
                    ClaimsInputs.CLAIMS.key(), "missing", "write at least one table [claims.\"engine.isp_vacuum\"]");
        }
        file.finish();
        List<Cycle> cycles = Cycle.all().stream()
                .filter(c -> ids.contains(ClaimsInputs.ANY) || ids.contains(c.id()))
                .toList();
        boolean vehicle = body.isPresent()
                || claims.stream().anyMatch(c -> ClaimPaths.ofVehicle(c.path()))
                || Stream.concat(given.keySet().stream(), priors.keySet().stream())
                        .anyMatch(ClaimPaths::ofVehicle);
        return new ClaimsFile(file.name(), name, cycles, oxidizers, fuels, claims, given, priors, body, vehicle, about);
    }

    private List<String> propellants(InputTable table, Input<List<String>> input) {
        List<String> ids = table.read(input);
        for (String id : ids) {
            try {
                fluids.propellant(id);
            } catch (InvalidInput e) {
                e.problems().forEach(p -> table.problem(input, p.value(), p.allowed()));
            }
        }
        if (ids.isEmpty() && table.has(input)) {
            table.problem(input, "[]", "write one or several");
        }
        return ids;
    }

    /** Values by path, whether the path stands in quotes or as tables inside tables. */
    private static void given(InputTable table, String prefix, Map<String, String> given) {
        Set<String> tables = table.tables().keySet();
        for (String key : table.keys()) {
            String path = prefix + key;
            if (tables.contains(key)) {
                given(table.table(key).as(ClaimsInputs.GIVEN), path + ".", given);
                continue;
            }
            Input<String> input = ClaimsInputs.any(key, path);
            table.find(input).ifPresent(value -> {
                ClaimPaths.input(path).ifPresent(known -> table.check(key, known));
                if (ClaimPaths.input(path).isEmpty() && !ClaimPaths.ofLoss(path)) {
                    table.problem('"' + key + '"', value, ClaimPaths.near(path));
                }
                given.put(path, value);
            });
        }
    }

    private static Optional<Body> body(InputTable root) {
        if (!root.has(ClaimsInputs.BODY)) {
            return Optional.empty();
        }
        InputTable table = root.table(ClaimsInputs.BODY);
        double base = table.read(ClaimsInputs.BASE_DIAMETER);
        double top = table.read(ClaimsInputs.TOP_DIAMETER);
        double height = table.read(ClaimsInputs.HEIGHT);
        double filled = table.read(ClaimsInputs.FILLED);
        return base > 0 && top >= 0 && height > 0 ? Optional.of(new Body(base, top, height, filled)) : Optional.empty();
    }
}

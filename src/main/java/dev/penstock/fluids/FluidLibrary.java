package dev.penstock.fluids;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import dev.penstock.fluids.store.StoreFolders;
import dev.penstock.input.DataFolder;
import dev.penstock.input.HomeFolder;
import dev.penstock.input.Spelling;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The propellants, coolants and pressurants in the folder of fluids ({@link DataFolder}), one file each. A file is read
 * when its fluid is first asked for. Safe to share between threads.
 */
public final class FluidLibrary {

    private static final String ENDING = ".toml";
    private static final int SUGGESTIONS = 3;

    private final Path home;
    private final Supplier<CoolPropLibrary> coolProp;
    private final ConcurrentMap<String, Propellant> read = new ConcurrentHashMap<>();

    private FluidLibrary(Path home, Supplier<CoolPropLibrary> coolProp) {
        this.home = home;
        this.coolProp = coolProp;
    }

    /**
     * @param home folder that holds {@code fluids/}, or the archive's are used, and once fetched {@code .penstock/coolprop}
     * @return the library of that folder; nothing is read yet
     */
    public static FluidLibrary open(Path home) {
        return open(home, () -> CoolPropLibrary.load(home));
    }

    /** As {@link #open(Path)}, by one way to CoolProp, which is not reached before it is asked. */
    public static FluidLibrary open(Path home, Supplier<CoolPropLibrary> coolProp) {
        return new FluidLibrary(home, coolProp);
    }

    /** @return the library of the home folder, see {@link HomeFolder} */
    public static FluidLibrary open() {
        return open(HomeFolder.find());
    }

    /** @return the home folder, from which other data beside the fluids are read */
    public Path home() {
        return home;
    }

    /**
     * @return ids of all fluids, sorted
     * @throws InvalidInput if there is no folder of fluids
     */
    public List<String> ids() {
        try {
            return List.copyOf(DataFolder.files(folder()).keySet());
        } catch (IOException e) {
            throw new InvalidInput(
                    "",
                    "fluids",
                    "missing",
                    "there must be a folder " + folder() + " with the fluids' files; set PENSTOCK_HOME to the folder"
                            + " of Penstock");
        }
    }

    /**
     * @param role a role
     * @return ids of the fluids that can have it, sorted
     */
    public List<String> having(Propellant.Role role) {
        return ids().stream()
                .filter(id -> propellant(id).roles().contains(role))
                .toList();
    }

    /**
     * @param id id of a fluid, the name of its file
     * @return the fluid with all that its file states
     * @throws InvalidInput if there is no such fluid, naming the nearest ones, or its file has mistakes
     * @throws dev.penstock.errors.PropertyFailure if the model gives no state at the fluid's reference point
     */
    public Propellant propellant(String id) {
        Propellant known = read.get(id);
        if (known != null) {
            return known;
        }
        Path file = folder().resolve(id + ENDING);
        if (!id.matches("[a-z0-9][a-z0-9-]*") || !Files.isRegularFile(file)) {
            throw new InvalidInput("", "fluid", '"' + id + '"', allowed(id));
        }
        Propellant propellant = FluidFile.read(coolProp, id, file, StoreFolders.of(home));
        Propellant earlier = read.putIfAbsent(id, propellant);
        return earlier == null ? propellant : earlier;
    }

    private String allowed(String id) {
        String wanted = id.strip().toLowerCase(Locale.ROOT).replace('_', '-');
        List<String> all = ids();
        List<String> near = all.stream()
                .filter(other -> other.contains(wanted)
                        || wanted.contains(other)
                        || Spelling.distance(other, wanted) <= 1 + wanted.length() / 3)
                .sorted(Comparator.comparingInt(other -> Spelling.distance(other, wanted)))
                .limit(SUGGESTIONS)
                .toList();
        return near.isEmpty()
                ? "allowed are " + String.join(", ", all)
                : "did you mean " + near.stream().collect(Collectors.joining(" or ")) + "?";
    }

    private Path folder() {
        return DataFolder.fluids(home);
    }
}

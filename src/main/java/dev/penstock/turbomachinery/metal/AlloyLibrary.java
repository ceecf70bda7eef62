package dev.penstock.turbomachinery.metal;

import dev.penstock.errors.InvalidInput;
import dev.penstock.input.DataFolder;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Alloy families by id. A file {@code <id>.toml} in the folder is a family; a user adds one by adding a file. Immutable. */
public final class AlloyLibrary {

    private static final Range PRESSURES = Range.of(1, 1e9);

    private final Map<String, AlloyFamily> families;

    private AlloyLibrary(Map<String, AlloyFamily> families) {
        this.families = families;
    }

    /**
     * @param folder folder of the files, {@code fluids/metals} in the project
     * @return every family in it
     * @throws InvalidInput if the folder cannot be read or a file is wrong
     */
    public static AlloyLibrary load(Path folder) {
        Map<String, AlloyFamily> map = new TreeMap<>();
        try {
            DataFolder.files(folder).forEach((id, file) -> map.put(id, read(id, file)));
        } catch (IOException e) {
            throw new InvalidInput("", "folder of alloy families", folder.toString(), "it must be a readable folder");
        }
        return new AlloyLibrary(map);
    }

    /**
     * @param id id of a family
     * @return the family, if there is one
     */
    public Optional<AlloyFamily> family(String id) {
        return Optional.ofNullable(families.get(id));
    }

    /** @return ids in alphabetical order */
    public List<String> ids() {
        return List.copyOf(families.keySet());
    }

    /** @return the families, by id */
    public List<AlloyFamily> families() {
        return List.copyOf(families.values());
    }

    private static AlloyFamily read(String id, Path path) {
        InputFile file = InputFile.read(path);
        InputTable root = file.root();
        String name = root.text("name");
        String inOxygen = root.text("in_oxygen");
        String inHydrogen = root.text("in_hydrogen");
        String inFuelGas = root.text("in_fuel_gas");
        List<Supplier<AlloyFamily.OxygenTest>> oxygen = root.tables("oxygen_test").stream()
                .map(AlloyLibrary::oxygenTest)
                .toList();
        List<Supplier<AlloyFamily.HydrogenTest>> hydrogen = root.tables("hydrogen_test").stream()
                .map(AlloyLibrary::hydrogenTest)
                .toList();
        file.finish();
        return new AlloyFamily(
                id,
                name,
                inOxygen,
                inHydrogen,
                inFuelGas,
                oxygen.stream().map(Supplier::get).toList(),
                hydrogen.stream().map(Supplier::get).toList());
    }

    /** The test is made once the whole file is known to be right. */
    private static Supplier<AlloyFamily.OxygenTest> oxygenTest(InputTable row) {
        String alloy = row.text("alloy");
        double threshold = row.quantity("threshold", Dimension.PRESSURE, PRESSURES);
        boolean burnt = row.flag("burnt", true);
        String source = row.text("source");
        return () -> new AlloyFamily.OxygenTest(alloy, threshold, burnt, source);
    }

    private static Supplier<AlloyFamily.HydrogenTest> hydrogenTest(InputTable row) {
        String alloy = row.text("alloy");
        double ratio = row.quantity("strength_ratio", Dimension.RATIO, Range.of(0.01, 2));
        double pressure = row.quantity("pressure", Dimension.PRESSURE, PRESSURES);
        String source = row.text("source");
        return () -> new AlloyFamily.HydrogenTest(alloy, ratio, pressure, source);
    }
}

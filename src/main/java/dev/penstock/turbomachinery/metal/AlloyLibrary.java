package dev.penstock.turbomachinery.metal;

import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Alloy families by id. A file {@code <id>.toml} in the folder is a family; a user adds one by adding a file. Immutable. */
public final class AlloyLibrary {

    private static final String ENDING = ".toml";
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
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ENDING)).toList()) {
                AlloyFamily family = read(file);
                map.put(family.id(), family);
            }
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

    private static AlloyFamily read(Path path) {
        InputFile file = InputFile.read(path);
        InputTable root = file.root();
        String fileName = path.getFileName().toString();
        String name = root.text("name");
        String inOxygen = root.text("in_oxygen");
        String inHydrogen = root.text("in_hydrogen");
        List<OxygenRow> oxygen =
                root.tables("oxygen_test").stream().map(OxygenRow::read).toList();
        List<HydrogenRow> hydrogen =
                root.tables("hydrogen_test").stream().map(HydrogenRow::read).toList();
        file.finish();
        return new AlloyFamily(
                fileName.substring(0, fileName.length() - ENDING.length()),
                name,
                inOxygen,
                inHydrogen,
                oxygen.stream().map(OxygenRow::test).toList(),
                hydrogen.stream().map(HydrogenRow::test).toList());
    }

    /** As read; the test is made once the whole file is known to be right. */
    private record OxygenRow(String alloy, double threshold, boolean burnt, String source) {

        static OxygenRow read(InputTable row) {
            return new OxygenRow(
                    row.text("alloy"),
                    row.quantity("threshold", Dimension.PRESSURE, PRESSURES),
                    row.flag("burnt", true),
                    row.text("source"));
        }

        AlloyFamily.OxygenTest test() {
            return new AlloyFamily.OxygenTest(alloy, threshold, burnt, source);
        }
    }

    private record HydrogenRow(String alloy, double ratio, double pressure, String source) {

        static HydrogenRow read(InputTable row) {
            return new HydrogenRow(
                    row.text("alloy"),
                    row.quantity("strength_ratio", Dimension.RATIO, Range.of(0.01, 2)),
                    row.quantity("pressure", Dimension.PRESSURE, PRESSURES),
                    row.text("source"));
        }

        AlloyFamily.HydrogenTest test() {
            return new AlloyFamily.HydrogenTest(alloy, ratio, pressure, source);
        }
    }
}

package dev.penstock.cooling.wall;

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
import java.util.TreeMap;

/**
 * Wall materials by id. A file {@code <id>.toml} in the folder is a material; a user adds one by adding a file. Immutable.
 */
public final class WallLibrary {

    private final Map<String, WallMaterial> materials;

    private WallLibrary(Map<String, WallMaterial> materials) {
        this.materials = Map.copyOf(materials);
    }

    /**
     * @param home home folder
     * @return the materials of its {@link DataFolder}
     * @throws InvalidInput if a file is wrong
     */
    public static WallLibrary open(Path home) {
        return load(DataFolder.walls(home));
    }

    /**
     * @param folder folder of material files, {@code fluids/walls} in the project
     * @return every material in it
     * @throws InvalidInput if the folder cannot be read or a file is wrong
     */
    public static WallLibrary load(Path folder) {
        Map<String, WallMaterial> map = new TreeMap<>();
        try {
            DataFolder.files(folder).forEach((id, file) -> map.put(id, read(id, file)));
        } catch (IOException e) {
            throw new InvalidInput("", "folder of wall materials", folder.toString(), "it must be a readable folder");
        }
        return new WallLibrary(map);
    }

    /**
     * @param id material id
     * @return the material
     * @throws InvalidInput if there is none of that id
     */
    public WallMaterial material(String id) {
        WallMaterial material = materials.get(id);
        if (material == null) {
            throw new InvalidInput("", "wall material", '"' + id + '"', "known are " + String.join(", ", ids()));
        }
        return material;
    }

    /** @return ids in alphabetical order */
    public List<String> ids() {
        return materials.keySet().stream().sorted().toList();
    }

    private static WallMaterial read(String id, Path path) {
        InputFile file = InputFile.read(path);
        InputTable root = file.root();
        Reading reading = new Reading(
                root.text("name"),
                root.quantity("density", Dimension.DENSITY, Range.of(500, 25_000)),
                root.quantity("maximum_temperature", Dimension.TEMPERATURE, Range.of(300, 4000)),
                root.quantity("poisson_ratio", Dimension.RATIO, Range.of(0, 0.5)),
                root.quantity("reduction_of_area", Dimension.RATIO, Range.of(0.01, 0.99)),
                root.quantity("emissivity", Dimension.RATIO, Range.of(0.01, 1)),
                Column.read(root, "conductivity", Dimension.CONDUCTIVITY),
                Column.read(root, "specific_heat", Dimension.SPECIFIC_HEAT),
                Column.read(root, "expansion", Dimension.THERMAL_EXPANSION),
                Column.read(root, "modulus", Dimension.PRESSURE),
                Column.read(root, "yield_strength", Dimension.PRESSURE),
                Column.read(root, "ultimate_strength", Dimension.PRESSURE),
                root.texts("sources"));
        if (reading.sources.isEmpty()) {
            root.problem("sources", "(missing)", "name at least one source");
        }
        file.finish();
        return reading.material(id, path);
    }

    private record Column(String key, List<Double> temperatures, List<Double> values) {

        static Column read(InputTable root, String key, Dimension dimension) {
            InputTable table = root.table(key);
            List<Double> temperatures = table.quantities("temperature", Dimension.TEMPERATURE, Range.of(1, 5000));
            List<Double> values = table.quantities("value", dimension, Range.POSITIVE);
            return new Column(key, temperatures, values);
        }

        TemperatureTable table(Path path) {
            boolean rising = !temperatures.isEmpty();
            for (int i = 1; i < temperatures.size(); i++) {
                rising &= temperatures.get(i) > temperatures.get(i - 1);
            }
            if (!rising || temperatures.size() != values.size()) {
                throw new InvalidInput(
                        path.toString(),
                        key,
                        temperatures.size() + " temperatures and " + values.size() + " values",
                        "write rising temperatures and one value for each");
            }
            return new TemperatureTable(key, temperatures, values);
        }
    }

    private record Reading(
            String name,
            double density,
            double maximumTemperature,
            double poissonRatio,
            double reductionOfArea,
            double emissivity,
            Column conductivity,
            Column heatCapacity,
            Column expansion,
            Column modulus,
            Column yieldStrength,
            Column ultimateStrength,
            List<String> sources) {

        WallMaterial material(String id, Path path) {
            return new WallMaterial(
                    id,
                    name,
                    density,
                    maximumTemperature,
                    poissonRatio,
                    reductionOfArea,
                    emissivity,
                    conductivity.table(path),
                    heatCapacity.table(path),
                    expansion.table(path),
                    modulus.table(path),
                    yieldStrength.table(path),
                    ultimateStrength.table(path),
                    sources);
        }
    }
}

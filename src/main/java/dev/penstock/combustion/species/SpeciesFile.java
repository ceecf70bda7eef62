package dev.penstock.combustion.species;

import dev.penstock.input.InputFile;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads one file of {@code fluids/gas}. */
final class SpeciesFile {

    private static final double ANGSTROM = 1e-10;
    private static final double CUBIC_CENTIMETRE = 1e-6;
    private static final double MEGAPASCAL = 1e6;
    /** 1 debye = 1e-21/c C·m with c = 299 792 458 m/s. */
    private static final double DEBYE = 1e-21 / 299792458.0;

    private static final List<String> PHASES = List.of("gas", "condensed");
    private static final int COEFFICIENTS = 7;

    private SpeciesFile() {}

    /**
     * @param path file
     * @return its species
     * @throws dev.penstock.errors.InvalidInput with every problem found
     */
    static List<Species> read(Path path) {
        InputFile file = InputFile.read(path);
        List<Species> list = new ArrayList<>();
        String place = path.getFileName().toString();
        for (InputTable table : file.root().tables("species")) {
            Species species = species(file, table, place);
            if (species != null) {
                list.add(species);
            }
        }
        file.finish();
        return list;
    }

    private static Species species(InputFile file, InputTable table, String place) {
        String name = table.text("name");
        boolean condensed = table.choice("phase", PHASES).equals("condensed");
        Map<String, Integer> atoms = new TreeMap<>();
        InputTable counts = table.table("atoms");
        for (String element : counts.keys()) {
            atoms.put(element, counts.integer(element, 1, 1000, 1));
        }
        // Said for readers of the file.
        table.text("fitted", "");
        String source = table.text("source");
        List<Double> temperatures = table.quantities("temperatures_K", Dimension.RATIO, Range.POSITIVE);
        List<Double> figures = table.quantities("coefficients", Dimension.RATIO, Range.ANY);
        Optional<Collision> collision =
                table.has("lennard_jones") ? Optional.of(collision(table.table("lennard_jones"))) : Optional.empty();
        Optional<Critical> critical =
                table.has("critical") ? Optional.of(critical(table.table("critical"))) : Optional.empty();
        Optional<SecondVirial> virial =
                table.has("virial") ? Optional.of(virial(table.table("virial"))) : Optional.empty();
        if (atoms.isEmpty()) {
            table.problem("atoms", "empty", "write the atoms of the molecule, for example { H = 2, O = 1 }");
        }
        boolean ascending = temperatures.size() > 1;
        for (int i = 1; i < temperatures.size(); i++) {
            ascending &= temperatures.get(i) > temperatures.get(i - 1);
        }
        if (!ascending) {
            table.problem("temperatures_K", temperatures.toString(), "write two or more ascending temperatures");
        } else if (figures.size() != COEFFICIENTS * (temperatures.size() - 1)) {
            table.problem(
                    "coefficients",
                    figures.size() + " numbers",
                    "write seven for each interval between the temperatures, "
                            + COEFFICIENTS * (temperatures.size() - 1) + " in all");
        }
        if (!file.sound()) {
            return null;
        }
        return new Species(
                name, condensed, atoms, intervals(temperatures, figures), collision, critical, virial, source, place);
    }

    private static List<ThermoInterval> intervals(List<Double> t, List<Double> a) {
        List<ThermoInterval> list = new ArrayList<>();
        for (int i = 0; i + 1 < t.size(); i++) {
            List<Double> c = a.subList(COEFFICIENTS * i, COEFFICIENTS * (i + 1));
            list.add(new ThermoInterval(
                    t.get(i), t.get(i + 1), c.get(0), c.get(1), c.get(2), c.get(3), c.get(4), c.get(5), c.get(6)));
        }
        return list;
    }

    private static Collision collision(InputTable table) {
        Collision.Shape shape = table.choice("form", Collision.Shape.class, Collision.Shape.NONLINEAR);
        double depth = table.quantity("energy_K", Dimension.RATIO, Range.of(1, 1e5), 1);
        double diameter = table.quantity("size_A", Dimension.RATIO, Range.of(0.1, 100), 1);
        double dipole = table.quantity("moment_D", Dimension.RATIO, Range.of(0, 100), 0);
        double rotational = table.quantity("rotation_collisions", Dimension.RATIO, Range.of(0, 1e4), 1);
        return new Collision(shape, depth, diameter * ANGSTROM, dipole * DEBYE, rotational);
    }

    private static SecondVirial virial(InputTable table) {
        table.text("source");
        return new SecondVirial(
                CUBIC_CENTIMETRE * table.quantity("covolume_cm3", Dimension.RATIO, Range.of(0, 1000)),
                CUBIC_CENTIMETRE * table.quantity("attraction_cm3_K", Dimension.RATIO, Range.of(-1e6, 1e6)));
    }

    private static Critical critical(InputTable table) {
        table.text("source");
        return new Critical(
                table.quantity("temperature_K", Dimension.RATIO, Range.of(1, 5000)),
                MEGAPASCAL * table.quantity("pressure_MPa", Dimension.RATIO, Range.of(0.01, 1000)),
                table.quantity("acentric", Dimension.RATIO, Range.of(-0.5, 2)));
    }
}

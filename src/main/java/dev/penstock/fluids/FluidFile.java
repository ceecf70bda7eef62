package dev.penstock.fluids;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import dev.penstock.fluids.property.Composition;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.store.FluidStore;
import dev.penstock.fluids.traits.PropellantTraits;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Reads the file of one fluid. The format is described for users in {@code fluids/README.md}; mistakes are reported
 * together, and the property model is asked only once the file is sound.
 */
final class FluidFile {

    private static final Range TEMPERATURE = Range.of(1, 3000);
    private static final Range PRESSURE = Range.of(1, 1e9);
    private static final Range DENSITY = Range.of(0.01, 25000);
    private static final Range TOLERANCE = Range.of(0, 0.1);
    private static final double USUAL_TOLERANCE = 0.01;
    /** What a model may add to the tolerance of a density's source (-). */
    private static final double MODEL_TOLERANCE = 0.005;

    private final Supplier<CoolPropLibrary> coolProp;
    private final String id;
    private final InputFile file;
    private final Function<Supplier<String>, FluidStore> stores;

    private FluidFile(
            Supplier<CoolPropLibrary> coolProp,
            String id,
            InputFile file,
            Function<Supplier<String>, FluidStore> stores) {
        this.coolProp = coolProp;
        this.id = id;
        this.file = file;
        this.stores = stores;
    }

    /**
     * @param coolProp CoolProp, not reached before a fluid of it is asked
     * @param id id of the fluid
     * @param path its file
     * @param tables folders in which its tables are kept
     * @return the fluid
     * @throws dev.penstock.errors.InvalidInput with every mistake in the file, or where the model lacks a property at its temperatures
     * @throws dev.penstock.errors.PropertyFailure if there is no such model
     */
    static Propellant read(Supplier<CoolPropLibrary> coolProp, String id, Path path, List<Path> tables) {
        InputFile file = InputFile.read(path);
        byte[] content = content(path);
        return new FluidFile(coolProp, id, file, version -> new FluidStore(tables, id, content, version)).propellant();
    }

    private static byte[] content(Path path) {
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // it was read the moment before
        }
    }

    private Propellant propellant() {
        InputTable root = file.root();
        String name = root.text("name");
        Set<Propellant.Role> roles = roles(root);
        List<String> hazards = root.texts("hazards");
        List<String> sources = root.texts("sources");
        root.optionalText("note");
        Composition composition = Composition.read(root.table("composition"));
        Fluid model = new FluidModelReader(coolProp, id, name, composition, stores).read(root.table("model"));
        Formation formation = Formation.read(root.table("formation"), composition);
        InputTable storage = root.table("storage");
        double storageTemperature = storage.quantity("temperature", Dimension.TEMPERATURE, TEMPERATURE);
        double storagePressure = storage.quantity("pressure", Dimension.PRESSURE, PRESSURE);
        double density = storage.quantity("density", Dimension.DENSITY, DENSITY);
        double tolerance = storage.quantity("density_tolerance", Dimension.RATIO, TOLERANCE, USUAL_TOLERANCE);
        var subcooledTemperature =
                storage.optionalQuantity("subcooled_temperature", Dimension.TEMPERATURE, TEMPERATURE);
        var subcooledDensity = storage.optionalQuantity("subcooled_density", Dimension.DENSITY, DENSITY);
        double subcooledTolerance =
                storage.quantity("subcooled_density_tolerance", Dimension.RATIO, TOLERANCE, USUAL_TOLERANCE);
        storage.optionalText("source");
        PropellantLimits limits = limits(root.table("limits"));
        double coldest = Math.min(storageTemperature, subcooledTemperature.orElse(storageTemperature));
        PropellantTraits traits = new PropellantTraitsReader(root, roles, coldest).read();
        file.finish();
        // a model that is not there at all is no mistake of the temperatures below
        model.range();
        double reference = state(model, "formation.temperature", formation.pressure(), formation.temperature())
                .enthalpy();
        FluidState stored = state(model, "storage.temperature", storagePressure, storageTemperature);
        agree(storage, "density", density, stored, tolerance);
        if (subcooledTemperature.isPresent() && subcooledDensity.isPresent()) {
            double cold = subcooledTemperature.getAsDouble();
            FluidState subcooled = state(model, "storage.subcooled_temperature", storagePressure, cold);
            agree(storage, "subcooled_density", subcooledDensity.getAsDouble(), subcooled, subcooledTolerance);
        }
        file.finish();
        return new Propellant(
                model,
                composition.elements(),
                formation.enthalpy(),
                formation.pressure(),
                formation.temperature(),
                reference,
                stored,
                density,
                subcooledTemperature,
                subcooledDensity,
                limits,
                traits,
                roles,
                hazards,
                sources);
    }

    /** A state that the file itself asks of the model: one that it does not have is a mistake in the file. */
    private FluidState state(Fluid model, String key, double pressure, double temperature) {
        try {
            return model.atPressureTemperature(pressure, temperature);
        } catch (OutsideValidity | PropertyFailure e) {
            throw new InvalidInput(
                    file.name(),
                    key,
                    String.format(Locale.ROOT, "%.6g K", temperature),
                    String.format(
                            Locale.ROOT,
                            "the model must give every property there, at %.6g Pa (%s)",
                            pressure,
                            e.getMessage()));
        }
    }

    /** Tanks are filled by the density that a file states, flows follow from the model's: both must be of one fluid. */
    private static void agree(InputTable storage, String key, double stated, FluidState state, double tolerance) {
        double allowed = tolerance + MODEL_TOLERANCE;
        if (!(Math.abs(stated / state.density() - 1) <= allowed)) {
            storage.problem(
                    key,
                    String.format(Locale.ROOT, "%.6g kg/m³", stated),
                    String.format(
                            Locale.ROOT,
                            "the model has %.6g kg/m³ at %.6g K and %.6g Pa, and they must agree within %.2g %%",
                            state.density(),
                            state.temperature(),
                            state.pressure(),
                            100 * allowed));
        }
    }

    private static Set<Propellant.Role> roles(InputTable root) {
        Set<Propellant.Role> roles = EnumSet.noneOf(Propellant.Role.class);
        for (String text : root.texts("roles")) {
            try {
                roles.add(Propellant.Role.valueOf(text.toUpperCase(Locale.ROOT)));
            } catch (IllegalArgumentException e) {
                root.problem(
                        "roles", '"' + text + '"', "allowed are oxidizer, fuel, monopropellant, pressurant, coolant");
            }
        }
        return roles;
    }

    private static PropellantLimits limits(InputTable table) {
        List<String> keys = List.of("freezing", "boiling", "decomposition", "coking", "coking_highest");
        var values = new ArrayList<OptionalDouble>();
        for (String key : keys) {
            values.add(table.optionalQuantity(key, Dimension.TEMPERATURE, TEMPERATURE));
            table.optionalText(key + "_source");
        }
        OptionalDouble coking = values.get(3);
        OptionalDouble highest = values.get(4);
        if (highest.isPresent() && !(highest.getAsDouble() > coking.orElse(Double.POSITIVE_INFINITY))) {
            table.problem(
                    "coking_highest",
                    highest.getAsDouble() + " K",
                    "it must lie above coking, where deposits set in" + (coking.isEmpty() ? ", which is missing" : ""));
        }
        return new PropellantLimits(values.get(0), values.get(1), values.get(2), coking, highest);
    }
}

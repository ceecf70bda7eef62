package dev.penstock.fluids.coolprop;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PropertyFailure;
import java.lang.ref.Cleaner;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * CoolProp, reached once per process by the first of three ways that is there: its own shared library, if the environment
 * variable {@code PENSTOCK_COOLPROP} names one ({@link CoolPropSharedLibrary}); the official Python wheel in this
 * process, if the interpreter has a shared library ({@link CoolPropWheel}); the wheel in a Python process of its own
 * ({@link CoolPropWorker}). All give the same numbers. The wheel is looked for in the folder that {@code PENSTOCK_COOLPROP}
 * names, else in the home folder.
 */
public abstract class CoolPropLibrary {

    static final String FULL_EQUATIONS = "HEOS";
    static final Cleaner CLEANER = Cleaner.create();

    /** CoolProp hands out infinity, or a number near the largest, where it has no value. */
    static final double HUGE = 1e300;

    /** The environment variable that forces a way, for tests and measurements. */
    static final String WAY = "PENSTOCK_COOLPROP_WAY";

    private static CoolPropLibrary loaded;

    private final Map<String, FlashAnchors> anchors = new ConcurrentHashMap<>();

    /**
     * @param fluid CoolProp's name of a pure fluid
     * @param id Penstock's name of it, for messages
     * @return a new state object for the calling thread
     * @throws PropertyFailure if CoolProp does not know the fluid
     */
    abstract CoolPropHandle open(String fluid, String id);

    /** @return calls of CoolProp's functions inside this process so far, by all threads */
    public static long nativeCalls() {
        return NativeCall.made();
    }

    /** @return which CoolProp this is: what its numbers depend on beside the question */
    public abstract String version();

    /**
     * @param home folder in which {@code .penstock/coolprop} holds the wheel; ignored once CoolProp is loaded
     * @return CoolProp
     * @throws PropertyFailure if it cannot be found or loaded, saying what to do
     */
    public static synchronized CoolPropLibrary load(Path home) {
        if (loaded == null) {
            CoolPropLibrary library = find(home.resolve(".penstock").resolve("coolprop"));
            library.verify();
            loaded = library;
        }
        return loaded;
    }

    private static CoolPropLibrary find(Path fetched) {
        Optional<Path> named = Optional.ofNullable(System.getenv("PENSTOCK_COOLPROP"))
                .filter(path -> !path.isBlank())
                .map(Path::of);
        Path folder = named.filter(Files::isDirectory).orElse(fetched);
        Optional<Path> library = named.filter(path -> !Files.isDirectory(path));
        String way = Optional.ofNullable(System.getenv(WAY)).orElse(library.isPresent() ? "library" : "any");
        return switch (way) {
            case "any" -> ofWheel(folder);
            case "library" ->
                CoolPropSharedLibrary.load(
                        library.orElseThrow(() -> failure("PENSTOCK_COOLPROP does not name a library")));
            case "process" ->
                CoolPropWheel.load(
                        folder,
                        PythonRuntime.find(folder).orElseThrow(() -> failure("the interpreter has no shared library")));
            case "worker" -> CoolPropWorker.load(folder);
            default ->
                throw new InvalidInput(
                        "", WAY, '"' + way + '"', "allowed are library, process (in this one) and worker");
        };
    }

    private static CoolPropLibrary ofWheel(Path folder) {
        Optional<PythonRuntime> python = PythonRuntime.find(folder);
        if (python.isPresent()) {
            try {
                return CoolPropWheel.load(folder, python.get());
            } catch (PropertyFailure e) {
                // a shared library that this process cannot load, such as one for another processor: the worker says
                // more
                return CoolPropWorker.load(folder);
            }
        }
        return CoolPropWorker.load(folder);
    }

    /**
     * @param fluid CoolProp's name of a pure fluid
     * @param make makes its anchors, if none are known yet
     * @return the anchors of that fluid, the same for all models and threads
     */
    FlashAnchors anchors(String fluid, Supplier<FlashAnchors> make) {
        return anchors.computeIfAbsent(fluid, name -> make.get());
    }

    /**
     * Asks a question with a known answer: a CoolProp whose enumerations or units differ from ours must not answer
     * another. Water at 1 atm and 25 °C: 997.05 kg/m³ [wagner-pruss-2002].
     */
    void verify() {
        CoolPropHandle water = open("H2O", "water as a check");
        water.update(CoolPropInputs.PRESSURE_TEMPERATURE, 101325, 298.15);
        boolean inputs = Math.abs(water.output(CoolPropOutput.PRESSURE) - 101325) < 0.01
                && Math.abs(water.output(CoolPropOutput.TEMPERATURE) - 298.15) < 1e-9;
        double density = water.output(CoolPropOutput.DENSITY);
        double enthalpy = water.output(CoolPropOutput.ENTHALPY);
        water.update(CoolPropInputs.ENTHALPY_PRESSURE, enthalpy, 101325);
        boolean back = Math.abs(water.output(CoolPropOutput.TEMPERATURE) - 298.15) < 1e-3;
        if (!inputs || !back || !(Math.abs(density - 997.05) < 0.05)) {
            throw failure("it answers " + density + " kg/m³ for water at 1 atm and 298.15 K instead of 997.05; this "
                    + "version of CoolProp does not fit Penstock");
        }
    }

    static PropertyFailure failure(String reason) {
        return new PropertyFailure("any fluid of CoolProp", "any input", reason);
    }
}

package dev.penstock.fluids;

import dev.penstock.errors.PropertyFailure;
import java.lang.ref.Cleaner;
import java.nio.file.Path;
import java.util.Optional;

/**
 * CoolProp, loaded once per process: from the official Python wheel ({@link CoolPropWheel}), or, if the environment
 * variable {@code PENSTOCK_COOLPROP} names one, from its own shared library ({@link CoolPropSharedLibrary}).
 */
abstract class CoolPropLibrary {

    static final String FULL_EQUATIONS = "HEOS";
    static final Cleaner CLEANER = Cleaner.create();

    /** CoolProp hands out infinity, or a number near the largest, where it has no value. */
    static final double HUGE = 1e300;

    private static CoolPropLibrary loaded;

    /**
     * @param fluid CoolProp's name of a pure fluid
     * @param id Penstock's name of it, for messages
     * @return a new state object for the calling thread
     * @throws PropertyFailure if CoolProp does not know the fluid
     */
    abstract CoolPropHandle open(String fluid, String id);

    /**
     * @param home folder in which {@code .penstock/coolprop} holds the wheel; ignored once CoolProp is loaded
     * @return CoolProp
     * @throws PropertyFailure if it cannot be found or loaded, saying what to do
     */
    static synchronized CoolPropLibrary load(Path home) {
        if (loaded == null) {
            CoolPropLibrary library = Optional.ofNullable(System.getenv("PENSTOCK_COOLPROP"))
                    .filter(path -> !path.isBlank())
                    .<CoolPropLibrary>map(path -> CoolPropSharedLibrary.load(Path.of(path)))
                    .orElseGet(
                            () -> CoolPropWheel.load(home.resolve(".penstock").resolve("coolprop")));
            library.verify();
            loaded = library;
        }
        return loaded;
    }

    /**
     * Asks a question with a known answer: a CoolProp whose enumerations or units differ from ours must not answer
     * another. Water at 1 atm and 25 °C: 997.05 kg/m³ [wagner-pruss-2002].
     */
    void verify() {
        CoolPropHandle water = open("Water", "water");
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

package dev.penstock.fluids.coolprop;

import java.util.Arrays;
import java.util.List;

/** Quantities asked of CoolProp, with the two names it knows them by. All SI and per kilogram. */
enum CoolPropOutput {
    TEMPERATURE("iT", "T"),
    PRESSURE("iP", "P"),
    QUALITY("iQ", "Q"),
    DENSITY("iDmass", "Dmass"),
    ENTHALPY("iHmass", "Hmass"),
    ENTROPY("iSmass", "Smass"),
    ISOBARIC_HEAT_CAPACITY("iCpmass", "Cpmass"),
    ISOCHORIC_HEAT_CAPACITY("iCvmass", "Cvmass"),
    SOUND_SPEED("ispeed_sound", "speed_sound"),
    VISCOSITY("iviscosity", "viscosity"),
    CONDUCTIVITY("iconductivity", "conductivity"),
    PHASE("iPhase", "Phase"),
    MOLAR_MASS("imolar_mass", "molar_mass"),
    CRITICAL_TEMPERATURE("iT_critical", "T_critical"),
    CRITICAL_PRESSURE("iP_critical", "p_critical"),
    CRITICAL_DENSITY("irhomass_critical", "rhomass_critical"),
    MINIMUM_TEMPERATURE("iT_min", "T_min"),
    MAXIMUM_TEMPERATURE("iT_max", "T_max"),
    MAXIMUM_PRESSURE("iP_max", "p_max"),
    /** By density at constant temperature (Pa·m³/kg). */
    PRESSURE_BY_DENSITY(PRESSURE, DENSITY, TEMPERATURE),
    /** By temperature at constant density (Pa/K). */
    PRESSURE_BY_TEMPERATURE(PRESSURE, TEMPERATURE, DENSITY);

    private static final List<CoolPropOutput> KEYED =
            Arrays.stream(values()).filter(key -> !key.isDerivative()).toList();

    private final String pythonName;
    private final String libraryName;
    private final List<CoolPropOutput> parts;

    CoolPropOutput(String pythonName, String libraryName) {
        this.pythonName = pythonName;
        this.libraryName = libraryName;
        this.parts = List.of();
    }

    CoolPropOutput(CoolPropOutput of, CoolPropOutput by, CoolPropOutput constant) {
        this.pythonName = of.pythonName + "/" + by.pythonName + "/" + constant.pythonName;
        this.libraryName = of.libraryName + "/" + by.libraryName + "/" + constant.libraryName;
        this.parts = List.of(of, by, constant);
    }

    /** @return the quantities that have a name of their own in CoolProp */
    static List<CoolPropOutput> keyed() {
        return KEYED;
    }

    /** @return name of the enum value in the Python module; three with strokes between for a derivative */
    String pythonName() {
        return pythonName;
    }

    /** @return name that the C interface looks up */
    String libraryName() {
        return libraryName;
    }

    /** @return whether this is a partial derivative of one quantity by another at a constant third */
    boolean isDerivative() {
        return !parts.isEmpty();
    }

    /** @return for a derivative: what changes (0), by what (1), what is constant (2) */
    CoolPropOutput part(int index) {
        return parts.get(index);
    }
}

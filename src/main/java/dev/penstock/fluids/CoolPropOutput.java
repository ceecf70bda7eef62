package dev.penstock.fluids;

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
    MAXIMUM_PRESSURE("iP_max", "p_max");

    private final String pythonName;
    private final String libraryName;

    CoolPropOutput(String pythonName, String libraryName) {
        this.pythonName = pythonName;
        this.libraryName = libraryName;
    }

    /** @return name of the enum value in the Python module */
    String pythonName() {
        return pythonName;
    }

    /** @return name that the C interface looks up */
    String libraryName() {
        return libraryName;
    }
}

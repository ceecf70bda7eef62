package dev.penstock.quantities;

/** What kind of quantity an input is, with the SI unit in which Penstock holds it. */
public enum Dimension {
    RATIO("", "a plain number"),
    PRESSURE("Pa", "a pressure such as \"7.5 MPa\" (absolute)"),
    TEMPERATURE("K", "a temperature such as \"110 K\""),
    TEMPERATURE_DIFFERENCE("K", "a temperature difference such as \"15 K\""),
    LENGTH("m", "a length such as \"1.2 mm\""),
    AREA("m²", "an area such as \"0.2 m²\""),
    VOLUME("m³", "a volume such as \"12 m³\""),
    MASS("kg", "a mass such as \"5 t\""),
    FORCE("N", "a force such as \"600 kN\""),
    POWER("W", "a power such as \"3 MW\""),
    VELOCITY("m/s", "a velocity such as \"450 m/s\""),
    ACCELERATION("m/s²", "an acceleration such as \"40 m/s²\""),
    ROTATIONAL_SPEED("rad/s", "a rotational speed such as \"30000 rpm\""),
    ANGLE("rad", "an angle such as \"15 deg\""),
    TIME("s", "a time such as \"150 s\""),
    MASS_FLOW("kg/s", "a mass flow such as \"12 kg/s\""),
    DENSITY("kg/m³", "a density such as \"810 kg/m³\""),
    ENERGY("J", "an energy such as \"2 MJ\""),
    SPECIFIC_ENERGY("J/kg", "a specific energy such as \"250 kJ/kg\""),
    SPECIFIC_POWER("W/kg", "a specific power such as \"4 kW/kg\""),
    SPECIFIC_HEAT("J/(kg·K)", "a specific heat such as \"2.1 kJ/(kg·K)\""),
    HEAT_FLUX("W/m²", "a heat flux such as \"20 MW/m²\""),
    CONDUCTIVITY("W/(m·K)", "a thermal conductivity such as \"320 W/(m·K)\""),
    VISCOSITY("Pa·s", "a viscosity such as \"1.5 mPa·s\""),
    AREAL_MASS("kg/m²", "a mass per area such as \"8 kg/m²\""),
    MOLAR_MASS("kg/mol", "a molar mass such as \"16.04 g/mol\""),
    MOLAR_ENERGY("J/mol", "a molar energy such as \"-74.6 kJ/mol\""),
    THERMAL_EXPANSION("1/K", "a thermal expansion such as \"17e-6 1/K\"");

    private final String siUnit;
    private final String description;

    Dimension(String siUnit, String description) {
        this.siUnit = siUnit;
        this.description = description;
    }

    /** @return the SI unit in which values of this kind are held; empty for a plain number */
    public String siUnit() {
        return siUnit;
    }

    /** @return what is allowed, with an example, for error messages */
    public String description() {
        return description;
    }
}

package dev.penstock.fluids.coolprop;

import java.util.Locale;

/** Pairs of quantities that fix a state in CoolProp; the constants' names are the order of the values. */
enum CoolPropInputs {
    PRESSURE_TEMPERATURE("PT_INPUTS", "p = %.8g Pa, T = %.8g K"),
    DENSITY_TEMPERATURE("DmassT_INPUTS", "rho = %.8g kg/m³, T = %.8g K"),
    ENTHALPY_PRESSURE("HmassP_INPUTS", "h = %.8g J/kg, p = %.8g Pa"),
    PRESSURE_ENTROPY("PSmass_INPUTS", "p = %.8g Pa, s = %.8g J/(kg·K)"),
    QUALITY_TEMPERATURE("QT_INPUTS", "vapour fraction %.8g, T = %.8g K"),
    PRESSURE_QUALITY("PQ_INPUTS", "p = %.8g Pa, vapour fraction %.8g");

    private final String nativeName;
    private final String format;

    CoolPropInputs(String nativeName, String format) {
        this.nativeName = nativeName;
        this.format = format;
    }

    /** @return name of the pair in both of CoolProp's interfaces */
    String nativeName() {
        return nativeName;
    }

    /** @return the two values with their units, for messages */
    String describe(double first, double second) {
        return String.format(Locale.ROOT, format, first, second);
    }
}

package dev.penstock.cooling.jacket;

import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.provenance.LimitKind;

/** Limits of a cooling jacket. */
public enum JacketLimit implements LimitKind {
    /** Wall on the gas side. */
    WALL_TEMPERATURE(Terms.shown("peak_wall_temperature_K").boundBy("limits.wall_temperature")),
    /** Wall on the coolant side. */
    COOLANT_WALL_TEMPERATURE(
            alongJacket("largest wall temperature on the coolant side", "limits.coolant_wall_temperature")),
    /** Coolant that begins to decompose. */
    COOLANT_TEMPERATURE(alongJacket("largest bulk temperature along the jacket")),
    /** Coolant beyond its property model. */
    COOLANT_MODEL_RANGE(alongJacket("largest bulk temperature along the jacket")),
    /** Surface of a coating. */
    COATING_TEMPERATURE(alongJacket("largest temperature of the coated surface", "coating.highest_temperature")),
    /** Pressure drop of the coolant. */
    PRESSURE_DROP(Terms.shown("coolant_pressure_drop_Pa")
            .boundBy("limits.pressure_drop_fraction", "engine.chamber_pressure")),
    /** Speed of the coolant. */
    COOLANT_MACH(alongJacket("largest v/a along the jacket")),
    /** Room to boiling. */
    ENTHALPY_RISE_TO_BOILING(alongJacket("largest h − h_inlet against h_saturated − h_inlet")),
    /** Heat flux over that at which the coolant film burns out. */
    CRITICAL_HEAT_FLUX_RATIO(alongJacket("largest q/q_critical along the jacket")),
    /** Narrowest channel that is made. */
    CHANNEL_WIDTH(alongJacket("smallest width along the jacket")),
    /** Shallowest channel that is made. */
    CHANNEL_HEIGHT(alongJacket("smallest height along the jacket")),
    /** Thinnest land that is made. */
    LAND_WIDTH(alongJacket("smallest land along the jacket")),
    /** Slimmest channel that is made. */
    CHANNEL_ASPECT_RATIO(alongJacket("largest height over width along the jacket")),
    /** Tallest channel for the wall that it stands on. */
    CHANNEL_HEIGHT_OVER_RADIUS(alongJacket("largest height over wall radius along the jacket")),
    /** Floor of a channel under pressure. */
    PRESSURE_STRESS_OVER_YIELD(alongJacket("largest stress of the floor by pressure over yield at its temperature")),
    /** Land under pressure. */
    LAND_STRESS_OVER_YIELD(alongJacket("largest stress of a land by pressure over yield at its temperature")),
    /** Load cycles to a crack. */
    LIFE(alongJacket("fewest cycles to crack by the strain range of a firing", "limits.life")),
    /** Wall that buckles by heat. */
    THERMAL_STRAIN_OVER_BUCKLING(alongJacket("largest thermal strain over that at which the wall buckles")),
    /** Uncooled extension. */
    EXTENSION_TEMPERATURE(alongJacket("radiation equilibrium where the jacket ends"));

    private final Terms terms;

    JacketLimit(Terms terms) {
        this.terms = terms;
    }

    /** A value that is sought along the jacket, from states that are not published cell by cell. */
    private static Terms alongJacket(String equation, String... bounds) {
        return Terms.made(
                        equation,
                        "peak_heat_flux_W_m2",
                        "peak_wall_temperature_K",
                        "outlet_temperature_K",
                        "outlet_pressure_Pa")
                .boundBy(bounds);
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public String path(String owner) {
        return CircuitKey.path(owner);
    }
}

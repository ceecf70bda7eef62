package dev.penstock.cooling.jacket;

import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.provenance.LimitKind;
import java.util.List;

/** Limits of a cooling jacket. */
public enum JacketLimit implements LimitKind {
    /** Wall on the gas side. */
    WALL_TEMPERATURE(
            "wall_temperature", "", List.of("peak_wall_temperature_K"), List.of(), List.of("limits.wall_temperature")),
    /** Wall on the coolant side. */
    COOLANT_WALL_TEMPERATURE(
            "coolant_wall_temperature",
            "largest wall temperature on the coolant side",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of("limits.coolant_wall_temperature")),
    /** Coolant that begins to decompose. */
    COOLANT_TEMPERATURE(
            "coolant_temperature",
            "largest bulk temperature along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Coolant beyond its property model. */
    COOLANT_MODEL_RANGE(
            "coolant_model_range",
            "largest bulk temperature along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Surface of a coating. */
    COATING_TEMPERATURE(
            "coating_temperature",
            "largest temperature of the coated surface",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of("coating.highest_temperature")),
    /** Pressure drop of the coolant. */
    PRESSURE_DROP(
            "pressure_drop",
            "",
            List.of("coolant_pressure_drop_Pa"),
            List.of(),
            List.of("limits.pressure_drop_fraction", "engine.chamber_pressure")),
    /** Speed of the coolant. */
    COOLANT_MACH(
            "coolant_mach",
            "largest v/a along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Room to boiling. */
    ENTHALPY_RISE_TO_BOILING(
            "enthalpy_rise_to_boiling",
            "largest h − h_inlet against h_saturated − h_inlet",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Heat flux over that at which the coolant film burns out. */
    CRITICAL_HEAT_FLUX_RATIO(
            "critical_heat_flux_ratio",
            "largest q/q_critical along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Narrowest channel that is made. */
    CHANNEL_WIDTH(
            "channel_width",
            "smallest width along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Shallowest channel that is made. */
    CHANNEL_HEIGHT(
            "channel_height",
            "smallest height along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Thinnest land that is made. */
    LAND_WIDTH(
            "land_width",
            "smallest land along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Slimmest channel that is made. */
    CHANNEL_ASPECT_RATIO(
            "channel_aspect_ratio",
            "largest height over width along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Tallest channel for the wall that it stands on. */
    CHANNEL_HEIGHT_OVER_RADIUS(
            "channel_height_over_radius",
            "largest height over wall radius along the jacket",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Floor of a channel under pressure. */
    PRESSURE_STRESS_OVER_YIELD(
            "pressure_stress_over_yield",
            "largest stress of the floor by pressure over yield at its temperature",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Land under pressure. */
    LAND_STRESS_OVER_YIELD(
            "land_stress_over_yield",
            "largest stress of a land by pressure over yield at its temperature",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Load cycles to a crack. */
    LIFE(
            "life",
            "fewest cycles to crack by the strain range of a firing",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of("limits.life")),
    /** Wall that buckles by heat. */
    THERMAL_STRAIN_OVER_BUCKLING(
            "thermal_strain_over_buckling",
            "largest thermal strain over that at which the wall buckles",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of()),
    /** Uncooled extension. */
    EXTENSION_TEMPERATURE(
            "extension_temperature",
            "radiation equilibrium where the jacket ends",
            List.of("peak_heat_flux_W_m2", "peak_wall_temperature_K", "outlet_temperature_K", "outlet_pressure_Pa"),
            List.of(),
            List.of());

    private final Terms terms;

    JacketLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.terms = new Terms(key, equation, figures, inputs, bounds);
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

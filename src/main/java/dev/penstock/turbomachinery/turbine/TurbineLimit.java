package dev.penstock.turbomachinery.turbine;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;
import java.util.List;

/** Limits of a turbine. */
public enum TurbineLimit implements LimitKind {
    /** Blade speed at the mean diameter. */
    PITCH_LINE_SPEED(
            "pitch_line_speed", "", List.of("pitch_line_speed_m_s"), List.of(), List.of("pitch_line_speed_limit")),
    /** Load on the blade roots. */
    ANNULUS_SPEED(
            "annulus_speed",
            "ω √(π d h), d mean diameter, h blade height of full admission",
            List.of("speed_rad_s", "mean_diameter_m", "blade_height_m", "mass_flow_kg_s", "isentropic_drop_J_kg"),
            List.of("nozzle_angle"),
            List.of("annulus_speed_limit")),
    /** Temperature of the gas before it. */
    INLET_TEMPERATURE(
            "inlet_temperature",
            "",
            List.of("inlet_temperature_K"),
            List.of(),
            List.of("inlet_temperature_limit", "limits.turbine_temperature"));

    private final Terms terms;

    TurbineLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.terms = new Terms(key, equation, figures, inputs, bounds);
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public Choice sets() {
        return switch (this) {
            case PITCH_LINE_SPEED -> Choice.WHEEL;
            case ANNULUS_SPEED -> Choice.SPEED;
            case INLET_TEMPERATURE -> Choice.GAS_TEMPERATURE;
        };
    }

    @Override
    public String path(String owner) {
        return "turbines." + Trail.slug(owner);
    }
}

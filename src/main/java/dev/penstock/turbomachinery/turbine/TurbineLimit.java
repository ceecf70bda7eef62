package dev.penstock.turbomachinery.turbine;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;

/** Limits of a turbine. */
public enum TurbineLimit implements LimitKind {
    /** Blade speed at the mean diameter. */
    PITCH_LINE_SPEED(Terms.shown("pitch_line_speed_m_s").boundBy("pitch_line_speed_limit")),
    /** Load on the blade roots. */
    ANNULUS_SPEED(Terms.made(
                    "ω √(π d h), d mean diameter, h blade height of full admission",
                    "speed_rad_s",
                    "mean_diameter_m",
                    "blade_height_m",
                    "mass_flow_kg_s",
                    "isentropic_drop_J_kg")
            .with("nozzle_angle")
            .boundBy("annulus_speed_limit")),
    /** Temperature of the gas before it. */
    INLET_TEMPERATURE(
            Terms.shown("inlet_temperature_K").boundBy("inlet_temperature_limit", "limits.turbine_temperature"));

    private final Terms terms;

    TurbineLimit(Terms terms) {
        this.terms = terms;
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

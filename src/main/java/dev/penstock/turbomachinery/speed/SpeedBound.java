package dev.penstock.turbomachinery.speed;

import java.util.List;

/** What can keep a shaft from turning faster, with the inputs and figures of its machine that the bound is made from. */
public enum SpeedBound {
    /** Head that the inlet offers the inducer. */
    SUCTION(
            "suction",
            List.of(
                    "suction_margin",
                    "inducer_flow_coefficient",
                    "inducer_hub_ratio",
                    "inducer_tip_speed_limit",
                    "suppression_factor"),
            List.of("suction_head_available_m", "mass_flow_kg_s")),
    /** Tip of the inducer at its largest flow coefficient. */
    INDUCER_TIP(
            "inducer tip speed", List.of("inducer_tip_speed_limit", "inducer_hub_ratio"), List.of("mass_flow_kg_s")),
    /** Bearings on a shaft that carries the torque. */
    BEARINGS("bearings", List.of("bearing_speed_limit", "shaft_stress"), List.of("mass_flow_kg_s", "head_J_kg")),
    /** Bearings on the smallest shaft that is built. */
    SMALLEST_BEARINGS("smallest bearings", List.of("bearing_speed_limit", "smallest_shaft_diameter"), List.of()),
    /** Shape of the impeller. */
    SPECIFIC_SPEED(
            "specific speed",
            List.of("specific_speed_limit", "stages", "tip_speed_limit"),
            List.of("mass_flow_kg_s", "head_J_kg")),
    /** Blade roots of the turbine. */
    ANNULUS(
            "annulus",
            List.of(
                    "annulus_speed_limit",
                    "nozzle_angle",
                    "nozzle_coefficient",
                    "blade_coefficient",
                    "pitch_line_speed_limit",
                    "diameter_coefficient",
                    "efficiency_factor"),
            List.of("mass_flow_kg_s", "isentropic_drop_J_kg", "exit_pressure_Pa", "exit_temperature_K")),
    /** Teeth of the gearbox. */
    TEETH("teeth", List.of("gear_speed_limit", "gear_ratio"), List.of()),
    /** Nothing but the concept, which states the speed. */
    STATED("the concept", List.of("speed"), List.of()),
    /** Machines that are built and must give a pressure. */
    BUILT("the pressure asked for", List.of(), List.of());

    private final String title;
    private final List<String> keys;
    private final List<String> figures;

    SpeedBound(String title, List<String> keys, List<String> figures) {
        this.title = title;
        this.keys = keys;
        this.figures = figures;
    }

    /** @return name for people */
    public String title() {
        return title;
    }

    /** @return keys of the machine's table in the concept file that it depends on */
    public List<String> keys() {
        return keys;
    }

    /** @return figures of the machine that it depends on */
    public List<String> figures() {
        return figures;
    }
}

package dev.penstock.turbomachinery.pump;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;
import java.util.List;

/** Limits of a pump. */
public enum PumpLimit implements LimitKind {
    /** Pressure behind it. */
    DISCHARGE_PRESSURE(
            "discharge_pressure",
            "",
            List.of("discharge_pressure_Pa"),
            List.of(),
            List.of("limits.discharge_pressure")),
    /** Tip speed of the impeller. */
    TIP_SPEED("tip_speed", "", List.of("tip_speed_m_s"), List.of(), List.of("tip_speed_limit")),
    /** Tip speed of the inducer. */
    INDUCER_TIP_SPEED(
            "inducer_tip_speed",
            "u = ω d_inducer/2",
            List.of("speed_rad_s", "inducer_diameter_m"),
            List.of(),
            List.of("inducer_tip_speed_limit")),
    /** Suction head offered over that needed. */
    SUCTION_MARGIN(
            "suction_margin",
            "(NPSH + thermodynamic suppression)/NPSH required",
            List.of("suction_head_available_m", "suction_head_required_m"),
            List.of(),
            List.of("suction_margin")),
    /** Speed of the bearings at their bore. */
    BEARING_SPEED(
            "bearing_speed",
            "u = ω d_shaft/2",
            List.of("speed_rad_s", "power_W"),
            List.of("shaft_stress", "smallest_shaft_diameter"),
            List.of("bearing_speed_limit")),
    /** Distance to the flow at which a built pump stalls. */
    STALL_MARGIN(
            "stall_margin",
            "flow over the flow at the top of the head curve, less one",
            List.of("mass_flow_kg_s", "speed_rad_s"),
            List.of(),
            List.of()),
    /** Suction head left to a built pump. */
    CAVITATION_MARGIN(
            "cavitation_margin",
            "(NPSH + thermodynamic suppression)/NPSH required, less one",
            List.of("suction_head_available_m", "suction_head_required_m"),
            List.of(),
            List.of());

    private final Terms terms;

    PumpLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.terms = new Terms(key, equation, figures, inputs, bounds);
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public Choice sets() {
        return this == SUCTION_MARGIN || this == INDUCER_TIP_SPEED || this == BEARING_SPEED
                ? Choice.SPEED
                : Choice.NOTHING;
    }

    @Override
    public String path(String owner) {
        return "pumps." + Trail.slug(owner);
    }
}

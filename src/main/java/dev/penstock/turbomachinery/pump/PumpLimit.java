package dev.penstock.turbomachinery.pump;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;

/** Limits of a pump. */
public enum PumpLimit implements LimitKind {
    /** Pressure behind it. */
    DISCHARGE_PRESSURE(Terms.shown("discharge_pressure_Pa").boundBy("limits.discharge_pressure")),
    /** Tip speed of the impeller. */
    TIP_SPEED(Terms.shown("tip_speed_m_s").boundBy("tip_speed_limit")),
    /** Tip speed of the inducer. */
    INDUCER_TIP_SPEED(
            Terms.made("u = ω d_inducer/2", "speed_rad_s", "inducer_diameter_m").boundBy("inducer_tip_speed_limit")),
    /** Suction head offered over that needed. */
    SUCTION_MARGIN(Terms.made(
                    "(NPSH + thermodynamic suppression)/NPSH required",
                    "suction_head_available_m",
                    "suction_head_required_m")
            .boundBy("suction_margin")),
    /** Speed of the bearings at their bore. */
    BEARING_SPEED(Terms.made("u = ω d_shaft/2", "speed_rad_s", "power_W")
            .with("shaft_stress", "smallest_shaft_diameter")
            .boundBy("bearing_speed_limit")),
    /** Distance to the flow at which a built pump stalls. */
    STALL_MARGIN(
            Terms.made("flow over the flow at the top of the head curve, less one", "mass_flow_kg_s", "speed_rad_s")),
    /** Suction head left to a built pump. */
    CAVITATION_MARGIN(Terms.made(
            "(NPSH + thermodynamic suppression)/NPSH required, less one",
            "suction_head_available_m",
            "suction_head_required_m"));

    private final Terms terms;

    PumpLimit(Terms terms) {
        this.terms = terms;
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

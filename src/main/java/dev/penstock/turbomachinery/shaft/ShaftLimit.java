package dev.penstock.turbomachinery.shaft;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;

/** Limits of a shaft. */
public enum ShaftLimit implements LimitKind {
    /** Speed of the bearings at their bore. */
    BEARING_SPEED(Terms.made("u = ω d_shaft/2", "speed_rad_s", "diameter_m").boundBy("bearing_speed_limit")),
    /** Rubbing speed of the seals. */
    SEAL_SPEED(Terms.made("u = ω d_shaft/2", "speed_rad_s", "diameter_m")),
    /** Distance to the first critical speed. */
    CRITICAL_SPEED_DISTANCE(Terms.made("|ω/ω_critical − 1|", "speed_rad_s", "diameter_m", "mass_kg")),
    /** Speed of the teeth of the gearbox. */
    GEAR_SPEED(Terms.made("u = ω d_pitch/2, the pinion's", "speed_rad_s", "diameter_m")
            .boundBy("gear_speed_limit"));

    private final Terms terms;

    ShaftLimit(Terms terms) {
        this.terms = terms;
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public Choice sets() {
        return switch (this) {
            case BEARING_SPEED, GEAR_SPEED -> Choice.SPEED;
            case CRITICAL_SPEED_DISTANCE -> Choice.BEARINGS;
            case SEAL_SPEED -> Choice.NOTHING;
        };
    }

    @Override
    public String path(String owner) {
        return "shafts." + Trail.slug(owner);
    }
}

package dev.penstock.turbomachinery.shaft;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;
import java.util.List;

/** Limits of a shaft. */
public enum ShaftLimit implements LimitKind {
    /** Speed of the bearings at their bore. */
    BEARING_SPEED(
            "bearing_speed",
            "u = ω d_shaft/2",
            List.of("speed_rad_s", "diameter_m"),
            List.of(),
            List.of("bearing_speed_limit")),
    /** Rubbing speed of the seals. */
    SEAL_SPEED("seal_speed", "u = ω d_shaft/2", List.of("speed_rad_s", "diameter_m"), List.of(), List.of()),
    /** Distance to the first critical speed. */
    CRITICAL_SPEED_DISTANCE(
            "critical_speed_distance",
            "|ω/ω_critical − 1|",
            List.of("speed_rad_s", "diameter_m", "mass_kg"),
            List.of(),
            List.of()),
    /** Speed of the teeth of the gearbox. */
    GEAR_SPEED(
            "gear_speed",
            "u = ω d_pitch/2, the pinion's",
            List.of("speed_rad_s", "diameter_m"),
            List.of(),
            List.of("gear_speed_limit"));

    private final Terms terms;

    ShaftLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.terms = new Terms(key, equation, figures, inputs, bounds);
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

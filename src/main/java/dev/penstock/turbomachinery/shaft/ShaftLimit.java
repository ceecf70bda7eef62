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

    private final String key;
    private final String equation;
    private final List<String> figures;
    private final List<String> inputs;
    private final List<String> bounds;

    ShaftLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.key = key;
        this.equation = equation;
        this.figures = figures;
        this.inputs = inputs;
        this.bounds = bounds;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String equation() {
        return equation;
    }

    @Override
    public List<String> figures() {
        return figures;
    }

    @Override
    public List<String> inputs() {
        return inputs;
    }

    @Override
    public List<String> bounds() {
        return bounds;
    }

    @Override
    public String path(String owner) {
        return "shafts." + Trail.slug(owner);
    }
}

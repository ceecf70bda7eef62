package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * A body of given outer shape that the tanks of a stage have to fit into.
 *
 * <pre>
 * cylinder π d² h/4,  cone π d² h/12,  sphere π d³/6,  tapered π h (d² + d t + t²)/12
 * tanks fit if  V_tanks ≤ filling · V;   height needed h V_tanks/(filling V), of a sphere its diameter d (V_tanks/(filling V))^⅓
 * </pre>
 *
 * d is the base diameter, t that of the top. The filling is what is left for tanks beside engines, equipment and the gaps
 * between tank heads and the wall.
 *
 * @param kind shape
 * @param height height (m); of a sphere its diameter
 * @param base diameter of the base (m)
 * @param top diameter of the top (m); of a tapered body only
 * @param filling share of its volume that tanks may take (-)
 */
public record BodyShape(Kind kind, double height, double base, double top, double filling) {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.body-shape",
            "Tanks in a body of given shape",
            "V = π d² h/4, π d² h/12, π d³/6, π h (d² + d t + t²)/12; V_tanks ≤ filling V",
            "bodies of revolution; shape of the tanks themselves not looked at",
            "that of the filling",
            List.of("common practice, no source"));

    /** A shape. */
    public enum Kind {
        CYLINDER,
        CONE,
        SPHERE,
        TAPERED
    }

    public BodyShape {
        Require.positive("body", "height (m)", height);
        Require.positive("body", "base diameter (m)", base);
        Require.notNegative("body", "top diameter (m)", top);
        Require.within("body", "filling (-)", filling, 1e-3, 1);
    }

    /** @return its volume (m³) */
    public double volume() {
        return switch (kind) {
            case CYLINDER -> Math.PI / 4 * base * base * height;
            case CONE -> Math.PI / 12 * base * base * height;
            case SPHERE -> Math.PI / 6 * height * height * height;
            case TAPERED -> Math.PI / 12 * height * (base * base + base * top + top * top);
        };
    }

    /**
     * @param tanks volume of all tanks (m³)
     * @return height (m) at which they just fit, base and top unchanged; of a sphere its diameter
     */
    public double heightFor(double tanks) {
        double ratio = tanks / (filling * volume());
        return height * (kind == Kind.SPHERE ? Math.cbrt(ratio) : ratio);
    }

    /**
     * @param tanks volume of all tanks (m³)
     * @return volume that is missing for them (m³); zero or less where they fit
     */
    public double missing(double tanks) {
        return tanks - filling * volume();
    }
}

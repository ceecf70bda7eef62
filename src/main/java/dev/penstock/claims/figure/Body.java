package dev.penstock.claims.figure;

import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * The body of a vehicle as a picture shows it: a frustum of a cone. Its tanks must find room in it.
 * <pre>V = π h (D² + D d + d²)/12</pre>
 *
 * @param baseDiameter outer diameter at its foot (m)
 * @param topDiameter outer diameter at its top (m)
 * @param height height (m)
 * @param filled share of the volume that tanks can take up at most (-)
 */
public record Body(double baseDiameter, double topDiameter, double height, double filled) {

    public static final ModelCard CARD = new ModelCard(
            "claims.body",
            "Volume of a tapered body",
            "V = pi h (D^2 + D d + d^2)/12",
            "straight taper; walls, engine bay and payload are what tanks do not take up",
            "exact for the shape; the share that tanks can take up is common practice without a source",
            List.of("common practice, no source"));

    public Body {
        if (!(baseDiameter > 0 && topDiameter >= 0 && height > 0 && filled > 0 && filled <= 1)) {
            throw new InvalidInput("", "body", baseDiameter + ", " + topDiameter + ", " + height, "positive lengths");
        }
    }

    /** @return volume (m³) */
    public double volume() {
        return Math.PI
                * height
                * (baseDiameter * baseDiameter + baseDiameter * topDiameter + topDiameter * topDiameter)
                / 12;
    }
}

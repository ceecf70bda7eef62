package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Drag coefficient by Mach number at zero angle of attack, on the largest cross section; linear between the points and
 * constant beyond the ends.
 *
 * <pre>D = ½ ρ v² C_D(M) A</pre>
 *
 * The equation is the definition of the coefficient; the usual table is common practice, no source. [sutton-rpe] shows
 * 0.15 below Mach 0.8 and 0.42 at Mach 1.2 for a slender finned rocket (from memory): blunter vehicles lie above it.
 */
public final class DragTable {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.drag-table",
            "Drag by Mach number",
            "D = ½ ρ v² C_D(M) A",
            "zero angle of attack; usual table for a launcher with a round nose, engines burning",
            "±30 % of the drag for the usual table by judgement; drag loss itself is a per cent of the delta-v",
            List.of("common practice, no source", "sutton-rpe"));

    /**
     * A point of the table.
     *
     * @param mach Mach number (-)
     * @param coefficient drag coefficient on the largest cross section (-)
     */
    public record Point(double mach, double coefficient) {

        public Point {
            Require.within("drag table", "Mach number (-)", mach, 0, 100);
            Require.within("drag table", "drag coefficient (-)", coefficient, 0, 10);
        }
    }

    /** A vehicle without figures of its own: round nose, no fins, engines burning. Common practice, no source. */
    public static final DragTable USUAL = new DragTable(List.of(
            new Point(0, 0.28),
            new Point(0.6, 0.26),
            new Point(0.8, 0.28),
            new Point(0.9, 0.33),
            new Point(1.0, 0.44),
            new Point(1.1, 0.5),
            new Point(1.2, 0.52),
            new Point(1.5, 0.48),
            new Point(2, 0.41),
            new Point(3, 0.32),
            new Point(4, 0.27),
            new Point(5, 0.24),
            new Point(8, 0.2)));

    private final List<Point> points;
    private final double[] mach;
    private final double[] coefficient;

    /** @param points at least one point, Mach number rising */
    public DragTable(List<Point> points) {
        this.points = List.copyOf(points);
        Require.within("drag table", "number of points", points.size(), 1, 1000);
        this.mach = points.stream().mapToDouble(Point::mach).toArray();
        this.coefficient = points.stream().mapToDouble(Point::coefficient).toArray();
        for (int i = 1; i < mach.length; i++) {
            Require.within(
                    "drag table", "Mach number (-) above the one before", mach[i], Math.nextUp(mach[i - 1]), 100);
        }
    }

    /** @return the points */
    public List<Point> points() {
        return points;
    }

    /**
     * @param machNumber Mach number (-)
     * @return drag coefficient (-)
     */
    public double coefficient(double machNumber) {
        int last = mach.length - 1;
        if (!(machNumber > mach[0])) {
            return coefficient[0];
        }
        if (machNumber >= mach[last]) {
            return coefficient[last];
        }
        int i = 1;
        while (mach[i] < machNumber) {
            i++;
        }
        double t = (machNumber - mach[i - 1]) / (mach[i] - mach[i - 1]);
        return coefficient[i - 1] + t * (coefficient[i] - coefficient[i - 1]);
    }
}

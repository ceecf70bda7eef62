package dev.penstock.cooling.wall;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * The land between two channels as a straight fin, and what it adds to the channel floor.
 * <pre>
 * η_f = tanh(mL)/(mL),   m = √(2h/(k t))
 * h_eff = h (w + 2 η_f H)/(w + t)      per area of hot wall
 * </pre>
 * w channel width, H channel height = fin length L, t land width; the fin's tip at the close-out is taken as adiabatic.
 * Source: [incropera-2007]; the use for channels is common practice. Against two-dimensional conduction the flux is within 7 %,
 * low in channels that are not taller than wide, whose roof it leaves out.
 */
public final class FinEfficiency {

    public static final ModelCard CARD = new ModelCard(
            "cooling.fin",
            "Lands as straight fins",
            "eta = tanh(mL)/(mL), m = sqrt(2h/(k t)); h_eff = h (w + 2 eta H)/(w + t)",
            "land thin against its height, h t/k below about 0.3",
            "7 % in flux against two-dimensional conduction (own comparison)",
            List.of("incropera-2007"));

    private FinEfficiency() {}

    /**
     * @param coefficient coefficient on the fin's sides (W/(m²·K))
     * @param conductivity conductivity of the fin (W/(m·K))
     * @param thickness fin thickness t (m)
     * @param length fin length L (m)
     * @return fin efficiency (-)
     */
    public static double of(double coefficient, double conductivity, double thickness, double length) {
        double ml = length * Math.sqrt(2 * coefficient / (conductivity * thickness));
        return ml < 1e-4 ? 1 - ml * ml / 3 : Math.tanh(ml) / ml;
    }

    /**
     * @param efficiency fin efficiency (-)
     * @param width channel width w (m)
     * @param height channel height H (m)
     * @param land land width t (m)
     * @return cooled area over hot wall area (-)
     */
    public static double areaFactor(double efficiency, double width, double height, double land) {
        return (width + 2 * efficiency * height) / (width + land);
    }
}

package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Supercritical hydrogen on film properties with a correction for the kinematic viscosity at the wall.
 * <pre>Nu_f = 0.0208 Re_f^0.8 Pr_f^0.4 (1 + 0.01457 ν_w/ν_b),  film at (T_w + T_b)/2, Re_f = ρ_f V D/μ_f</pre>
 * Source: [hess-kunz-1965]. The coefficient follows with the film conductivity.
 */
public final class HessKunz implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.hess-kunz",
            "Supercritical hydrogen, Hess and Kunz",
            "Nu_f = 0.0208 Re_f^0.8 Pr_f^0.4 (1 + 0.01457 nu_w/nu_b)",
            "hydrogen above its critical pressure, Re_f ≥ 1e4",
            "±20 % (from memory)",
            List.of("hess-kunz-1965"));

    /**
     * @param filmReynolds Reynolds number with film properties (-)
     * @param filmPrandtl Prandtl number with film properties (-)
     * @param viscosityRatio kinematic viscosity at the wall over that in the bulk (-)
     * @return Nusselt number on film conductivity (-)
     */
    public static double nusselt(double filmReynolds, double filmPrandtl, double viscosityRatio) {
        return 0.0208 * Math.pow(filmReynolds, 0.8) * Math.pow(filmPrandtl, 0.4) * (1 + 0.01457 * viscosityRatio);
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    private static double filmReynolds(ChannelFlow flow) {
        return flow.filmDensity * flow.velocity * flow.hydraulicDiameter / flow.filmViscosity;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        double ratio = flow.wallViscosity / flow.wallDensity * flow.bulkDensity / flow.bulkViscosity;
        return nusselt(filmReynolds(flow), flow.filmPrandtl, ratio);
    }

    @Override
    public double conductivity(ChannelFlow flow) {
        return flow.filmConductivity;
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        return flow.pressure > flow.criticalPressure && filmReynolds(flow) >= 1e4;
    }

    @Override
    public boolean needsWallProperties() {
        return true;
    }

    @Override
    public boolean needsFilmProperties() {
        return true;
    }
}

package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Hydrogen in the jacket of a rocket chamber, on properties averaged across the film.
 * <pre>
 * St Pr^0.6 = 0.023 Re^−0.2,  St = h/(ρ V cp), Re = ρ V D/μ
 * ρ, cp, μ, k: each 1/(T_w − T_b) ∫ dT from bulk to wall; V in the bulk
 * </pre>
 * Measured in 150 hydrogen-cooled tubes of a chamber at 2.1 and 3.1 MPa [nasa-tn-d-7207]; that the mean is one over temperature is how
 * the notes read that were seen. Entrance and curvature come on top: the first is left out, the second is the jacket's own factor.
 * Over 2992 points of hydrogen in other tests 56 % either way hold 95 % [locke-2008].
 */
public final class SchachtQuentmeyer implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.schacht-quentmeyer",
            "Hydrogen in a jacket, properties averaged across the film",
            "St Pr^0.6 = 0.023 Re^-0.2, rho, cp, mu, k averaged from bulk to wall temperature",
            "turbulent hydrogen, Re of the mean at least 1e4",
            "±56 % hold 95 % of 2992 points",
            List.of("nasa-tn-d-7207", "locke-2008"));

    private static double reynolds(ChannelFlow flow) {
        return flow.meanDensity * flow.velocity * flow.hydraulicDiameter / flow.meanViscosity;
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        return DittusBoelter.nusselt(reynolds(flow), flow.meanPrandtl);
    }

    @Override
    public double conductivity(ChannelFlow flow) {
        return flow.meanConductivity;
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        return reynolds(flow) >= 1e4;
    }

    @Override
    public boolean needsMeanProperties() {
        return true;
    }
}

package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Convection from the gas by the integral energy equation of a turbulent boundary layer, closed by Ambrok's assumption
 * that the Stanton number depends on the local enthalpy thickness as on a flat plate.
 * <pre>
 * St = 0.0287 Pr^−0.4 R^0.25 ΔT^0.25 μ^0.2 / [∫_0^s R^1.25 ΔT^1.25 G ds]^0.2,    G = ρu, ΔT = T_aw − T_w
 * h  = St G cp (T_ref/T)^−0.68,    T_ref/T = ½ (1 + T_w/T) + 0.22 r (γ−1)/2 M²
 * </pre>
 * R wall radius, s length along the wall from the injector; properties at the free stream, then moved to Eckert's
 * reference temperature T_ref with μ ∝ T^0.6. Unlike the closed form it knows the history of the layer: a long chamber gives a
 * lower throat coefficient than a short one. Sources: [ambrok-1957], as given by [kays-crawford-1993]; reference temperature
 * [eckert-1955]. The same idea with momentum added is [elliott-1963]. Turbulent from the injector on; no relaminarisation.
 */
public final class BoundaryLayer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.boundary-layer",
            "Gas-side convection, integral energy equation",
            "St = 0.0287 Pr^-0.4 R^0.25 dT^0.25 mu^0.2 / [int R^1.25 dT^1.25 G ds]^0.2",
            "turbulent from the injector, attached, no strong acceleration below Re of laminarisation",
            "±20 % (own judgement)",
            List.of("ambrok-1957", "kays-crawford-1993", "eckert-1955", "elliott-1963"));

    private static final double CONSTANT = 0.0287;

    private BoundaryLayer() {}

    /**
     * @param prandtl Prandtl number (-)
     * @param radius wall radius (m)
     * @param difference adiabatic wall less wall temperature (K)
     * @param viscosity viscosity (Pa·s)
     * @param integral ∫ R^1.25 ΔT^1.25 G ds from the start of the layer (SI)
     * @return Stanton number at free-stream properties (-)
     */
    public static double stanton(double prandtl, double radius, double difference, double viscosity, double integral) {
        return CONSTANT
                * Math.pow(prandtl, -0.4)
                * Math.pow(radius * difference, 0.25)
                * Math.pow(viscosity / integral, 0.2);
    }
}

package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Convective heating of a blunt nose at its stagnation point.
 *
 * <pre>q = k √(ρ/R_n) v³,   k = 1.7415e-4 kg^0.5/m for air</pre>
 *
 * q in W/m², ρ air density in kg/m³, R_n nose radius in m, v speed in m/s. Source: [sutton-graves-1971]. Cold wall,
 * laminar, continuum flow in equilibrium; without radiation from the gas, which matters above about 10 km/s. Below
 * about 2 km/s it overstates, since the enthalpy of the wall is neglected.
 */
public final class StagnationHeating {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.sutton-graves",
            "Stagnation-point heating by Sutton and Graves",
            "q = 1.7415e-4 (ρ/R_n)^0.5 v³",
            "air, laminar continuum flow, cold wall, 2 to 10 km/s",
            "±10 % against the boundary-layer solutions it was fitted to; more below 2 km/s",
            List.of("sutton-graves-1971"));

    private static final double K = 1.7415e-4;

    private StagnationHeating() {}

    /**
     * @param density air density (kg/m³)
     * @param noseRadius nose radius (m)
     * @param speed speed through the air (m/s)
     * @return heat flux (W/m²)
     */
    public static double flux(double density, double noseRadius, double speed) {
        Require.notNegative("stagnation heating", "air density (kg/m³)", density);
        Require.positive("stagnation heating", "nose radius (m)", noseRadius);
        Require.notNegative("stagnation heating", "speed (m/s)", speed);
        return K * Math.sqrt(density / noseRadius) * speed * speed * speed;
    }

    /**
     * <pre>T = (q/(ε σ))^¼</pre>
     *
     * @param flux heat flux (W/m²)
     * @param emissivity emissivity of the wall (-)
     * @return temperature at which the wall radiates it away (K)
     */
    public static double radiativeEquilibrium(double flux, double emissivity) {
        Require.notNegative("stagnation heating", "heat flux (W/m²)", flux);
        Require.within("stagnation heating", "emissivity (-)", emissivity, 0.01, 1);
        return Math.pow(flux / (emissivity * Constants.STEFAN_BOLTZMANN), 0.25);
    }
}

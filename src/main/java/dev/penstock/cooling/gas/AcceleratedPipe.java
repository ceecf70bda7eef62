package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Convection from the gas by the law of a pipe at reference enthalpy, with a coefficient that falls where the flow accelerates.
 * <pre>
 * St Pr^0.7 = C Re_d^−0.2      properties at Eckert's reference temperature, d local diameter
 * C = 0.0257 in the barrel, 0.0240 at A/A_t 1.78, 0.0148 in the throat, 0.0153 at 1.27 and 0.0188 at 3.33 behind it
 * </pre>
 * Straight over the logarithm of area ratio between these, constant beyond them. Measured in a heat-sink chamber of hydrogen and oxygen,
 * throat 127 mm, contraction 4.64, 1 to 7 MPa [nasa-tn-d-2832]; other nozzles of the same work had 0.017 to 0.023 in the throat, so that
 * this chamber is the lowest of them. Reference temperature [eckert-1955], viscosity as T^0.6.
 */
public final class AcceleratedPipe {

    public static final ModelCard CARD = new ModelCard(
            "cooling.accelerated-pipe",
            "Gas-side convection, pipe at reference enthalpy with measured acceleration",
            "St Pr^0.7 = C(A/At) Re_d^-0.2, C 0.0257 to 0.0148",
            "oxygen and hydrogen, 1 to 7 MPa, contraction 4.64",
            "-0 to +55 % in the throat (other nozzles of the source)",
            List.of("nasa-tn-d-2832", "eckert-1955"));

    private static final double[] PLACES = {-Math.log(4.64), -Math.log(1.78), 0, Math.log(1.27), Math.log(3.33)};
    private static final double[] COEFFICIENTS = {0.0257, 0.0240, 0.0148, 0.0153, 0.0188};

    private AcceleratedPipe() {}

    /**
     * @param place logarithm of the area ratio, negative upstream (-)
     * @return C (-)
     */
    public static double constant(double place) {
        int last = PLACES.length - 1;
        if (place <= PLACES[0]) {
            return COEFFICIENTS[0];
        }
        for (int i = 1; i <= last; i++) {
            if (place <= PLACES[i]) {
                double along = (place - PLACES[i - 1]) / (PLACES[i] - PLACES[i - 1]);
                return COEFFICIENTS[i - 1] + along * (COEFFICIENTS[i] - COEFFICIENTS[i - 1]);
            }
        }
        return COEFFICIENTS[last];
    }

    /**
     * @param place logarithm of the area ratio, negative upstream (-)
     * @param massFlux ρu of the free stream (kg/(m²·s))
     * @param diameter local diameter (m)
     * @param viscosity viscosity of the free stream (Pa·s)
     * @param heatCapacity cp (J/(kg·K))
     * @param prandtl Prandtl number (-)
     * @return coefficient where reference and free-stream temperature are the same (W/(m²·K))
     */
    public static double coefficient(
            double place, double massFlux, double diameter, double viscosity, double heatCapacity, double prandtl) {
        double reynolds = massFlux * diameter / viscosity;
        return constant(place) * Math.pow(reynolds, -0.2) * Math.pow(prandtl, -0.7) * massFlux * heatCapacity;
    }
}

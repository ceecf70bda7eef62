package dev.penstock.cooling.coolant;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Onset of deteriorated heat transfer where bulk and wall lie on either side of the pseudo-critical temperature.
 * <pre>q_onset = 1.354e-3 G cp_pc/β_pc,    β = −(∂ln ρ/∂T)_p, both at the pseudo-critical temperature</pre>
 * G mass flux. Above it the wall runs hotter than the correlation says. Watched below twice the critical pressure, where
 * deterioration is reported for methane [nasuti-pizzarelli-2021]. Source: [cheng-2009], constant from memory.
 */
public final class DeteriorationOnset {

    public static final ModelCard CARD = new ModelCard(
            "cooling.deterioration",
            "Onset of deteriorated heat transfer near the pseudo-critical temperature",
            "q_onset = 1.354e-3 G cp_pc/beta_pc",
            "bulk below and wall above the pseudo-critical temperature, p below twice critical",
            "±40 % (from memory)",
            List.of("cheng-2009", "nasuti-pizzarelli-2021"));

    public static final double HIGHEST_REDUCED_PRESSURE = 2;
    private static final double CONSTANT = 1.354e-3;
    private static final double STEP = 1e-3;

    private DeteriorationOnset() {}

    /**
     * @param cursor the coolant
     * @param pressure pressure (Pa), above the critical one
     * @param pseudoCritical pseudo-critical temperature there (K)
     * @return flux over mass flux at which deterioration sets in (J/kg); infinite if the fluid gives no state there
     */
    public static double fluxOverMassFlux(FluidCursor cursor, double pressure, double pseudoCritical) {
        try {
            cursor.setPressureTemperature(pressure, pseudoCritical * (1 - STEP));
            double below = cursor.density();
            cursor.setPressureTemperature(pressure, pseudoCritical * (1 + STEP));
            double above = cursor.density();
            cursor.setPressureTemperature(pressure, pseudoCritical);
            double expansion = Math.log(below / above) / (2 * STEP * pseudoCritical);
            return CONSTANT * cursor.isobaricHeatCapacity() / expansion;
        } catch (PropertyFailure e) {
            return Double.POSITIVE_INFINITY;
        }
    }
}

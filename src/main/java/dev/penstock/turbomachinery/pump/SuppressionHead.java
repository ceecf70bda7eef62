package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Thermodynamic suppression head: evaporation at the blade cools the liquid and so lowers the vapour pressure there.
 * <pre>
 * ΔT  = B (ρv/ρl)(L/cp)
 * TSH = ΔT (dpv/dT)/(ρl g)
 * L ρv = T (dpv/dT)(1 - ρv/ρl)     (Clausius-Clapeyron), so
 * TSH = B T (dpv/dT)² (1 - ρv/ρl)/(ρl² cp g)
 * </pre>
 * B is the vapour over liquid volume at the blade: fitted to tests, of order 1 to 3, an input and not a prediction. In the
 * last form only the slope of the vapour pressure matters; ρv/ρl is a correction of 2 % for hydrogen at its boiling point.
 */
public final class SuppressionHead {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.suppression-head",
            "Thermodynamic suppression head",
            "TSH = B T (dpv/dT)² (1 - ρv/ρl)/(ρl² cp g)",
            "liquid well below its critical temperature; large for hydrogen, small for the others",
            "the volume ratio B carries the whole uncertainty, 0 to 3",
            List.of("nasa-tn-d-5292", "stripling-acosta-1962"));

    private static final double TEMPERATURE_STEP = 1e-3;

    private SuppressionHead() {}

    /**
     * @param temperature T (K)
     * @param slope dpv/dT (Pa/K)
     * @param liquidDensity ρl (kg/m³)
     * @param vapourDensity ρv (kg/m³), below ρl
     * @param heatCapacity cp of the liquid (J/(kg·K))
     * @return head for a volume ratio of one (m)
     * @throws dev.penstock.errors.OutsideValidity if an argument is out of range
     */
    public static double perVolumeRatio(
            double temperature, double slope, double liquidDensity, double vapourDensity, double heatCapacity) {
        Require.positive(CARD.id(), "temperature (K)", temperature);
        Require.notNegative(CARD.id(), "slope of the vapour pressure (Pa/K)", slope);
        Require.positive(CARD.id(), "liquid density (kg/m³)", liquidDensity);
        Require.positive(CARD.id(), "heat capacity (J/(kg·K))", heatCapacity);
        double ratio = Require.within(CARD.id(), "vapour over liquid density (-)", vapourDensity / liquidDensity, 0, 1);
        return temperature
                * slope
                * slope
                * (1 - ratio)
                / (liquidDensity * liquidDensity * heatCapacity * Constants.STANDARD_GRAVITY);
    }

    /**
     * @param fluid what is pumped
     * @param inlet liquid at the pump inlet
     * @return head for a volume ratio of one (m), vapour taken as an ideal gas; zero above the critical temperature
     */
    public static double perVolumeRatio(Fluid fluid, FluidState inlet) {
        if (inlet.vapourPressure().isEmpty()) {
            return 0;
        }
        double t = inlet.temperature();
        double pv = inlet.vapourPressure().getAsDouble();
        double below = t * (1 - TEMPERATURE_STEP);
        // ln pv is very nearly straight over 1/T, so the slope over a short step is the slope at its end
        double slope = pv * Math.log(pv / fluid.vapourPressure(below)) / (1 / below - 1 / t) / (t * t);
        double vapour = pv * fluid.molarMass() / (Constants.MOLAR_GAS_CONSTANT * t);
        return perVolumeRatio(
                t, slope, inlet.density(), Math.min(vapour, inlet.density()), inlet.isobaricHeatCapacity());
    }
}

package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.LoadedPropellant;
import java.util.List;

/**
 * Propellant of a cold tank that evaporates while a stage coasts.
 *
 * <pre>
 * m = q A t / L        L = (R T²/M) d ln p_v/dT
 * </pre>
 *
 * q heat leak over the whole surface A of the tank, t time, L heat of vaporisation at the loading temperature by Clausius and Clapeyron
 * with an ideal vapour of small density, some 5 to 13 % above that of the real one at one atmosphere. The liquid is taken to boil from the first
 * moment; what it takes up by growing warmer first is left out, and the vapour does no work. Nothing for what is stored near room temperature.
 */
public final class CoastBoilOff {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.coast-boil-off",
            "Propellant that boils off in a coast",
            "m = q A t/L, L = (R T²/M) d ln p_v/dT",
            "tanks colder than their surroundings, vented, coasts of minutes to hours",
            "that of the heat leak, a factor of three either way",
            List.of("common practice, no source"));

    /** Half of the step over which the vapour pressure is differenced (K). */
    private static final double STEP = 0.25;

    private CoastBoilOff() {}

    /**
     * @param propellant what the tank holds
     * @param heatLeak heat leak (W/m²)
     * @param time time without thrust (s)
     * @return loss of a square metre of its surface (kg/m²)
     */
    public static double perArea(LoadedPropellant propellant, double heatLeak, double time) {
        Require.notNegative("coast", "heat leak (W/m²)", heatLeak);
        Require.notNegative("coast", "time (s)", time);
        return time > 0 && propellant.cryogenic() ? heatLeak * time / heatOfVaporisation(propellant) : 0;
    }

    /**
     * @param propellant what the tank holds, colder than its critical point
     * @return heat of vaporisation at the loading temperature (J/kg)
     */
    public static double heatOfVaporisation(LoadedPropellant propellant) {
        double t = propellant.temperature();
        var fluid = propellant.propellant().fluid();
        double slope = Math.log(fluid.vapourPressure(t + STEP) / fluid.vapourPressure(t - STEP)) / (2 * STEP);
        return Constants.MOLAR_GAS_CONSTANT * t * t / fluid.molarMass() * slope;
    }
}

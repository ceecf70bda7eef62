package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;

/**
 * Propellant that is loaded but gives no speed, and room in the tanks that holds no propellant.
 *
 * @param residual left in tanks and lines at cut-off, with the mixture-ratio error, as a fraction of what is loaded (-)
 * @param startupTime full flow for this long is burnt before the stage moves freely (s)
 * @param boilOff lost by evaporation before ignition, as a fraction of what is loaded (-)
 * @param ullage gas volume as a fraction of the tank (-)
 * @param heatLeak heat that leaks into cold tanks in a coast, over their surface (W/m²)
 * @param coast time without thrust between two burns (s)
 */
public record Allowances(
        double residual, double startupTime, double boilOff, double ullage, double heatLeak, double coast) {

    /** A stage that does not coast between burns. */
    public Allowances(double residual, double startupTime, double boilOff, double ullage) {
        this(residual, startupTime, boilOff, ullage, 0, 0);
    }

    /** What a stage without figures of its own gets. */
    public static final Allowances USUAL = new Allowances(
            StageInputs.RESIDUAL.standing().value(),
            StageInputs.STARTUP_TIME.standing().value(),
            StageInputs.BOIL_OFF.standing().value(),
            StageInputs.ULLAGE.standing().value(),
            StageInputs.HEAT_LEAK.standing().value(),
            0);

    /** Nothing lost, no room. */
    public static final Allowances NONE = new Allowances(0, 0, 0, 0);

    public Allowances {
        Require.within("allowances", "residual (-)", residual, 0, 0.5);
        Require.within("allowances", "start-up time (s)", startupTime, 0, 60);
        Require.within("allowances", "boil-off (-)", boilOff, 0, 0.5);
        Require.within("allowances", "ullage (-)", ullage, 0, 0.9);
        Require.notNegative("allowances", "heat leak (W/m²)", heatLeak);
        Require.notNegative("allowances", "coast (s)", coast);
    }

    /**
     * @param left left in tanks and lines at cut-off (-)
     * @return the same with that
     */
    public Allowances withResidual(double left) {
        return new Allowances(left, startupTime, boilOff, ullage, heatLeak, coast);
    }

    /**
     * @param flux heat that leaks into cold tanks in a coast (W/m²)
     * @return the same with that
     */
    public Allowances withHeatLeak(double flux) {
        return new Allowances(residual, startupTime, boilOff, ullage, flux, coast);
    }

    /**
     * @param time time without thrust between two burns (s)
     * @return the same with that
     */
    public Allowances withCoast(double time) {
        return new Allowances(residual, startupTime, boilOff, ullage, heatLeak, time);
    }
}

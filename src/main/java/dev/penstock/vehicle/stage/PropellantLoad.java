package dev.penstock.vehicle.stage;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.LoadedPropellant;

/**
 * Propellant of one stage: what it is used for, and how it splits into oxidizer and fuel.
 *
 * @param burned burnt for the delta-v of the ascent (kg)
 * @param startup burnt before the stage moves freely (kg)
 * @param boilOff evaporated before ignition (kg)
 * @param residual left at cut-off (kg)
 * @param recovery kept for bringing the stage back (kg)
 * @param mixtureRatio oxidizer over fuel as loaded (-)
 * @param diluentShare share of a third fluid in all that is loaded (-)
 * @param vented boiled off in a coast between burns, taken as carried to the end, which is on the safe side (kg)
 */
public record PropellantLoad(
        double burned,
        double startup,
        double boilOff,
        double residual,
        double recovery,
        double mixtureRatio,
        double diluentShare,
        double vented) {

    public PropellantLoad {
        Require.positive("propellant", "burned (kg)", burned);
        Require.notNegative("propellant", "start-up (kg)", startup);
        Require.notNegative("propellant", "boil-off (kg)", boilOff);
        Require.notNegative("propellant", "residual (kg)", residual);
        Require.notNegative("propellant", "recovery (kg)", recovery);
        Require.notNegative("propellant", "vented (kg)", vented);
        Require.positive("propellant", "mixture ratio (-)", mixtureRatio);
        Require.within("propellant", "share of a third fluid (-)", diluentShare, 0, 0.9);
    }

    /** @return third fluid loaded (kg) */
    public double diluent() {
        return loaded() * diluentShare;
    }

    /** @return propellant mass: everything loaded (kg) */
    public double loaded() {
        return burned + startup + boilOff + residual + recovery + vented;
    }

    /** @return oxidizer loaded (kg) */
    public double oxidizer() {
        return (1 - diluentShare) * loaded() * mixtureRatio / (1 + mixtureRatio);
    }

    /** @return fuel loaded (kg) */
    public double fuel() {
        return (1 - diluentShare) * loaded() / (1 + mixtureRatio);
    }

    /**
     * @param engine engine whose propellants are loaded
     * @param ullage gas volume as a fraction of the tank (-)
     * @return volume of the oxidizer tank (m³)
     */
    public double oxidizerTankVolume(EnginePerformance engine, double ullage) {
        return tankVolume(oxidizer(), engine.oxidizer(), ullage);
    }

    /**
     * @param engine engine whose propellants are loaded
     * @param ullage gas volume as a fraction of the tank (-)
     * @return volume of the fuel tank (m³)
     */
    public double fuelTankVolume(EnginePerformance engine, double ullage) {
        return tankVolume(fuel(), engine.fuel(), ullage);
    }

    private static double tankVolume(double mass, LoadedPropellant propellant, double ullage) {
        return mass / propellant.density() / (1 - ullage);
    }
}

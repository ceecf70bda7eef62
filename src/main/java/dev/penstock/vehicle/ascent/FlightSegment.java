package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;

/**
 * A part of the flight with the same engines burning.
 *
 * @param name name for tables
 * @param thrusters engines that burn
 * @param coast time without thrust before they start (s)
 * @param spentBefore mass lost at their start without giving speed: start-up propellant, boil-off (kg)
 * @param burn propellant to burn (kg)
 * @param droppedAfter mass dropped when it is burnt (kg)
 */
public record FlightSegment(
        String name, Thrusters thrusters, double coast, double spentBefore, double burn, double droppedAfter) {

    public FlightSegment {
        Require.notNegative(name, "coast time (s)", coast);
        Require.notNegative(name, "mass spent before (kg)", spentBefore);
        Require.positive(name, "propellant to burn (kg)", burn);
        Require.notNegative(name, "mass dropped (kg)", droppedAfter);
    }

    /**
     * @param mass mass dropped when it is burnt (kg)
     * @return the same with that
     */
    public FlightSegment withDropped(double mass) {
        return new FlightSegment(name, thrusters, coast, spentBefore, burn, mass);
    }

    /**
     * @param engines engines that burn
     * @param mass propellant to burn (kg)
     * @return the same with these
     */
    public FlightSegment burning(Thrusters engines, double mass) {
        return new FlightSegment(name, engines, coast, spentBefore, mass, droppedAfter);
    }
}

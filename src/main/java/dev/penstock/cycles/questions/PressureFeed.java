package dev.penstock.cycles.questions;

import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.fluids.Propellant;
import dev.penstock.turbomachinery.feed.PressurantBottle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What keeps the tanks of a cycle without pumps under pressure, and what becomes of the engine over its life.
 *
 * @param design how the tanks are kept under pressure
 * @param tanks oxidizer and fuel tank
 * @param points the engine over the life, from full to spent tanks; the two ends alone where a regulator holds the pressure
 * @param bottle bottle behind the regulator; empty for a blowdown
 * @param unheated the bottle that would do without a heat exchanger; empty without one
 * @param heater the heat exchanger, if there is one
 */
public record PressureFeed(
        PressurizationDesign design,
        List<Tank> tanks,
        List<Point> points,
        Optional<PressurantBottle> bottle,
        Optional<PressurantBottle> unheated,
        Optional<Heater> heater) {

    /**
     * One tank.
     *
     * @param side oxidizer or fuel
     * @param propellant what is in it
     * @param propellantMass propellant loaded (kg)
     * @param volume tank volume (m³)
     * @param beginPressure tank pressure at the start (Pa)
     * @param endPressure tank pressure when one of the tanks is empty (Pa)
     * @param gasMass gas closed in at the start (kg)
     * @param vapourPressure vapour pressure of the propellant, a part of the tank pressure (Pa)
     * @param residual propellant left when the other tank is empty (kg)
     */
    public record Tank(
            Side side,
            Propellant propellant,
            double propellantMass,
            double volume,
            double beginPressure,
            double endPressure,
            double gasMass,
            double vapourPressure,
            double residual) {

        /** @return tank pressure at the start over that at the end (-) */
        public double blowdownRatio() {
            return beginPressure / endPressure;
        }
    }

    /**
     * The engine when part of the propellant is gone.
     *
     * @param expelled propellant expelled over propellant loaded (-)
     * @param time time of burning (s)
     * @param oxidizerTankPressure pressure in the oxidizer tank (Pa)
     * @param fuelTankPressure pressure in the fuel tank (Pa)
     * @param chamberPressure nozzle stagnation pressure (Pa)
     * @param mixtureRatio oxidizer over fuel (-)
     * @param vacuumThrust thrust in vacuum (N)
     * @param vacuumIsp specific impulse in vacuum (s)
     * @param massFlow both propellants (kg/s)
     * @param injectorDrop lower of the two injector losses over chamber pressure (-): low ones invite chugging
     */
    public record Point(
            double expelled,
            double time,
            double oxidizerTankPressure,
            double fuelTankPressure,
            double chamberPressure,
            double mixtureRatio,
            double vacuumThrust,
            double vacuumIsp,
            double massFlow,
            double injectorDrop) {}

    /**
     * Heat exchanger for the gas.
     *
     * @param source what heats it
     * @param power mean heat flow over the burn (W)
     * @param jetShare that over the power of the jet (-)
     * @param impulseCost specific impulse that a coil about the nozzle costs (s); empty for another source
     */
    public record Heater(
            PressurizationDesign.HeatSource source, double power, double jetShare, OptionalDouble impulseCost) {}

    public PressureFeed {
        tanks = List.copyOf(tanks);
        points = List.copyOf(points);
    }

    /** @return impulse in vacuum over the life (N·s), thrust taken as linear in time between the points */
    public double totalImpulse() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            sum += 0.5 * (a.vacuumThrust() + b.vacuumThrust()) * (b.time() - a.time());
        }
        return sum;
    }

    /**
     * @return gas and bottle that the heater saves (kg)
     * @throws java.util.NoSuchElementException if there is no heater
     */
    public double massSaved() {
        return unheated.orElseThrow().mass() - bottle.orElseThrow().mass();
    }

    /** @return the point at the start of life */
    public Point begin() {
        return points.get(0);
    }

    /** @return the point at the end of life */
    public Point end() {
        return points.get(points.size() - 1);
    }
}

package dev.penstock.cycles.sheet;

import dev.penstock.chamber.design.SeparationCriterion;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import java.util.List;

/**
 * Turbine gas or coolant dumped through a nozzle of its own. Where the ambient pressure is so high that the flow leaves the wall
 * ({@link SeparationCriterion#SCHMUCKER}), the nozzle counts as cut off there and what is behind is at ambient pressure; the flow up to
 * there is that of a perfect gas with the exponent at the throat.
 *
 * @param part where it leaves
 * @param massFlow mass flow (kg/s)
 * @param vacuumThrust delivered thrust in vacuum, along the engine's axis (N)
 * @param exitArea exit area (m²)
 * @param throatArea throat area (m²)
 * @param totalPressure total pressure before it (Pa)
 * @param gamma isentropic exponent at the throat (-)
 * @param cant angle between its axis and that of the engine (rad)
 */
public record ExhaustJet(
        PartKey part,
        double massFlow,
        double vacuumThrust,
        double exitArea,
        double throatArea,
        double totalPressure,
        double gamma,
        double cant) {

    private static final double FASTEST = 30;

    public ExhaustJet {
        Require.positive(part.noun(), "mass flow (kg/s)", massFlow);
        Require.positive(part.noun(), "vacuum thrust (N)", vacuumThrust);
        Require.positive(part.noun(), "exit area (m²)", exitArea);
        Require.positive(part.noun(), "throat area (m²)", throatArea);
        Require.positive(part.noun(), "total pressure (Pa)", totalPressure);
        Require.within(part.noun(), "isentropic exponent (-)", gamma, 1.0001, 5);
    }

    /** @return whether it is turbine gas, and not a coolant */
    public boolean ofTurbines() {
        return part.equals(PartKey.EXHAUST) || part.equals(PartKey.EXHAUST_SLOTS);
    }

    /**
     * What turbine gas costs of the impulse of an engine: with the impulse c of one that dumps nothing, jets of flow ṁᵢ and impulse cᵢ
     * cost Σ ṁᵢ(1 − cᵢ/c)/ṁ, so that the share of those of a coolant comes off.
     *
     * @param impulse impulse of the engine in vacuum (m/s)
     * @param whole impulse of one that dumps nothing (m/s)
     * @param massFlow flow of the engine (kg/s)
     * @param jets all that it dumps
     * @return share of that impulse (-)
     */
    public static double costOfTurbines(double impulse, double whole, double massFlow, List<ExhaustJet> jets) {
        double coolant = jets.stream()
                .filter(jet -> !jet.ofTurbines())
                .mapToDouble(jet -> jet.massFlow() - jet.vacuumThrust() / whole)
                .sum();
        return 1 - impulse / whole - coolant / massFlow;
    }

    /** @return name for people */
    public String name() {
        return part.noun();
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust there (N), zero at least; with the nozzle full, or cut off where the flow separates
     */
    public double thrustAt(double ambientPressure) {
        Require.notNegative(name(), "ambient pressure (Pa)", ambientPressure);
        double exit = machAt(exitArea / throatArea);
        double mach = Math.min(exit, separation(ambientPressure, exit));
        double vacuum = mach == exit ? vacuumThrust : vacuumThrust * vacuumCoefficient(mach) / vacuumCoefficient(exit);
        double area = mach == exit ? exitArea : throatArea * areaRatio(mach);
        return Math.max(0, vacuum - ambientPressure * area * Math.cos(cant));
    }

    /** @return whether the flow has left the wall before the exit at an ambient pressure (Pa) */
    public boolean separatedAt(double ambientPressure) {
        double exit = machAt(exitArea / throatArea);
        return separation(ambientPressure, exit) < exit;
    }

    /** Mach number at which the wall pressure has fallen to that of separation, at most the exit's, at least 1. */
    private double separation(double ambient, double exit) {
        if (excess(exit, ambient) >= 0) {
            return exit;
        }
        if (excess(1, ambient) <= 0) {
            return 1;
        }
        return RootFinder.between("separation in the " + name(), m -> excess(m, ambient), 1, exit, 1e-12)
                .value();
    }

    /** Wall pressure over that of separation, less 1; falls with the Mach number. */
    private double excess(double mach, double ambient) {
        return ambient <= 0 ? 1 : pressure(mach) / (ambient * SeparationCriterion.SCHMUCKER.pressureRatio(mach)) - 1;
    }

    private double pressure(double mach) {
        return totalPressure * Math.pow(1 + 0.5 * (gamma - 1) * mach * mach, -gamma / (gamma - 1));
    }

    private double areaRatio(double mach) {
        double heat = 2 / (gamma + 1) * (1 + 0.5 * (gamma - 1) * mach * mach);
        return Math.pow(heat, (gamma + 1) / (2 * (gamma - 1))) / mach;
    }

    /** Vacuum thrust over total pressure and throat area (-). */
    private double vacuumCoefficient(double mach) {
        return pressure(mach) / totalPressure * areaRatio(mach) * (1 + gamma * mach * mach);
    }

    private double machAt(double areaRatio) {
        if (areaRatio <= 1) {
            return 1;
        }
        return RootFinder.between("exit of the " + name(), m -> Math.log(areaRatio(m) / areaRatio), 1, FASTEST, 1e-13)
                .value();
    }
}

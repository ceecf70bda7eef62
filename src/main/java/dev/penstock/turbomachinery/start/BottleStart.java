package dev.penstock.turbomachinery.start;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.numerics.RootFinder;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import java.util.Locale;

/**
 * Starts a turbopump on bottled gas.
 * <pre>
 * dm = dE/(η(ν) Δhs),   Δhs = h - h(p_exit, s(p_supply, h)),   h of the gas still in the bottle
 * </pre>
 * The gas is throttled from the bottle to the supply pressure, drives the turbine at a velocity ratio that grows with its
 * speed, and leaves the bottle colder; the steps add up in speed. Between starts the bottle warms up again. A start fails when the
 * bottle falls below the supply pressure.
 *
 * @param gas what is in the bottle
 * @param fullPressure pressure of the full bottle (Pa)
 * @param temperature temperature of the full and of the re-warmed bottle (K)
 * @param supplyPressure regulated pressure at the turbine inlet (Pa)
 * @param exitPressure pressure behind the turbine (Pa)
 */
public record BottleStart(
        Fluid gas, double fullPressure, double temperature, double supplyPressure, double exitPressure) {

    private static final int STEPS = 12;
    private static final int MOST_STARTS = 1000;

    public BottleStart {
        Require.positive("start bottle", "full pressure (Pa)", fullPressure);
        Require.positive("start bottle", "temperature (K)", temperature);
        Require.within("start bottle", "supply pressure (Pa)", supplyPressure, 1e3, fullPressure);
        Require.within("start bottle", "exit pressure (Pa)", exitPressure, 1, 0.99 * supplyPressure);
    }

    /**
     * @param demand energy per start
     * @param turbine turbine that the gas drives
     * @param starts number of starts
     * @return the smallest bottle that holds them, and its gas
     * @throws dev.penstock.errors.NotConverged if none is found
     */
    public StartGas sizeFor(SpinUpDemand demand, TurbineMap turbine, int starts) {
        Require.within("start bottle", "number of starts", starts, 1, MOST_STARTS);
        FluidState full = gas.atPressureTemperature(fullPressure, temperature);
        double perStart = demand.energy() / (0.5 * drop(full));
        double guess = starts * perStart / full.density();
        double volume = Math.exp(RootFinder.between(
                        "bottle for " + starts + " starts",
                        x -> run(demand, turbine, Math.exp(x), starts).shortage(),
                        Math.log(0.1 * guess),
                        Math.log(100 * guess),
                        1e-5)
                .value());
        return result(demand, run(demand, turbine, volume, starts), volume, starts, full);
    }

    /**
     * @param demand energy per start
     * @param turbine turbine that the gas drives
     * @param volume bottle volume (m³)
     * @return gas and number of complete starts
     * @throws LimitReached if the bottle does not hold one start
     */
    public StartGas startsOf(SpinUpDemand demand, TurbineMap turbine, double volume) {
        Require.positive("start bottle", "volume (m³)", volume);
        int starts = 0;
        while (starts < MOST_STARTS && run(demand, turbine, volume, starts + 1).shortage() <= 0) {
            starts++;
        }
        if (starts == 0) {
            throw new LimitReached(
                    "start bottle",
                    String.format(
                            Locale.ROOT,
                            "a bottle of %s of %.4g m³ at %.4g Pa does not hold one start; %.4g m³ do",
                            gas.name(),
                            volume,
                            fullPressure,
                            sizeFor(demand, turbine, 1).bottleVolume()));
        }
        FluidState full = gas.atPressureTemperature(fullPressure, temperature);
        return result(demand, run(demand, turbine, volume, starts), volume, starts, full);
    }

    private StartGas result(SpinUpDemand demand, Run run, double volume, int starts, FluidState full) {
        double loaded = volume * full.density();
        return new StartGas(
                gas.id(),
                demand.energy(),
                starts,
                run.last,
                run.used,
                loaded,
                volume,
                Bottle.shellMass(fullPressure, volume),
                run.bottle.state().pressure(),
                run.bottle.state().temperature());
    }

    /** Drop through the turbine of gas throttled from the given state. */
    private double drop(FluidState bottle) {
        FluidState supply = gas.atPressureEnthalpy(supplyPressure, bottle.enthalpy());
        return bottle.enthalpy()
                - gas.atPressureEntropy(exitPressure, supply.entropy()).enthalpy();
    }

    private Run run(SpinUpDemand demand, TurbineMap turbine, double volume, int starts) {
        Bottle bottle = new Bottle(gas, volume, gas.atPressureTemperature(fullPressure, temperature));
        double used = 0;
        double last = 0;
        for (int start = 0; start < starts; start++) {
            if (start > 0) {
                bottle = bottle.at(temperature);
            }
            last = 0;
            for (int i = 0; i < STEPS; i++) {
                double fraction = (i + 0.5) / STEPS;
                double drop = drop(bottle.state());
                double efficiency = turbine.efficiency(fraction * demand.speed(), drop);
                double mass = demand.energyPerFraction(fraction) / STEPS / (efficiency * drop);
                if (mass > 0.5 * bottle.mass()) {
                    return new Run(
                            bottle, used + last, last, 1 + (starts - start) + mass / bottle.mass(), supplyPressure);
                }
                bottle = bottle.without(mass);
                last += mass;
            }
            used += last;
        }
        return new Run(bottle, used, last, 0, supplyPressure);
    }

    /** State after a number of starts, and how far the bottle was from holding them. */
    private record Run(Bottle bottle, double used, double last, double missing, double supplyPressure) {

        /** Above zero when the gas ran out or ended below the supply pressure; falls with the volume. */
        double shortage() {
            return missing > 0
                    ? missing
                    : Math.min(1, Math.log(supplyPressure / bottle.state().pressure()));
        }
    }
}

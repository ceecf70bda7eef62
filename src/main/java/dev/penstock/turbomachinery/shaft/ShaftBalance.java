package dev.penstock.turbomachinery.shaft;

import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A shaft with what drives it and what it drives.
 *
 * @param name name in the cycle, for example "main shaft"
 * @param speed speed of the turbine's end (rad/s)
 * @param speedSetBy what keeps it from turning faster
 * @param pumps pumps on it
 * @param turbines turbines of the gas path on it
 * @param otherDriver what takes its power out of the propellants instead of a turbine; empty for those, a motor or a gear
 * @param powerDelivered by the turbines (W)
 * @param powerAbsorbed by the pumps (W)
 * @param powerTakenOff by a gear for a pump on another shaft (W)
 * @param mechanicalLoss bearings, seals, gears and accessories (W)
 * @param diameter from torque and allowed stress (m)
 * @param mass turbopump mass: pumps, turbines, shaft and housing (kg)
 * @param purgeFlow inert gas to keep apart what must not meet (kg/s)
 * @param criticalSpeed first lateral critical speed (rad/s), a first estimate
 * @param axialThrust unbalanced axial thrust of the pumps (N), a first estimate
 * @param rotor turning parts
 * @param limits limits held against this shaft
 * @param warnings what the reader must know
 */
public record ShaftBalance(
        String name,
        double speed,
        String speedSetBy,
        List<PumpSizing> pumps,
        List<TurbineSizing> turbines,
        Optional<String> otherDriver,
        double powerDelivered,
        double powerAbsorbed,
        double powerTakenOff,
        double mechanicalLoss,
        double diameter,
        double mass,
        double purgeFlow,
        double criticalSpeed,
        double axialThrust,
        Rotor rotor,
        List<LimitCheck> limits,
        List<Warning> warnings) {

    public ShaftBalance {
        Require.positive(name, "speed (rad/s)", speed);
        Require.positive(name, "power delivered (W)", powerDelivered);
        Require.positive(name, "power absorbed (W)", powerAbsorbed);
        Require.notNegative(name, "power taken off (W)", powerTakenOff);
        Require.notNegative(name, "mechanical loss (W)", mechanicalLoss);
        Require.positive(name, "diameter (m)", diameter);
        Require.notNegative(name, "mass (kg)", mass);
        Require.notNegative(name, "purge flow (kg/s)", purgeFlow);
        Require.positive(name, "critical speed (rad/s)", criticalSpeed);
        Require.notNegative(name, "axial thrust (N)", axialThrust);
        pumps = List.copyOf(pumps);
        turbines = List.copyOf(turbines);
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
    }

    /** @return names of the pumps on it */
    public List<String> driven() {
        return pumps.stream().map(PumpSizing::name).toList();
    }

    /** @return names of what drives it; empty for a motor or a gear */
    public List<String> drivers() {
        return Stream.concat(turbines.stream().map(TurbineSizing::name), otherDriver.stream())
                .toList();
    }

    /** @return power left over relative to what the shaft delivers (-); zero when balanced */
    public double imbalance() {
        return (powerDelivered - powerAbsorbed - powerTakenOff - mechanicalLoss) / powerDelivered;
    }
}

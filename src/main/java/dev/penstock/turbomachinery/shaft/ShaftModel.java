package dev.penstock.turbomachinery.shaft;

import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.speed.CriticalSpeed;
import dev.penstock.turbomachinery.speed.ShaftTorsion;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts pumps and what drives them on a shaft: power balance, diameter, mass, seal purge, critical speed, thrust. No state. */
public final class ShaftModel {

    /** Highest rubbing speed of a face seal (m/s), 100 to 150 [nasa-sp-125, from memory]. */
    private static final double SEAL_SPEED = 120;

    /** Distance that the running speed must keep from the first critical speed (-): common practice, no source. */
    private static final double CRITICAL_DISTANCE = 0.2;

    /** Axial thrust above which a balance piston is the rule (N): common practice, no source. */
    private static final double PLAIN_BEARING_THRUST = 5000;

    /**
     * @param name name of the shaft
     * @param pumps pumps on it, directly or through a gearbox
     * @param turbines turbines on it
     * @param losses mechanical losses
     * @param takenOff power that a gear takes off for a pump on another shaft (W)
     * @param speedSetBy what keeps it from turning faster
     * @return the shaft
     */
    public ShaftBalance balance(
            String name,
            List<PumpSizing> pumps,
            List<TurbineSizing> turbines,
            MechanicalLosses losses,
            double takenOff,
            String speedSetBy) {
        double delivered = turbines.stream().mapToDouble(TurbineSizing::power).sum();
        double speed = turbines.get(0).speed();
        return balance(name, pumps, turbines, Optional.empty(), delivered, speed, losses, takenOff, speedSetBy);
    }

    /**
     * A shaft that no turbine of the gas path drives.
     *
     * @param name name of the shaft
     * @param pumps pumps on it
     * @param driver what takes its power out of the propellants; empty for a motor or a gear
     * @param power power delivered to the shaft (W)
     * @param losses mechanical losses
     * @param takenOff power that a gear takes off for a pump on another shaft (W)
     * @param speedSetBy what keeps it from turning faster
     * @return the shaft
     */
    public ShaftBalance balance(
            String name,
            List<PumpSizing> pumps,
            Optional<String> driver,
            double power,
            MechanicalLosses losses,
            double takenOff,
            String speedSetBy) {
        double speed = pumps.get(0).speed();
        return balance(name, pumps, List.of(), driver, power, speed, losses, takenOff, speedSetBy);
    }

    private ShaftBalance balance(
            String name,
            List<PumpSizing> pumps,
            List<TurbineSizing> turbines,
            Optional<String> otherDriver,
            double delivered,
            double speed,
            MechanicalLosses losses,
            double takenOff,
            String speedSetBy) {
        double absorbed = pumps.stream().mapToDouble(PumpSizing::power).sum();
        double torque = pumps.stream().mapToDouble(PumpSizing::torque).sum();
        double stress =
                pumps.stream().mapToDouble(p -> p.design().shaftStress()).min().orElseThrow();
        double smallest = pumps.stream()
                .mapToDouble(p -> p.design().minimumShaftDiameter())
                .max()
                .orElseThrow();
        double diameter = Math.max(ShaftTorsion.diameter(delivered / speed, stress), smallest);
        Rotor rotor = Rotor.of(pumps, turbines, diameter, speed);
        double critical = criticalSpeed(diameter, rotor, speed);
        double thrust = pumps.stream().mapToDouble(ShaftModel::axialThrust).sum();

        List<LimitCheck> limits = new ArrayList<>();
        // the bearing that carries the whole torque runs in the liquid that bears more
        double bearingLimit = pumps.stream()
                .mapToDouble(p -> p.design().bearingSpeedLimit())
                .max()
                .orElseThrow();
        limits.add(LimitCheck.atMost(
                ShaftLimit.BEARING_SPEED, name, 0.5 * speed * diameter, bearingLimit, "m/s", "nasa-sp-8048"));
        limits.add(LimitCheck.atMost(
                ShaftLimit.SEAL_SPEED, name, 0.5 * speed * diameter, SEAL_SPEED, "m/s", "common practice, no source"));
        limits.add(LimitCheck.atLeast(
                ShaftLimit.CRITICAL_SPEED_DISTANCE,
                name,
                Math.abs(1 - speed / critical),
                CRITICAL_DISTANCE,
                "-",
                "common practice, no source"));
        List<Warning> warnings = new ArrayList<>();
        boolean purge = needsPurge(pumps, turbines);
        if (purge) {
            warnings.add(new Warning(
                            name,
                            "oxidizer and fuel share this shaft: the seal between them needs an inert purge and a drain on each side")
                    .asAside());
        }
        if (thrust > PLAIN_BEARING_THRUST) {
            warnings.add(new Warning(
                    name,
                    String.format(
                            Locale.ROOT,
                            "unbalanced axial thrust of about %.3g kN: needs a balance piston or opposed wheels",
                            thrust / 1000)));
        }
        return new ShaftBalance(
                name,
                speed,
                speedSetBy,
                pumps,
                turbines,
                otherDriver,
                delivered,
                absorbed,
                takenOff,
                delivered - losses.powerForPumps(delivered),
                diameter,
                TurbopumpMass.of(torque),
                purge ? SealPurge.flow(diameter) : 0,
                critical,
                thrust,
                rotor,
                limits,
                warnings);
    }

    /**
     * First critical speed; where it lies close to the running speed the shaft is made thicker between its bearings until it lies
     * above, which takes less than a quarter of its diameter.
     */
    private static double criticalSpeed(double diameter, Rotor rotor, double speed) {
        double plain = CriticalSpeed.first(diameter, rotor.span(), rotor.mass());
        double above = speed / (1 - CRITICAL_DISTANCE) * (1 + 1e-9);
        boolean close = plain < above && plain > speed / (1 + CRITICAL_DISTANCE);
        return close ? above : plain;
    }

    /** Discharge pressure behind the last impeller's eye area that nothing in front balances. */
    private static double axialThrust(PumpSizing pump) {
        double eye = Math.min(pump.inducerDiameter(), pump.impellerDiameter());
        double area = Math.PI / 4 * (eye * eye - pump.shaftDiameter() * pump.shaftDiameter());
        double rise = pump.duty().dischargePressure() - pump.duty().inlet().pressure();
        return Math.max(area, 0) * rise;
    }

    private static boolean needsPurge(List<PumpSizing> pumps, List<TurbineSizing> turbines) {
        boolean oxidizer = false;
        boolean fuel = false;
        for (PumpSizing pump : pumps) {
            boolean oxidizing = pump.duty().propellant().roles().contains(Propellant.Role.OXIDIZER);
            oxidizer |= oxidizing;
            fuel |= !oxidizing;
        }
        for (TurbineSizing turbine : turbines) {
            oxidizer |= turbine.design().oxygenRich();
            fuel |= !turbine.design().oxygenRich();
        }
        return oxidizer && fuel;
    }
}

package dev.penstock.vehicle.stage;

import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.engine.SolidMotor;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.SolidBooster;
import java.util.Optional;

/**
 * Solid boosters. Their ideal speed gain beside a stage of steady thrust F and flow f is integrated over the thrust table:
 *
 * <pre>Δv = ∫ (F + n F_s(t)) / (M − f t − n ∫F_s/c dt) dt</pre>
 *
 * by Simpson's rule in parts of each piece of the table.
 *
 * @param plan what was asked for
 * @param motor one motor
 * @param dryMass inert mass of one booster
 */
public record SolidBoosters(BoosterPlan plan, SolidMotor motor, MassTable dryMass) implements BoosterSizing {

    /** Density of the grain (kg/m³): usual composite propellant, common practice, no source. */
    private static final double GRAIN_DENSITY = 1750;
    /** Share of the case that the grain fills, common practice, no source. */
    private static final double FILLING = 0.85;
    /** Length of the case over its diameter where no diameter is stated, common practice, no source. */
    private static final double SLENDERNESS = 8;
    /** Length of the nozzle over the diameter, common practice, no source. */
    private static final double NOZZLE = 0.7;

    /** Parts of each piece of the table. */
    private static final int PARTS = 8;

    static SolidBoosters of(BoosterPlan plan, SolidBooster solid) {
        return new SolidBoosters(plan, solid.motor(), solid.inert().table());
    }

    @Override
    public Optional<LiquidBoosters> liquid() {
        return Optional.empty();
    }

    @Override
    public double loadedEach() {
        return motor.propellant();
    }

    @Override
    public double burnedEach() {
        return motor.propellant();
    }

    @Override
    public double spentEach() {
        return 0;
    }

    @Override
    public String engineName() {
        return SolidMotor.NAME;
    }

    @Override
    public double engineMass() {
        return 0;
    }

    @Override
    public double vacuumThrustOfOneEngine() {
        return motor.mostThrust();
    }

    @Override
    public double vacuumIsp() {
        return motor.vacuumIsp();
    }

    @Override
    public double diameter() {
        double volume = motor.propellant() / (GRAIN_DENSITY * FILLING);
        return plan.diameter().orElse(Math.cbrt(4 * volume / (Math.PI * SLENDERNESS)));
    }

    @Override
    public double length() {
        double volume = motor.propellant() / (GRAIN_DENSITY * FILLING);
        return 4 * volume / (Math.PI * diameter() * diameter()) + NOZZLE * diameter();
    }

    @Override
    public double thrustAt(double ambientPressure) {
        return count() * motor.thrustAtIgnition(ambientPressure);
    }

    @Override
    public double burnTime() {
        return motor.burnTime();
    }

    @Override
    public Thrusters with(Thrusters own) {
        return new Thrusters(own.groups(), Optional.of(new Thrusters.Solids(motor, count())));
    }

    @Override
    public double speedGain(double mass, double thrust, double flow) {
        double gain = 0;
        double left = mass;
        for (int i = 1; i < motor.times().size(); i++) {
            double step = (motor.times().get(i) - motor.times().get(i - 1)) / PARTS;
            for (int part = 0; part < PARTS; part++) {
                double start = motor.times().get(i - 1) + part * step;
                double before = motor.vacuumThrust(start);
                double after = motor.vacuumThrust(Math.min(burnTime(), start + step));
                double middle = (before + after) / 2;
                double half = left - spent(flow, (before + middle) / 2, step / 2);
                double end = left - spent(flow, middle, step);
                double floor = 1e-6 * mass;
                gain += step
                        / 6
                        * ((thrust + count() * before) / Math.max(floor, left)
                                + 4 * (thrust + count() * middle) / Math.max(floor, half)
                                + (thrust + count() * after) / Math.max(floor, end));
                left = end;
            }
        }
        return gain;
    }

    private double spent(double flow, double thrust, double time) {
        return (flow + count() * thrust / motor.exhaustVelocity()) * time;
    }
}

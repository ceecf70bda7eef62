package dev.penstock.vehicle;

import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.mass.TankShape;

/**
 * One stage as a function of its start mass: given that mass and the speed to gain, everything else is explicit.
 *
 * <pre>
 * burned   = (m0 − startup − boil-off)(1 − 1/R),  R = exp(Δv/c)
 * loaded   = (burned + startup) / (1 − residual − boil-off)
 * carried  = m0 − loaded − dry(loaded, m0, engines)
 * </pre>
 *
 * The mass carried may come out negative: then the stage cannot lift even itself, and by how much is what the search
 * for a start mass and the explanation of a failure need.
 */
final class StageModel {

    /** Tanks six diameters long where no diameter is given: common practice, no source. */
    private static final double DEFAULT_SLENDERNESS = 6;

    /** Thrust frame, engine and intertank lengths over the diameter: common practice, no source. */
    private static final double EQUIPMENT_LENGTH = 1.0;

    private final StagePlan plan;
    private final EnginePerformance engine;

    StageModel(StagePlan plan, EnginePerformance engine) {
        this.plan = plan;
        this.engine = engine;
    }

    StagePlan plan() {
        return plan;
    }

    EnginePerformance engine() {
        return engine;
    }

    /** @return exhaust velocity that the rocket equation sees (m/s) */
    double exhaustVelocity() {
        return engine.vacuumThrust() / engine.massFlow();
    }

    /** @return engines that the rule of the plan asks for at this start mass (kg) */
    int enginesNeeded(double startMass) {
        return plan.engines().needed(startMass, engine.thrustAt(plan.ignitionPressure()));
    }

    /** @return start mass below which the start-up propellant of these engines is all there is (kg) */
    double leastStartMass(int engines) {
        return 1e-6 + plan.allowances().startupTime() * engines * engine.massFlow();
    }

    StageSizing at(double startMass, double deltaV, int engines) {
        PropellantLoad load = load(startMass, deltaV, engines);
        StageContents contents = contents(startMass, load, engines);
        MassTable dry = plan.dryMass().estimate(contents);
        return new StageSizing(
                plan.name(),
                engine,
                engines,
                startMass,
                startMass - load.loaded() - dry.total(),
                load,
                contents,
                dry,
                deltaV,
                engines * engine.thrustAt(plan.ignitionPressure()) / (startMass * Constants.STANDARD_GRAVITY));
    }

    private PropellantLoad load(double startMass, double deltaV, int engines) {
        Allowances allowances = plan.allowances();
        double spent = -Math.expm1(-deltaV / exhaustVelocity());
        double startup = allowances.startupTime() * engines * engine.massFlow();
        double boilOff = allowances.boilOff();
        double loaded =
                (spent * startMass + startup * (1 - spent)) / (1 - allowances.residual() - boilOff + spent * boilOff);
        double burned = spent * (startMass - startup - boilOff * loaded);
        return new PropellantLoad(
                burned, startup, boilOff * loaded, allowances.residual() * loaded, 0, engine.mixtureRatio());
    }

    private StageContents contents(double startMass, PropellantLoad load, int engines) {
        double ullage = plan.allowances().ullage();
        double oxidizer = load.oxidizerTankVolume(engine, ullage);
        double fuel = load.fuelTankVolume(engine, ullage);
        double diameter =
                plan.diameter().orElseGet(() -> Math.cbrt(4 * (oxidizer + fuel) / (Math.PI * DEFAULT_SLENDERNESS)));
        TankShape oxidizerTank = TankShape.of(oxidizer, diameter);
        TankShape fuelTank = TankShape.of(fuel, diameter);
        double length = oxidizerTank.length() + fuelTank.length() + EQUIPMENT_LENGTH * diameter;
        return new StageContents(
                startMass, load.oxidizer(), load.fuel(), oxidizerTank, fuelTank, engine, engines, diameter, length);
    }
}

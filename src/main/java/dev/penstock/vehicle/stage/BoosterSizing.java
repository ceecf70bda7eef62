package dev.penstock.vehicle.stage;

import dev.penstock.errors.InvalidInput;
import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.plan.BoosterPlan;
import java.util.Optional;
import java.util.function.Supplier;

/** Boosters as sized. What is said of all of them counts from release to burn-out. */
public sealed interface BoosterSizing permits LiquidBoosters, SolidBoosters {

    /**
     * @param plan what is asked for
     * @param engine their engine, asked for where they have one
     * @return the boosters
     * @throws InvalidInput if start-up, residual and boil-off leave nothing to burn
     */
    static BoosterSizing of(BoosterPlan plan, Supplier<EnginePerformance> engine) {
        return plan.solid()
                .<BoosterSizing>map(solid -> SolidBoosters.of(plan, solid))
                .orElseGet(() -> LiquidBoosters.of(plan, engine.get()));
    }

    /** @return what was asked for */
    BoosterPlan plan();

    /** @return propellant loaded into one booster (kg) */
    double loadedEach();

    /** @return propellant that one burns after release (kg) */
    double burnedEach();

    /** @return propellant of one that is gone at release (kg) */
    double spentEach();

    /** @return dry mass of one booster */
    MassTable dryMass();

    /** @return these with their engine and tanks; empty for solid ones */
    Optional<LiquidBoosters> liquid();

    /** @return name of what drives them */
    String engineName();

    /** @return mass of one engine (kg); zero where the dry mass does not tell it apart */
    double engineMass();

    /** @return vacuum thrust of one engine (N), the largest of its burn */
    double vacuumThrustOfOneEngine();

    /** @return impulse in vacuum (s) */
    double vacuumIsp();

    /** @return outer diameter of one (m) */
    double diameter();

    /** @return length of one without its nose (m) */
    double length();

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust of all boosters there, soon after ignition (N)
     */
    double thrustAt(double ambientPressure);

    /** @return time from release to burn-out at full thrust (s) */
    double burnTime();

    /**
     * @param own engines of the stage beside them
     * @return what burns while these do
     */
    Thrusters with(Thrusters own);

    /**
     * @param mass mass of the vehicle at release (kg)
     * @param thrust vacuum thrust of the stage beside them (N)
     * @param flow flow of that stage (kg/s)
     * @return ideal delta-v until the boosters are empty (m/s)
     */
    double speedGain(double mass, double thrust, double flow);

    /** @return number of boosters */
    default int count() {
        return plan().count();
    }

    /** @return mass of all boosters at ignition (kg) */
    default double startMass() {
        return count() * (loadedEach() + dryMass().total());
    }

    /** @return mass of all boosters when dropped (kg) */
    default double droppedMass() {
        return count() * (loadedEach() - spentEach() - burnedEach() + dryMass().total());
    }

    /** @return propellant that all boosters burn together (kg) */
    default double burned() {
        return count() * burnedEach();
    }

    /** @return propellant of all boosters that is gone at release (kg) */
    default double spentBefore() {
        return count() * spentEach();
    }
}

package dev.penstock.vehicle.stage;

import dev.penstock.errors.InvalidInput;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.BoosterPlan;
import java.util.Locale;

/**
 * Boosters as sized.
 *
 * @param plan what was asked for
 * @param engine one of their engines
 * @param propellant propellant of one booster
 * @param contents tanks and outer shape of one booster
 * @param dryMass dry mass of one booster
 */
public record BoosterSizing(
        BoosterPlan plan,
        EnginePerformance engine,
        PropellantLoad propellant,
        StageContents contents,
        MassTable dryMass) {

    private static final int ROUNDS = 60;

    /**
     * @param plan what is asked for
     * @param engine their engine
     * @return the boosters
     * @throws InvalidInput if start-up, residual and boil-off leave nothing to burn
     */
    public static BoosterSizing of(BoosterPlan plan, EnginePerformance engine) {
        Allowances allowances = plan.allowances();
        double startup = allowances.startupTime() * plan.engines() * engine.massFlow();
        double lost = (allowances.residual() + allowances.boilOff()) * plan.propellant();
        double burned = plan.propellant() - startup - lost;
        if (!(burned > 0)) {
            throw new InvalidInput(
                    "",
                    "boosters.propellant",
                    String.format(Locale.ROOT, "%.6g kg", plan.propellant()),
                    String.format(
                            Locale.ROOT,
                            "nothing of it is left to burn; start-up alone takes %.6g kg, so write more than %.6g kg",
                            startup,
                            startup / (1 - allowances.residual() - allowances.boilOff())));
        }
        PropellantLoad load = new PropellantLoad(
                burned,
                startup,
                allowances.boilOff() * plan.propellant(),
                allowances.residual() * plan.propellant(),
                0,
                engine.mixtureRatio());
        StageLayout layout = new StageLayout(plan.diameter(), false, allowances.ullage());
        double start = 1.1 * plan.propellant();
        StageContents contents = layout.contents(start, load, engine, plan.engines());
        MassTable dry = plan.dryMass().estimate(contents);
        for (int i = 0; i < ROUNDS; i++) {
            double next = plan.propellant() + dry.total();
            boolean settled = Math.abs(next - start) < 1e-12 * next;
            start = next;
            contents = layout.contents(start, load, engine, plan.engines());
            dry = plan.dryMass().estimate(contents);
            if (settled) {
                break;
            }
        }
        return new BoosterSizing(plan, engine, load, contents, dry);
    }

    /** @return number of boosters */
    public int count() {
        return plan.count();
    }

    /** @return mass of all boosters at ignition (kg) */
    public double startMass() {
        return count() * (propellant.loaded() + dryMass.total());
    }

    /** @return mass of all boosters when dropped (kg) */
    public double droppedMass() {
        return count() * (propellant.residual() + dryMass.total());
    }

    /** @return propellant that all boosters burn together (kg) */
    public double burned() {
        return count() * propellant.burned();
    }

    /** @return propellant of all boosters that is gone at release (kg) */
    public double spentBefore() {
        return count() * (propellant.startup() + propellant.boilOff());
    }

    /** @return flow of all boosters (kg/s) */
    public double massFlow() {
        return count() * plan.engines() * engine.massFlow();
    }

    /** @return vacuum thrust of all boosters (N) */
    public double vacuumThrust() {
        return count() * plan.engines() * engine.vacuumThrust();
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust of all boosters there (N)
     */
    public double thrustAt(double ambientPressure) {
        return count() * plan.engines() * engine.thrustAt(ambientPressure);
    }

    /** @return time from release to burn-out at full thrust (s) */
    public double burnTime() {
        return burned() / massFlow();
    }
}

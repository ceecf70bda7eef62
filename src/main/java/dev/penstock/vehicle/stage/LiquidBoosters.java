package dev.penstock.vehicle.stage;

import dev.penstock.errors.InvalidInput;
import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.BoosterPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Boosters with pumps or tanks under pressure, as sized.
 *
 * @param plan what was asked for
 * @param engine one of their engines
 * @param propellant propellant of one booster
 * @param contents tanks and outer shape of one booster
 * @param dryMass dry mass of one booster
 */
public record LiquidBoosters(
        BoosterPlan plan,
        EnginePerformance engine,
        PropellantLoad propellant,
        StageContents contents,
        MassTable dryMass)
        implements BoosterSizing {

    private static final int ROUNDS = 60;

    /**
     * @param plan what is asked for
     * @param engine their engine
     * @return the boosters
     * @throws InvalidInput if start-up, residual and boil-off leave nothing to burn
     */
    static LiquidBoosters of(BoosterPlan plan, EnginePerformance engine) {
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
                engine.mixtureRatio(),
                engine.diluentShare(),
                0);
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
        return new LiquidBoosters(plan, engine, load, contents, dry);
    }

    @Override
    public Optional<LiquidBoosters> liquid() {
        return Optional.of(this);
    }

    @Override
    public double loadedEach() {
        return propellant.loaded();
    }

    @Override
    public double burnedEach() {
        return propellant.burned();
    }

    @Override
    public double spentEach() {
        return propellant.startup() + propellant.boilOff();
    }

    @Override
    public String engineName() {
        return engine.name();
    }

    @Override
    public double engineMass() {
        return engine.mass();
    }

    @Override
    public double vacuumThrustOfOneEngine() {
        return engine.vacuumThrust();
    }

    @Override
    public double vacuumIsp() {
        return engine.vacuumIsp();
    }

    @Override
    public double diameter() {
        return contents.diameter();
    }

    @Override
    public double length() {
        return contents.length();
    }

    private double massFlow() {
        return count() * plan.engines() * engine.massFlow();
    }

    @Override
    public double thrustAt(double ambientPressure) {
        return count() * plan.engines() * engine.thrustAt(ambientPressure);
    }

    @Override
    public double burnTime() {
        return burned() / massFlow();
    }

    @Override
    public Thrusters with(Thrusters own) {
        List<Thrusters.Group> groups = new ArrayList<>(own.groups());
        groups.add(new Thrusters.Group(engine, count() * plan.engines()));
        return new Thrusters(groups);
    }

    @Override
    public double speedGain(double mass, double thrust, double flow) {
        double force = count() * plan.engines() * engine.vacuumThrust() + thrust;
        double all = massFlow() + flow;
        return force / all * Math.log(mass / Math.max(1e-6 * mass, mass - all * burnTime()));
    }
}

package dev.penstock.vehicle.stage;

import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.CoastBoilOff;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.StagePlan;
import java.util.Optional;

/**
 * One stage as a function of its start mass: given that mass and the speed to gain, everything else is explicit.
 *
 * <pre>
 * burned   = (m0 − startup − boil-off)(1 − 1/R),  R = exp(Δv/c)
 * loaded   = (burned + startup + kept for recovery + boiled off in a coast) / (1 − residual − boil-off)
 * carried  = m0 − loaded − dry(loaded, m0, engines)
 * </pre>
 *
 * With boosters beside it the first part of the delta-v comes from all engines together, until the boosters are empty:
 *
 * <pre>Δv0 = c0 ln(M/(M − burned by boosters and stage)),  c0 = Σ F_vac / Σ flow</pre>
 *
 * or, beside solid boosters, the integral over their thrust table.
 *
 * A fairing goes overboard after a part of the speed gain: m₁ = m e^(−Δv₁/c) − fairing, m_end = m₁ e^(−(Δv − Δv₁)/c).
 *
 * <p>The mass carried may come out negative: then the stage cannot lift even itself, and by how much is what the search
 * for a start mass and the explanation of a failure need.
 */
public final class StageModel {

    private static final int ROUNDS = 100;

    private final StagePlan plan;
    private final EnginePerformance engine;
    private final Optional<BoosterSizing> boosters;
    private final StageLayout layout;
    private final double recoveryFactor;
    /** Loss of a square metre of each tank in a coast (kg/m²). */
    private final double oxidizerVented;

    private final double fuelVented;

    public StageModel(StagePlan plan, EnginePerformance engine, Optional<BoosterSizing> boosters) {
        this.plan = plan;
        this.engine = engine;
        this.boosters = boosters;
        this.layout = new StageLayout(
                plan.diameter(), plan.commonBulkhead(), plan.allowances().ullage());
        this.recoveryFactor = plan.recovery().propellantFactor(engine);
        Allowances allowances = plan.allowances();
        this.oxidizerVented = CoastBoilOff.perArea(engine.oxidizer(), allowances.heatLeak(), allowances.coast());
        this.fuelVented = CoastBoilOff.perArea(engine.fuel(), allowances.heatLeak(), allowances.coast());
    }

    public StagePlan plan() {
        return plan;
    }

    public EnginePerformance engine() {
        return engine;
    }

    /** @return exhaust velocity that the rocket equation sees (m/s) */
    double exhaustVelocity() {
        return engine.vacuumThrust() / engine.massFlow();
    }

    /** @return mass of the boosters at ignition (kg) */
    double boosterMass() {
        return boosters.map(BoosterSizing::startMass).orElse(0.0);
    }

    /** @return engines that the rule of the plan asks for at this start mass (kg) */
    public int enginesNeeded(double startMass) {
        double pressure = plan.ignitionPressure();
        double others = boosters.map(b -> b.thrustAt(pressure)).orElse(0.0);
        return plan.engines().needed(startMass, engine.thrustAt(pressure), others);
    }

    /** @return start mass below which start-up, the burn beside the boosters and the fairing take all there is (kg) */
    public double leastStartMass(int engines) {
        Allowances allowances = plan.allowances();
        double time =
                allowances.startupTime() + boosters.map(BoosterSizing::burnTime).orElse(0.0);
        double usable = 1 - allowances.residual() - allowances.boilOff();
        return 1e-6 + boosterMass() + plan.dryMass().fairing() + 1.01 * time * engines * engine.massFlow() / usable;
    }

    public StageSizing at(double startMass, double deltaV, int engines) {
        Allowances allowances = plan.allowances();
        double startup = allowances.startupTime() * engines * engine.massFlow();
        double usable = 1 - allowances.residual() - allowances.boilOff();
        double kept = 0;
        double vented = 0;
        double loaded = 0;
        PropellantLoad load = null;
        StageContents contents = null;
        MassTable dry = null;
        for (int i = 0; i < ROUNDS; i++) {
            double burned = burned(startMass, startup + allowances.boilOff() * loaded, deltaV, engines);
            double next = (burned + startup + kept + vented) / usable;
            boolean settled = Math.abs(next - loaded) <= 1e-13 * next;
            loaded = next;
            load = new PropellantLoad(
                    burned,
                    startup,
                    allowances.boilOff() * loaded,
                    allowances.residual() * loaded,
                    kept,
                    engine.mixtureRatio(),
                    engine.diluentShare(),
                    vented);
            contents = layout.contents(startMass - boosterMass(), load, engine, engines);
            dry = plan.dryMass().estimate(contents);
            boolean vents = oxidizerVented > 0 || fuelVented > 0;
            if (settled || recoveryFactor == 0 && allowances.boilOff() == 0 && !vents) {
                break;
            }
            kept = recoveryFactor * (dry.total() + load.residual());
            vented = oxidizerVented * contents.oxidizerTank().area()
                    + fuelVented * contents.fuelTank().area();
        }
        double thrust = engines * engine.thrustAt(plan.ignitionPressure())
                + boosters.map(b -> b.thrustAt(plan.ignitionPressure())).orElse(0.0);
        return new StageSizing(
                plan.name(),
                engine,
                engines,
                boosters,
                startMass,
                startMass - boosterMass() - load.loaded() - dry.total(),
                load,
                contents,
                dry,
                plan.fairingAfter() < deltaV ? plan.dryMass().fairing() : 0,
                fit(contents),
                deltaV,
                thrust / (startMass * Constants.STANDARD_GRAVITY));
    }

    private Optional<BodyFit> fit(StageContents contents) {
        double tanks = contents.oxidizerTank().volume() + contents.fuelTank().volume();
        return plan.body().map(body -> new BodyFit(body, tanks));
    }

    /** Propellant of this stage burnt for the delta-v (kg), boosters helping. */
    private double burned(double startMass, double spentBefore, double deltaV, int engines) {
        if (boosters.isEmpty()) {
            return burned(startMass - spentBefore, deltaV, plan.fairingAfter());
        }
        BoosterSizing beside = boosters.get();
        double together = engines * engine.massFlow() * beside.burnTime();
        double start = startMass - spentBefore - beside.spentBefore();
        double end = Math.max(1e-6 * start, start - beside.burned() - together);
        double gained = beside.speedGain(start, engines * engine.vacuumThrust(), engines * engine.massFlow());
        double rest = Math.max(0, deltaV - gained);
        double alone = Math.max(0, end - beside.droppedMass());
        return together + burned(alone, rest, Math.max(0, plan.fairingAfter() - (deltaV - rest)));
    }

    /**
     * Propellant burnt for a speed gain (kg) with the fairing overboard after a part of it:
     * m(1 − 1/R₁) + (m/R₁ − fairing)(1 − 1/R₂).
     */
    private double burned(double mass, double deltaV, double fairingAfter) {
        double fairing = plan.dryMass().fairing();
        if (fairing == 0 || fairingAfter >= deltaV) {
            return -Math.expm1(-deltaV / exhaustVelocity()) * mass;
        }
        double before = -Math.expm1(-fairingAfter / exhaustVelocity()) * mass;
        double bare = Math.max(0, mass - before - fairing);
        return before - Math.expm1(-(deltaV - fairingAfter) / exhaustVelocity()) * bare;
    }
}

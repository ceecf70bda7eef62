package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.BodyShape;
import dev.penstock.vehicle.mass.DryMassModel;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of one stage.
 *
 * @param name name for tables
 * @param engineFile concept file of its engine; empty where the engine is the concept that carries the vehicle table
 * @param engines how many engines it has
 * @param deltaVShare share of the ideal delta-v (-); empty leaves the split to the optimum
 * @param diameter outer diameter (m); empty for one that makes the tanks six diameters long
 * @param allowances propellant and volume that give no speed
 * @param dryMass dry-mass model
 * @param commonBulkhead whether the tanks share a head
 * @param recovery how it comes back
 * @param ignitionPressure ambient pressure at ignition (Pa), for the thrust-to-weight ratio
 * @param fairingAfter ideal delta-v of this stage after which its fairing goes overboard (m/s)
 * @param body shape of the body that its tanks must fit into, if one is given
 * @param stated its engine where it is stated by its figures; empty where a concept file gives it
 */
public record StagePlan(
        String name,
        Optional<Path> engineFile,
        EngineCount engines,
        OptionalDouble deltaVShare,
        OptionalDouble diameter,
        Allowances allowances,
        DryMassModel dryMass,
        boolean commonBulkhead,
        Recovery recovery,
        double ignitionPressure,
        double fairingAfter,
        Optional<BodyShape> body,
        Optional<EnginePerformance> stated) {

    /** A stage whose fairing, if any, goes overboard at its ignition. */
    public StagePlan(
            String name,
            Optional<Path> engineFile,
            EngineCount engines,
            OptionalDouble deltaVShare,
            OptionalDouble diameter,
            Allowances allowances,
            DryMassModel dryMass,
            boolean commonBulkhead,
            Recovery recovery,
            double ignitionPressure) {
        this(
                name,
                engineFile,
                engines,
                deltaVShare,
                diameter,
                allowances,
                dryMass,
                commonBulkhead,
                recovery,
                ignitionPressure,
                0,
                Optional.empty(),
                Optional.empty());
    }

    public StagePlan {
        Require.notNegative(name, "ignition pressure (Pa)", ignitionPressure);
        Require.notNegative(name, "delta-v before the fairing goes (m/s)", fairingAfter);
    }

    /**
     * @param count how many engines
     * @return the same stage with that rule
     */
    public StagePlan withEngines(EngineCount count) {
        return with(count, deltaVShare, allowances, dryMass, recovery, fairingAfter, stated);
    }

    /**
     * @param kept propellant that gives no speed, and empty room in the tanks
     * @return the same stage with these
     */
    public StagePlan withAllowances(Allowances kept) {
        return with(engines, deltaVShare, kept, dryMass, recovery, fairingAfter, stated);
    }

    /**
     * @param model dry-mass model
     * @param how how it comes back
     * @return the same stage with these
     */
    public StagePlan withRecovery(DryMassModel model, Recovery how) {
        return with(engines, deltaVShare, allowances, model, how, fairingAfter, stated);
    }

    /**
     * @param speedGain ideal delta-v after which its fairing goes overboard (m/s)
     * @return the same stage with that
     */
    public StagePlan withFairingAfter(double speedGain) {
        return with(engines, deltaVShare, allowances, dryMass, recovery, speedGain, stated);
    }

    /**
     * @param share share of the ideal delta-v (-)
     * @return the same stage with that
     */
    public StagePlan withShare(double share) {
        return with(engines, OptionalDouble.of(share), allowances, dryMass, recovery, fairingAfter, stated);
    }

    /**
     * @param engine its engine, stated by its figures
     * @return the same stage with that
     */
    public StagePlan withStated(EnginePerformance engine) {
        return with(engines, deltaVShare, allowances, dryMass, recovery, fairingAfter, Optional.of(engine));
    }

    /** @return the same stage with the engine of whatever concept carries the vehicle */
    public StagePlan withoutEngineFile() {
        return new StagePlan(
                name,
                Optional.empty(),
                engines,
                deltaVShare,
                diameter,
                allowances,
                dryMass,
                commonBulkhead,
                recovery,
                ignitionPressure,
                fairingAfter,
                body,
                Optional.empty());
    }

    private StagePlan with(
            EngineCount count,
            OptionalDouble share,
            Allowances kept,
            DryMassModel model,
            Recovery how,
            double speedGain,
            Optional<EnginePerformance> engine) {
        return new StagePlan(
                name,
                engineFile,
                count,
                share,
                diameter,
                kept,
                model,
                commonBulkhead,
                how,
                ignitionPressure,
                speedGain,
                body,
                engine);
    }
}

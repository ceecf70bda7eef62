package dev.penstock.vehicle.trade;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Warning;
import dev.penstock.vehicle.EngineSource;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What it costs to bring the first stage back: the same vehicle lost, landed downrange, and landed where it started. */
public final class ReuseTrade {

    /** Why a vehicle of one stage has but one row. */
    public static final String FROM_ORBIT =
            "the only stage goes to orbit: what it takes to come back from there is not computed";

    /** Makes a vehicle of a plan. */
    @FunctionalInterface
    public interface Maker {

        /**
         * @param plan what is asked for
         * @param done how many were made before
         * @return the vehicle, with its flight where it is flown
         */
        Made make(VehiclePlan plan, int done);
    }

    /**
     * A vehicle made.
     *
     * @param sizing the vehicle
     * @param flown the same with its flight, where it was flown
     */
    public record Made(VehicleSizing sizing, Optional<FlownSizing> flown) {

        /** @return what the reader must know */
        public List<Warning> warnings() {
            return flown.map(FlownSizing::warnings).orElse(sizing.warnings());
        }
    }

    /**
     * One way of treating the first stage.
     *
     * @param recovery how it comes back, with the burns that a flight finds needed where it was flown
     * @param made the vehicle; empty if none closes
     * @param reason why none closes; empty text if one does
     */
    public record Row(Recovery recovery, Optional<Made> made, String reason) {

        /** @return the vehicle; empty if none closes */
        public Optional<VehicleSizing> sizing() {
            return made.map(Made::sizing);
        }
    }

    /**
     * @param plan the vehicle
     * @param source its engines
     * @return a row for each way of recovery; one that the plan itself names keeps its speed changes
     */
    public List<Row> rows(VehiclePlan plan, EngineSource source) {
        VehicleSizer sizer = new VehicleSizer();
        return rows(plan, (one, done) -> new Made(sizer.size(one, source), Optional.empty()));
    }

    /**
     * @param plan the vehicle
     * @param maker makes a vehicle of each changed plan
     * @return a row for each way of recovery; where the only stage goes to orbit, those that bring it back are refused
     */
    public List<Row> rows(VehiclePlan plan, Maker maker) {
        List<Row> rows = new ArrayList<>();
        for (Recovery.Mode mode : Recovery.Mode.values()) {
            StagePlan first = plan.stages().get(0);
            Recovery recovery = first.recovery().mode() == mode ? first.recovery() : Recovery.usual(mode);
            if (mode != Recovery.Mode.NONE && plan.firstStageGoesToOrbit()) {
                rows.add(new Row(recovery, Optional.empty(), FROM_ORBIT));
                continue;
            }
            List<StagePlan> stages = new ArrayList<>(plan.stages());
            stages.set(0, first.withRecovery(hardware(first.dryMass(), mode), recovery));
            try {
                Made made = maker.make(plan.withStages(stages), mode.ordinal());
                rows.add(new Row(made.sizing().plan().stages().get(0).recovery(), Optional.of(made), ""));
            } catch (LimitReached | NotConverged none) {
                rows.add(new Row(recovery, Optional.empty(), none.getMessage()));
            }
        }
        return rows;
    }

    /** A dry mass that is not built up line by line is taken to hold whatever it needs. */
    private static DryMassModel hardware(DryMassModel model, Recovery.Mode mode) {
        return model.recovering(now -> mode == Recovery.Mode.NONE
                ? Optional.empty()
                : now.or(() -> Optional.of(new RecoveryHardware(RecoveryHardware.USUAL_FRACTION, 0))));
    }
}

package dev.penstock.vehicle.trade;

import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.EngineSource;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
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

    private final VehicleSizer sizer = new VehicleSizer();

    /**
     * One way of treating the first stage.
     *
     * @param recovery how it comes back
     * @param sizing the vehicle; empty if none closes
     * @param reason why none closes; empty text if one does
     */
    public record Row(Recovery recovery, Optional<VehicleSizing> sizing, String reason) {}

    /**
     * @param plan the vehicle
     * @param source its engines
     * @return a row for each way of recovery; one that the plan itself names keeps its speed changes
     */
    public List<Row> rows(VehiclePlan plan, EngineSource source) {
        List<Row> rows = new ArrayList<>();
        for (Recovery.Mode mode : Recovery.Mode.values()) {
            StagePlan first = plan.stages().get(0);
            Recovery recovery = first.recovery().mode() == mode ? first.recovery() : Recovery.usual(mode);
            List<StagePlan> stages = new ArrayList<>(plan.stages());
            stages.set(0, first.withRecovery(hardware(first.dryMass(), mode), recovery));
            try {
                rows.add(new Row(recovery, Optional.of(sizer.size(plan.withStages(stages), source)), ""));
            } catch (LimitReached none) {
                rows.add(new Row(recovery, Optional.empty(), none.getMessage()));
            }
        }
        return rows;
    }

    /** A dry mass that is not built up line by line is taken to hold whatever it needs. */
    private static DryMassModel hardware(DryMassModel model, Recovery.Mode mode) {
        if (!(model instanceof BuiltUpDryMass builtUp)) {
            return model;
        }
        Optional<RecoveryHardware> needed = mode == Recovery.Mode.NONE
                ? Optional.empty()
                : Optional.of(
                        builtUp.design().recovery().orElse(new RecoveryHardware(RecoveryHardware.USUAL_FRACTION, 0)));
        return new BuiltUpDryMass(builtUp.design().withRecovery(needed));
    }
}

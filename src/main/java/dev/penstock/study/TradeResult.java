package dev.penstock.study;

import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.trade.ClosingCurve;
import dev.penstock.vehicle.trade.PropellantTrade;
import java.util.List;
import java.util.Optional;

/**
 * Propellant pairs on one mission.
 *
 * @param plan mission and stages
 * @param candidates what became of each pair, in the order asked for
 */
public record TradeResult(VehiclePlan plan, List<Candidate> candidates) {

    /**
     * One pair.
     *
     * @param pair the pair
     * @param row its vehicle, or why none closes; empty if the engine has no balance
     * @param curve payload of a single stage against its dry mass; empty if the engine has no balance
     * @param modelledDryMass what the dry-mass model gives for that single stage (kg); zero if there is no curve
     * @param failure why the engine has no balance; empty text if it has one
     */
    public record Candidate(
            PropellantPair pair,
            Optional<PropellantTrade.Row> row,
            Optional<ClosingCurve> curve,
            double modelledDryMass,
            String failure) {}

    public TradeResult {
        candidates = List.copyOf(candidates);
    }
}

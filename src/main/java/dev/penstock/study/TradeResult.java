package dev.penstock.study;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.vehicle.VehicleSpread;
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
     * @param concept the concept of its engine
     * @param spread what its start mass or payload may turn out to be, where that was asked for
     */
    public record Candidate(
            PropellantPair pair,
            Optional<PropellantTrade.Row> row,
            Optional<ClosingCurve> curve,
            double modelledDryMass,
            String failure,
            Concept concept,
            Optional<VehicleSpread> spread) {

        /** A pair of which no spread is known. */
        public Candidate(
                PropellantPair pair,
                Optional<PropellantTrade.Row> row,
                Optional<ClosingCurve> curve,
                double modelledDryMass,
                String failure,
                Concept concept) {
            this(pair, row, curve, modelledDryMass, failure, concept, Optional.empty());
        }

        /**
         * @param known what its start mass or payload may turn out to be
         * @return the same pair with that
         */
        public Candidate withSpread(Optional<VehicleSpread> known) {
            return new Candidate(pair, row, curve, modelledDryMass, failure, concept, known);
        }
    }

    public TradeResult {
        candidates = List.copyOf(candidates);
    }
}

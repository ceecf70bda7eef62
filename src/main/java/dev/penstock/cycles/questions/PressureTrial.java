package dev.penstock.cycles.questions;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.errors.PenstockException;
import java.util.Optional;

/**
 * One chamber pressure of a search.
 *
 * @param pressure chamber pressure (Pa)
 * @param balance the engine there, if one was found
 * @param solved its solution, if one was found
 * @param margin least margin of the limits that count (-), negative where one is missed; −1 without a balance
 * @param limit name of the limit with the least margin; empty text without a balance
 * @param why its numbers, or why there is no balance
 * @param failure why there is no balance; empty if there is one
 */
record PressureTrial(
        double pressure,
        Optional<EngineBalance> balance,
        Optional<Balancer.Solved> solved,
        double margin,
        String limit,
        String why,
        Optional<PenstockException> failure) {

    static PressureTrial failed(double pressure, PenstockException failure) {
        return new PressureTrial(
                pressure, Optional.empty(), Optional.empty(), -1, "", failure.getMessage(), Optional.of(failure));
    }

    boolean closed() {
        return balance.isPresent();
    }

    /** Whether the engine closes and keeps every limit that counts. */
    boolean kept() {
        return closed() && margin >= -1e-9;
    }
}

package dev.penstock.study.space;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;
import java.util.Optional;

/**
 * What a case is at one point: its engines as balanced, and the vehicle that they drive.
 *
 * @param engines the engines; of a concept its own alone
 * @param vehicle the vehicle, if there is one and a figure of it is asked for
 */
public record CaseAnswer(List<EngineBalance> engines, Optional<VehicleSizing> vehicle) {

    public CaseAnswer {
        engines = List.copyOf(engines);
    }

    /** @return the engine of a concept; the first of a vehicle */
    public EngineBalance engine() {
        return engines.get(0);
    }

    /** @return whether every engine keeps all limits of its hardware */
    public boolean withinLimits() {
        return engines.stream().allMatch(EngineBalance::withinLimits);
    }

    /** @return least slack of all limits of all engines (-): zero or more where all are kept */
    public double leastSlack() {
        return engines.stream()
                .flatMap(engine -> engine.limits().stream())
                .mapToDouble(LimitCheck::slack)
                .min()
                .orElse(1);
    }
}

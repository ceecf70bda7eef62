package dev.penstock.cycles.questions;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.cycles.solving.PressureContinuation;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An engine's hardware, closed once at its design point, from which every series of commands begins. Safe to share between threads. */
public final class BuiltEngine {

    private final Balancer balancer;
    private final EngineBalance design;
    private final Balancer.Solved solved;

    BuiltEngine(Balancer balancer, EngineBalance design) {
        this.balancer = balancer;
        this.design = design;
        this.solved = new PressureContinuation(balancer).solve(design.concept());
    }

    /**
     * Runs it away from its design point; each command starts from the nearest that was solved before it in this series.
     *
     * @param commands what it is asked to do
     * @return a point for each command; where the engine cannot follow, why
     */
    public List<OperatingOutcome> offDesign(List<OperatingCommand> commands) {
        OffDesign engine = new OffDesign(balancer, design, solved);
        List<OperatingOutcome> outcomes = new ArrayList<>();
        for (OperatingCommand command : commands) {
            try {
                outcomes.add(new OperatingOutcome(command, Optional.of(engine.at(command)), ""));
            } catch (InvalidInput | ConservationViolated e) {
                throw e;
            } catch (PenstockException e) {
                outcomes.add(new OperatingOutcome(command, Optional.empty(), e.getMessage()));
            }
        }
        return outcomes;
    }
}

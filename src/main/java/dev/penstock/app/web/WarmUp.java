package dev.penstock.app.web;

import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.reading.ConceptTemplate;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.reports.text.JsonText;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/**
 * Balances and draws an example before anyone asks, so that the first question finds classes loaded and fluids open. What
 * fails here fails again, and is told, with that question.
 */
final class WarmUp {

    /** Asks as a client of its own, so that it holds up no other. */
    private static final String CLIENT = "warm-up";

    private final FluidLibrary fluids;
    private final ConceptReader reader;
    private final RequestWorkers workers;

    WarmUp(FluidLibrary fluids, ConceptReader reader, RequestWorkers workers) {
        this.fluids = fluids;
        this.reader = reader;
        this.workers = workers;
    }

    /** @return done when the example is drawn; true if it could be */
    CompletableFuture<Boolean> start() {
        CompletableFuture<Boolean> done = new CompletableFuture<>();
        Thread thread = new Thread(() -> done.complete(run()), "penstock-warm-up");
        thread.setDaemon(true);
        thread.start();
        return done;
    }

    private boolean run() {
        try {
            Cycle cycle = Cycle.all().stream()
                    .filter(c -> c.traits().turbines())
                    .findFirst()
                    .orElseThrow();
            Concept example = reader.parse(
                    cycle.id(),
                    new ConceptTemplate(fluids, VehicleInputs.IN_CONCEPT).text(cycle, cycle.id()),
                    Map.of());
            EngineBalance balance = workers.ask(new Asker(CLIENT, "", 0), study -> study.balance(example));
            JsonText.compact(EngineAnswer.of(balance));
            workers.draw(
                    new Asker(CLIENT, "", 0),
                    () -> Map.of(
                            "flow",
                            EngineAnswer.flow(balance),
                            "charts",
                            EngineAnswer.charts(balance, Optional.empty()).stream()
                                    .map(Supplier::get)
                                    .toList()));
            return true;
        } catch (PenstockException | Refusal e) {
            return false;
        }
    }
}

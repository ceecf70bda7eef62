package dev.penstock.app.web;

import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
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
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Balances and draws an example before anyone asks, so that the first question finds classes loaded and fluids open; then, as long as
 * nobody asks anything, does again what the newest question took, so that the compiler has seen it when edits come. Nothing of it
 * is kept. What fails here fails again, and is told, with that question.
 */
final class WarmUp {

    /** Asks as a client of its own, so that it holds up no other. */
    private static final String CLIENT = "warm-up";

    /** After so many edits of Heron one takes half the processor time of the first, and further ones gain little: measured. */
    private static final int REHEARSALS = 16;

    /** Between looks whether anybody asks (ms). */
    private static final long PAUSE = 200;

    private final FluidLibrary fluids;
    private final ConceptReader reader;
    private final RequestWorkers workers;
    private final AtomicReference<Consumer<EngineStudy>> newest = new AtomicReference<>();

    WarmUp(FluidLibrary fluids, ConceptReader reader, RequestWorkers workers) {
        this.fluids = fluids;
        this.reader = reader;
        this.workers = workers;
    }

    /** @return done when the example is drawn; true if it could be */
    CompletableFuture<Boolean> start() {
        CompletableFuture<Boolean> done = new CompletableFuture<>();
        Thread thread = new Thread(
                () -> {
                    done.complete(run());
                    rehearse();
                },
                "penstock-warm-up");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
        return done;
    }

    /** @param work what the question took that was answered last */
    void answered(Consumer<EngineStudy> work) {
        newest.set(work);
    }

    private void rehearse() {
        try {
            for (int done = 0; done < REHEARSALS && !workers.closed(); ) {
                Consumer<EngineStudy> work = newest.get();
                if (work != null && workers.whileIdle(work)) {
                    done++;
                } else {
                    Thread.sleep(PAUSE);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
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

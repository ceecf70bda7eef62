package dev.penstock.cycles.solving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.cycles.sheet.Models;
import dev.penstock.input.HomeFolder;
import dev.penstock.numerics.Cancellation;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** A search ends at its bound of work, in the middle of an attempt too, and says so. */
class SolvingWorkTest {

    private static final Path HOME = HomeFolder.find();
    private static final Models MODELS =
            new Models(SpeciesLibrary.open(HOME), new JacketSolver(WallLibrary.open(HOME)));
    private static final Concept HERON = Concepts.read("heron.toml");

    @Test
    void anAttemptWithoutEndIsEndedAtTheBound() {
        SolvingWork work = new SolvingWork(10 * SolvingWork.EVALUATION);
        BalanceModels models = new BalanceModels(HERON, MODELS, Optional.empty());
        assertThatThrownBy(() -> work.count(models, () -> {
                    while (true) {
                        models.countEvaluation();
                        Cancellation.check();
                    }
                }))
                .isInstanceOf(CancellationException.class);
        assertThat(models.evaluations()).isEqualTo(10);
        assertThat(work.ended()).isTrue();
    }

    @Test
    void anAttemptThatFailsCounts() {
        SolvingWork work = new SolvingWork(10 * SolvingWork.EVALUATION);
        BalanceModels models = new BalanceModels(HERON, MODELS, Optional.empty());
        assertThatThrownBy(() -> work.count(models, () -> {
                    models.countEvaluation();
                    throw new IllegalStateException("as a model fails");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(work.spent()).isEqualTo(SolvingWork.EVALUATION);
        assertThat(work.ended()).isFalse();
    }

    @Test
    void aSearchAtItsBoundNamesNoOtherReason() {
        SoughtBalances sought = within(2 * SolvingWork.EVALUATION);
        assertThat(sought.guess(sought.target())).isEmpty();
        assertThat(sought.exhausted()).isTrue();
        PressureSearch search = new PressureSearch(sought);
        assertThat(search.find()).isEmpty();
        assertThat(PressureRefusal.of(search, sought))
                .hasMessage(
                        "gas generator: no balance was found within the work of a search at the chamber pressure of 8 MPa asked for; "
                                + "the search ended at its bound, so whether there is one is not known "
                                + "(there: Gas generator balance was not found within the work of a search)");
    }

    @Test
    void aStopFromOutsideIsNoBound() {
        SoughtBalances sought = within(1_000_000);
        assertThatThrownBy(() -> Cancellation.during(() -> true, () -> sought.guess(sought.target())))
                .isInstanceOf(CancellationException.class);
    }

    private static SoughtBalances within(long most) {
        return new SoughtBalances(new Balancer(MODELS), HERON, most, new SolvingWork(most));
    }
}

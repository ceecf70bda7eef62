package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.numerics.RootFinder;
import dev.penstock.study.EngineRuns;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RequestWorkersTest {

    private static RequestWorkers workers(int workers, Duration patience) {
        return new RequestWorkers(
                new EngineRuns(HomeFolder.find(), FluidLibrary.open(HomeFolder.find())), workers, patience);
    }

    @Test
    void workThatTakesTooLongIsGivenUp() {
        CountDownLatch never = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofMillis(200))) {
            assertThatThrownBy(() -> workers.ask("", 0, study -> await(never)))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.status()).isEqualTo(504));
            assertThatThrownBy(() -> workers.ask("", 0, study -> "next"))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.status()).isEqualTo(503));
            never.countDown();
        }
    }

    @Test
    void aQuestionThatANewerOneReplacedIsNotAnswered() {
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            assertThat(workers.<String>ask("page", 2, study -> "new")).isEqualTo("new");
            assertThatThrownBy(() -> workers.ask("page", 1, study -> "old"))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.details()).containsKey("superseded"));
            assertThat(workers.<String>ask("other page", 1, study -> "mine")).isEqualTo("mine");
        }
    }

    @Test
    void aSecondQuestionWaitsForTheFirst() {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            CompletableFuture<String> first = CompletableFuture.supplyAsync(() -> workers.ask("", 0, study -> {
                begun.countDown();
                return await(go);
            }));
            await(begun);
            CompletableFuture<String> second =
                    CompletableFuture.supplyAsync(() -> workers.ask("", 0, study -> "second"));
            assertThat(second).isNotDone();
            go.countDown();
            assertThat(first.join()).isEqualTo("done");
            assertThat(second.join()).isEqualTo("second");
        }
    }

    @Test
    void drawingDoesNotWaitForABalance() {
        CountDownLatch go = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            CompletableFuture<String> balance =
                    CompletableFuture.supplyAsync(() -> workers.ask("page", 1, study -> await(go)));
            assertThat(workers.<String>draw("page", 1, () -> "drawn")).isEqualTo("drawn");
            assertThat(balance).isNotDone();
            go.countDown();
            assertThat(balance.join()).isEqualTo("done");
        }
    }

    @Test
    void aDrawingOfAnOldQuestionIsNotMade() {
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            assertThat(workers.<String>ask("page", 2, study -> "new")).isEqualTo("new");
            assertThatThrownBy(() -> workers.draw("page", 1, () -> "old"))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.details()).containsKey("superseded"));
        }
    }

    @Test
    void workWhoseTimeRanOutGivesItsThreadBack() {
        try (RequestWorkers workers = workers(1, Duration.ofMillis(500))) {
            assertThatThrownBy(() -> workers.ask("page", 1, study -> solveForEver()))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.status()).isEqualTo(504));
            assertThat(workers.<String>ask("page", 2, study -> "next")).isEqualTo("next");
        }
    }

    @Test
    void aNewerQuestionStopsTheOneItReplaces() {
        CountDownLatch begun = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(60))) {
            CompletableFuture<String> old = CompletableFuture.supplyAsync(() -> workers.ask("page", 1, study -> {
                begun.countDown();
                return solveForEver();
            }));
            await(begun);
            assertThat(workers.<String>ask("page", 2, study -> "new")).isEqualTo("new");
            assertThatThrownBy(old::join).hasCauseInstanceOf(Refusal.class);
        }
    }

    @Test
    void onePageCannotTakeAllThreads() {
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch begun = new CountDownLatch(1);
        try (RequestWorkers workers = workers(2, Duration.ofSeconds(60))) {
            List<CompletableFuture<String>> greedy = IntStream.range(0, 4)
                    .mapToObj(i -> CompletableFuture.supplyAsync(
                            () -> workers.ask("", 0, study -> {
                                begun.countDown();
                                return await(go);
                            }),
                            task -> new Thread(task).start()))
                    .toList();
            await(begun);
            assertThat(workers.<String>ask("other page", 1, study -> "mine")).isEqualTo("mine");
            assertThat(greedy).noneMatch(CompletableFuture::isDone);
            go.countDown();
            greedy.forEach(CompletableFuture::join);
        }
    }

    /** A root search that has no end of its own, as a solver that is far from its answer. */
    private static String solveForEver() {
        while (true) {
            RootFinder.between("x", x -> x, -1, 2, 1e-12);
        }
    }

    private static String await(CountDownLatch latch) {
        try {
            latch.await();
            return "done";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "interrupted";
        }
    }
}

package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.numerics.Cancellation;
import dev.penstock.numerics.RootFinder;
import dev.penstock.study.EngineRuns;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
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
            assertThatThrownBy(() -> workers.ask(asker("", 0), study -> await(never)))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.status()).isEqualTo(504));
            assertThatThrownBy(() -> workers.ask(asker("", 0), study -> "next"))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.status()).isEqualTo(503));
            never.countDown();
        }
    }

    @Test
    void aQuestionThatANewerOneReplacedIsNotAnswered() {
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            assertThat(workers.<String>ask(asker("page", 2), study -> "new")).isEqualTo("new");
            assertThatThrownBy(() -> workers.ask(asker("page", 1), study -> "old"))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.details()).containsKey("superseded"));
            assertThat(workers.<String>ask(asker("other page", 1), study -> "mine"))
                    .isEqualTo("mine");
        }
    }

    @Test
    void aSecondQuestionWaitsForTheFirst() {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            CompletableFuture<String> first = CompletableFuture.supplyAsync(() -> workers.ask(asker("", 0), study -> {
                begun.countDown();
                return await(go);
            }));
            await(begun);
            CompletableFuture<String> second =
                    CompletableFuture.supplyAsync(() -> workers.ask(asker("", 0), study -> "second"));
            assertThat(second).isNotDone();
            go.countDown();
            assertThat(first.join()).isEqualTo("done");
            assertThat(second.join()).isEqualTo("second");
        }
    }

    @Test
    void whatNobodyWaitsForGivesWayToAQuestion() {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch asked = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            assertThat(workers.whileIdle(study -> Cancellation.check())).isTrue();
            CompletableFuture<Boolean> rehearsed = CompletableFuture.supplyAsync(() -> workers.whileIdle(study -> {
                begun.countDown();
                await(asked);
                Cancellation.check();
            }));
            await(begun);
            CompletableFuture<String> question =
                    CompletableFuture.supplyAsync(() -> workers.ask(asker("", 0), study -> {
                        asked.countDown();
                        return await(go);
                    }));
            assertThat(rehearsed.join()).isFalse();
            assertThat(workers.whileIdle(study -> Cancellation.check())).isFalse();
            go.countDown();
            assertThat(question.join()).isEqualTo("done");
        }
    }

    @Test
    void drawingDoesNotWaitForABalance() {
        CountDownLatch go = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            CompletableFuture<String> balance =
                    CompletableFuture.supplyAsync(() -> workers.ask(asker("page", 1), study -> await(go)));
            assertThat(workers.<String>draw(asker("page", 1), () -> "drawn")).isEqualTo("drawn");
            assertThat(balance).isNotDone();
            go.countDown();
            assertThat(balance.join()).isEqualTo("done");
        }
    }

    @Test
    void aDrawingOfAnOldQuestionIsNotMade() {
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            assertThat(workers.<String>ask(asker("page", 2), study -> "new")).isEqualTo("new");
            assertThatThrownBy(() -> workers.draw(asker("page", 1), () -> "old"))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.details()).containsKey("superseded"));
        }
    }

    @Test
    void workWhoseTimeRanOutGivesItsThreadBack() {
        try (RequestWorkers workers = workers(1, Duration.ofMillis(500))) {
            assertThatThrownBy(() -> workers.ask(asker("page", 1), study -> solveForEver()))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.status()).isEqualTo(504));
            assertThat(workers.<String>ask(asker("page", 2), study -> "next")).isEqualTo("next");
        }
    }

    @Test
    void aNewerQuestionStopsTheOneItReplaces() {
        CountDownLatch begun = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(60))) {
            CompletableFuture<String> old = CompletableFuture.supplyAsync(() -> workers.ask(asker("page", 1), study -> {
                begun.countDown();
                return solveForEver();
            }));
            await(begun);
            assertThat(workers.<String>ask(asker("page", 2), study -> "new")).isEqualTo("new");
            assertThatThrownBy(old::join).hasCauseInstanceOf(Refusal.class);
        }
    }

    @Test
    void oneClientCannotTakeAllThreadsWhateverPagesItNames() {
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch begun = new CountDownLatch(2);
        try (RequestWorkers workers = workers(3, Duration.ofSeconds(60))) {
            List<CompletableFuture<String>> greedy = IntStream.range(0, 8)
                    .mapToObj(i -> inBackground(() -> workers.ask(asker("invented " + i, 1), study -> {
                        begun.countDown();
                        return await(go);
                    })))
                    .toList();
            await(begun);
            assertThat(workers.<String>ask(new Asker("another", "page", 1), study -> "mine"))
                    .isEqualTo("mine");
            assertThat(greedy).noneMatch(CompletableFuture::isDone);
            go.countDown();
            greedy.forEach(CompletableFuture::join);
        }
    }

    @Test
    void aClientWithVeryManyOpenQuestionsIsRefusedAtOnceAndOthersAreNot() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch refused = new CountDownLatch(ClientShare.MOST_OPEN);
        try (RequestWorkers workers = workers(3, Duration.ofSeconds(60))) {
            List<CompletableFuture<String>> greedy = IntStream.range(0, 2 * ClientShare.MOST_OPEN)
                    .mapToObj(i -> inBackground(() -> {
                        try {
                            return workers.ask(asker("", 0), study -> await(go));
                        } catch (Refusal e) {
                            refused.countDown();
                            return e.getMessage();
                        }
                    }))
                    .toList();
            assertThat(refused.await(30, TimeUnit.SECONDS)).isTrue();
            assertThat(workers.<String>ask(new Asker("another", "", 0), study -> "mine"))
                    .isEqualTo("mine");
            go.countDown();
            assertThat(greedy.stream().map(CompletableFuture::join).filter("done"::equals))
                    .hasSize(ClientShare.MOST_OPEN);
        }
    }

    @Test
    void aPageOfOneClientReplacesNoQuestionOfAnother() {
        try (RequestWorkers workers = workers(3, Duration.ofSeconds(20))) {
            assertThat(workers.<String>ask(new Asker("another", "page", 9), study -> "late"))
                    .isEqualTo("late");
            assertThat(workers.<String>ask(asker("page", 1), study -> "first")).isEqualTo("first");
        }
    }

    @Test
    void aPaperHoldsUpNeitherBalanceNorDrawing() {
        CountDownLatch go = new CountDownLatch(1);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            CompletableFuture<String> paper = inBackground(() -> workers.print(asker("", 0), () -> await(go)));
            assertThat(workers.<String>draw(asker("page", 1), () -> "drawn")).isEqualTo("drawn");
            assertThat(workers.<String>ask(asker("page", 2), study -> "balanced"))
                    .isEqualTo("balanced");
            go.countDown();
            assertThat(paper.join()).isEqualTo("done");
        }
    }

    @Test
    void aPaperThatWouldWaitForManyIsRefusedAtOnce() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch refused = new CountDownLatch(2);
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(60))) {
            List<CompletableFuture<String>> papers = IntStream.range(0, RequestWorkers.MOST_PAPERS + 2)
                    .mapToObj(i -> inBackground(() -> {
                        try {
                            return workers.print(asker("", 0), () -> await(go));
                        } catch (Refusal e) {
                            refused.countDown();
                            return e.getMessage();
                        }
                    }))
                    .toList();
            assertThat(refused.await(30, TimeUnit.SECONDS)).isTrue();
            go.countDown();
            assertThat(papers.stream().map(CompletableFuture::join).filter("done"::equals))
                    .hasSize(RequestWorkers.MOST_PAPERS);
            assertThat(workers.<String>print(asker("", 0), () -> "next")).isEqualTo("next");
        }
    }

    /** A page and its paper are two steps of one request. */
    @Test
    void stepsOfOneRequestShareItsTime() {
        try (RequestWorkers workers = workers(1, Duration.ofSeconds(20))) {
            long longAgo = System.nanoTime() - Duration.ofSeconds(21).toNanos();
            assertThatThrownBy(() -> workers.print(new Asker("one", "", 0, longAgo), () -> "paper"))
                    .isInstanceOf(Refusal.class);
            assertThat(workers.<String>print(asker("", 0), () -> "paper")).isEqualTo("paper");
        }
    }

    private static Asker asker(String page, long number) {
        return new Asker("one", page, number);
    }

    private static CompletableFuture<String> inBackground(Supplier<String> question) {
        return CompletableFuture.supplyAsync(question, task -> new Thread(task).start());
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

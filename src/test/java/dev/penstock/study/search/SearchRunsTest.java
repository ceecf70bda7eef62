package dev.penstock.study.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.space.CasePaths;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyPoint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SearchRunsTest {

    private static final StudyCase DUNLIN = StudyCase.open(
            new EngineRuns(HomeFolder.find(), FluidLibrary.open()), Path.of("cycles/dunlin.toml"), Map.of());
    private static final List<String> VARY =
            List.of("engine.chamber_pressure=0.8..1.5MPa", "propellants.mixture_ratio=1.4..2.0");

    private static Question question(List<String> least, List<String> most, String... constraints) {
        return question(VARY, least, most, constraints);
    }

    private static Question question(List<String> vary, List<String> least, List<String> most, String... constraints) {
        CasePaths paths = DUNLIN.paths();
        List<Objective> objectives = new ArrayList<>();
        paths.figures("--minimise", least).forEach(f -> objectives.add(new Objective(f, false)));
        paths.figures("--maximise", most).forEach(f -> objectives.add(new Objective(f, true)));
        return new Question(DUNLIN, paths.space(vary), objectives, paths.constraints(List.of(constraints)), List.of());
    }

    @Test
    void theBestPointIsBalancedAgainAndItsBitsDoNotDependOnThreads() {
        Question question =
                question(List.of(), List.of("isp_vacuum_s"), "engine.exit_diameter_m<=0.21", "within_limits");
        OptimumResult here =
                new OptimumRuns(Workers.HERE, PointJournal.NONE).run(question, 1, 60, 5, Progress.NONE, () -> false);
        OptimumResult there = new OptimumRuns().run(question, 1, 60, 5, Progress.NONE, () -> false);
        assertThat(there.best().values()).isEqualTo(here.best().values());
        assertThat(there.best().figures()).isEqualTo(here.best().figures());
        double again = DUNLIN.answer(question.space().changes(here.best().values()), false)
                .engine()
                .engine()
                .vacuumIsp();
        assertThat(here.best().figures()[0]).isEqualTo(again);
        assertThat(here.complete()).isTrue();
        assertThat(here.evaluations()).isGreaterThan(60);
    }

    @Test
    void aSearchThatCannotKeepItsConstraintsSaysSo() {
        Question question = question(List.of(), List.of("isp_vacuum_s"), "isp_vacuum_s>=900");
        OptimumResult result = new OptimumRuns().run(question, 1, 40, 1, Progress.NONE, () -> false);
        assertThat(result.feasible()).isFalse();
        assertThat(result.best().closes()).isTrue();
    }

    @Test
    void stoppingKeepsTheBestSoFar() {
        AtomicInteger done = new AtomicInteger();
        OptimumResult result = new OptimumRuns(Workers.HERE, PointJournal.NONE)
                .run(
                        question(List.of(), List.of("isp_vacuum_s")),
                        2,
                        400,
                        1,
                        (d, of, what) -> done.set(d),
                        () -> done.get() >= 40);
        assertThat(result.complete()).isFalse();
        assertThat(result.evaluations()).isLessThanOrEqualTo(40);
        assertThat(result.best().closes()).isTrue();
        assertThat(result.gain()).isGreaterThanOrEqualTo(0);
    }

    @Test
    void aFrontierTradesOneForTheOther() {
        Question question = question(
                List.of("nozzle.area_ratio=40..120"),
                List.of("engine.mass_kg"),
                List.of("isp_vacuum_s"),
                "engine.mass_kg<=1000");
        FrontierResult result = new FrontierRuns().run(question, 12, 4, 1, Progress.NONE, () -> false);
        assertThat(result.points()).hasSizeGreaterThan(2).allMatch(question::feasible);
        for (int i = 1; i < result.points().size(); i++) {
            StudyPoint lighter = result.points().get(i - 1);
            StudyPoint heavier = result.points().get(i);
            assertThat(heavier.figures()[0]).isGreaterThan(lighter.figures()[0]);
            assertThat(heavier.figures()[1]).isGreaterThan(lighter.figures()[1]);
        }
        assertThat(result.growth()).hasSize(5).isSorted();
        assertThat(result.hypervolume()).isPositive();
        assertThat(result.knee()).isBetween(0, result.points().size() - 1);
    }

    /** Of an engine of given thrust the mass flow is thrust over impulse: their indices are alike. */
    @Test
    void indicesTellWhatMattersAndHowManyClose() {
        Question asked = new QuestionText(
                        VARY, List.of(), List.of(), List.of(), List.of("isp_vacuum_s", "engine.mass_flow_kg_s"))
                .sensitivity(DUNLIN);
        SensitivityResult result = new SensitivityRuns().run(asked, 32, 1, Progress.NONE, () -> false);
        assertThat(result.evaluations()).isEqualTo(8 * 4 * 4);
        assertThat(result.shareThatCloses()).isEqualTo(1);
        assertThat(result.failures()).isEmpty();
        assertThat(result.results().get(0).indices().get(1).total())
                .isGreaterThan(0.5)
                .isCloseTo(result.results().get(1).indices().get(1).total(), within(0.2));
    }

    /** Every input with a spread, more than the indices take: those that move nothing are left at the file's value. */
    @Test
    void manyInputsAreScreenedFirst() {
        Question asked = new QuestionText(List.of("spreads"), List.of(), List.of(), List.of(), List.of("isp_vacuum_s"))
                .sensitivity(DUNLIN);
        assertThat(asked.space().size()).isGreaterThan(SensitivityRuns.MOST);
        AtomicInteger of = new AtomicInteger();
        SensitivityResult result =
                new SensitivityRuns().run(asked, 16, 1, (done, all, what) -> of.set(all), () -> false);
        assertThat(result.space().size()).isEqualTo(SensitivityRuns.MOST);
        assertThat(result.screened()).hasSize(asked.space().size());
        assertThat(result.evaluations()).isEqualTo(of.get()).isEqualTo(SensitivityRuns.evaluations(asked.space(), 16));
    }

    /** A search that was stopped goes on from its journal: nothing is asked twice, and every bit is that of one run. */
    @Test
    void aSearchGoesOnFromItsJournal(@TempDir Path folder) throws IOException {
        Question question = question(List.of(), List.of("isp_vacuum_s"), "within_limits");
        OptimumResult whole =
                new OptimumRuns(Workers.HERE, PointJournal.NONE).run(question, 2, 40, 3, Progress.NONE, () -> false);
        Path file = folder.resolve("points");
        AtomicInteger done = new AtomicInteger();
        try (PointJournal journal = PointJournal.open(file, question, "this")) {
            new OptimumRuns(Workers.HERE, journal)
                    .run(question, 2, 40, 3, (d, of, what) -> done.set(d), () -> done.get() >= 50);
            assertThat(journal.size()).isBetween(30, 50);
        }
        String cut = Files.readString(file);
        Files.writeString(file, cut.substring(0, cut.length() - 9));
        try (PointJournal journal = PointJournal.open(file, question, "this")) {
            int before = journal.size();
            OptimumResult again = new OptimumRuns(journal).run(question, 2, 40, 3, Progress.NONE, () -> false);
            assertThat(again.best().values()).isEqualTo(whole.best().values());
            assertThat(again.best().figures()).isEqualTo(whole.best().figures());
            assertThat(again.evaluations()).isEqualTo(whole.evaluations());
            assertThat(before).isPositive().isLessThan(journal.size());
        }
        try (PointJournal journal = PointJournal.open(file, question, "this")) {
            int all = journal.size();
            new OptimumRuns(journal).run(question, 2, 40, 3, Progress.NONE, () -> false);
            assertThat(journal.size()).as("nothing new the second time").isEqualTo(all);
        }
        assertThatThrownBy(() -> PointJournal.open(file, question, "another version"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("another version");
        Path other = Files.writeString(folder.resolve("text"), "my own text");
        assertThatThrownBy(() -> PointJournal.open(other, question, "this")).hasMessageContaining("no journal");
        assertThat(other).content().isEqualTo("my own text");
    }
}

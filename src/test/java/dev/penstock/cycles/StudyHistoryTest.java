package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invariance: no answer of a study depends, in any bit, on what was asked before it, on the thread, or on other data. */
class StudyHistoryTest {

    private static final int CONCEPTS = 40;
    private static final long SEQUENCE = 12;

    private static final List<Concept> ALL = new ArrayList<>();
    private static final EngineStudy STUDY = EngineStudy.open();
    private static String[] forwards;

    @BeforeAll
    static void balanceForwards() throws IOException {
        try (Stream<Path> demos = Files.list(Path.of("cycles"))) {
            demos.filter(f -> f.toString().endsWith(".toml")).sorted().forEach(f -> ALL.add(Concepts.READER.read(f)));
        }
        RandomConcepts draws = new RandomConcepts(SEQUENCE);
        while (ALL.size() < CONCEPTS) {
            ALL.add(draws.next().concept());
        }
        forwards = answers(STUDY, IntStream.range(0, CONCEPTS).toArray());
    }

    private static String[] answers(EngineStudy study, int[] order) {
        String[] answers = new String[CONCEPTS];
        for (int i : order) {
            answers[i] = answer(study, ALL.get(i));
        }
        return answers;
    }

    /** Every number with all its digits, or why there is none. */
    private static String answer(EngineStudy study, Concept concept) {
        try {
            return FigureJson.of(EngineFigures.ALL, study.balance(concept)).toString();
        } catch (PenstockException e) {
            return e.getMessage();
        }
    }

    @Test
    void mostOfTheConceptsClose() {
        assertThat(Arrays.stream(forwards).filter(a -> a.startsWith("{"))).hasSizeGreaterThan(CONCEPTS * 9 / 10);
    }

    @Test
    void theOrderMovesNoBit() {
        int[] backwards =
                IntStream.range(0, CONCEPTS).map(i -> CONCEPTS - 1 - i).toArray();
        assertThat(answers(EngineStudy.open(), backwards)).isEqualTo(forwards);
    }

    @Test
    void theSameQuestionAgainMovesNoBit() {
        assertThat(answer(STUDY, ALL.get(CONCEPTS / 2))).isEqualTo(forwards[CONCEPTS / 2]);
        assertThat(answer(STUDY, ALL.get(CONCEPTS / 2))).isEqualTo(forwards[CONCEPTS / 2]);
    }

    @Test
    void threadsThatShareAStudyMoveNoBit() {
        EngineStudy shared = EngineStudy.open();
        List<String> answers = Parallel.map(ALL, Concept::name, concept -> answer(shared, concept), Progress.NONE);
        assertThat(answers).containsExactly(forwards);
    }

    @Test
    void aSearchForTheLimitMovesNoBitAndIsMovedByNone() {
        Concept concept = ALL.get(0);
        double alone = EngineStudy.open().limit(concept).chamberPressure();
        assertThat(STUDY.limit(concept).chamberPressure()).isEqualTo(alone);
        assertThat(answer(STUDY, concept)).isEqualTo(forwards[0]);
    }

    /**
     * Two data folders whose kerosenes share an id and differ in viscosity, times 3. Limit: friction grows with the viscosity,
     * and the channels that are sized to it too.
     */
    @Test
    void aSecondFolderOfDataAnswersWithItsOwnNumbers(@TempDir Path other) throws IOException {
        Path home = HomeFolder.find();
        copy(home.resolve("fluids"), other.resolve("fluids"));
        thicken(other.resolve("fluids").resolve("rp-1.toml"), 3);
        Path heron = home.resolve("cycles").resolve("heron.toml");
        Map<String, String> anyDrop = Map.of("cooling.limits.pressure_drop_fraction", "1");
        Concept thin = Concepts.READER.read(heron, anyDrop);
        Concept thick = new ConceptReader(FluidLibrary.open(other)).read(heron, anyDrop);
        EngineBalance first = EngineStudy.open(home).balance(thin);
        EngineBalance second = EngineStudy.open(other).balance(thick);
        EngineBalance both = STUDY.balance(thick);
        assertThat(drop(second)).isGreaterThan(1.5 * drop(first));
        assertThat(drop(both)).isEqualTo(drop(second));
        assertThat(drop(STUDY.balance(thin))).isEqualTo(drop(first));
        assertThat(thick.fuel().fluid().atPressureTemperature(5e6, 320).viscosity()
                        / thin.fuel().fluid().atPressureTemperature(5e6, 320).viscosity())
                .isCloseTo(3, within(1e-6));
    }

    private static double drop(EngineBalance balance) {
        return balance.cooling().get(0).pressureDrop();
    }

    /** The viscosity's first coefficient is its logarithm's constant. */
    private static void thicken(Path file, double factor) throws IOException {
        Matcher matcher = Pattern.compile("(?s)(\\[model.viscosity].*?coefficients = \\[)([^,]+)")
                .matcher(Files.readString(file));
        assertThat(matcher.find()).isTrue();
        double constant = Double.parseDouble(matcher.group(2)) + Math.log(factor);
        Files.writeString(file, matcher.replaceFirst("$1" + constant));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Files.copy(path, to.resolve(from.relativize(path)));
            }
        }
    }
}

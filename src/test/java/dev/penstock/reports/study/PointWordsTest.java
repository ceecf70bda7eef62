package dev.penstock.reports.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.search.Question;
import dev.penstock.study.space.CasePaths;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyPoint;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PointWordsTest {

    private static final StudyCase DUNLIN = StudyCase.open(
            new EngineRuns(HomeFolder.find(), FluidLibrary.open()), Path.of("cycles/dunlin.toml"), Map.of());

    /** A line that somebody types where the program ran names the file where it lies; one on a page, the file beside it. */
    @Test
    void aPointIsSeenAgainByALineThatCanBeTyped() {
        CasePaths paths = DUNLIN.paths();
        Question question = new Question(
                DUNLIN, paths.space(List.of("propellants.mixture_ratio=1.4..2.0")), List.of(), List.of(), List.of());
        StudyPoint point = new StudyPoint(new double[] {1.5}, new double[0], Optional.empty());
        PointWords words = new PointWords(question);
        assertThat(words.here(question.space(), point))
                .startsWith("penstock balance cycles/dunlin.toml --set propellants.mixture_ratio=");
        assertThat(words.again(question.space(), point)).startsWith("penstock balance dunlin.toml --set ");
    }
}

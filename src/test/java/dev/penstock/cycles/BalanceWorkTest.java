package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.Effort;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a balance of each demo costs, counted, not timed: a change that makes it dearer says so here, and one that makes it much
 * cheaper lowers the count.
 */
class BalanceWorkTest {

    private static final EngineStudy STUDY = EngineStudy.open();

    /** Counts may rise by this share, from machine to machine (-). */
    private static final double ALLOWANCE = 0.1;

    /** A count that falls by more is out of date (-). */
    private static final double SLACK = 0.3;

    @ParameterizedTest
    @CsvSource({
        "avocet, 5, 23, 12, 211, 7569",
        "curlew, 5, 25, 12, 207, 9301",
        "dotterel, 4, 6, 0, 138, 676",
        "dunlin, 3, 5, 0, 106, 0",
        "gannet, 7, 45, 14, 459, 8965",
        "guillemot, 6, 27, 14, 257, 9151",
        "heron, 6, 20, 26, 298, 797",
        "kittiwake, 5, 23, 0, 217, 1498",
        "phalarope, 5, 26, 25, 206, 6832",
        "plover, 3, 5, 0, 111, 0",
        "razorbill, 7, 33, 26, 389, 3590",
        "tern, 11, 54, 54, 459, 5488",
        "whimbrel, 5, 17, 0, 173, 0"
    })
    void aBalanceCostsWhatIsWrittenHere(
            String demo, int rounds, int evaluations, int marches, int equilibria, long nativeCalls) {
        Concept concept = Concepts.READER.read(Path.of("cycles", demo + ".toml"));
        STUDY.balance(concept); // what is made once is made
        long before = CoolPropLibrary.nativeCalls();
        Effort effort = STUDY.balance(concept).effort();
        long asked = CoolPropLibrary.nativeCalls() - before;
        near("rounds", effort.rounds(), rounds);
        near("evaluations", effort.evaluations(), evaluations);
        near("marches", effort.marches(), marches);
        near("equilibria", effort.equilibria(), equilibria);
        assumeTrue(before > 0 || nativeCalls == 0, "CoolProp answers from another process");
        near("native calls", asked, nativeCalls);
    }

    /** A concept that took minutes: what it asks of CoolProp. */
    @Test
    void aConceptThatBoilsAsksTheTable() {
        RandomConcepts.Draw draw = WideConcepts.boiling();
        assertThat(draw.values().get("propellants.fuel")).isEqualTo("methane");
        STUDY.balance(Concepts.READER.read(Path.of("cycles", "tern.toml"))); // methane's table is made
        long before = CoolPropLibrary.nativeCalls();
        Verdict verdict = Verdict.on(draw);
        assertThat(verdict.kind()).isIn(Verdict.Kind.CLOSED, Verdict.Kind.REFUSED);
        assertThat(CoolPropLibrary.nativeCalls() - before).isLessThan(75_000);
    }

    private static void near(String what, long got, long written) {
        long allowed = written + Math.round(ALLOWANCE * written);
        assertThat(got).as(what).isBetween((long) Math.floor((1 - SLACK) * written), allowed);
    }

    @Test
    void everyDemoIsCounted() throws Exception {
        List<String> written = Stream.of(BalanceWorkTest.class
                        .getDeclaredMethod(
                                "aBalanceCostsWhatIsWrittenHere",
                                String.class,
                                int.class,
                                int.class,
                                int.class,
                                int.class,
                                long.class)
                        .getAnnotation(CsvSource.class)
                        .value())
                .map(line -> line.substring(0, line.indexOf(',')) + ".toml")
                .toList();
        assertThat(written).containsExactlyInAnyOrderElementsOf(demos());
    }

    private static List<String> demos() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("cycles"))) {
            return files.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(".toml"))
                    .toList();
        }
    }
}

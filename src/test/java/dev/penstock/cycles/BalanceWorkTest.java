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
        "avocet, 5, 25, 15, 234, 9813",
        "curlew, 6, 30, 16, 229, 12334",
        "dotterel, 4, 8, 0, 191, 685",
        "dunlin, 3, 7, 0, 118, 0",
        "gannet, 6, 44, 13, 537, 8616",
        "guillemot, 6, 29, 16, 267, 12641",
        "heron, 7, 25, 18, 422, 778",
        "kittiwake, 5, 25, 0, 236, 1511",
        "phalarope, 6, 31, 32, 497, 9473",
        "plover, 3, 7, 0, 124, 0",
        "razorbill, 6, 28, 16, 456, 3188",
        "tern, 6, 34, 22, 297, 3718",
        "whimbrel, 5, 19, 0, 169, 0"
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

package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Property: what an engineer might ask for closes, or fails with a sentence. The long run is RandomConceptsRun. */
class RandomConceptsTest {

    private static final int COUNT = 50;
    private static final int WIDE_COUNT = 20;

    @Test
    void randomConceptsCloseOrSayWhyNot() {
        RandomConcepts draws = new RandomConcepts(20);
        List<String> failures = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            RandomConcepts.Draw draw = draws.next();
            draw.values().remove("cooling.coolant", draw.cycle().traits().livesOnJacketHeat() ? "" : "fuel");
            try {
                EngineBalance balance = Concepts.STUDY.balance(draw.concept());
                assertThat(balance.residualWorst()).isLessThan(1e-8);
                assertThat(balance.effort().evaluations()).isLessThan(400);
            } catch (PenstockException e) {
                assertThat(e).isInstanceOfAny(LimitReached.class, OutsideValidity.class);
                assertThat(e.getMessage()).isNotBlank();
                failures.add(draw.values() + ": " + e.getMessage());
            }
        }
        assertThat(failures).hasSizeLessThanOrEqualTo(1);
    }

    /** Far outside what engines reach a concept closes or is refused in a sentence too; with jackets in the long run. */
    @Test
    void wideConceptsNeverEndInADefect() {
        WideConcepts draws = new WideConcepts(1);
        for (int i = 0; i < WIDE_COUNT; i++) {
            RandomConcepts.Draw draw = draws.next();
            if (!draw.cycle().traits().livesOnJacketHeat()) {
                draw.values().put("cooling.coolant", "none");
                assertThat(Verdict.on(draw).kind())
                        .as("%s", draw.values())
                        .isIn(Verdict.Kind.CLOSED, Verdict.Kind.REFUSED);
            }
        }
    }

    @Test
    void aReasonHasNeitherNumbersNorNames() {
        Map<String, String> values = Map.of("propellants.oxidizer", "oxygen", "propellants.fuel", "rp-1");
        RandomConcepts.Draw draw = new RandomConcepts.Draw(Cycle.all().get(0), values);
        assertThat(Verdict.reason("rp-1 is 1.5e-3 K (at \"a b\") of -20.5 MPa", draw))
                .isEqualTo("PROPELLANT is # K (at \"\") of # MPa");
    }

    /** Regression: concepts at corners of the coolant's properties that have a balance and once were said to have none. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/cycles/hard-concepts.csv", numLinesToSkip = 1)
    void hardConceptsClose(
            String name,
            String cycle,
            String oxidizer,
            String fuel,
            String mixtureRatio,
            String thrust,
            String chamberPressure,
            String areaRatio,
            String more) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("name", name);
        values.put("propellants.oxidizer", oxidizer);
        values.put("propellants.fuel", fuel);
        values.put("propellants.mixture_ratio", mixtureRatio);
        values.put("engine.thrust_vacuum", thrust);
        values.put("engine.chamber_pressure", chamberPressure);
        values.put("nozzle.area_ratio", areaRatio);
        values.put("cooling.coolant", "fuel");
        if (more != null) {
            values.put(more.substring(0, more.indexOf('=')), more.substring(more.indexOf('=') + 1));
        }
        EngineBalance balance =
                Concepts.STUDY.balance(Concepts.READER.parse("hard", "cycle = \"" + cycle + "\"\n", values));
        assertThat(balance.residualWorst()).isLessThan(1e-8);
        // where stages ask for each other in turn, each set is solved
        assertThat(balance.effort().rounds()).isLessThanOrEqualTo(24);
    }
}

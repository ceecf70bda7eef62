package dev.penstock.claims.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.claims.likelihood.Workshop;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.HomeFolder;
import dev.penstock.numerics.sampling.Workers;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Claims about engines without pumps, which balance fast. */
class JudgeTest {

    static final Workshop WORKSHOP = new Workshop(HomeFolder.find(), Concepts.FLUIDS, Concepts.STUDY);

    static final String HEAD =
            """
            name = "Test"
            cycle = "pressure-fed"
            [propellants]
            oxidizer = "oxygen"
            fuel = "methane"
            [given]
            "engine.thrust_vacuum" = "40 kN"
            """;

    private static Judgement judged(String text, Workers workers, BooleanSupplier stopped) {
        return new Judge(
                        WORKSHOP,
                        new ClaimsReader(Concepts.FLUIDS).parse("test.toml", HEAD + text, Map.of()),
                        new JudgeEffort(JudgeEffort.FEWEST, 1),
                        workers,
                        stopped,
                        (done, of, what) -> {},
                        rough -> {})
                .judge();
    }

    private static Judgement judged(String text) {
        return judged(text, Workers.HERE, () -> false);
    }

    private static final String FITTING =
            """
            [claims."engine.chamber_pressure"]
            value = "1.5 MPa"
            within = "0.2 MPa"
            [claims."nozzle.area_ratio"]
            value = 60
            within = 5
            """;

    /** Claims on inputs alone have a closed posterior: nothing else moves them. On one thread and on two it is the same. */
    @Test
    void claimsOnInputsAloneComeBackAsTheyWereStatedInTheSameBitsOnTwoThreads() {
        Workers two = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        Judgement j = judged(FITTING);
        assertThat(judged(FITTING, two, () -> false)).usingRecursiveComparison().isEqualTo(j);
        assertThat(j.verdict()).isEqualTo(Judgement.Verdict.CONSISTENT);
        Judgement.Finding pressure = j.unknowns().stream()
                .filter(f -> f.path().equals("engine.chamber_pressure"))
                .findFirst()
                .orElseThrow();
        assertThat(pressure.posterior().p50()).isCloseTo(1.5e6, within(1.5e5));
        double width = pressure.posterior().p95() - pressure.posterior().p05();
        assertThat(width).isBetween(0.5 * 0.4e6, 1.6 * 0.4e6);
        assertThat(j.kinds().get(0).probability()).isEqualTo(1);
        assertThat(j.effectiveSamples()).isGreaterThan(3);
        EngineBalance best = Concepts.STUDY.balance(
                Concepts.READER.parse("best.toml", j.bestConcept().orElseThrow(), Map.of()));
        assertThat(best.concept().chamberPressure()).isCloseTo(1.5e6, within(4e5));
    }

    @Test
    void whatIsDoneWhenItIsStoppedIsKept() {
        AtomicInteger asked = new AtomicInteger();
        Judgement j = judged(FITTING, Workers.HERE, () -> asked.incrementAndGet() > 40);
        assertThat(j.complete()).isFalse();
        assertThat(j.cautions()).anyMatch(c -> c.contains("stopped"));
    }

    @Test
    void whatCannotBeGivenIsBadInput() {
        assertThatThrownBy(
                        () -> judged(
                                """
                        "pumps.fuel.efficiency" = 0.7
                        [claims."engine.isp_vacuum"]
                        value = "330 s"
                        """))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("pumps");
    }

    /** Common practice, no source: 330 s and 9400 m/s need a start mass of 18.24 times the burn-out mass, 370 s of 13.3. */
    @Test
    void theMassRatioOfASingleStageIsThatOfItsImpulse() {
        Judgement j = judged(
                """
                "vehicle.mission.delta_v" = "9400 m/s"
                "vehicle.engines" = 1
                "vehicle.allowances.startup_time" = "0 s"
                [claims."vehicle.start_mass"]
                value = "2.5 t"
                [claims."engine.isp_vacuum"]
                value = "330 s"
                within = "0.2 s"
                [prior."vehicle.dry_mass.structural_coefficient"]
                low = 0.005
                high = 0.04
                """);
        Judgement.Finding ratio = j.figures().stream()
                .filter(f -> f.path().equals("vehicle.mass_ratio"))
                .findFirst()
                .orElseThrow();
        assertThat(ratio.posterior().p50()).isCloseTo(18.24, within(0.15));
        assertThat(Math.exp(9400 / (9.81 * 330))).isCloseTo(18.24, within(0.01));
        assertThat(Math.exp(9400 / (9.81 * 370))).isCloseTo(13.3, within(0.05));
    }
}

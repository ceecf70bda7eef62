package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Identity: an engine that differs a little differs little. {@code ContinuityRun} does the same for many random engines. */
class ContinuityTest {

    private static final double LARGEST_OVER_MEDIAN = 20;

    @ParameterizedTest
    @ValueSource(strings = {"guillemot.toml", "avocet.toml", "heron.toml"})
    void noSmallStepOfPressureIsALeapOfTheEngine(String demo) {
        assertThat(Continuity.of(Concepts.read(demo), 16).jumps())
                .isNotEmpty()
                .allSatisfy(jump ->
                        assertThat(jump.overMedian()).as(jump.toString()).isLessThan(LARGEST_OVER_MEDIAN));
    }

    /** A jacket that leapt by 5 K of wall where a cell of its throat met the onset of curvature, and by stages chosen on the way. */
    @Test
    void stagesAreTheOnlyLeapsOfAStagedEngine() {
        Map<String, String> values = Map.of(
                "name", "Random",
                "propellants.oxidizer", "oxygen",
                "propellants.fuel", "methane",
                "propellants.mixture_ratio", "3.7097",
                "engine.thrust_vacuum", "69106 N",
                "engine.chamber_pressure", "8.2330 MPa",
                "nozzle.area_ratio", "69.360",
                "preburner.fuel_rich.temperature", "851.75 K",
                "cooling.coolant", "fuel");
        Continuity.Walk walk =
                Continuity.of(Concepts.READER.parse("random", "cycle = \"staged-fuel-rich\"\n", values), 8);
        assertThat(walk.steps()).isEqualTo(8);
        assertThat(walk.switches()).isLessThanOrEqualTo(1);
        assertThat(walk.jumps()).isNotEmpty().allSatisfy(jump -> assertThat(jump.overMedian())
                .as(jump.toString())
                .isLessThan(LARGEST_OVER_MEDIAN));
    }
}

package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.fluids.FluidLibrary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The trail of each demo engine and vehicle names every input that a figure feels: where an input moved by 2 % moves a figure with an
 * elasticity above 0.05, the input is among what the figure was made from. To bound its time one in {@value #SAMPLED}
 * numeric inputs of a demo is moved, and the first differs from demo to demo. All of them, for all demos, takes some minutes:
 *
 * <pre>mvn test -Dtest=TrailPerturbationTest -Dpenstock.trail.every=1</pre>
 */
class TrailPerturbationTest {

    private static final String SAMPLED = "10";

    private static final FluidLibrary FLUIDS = FluidLibrary.open();

    @ParameterizedTest(name = "{0}")
    @MethodSource("demos")
    void noFigureMovesWithoutKnowingWhy(Path file, int number) {
        Concept concept = new ConceptReader(FLUIDS).read(file);
        int every = Integer.parseInt(System.getProperty("penstock.trail.every", SAMPLED));
        TrailPerturbation.Result result = new TrailPerturbation(FLUIDS, Path.of(".")).of(concept, every, number);
        assertThat(result.pairs()).as("pairs that were looked at").isPositive();
        assertThat(result.missing()).as(result.text()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vehicles")
    void noFigureOfAVehicleMovesWithoutKnowingWhy(Path file, int number) {
        int every = Integer.parseInt(System.getProperty("penstock.trail.every", SAMPLED));
        TrailPerturbation.Result result = new TrailPerturbation(FLUIDS, Path.of(".")).of(file, every, number);
        assertThat(result.pairs()).as("pairs that were looked at").isPositive();
        assertThat(result.missing()).as(result.text()).isEmpty();
    }

    static Stream<Arguments> demos() throws IOException {
        return files(Path.of("cycles"), 11);
    }

    static Stream<Arguments> vehicles() throws IOException {
        return files(Path.of("cycles/vehicles"), 3);
    }

    private static Stream<Arguments> files(Path folder, int least) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> demos = files.filter(file -> file.toString().endsWith(".toml"))
                    .sorted()
                    .toList();
            assertThat(demos).hasSizeGreaterThanOrEqualTo(least);
            return IntStream.range(0, demos.size()).mapToObj(i -> Arguments.of(demos.get(i), i));
        }
    }
}

package dev.penstock.vehicle.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.validation.EnginesOfMassFit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mass estimates against the built engines of the validation table, where each row has its source. */
class EngineMassTest {

    private record Built(String name, double pressure, double areaRatio, double thrust, boolean hydrogen, double mass) {

        double relation() {
            return EngineMassRelation.mass(thrust, areaRatio);
        }

        double estimate() {
            return EngineMassEstimate.mass(thrust, areaRatio, pressure, hydrogen);
        }
    }

    /** Engines that the estimate is fitted to; the columns used come before any quoted text. */
    private static List<Built> built() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/validation/engines.csv")).stream()
                .skip(1)
                .map(line -> line.split(",", 13))
                .filter(c -> EnginesOfMassFit.NAMES.contains(c[0]))
                .filter(c -> List.of(5, 6, 7, 11).stream().noneMatch(i -> c[i].isBlank()))
                .map(c -> new Built(
                        c[0],
                        Double.parseDouble(c[5]) * 1e6,
                        Double.parseDouble(c[6]),
                        Double.parseDouble(c[7]) * 1e3,
                        c[3].equals("LH2"),
                        Double.parseDouble(c[11])))
                .toList();
    }

    @Test
    void allThatItIsFittedToAreInTheTable() throws IOException {
        assertThat(built()).hasSize(10);
    }

    @Test
    void thePublishedRelationIsLowForAllOfThem() throws IOException {
        assertThat(built()).allSatisfy(engine -> assertThat(engine.relation() / engine.mass())
                .as(engine.name())
                .isBetween(0.65, 0.99));
    }

    @Test
    void theCorrectedEstimateScattersByAboutATenth() throws IOException {
        // fit to these very engines: shows the size of the scatter, not independent evidence
        List<Double> ratios = built().stream().map(e -> e.estimate() / e.mass()).toList();
        double mean = ratios.stream().mapToDouble(r -> r).average().orElseThrow();
        double variance =
                ratios.stream().mapToDouble(r -> (r - mean) * (r - mean)).sum() / (ratios.size() - 1);
        assertThat(mean).isCloseTo(1.02, within(0.02));
        assertThat(Math.sqrt(variance)).isCloseTo(0.11, within(0.02));
        assertThat(ratios).allMatch(r -> r > 0.8 && r < 1.3);
    }
}

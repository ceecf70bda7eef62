package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.reading.Technology;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The levels of technology against the table that they rest on, whose rows name their sources. */
class FlownTechnologyTest {

    /** Walls that the levels tell of are those of rows of the table. */
    @ParameterizedTest
    @EnumSource(
            value = Technology.class,
            names = {"UNSTATED"},
            mode = EnumSource.Mode.EXCLUDE)
    void everyLevelHasRows(Technology level) {
        assertThat(FlownTechnology.all())
                .filteredOn(row -> row.level().filter(level::equals).isPresent())
                .hasSizeGreaterThan(3);
    }

    /** 0.33 mm (RL10A-3-3A, TM-107318) and 0.46 mm (F-1, SP-8087 table III) bracket the tube wall that is assumed. */
    @Test
    void theTubeWallLiesBetweenThoseFlown() {
        Concept tubes = Concepts.READER.read(Path.of("cycles/heron.toml"), Map.of("technology", "brazed-tubes"));
        double wall = tubes.cooling().get(0).jacket().wall().thickness().orElseThrow();
        assertThat(wall).isBetween(flownWall("RL10A-3-3A"), flownWall("F-1"));
    }

    private static double flownWall(String engine) {
        String text = FlownTechnology.all().stream()
                .filter(row -> row.engine().equals(engine))
                .findFirst()
                .orElseThrow()
                .text("wall_material");
        return Double.parseDouble(text.replaceAll(".*, ([0-9.]+) mm", "$1")) / 1000;
    }

    /** Tubes flew to 8.3 MPa, copper with hydrogen to 22, copper under a film to 27: the words of the levels' reasons. */
    @Test
    void pressuresFlownRiseWithTheLevel() {
        assertThat(highest(Technology.BRAZED_TUBES)).isEqualTo(8.274);
        assertThat(highest(Technology.COPPER_CHANNELS)).isEqualTo(21.9);
        assertThat(highest(Technology.COPPER_AND_FILM)).isEqualTo(26.7);
    }

    private static double highest(Technology level) {
        return FlownTechnology.all().stream()
                .filter(row -> row.level().filter(level::equals).isPresent())
                .mapToDouble(row -> row.number("chamber_pressure_MPa").orElseThrow())
                .max()
                .orElseThrow();
    }
}

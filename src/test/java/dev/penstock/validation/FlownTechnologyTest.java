package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.reading.Technology;
import dev.penstock.input.InputValue;
import dev.penstock.turbomachinery.turbine.TurbineInputs;
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
        assertThat(wall(ofTubes("heron"))).isBetween(flownWall("RL10A-3-3A"), flownWall("F-1"));
    }

    /** The wall is that of the row whose fuel soots, as the engine's does, or of the one whose fuel does not. */
    @Test
    void theTubeWallIsThatFlownWithSuchAFuel() {
        assertThat(wall(ofTubes("heron"))).isCloseTo(flownWall("F-1"), within(1e-9));
        assertThat(wall(ofTubes("guillemot"))).isCloseTo(flownWall("RL10A-3-3A"), within(1e-9));
    }

    /** The limit of fuel-rich gas is the hottest of the table, rounded up to five kelvin. */
    @Test
    void turbinesStandTheHottestGasThatFlewWithTubes() {
        double hottest = FlownTechnology.all().stream()
                .filter(row ->
                        row.level().filter(Technology.BRAZED_TUBES::equals).isPresent())
                .flatMapToDouble(row -> row.number("turbine_inlet_temperature_K").stream())
                .max()
                .orElseThrow();
        InputValue limit = ofTubes("heron").document().inputs().stream()
                .filter(input -> input.key().endsWith("." + TurbineInputs.INLET_TEMPERATURE_LIMIT.key()))
                .findFirst()
                .orElseThrow();
        assertThat(limit.number().orElseThrow()).isBetween(hottest, hottest + 5);
    }

    private static Concept ofTubes(String demo) {
        return Concepts.READER.read(Path.of("cycles/" + demo + ".toml"), Map.of("technology", "brazed-tubes"));
    }

    private static double wall(Concept concept) {
        return concept.cooling().get(0).jacket().wall().thickness().orElseThrow();
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

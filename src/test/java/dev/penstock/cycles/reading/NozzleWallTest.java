package dev.penstock.cycles.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.contour.EngineLength;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.turbomachinery.mass.MassPart;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The wall that no jacket cools: what can be said of it, and what cannot. */
class NozzleWallTest {

    private static EngineBalance balance(String demo, Map<String, String> changes) {
        return Concepts.STUDY.balance(Concepts.READER.read(Path.of("cycles", demo), changes));
    }

    private static double mass(EngineBalance balance, MassPart part) {
        return balance.mass().items().stream()
                .filter(i -> i.part() == part)
                .mapToDouble(i -> i.mass().mode())
                .sum();
    }

    /** Each names its key, its value and what is allowed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "engine.chambers | 0 | 1",
                "exhaust.into_area_ratio | 0.5 | 1",
                "cooling.extension_parting_area_ratio | 8 | write nozzle.inner_area_ratio, with nozzle.compensation"
            })
    void whatCannotBeIsRefusedInOneSentence(String key, String value, String allowed) {
        assertThatThrownBy(() -> Concepts.READER.read(
                        Path.of("cycles/heron.toml"), Map.of(key, value, "cooling.end_area_ratio", "12")))
                .isInstanceOf(InvalidInput.class)
                .satisfies(e -> {
                    assertThat(((InvalidInput) e).problems()).hasSize(1);
                    assertThat(e.getMessage()).contains(key, value, allowed);
                });
    }

    @Test
    void anExtensionThatMovesBeginsWhereTheJacketEndsOrBehind() {
        Map<String, String> parted =
                Map.of("nozzle.compensation", "stowed", "nozzle.inner_area_ratio", "8", "nozzle.area_ratio", "20");
        assertThatThrownBy(() -> Concepts.READER.read(Path.of("cycles/heron.toml"), parted))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("cooling.end_area_ratio")
                .hasMessageContaining("the nozzle parts at area ratio 8.0");
        Map<String, String> overlapping = new HashMap<>(parted);
        overlapping.put("cooling.end_area_ratio", "12");
        assertThatThrownBy(() -> Concepts.READER.read(Path.of("cycles/heron.toml"), overlapping))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("the extension begins before the jacket ends: write at most 8.0");
    }

    /** Geometry: stowed, an engine is as long as its longer part; thrust does not change, mass by a quarter of what moves. */
    @Test
    void anExtendibleNozzleIsStowedOverTheFixedOne() {
        EngineBalance whole = balance("avocet.toml", Map.of("cooling.end_area_ratio", "40"));
        EngineBalance parted = balance(
                "avocet.toml",
                Map.of(
                        "cooling.end_area_ratio",
                        "40",
                        "nozzle.compensation",
                        "stowed",
                        "nozzle.inner_area_ratio",
                        "40"));
        assertThat(whole.concept().chamber().nozzle().compensation().parting()).isEmpty();
        OptionalDouble stowed = EngineLength.stowed(
                parted.chamber().contour(),
                parted.concept().chamber().nozzle().compensation().parting());
        double length = EngineLength.extended(parted.chamber().contour());
        assertThat(stowed.orElseThrow()).isBetween(0.5 * length, 0.9 * length);
        assertThat(parted.thrustAt(30e3)).isCloseTo(whole.thrustAt(30e3), within(1e-3));
        assertThat(parted.engine().vacuumIsp()).isCloseTo(whole.engine().vacuumIsp(), within(1e-9));
        assertThat(mass(parted, MassPart.EXTENSION) / mass(whole, MassPart.EXTENSION))
                .isBetween(1.2, 1.2501);
    }

    /** Areal masses of the walls: an ablative liner has 28 kg/m² where a sheet has 8. */
    @Test
    void aChamberWithoutAJacketSaysWhatItsWallIs() {
        EngineBalance sheet = balance("dunlin.toml", Map.of("cooling.coolant", "none"));
        EngineBalance liner =
                balance("dunlin.toml", Map.of("cooling.coolant", "none", "cooling.extension", "ablative"));
        assertThat(sheet.cooling()).isEmpty();
        assertThat(mass(liner, MassPart.EXTENSION) / mass(sheet, MassPart.EXTENSION))
                .isCloseTo(3.5, within(1e-9));
        assertThat(mass(liner, MassPart.CHAMBER)).isGreaterThan(1.5 * mass(sheet, MassPart.CHAMBER));
    }
}

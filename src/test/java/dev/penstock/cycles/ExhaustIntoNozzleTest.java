package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.reports.engine.EngineCharts;
import dev.penstock.turbomachinery.mass.MassPart;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Turbine gas led into the nozzle, and what follows the jacket. Expected values are conservation, limits and identities. */
class ExhaustIntoNozzleTest {

    private static final Path HERON = Path.of("cycles/heron.toml");
    private static final Map<String, String> SHORT_JACKET = Map.of("cooling.end_area_ratio", "8");

    private static EngineBalance own;
    private static EngineBalance led;

    private static Concept heron(String... keysAndValues) {
        Map<String, String> changes = new LinkedHashMap<>(SHORT_JACKET);
        for (int i = 0; i < keysAndValues.length; i += 2) {
            changes.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return Concepts.READER.read(HERON, changes);
    }

    @BeforeAll
    static void balance() {
        own = Concepts.STUDY.balance(heron());
        led = Concepts.STUDY.balance(heron("exhaust.into_area_ratio", "8", "cooling.extension", "film-cooled"));
    }

    @Test
    void theEngineClosesAndTheGasIsCountedOnce() {
        assertThat(led.residualWorst()).isLessThan(1e-8);
        ExhaustJet jet = led.exhausts().get(0);
        assertThat(led.engine().vacuumThrust())
                .isCloseTo(led.chamber().vacuumThrust() + jet.vacuumThrust(), within(1e-3));
        assertThat(led.engine().massFlow()).isCloseTo(led.chamber().massFlow() + jet.massFlow(), within(1e-6));
        assertThat(new EngineCharts(led, "").flow().svg()).contains("turbine exhaust into the nozzle");
    }

    /** The gas leaves at the main nozzle's exit pressure: a nozzle of its own with the area ratio for that gives the same. */
    @Test
    void gasInTheNozzleGivesWhatANozzleForTheSameExitPressureDoes() {
        ExhaustJet jet = led.exhausts().get(0);
        String ratio = Double.toString(jet.exitArea() / jet.throatArea());
        ExhaustJet alone = Concepts.STUDY
                .balance(heron("exhaust.area_ratio", ratio))
                .exhausts()
                .get(0);
        double into = jet.vacuumThrust() / jet.massFlow();
        assertThat(alone.vacuumThrust() / alone.massFlow()).isCloseTo(into, within(2e-3 * into));
    }

    /** The farther the main nozzle expands, the more the gas in it gives. */
    @Test
    void aLargerNozzleGivesTheGasMore() {
        ExhaustJet larger = Concepts.STUDY
                .balance(heron("exhaust.into_area_ratio", "8", "nozzle.area_ratio", "40"))
                .exhausts()
                .get(0);
        ExhaustJet jet = led.exhausts().get(0);
        assertThat(larger.vacuumThrust() / larger.massFlow()).isGreaterThan(1.05 * jet.vacuumThrust() / jet.massFlow());
    }

    /** The film cannot be colder than the gas that it is made of makes it, nor hotter than the wall without it. */
    @Test
    void theFilmCoolsTheExtensionBetweenItsOwnAndTheBareTemperature() {
        double bare = extension(own).orElseThrow().value();
        double filmed = extension(led).orElseThrow().value();
        assertThat(filmed).isLessThan(bare - 100);
        double gas = led.turbines().get(0).outlet().temperature();
        assertThat(filmed).isGreaterThan(0.5 * gas);
        assertThat(led.withinLimits()).isEqualTo(led.limits().stream().allMatch(LimitCheck::met));
        assertThat(extension(led).orElseThrow().met()).isTrue();
    }

    @Test
    void anAblativeExtensionHasNoTemperatureToKeepAndWeighsMore() {
        EngineBalance ablative = Concepts.STUDY.balance(heron("cooling.extension", "ablative"));
        assertThat(extension(ablative)).isEmpty();
        // 28 kg/m² against 8 of a sheet, which below 0.5 m of exit radius is thinner in proportion
        double sheet = 8 * Math.min(1, 0.5 * own.engine().exitDiameter() / 0.5);
        assertThat(mass(ablative) / mass(own)).isCloseTo(28 / sheet, within(1e-6));
        assertThat(mass(led) / mass(own)).isBetween(1.1, 1.4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.9", "0", "-8"})
    void gasUpstreamOfTheThroatIsRefused(String place) {
        assertThatThrownBy(() -> heron("exhaust.into_area_ratio", place))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("exhaust.into_area_ratio is " + place)
                .hasMessageContaining("allowed is 1 to 10000");
    }

    @Test
    void aFilmThatEntersBehindTheEndOfTheJacketIsRefused() {
        assertThatThrownBy(() -> heron("exhaust.into_area_ratio", "12", "cooling.extension", "film-cooled"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("cooling.extension")
                .hasMessageContaining("write at most 8.0 there");
    }

    @Test
    void aFilmWithoutGasIsRefused() {
        assertThatThrownBy(() -> heron("cooling.extension", "film-cooled"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("write exhaust.into_area_ratio, the area ratio at which it enters");
        assertThatThrownBy(() ->
                        Concepts.READER.read(Path.of("cycles/gannet.toml"), Map.of("cooling.extension", "film-cooled")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("this cycle dumps none: write radiating or ablative");
    }

    @Test
    void twoWaysOutAndTwoKindsOfWallAreRefused() {
        assertThatThrownBy(() -> heron("exhaust.into_area_ratio", "8", "exhaust.area_ratio", "4"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("write one of them");
        assertThatThrownBy(() -> heron("cooling.extension", "ablative", "cooling.extension_material", "inconel-625"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("an ablative extension has no sheet");
    }

    /** At the throat the nozzle has 4.6 MPa, the turbine's gas less than half. */
    @Test
    void gasThatIsTooWeakToEnterIsRefusedWithBothPressures() {
        assertThatThrownBy(() -> Concepts.STUDY.balance(heron("exhaust.into_area_ratio", "1")))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("does not enter at sonic speed where the nozzle has");
    }

    @Test
    void gasThatIsToEnterBehindTheExitIsRefusedByItsKey() {
        assertThatThrownBy(() -> Concepts.STUDY.balance(heron("exhaust.into_area_ratio", "20")))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("exhaust.into_area_ratio is 20.00")
                .hasMessageContaining("allowed is 1 to 16.00");
    }

    private static Optional<LimitCheck> extension(EngineBalance engine) {
        return engine.limits().stream()
                .filter(limit -> limit.kind() == JacketLimit.EXTENSION_TEMPERATURE)
                .findFirst();
    }

    private static double mass(EngineBalance engine) {
        return engine.mass().items().stream()
                .filter(item -> item.part() == MassPart.EXTENSION)
                .mapToDouble(item -> item.mass().mode())
                .sum();
    }
}

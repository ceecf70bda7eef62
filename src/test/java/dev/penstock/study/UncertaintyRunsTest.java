package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class UncertaintyRunsTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();
    private static final EngineRuns RUNS = new EngineRuns(Path.of("").toAbsolutePath(), FLUIDS);
    private static final String TEXT =
            """
            name = "Sampled"
            cycle = "pressure-fed"
            [propellants]
            oxidizer = "nitrogen-tetroxide"
            fuel = "mmh"
            mixture_ratio = 1.8
            [engine]
            thrust_vacuum = "30 kN"
            chamber_pressure = "1 MPa"
            [nozzle]
            area_ratio = 50
            [lines]
            fuel_valve_loss = 0.10
            [efficiencies]
            energy_release = 0.96
            [uncertainty]
            "efficiencies.energy_release" = [0.94, 0.96, 0.97]
            """;

    private static UncertaintyResult run(int samples) {
        Concept concept = new ConceptReader(FLUIDS).parse("sampled", TEXT, Map.of());
        return new UncertaintyRuns(RUNS).run(concept, samples, (d, n, x) -> {});
    }

    /**
     * Identity: impulse goes with the energy-release efficiency, other losses held, so its bar is the ratio of the
     * quantiles; a stated input without a spread is not varied.
     */
    @Test
    void aStatedSpreadMovesTheImpulseInProportion() {
        UncertaintyResult result = run(12);
        assertThat(result.closed()).isEqualTo(12);
        assertThat(result.inputs())
                .containsKey("efficiencies.energy_release")
                .doesNotContainKey("lines.fuel_valve_loss");
        UncertaintyResult.Tornado isp = result.tornados().stream()
                .filter(t -> t.measure().key().equals("isp_vacuum_s"))
                .findFirst()
                .orElseThrow();
        UncertaintyResult.Bar bar = isp.bars().get(0);
        assertThat(bar.input()).isEqualTo("efficiencies.energy_release");
        double ratio = Double.parseDouble(bar.high()) / Double.parseDouble(bar.low());
        assertThat(bar.atHigh() / bar.atLow()).isCloseTo(ratio, within(2e-3));
    }

    @Test
    void percentilesRiseAndTheLikelyValueLiesBetween() {
        UncertaintyResult result = run(24);
        result.distributions().forEach(d -> {
            assertThat(d.percentile5()).isLessThanOrEqualTo(d.median());
            assertThat(d.median()).isLessThanOrEqualTo(d.percentile95());
        });
        UncertaintyResult.Distribution isp = result.distributions().get(0);
        assertThat(isp.likely()).isBetween(isp.percentile5(), isp.percentile95());
        // the samples are the same at every run; warm solvers leave the last digits open
        assertThat(run(24).distributions().get(0).median()).isCloseTo(isp.median(), within(1e-9 * isp.median()));
    }

    /** Identity: a reach that the tank's pressure ends lies where that pressure's spread does. */
    @Test
    void theLikelyReachLiesInsideItsOwnBand() {
        Concept concept = new ConceptReader(FLUIDS).parse("sampled", TEXT, Map.of());
        UncertaintyResult result = new UncertaintyRuns(RUNS).runReach(concept, 24, (d, n, x) -> {});
        UncertaintyResult.Distribution pressure = result.distributions().stream()
                .filter(d -> d.measure().key().equals("chamber_pressure_Pa"))
                .findFirst()
                .orElseThrow();
        assertThat(result.closed()).isEqualTo(24);
        assertThat(pressure.likely()).isBetween(pressure.percentile5(), pressure.percentile95());
        assertThat(pressure.aside()).isEmpty();
        assertThat(pressure.percentile95()).isGreaterThan(1.2 * pressure.percentile5());
    }

    @Test
    void aSpreadOfAWordOrAWholeNumberIsRefusedOnce() {
        for (String key : List.of("propellants.fuel", "cooling.cells")) {
            String text = TEXT + "\"" + key + "\" = [10, 20, 30]\n[cooling]\ncoolant = \"fuel\"\n";
            ConceptReader reader = new ConceptReader(FLUIDS);
            InvalidInput e = catchThrowableOfType(InvalidInput.class, () -> reader.parse("sampled", text, Map.of()));
            assertThat(e.problems()).hasSize(1);
            assertThat(e.problems().get(0).key()).isEqualTo("uncertainty.\"" + key + "\"");
        }
    }
}

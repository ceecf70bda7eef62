package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.sheet.EngineBalance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Properties that hold whatever the numbers are: small steps give small changes, more nozzle and better pumps never cost
 * impulse, and an engine scaled at fixed pressure keeps it but for the losses that depend on size. Most engines are uncooled:
 * the sizing of cooling channels can settle on either of two fixed points, so that an answer may jump between two close
 * chamber pressures; cooled engines belong here once it has one.
 */
class BalancePropertiesTest {

    private static final double STEP = 1.001;
    private static final int STEPS = 8;

    /** Impulse hardly depends on pressure; flow at fixed thrust follows impulse. */
    @ParameterizedTest
    @CsvSource({
        "gas-generator, 3.1",
        "gas-generator, 9.7",
        "staged-oxygen-rich, 12.3",
        "tap-off, 6.4",
        "electric-pump, 4.9",
        "pressure-fed, 0.8"
    })
    void aSmallStepInChamberPressureIsASmallChange(String cycle, double megapascal) {
        List<EngineBalance> engines = IntStream.range(0, STEPS)
                .mapToObj(i -> balance(cycle, "engine.chamber_pressure", text(megapascal * Math.pow(STEP, i)) + " MPa"))
                .toList();
        for (int i = 1; i < STEPS; i++) {
            EngineBalance one = engines.get(i - 1);
            EngineBalance next = engines.get(i);
            closeTo(next.engine().vacuumIsp(), one.engine().vacuumIsp(), 2e-4);
            closeTo(next.engine().massFlow(), one.engine().massFlow(), 2e-4);
            closeTo(next.engine().throatDiameter(), one.engine().throatDiameter(), 1e-3);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"pressure-fed", "gas-generator"})
    void aLargerAreaRatioNeverLowersTheVacuumImpulseOfTheChamber(String cycle) {
        double before = 0;
        for (double areaRatio : new double[] {4, 6, 10, 18, 30, 50, 90}) {
            double now = balance(cycle, "nozzle.area_ratio", text(areaRatio))
                    .chamber()
                    .vacuumSpecificImpulse();
            assertThat(now).as("area ratio %s", areaRatio).isGreaterThan(before);
            before = now;
        }
    }

    /** In engines that live on their jacket's heat a larger nozzle also changes what the coolant brings to the turbine. */
    @ParameterizedTest
    @CsvSource({"avocet.toml, 120", "curlew.toml, 100", "heron.toml, 16"})
    void aLargerAreaRatioNeverLowersTheVacuumImpulseOfACooledEngine(String file, double smallest) throws IOException {
        String text = Files.readString(Path.of("cycles", file));
        double before = 0;
        for (double factor : new double[] {1, 1.1, 1.2, 1.35, 1.5}) {
            String areaRatio = text(factor * smallest);
            double now = Concepts.STUDY
                    .balance(Concepts.READER.parse(file, text, Map.of("nozzle.area_ratio", areaRatio)))
                    .engine()
                    .vacuumIsp();
            assertThat(now).as("area ratio %s", areaRatio).isGreaterThan(before);
            before = now;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fuel", "oxidizer"})
    void aBetterPumpNeverLowersTheImpulseOfAGasGeneratorEngine(String pump) {
        double before = 0;
        for (double efficiency : new double[] {0.45, 0.55, 0.65, 0.75, 0.85}) {
            double now = balance("gas-generator", "pumps." + pump + ".efficiency", text(efficiency))
                    .engine()
                    .vacuumIsp();
            assertThat(now).as("efficiency %s", efficiency).isGreaterThan(before);
            before = now;
        }
    }

    /**
     * What is left when the losses are put back does not know how large the engine is; the losses shrink with size. Without
     * pumps: those of a larger engine are better, which moves the gas they need and the heat they give to the propellants.
     */
    @Test
    void scaleMovesImpulseByItsLossesAlone() {
        EngineBalance small = balance("pressure-fed", "engine.thrust_vacuum", "20 kN");
        EngineBalance large = balance("pressure-fed", "engine.thrust_vacuum", "320 kN");
        closeTo(withoutLosses(large), withoutLosses(small), 1e-5);
        assertThat(large.chamber().vacuumSpecificImpulse())
                .isBetween(
                        small.chamber().vacuumSpecificImpulse(),
                        1.02 * small.chamber().vacuumSpecificImpulse());
        closeTo(large.engine().throatDiameter() / small.engine().throatDiameter(), 4, 0.02);
    }

    private static double withoutLosses(EngineBalance engine) {
        double factor = engine.chamber().losses().stream()
                .mapToDouble(loss -> loss.factor())
                .reduce(1, (a, b) -> a * b);
        return engine.chamber().vacuumSpecificImpulse() / factor;
    }

    private static EngineBalance balance(String cycle, String key, String value) {
        Cycle kind = Cycle.all().stream()
                .filter(c -> c.id().equals(cycle))
                .findFirst()
                .orElseThrow();
        return Concepts.STUDY.balance(Concepts.example(kind, key, value));
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.9g", value);
    }

    private static void closeTo(double actual, double expected, double relative) {
        assertThat(actual).isCloseTo(expected, within(relative * Math.abs(expected)));
    }
}

package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which of some engines is marked as the best by a figure. */
class BestOfTest {

    private static final EngineRuns RUNS = new EngineRuns(HomeFolder.find(), FluidLibrary.open());
    private static final EngineStudy STUDY = RUNS.study();
    private static final EngineBalance AVOCET = demo("avocet", Map.of());
    private static final EngineBalance HERON = demo("heron", Map.of());

    private static EngineBalance demo(String name, Map<String, String> changes) {
        return STUDY.balance(RUNS.read(Path.of("cycles", name + ".toml"), changes));
    }

    private static Measure measure(String path) {
        return Measure.ALL.stream()
                .filter(m -> m.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    /** Avocet's flow separates at sea level; with 284 s it would be ahead of Heron's 267 s. */
    @Test
    void aSeparatedFlowIsNeverTheBest() {
        Measure seaLevel = measure("engine.isp_sea_level_s");
        List<EngineBalance> both = List.of(AVOCET, HERON);
        assertThat(seaLevel.separated(AVOCET)).isTrue();
        assertThat(seaLevel.of(AVOCET).orElseThrow())
                .isGreaterThan(seaLevel.of(HERON).orElseThrow());
        assertThat(seaLevel.best(AVOCET, both)).isFalse();
        assertThat(seaLevel.best(HERON, both)).isTrue();
    }

    @Test
    void nothingThatGrowsWithSizeMarksTheSmallerEngine() {
        List<EngineBalance> both = List.of(AVOCET, HERON);
        assertThat(measure("engine.mass_kg").best(AVOCET, both)).isFalse();
        assertThat(measure("engine.isp_vacuum_s").best(AVOCET, both)).isTrue();
        assertThat(measure("engine.isp_vacuum_s").best(AVOCET, List.of(AVOCET))).isFalse();
    }

    @Test
    void amongEnginesOfOneSizeTheLighterIsMarked() {
        EngineBalance lower = demo("heron", Map.of("nozzle.area_ratio", "12"));
        List<EngineBalance> both = List.of(HERON, lower);
        Measure mass = measure("engine.mass_kg");
        assertThat(mass.best(HERON, both)).isNotEqualTo(mass.best(lower, both));
    }
}

package dev.penstock.study.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.input.InputValue;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.reading.EngineChanges;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StudyCaseTest {

    private static final EngineRuns RUNS = new EngineRuns(HomeFolder.find(), FluidLibrary.open());
    private static final Path DUNLIN = Path.of("cycles/dunlin.toml");
    private static final Path SKERRY = Path.of("cycles/vehicles/skerry.toml");

    private static StudyCase open(Path file) {
        return StudyCase.open(RUNS, file, Map.of());
    }

    @Test
    void aPointHasTheBitsOfItsOwnBalance() {
        StudyCase dunlin = open(DUNLIN);
        StudySpace space = dunlin.paths().space(List.of("propellants.mixture_ratio=1.5..1.8"));
        StudyFigure impulse = dunlin.paths().figure("--figures", "isp_vacuum_s");
        StudyPoint point = dunlin.evaluate(space, space.values(new double[] {1}), List.of(impulse));
        double alone = RUNS.study()
                .balance(RUNS.read(DUNLIN, Map.of("propellants.mixture_ratio", "1.8")))
                .engine()
                .vacuumIsp();
        assertThat(point.figures()[0]).isEqualTo(alone);
        assertThat(space.document(point.values())).containsEntry("propellants.mixture_ratio", 1.8);
    }

    @Test
    void aVehicleIsThatOfItsFileAndTakesInputsOfItsEngines() {
        StudyCase skerry = open(SKERRY);
        double plain =
                new VehicleRuns(RUNS).size(SKERRY, Map.of(), Progress.NONE).startMass();
        assertThat(skerry.answer(Map.of(), true).vehicle().orElseThrow().startMass())
                .isEqualTo(plain);
        Map<String, String> change = Map.of("engines.heron.propellants.mixture_ratio", "2.2");
        double changed = skerry.answer(change, true).vehicle().orElseThrow().startMass();
        assertThat(changed).isNotEqualTo(plain);
        assertThat(new VehicleRuns(RUNS).size(SKERRY, change, Progress.NONE).startMass())
                .isEqualTo(changed);
    }

    @Test
    void anUncertainInputVariesOverItsOwnSpread() {
        StudyCase heron = open(Path.of("cycles/heron.toml"));
        StudySpace all = heron.paths().space(List.of("engine.chamber_pressure=6..9MPa", "spreads"));
        Map<String, InputValue> known = heron.uncertain();
        assertThat(all.variables().stream().skip(1).map(Variable::path)).containsExactlyElementsOf(known.keySet());
        String path = known.keySet().iterator().next();
        Variable one =
                heron.paths().space(List.of(path + "=spread")).variables().get(0);
        for (double share : new double[] {0, 0.3, 1}) {
            assertThat(one.at(share)).isEqualTo(known.get(path).quantile(share));
            assertThat(one.share(one.at(share))).isCloseTo(share, within(1e-9));
        }
        assertThatThrownBy(() -> heron.paths().space(List.of("engine.chamber_pressure=spread")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("engine.chamber_pressure=spread")
                .hasMessageContaining("counts as exact");
    }

    @Test
    void theSpreadsOfAVehicleAreThoseOfItsEnginesAndItsOwn() {
        StudyCase skerry = open(SKERRY);
        List<String> own = skerry.uncertain().keySet().stream()
                .filter(path ->
                        skerry.engineNames().stream().noneMatch(name -> path.startsWith(EngineChanges.at(name))))
                .toList();
        assertThat(own)
                .hasSizeLessThan(skerry.uncertain().size())
                .contains("mission.drag_factor", "stage[0].dry_mass.factor", "stage[0].allowances.residual")
                .as("stated in the file")
                .doesNotContain("stage[1].allowances.residual")
                .allMatch(path -> path.startsWith("mission.") || path.startsWith("stage["));
    }

    @Test
    void anotherCycleLeavesWhatBelongsToTheFilesOwn() {
        StudyCase heron = open(Path.of("cycles/heron.toml"));
        StudySpace space = heron.paths().space(List.of("cycle=gas-generator,electric-pump"));
        assertThat(space.variables().get(0).named()).isTrue();
        assertThat(heron.answer(Map.of("cycle", "electric-pump"), false)
                        .engine()
                        .concept()
                        .cycle()
                        .id())
                .isEqualTo("electric-pump");
    }

    @Test
    void wholeNumbersHaveEqualPartsAndEveryNameIsMet() {
        Variable whole = open(SKERRY)
                .paths()
                .space(List.of("stage[0].engines_out=0..2"))
                .variables()
                .get(0);
        assertThat(whole.count()).isEqualTo(3);
        assertThat(List.of(whole.at(0), whole.at(0.34), whole.at(0.99), whole.at(1)))
                .containsExactly(0.0, 1.0, 2.0, 2.0);
        assertThat(whole.at(whole.share(2))).isEqualTo(2);
        Variable fuel = open(DUNLIN)
                .paths()
                .space(List.of("engine.chamber_pressure=1 MPa,2 MPa"))
                .variables()
                .get(0);
        assertThat(fuel.document(1)).isEqualTo(2e6);
    }

    @Test
    void aPathThatNamesNothingIsToldWithNearOnes() {
        CasePaths paths = open(DUNLIN).paths();
        assertThatThrownBy(() -> paths.space(List.of("engine.chamber_presure=1..2MPa")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("engine.chamber_presure")
                .hasMessageContaining("engine.chamber_pressure");
        assertThatThrownBy(() -> paths.figure("--minimise", "engine.isp_vacum"))
                .hasMessageContaining("engine.isp_vacuum_s");
        assertThatThrownBy(() -> paths.figure("--minimise", "engine.cycle")).hasMessageContaining("text");
        assertThatThrownBy(() -> open(SKERRY).paths().space(List.of("engines.heran.engine.chamber_pressure=8..9MPa")))
                .hasMessageContaining("heron");
    }

    @Test
    void aRangeThatCannotBeIsRefused() {
        CasePaths paths = open(DUNLIN).paths();
        assertThatThrownBy(() -> paths.space(List.of())).hasMessageContaining("--vary");
        assertThatThrownBy(() -> paths.space(List.of("engine.chamber_pressure=2..1MPa")))
                .hasMessageContaining("upside down");
        assertThatThrownBy(() -> paths.space(List.of("engine.chamber_pressure=1..2")))
                .hasMessageContaining("pressure such as");
        assertThatThrownBy(() -> paths.space(List.of("engine.chamber_pressure=1..900GPa")))
                .hasMessageContaining("allowed is");
        assertThatThrownBy(() ->
                        paths.space(List.of("engine.chamber_pressure=1..2MPa", "engine.chamber_pressure=1..3MPa")))
                .hasMessageContaining("once");
    }

    @Test
    void constraintsAreReadWithAndWithoutUnits() {
        CasePaths paths = open(DUNLIN).paths();
        Constraint constraint =
                paths.constraints(List.of("engine.thrust_vacuum <= 5 kN")).get(0);
        assertThat(constraint.bound()).isEqualTo(5000);
        assertThat(constraint.kept(5000)).isTrue();
        assertThat(constraint.kept(5001)).isFalse();
        assertThat(constraint.kept(Double.NaN)).isFalse();
        Constraint limits = paths.constraints(List.of("within_limits")).get(0);
        assertThat(limits.text()).isEqualTo("within_limits");
        CaseAnswer answer = open(DUNLIN).answer(Map.of(), false);
        assertThat(limits.kept(answer.leastSlack())).isEqualTo(answer.withinLimits());
        assertThat(limits.kept(-1e-9)).isFalse();
        assertThatThrownBy(() -> paths.constraints(List.of("isp_vacuum_s<=300", "isp_vacuum_s>=301")))
                .hasMessageContaining("no value keeps both");
        assertThatThrownBy(() -> paths.constraints(List.of("isp_vacuum_s=300"))).hasMessageContaining("FIGURE<=VALUE");
        assertThatThrownBy(() -> paths.constraints(List.of("isp_vacuum_s<=300 kg")))
                .hasMessageContaining("number in s");
    }

    @Test
    void aFailureIsAResult() {
        StudyCase dunlin = open(DUNLIN);
        StudySpace space = dunlin.paths().space(List.of("propellants.mixture_ratio=1.5..50"));
        StudyPoint point =
                dunlin.evaluate(space, new double[] {49}, dunlin.paths().figures("--figures", List.of("isp_vacuum_s")));
        assertThat(point.closes()).isFalse();
        assertThat(point.figures()[0]).isNaN();
        assertThat(point.failure().orElseThrow().kind()).matches("[a-z-]+");
    }

    @Test
    void theFilesOwnValuesAreFound() {
        StudyCase skerry = open(SKERRY);
        StudySpace space = skerry.paths()
                .space(List.of(
                        "stage[0].thrust_to_weight=1.2..1.5",
                        "engines.heron.engine.chamber_pressure=6..10MPa",
                        "stage[0].engines_out=0..2",
                        "engines.heron.cooling.coolant=fuel,oxidizer"));
        assertThat(skerry.own(space).orElseThrow()).containsExactly(1.35, 8e6, 1, 0);
        assertThat(skerry.own(skerry.paths().space(List.of("engines.heron.engine.chamber_pressure=9..10MPa"))))
                .isEmpty();
    }
}

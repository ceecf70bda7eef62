package dev.penstock.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.Designs;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.search.FeasibilityMap;
import dev.penstock.cooling.search.FeasibilityStudy;
import dev.penstock.cooling.search.JacketSearch;
import dev.penstock.cooling.search.SearchProgress;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Searches over jackets, and the table behind the march. */
class JacketStudiesTest {

    private static final JacketSolver SOLVER = Cases.solver();

    /** Independent: the march on the table against the march on the full equations, 0.1 %. */
    @Test
    void tablesMoveTheAnswerByLessThanATenthOfAPercent() {
        JacketSolver full = JacketSolver.onFullModels(Cases.WALLS);
        for (Cases.Engine engine : List.of(Cases.methane(), Cases.hydrogen())) {
            JacketCase question = SOLVER.sized(engine.fuelCooled(
                    1.8 * engine.chamberPressure(), Jackets.automatic().withCells(40)));
            JacketResult table = SOLVER.solve(question);
            JacketResult exact = full.solve(question);
            assertThat(table.heatLoad()).isCloseTo(exact.heatLoad(), within(1e-3 * exact.heatLoad()));
            assertThat(table.pressureDrop()).isCloseTo(exact.pressureDrop(), within(1e-3 * exact.pressureDrop()));
            assertThat(table.coolantTemperatureRise())
                    .isCloseTo(exact.coolantTemperatureRise(), within(1e-3 * exact.coolantTemperatureRise()));
            assertThat(table.peakWallTemperature())
                    .isCloseTo(exact.peakWallTemperature(), within(1e-3 * exact.peakWallTemperature()));
        }
    }

    /** Effort by count: wall and coolant of a cell are found together in five evaluations, not dozens. */
    @Test
    void wallBalancesTakeFewEvaluations() {
        JacketCase question = SOLVER.sized(
                Cases.methane().fuelCooled(18e6, Jackets.automatic().withCells(200)));
        assertThat(SOLVER.solve(question).iterations()).isLessThan(200 * 6);
    }

    /** Effort by count: thirty or so coarse marches of 40 cells, some cells solved several times, size the channels. */
    @Test
    void sizingTakesFewMarches() {
        JacketCase question =
                Cases.methane().fuelCooled(18e6, Jackets.automatic().withCells(200));
        int fine = SOLVER.solve(SOLVER.sized(question)).iterations();
        assertThat(SOLVER.solve(question).iterations() - fine).isLessThan(60 * 40 * 5);
    }

    @Test
    void searchFindsASmallerPressureDropThatKeepsEveryLimit() {
        Cases.Engine engine = new Cases.Engine("oxygen", "methane", 3.4, 5e6, 20, 3, 1.0, 100e3);
        List<Integer> seen = new ArrayList<>();
        JacketSearch.Outcome outcome = new JacketSearch(SOLVER)
                .search(engine.fuelCooled(9e6, Jackets.automatic().withCells(40)), 44, (done, all) -> seen.add(done));
        assertThat(outcome.feasible()).isTrue();
        assertThat(outcome.result().pressureDrop())
                .isLessThan(0.9 * outcome.start().pressureDrop());
        assertThat(outcome.best().design().channels().open()).isFalse();
        assertThat(seen)
                .hasSameSizeAs(java.util.stream.IntStream.range(0, outcome.evaluations())
                        .boxed()
                        .toList());
    }

    @Test
    void feasibilityFadesWithChamberPressure() {
        Cases.Engine engine = Cases.methane();
        FeasibilityStudy study = new FeasibilityStudy(SOLVER, engine.nozzle());
        FeasibilityStudy.Subject subject = new FeasibilityStudy.Subject(
                Cases.FLUIDS.propellant("oxygen"),
                Cases.FLUIDS.propellant("methane"),
                3.4,
                true,
                new ChamberDesign(
                        1e6,
                        Designs.combustor(3, 1.0),
                        Designs.bell(15),
                        ExpansionMode.SHIFTING,
                        Efficiencies.MODELLED),
                Jackets.automatic().withCells(30));
        FeasibilityMap map = study.map(subject, List.of(4e6, 24e6), List.of(100e3, 500e3), SearchProgress.SILENT);
        assertThat(map.points()).hasSize(4);
        for (int thrust = 0; thrust < 2; thrust++) {
            assertThat(map.at(0, thrust).margin())
                    .isGreaterThan(map.at(1, thrust).margin());
            assertThat(map.at(1, thrust).feasible()).isFalse();
            assertThat(map.at(1, thrust).binding()).isNotBlank();
        }
    }
}

package dev.penstock.cooling.jacket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.cooling.Cases;
import dev.penstock.cooling.Jackets;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.wall.WallDesign;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.fluids.state.FluidState;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What one cell of the jacket must obey, from its reported figures alone and by routes that the solver does not take: the full
 * equation of state in place of the tables, the wall's conduction, continuity and momentum along the channel.
 */
class JacketCellTest {

    private static final JacketSolver SOLVER = Cases.solver();
    private static final double THICKNESS = 0.8e-3;
    private static JacketCase question;
    private static JacketResult result;

    @BeforeAll
    static void solveOnce() {
        JacketDesign design = Jackets.automatic().withCells(60);
        WallDesign wall = design.wall();
        question = SOLVER.sized(Cases.methane()
                .fuelCooled(
                        18e6,
                        design.withWall(new WallDesign(
                                wall.material(),
                                OptionalDouble.of(THICKNESS),
                                wall.closeoutMaterial(),
                                wall.closeoutThickness(),
                                wall.coating()))));
        result = SOLVER.solve(question);
    }

    private static FluidState coolant(JacketStation s) {
        return Cases.FLUIDS
                .propellant("methane")
                .fluid()
                .atPressureTemperature(s.coolantPressure(), s.coolantTemperature());
    }

    /** Continuity: density by the full equation times velocity times the channels' cross-section is the coolant's flow. */
    @Test
    void theFlowIsTheSameInEveryCell() {
        double channels = result.layout().count().orElseThrow();
        for (JacketStation s : result.stations()) {
            double flow = coolant(s).density() * s.coolantVelocity() * channels * s.channelWidth() * s.channelHeight();
            assertThat(flow).as("x = %g", s.x()).isCloseTo(question.massFlow(), withinPercentage(0.5));
        }
    }

    /** Conduction: the metal carries the flux between its two faces, with the conductivity of its material in between. */
    @Test
    void theWallConductsTheFlux() {
        for (JacketStation s : result.stations()) {
            double conductivity = s.heatFlux()
                    * s.radius()
                    * Math.log((s.radius() + s.wallThickness()) / s.radius())
                    / (s.gasSideWallTemperature() - s.coolantSideWallTemperature());
            double mean = 0.5 * (s.gasSideWallTemperature() + s.coolantSideWallTemperature());
            double material = Cases.WALLS
                    .material(question.design().wall().material())
                    .conductivity()
                    .at(mean);
            assertThat(conductivity).as("x = %g", s.x()).isCloseTo(material, withinPercentage(0.1));
        }
    }

    /**
     * Energy: the coolant's total enthalpy, by the full equation, rises from cell to cell, in all by the heat load. The coolant of this
     * jacket runs against the gas, so that the cells are in its order from the last to the first.
     */
    @Test
    void theCoolantTakesUpTheHeatCellByCell() {
        List<JacketStation> s = result.stations();
        double rise = 0;
        for (int i = s.size() - 1; i > 0; i--) {
            double before =
                    coolant(s.get(i)).enthalpy() + 0.5 * Math.pow(s.get(i).coolantVelocity(), 2);
            double after = coolant(s.get(i - 1)).enthalpy()
                    + 0.5 * Math.pow(s.get(i - 1).coolantVelocity(), 2);
            assertThat(after).as("x = %g", s.get(i).x()).isGreaterThan(before);
            rise += question.massFlow() * (after - before);
        }
        // the halves of the first and the last cell are missing
        assertThat(rise).isBetween(0.95 * result.heatLoad(), result.heatLoad());
    }

    /** Momentum: pressure falls along the way by friction and acceleration, never less than by acceleration alone. */
    @Test
    void pressureFallsAtLeastByTheAcceleration() {
        List<JacketStation> s = result.stations();
        for (int i = s.size() - 1; i > 0; i--) {
            JacketStation from = s.get(i);
            JacketStation to = s.get(i - 1);
            double flux = 0.5
                    * (coolant(from).density() * from.coolantVelocity()
                            + coolant(to).density() * to.coolantVelocity());
            double acceleration = flux * (to.coolantVelocity() - from.coolantVelocity());
            assertThat(from.coolantPressure() - to.coolantPressure())
                    .as("x = %g", from.x())
                    .isGreaterThan(acceleration - 1e-4 * from.coolantPressure());
        }
        assertThat(result.inlet().pressure() - result.outlet().pressure())
                .isCloseTo(result.pressureDrop(), within(1.0));
    }

    /** Identity: at its own station the check is two-dimensional conduction itself, and the peak is nowhere below it. */
    @Test
    void theHottestWallIsThatOfTheCheckAtItsOwnStation() {
        CellCheck check = SOLVER.cellCheck(question, result).orElseThrow();
        WallMaterial material = Cases.WALLS.material(question.design().wall().material());
        List<JacketStation> own =
                result.stations().stream().filter(s -> s.x() == check.x()).toList();
        assertThat(own).hasSize(1);
        assertThat(check.hottest(own, material)).isCloseTo(check.cellWallTemperature(), within(1e-9));
        assertThat(result.peakWallTemperature())
                .isGreaterThanOrEqualTo(check.cellWallTemperature())
                .isEqualTo(check.hottest(result.stations(), material));
    }

    /** The Reynolds number reported is that of the state reported. */
    @Test
    void theReynoldsNumberIsThatOfTheState() {
        for (JacketStation s : result.stations()) {
            double diameter = 2 * s.channelWidth() * s.channelHeight() / (s.channelWidth() + s.channelHeight());
            FluidState state = coolant(s);
            double reynolds = state.density() * s.coolantVelocity() * diameter / state.viscosity();
            assertThat(s.coolantReynolds()).as("x = %g", s.x()).isCloseTo(reynolds, withinPercentage(1));
        }
    }
}

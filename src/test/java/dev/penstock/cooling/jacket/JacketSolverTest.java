package dev.penstock.cooling.jacket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.Cases;
import dev.penstock.cooling.Jackets;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.OutsideValidity;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The march as a whole: what it conserves, how it answers to its inputs, and what it says about bad ones. */
class JacketSolverTest {

    private static final JacketSolver SOLVER = Cases.solver();
    private static JacketCase methane;
    private static JacketResult result;

    @BeforeAll
    static void solveOnce() {
        methane = SOLVER.sized(
                Cases.methane().fuelCooled(18e6, Jackets.automatic().withCells(60)));
        result = SOLVER.solve(methane);
    }

    @Test
    void heatThroughTheWallIsTheEnthalpyRiseOfTheCoolant() {
        double rise = methane.massFlow()
                * (result.outlet().enthalpy() - result.inlet().enthalpy());
        assertThat(result.heatLoad()).isCloseTo(rise, within(1e-8 * rise));
    }

    @Test
    void everyStationBalancesGasWallAndCoolant() {
        for (JacketStation s : result.stations()) {
            double fromGas = s.gasSideCoefficient() * (s.adiabaticWallTemperature() - s.gasSideWallTemperature())
                    + s.radiativeHeatFlux();
            assertThat(fromGas).isCloseTo(s.heatFlux(), within(1e-6 * s.heatFlux()));
            assertThat(s.gasSideWallTemperature()).isGreaterThan(s.coolantSideWallTemperature());
            assertThat(s.coolantSideWallTemperature()).isGreaterThan(s.coolantTemperature());
        }
    }

    @Test
    void heatFluxPeaksAtTheThroat() {
        JacketStation hottest = result.stations().stream()
                .max((a, b) -> Double.compare(a.heatFlux(), b.heatFlux()))
                .orElseThrow();
        assertThat(hottest.areaRatio()).isLessThan(1.1);
        assertThat(result.peakHeatFlux()).isEqualTo(hottest.heatFlux());
    }

    @Test
    void sizedChannelsKeepThePressureDropBudget() {
        double budget = methane.design().limits().pressureDropFraction()
                * methane.gas().gas().pressure();
        assertThat(result.pressureDrop()).isPositive().isLessThan(1.02 * budget);
    }

    /** Identity: what a cycle is told while it iterates is what the report says at the end. */
    @Test
    void theShortAnswerIsThatOfTheWholeSolution() {
        JacketLoad load = SOLVER.load(methane);
        assertThat(load.heatLoad()).isEqualTo(result.heatLoad());
        assertThat(load.pressureDrop()).isEqualTo(result.pressureDrop());
        assertThat(load.layout()).isEqualTo(result.layout());
    }

    @Test
    void sizingTwiceGivesTheSameChannels() {
        JacketCase again =
                Cases.solver().sized(methane.withDesign(methane.design().withChannels(Jackets.channels())));
        assertThat(again.design().channels().sections())
                .isEqualTo(methane.design().channels().sections());
    }

    @Test
    void moreHeatFromTheGasHeatsCoolantAndWall() {
        JacketCase hotter = new JacketCase(
                methane.gas(),
                methane.coolant(),
                methane.inletPressure(),
                methane.inletEnthalpy(),
                methane.massFlow(),
                methane.design(),
                1.2);
        JacketResult other = SOLVER.solve(hotter);
        assertThat(other.heatLoad()).isGreaterThan(result.heatLoad());
        assertThat(other.peakWallTemperature()).isGreaterThan(result.peakWallTemperature());
        assertThat(other.coolantTemperatureRise()).isGreaterThan(result.coolantTemperatureRise());
    }

    @Test
    void answerChangesSmoothlyWithTheInlet() {
        double step = 1e-6;
        JacketResult other = SOLVER.solve(
                methane.withInlet(methane.inletPressure() * (1 + step), methane.inletEnthalpy(), methane.massFlow()));
        double slope = (other.pressureDrop() / result.pressureDrop() - 1) / step;
        assertThat(slope).isBetween(-5.0, 1.0);
    }

    @Test
    void aFinerGridMovesHeatLoadLittle() {
        JacketResult finer = SOLVER.solve(methane.withDesign(methane.design().withCells(120)));
        assertThat(finer.heatLoad()).isCloseTo(result.heatLoad(), within(2e-3 * result.heatLoad()));
        assertThat(finer.pressureDrop()).isCloseTo(result.pressureDrop(), within(2e-2 * result.pressureDrop()));
    }

    @Test
    void everyRouteConservesEnergy() {
        for (CoolantRoute.Kind kind : CoolantRoute.Kind.values()) {
            JacketDesign design = Jackets.automatic().withCells(30).withRoute(Jackets.route(kind));
            JacketCase question = SOLVER.sized(methane.withDesign(design));
            JacketResult r = SOLVER.solve(question);
            double rise =
                    question.massFlow() * (r.outlet().enthalpy() - r.inlet().enthalpy());
            assertThat(r.heatLoad()).as(kind.name()).isCloseTo(rise, within(1e-8 * rise));
            assertThat(r.stations()).as(kind.name()).hasSize(30);
        }
    }

    @Test
    void overlappingChannelsAreNamedWithTheirPlace() {
        ChannelLayout layout = new ChannelLayout(
                ChannelKind.MILLED,
                OptionalDouble.of(400),
                List.of(new ChannelSection(1, false, 1.6e-3, 4e-3)),
                OptionalDouble.empty());
        JacketCase question = methane.withDesign(methane.design().withChannels(layout));
        assertThatThrownBy(() -> SOLVER.solve(question))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("overlap at x =")
                .hasMessageContaining("area ratio");
    }

    @Test
    void tooNarrowChannelsSayWhereThePressureEnds() {
        ChannelLayout layout = new ChannelLayout(
                ChannelKind.MILLED,
                OptionalDouble.of(200),
                List.of(new ChannelSection(1, false, 0.5e-3, 1e-3)),
                OptionalDouble.empty());
        JacketCase question = methane.withDesign(methane.design().withChannels(layout));
        assertThatThrownBy(() -> SOLVER.solve(question))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("cooling jacket at x =");
    }

    @Test
    void anUnknownMaterialNamesTheKnownOnes() {
        JacketCase question = methane.withDesign(methane.design().withWall(Jackets.wall("unobtainium")));
        assertThatThrownBy(() -> SOLVER.solve(question))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("copper-silver-zirconium");
    }
}

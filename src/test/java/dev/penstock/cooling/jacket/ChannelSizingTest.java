package dev.penstock.cooling.jacket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.Cases;
import dev.penstock.cooling.Jackets;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelRule;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.design.JacketLimits;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallDesign;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What sized channels promise. */
class ChannelSizingTest {

    private static final JacketSolver SOLVER = Cases.solver();

    private static JacketCase methane(double pressure) {
        Cases.Engine engine = new Cases.Engine("oxygen", "methane", 3.4, pressure, 20, 2.4, 1.0, 500e3);
        return engine.fuelCooled(1.55 * pressure, Jackets.automatic());
    }

    private static double peak(JacketCase question, ChannelRule.Shape shape) {
        JacketCase sized = SOLVER.sized(question, new ChannelRule(shape, shape, 0));
        return SOLVER.solve(sized).peakWallTemperature();
    }

    /** Identity: where the budget is used up, no other pitch and width that can be made gives a wall cooler by more than 15 K. */
    @ParameterizedTest
    @ValueSource(doubles = {10e6, 14e6})
    void noOtherShapeIsMuchCoolerOnTheSameBudget(double pressure) {
        JacketCase question = methane(pressure);
        JacketResult sized = SOLVER.solve(question);
        double budget = question.design().limits().pressureDropFraction() * pressure;
        assertThat(sized.pressureDrop()).isBetween(0.9 * budget, budget);
        for (double pitch : new double[] {1.2e-3, 1.4e-3, 1.8e-3}) {
            for (double share : new double[] {0.45, 0.55, 0.62}) {
                assertThat(peak(question, new ChannelRule.Shape(pitch, share, 14)))
                        .as(pitch + " " + share)
                        .isGreaterThan(sized.peakWallTemperature() - 15);
            }
        }
    }

    /** Identity: a wall that is hotter than its margin allows has spent the budget, whatever the route. */
    @ParameterizedTest
    @EnumSource(
            value = CoolantRoute.Kind.class,
            names = {"COUNTERFLOW", "PARALLEL", "SPLIT", "PASS_AND_A_HALF", "TWO_PASS"})
    void theWallKeepsItsMarginOrTheBudgetIsSpent(CoolantRoute.Kind kind) {
        JacketLimits limits = Jackets.limits(0.6, 1);
        JacketCase question = methane(6e6);
        JacketCase routed =
                question.withDesign(question.design().withLimits(limits).withRoute(Jackets.route(kind)));
        JacketResult result = SOLVER.solve(routed);
        double allowed = Cases.WALLS.material(routed.design().wall().material()).maximumTemperature();
        double budget = 0.6 * 6e6;
        assertThat(result.pressureDrop()).isLessThan(1.1 * budget);
        if (result.pressureDrop() < 0.9 * budget) {
            assertThat(result.peakWallTemperature()).isCloseTo(0.93 * allowed, within(0.025 * allowed));
        }
    }

    /** Identity: a thinner wall at the throat costs a hydrogen jacket no pressure, since it thickens where channels are wide. */
    @Test
    void aThinnerWallNeverCostsPressure() {
        Cases.Engine engine = new Cases.Engine("oxygen", "hydrogen", 6, 10e6, 60, 2.5, 0.9, 1100e3);
        JacketLimits limits = Jackets.limits(0.4, 10);
        double thinner = 0;
        for (double thickness : new double[] {0.3e-3, 0.4e-3, 0.55e-3, 0.7e-3}) {
            JacketDesign design = Jackets.automatic().withLimits(limits);
            WallDesign wall = design.wall();
            JacketResult jacket = SOLVER.solve(engine.fuelCooled(
                    19e6,
                    design.withWall(new WallDesign(
                            wall.material(),
                            OptionalDouble.of(thickness),
                            wall.closeoutMaterial(),
                            wall.closeoutThickness(),
                            wall.coating()))));
            assertThat(jacket.pressureDrop()).as("%s mm", 1e3 * thickness).isGreaterThan(0.99 * thinner);
            assertThat(jacket.stations()).allMatch(s -> s.wallThickness() >= thickness);
            assertThat(jacket.stations().get(jacket.stations().size() - 1).wallThickness())
                    .isGreaterThan(1.2 * thickness);
            thinner = jacket.pressureDrop();
        }
    }

    /** Identity: a stated wall is taken where it is stated, straight over the logarithm of the area ratio between. */
    @Test
    void aWallIsStatedSectionBySection() {
        JacketCase question = methane(6e6);
        ChannelLayout layout = new ChannelLayout(
                ChannelKind.MILLED,
                OptionalDouble.of(120),
                List.of(
                        new ChannelSection(1, false, 4e-3, 12e-3, OptionalDouble.of(0.6e-3)),
                        new ChannelSection(Math.E * Math.E, false, 4e-3, 12e-3, OptionalDouble.of(1.6e-3))),
                OptionalDouble.empty());
        JacketResult jacket = SOLVER.solve(question.withDesign(question.design().withChannels(layout)));
        assertThat(jacket.stations()).allSatisfy(s -> assertThat(s.wallThickness())
                .isCloseTo(
                        s.x() <= 0 ? 0.6e-3 : Math.min(1.6e-3, 0.6e-3 + 0.5e-3 * Math.log(s.areaRatio())),
                        within(1e-9)));
    }
}

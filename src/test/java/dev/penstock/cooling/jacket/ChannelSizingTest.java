package dev.penstock.cooling.jacket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.Cases;
import dev.penstock.cooling.design.ChannelRule;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.design.JacketLimits;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What sized channels promise. */
class ChannelSizingTest {

    private static final JacketSolver SOLVER = Cases.solver();

    private static JacketCase methane(double pressure) {
        Cases.Engine engine = new Cases.Engine("oxygen", "methane", 3.4, pressure, 20, 2.4, 1.0, 500e3);
        return engine.fuelCooled(1.55 * pressure, JacketDesign.automatic());
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
        JacketLimits limits = new JacketLimits(OptionalDouble.empty(), OptionalDouble.empty(), 0.6, 1);
        JacketCase question = methane(6e6);
        JacketCase routed =
                question.withDesign(question.design().withLimits(limits).withRoute(CoolantRoute.of(kind)));
        JacketResult result = SOLVER.solve(routed);
        double allowed = Cases.WALLS.material(routed.design().wall().material()).maximumTemperature();
        double budget = 0.6 * 6e6;
        assertThat(result.pressureDrop()).isLessThan(1.1 * budget);
        if (result.pressureDrop() < 0.9 * budget) {
            assertThat(result.peakWallTemperature()).isCloseTo(0.93 * allowed, within(0.025 * allowed));
        }
    }
}

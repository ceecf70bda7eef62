package dev.penstock.cooling.jacket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.Cases;
import dev.penstock.cooling.Jackets;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.errors.OutsideValidity;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A wall that two jackets share, one behind the other. */
class JacketBehindJacketTest {

    private static final JacketSolver SOLVER = Cases.solver();
    private static final double BORDER = 5;
    private static final int CELLS = 120;

    private static JacketCase whole;
    private static JacketResult one;

    @BeforeAll
    static void solveTheWholeWall() {
        whole = SOLVER.sized(
                Cases.methane().fuelCooled(18e6, Jackets.automatic().withCells(CELLS)));
        one = SOLVER.solve(whole);
    }

    /** The same wall and channels up to the border, or from it on. */
    private static JacketDesign part(JacketDesign design, CircuitKey key, CoolantRoute route) {
        return new JacketDesign(
                key,
                design.wall(),
                design.channels(),
                route,
                design.gasSide(),
                design.coolantSide(),
                design.limits(),
                design.cells(),
                Optional.empty());
    }

    private static JacketDesign chamber(JacketDesign design) {
        return part(
                design,
                CircuitKey.FIRST,
                new CoolantRoute(
                        CoolantRoute.Kind.COUNTERFLOW,
                        OptionalDouble.empty(),
                        OptionalDouble.of(BORDER),
                        OptionalDouble.empty(),
                        0.5));
    }

    private static JacketDesign nozzle(JacketDesign design, CoolantRoute.Kind kind) {
        return part(design, CircuitKey.behind(0, "nozzle"), Jackets.route(kind).from(BORDER));
    }

    /**
     * Limit: one coolant through both jackets, from the nozzle exit to the injector, is the coolant of one jacket but for a
     * manifold between them: the same heat to within what a cell of the coarser grid takes up.
     */
    @Test
    void oneCoolantThroughBothTakesUpTheHeatOfOneJacket() {
        JacketResult nozzle = SOLVER.solve(whole.withDesign(nozzle(whole.design(), CoolantRoute.Kind.COUNTERFLOW)));
        JacketResult chamber = SOLVER.solve(whole.withDesign(chamber(whole.design()))
                .withInlet(nozzle.outlet().pressure(), nozzle.outlet().enthalpy(), whole.massFlow()));
        double both = nozzle.heatLoad() + chamber.heatLoad();
        assertThat(both).isCloseTo(one.heatLoad(), within(3e-3 * one.heatLoad()));
        assertThat(nozzle.heatLoad()).isBetween(0.1 * both, 0.5 * both);
        double rise =
                whole.massFlow() * (chamber.outlet().enthalpy() - nozzle.inlet().enthalpy());
        assertThat(both).isCloseTo(rise, within(1e-8 * rise));
        assertThat(chamber.outlet().temperature())
                .isCloseTo(one.outlet().temperature(), within(1.0)); // K, of a rise of some hundred
    }

    /** Identity: the two parts meet at the border, and no cell of one lies in the other. */
    @Test
    void thePartsMeetAtTheBorder() {
        JacketResult nozzle = SOLVER.solve(whole.withDesign(nozzle(whole.design(), CoolantRoute.Kind.PARALLEL)));
        JacketResult chamber = SOLVER.solve(whole.withDesign(chamber(whole.design())));
        assertThat(nozzle.stations()).hasSize(CELLS).allMatch(s -> s.x() > 0 && s.areaRatio() > BORDER);
        assertThat(chamber.stations()).hasSize(CELLS).allMatch(s -> s.x() < 0 || s.areaRatio() < BORDER);
        assertThat(nozzle.stations().get(0).areaRatio()).isCloseTo(BORDER, within(0.1));
        assertThat(chamber.stations().get(CELLS - 1).areaRatio()).isCloseTo(BORDER, within(0.2));
    }

    /** Identity: a boundary layer begins at the injector, whichever jacket lies under it. */
    @Test
    void theBoundaryLayerBeginsAtTheInjector() {
        GasSideDesign standard = whole.design().gasSide();
        JacketDesign layered = whole.design().withGasSide(standard.withModel(GasSideDesign.Model.BOUNDARY_LAYER));
        JacketResult all = SOLVER.solve(whole.withDesign(layered));
        JacketResult nozzle = SOLVER.solve(whole.withDesign(nozzle(layered, CoolantRoute.Kind.COUNTERFLOW)));
        double place = nozzle.stations().get(CELLS / 2).areaRatio();
        JacketStation there = all.stations().stream()
                .filter(s -> s.x() > 0 && s.areaRatio() > place)
                .findFirst()
                .orElseThrow();
        assertThat(nozzle.stations().get(CELLS / 2).gasSideCoefficient())
                .isCloseTo(there.gasSideCoefficient(), within(0.05 * there.gasSideCoefficient()));
    }

    @Test
    void everyRouteConservesEnergyFromTheBorderOn() {
        for (CoolantRoute.Kind kind : CoolantRoute.Kind.values()) {
            JacketDesign open = Jackets.automatic().withCells(30);
            JacketCase question = SOLVER.sized(whole.withDesign(nozzle(open, kind)));
            JacketResult r = SOLVER.solve(question);
            double rise =
                    question.massFlow() * (r.outlet().enthalpy() - r.inlet().enthalpy());
            assertThat(r.heatLoad()).as(kind.name()).isCloseTo(rise, within(1e-8 * rise));
            assertThat(r.stations()).as(kind.name()).hasSize(30);
            assertThat(r.limits()).allMatch(l -> l.owner().equals("nozzle jacket"));
        }
    }

    @Test
    void aJacketThatBeginsBehindTheNozzleIsRefused() {
        JacketDesign beyond = part(
                whole.design(),
                CircuitKey.behind(0, "nozzle"),
                Jackets.route(CoolantRoute.Kind.COUNTERFLOW).from(30));
        assertThatThrownBy(() -> SOLVER.solve(whole.withDesign(beyond)))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("30");
    }
}

package dev.penstock.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.contour.BellTable;
import dev.penstock.chamber.contour.BellTableWriter;
import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.CharacteristicGas;
import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.contour.TwoDimensionalFlow;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.loss.DivergenceLoss;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.chamber.loss.Vaporisation;
import dev.penstock.combustion.equilibrium.Reactants;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Divergence, friction, film, two-phase flow and throttling, each against its limits and what is known of it. */
class LossModelsTest {

    private static final Reactants MIXTURE = Mixtures.mix(Mixtures.OXYGEN, Mixtures.KEROSENE, 2.6);
    private final ThrustChamber chamber = new ThrustChamber(Mixtures.nozzle(MIXTURE));

    private ChamberPerformance size(CombustorDesign combustor, NozzleDesign nozzle, double pressure, double thrust) {
        ChamberDesign design =
                new ChamberDesign(pressure, combustor, nozzle, ExpansionMode.SHIFTING, Efficiencies.MODELLED);
        return chamber.forVacuumThrust(design, Injection.of(Mixtures.OXYGEN, Mixtures.KEROSENE, 2.6), thrust);
    }

    private static NamedLoss loss(ChamberPerformance chamber, LossKind kind) {
        return chamber.losses().stream()
                .filter(l -> l.name().equals(kind.title()))
                .findFirst()
                .orElseThrow();
    }

    /** Entries of the table computed again; with twice the cells they move by less than the stated uncertainty. */
    @ParameterizedTest
    @CsvSource({"6, 0.8, 1.18", "25, 0.7, 1.10", "100, 0.9, 1.26", "16, 0.6, 1.34"})
    void bellTableIsWhatTheFlowSolverComputes(double areaRatio, double length, double gamma) {
        double tabulated = BellTable.efficiency(areaRatio, length, gamma);
        assertThat(BellTableWriter.compute(areaRatio, length, gamma).efficiency())
                .isCloseTo(tabulated, within(1e-5));
        ChamberContour contour = ContourBuilder.draw(
                        Designs.combustor(2, 5), Designs.bell(areaRatio, length), areaRatio, 1)
                .contour();
        assertThat(TwoDimensionalFlow.of(contour, 1.5, gamma, 48).efficiency()).isCloseTo(tabulated, within(5e-4));
    }

    /** 80 % bells lose 0.8 to 1.5 %, 60 % bells 2 to 3 % (NASA SP-8120 and textbook practice, from memory). */
    @Test
    void bellsLoseWhatTheMonographReports() {
        assertThat(BellTable.efficiency(20, 0.8, 1.2)).isBetween(0.985, 0.993);
        assertThat(BellTable.efficiency(40, 0.6, 1.2)).isBetween(0.97, 0.98);
        assertThat(BellTable.efficiency(40, 1.0, 1.2)).isGreaterThan(BellTable.efficiency(40, 0.8, 1.2));
    }

    /** Independent relation: spherical source flow, NASA SP-125 equation 4-8, on the momentum part of the thrust. */
    @ParameterizedTest
    @CsvSource({"10, 10", "16, 15", "40, 15", "10, 25"})
    void marchedConeAgreesWithTheSourceFlowFactor(double areaRatio, double degrees) {
        NozzleDesign nozzle = Designs.cone(areaRatio, Math.toRadians(degrees));
        ChamberContour contour = ContourBuilder.draw(Designs.combustor(2, 5), nozzle, areaRatio, 1)
                .contour();
        CharacteristicGas gas = new CharacteristicGas(1.2);
        double mach = gas.machAtAreaRatio(areaRatio);
        double share = gas.momentum(mach) / (gas.momentum(mach) + gas.pressure(mach));
        double expected = 1 - share * (1 - DivergenceLoss.factor(Math.toRadians(degrees)));
        assertThat(TwoDimensionalFlow.of(contour, 1.5, 1.2, 24).efficiency()).isCloseTo(expected, within(2.5e-3));
    }

    /** Discharge coefficient of a throat with wall curvature 1.5: 1 − (γ+1)/(96 R²) + ... = 0.99 (Sauer and Hall, from memory). */
    @Test
    void transonicStartPassesTheKnownFlow() {
        ChamberContour contour = ContourBuilder.draw(Designs.combustor(2, 5), Designs.bell(10), 10, 1)
                .contour();
        assertThat(TwoDimensionalFlow.of(contour, 1.5, 1.2, 48).dischargeCoefficient())
                .isCloseTo(1 - 2.2 / (96 * 2.25), within(1.5e-3));
    }

    /** NASA SP-8120 and textbook practice (from memory): 0.5 to 1.5 %, more when small. */
    @Test
    void frictionTakesItsUsualShareAndMoreFromSmallNozzles() {
        CombustorDesign combustor = Designs.combustor(2.5, 1.2);
        double large = loss(size(combustor, Designs.bell(40), 10e6, 2e6), LossKind.BOUNDARY_LAYER)
                .factor();
        double small = loss(size(combustor, Designs.bell(40), 1e6, 5e3), LossKind.BOUNDARY_LAYER)
                .factor();
        assertThat(1 - large).isBetween(0.005, 0.015);
        assertThat(1 - small).isBetween(0.012, 0.03);
    }

    @Test
    void filmCostsImpulseAndNothingWithoutFilm() {
        NozzleDesign nozzle = Designs.bell(20);
        CombustorDesign combustor = Designs.combustor(2.5, 1.2);
        assertThat(loss(size(combustor, nozzle, 8e6, 1e6), LossKind.FILM_COOLING)
                        .factor())
                .isEqualTo(1);
        double little = loss(size(Designs.filmed(2.5, 1.2, 0.03), nozzle, 8e6, 1e6), LossKind.FILM_COOLING)
                .factor();
        double much = loss(size(Designs.filmed(2.5, 1.2, 0.1), nozzle, 8e6, 1e6), LossKind.FILM_COOLING)
                .factor();
        assertThat(1 - little).isBetween(0.0005, 0.01);
        assertThat(1 - much).isBetween(1 - little, 0.04);
    }

    @Test
    void filmThatCannotBeModelledIsReported() {
        ChamberDesign design = new ChamberDesign(
                8e6, Designs.filmed(2.5, 1.2, 0.03), Designs.bell(20), ExpansionMode.SHIFTING, Efficiencies.MODELLED);
        assertThat(chamber.forVacuumThrust(design, Injection.of(MIXTURE), 1e6).warnings())
                .anyMatch(w -> w.message().contains("film is not taken"));
    }

    @Test
    void sootLagsALittleWhereThereIsAny() {
        Reactants rich = Mixtures.mix(Mixtures.OXYGEN, Mixtures.KEROSENE, 0.9);
        ChamberDesign design = new ChamberDesign(
                5e6, Designs.combustor(2.5, 1.2), Designs.bell(20), ExpansionMode.SHIFTING, Efficiencies.MODELLED);
        ChamberPerformance sooty =
                new ThrustChamber(Mixtures.nozzle(rich)).forVacuumThrust(design, Injection.of(rich), 1e5);
        assertThat(loss(sooty, LossKind.TWO_PHASE).factor()).isBetween(0.98, 1 - 1e-7);
        assertThat(loss(size(Designs.combustor(2.5, 1.2), Designs.bell(20), 8e6, 1e6), LossKind.TWO_PHASE)
                        .factor())
                .isEqualTo(1);
    }

    private static Vaporisation kerosene(double length, double radius, double throttle) {
        InjectorDesign injector = InjectorDesign.of(false, false)
                .developedFor(1.15, radius > 0 ? OptionalDouble.of(radius) : OptionalDouble.empty())
                .throttled(throttle);
        Reactants mixture = Mixtures.mix(Mixtures.OXYGEN, Mixtures.KEROSENE, 2.4);
        return new Vaporisation(Designs.combustor(2, length).withInjector(injector), 8e6 * throttle, mixture);
    }

    /**
     * Closed form: a developed injector leaves u = 0.003, nearly all of it kerosene, so that at part flow
     * u(f) = x (u/x)^(f^0.635), by the exponents of [priem-heidmann-1960] and [ingebo-1958]; x is the share of the fuel.
     */
    @Test
    void throttlingAFixedInjectorCostsWhatItsDropsLeave() {
        double share = 1 / 3.4;
        for (double f : new double[] {1, 0.7, 0.4}) {
            double left = share * Math.pow(0.003 / share, Math.pow(f, 0.66 + 1.45 / 2 - 0.75));
            assertThat(kerosene(1.15, 0, f).unvaporised()).isCloseTo(left, within(0.03 * left));
        }
        assertThat(kerosene(1.15, 0, 0.4).partFlow()).isBetween(0.96, 0.985);
    }

    /** Published trend: larger drops and shorter chambers leave more; half the drop life is 1/2^(1/1.45) of the radius. */
    @Test
    void shortChambersAndLargeDropsLeaveMore() {
        Vaporisation usual = kerosene(1.15, 0, 1);
        assertThat(usual.unvaporised()).isCloseTo(0.003, within(1e-6));
        assertThat(kerosene(0.15, 0, 1).unvaporised()).isGreaterThan(0.1);
        assertThat(kerosene(1.15, 2 * usual.dropRadius(), 1).unvaporised()).isGreaterThan(0.03);
        double half = usual.dropRadius() * Math.pow(2, -1 / 1.45);
        assertThat(kerosene(0.575, half, 1).unvaporised()).isCloseTo(0.003, within(1e-6));
    }

    /** Limit: two gases leave no drops. */
    @Test
    void gasesLeaveNothingUnvaporised() {
        Reactants mixture = Mixtures.mix(Mixtures.OXYGEN, Mixtures.KEROSENE, 2.4);
        Vaporisation gas =
                new Vaporisation(Designs.combustor(2, 0.2).withInjector(InjectorDesign.of(true, true)), 8e6, mixture);
        assertThat(gas.liquid()).isFalse();
        assertThat(gas.unvaporised()).isZero();
    }

    /** Two gases lose nothing by a short chamber that the model could tell, and it says so below half of the usual length. */
    @Test
    void gasesInAShortChamberAreInDoubt() {
        InjectorDesign injector = InjectorDesign.of(true, true).developedFor(1.0, OptionalDouble.empty());
        NozzleDesign nozzle = Designs.bell(20);
        assertThat(size(Designs.combustor(2, 0.3).withInjector(injector), nozzle, 15e6, 1e6)
                        .warnings())
                .anyMatch(w -> w.message().contains("no room to mix"));
        assertThat(size(Designs.combustor(2, 0.6).withInjector(injector), nozzle, 15e6, 1e6)
                        .warnings())
                .noneMatch(w -> w.message().contains("no room to mix"));
    }
}

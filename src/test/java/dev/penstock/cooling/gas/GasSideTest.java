package dev.penstock.cooling.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.Cases;
import dev.penstock.cooling.Jackets;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.jacket.ExtensionResult;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.Coating;
import dev.penstock.cooling.wall.WallDesign;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gas side: boundary layer, radiation, film, and what lies beyond the jacket. */
class GasSideTest {

    private static final JacketSolver SOLVER = Cases.solver();
    private static JacketCase question;
    private static JacketResult bare;

    @BeforeAll
    static void solveOnce() {
        question = SOLVER.sized(
                Cases.methane().fuelCooled(18e6, Jackets.automatic().withCells(60)));
        bare = SOLVER.solve(question);
    }

    private static JacketResult with(GasSideDesign gasSide) {
        return SOLVER.solve(question.withDesign(question.design().withGasSide(gasSide)));
    }

    /** A film of a share of the flow through the throat. */
    private static JacketResult withFilm(double share, FilmDesign film) {
        HotGas gas = question.gas().gas();
        double radius = question.gas().throatRadius();
        double throatFlow = gas.pressure() * Math.PI * radius * radius / gas.characteristicVelocity();
        HotGasProfile filmed = question.gas().withFilm(new HotGasProfile.Film(question.coolant(), share * throatFlow));
        JacketDesign design =
                question.design().withGasSide(question.design().gasSide().withFilm(film));
        return SOLVER.solve(new JacketCase(
                filmed,
                question.coolant(),
                question.inletPressure(),
                question.inletEnthalpy(),
                question.massFlow(),
                design,
                1));
    }

    /** Limit: constant radius, flux and difference give the flat plate, St = 0.0287 Pr^−0.4 Re_x^−0.2. */
    @Test
    void boundaryLayerOfATubeIsThatOfAFlatPlate() {
        double radius = 0.1;
        double difference = 2000;
        double flux = 500;
        double length = 0.7;
        double viscosity = 9e-5;
        double integral = Math.pow(radius * difference, 1.25) * flux * length;
        double reynolds = flux * length / viscosity;
        assertThat(BoundaryLayer.stanton(0.6, radius, difference, viscosity, integral))
                .isCloseTo(0.0287 * Math.pow(0.6, -0.4) * Math.pow(reynolds, -0.2), within(1e-12));
    }

    /** Both are models of one thing: within 40 % at the throat, as the sources state for each. */
    @Test
    void boundaryLayerAndClosedFormAgreeAtTheThroat() {
        JacketResult closed = with(Jackets.gasSide().withModel(GasSideDesign.Model.BARTZ));
        assertThat(closed.peakHeatFlux()).isCloseTo(bare.peakHeatFlux(), within(0.4 * bare.peakHeatFlux()));
        assertThat(bare.gasModel()).isEqualTo(BoundaryLayer.CARD);
    }

    @Test
    void radiationAddsHeatAndVanishesWithoutSteam() {
        assertThat(GasRadiation.flux(5e6, 1e6, 0.3, 3400, 700)).isPositive();
        assertThat(GasRadiation.flux(0, 0, 0.3, 3400, 700)).isZero();
        double black = 5.670374e-8 * (Math.pow(3400, 4) - Math.pow(700, 4));
        assertThat(GasRadiation.flux(40e6, 40e6, 1, 3400, 700)).isCloseTo(0.5 * black, within(1e-6 * black));
        JacketResult dark = with(Jackets.gasSide(Jackets.gasSide().model(), false));
        assertThat(dark.heatLoad()).isLessThan(bare.heatLoad());
    }

    /** Nothing radiates into a wall that is as hot as the gas or hotter, to the last bit. */
    @Test
    void noRadiationIntoAHotterWall() {
        for (double gas = 300; gas < 4000; gas += 1.7) {
            assertThat(GasRadiation.flux(1e6, 5e5, 0.3, gas, gas)).isZero();
            assertThat(GasRadiation.flux(1e6, 5e5, 0.3, gas, 1.01 * gas)).isZero();
        }
    }

    /** The flux develops from the face on; one law falls in the throat as its source measured [nasa-tn-d-2832]. */
    @Test
    void theFluxDevelopsFromTheFace() {
        assertThat(HeatRelease.share(0.045, HeatRelease.LENGTH, 1)).isCloseTo(0.5, within(1e-12));
        assertThat(HeatRelease.share(0.2, HeatRelease.LENGTH, 1)).isEqualTo(1);
        assertThat(HeatRelease.share(0.02, HeatRelease.LENGTH, 0.04)).isEqualTo(1);
        JacketResult developed = with(Jackets.gasSide().withHeatReleaseLength(0));
        assertThat(bare.heatLoad()).isLessThan(developed.heatLoad());
        assertThat(bare.stations().get(0).gasSideCoefficient())
                .isLessThan(0.5 * developed.stations().get(0).gasSideCoefficient());
        assertThat(AcceleratedPipe.constant(0)).isEqualTo(0.0148);
        assertThat(AcceleratedPipe.constant(-3)).isEqualTo(0.0257);
        assertThat(AcceleratedPipe.constant(3)).isEqualTo(0.0188);
    }

    @Test
    void moreFilmTakesMoreHeatAway() {
        double before = bare.heatLoad();
        for (double share : new double[] {0.005, 0.01, 0.02}) {
            double liquid = withFilm(share, FilmDesign.liquid()).heatLoad();
            assertThat(liquid).isLessThan(before);
            before = liquid;
        }
        assertThat(withFilm(0.02, FilmDesign.gaseous()).heatLoad()).isLessThan(bare.heatLoad());
    }

    /** Limit: with almost no film the wall feels none. */
    @Test
    void aVanishingFilmChangesNothing() {
        JacketResult trace = withFilm(1e-5, FilmDesign.liquid());
        assertThat(trace.heatLoad()).isCloseTo(bare.heatLoad(), within(2e-3 * bare.heatLoad()));
    }

    /** Limits: a film as fast as the gas mixes least, and up to a short way behind the slot the wall is as cool as the film. */
    @Test
    void aFilmCoolsFullyAtItsSlotAndMixesLeastAtEqualVelocity() {
        assertThat(HatchPapell.effectiveness(0.03, 1e4, 1)).isEqualTo(1);
        assertThat(HatchPapell.velocityFactor(200, 200)).isCloseTo(1, within(1e-12));
        for (double film : new double[] {50, 100, 190, 210, 300, 800}) {
            assertThat(HatchPapell.velocityFactor(200, film)).isGreaterThan(1);
        }
    }

    /** Worked by hand, the sides from memory: 1 + 0.4 atan 1 = 1.314159 at half the gas's speed, 2^1.5 = 2.828427 at twice. */
    @Test
    void aSlowFilmMixesLessThanAFastOne() {
        assertThat(HatchPapell.velocityFactor(200, 100)).isCloseTo(1.314159, within(1e-6));
        assertThat(HatchPapell.velocityFactor(200, 400)).isCloseTo(2.828427, within(1e-6));
        assertThat(HatchPapell.velocityFactor(1e9, 1)).isLessThan(1 + 0.2 * Math.PI);
    }

    /** Worked by hand: 10 000^0.125 = √10 = 3.16228, exp(-0.96 · 3.16228) = exp(-3.03579) = 0.048037. */
    @ParameterizedTest
    @CsvSource({"1.0, 1e4, 1, 0.048037", "0.29, 1e4, 1, 0.453586", "0.29, 256, 2, 0.367879"})
    void filmEffectivenessIsTheWorkedNumber(double exchange, double slotGroup, double factor, double expected) {
        assertThat(HatchPapell.effectiveness(exchange, slotGroup, factor)).isCloseTo(expected, within(1e-5 * expected));
    }

    @Test
    void theNozzleBeyondTheJacketRadiates() {
        CoolantRoute shorter = new CoolantRoute(
                CoolantRoute.Kind.COUNTERFLOW,
                OptionalDouble.empty(),
                OptionalDouble.of(8),
                OptionalDouble.empty(),
                0.5);
        JacketCase cut = SOLVER.sized(question.withDesign(
                question.design().withChannels(Jackets.channels()).withRoute(shorter)));
        JacketResult result = SOLVER.solve(cut);
        assertThat(bare.extension()).isEmpty();
        ExtensionResult extension = result.extension().orElseThrow();
        assertThat(extension.startTemperature()).isGreaterThan(extension.exitTemperature());
        assertThat(result.limits()).anyMatch(l -> l.name().equals("cooling.extension_temperature"));
        assertThat(result.warnings()).anyMatch(w -> w.message().contains("the jacket ends at area ratio 8"));
    }

    @Test
    void aCoatingProtectsTheMetal() {
        Coating zirconia = new Coating(50e-6, 1.2, 1600);
        WallDesign wall = question.design().wall();
        WallDesign coated = new WallDesign(
                wall.material(),
                wall.thickness(),
                wall.closeoutMaterial(),
                wall.closeoutThickness(),
                java.util.Optional.of(zirconia));
        JacketResult result = SOLVER.solve(question.withDesign(question.design().withWall(coated)));
        assertThat(result.peakWallTemperature()).isLessThan(bare.peakWallTemperature() - 50);
        assertThat(result.limits()).anyMatch(l -> l.name().equals("cooling.coating_temperature"));
    }
}

package dev.penstock.cycles.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.Cases;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.StationOrder;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.provenance.Traced;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Components and machines one by one, outside any cycle: what each conserves and what it refuses. */
class FlowsheetTest {

    private static final String DEMO =
            "dotterel.toml"; // pumps driven by motors, so that nothing is left to be solved for
    private static final PartKey VALVE = PartKey.of(PartKind.VALVE, "test", "test valve");
    private static final PartKey BRANCH = PartKey.of(PartKind.SPLIT, "test", "test branch");
    private static final double FLOW = 8;
    private static final double FACE_RATIO = 1.02;
    private static Concept concept;
    private static ChamberPerformance chamber;

    @BeforeAll
    static void balanceOnce() {
        concept = Concepts.read(DEMO);
        chamber = Concepts.balance(DEMO).chamber();
    }

    private static Flowsheet sheet(boolean recording) {
        Models models = new Models(SpeciesLibrary.open(Path.of("").toAbsolutePath()), Cases.solver());
        CarriedValues assumed = new CarriedValues(
                FLOW, FACE_RATIO, 1, List.of(new CarriedValues.Jacket(2e5, 3e5, Optional.empty())), chamber);
        BalanceModels balanceModels = new BalanceModels(concept, models, Optional.empty());
        return recording
                ? Flowsheet.recording(balanceModels, assumed, StationOrder.asLaid())
                : Flowsheet.passing(balanceModels, assumed);
    }

    private static Stream fuel(Flowsheet sheet) {
        return sheet.tank(Side.FUEL, Traced.of(2.5), Traced.of(4e5));
    }

    /** Identity: the two flows of a mixture ratio have that ratio and the sum that was asked for. */
    @Test
    void theTotalIsPartedAtTheMixtureRatio() {
        double oxidizer = sheet(false).oxidizerOf(Traced.of(10)).value();
        assertThat(oxidizer / (10 - oxidizer)).isCloseTo(concept.mixtureRatio(), withinPercentage(1e-10));
    }

    /** Identity: what a pressure budget adds upstream is what the components take downstream. */
    @Test
    void deliveryTakesWhatTheBudgetAllowsFor() {
        Flowsheet sheet = sheet(false);
        assertThat(sheet.facePressure().value())
                .isCloseTo(FACE_RATIO * concept.chamberPressure(), withinPercentage(1e-10));
        Traced injector = sheet.injectorInlet(Side.OXIDIZER);
        assertThat(injector.value() - sheet.facePressure().value())
                .isCloseTo(concept.feed(Side.OXIDIZER).injectorLoss() * concept.chamberPressure(), within(1e-3));
        double needed = sheet.upstream(Side.OXIDIZER, injector).value();
        Stream tank = sheet.tank(Side.OXIDIZER, Traced.of(5), Traced.of(needed));
        Stream delivered = sheet.deliver(Side.OXIDIZER, tank, injector);
        assertThat(delivered.pressure()).isEqualTo(injector.value());
        double line = concept.feed(Side.OXIDIZER).lineLoss() * concept.chamberPressure();
        double valve = concept.feed(Side.OXIDIZER).valveLoss() * concept.chamberPressure();
        double jacket = concept.cooledBy(Side.OXIDIZER) ? 3e5 : 0;
        assertThat(needed - injector.value()).isCloseTo(line + valve + jacket, within(1e-3));
    }

    /** Identity: a pressure loss keeps flow and enthalpy, and pressure never rises on its own. */
    @Test
    void aPressureLossKeepsFlowAndEnthalpy() {
        Flowsheet sheet = sheet(false);
        Stream in = fuel(sheet);
        Stream out = sheet.valve(Side.FUEL, VALVE, in, Traced.of(3e5));
        assertThat(out.enthalpy()).isEqualTo(in.enthalpy());
        assertThat(out.fuelFlow()).isEqualTo(2.5);
        assertThat(out.oxidizerFlow()).isZero();
        assertThat(out.pressure()).isEqualTo(3e5);
        for (double wrong : new double[] {0, -1e5, 4.1e5, Double.NaN}) {
            assertThatThrownBy(() -> sheet.valve(Side.FUEL, VALVE, in, Traced.of(wrong)))
                    .isInstanceOf(OutsideValidity.class)
                    .hasMessageContaining("test valve");
        }
    }

    /** Identity: branches add up to the stream, and brought together again they are the stream. */
    @Test
    void branchesAddUpAndComeTogetherAgain() {
        Flowsheet sheet = sheet(false);
        Stream in = fuel(sheet);
        List<Stream> ways = sheet.split(BRANCH, in, Traced.of(0.3));
        assertThat(ways.get(0).flow()).isCloseTo(0.75, withinPercentage(1e-10));
        assertThat(ways.get(0).flow() + ways.get(1).flow()).isEqualTo(in.flow());
        Stream lower = sheet.valve(Side.FUEL, VALVE, ways.get(1), Traced.of(3e5));
        Stream merged = sheet.merge(PartKey.of(PartKind.MERGE, "test", "test merge"), ways.get(0), lower);
        assertThat(merged.flow()).isCloseTo(in.flow(), withinPercentage(1e-12));
        assertThat(merged.enthalpyFlow()).isCloseTo(in.enthalpyFlow(), withinPercentage(1e-12));
        assertThat(merged.pressure()).isEqualTo(3e5);
        for (double wrong : new double[] {0, 1, -0.1, Double.NaN}) {
            assertThatThrownBy(() -> sheet.split(BRANCH, in, Traced.of(wrong)))
                    .isInstanceOf(OutsideValidity.class)
                    .hasMessageContaining("test branch");
        }
    }

    /** Identity: the chamber has what the streams bring, less the heat into the jacket. */
    @Test
    void theChamberHasWhatReachesItLessTheHeatOfTheJacket() {
        Flowsheet sheet = sheet(false);
        Stream oxidizer = sheet.tank(Side.OXIDIZER, Traced.of(5.5), Traced.of(4e5));
        Stream fuel = fuel(sheet);
        sheet.chamber(List.of(oxidizer, fuel));
        assertThat(sheet.chamberEnthalpy() * 8)
                .isCloseTo(5.5 * oxidizer.enthalpy() + 2.5 * fuel.enthalpy() - 2e5, within(1e-3));
    }

    /**
     * Identity and limits of a pump: the liquid gains the power of its shaft; that is at least the work of a liquid that does not give
     * way, dp/ρ, at an efficiency of 1, and for pumps of this size less than three times as much.
     */
    @Test
    void aPumpGivesItsPowerToTheLiquid() {
        Flowsheet sheet = sheet(true);
        Machinery.Pumped pumped =
                sheet.machinery().mainPumps(Traced.of(5.5), Traced.of(60e5), Traced.of(2.5), Traced.of(70e5));
        sheet.machinery().motors();
        double given = 0;
        for (Component c : sheet.components()) {
            if (c.kind() == PartKind.PUMP) {
                Station in = sheet.stations().get(c.inlets().get(0) - 1);
                Station out = sheet.stations().get(c.outlets().get(0) - 1);
                assertThat(out.massFlow()).isEqualTo(in.massFlow());
                assertThat(c.workIn())
                        .isCloseTo(out.massFlow() * (out.enthalpy() - in.enthalpy()), withinPercentage(1e-6));
                double ideal = out.massFlow() * (out.pressure() - in.pressure()) / in.density();
                assertThat(c.workIn()).isBetween(0.98 * ideal, 3 * ideal);
                given += c.workIn();
            }
        }
        assertThat(pumped.oxidizer().pressure()).isEqualTo(60e5);
        assertThat(pumped.fuel().pressure()).isEqualTo(70e5);
        double motors = sheet.components().stream()
                .filter(c -> c.kind() == PartKind.MOTOR)
                .mapToDouble(Component::workIn)
                .sum();
        double needed = sheet.machinery().shafts().stream()
                .mapToDouble(Shaft::neededPower)
                .sum();
        assertThat(-motors).isCloseTo(needed, withinPercentage(1e-10)).isGreaterThanOrEqualTo(given);
        assertThat(given).isGreaterThan(0);
    }

    /** Without recording the same numbers move and nothing is kept. */
    @Test
    void recordingChangesNoNumber() {
        Flowsheet bare = sheet(false);
        Flowsheet kept = sheet(true);
        Traced discharge = Traced.of(60e5);
        Machinery.Pumped one = bare.machinery().mainPumps(Traced.of(5.5), discharge, Traced.of(2.5), discharge);
        Machinery.Pumped two = kept.machinery().mainPumps(Traced.of(5.5), discharge, Traced.of(2.5), discharge);
        assertThat(one.fuel().enthalpy()).isEqualTo(two.fuel().enthalpy());
        assertThat(one.oxidizer().enthalpy()).isEqualTo(two.oxidizer().enthalpy());
        assertThat(bare.components()).isEmpty();
        assertThat(bare.stations()).isEmpty();
        assertThat(kept.stations()).hasSize(6);
    }

    @Test
    void aDischargeBelowTheTankPressureNeedsNoPump() {
        assertThatThrownBy(() -> sheet(false)
                        .machinery()
                        .mainPumps(Traced.of(5.5), Traced.of(0.5e5), Traced.of(2.5), Traced.of(70e5)))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("no pump is needed there");
    }

    /** A residual is kept with its scale as it was stated. */
    @Test
    void whatMustVanishIsKeptAsStated() {
        Flowsheet sheet = sheet(false);
        sheet.closes("test balance", "W", 3, 1500, List::of);
        assertThat(sheet.residuals()).singleElement().satisfies(r -> {
            assertThat(r.name()).isEqualTo("test balance");
            assertThat(r.value()).isEqualTo(3);
            assertThat(r.scale()).isEqualTo(1500);
        });
    }

    /** A sheet of a cycle whose pumps a small burner drives, on which both propellants stand behind their pumps. */
    private static final class Driven {

        final Flowsheet sheet;
        final Machinery.Pumped pumped;
        final Concept concept = Concepts.read("heron.toml");

        Driven() {
            Models models = new Models(SpeciesLibrary.open(Path.of("").toAbsolutePath()), Cases.solver());
            List<CarriedValues.Jacket> jackets = concept.cooling().stream()
                    .map(circuit -> new CarriedValues.Jacket(2e5, 3e5, Optional.empty()))
                    .toList();
            sheet = Flowsheet.recording(
                    new BalanceModels(concept, models, Optional.empty()),
                    new CarriedValues(
                            100,
                            FACE_RATIO,
                            1,
                            jackets,
                            Concepts.balance("heron.toml").chamber()),
                    StationOrder.asLaid());
            pumped = sheet.machinery().mainPumps(Traced.of(70), Traced.of(9e6), Traced.of(30), Traced.of(10e6));
        }

        Stream burnt() {
            return sheet.burn(
                    Burner.GENERATOR,
                    sheet.split(BRANCH, pumped.oxidizer(), Traced.of(0.8 / 70)).get(0),
                    sheet.split(BRANCH, pumped.fuel(), Traced.of(2.0 / 30)).get(0),
                    Traced.of(6e6));
        }

        Station station(Stream stream) {
            return sheet.stations().get(stream.station() - 1);
        }
    }

    /** Conservation: a burner mixes flows and enthalpies; the gas says what it is made of. */
    @Test
    void aBurnerKeepsMassAndEnthalpy() {
        Driven driven = new Driven();
        Stream gas = driven.burnt();
        assertThat(gas.oxidizerFlow()).isCloseTo(0.8, withinPercentage(1e-9));
        assertThat(gas.fuelFlow()).isCloseTo(2.0, withinPercentage(1e-9));
        assertThat(gas.enthalpyFlow())
                .isCloseTo(
                        0.8 * driven.pumped.oxidizer().enthalpy()
                                + 2.0 * driven.pumped.fuel().enthalpy(),
                        withinPercentage(1e-9));
        assertThat(gas.content()).isEqualTo(Content.BURNT_GAS);
        assertThat(driven.pumped.fuel().content()).isEqualTo(Content.FUEL);
        assertThat(driven.pumped.oxidizer().content()).isEqualTo(Content.OXIDIZER);
        assertThat(driven.station(gas).temperature())
                .isCloseTo(driven.sheet.gases().get(Burner.GENERATOR).inlet().temperature(), withinPercentage(1e-6));
        driven.sheet.closesTemperature(Burner.GENERATOR, gas);
        double wanted =
                driven.concept.burners().get(Burner.GENERATOR).temperature().orElseThrow();
        assertThat(driven.sheet.residuals()).singleElement().satisfies(r -> {
            assertThat(r.value()).isCloseTo(driven.station(gas).temperature() - wanted, within(1e-3));
            assertThat(r.scale()).isEqualTo(wanted);
        });
    }

    /** First and second law: a turbine takes from the gas what its shaft gets, and leaves it with more entropy, not less. */
    @Test
    void aTurbineTakesFromTheGasWhatTheShaftGets() {
        Driven driven = new Driven();
        TurbinePlace place = driven.concept.shafts().oneTurbine() ? TurbinePlace.MAIN : TurbinePlace.FUEL;
        Stream gas = driven.sheet.hotDuct(PartKey.of(PartKind.LINE, "test", "test duct"), driven.burnt());
        double share = 1 - driven.concept.gasPath().ductLoss();
        assertThat(gas.pressure()).isCloseTo(6e6 * share, withinPercentage(1e-9));
        Stream exhaust = driven.sheet.machinery().turbine(place, gas, Traced.of(gas.pressure() / 15));
        Component turbine = driven.sheet.components().stream()
                .filter(c -> c.key().equals(PartKey.turbine(place)))
                .findFirst()
                .orElseThrow();
        assertThat(-turbine.workIn())
                .isCloseTo(gas.flow() * (gas.enthalpy() - exhaust.enthalpy()), withinPercentage(1e-9))
                .isPositive();
        var fluid = ((Medium.Gas) gas.medium()).fluid();
        double before = fluid.atPressureEnthalpy(gas.pressure(), gas.enthalpy()).entropy();
        double behind =
                fluid.atPressureEnthalpy(exhaust.pressure(), exhaust.enthalpy()).entropy();
        assertThat(behind).isGreaterThan(before);
        double ideal = gas.enthalpy()
                - fluid.atPressureEntropy(exhaust.pressure(), before).enthalpy();
        assertThat((gas.enthalpy() - exhaust.enthalpy()) / ideal).isBetween(0.05, 0.95);
        driven.sheet.machinery().closesShafts();
        double needed = driven.sheet.machinery().shafts().stream()
                .filter(shaft -> !shaft.turbines().isEmpty())
                .mapToDouble(Shaft::neededPower)
                .sum();
        assertThat(driven.sheet.residuals())
                .anySatisfy(r -> assertThat(r.value()).isCloseTo(-turbine.workIn() - needed, withinPercentage(1e-6)));
    }

    /** Identity: a second pump on the shaft adds its own power to what the shaft needs and to its liquid. */
    @Test
    void aKickPumpAddsItsPowerToTheShaft() {
        Driven driven = new Driven();
        double before = needed(driven);
        Stream little = driven.sheet
                .split(BRANCH, driven.pumped.fuel(), Traced.of(0.05))
                .get(0);
        Stream raised = driven.sheet.machinery().kickPump(Side.FUEL, little, Traced.of(16e6));
        double power = little.flow() * (raised.enthalpy() - little.enthalpy());
        double least = little.flow() * 6e6 / driven.station(little).density();
        assertThat(raised.pressure()).isEqualTo(16e6);
        assertThat(power).isBetween(0.98 * least, 5 * least);
        double losses = (needed(driven) - before) / power;
        assertThat(losses).isBetween(1.0, 1.1);
    }

    private static double needed(Driven driven) {
        return driven.sheet.machinery().shafts().stream()
                .mapToDouble(Shaft::neededPower)
                .sum();
    }

    /** An exhaust duct loses the share of pressure that is stated, nothing of its energy. */
    @Test
    void theExhaustLosesWhatItsDuctIsStatedToLose() {
        Driven driven = new Driven();
        Stream gas = driven.burnt();
        driven.sheet.exhaust(gas);
        Stream out = driven.sheet.exhaustStreams().get(0);
        double loss = driven.concept.gasPath().exhaust().ductLoss();
        assertThat(out.pressure()).isCloseTo(gas.pressure() * (1 - loss), withinPercentage(1e-9));
        assertThat(out.enthalpyFlow()).isEqualTo(gas.enthalpyFlow());
    }
}

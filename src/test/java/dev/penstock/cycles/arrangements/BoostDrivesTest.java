package dev.penstock.cycles.arrangements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.hardware.HardwareCount;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.ShaftKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.diagram.DrawnEngine;
import dev.penstock.reports.diagram.FlowDiagram;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Boost pumps driven by hot gas, by turbine exhaust and by warmed fuel. Conservation, and what a part costs. */
class BoostDrivesTest {

    private static final EngineBalance DUMPED = balance(
            "heron.toml", Map.of("boost_pumps.oxidizer.drive", "hot-gas", "boost_pumps.fuel.drive", "turbine-exhaust"));
    private static final EngineBalance CLOSED = balance(
            "tern.toml", Map.of("boost_pumps.oxidizer.drive", "hot-gas", "boost_pumps.fuel.drive", "warm-fuel"));

    private static EngineBalance balance(String demo, Map<String, String> changes) {
        return Concepts.STUDY.balance(Concepts.READER.read(Path.of("cycles", demo), changes));
    }

    private static Component turbine(EngineBalance balance, Side side) {
        PartKey key = PartKey.boostTurbine(side);
        return balance.components().stream()
                .filter(c -> c.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Station before(EngineBalance balance, Side side) {
        return balance.station(turbine(balance, side).inlets().get(0));
    }

    private static Station behind(EngineBalance balance, Side side) {
        return balance.station(turbine(balance, side).outlets().get(0));
    }

    /** What the stations of a turbine lose, its boost pump's shaft has, less its bearings' 1.5 %. */
    private static void powersAgree(EngineBalance balance, Side side) {
        Station in = before(balance, side);
        Station out = behind(balance, side);
        double taken = in.massFlow() * (in.enthalpy() - out.enthalpy());
        var shaft = balance.machines().shafts().get(ShaftKey.boostOf(side));
        assertThat(shaft.powerDelivered()).isCloseTo(taken, within(1e-7 * taken));
        assertThat(shaft.powerAbsorbed()).isCloseTo(0.985 * taken, within(1e-6 * taken));
        assertThat(out.pressure()).isLessThan(in.pressure());
        assertThat(out.temperature()).isLessThan(in.temperature());
    }

    @Test
    void gasFromBeforeTheTurbineAndExhaustBehindItDriveTheTwo() {
        powersAgree(DUMPED, Side.OXIDIZER);
        powersAgree(DUMPED, Side.FUEL);
        // the fuel's turbine passes all that leaves, the oxidizer's a part of it
        double exhaust = DUMPED.exhausts().get(0).massFlow();
        assertThat(before(DUMPED, Side.FUEL).massFlow()).isCloseTo(exhaust, within(1e-9 * exhaust));
        assertThat(before(DUMPED, Side.OXIDIZER).massFlow()).isLessThan(0.1 * exhaust);
        assertThat(before(DUMPED, Side.OXIDIZER).temperature()).isCloseTo(930, within(0.01));
        assertThat(DUMPED.residualWorst()).isLessThan(1e-8);
    }

    @Test
    void inAClosedCycleGasAndWarmFuelGoOnToTheChamber() {
        powersAgree(CLOSED, Side.OXIDIZER);
        powersAgree(CLOSED, Side.FUEL);
        assertThat(before(CLOSED, Side.FUEL).temperature()).isBetween(100.0, 400.0);
        assertThat(behind(CLOSED, Side.FUEL).pressure())
                .isGreaterThan(before(CLOSED, Side.OXIDIZER).pressure());
        assertThat(CLOSED.exhausts()).isEmpty();
        assertThat(CLOSED.engine().massFlow())
                .isCloseTo(
                        CLOSED.chamber().massFlow(),
                        within(1e-8 * CLOSED.chamber().massFlow()));
        assertThat(CLOSED.residualWorst()).isLessThan(1e-8);
    }

    /** Two boost pumps with a turbine each beside one turbopump: counted, weighed and drawn. */
    @Test
    void theirTurbinesAreCountedWeighedAndDrawn() {
        HardwareCount count = HardwareCount.of(DUMPED);
        assertThat(count.turbines()).isEqualTo(3);
        assertThat(count.pumps()).isEqualTo(4);
        assertThat(count.gears()).isZero();
        assertThat(DUMPED.mass().items().toString())
                .contains("oxidizer boost shaft")
                .contains("fuel boost shaft");
        assertThat(FlowDiagram.svg("t", "t", DrawnEngine.of(DUMPED), Optional.empty()))
                .contains("oxidizer boost turbine")
                .contains("fuel boost turbine")
                .doesNotContain("hydraulic");
    }

    @Test
    void aDriveWithoutItsGasIsRefusedInOneSentence() {
        refused("tern.toml", "turbine-exhaust", "has no exhaust");
        refused("avocet.toml", "hot-gas", "no burner");
        refused("whimbrel.toml", "warm-fuel", "no jacket of this engine is cooled by the fuel");
    }

    private static void refused(String demo, String drive, String why) {
        assertThatThrownBy(() ->
                        Concepts.READER.read(Path.of("cycles", demo), Map.of("boost_pumps.oxidizer.drive", drive)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("boost_pumps.oxidizer.drive")
                .hasMessageContaining(drive)
                .hasMessageContaining(why);
    }
}

package dev.penstock.cycles.arrangements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingOutcome;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.Trail;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Two circuits that each drive a turbine. */
class DualExpanderTest {

    private static final String DEMO = "phalarope.toml";

    /** Identity: what the chamber gives is what the jackets take, and each coolant carries off what its jacket takes. */
    @Test
    void theHeatOfBothJacketsComesFromTheChamber() {
        EngineBalance balance = Concepts.balance(DEMO);
        assertThat(balance.cooling()).hasSize(2);
        double taken = 0;
        for (JacketResult jacket : balance.cooling()) {
            Component part = part(balance, jacket.circuit().id("jacket"));
            Station in = balance.station(part.inlets().get(0));
            Station out = balance.station(part.outlets().get(0));
            double carried = in.massFlow() * (out.enthalpy() - in.enthalpy());
            assertThat(jacket.heatLoad()).isPositive().isCloseTo(carried, within(1e-7 * carried));
            taken += jacket.heatLoad();
        }
        assertThat(part(balance, "chamber").heatIn()).isCloseTo(-taken, within(1e-7 * taken));
    }

    private static Component part(EngineBalance balance, String id) {
        return balance.components().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Definition of the cycle: each turbine runs on the propellant that its pump delivers. */
    @Test
    void noShaftCarriesBothPropellants() {
        EngineBalance balance = Concepts.balance(DEMO);
        assertThat(balance.shafts()).hasSize(2);
        for (String side : List.of("fuel", "oxidizer")) {
            String medium = side.equals("fuel") ? "hydrogen" : "oxygen";
            Component turbine = part(balance, "turbine." + side);
            Component pump = part(balance, "pump." + side);
            assertThat(balance.station(turbine.inlets().get(0)).medium()).isEqualTo(medium);
            assertThat(balance.station(pump.inlets().get(0)).medium()).isEqualTo(medium);
        }
    }

    /** Both walls are held against their limits, and each circuit's numbers lead to its own inputs. */
    @Test
    void bothCircuitsHaveLimitsAndATrail() {
        EngineBalance balance = Concepts.balance(DEMO);
        for (String owner : List.of("cooling", "nozzle jacket")) {
            assertThat(balance.limits()).anyMatch(l -> l.name().equals(owner + ".wall_temperature"));
            assertThat(balance.limits()).anyMatch(l -> l.name().equals(owner + ".pressure_drop"));
        }
        Trail trail = BalanceTrail.of(balance);
        for (String path : List.of("cooling.heat_load_W", "circuits.nozzle-jacket.heat_load_W")) {
            assertThat(trail.has(path)).as(path).isTrue();
        }
        LimitCheck drop = balance.limits().stream()
                .filter(l -> l.name().equals("nozzle jacket.pressure_drop"))
                .findFirst()
                .orElseThrow();
        assertThat(trail.entry(drop.path() + ".limit").orElseThrow().inputs())
                .contains("concept.cooling.circuits[0].limits.pressure_drop_fraction");
        assertThat(balance.concept().document().inputs())
                .anyMatch(i -> i.key().equals("cooling.circuits[0].limits.pressure_drop_fraction")
                        && i.spread().isPresent());
    }

    /** A larger part of the nozzle to the oxidizer warms it more and the fuel less. */
    @Test
    void theBorderPartsTheHeat() {
        EngineBalance near = Concepts.balance(DEMO);
        EngineBalance far = Concepts.STUDY.balance(
                Concepts.READER.reread(Concepts.read(DEMO), Map.of("cooling.end_area_ratio", "2")));
        assertThat(far.cooling().get(0).heatLoad())
                .isGreaterThan(near.cooling().get(0).heatLoad());
        assertThat(far.cooling().get(1).heatLoad())
                .isLessThan(near.cooling().get(1).heatLoad());
    }

    @Test
    void theLimitIsFoundAndTheEngineThrottles() {
        LimitResult limit = Concepts.STUDY.limit(Concepts.read(DEMO));
        assertThat(limit.chamberPressure()).isGreaterThan(3e6);
        double below = 0.98 * limit.chamberPressure();
        assertThat(Concepts.STUDY
                        .balance(Concepts.read(DEMO).withChamberPressure(below))
                        .withinLimits())
                .as("from afar, with another set of stages than its first guess has")
                .isTrue();
        List<OperatingOutcome> outcomes = Concepts.STUDY.offDesign(
                Concepts.balance(DEMO), List.of(OperatingCommand.throttle(1), OperatingCommand.throttle(0.9)));
        assertThat(outcomes).allSatisfy(o -> assertThat(o.reason()).isEmpty());
        assertThat(outcomes.get(1).point().orElseThrow().vacuumThrust())
                .isLessThan(outcomes.get(0).point().orElseThrow().vacuumThrust());
    }
}

package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.reading.ConceptTemplate;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every cycle must pass: identities of conservation, and a written concept that balances. */
class CycleContractTest {

    static Stream<Cycle> cycles() {
        return Cycle.all().stream();
    }

    /** Identity: mass and energy in equals out, at every component and for the whole engine. */
    @ParameterizedTest
    @MethodSource("cycles")
    void theTemplateBalancesAndConserves(Cycle cycle) {
        String text = new ConceptTemplate(Concepts.FLUIDS, VehicleInputs.IN_CONCEPT).text(cycle, "New engine");
        EngineBalance balance = Concepts.STUDY.balance(Concepts.READER.parse("new", text, Map.of()));
        assertThat(balance.audit().worst()).isLessThan(1e-8);
        assertThat(balance.residualWorst()).isLessThan(1e-8);
        assertThat(balance.engine().cycle()).isEqualTo(cycle.id());
        // effort by counts: no template needs the way from below, which multiplies it; where stages ask for each other
        // in turn, each set is solved
        assertThat(balance.effort().rounds()).isLessThanOrEqualTo(24);
        assertThat(balance.effort().evaluations()).isLessThanOrEqualTo(110);
        assertThat(balance.engine().mixtureRatio())
                .isCloseTo(
                        balance.concept().mixtureRatio(),
                        within(1e-9 * balance.concept().mixtureRatio()));
    }

    /**
     * Identity: what leaves, through the chamber and through the exhausts of dumped gas if there are any, has the enthalpy of
     * the tanks plus pump power less turbine power, whatever passes in between. Holds to 1e-8 of the enthalpy.
     */
    @ParameterizedTest
    @MethodSource("cycles")
    void chamberAndExhaustsHaveTheEnthalpyOfTheTanks(Cycle cycle) {
        EngineBalance balance = Concepts.STUDY.balance(Concepts.example(cycle));
        List<Station> dumped = balance.components().stream()
                .filter(c -> c.kind() == PartKind.EXHAUST)
                .flatMap(c -> c.inlets().stream())
                .map(balance::station)
                .toList();
        assertThat(dumped).hasSameSizeAs(balance.exhausts());
        double dumpedFlow = dumped.stream().mapToDouble(Station::massFlow).sum();
        double dumpedEnthalpy =
                dumped.stream().mapToDouble(s -> s.massFlow() * s.enthalpy()).sum();
        double tanks = balance.components().stream()
                .filter(c -> c.kind() == PartKind.TANK)
                .map(c -> balance.station(c.outlets().get(0)))
                .mapToDouble(s -> s.massFlow() * s.enthalpy())
                .sum();
        double work = balance.components().stream()
                .filter(c -> c.kind() != PartKind.MOTOR)
                .mapToDouble(Component::workIn)
                .sum();
        Station chamber = balance.components().stream()
                .filter(c -> c.kind() == PartKind.CHAMBER)
                .map(c -> balance.station(c.outlets().get(0)))
                .findFirst()
                .orElseThrow();
        assertThat(chamber.enthalpy())
                .isCloseTo(
                        (tanks + work - dumpedEnthalpy) / chamber.massFlow(),
                        within(1e-8 * Math.abs(chamber.enthalpy())));
        assertThat(chamber.massFlow() + dumpedFlow)
                .isCloseTo(balance.engine().massFlow(), within(1e-9 * chamber.massFlow()));
    }

    /** Identity: enthalpy in the station table is that of the fluid's own model at its pressure and temperature. */
    @ParameterizedTest
    @MethodSource("cycles")
    void liquidStationsCarryTheEnthalpyOfTheirState(Cycle cycle) {
        EngineBalance balance = Concepts.STUDY.balance(Concepts.example(cycle));
        for (Side side : Side.values()) {
            var propellant = balance.concept().feed(side).propellant();
            balance.stations().stream()
                    .filter(s -> s.medium().equals(propellant.id()))
                    .forEach(s -> {
                        double own = propellant
                                .fluid()
                                .atPressureTemperature(s.pressure(), s.temperature())
                                .enthalpy();
                        assertThat(s.enthalpy())
                                .as(s.name())
                                .isCloseTo(propellant.absoluteEnthalpy(own), within(2.0)); // J/kg of some 1e6
                    });
        }
    }

    @ParameterizedTest
    @MethodSource("cycles")
    void everyStationBelongsToAComponentThatFeedsIt(Cycle cycle) {
        EngineBalance balance = Concepts.STUDY.balance(Concepts.example(cycle));
        List<Integer> produced =
                balance.components().stream().flatMap(c -> c.outlets().stream()).toList();
        List<Integer> consumed =
                balance.components().stream().flatMap(c -> c.inlets().stream()).toList();
        List<Integer> numbers = balance.stations().stream().map(Station::number).toList();
        assertThat(produced).containsExactlyInAnyOrderElementsOf(numbers);
        assertThat(consumed).containsExactlyInAnyOrderElementsOf(numbers);
    }

    @ParameterizedTest
    @MethodSource("cycles")
    void pressureStepsMeetFromTankToChamber(Cycle cycle) {
        EngineBalance balance = Concepts.STUDY.balance(Concepts.example(cycle));
        assertThat(balance.pressureLadder()).isNotEmpty();
        balance.pressureLadder().forEach(step -> {
            boolean pump = step.part().kind() == PartKind.PUMP;
            assertThat(step.rise() > 0).as(step.part().label()).isEqualTo(pump);
        });
    }

    @ParameterizedTest
    @MethodSource("cycles")
    void aHigherChamberPressureAsksForMore(Cycle cycle) {
        Concept concept = Concepts.example(cycle);
        EngineBalance low = Concepts.STUDY.balance(concept);
        EngineBalance high = Concepts.STUDY.balance(concept.withChamberPressure(1.15 * concept.chamberPressure()));
        if (cycle.traits().pumped()) {
            double lowPower = low.pumps().stream().mapToDouble(p -> p.power()).sum();
            double highPower = high.pumps().stream().mapToDouble(p -> p.power()).sum();
            assertThat(highPower).isGreaterThan(1.1 * lowPower);
        }
        double lowTop =
                low.stations().stream().mapToDouble(Station::pressure).max().orElseThrow();
        double highTop =
                high.stations().stream().mapToDouble(Station::pressure).max().orElseThrow();
        assertThat(highTop).isGreaterThan(1.1 * lowTop);
    }
}

package dev.penstock.cycles.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.Port;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.errors.ConservationViolated;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The audit of a small engine laid by hand: a tank, a pump, a jacket and a chamber. What is wrong in it must be seen, and by how much. */
class AuditorTest {

    private static final PartKey PUMP = PartKey.pump(PumpKey.main(Side.FUEL));
    private static final PartKey JACKET = PartKey.jacket(CircuitKey.FIRST);
    private static final double HEAT = 4e6;
    private static final double WORK = 5e4;

    private static Station station(int number, double flow, double enthalpy) {
        return new Station(
                number,
                PartKey.of(PartKind.LINE, "x", "x").at(Port.BEHIND),
                "water",
                Content.FUEL,
                1e5,
                300,
                1000,
                enthalpy,
                flow);
    }

    private static EnergyAudit audit(double flowBehindPump, double enthalpyBehindPump, double heatOfJacket) {
        double behindJacket = (2e4 + WORK / 10) + HEAT / 10;
        List<Station> stations = List.of(
                station(1, 10, 2e4),
                station(2, flowBehindPump, enthalpyBehindPump),
                station(3, 10, behindJacket),
                station(4, 10, behindJacket - HEAT / 10));
        List<Component> components = List.of(
                new Component(PartKey.tank(Side.FUEL), List.of(), List.of(1), 0, 0),
                new Component(PUMP, List.of(1), List.of(2), 0, WORK),
                new Component(JACKET, List.of(2), List.of(3), HEAT, 0),
                new Component(PartKey.CHAMBER, List.of(3), List.of(4), -HEAT, 0),
                new Component(PartKey.NOZZLE, List.of(4), List.of(), 0, 0));
        return new Auditor(stations, components).audit(Map.of(JACKET, heatOfJacket), List.of());
    }

    private static EnergyAudit.Item item(EnergyAudit audit, PartKey part) {
        return audit.items().stream()
                .filter(i -> i.component().equals(part.id()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatAddsUpIsLeftAlone() {
        EnergyAudit audit = audit(10, 2e4 + WORK / 10, HEAT);
        assertThat(audit.items())
                .filteredOn(i -> !i.component().equals("engine"))
                .allSatisfy(i -> {
                    assertThat(i.massImbalance()).isZero();
                    assertThat(i.energyImbalance()).isCloseTo(0, within(1e-14));
                });
    }

    /** A leak of 1 % behind the pump is 1 % of mass there, and the other way round at what follows. */
    @Test
    void aLeakIsSeenWhereItIs() {
        EnergyAudit audit = audit(9.9, 2e4 + WORK / 10, HEAT);
        assertThat(item(audit, PUMP).massImbalance()).isCloseTo(0.01, within(1e-12));
        assertThat(item(audit, JACKET).massImbalance()).isCloseTo(-0.01, within(1e-12));
        assertThat(item(audit, PartKey.CHAMBER).massImbalance()).isZero();
        assertThat(audit.worst()).isGreaterThanOrEqualTo(0.01);
        assertThatThrownBy(() -> Auditor.check(audit))
                .isInstanceOf(ConservationViolated.class)
                .hasMessageContaining("mass of " + PUMP.id());
    }

    /** Worked by hand: 100 J/kg too much behind the pump are 1 kW of 250 + 50 + 251 kW. */
    @Test
    void energyFromNowhereIsSeenWhereItIs() {
        EnergyAudit audit = audit(10, 2e4 + WORK / 10 + 100, HEAT);
        double through = 10 * 2e4 + 10 * (2e4 + WORK / 10 + 100) + WORK;
        assertThat(item(audit, PUMP).energyImbalance()).isCloseTo(-1000 / through, within(1e-12));
        assertThat(item(audit, JACKET).energyImbalance()).isPositive();
        assertThatThrownBy(() -> Auditor.check(audit))
                .isInstanceOf(ConservationViolated.class)
                .hasMessageContaining("energy of " + PUMP.id());
    }

    /** The heat that counts is that of the jacket as solved, in the jacket and in the chamber that gives it. */
    @Test
    void aJacketThatTookUpAnotherHeatIsSeen() {
        EnergyAudit audit = audit(10, 2e4 + WORK / 10, HEAT + 400);
        assertThat(item(audit, JACKET).energyImbalance()).isPositive();
        assertThat(item(audit, PartKey.CHAMBER).energyImbalance()).isNegative();
    }

    @Test
    void theBoundIsThatOfAResult() {
        Auditor.check(new EnergyAudit(List.of(new EnergyAudit.Item("a", 1e-8, -1e-8))));
        assertThatThrownBy(() -> Auditor.check(new EnergyAudit(List.of(new EnergyAudit.Item("a", -1.1e-8, 0)))))
                .isInstanceOf(ConservationViolated.class);
        assertThatThrownBy(() -> Auditor.check(new EnergyAudit(List.of(new EnergyAudit.Item("a", 0, 1.1e-8)))))
                .isInstanceOf(ConservationViolated.class);
    }
}

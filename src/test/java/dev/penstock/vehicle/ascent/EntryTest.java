package dev.penstock.vehicle.ascent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import java.util.List;
import org.junit.jupiter.api.Test;

class EntryTest {

    private static final DragTable CONSTANT = new DragTable(List.of(new DragTable.Point(0, 1.2)));

    @Test
    void suttonAndGravesGiveTheFluxOfTheirEquation() {
        // [sutton-graves-1971] 3.0e-4 kg/m3, 7000 m/s, nose radius 1 m: 103.5 W/cm2, recomputed from the constant
        assertThat(StagnationHeating.flux(3.0e-4, 1, 7000)).isCloseTo(103.5e4, within(0.05e4));
    }

    @Test
    void aRadiatingWallFindsItsTemperature() {
        // ε σ T⁴: 1 MW/m2 at 0.8 is 2167 K, recomputed
        assertThat(StagnationHeating.radiativeEquilibrium(1e6, 0.8)).isCloseTo(2167, within(0.5));
    }

    @Test
    void steepEntryFollowsAllenAndEggers() {
        // [allen-eggers-1958] exponential air, straight path, no gravity: highest deceleration v² sin γ/(2 e H),
        // whatever the ballistic coefficient, at 0.607 of the entry speed
        double height = 7200;
        Atmosphere exponential =
                altitude -> new Atmosphere.State(altitude, 0, 250, 1.225 * Math.exp(-altitude / height), 300);
        double radius = 1e9;
        Planet weightless = new Planet(1e-3 * radius, radius, 0);
        Entry.Body body = new Entry.Body(2000, 2, CONSTANT, 0.5);
        Entry.Result result = new Entry(weightless, exponential).fall(body, 150e3, 7000, -Math.PI / 2);
        assertThat(result.peakDeceleration())
                .isCloseTo(
                        7000.0 * 7000 / (2 * Math.E * height), within(1.0)); // 1251.8 m/s2, moments 0.5 s apart at most
    }

    @Test
    void aFallingStageArrivesNearItsTerminalSpeed() {
        // stage of 25 t, 3.7 m across, tail first
        Entry.Body body = new Entry.Body(25e3, 10.75, CONSTANT, 1.8);
        Entry entry = new Entry(Planet.EARTH, new StandardAtmosphere1976());
        Entry.Result result = entry.fall(body, 70e3, 2200, Math.toRadians(20));
        double terminal = Math.sqrt(2 * 25e3 * 9.80665 / (1.225 * 1.2 * 10.75));
        assertThat(result.terminalSpeed()).isCloseTo(terminal, within(0.1));
        assertThat(result.landingSpeed()).isBetween(terminal, 1.15 * terminal);
        assertThat(body.ballisticCoefficient(2)).isCloseTo(25e3 / 1.2 / 10.75, within(1e-9));
        assertThat(result.peakHeatFlux()).isPositive();
        assertThat(result.heatLoad()).isGreaterThan(result.peakHeatFlux()); // longer than a second
    }

    @Test
    void aSlowerEntryIsCooler() {
        Entry entry = new Entry(Planet.EARTH, new StandardAtmosphere1976());
        Entry.Body body = new Entry.Body(25e3, 10.75, CONSTANT, 1.8);
        double fast = entry.fall(body, 60e3, 2200, Math.toRadians(-20)).peakHeatFlux();
        double slow = entry.fall(body, 60e3, 1500, Math.toRadians(-20)).peakHeatFlux();
        assertThat(slow).isLessThan(0.6 * fast);
    }
}

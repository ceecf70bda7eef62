package dev.penstock.cycles.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.errors.InvalidInput;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.mass.MassPart;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Turbine gas through a nozzle that points aside or swivels for roll control. */
class SwivelledExhaustTest {

    private static EngineBalance heron(Map<String, String> changes) {
        return Concepts.STUDY.balance(Concepts.READER.read(Path.of("cycles/heron.toml"), changes));
    }

    /** By definition: of the nozzle's force the cosine of 30° pushes, of its loss by the ambient pressure too. */
    @Test
    void onlyTheCosineOfACantedJetPushes() {
        ExhaustJet aft = new ExhaustJet(PartKey.EXHAUST, 5, 9000, 0.02, 0.01, 2e6, 1.2, 0);
        ExhaustJet canted =
                new ExhaustJet(PartKey.EXHAUST, 5, 9000 * Math.sqrt(0.75), 0.02, 0.01, 2e6, 1.2, Math.toRadians(30));
        assertThat(aft.thrustAt(101_325)).isCloseTo(9000 - 2026.5, within(1e-9));
        assertThat(canted.thrustAt(101_325)).isCloseTo(Math.sqrt(0.75) * (9000 - 2026.5), within(1e-9));
    }

    @Test
    void theEngineLosesTheCosineAndCarriesWhatSwivels() {
        EngineBalance aft = heron(Map.of());
        EngineBalance canted = heron(Map.of("exhaust.cant_angle", "20 deg", "exhaust.swivel_angle", "30 deg"));
        ExhaustJet before = aft.exhausts().get(0);
        ExhaustJet jet = canted.exhausts().get(0);
        assertThat(jet.vacuumThrust() / jet.massFlow() * before.massFlow() / before.vacuumThrust())
                .isCloseTo(Math.cos(Math.toRadians(20)), within(1e-4));
        assertThat(canted.engine().vacuumIsp()).isLessThan(aft.engine().vacuumIsp());
        assertThat(canted.residualWorst()).isLessThan(1e-8);
        // a cone of 15 degrees at 10 kg/m², and 20 g per kN for what swivels it
        double cone = 10 * (jet.exitArea() - jet.throatArea()) / 0.2588190451;
        assertThat(swivel(canted)).isCloseTo(cone + 2e-5 * jet.vacuumThrust(), within(1e-6));
        assertThat(aft.mass().items()).noneMatch(item -> item.owner().equals(PartKey.EXHAUST.label()));
    }

    private static double swivel(EngineBalance balance) {
        return balance.mass().items().stream()
                .filter(item -> item.part() == MassPart.GIMBAL && item.owner().equals(PartKey.EXHAUST.label()))
                .map(MassItem::mass)
                .mapToDouble(mass -> mass.mode())
                .sum();
    }

    @Test
    void gasThatLeavesThroughTheMainNozzleHasNoNozzleToSwivel() {
        assertThatThrownBy(() -> heron(Map.of("exhaust.into_area_ratio", "8", "exhaust.swivel_angle", "30 deg")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("exhaust.swivel_angle")
                .hasMessageContaining("write one of them");
        assertThatThrownBy(() -> heron(Map.of("exhaust.cant_angle", "80 deg")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("allowed is 0 to 60 deg");
    }
}

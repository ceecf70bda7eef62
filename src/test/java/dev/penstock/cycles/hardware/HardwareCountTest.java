package dev.penstock.cycles.hardware;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import org.junit.jupiter.api.Test;

/** Parts of demo engines, counted by hand from their flow diagrams. */
class HardwareCountTest {

    private static HardwareCount of(String file) {
        return HardwareCount.of(Concepts.balance(file));
    }

    /** Heron: one shaft with two pumps and a turbine, a generator with two valves, two main valves, one jacket. */
    @Test
    void aGasGeneratorOnOneShaft() {
        HardwareCount heron = of("heron.toml");
        assertThat(heron.pumps()).isEqualTo(2);
        assertThat(heron.turbines()).isEqualTo(1);
        assertThat(heron.rotors()).isEqualTo(1);
        assertThat(heron.burners()).isEqualTo(1);
        assertThat(heron.injectors()).isEqualTo(2);
        assertThat(heron.jackets()).isEqualTo(1);
        assertThat(heron.valves()).isEqualTo(4);
        assertThat(heron.movingParts()).isEqualTo(5);
        // generator to duct, duct to turbine, turbine to exhaust duct, exhaust duct to its nozzle
        assertThat(heron.hotJoints()).isEqualTo(4);
        assertThat(heron.parts()).isEqualTo(3 + 1 + 1 + 2 + 1 + 4);
    }

    /** Two preburners, two turbines of gas, two boost pumps with turbines of liquid, four shafts; each gas passes duct, turbine, duct, injector and chamber. */
    @Test
    void fullFlowHasMoreOfEverythingHot() {
        HardwareCount gannet = of("gannet.toml");
        assertThat(gannet.burners()).isEqualTo(2);
        assertThat(gannet.turbines()).isEqualTo(2 + 2);
        assertThat(gannet.rotors()).isEqualTo(2 + 2);
        assertThat(gannet.injectors()).isEqualTo(3);
        assertThat(gannet.hotJoints()).isEqualTo(2 * 4);
        assertThat(gannet.parts()).isGreaterThan(of("heron.toml").parts());
    }

    @Test
    void pressureFeedHasNoMachineAndNoHotJoint() {
        HardwareCount dunlin = of("dunlin.toml");
        assertThat(dunlin.machines()).isZero();
        assertThat(dunlin.burners()).isZero();
        assertThat(dunlin.hotJoints()).isZero();
        assertThat(dunlin.movingParts()).isEqualTo(dunlin.valves());
        assertThat(dunlin.joints()).isPositive();
    }
}

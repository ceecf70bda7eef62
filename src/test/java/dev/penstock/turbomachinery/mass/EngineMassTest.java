package dev.penstock.turbomachinery.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Constants;
import java.util.List;
import org.junit.jupiter.api.Test;

class EngineMassTest {

    @Test
    void linearRelationGivesThePublishedExample() {
        // [akin-mass], transcribed: F 1 MN, area ratio 16; value computed independently
        assertThat(WholeEngineRelations.linear(1e6, 16)).isCloseTo(974.8, within(0.1));
        assertThat(1e6 / Constants.STANDARD_GRAVITY / WholeEngineRelations.linear(1e6, 16))
                .isCloseTo(104.6, within(0.1));
    }

    @Test
    void logarithmicRelationGivesItsThrustToWeight() {
        // [humble-1995] from memory; values computed independently
        assertThat(1e6 / Constants.STANDARD_GRAVITY / WholeEngineRelations.logarithmic(1e6))
                .isCloseTo(70.5, within(0.05));
        assertThat(0.5e6 / Constants.STANDARD_GRAVITY / WholeEngineRelations.logarithmic(0.5e6))
                .isCloseTo(62.9, within(0.05));
        assertThatThrownBy(() -> WholeEngineRelations.logarithmic(1e4)).isInstanceOf(OutsideValidity.class);
    }

    @Test
    void onlyRelationsThatHoldAreShown() {
        assertThat(WholeEngineRelations.of(2e4, 40)).hasSize(1);
        assertThat(WholeEngineRelations.of(2e6, 40)).hasSize(2);
    }

    /** A concept scales the parts that scatter by themselves; what an electric drive weighs follows from its own figures. */
    @Test
    void partsThatScatterCanBeScaled() {
        assertThat(MassPart.scaled())
                .doesNotContain(MassPart.ELECTRIC, MassPart.WHOLE)
                .hasSize(MassPart.values().length - 2);
        assertThat(MassPart.group().keys())
                .hasSameSizeAs(MassPart.scaled())
                .contains("turbopump_factor", "frame_factor");
        assertThat(MassPart.TURBOPUMP.card().id()).isEqualTo("turbomachinery.turbopump-mass");
    }

    /** Parts that miss by themselves by 5 kg, and together by a factor of 1.4 either way of 30 kg. */
    @Test
    void scattersOfPartsAddInSquaresToWhatAllMissTogether() {
        EngineMass mass = new EngineMass(
                List.of(
                        new MassItem(MassPart.VALVE, "a", "a", new Spread(7, 10, 14), "invented"),
                        new MassItem(MassPart.LINE, "b", "b", new Spread(16, 20, 23), "invented")),
                List.of(),
                3000);
        assertThat(mass.total().mode()).isEqualTo(30);
        assertThat(mass.total().low()).isCloseTo(30 - Math.hypot(5, 30 - 30 / 1.4), within(1e-9));
        assertThat(mass.total().high()).isCloseTo(30 + Math.hypot(5, 12), within(1e-9));
        assertThat(mass.thrustToWeight().mode())
                .isCloseTo(3000 / Constants.STANDARD_GRAVITY / 30, withinPercentage(1e-9));
        assertThat(mass.thrustToWeight().low())
                .isCloseTo(3000 / Constants.STANDARD_GRAVITY / (30 + Math.hypot(5, 12)), withinPercentage(1e-9));
        assertThat(mass.thrustToWeight().high())
                .isCloseTo(
                        3000 / Constants.STANDARD_GRAVITY / (30 - Math.hypot(5, 30 - 30 / 1.4)),
                        withinPercentage(1e-9));
    }
}

package dev.penstock.cycles.concept;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpType;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Identity: what is told to be asked for is what the choice gives, and nothing is told of machines that nobody keeps. */
class MachineChoicesTest {

    private static final PumpDesign OPEN = PumpDefaults.of(FluidLibrary.open().propellant("oxygen"));

    @Test
    void stagesThatAreKeptAgainstTheChoiceAreTold() {
        MachineChoices choices = new MachineChoices();
        choices.keepStages(new StageSet(Map.of("p", OPEN.withStages(PumpType.CENTRIFUGAL, 2)), Map.of()));
        PumpDesign held = choices.settle("p", OPEN, d -> d.withStages(PumpType.CENTRIFUGAL, 3));
        assertThat(held.stages()).hasValue(2);
        assertThat(choices.askedOtherwise().orElseThrow().pumps().get("p").stages())
                .hasValue(3);
    }

    @Test
    void keptStagesThatWouldBeChosenAreNotTold() {
        MachineChoices choices = new MachineChoices();
        choices.keepStages(new StageSet(Map.of("p", OPEN.withStages(PumpType.CENTRIFUGAL, 2)), Map.of()));
        choices.settle("p", OPEN, d -> d.withStages(PumpType.CENTRIFUGAL, 2));
        assertThat(choices.askedOtherwise()).isEmpty();
    }

    @Test
    void nothingIsToldWhereTheAnswerChooses() {
        MachineChoices choices = new MachineChoices();
        choices.settle("p", OPEN, d -> d.withStages(PumpType.CENTRIFUGAL, 3));
        assertThat(choices.askedOtherwise()).isEmpty();
    }
}

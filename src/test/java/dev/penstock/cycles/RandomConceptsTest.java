package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: what an engineer might ask for closes, or fails with a sentence. The long run is RandomConceptsRun. */
class RandomConceptsTest {

    private static final int COUNT = 50;

    @Test
    void randomConceptsCloseOrSayWhyNot() {
        RandomConcepts draws = new RandomConcepts(20);
        List<String> failures = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            RandomConcepts.Draw draw = draws.next();
            draw.values().remove("cooling.coolant", draw.cycle().traits().livesOnJacketHeat() ? "" : "fuel");
            try {
                EngineBalance balance = Concepts.STUDY.balance(draw.concept());
                assertThat(balance.residualWorst()).isLessThan(1e-8);
                assertThat(balance.effort().evaluations()).isLessThan(400);
            } catch (PenstockException e) {
                assertThat(e).isInstanceOfAny(LimitReached.class, OutsideValidity.class);
                assertThat(e.getMessage()).isNotBlank();
                failures.add(draw.values() + ": " + e.getMessage());
            }
        }
        assertThat(failures).hasSizeLessThanOrEqualTo(1);
    }
}

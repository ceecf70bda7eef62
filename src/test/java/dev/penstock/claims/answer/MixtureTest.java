package dev.penstock.claims.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.claims.likelihood.Hypothesis;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.errors.FailureTally;
import dev.penstock.numerics.sampling.Evaluation;
import dev.penstock.numerics.sampling.SampledPosterior;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MixtureTest {

    private static final Cloud KIND = Cloud.none(
            new Hypothesis(
                    Cycle.all().get(0), Concepts.FLUIDS.propellant("oxygen"), Concepts.FLUIDS.propellant("methane")),
            new FailureTally());

    private static Cloud seen(double logEvidence, double error) {
        Sighting sighting = new Sighting(List.of(), List.of(), List.of(), 1, "");
        return KIND.with(new SampledPosterior<>(
                List.of(new SampledPosterior.Sample<>(List.of(), new Evaluation<>(0, Optional.of(sighting)))),
                logEvidence,
                error,
                1,
                List.of(1),
                0,
                true));
    }

    private static Cloud inVain() {
        return KIND.with(new SampledPosterior<>(List.of(), Double.NEGATIVE_INFINITY, 0, 0, List.of(1), 1, true));
    }

    @Test
    void kindsThatAFirstAnswerRulesOutAreNotFollowed() {
        assertThat(new Mixture(List.of(seen(-3, 0.1), seen(-6, 0.1), seen(-9, 0.1), seen(-9, 1.5), inVain(), KIND))
                        .hopes())
                .satisfiesExactly(
                        h -> assertThat(h).isEqualTo(1),
                        h -> assertThat(h).isCloseTo(Math.exp(-3 + 3 * Math.hypot(0.1, 0.1)), within(1e-12)),
                        h -> assertThat(h).isZero(),
                        h -> assertThat(h).isCloseTo(Math.exp(-6 + 3 * Math.hypot(1.5, 0.1)), within(1e-12)),
                        h -> assertThat(h).isZero(),
                        h -> assertThat(h).isEqualTo(1));
    }

    @Test
    void whereNothingWasFoundAllAreTriedAgain() {
        assertThat(new Mixture(List.of(inVain(), KIND)).hopes()).containsExactly(1.0, 1.0);
    }
}

package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.arrangements.Cycle;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;

/**
 * What cycles say of their chamber pressures is the prediction interval from published rows of the table of technology, without the
 * engines that judgements are checked against, their families, and what is only claimed.
 */
class BuiltPressuresTest {

    /** How the names of engines of the table of ratings and of their families begin; those of the rest do not. */
    private static final List<String> FAMILIES = List.of(
            "Redstone",
            "F-1",
            "J-2",
            "RL10",
            "LE-7",
            "LE-5",
            "RD-253",
            "RD-275",
            "RD-17",
            "RD-180",
            "RD-191",
            "RD-0124",
            "RD-0110",
            "Vulcain",
            "LR-87",
            "Viking",
            "Gamma 8",
            "Apollo SPS");

    private enum Group {
        TANKS,
        OPEN,
        EXPANDERS,
        STAGED;

        static Group of(String cycle) {
            return cycle.startsWith("pressure-fed")
                    ? TANKS
                    : cycle.contains("expander")
                            ? EXPANDERS
                            : cycle.startsWith("staged") || cycle.startsWith("full-flow") ? STAGED : OPEN;
        }
    }

    private static boolean counts(FlownTechnology row) {
        return FAMILIES.stream().noneMatch(row.engine()::startsWith)
                && !row.engine().contains("(claimed)");
    }

    /** Ends of the prediction interval for one more engine, Pa, to two digits. */
    private static List<Double> interval(Group group) {
        double[] logs = FlownTechnology.all().stream()
                .filter(BuiltPressuresTest::counts)
                .filter(row -> Group.of(row.text("cycle")) == group)
                .mapToDouble(
                        row -> Math.log(1e6 * row.number("chamber_pressure_MPa").orElseThrow()))
                .toArray();
        double mean = new Mean().evaluate(logs);
        double half = new TDistribution(null, logs.length - 1).inverseCumulativeProbability(0.95)
                * new StandardDeviation().evaluate(logs)
                * Math.sqrt(1 + 1.0 / logs.length);
        return List.of(rounded(Math.exp(mean - half)), rounded(Math.exp(mean + half)));
    }

    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(2)).doubleValue();
    }

    @Test
    void theyAreThoseOfOtherEnginesThanAreChecked() {
        for (Cycle cycle : Cycle.all()) {
            List<Double> declared = List.of(
                    cycle.traits().pressures().low(), cycle.traits().pressures().high());
            assertThat(declared).as(cycle.id()).isEqualTo(interval(Group.of(cycle.id())));
        }
    }

    @Test
    void everyEngineThatIsCheckedIsLeftOut() {
        assertThat(PublishedEngine.all()).filteredOn(e -> e.lacking().isEmpty()).allSatisfy(e -> assertThat(
                        FlownTechnology.all())
                .filteredOn(row -> row.engine().startsWith(e.name()))
                .noneMatch(BuiltPressuresTest::counts));
    }
}

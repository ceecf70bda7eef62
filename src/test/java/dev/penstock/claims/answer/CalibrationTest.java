package dev.penstock.claims.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.numerics.sampling.Workers;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** The first part of the run of {@code dev.penstock.claims.answer.CalibrationRun}: so few engines find gross faults only. */
@EnabledIfSystemProperty(named = "penstock.claims.long", matches = "true")
class CalibrationTest {

    private static final int BINS = 3;
    /** 0.999 quantile of chi-square with two degrees of freedom: a table value. */
    private static final double MOST = 13.82;

    @Test
    void theTruthIsAsLikelyInOnePartOfTheSamplesAsInAnother() {
        Workers workers = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        Map<String, List<Double>> shares = new Calibration("pressure-fed", 16, workers).run(15);
        shares.forEach((path, list) -> assertThat(Calibration.chiSquare(list, BINS))
                .as(path + " " + list)
                .isLessThan(MOST));
    }
}

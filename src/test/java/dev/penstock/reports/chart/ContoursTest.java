package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ContoursTest {

    private static final List<Double> SEVEN =
            IntStream.rangeClosed(-3, 3).mapToObj(i -> (double) i).toList();

    private static Contours of(List<Double> xs, List<Double> ys, DoubleBinaryOperator value) {
        Contours contours = new Contours(xs, ys);
        xs.forEach(x -> ys.forEach(y -> contours.put(x, y, value.applyAsDouble(x, y))));
        return contours;
    }

    /** Limit: on a plane the line between the edges is exact. */
    @Test
    void aPlaneHasOneStraightLine() {
        List<List<Curve.Point>> lines = of(List.of(0.0, 1.0, 4.0), List.of(0.0, 2.0, 3.0), (x, y) -> 2 * x + y)
                .at(3);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0)).hasSizeGreaterThan(2).allSatisfy(p -> assertThat(2 * p.x() + p.y())
                .isCloseTo(3, within(1e-12)));
    }

    @Test
    void aHillHasAClosedLine() {
        List<List<Curve.Point>> lines =
                of(SEVEN, SEVEN, (x, y) -> x * x + y * y).at(4.5);
        assertThat(lines).hasSize(1);
        List<Curve.Point> line = lines.get(0);
        assertThat(line.get(line.size() - 1)).isEqualTo(line.get(0));
        // Straight between whole places a parabola is at most a quarter too high (identity of its chord).
        assertThat(line)
                .allSatisfy(p -> assertThat(p.x() * p.x() + p.y() * p.y()).isBetween(4.0, 4.5 + 1e-12));
    }

    @Test
    void twoHillsHaveTwoLines() {
        assertThat(of(SEVEN, SEVEN, (x, y) -> Math.abs(x) == 2 && y == 0 ? 1 : 0)
                        .at(0.5))
                .hasSize(2);
    }

    @Test
    void aSaddleIsDecidedByTheMiddleOfItsCell() {
        List<Double> two = List.of(0.0, 1.0);
        assertThat(of(two, two, (x, y) -> x == y ? 3 : -1).at(0)).hasSize(2);
        assertThat(of(two, two, (x, y) -> x == y ? 1 : -3).at(0)).hasSize(2).allSatisfy(line -> assertThat(line)
                .hasSize(2)
                .allSatisfy(
                        p -> assertThat(Math.min(Math.abs(p.x() - p.y()), 1)).isGreaterThan(0.2)));
    }

    @Test
    void aPlaceWithoutAValueLeavesAGap() {
        Contours contours = new Contours(SEVEN, SEVEN);
        SEVEN.forEach(x -> SEVEN.forEach(y -> contours.put(x, y, x == 0 && y == 0 ? Double.NaN : y - 0.5)));
        assertThat(contours.at(0)).hasSize(2);
    }

    @Test
    void aLevelThatIsNowhereHasNoLine() {
        assertThat(of(SEVEN, SEVEN, (x, y) -> x).at(9)).isEmpty();
    }
}

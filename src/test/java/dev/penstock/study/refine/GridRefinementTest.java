package dev.penstock.study.refine;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.study.Axis;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class GridRefinementTest {

    private static final List<Axis> AXES = List.of(Axis.parse("a=0..4 MPa:5"), Axis.parse("b=0..4:5"));

    private static Function<List<String>, OptionalDouble> figure(DoubleBinaryOperator f) {
        return v -> {
            double value = f.applyAsDouble(
                    Axis.numberOf(v.get(0)).orElseThrow(),
                    Axis.numberOf(v.get(1)).orElseThrow());
            return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
        };
    }

    @Test
    void whatIsStraightNeedsNoMoreValues() {
        assertThat(GridRefinement.finer(AXES, List.of(figure((a, b) -> 3 * a - b)), 1000))
                .isEqualTo(AXES);
        assertThat(GridRefinement.finer(AXES, List.of(figure((a, b) -> 7)), 1000))
                .isEqualTo(AXES);
    }

    @Test
    void valuesAreAddedWhereAFigureBends() {
        List<Axis> finer = GridRefinement.finer(AXES, List.of(figure((a, b) -> Math.max(0, a - 3))), 1000);
        assertThat(finer.get(0).values())
                .containsExactly("0 MPa", "1 MPa", "2 MPa", "2.5 MPa", "3 MPa", "3.5 MPa", "4 MPa");
        assertThat(finer.get(1)).isEqualTo(AXES.get(1));
    }

    @Test
    void valuesAreAddedWhereSolutionsEnd() {
        List<Axis> finer = GridRefinement.finer(AXES, List.of(figure((a, b) -> b > 1.2 ? Double.NaN : b)), 1000);
        assertThat(finer.get(1).values()).containsExactly("0", "1", "1.5", "2", "3", "4");
    }

    @Test
    void theWorstBendsComeFirstWhereRoomIsShort() {
        List<Axis> finer = GridRefinement.finer(
                AXES, List.of(figure((a, b) -> Math.max(0, a - 3) + 0.2 * Math.max(0, b - 3))), 35);
        assertThat(finer.get(0).values()).hasSize(7);
        assertThat(finer.get(1).values()).hasSize(5);
    }
}

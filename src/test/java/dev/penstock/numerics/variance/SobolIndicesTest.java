package dev.penstock.numerics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.numerics.sampling.Workers;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SobolIndicesTest {

    /** Ishigami and Homma (1990), a = 7, b = 0.1; the indices are closed. */
    private static double ishigami(double[] u) {
        double x = Math.PI * (2 * u[0] - 1);
        double y = Math.PI * (2 * u[1] - 1);
        double z = Math.PI * (2 * u[2] - 1);
        return Math.sin(x) + 7 * Math.pow(Math.sin(y), 2) + 0.1 * Math.pow(z, 4) * Math.sin(x);
    }

    private static final double[] FIRST = {0.3139, 0.4424, 0};
    private static final double[] TOTAL = {0.5576, 0.4424, 0.2437};

    @Test
    void findsTheClosedIndicesOfIshigamisFunction() {
        SobolIndices.Result result = SobolIndices.of(u -> new double[] {ishigami(u)}, 3, 16_384, 1, Workers.HERE)
                .get(0);
        for (int i = 0; i < 3; i++) {
            SobolIndices.Index index = result.indices().get(i);
            assertThat(index.first()).isCloseTo(FIRST[i], within(0.005));
            assertThat(index.total()).isCloseTo(TOTAL[i], within(0.005));
            assertThat(Math.abs(index.first() - FIRST[i])).isLessThan(4 * index.firstError() + 1e-4);
            assertThat(Math.abs(index.total() - TOTAL[i])).isLessThan(4 * index.totalError() + 1e-4);
        }
        assertThat(result.mean()).isCloseTo(3.5, within(0.01));
        assertThat(result.share()).isEqualTo(1);
    }

    @Test
    void errorsShrinkAndBitsDoNotDependOnThreads() {
        Sampled function = u -> new double[] {ishigami(u)};
        Workers two = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        SobolIndices.Result few =
                SobolIndices.of(function, 3, 128, 1, Workers.HERE).get(0);
        SobolIndices.Result many = SobolIndices.of(function, 3, 8192, 1, two).get(0);
        assertThat(many.indices().get(1).firstError())
                .isLessThan(0.3 * few.indices().get(1).firstError());
        assertThat(SobolIndices.of(function, 3, 128, 1, two).get(0)).isEqualTo(few);
    }

    /** x + y where both are above a fifth of the way: by hand, half and half. */
    @Test
    void gapsCountForNothingAndAreTold() {
        SobolIndices.Result result = SobolIndices.of(
                        u -> new double[] {u[0] < 0.2 ? Double.NaN : u[0] + u[1] * 0.8, u[0] < 0.2 ? 0 : 1},
                        2,
                        4096,
                        1,
                        Workers.HERE)
                .get(0);
        assertThat(result.share()).isCloseTo(0.8, within(0.01));
        assertThat(result.indices().get(0).first()).isCloseTo(0.5, within(0.02));
        assertThat(result.indices().get(1).total()).isCloseTo(0.5, within(0.02));
    }

    /** Of twenty coordinates three matter: 5x, 2y², and 3xz. */
    @Test
    void screeningFindsTheFewThatMatter() {
        List<Screening.Effect> effects = Screening.of(
                        u -> new double[] {5 * u[0] + 2 * u[7] * u[7] + 3 * u[0] * u[13] + 1e-3 * u[3]},
                        20,
                        1,
                        Workers.HERE)
                .get(0);
        List<Integer> order = IntStream.range(0, 20)
                .boxed()
                .sorted((a, b) ->
                        Double.compare(effects.get(b).mean(), effects.get(a).mean()))
                .toList();
        assertThat(order.subList(0, 3)).containsExactlyInAnyOrder(0, 7, 13);
        assertThat(effects.get(3).mean()).isCloseTo(1e-3, within(1e-9));
        assertThat(effects.get(3).deviation()).isLessThan(1e-9);
        assertThat(effects.get(13).deviation()).isGreaterThan(0.1);
        assertThat(effects.get(5).mean()).isZero();
    }

    @Test
    void whatIsDoneIsKeptWhenItIsStopped() {
        AtomicInteger asked = new AtomicInteger();
        SobolIndices.Result result = SobolIndices.of(
                        u -> {
                            if (asked.incrementAndGet() > 3000) {
                                throw new CancellationException();
                            }
                            return new double[] {u[0] + u[1]};
                        },
                        2,
                        1024,
                        1,
                        Workers.HERE)
                .get(0);
        assertThat(result.complete()).isFalse();
        assertThat(result.share()).isEqualTo(1);
        assertThat(result.indices().get(0).total()).isCloseTo(0.5, within(0.05));
    }
}

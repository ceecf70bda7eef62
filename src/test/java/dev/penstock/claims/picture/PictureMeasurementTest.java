package dev.penstock.claims.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures of nozzles of known size, worked out by a pinhole camera of the test's own: what is measured must be that size. */
class PictureMeasurementTest {

    private static final double VIEW = Math.toRadians(40);
    private static final int WIDTH = 2000;

    /** A nozzle so far away that distances make no difference. */
    private static Pinhole nozzle(double distance, double tilt) {
        double focal = WIDTH / (2 * Math.tan(0.5 * VIEW));
        return new Pinhole(WIDTH, 1500, focal, distance, tilt, 0.4, 1.2, 0.15, 1.4);
    }

    private static PictureMarks marks(Pinhole p, Segment reference, double known, boolean along) {
        return new PictureMarks(
                WIDTH,
                VIEW,
                1,
                reference,
                known,
                0,
                along,
                OptionalDouble.of(0),
                Optional.of(p.throatLine()),
                Optional.of(p.rim()),
                Optional.of(p.lengthLine()),
                Facing.UNKNOWN);
    }

    private static Map<String, Measured> measured(PictureMarks marks) {
        Map<String, Measured> map = new HashMap<>();
        new PictureMeasurement(marks).values().forEach(m -> map.put(m.path(), m));
        return map;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 35, 60})
    void farAwayEverySizeIsFoundWhateverTheTilt(double degrees) {
        Pinhole p = nozzle(1e5, Math.toRadians(degrees));
        // identity: a pinhole camera at an infinite distance; what is left is round-off of marks 0.01 px long
        Pinhole large = new Pinhole(WIDTH, 1500, p.focal() * 1e4, p.distance(), p.tilt(), p.turn(), 1.2, 0.15, 1.4);
        Segment across = Pinhole.line(large.seen(-1, 1.5, 0), large.seen(1, 1.5, 0));
        Segment axis = Pinhole.line(large.point(0, 0.8, 0), large.point(1.4, 0.8, 0));
        for (PictureMarks marks : new PictureMarks[] {marks(large, across, 2, false), marks(large, axis, 1.4, true)}) {
            Map<String, Measured> values = measured(marks);
            assertThat(values.get("nozzle.exit_diameter").value()).isCloseTo(1.2, within(1e-4));
            assertThat(values.get("nozzle.throat_diameter").value()).isCloseTo(0.15, within(1e-4));
            assertThat(values.get("nozzle.area_ratio").value()).isCloseTo(64, within(0.01));
            assertThat(values.get("nozzle.length").value()).isCloseTo(1.4, within(1e-3));
            assertThat(new PictureMeasurement(marks).tilt()).isCloseTo(Math.toRadians(degrees), within(1e-3));
        }
    }

    @Test
    void nearTheCameraTheTruthStaysWithinTheStatedError() {
        Random random = new Random(7);
        for (int i = 0; i < 400; i++) {
            Pinhole p = nozzle(6 + 20 * random.nextDouble(), Math.toRadians(60 * random.nextDouble()));
            double apart = 1.2 * (2 * random.nextDouble() - 1);
            Segment bar = Pinhole.line(p.seen(-1, 0.9, apart), p.seen(1, 0.9, apart));
            PictureMarks exact = marks(p, bar, 2, false);
            PictureMarks marks = new PictureMarks(
                    WIDTH,
                    VIEW,
                    1,
                    bar,
                    2,
                    0,
                    false,
                    OptionalDouble.empty(),
                    exact.throat(),
                    exact.exit(),
                    exact.length(),
                    Facing.UNKNOWN);
            Map<String, Double> truth = Map.of(
                    "nozzle.exit_diameter",
                    1.2,
                    "nozzle.throat_diameter",
                    0.15,
                    "nozzle.area_ratio",
                    64.0,
                    "nozzle.length",
                    1.4);
            measured(marks)
                    .forEach((path, m) ->
                            assertThat(m.value()).as(path + " at " + p).isCloseTo(truth.get(path), within(m.half())));
        }
    }

    /** The same pictures, told which way the exit faces: nearer to the truth, and still within an error that is smaller. */
    @Test
    void whoKnowsWhichWayTheExitFacesMeasuresTheThroatBetter() {
        Random random = new Random(3);
        double blind = 0;
        double told = 0;
        for (int i = 0; i < 200; i++) {
            boolean towards = i % 2 == 0;
            double tilt = Math.toRadians(10 + 50 * random.nextDouble()) * (towards ? 1 : -1);
            Pinhole p = nozzle(6 + 14 * random.nextDouble(), tilt);
            Segment bar = Pinhole.line(p.seen(-1, 0.9, 0), p.seen(1, 0.9, 0));
            PictureMarks marks = marks(p, bar, 2, false);
            Measured without = measured(marks).get("nozzle.throat_diameter");
            Measured with = measured(facing(marks, towards ? Facing.TOWARDS : Facing.AWAY))
                    .get("nozzle.throat_diameter");
            blind += Math.abs(without.value() - 0.15);
            told += Math.abs(with.value() - 0.15);
            assertThat(with.half()).isLessThan(without.half());
            assertThat(with.value()).as("tilt " + tilt).isCloseTo(0.15, within(with.half()));
        }
        assertThat(told).isLessThan(0.3 * blind);
    }

    @Test
    void seenFromTheSideTheExitsFacingChangesNothing() {
        Pinhole p = nozzle(8, 0);
        PictureMarks marks = marks(p, Pinhole.line(p.seen(-1, 0.9, 0), p.seen(1, 0.9, 0)), 2, false);
        PictureMeasurement blind = new PictureMeasurement(marks);
        assertThat(blind.facingMatters()).isFalse();
        for (Facing facing : Facing.values()) {
            assertThat(new PictureMeasurement(facing(marks, facing)).values())
                    .usingRecursiveComparison()
                    .withEqualsForType((a, b) -> Math.abs(a - b) < 1e-9, Double.class)
                    .isEqualTo(blind.values());
        }
    }

    private static PictureMarks facing(PictureMarks m, Facing facing) {
        return new PictureMarks(
                m.width(),
                m.angleOfView(),
                m.markError(),
                m.reference(),
                m.referenceLength(),
                m.referenceError(),
                m.along(),
                m.depth(),
                m.throat(),
                m.exit(),
                m.length(),
                facing);
    }

    /** Marks that miss by a normal error: nine of ten intervals must hold the truth; distances play no part here. */
    @Test
    void shakyMarksAreWithinTheirErrorNineTimesOutOfTen() {
        Random random = new Random(11);
        double sigma = 2 / 1.6448536269514722;
        Map<String, Integer> held = new HashMap<>();
        int runs = 2000;
        Pinhole p = new Pinhole(WIDTH, 1500, 4e8, 1e6, 0.5, 0.4, 1.2, 0.3, 1.4);
        Map<String, Double> truth = Map.of(
                "nozzle.exit_diameter",
                1.2,
                "nozzle.throat_diameter",
                0.3,
                "nozzle.area_ratio",
                16.0,
                "nozzle.length",
                1.4);
        for (int i = 0; i < runs; i++) {
            Segment bar = shaken(Pinhole.line(p.seen(-1, 1, 0), p.seen(1, 1, 0)), sigma, random);
            Rim rim = p.rim();
            PictureMarks marks = new PictureMarks(
                    WIDTH,
                    VIEW,
                    2,
                    bar,
                    2,
                    0,
                    false,
                    OptionalDouble.of(0),
                    Optional.of(shaken(p.throatLine(), sigma, random)),
                    Optional.of(new Rim(
                            shaken(rim.longest(), sigma, random),
                            rim.x() + sigma * random.nextGaussian(),
                            rim.y() + sigma * random.nextGaussian())),
                    Optional.of(shaken(p.lengthLine(), sigma, random)),
                    Facing.UNKNOWN);
            new PictureMeasurement(marks).values().forEach(m -> {
                double pixels = m.value() * m.pixel();
                held.merge(m.path(), Math.abs(m.value() - truth.get(m.path())) <= pixels ? 1 : 0, Integer::sum);
            });
        }
        // identity: half of a 90 % interval of a normal error; three deviations of a count of 2000 are 2 %
        held.forEach((path, count) -> assertThat((double) count / runs).as(path).isBetween(0.88, 0.95));
    }

    private static Segment shaken(Segment s, double sigma, Random random) {
        return new Segment(
                s.x1() + sigma * random.nextGaussian(),
                s.y1() + sigma * random.nextGaussian(),
                s.x2() + sigma * random.nextGaussian(),
                s.y2() + sigma * random.nextGaussian());
    }

    @Test
    void theErrorOfTheKnownLengthGoesIntoLengthsAndNotIntoTheAreaRatio() {
        Pinhole p = nozzle(1e4, 0.3);
        Segment bar = new Segment(100, 100, 1100, 100);
        PictureMarks marks = new PictureMarks(
                WIDTH,
                VIEW,
                1e-9,
                bar,
                2,
                0.1,
                false,
                OptionalDouble.of(0),
                Optional.of(new Segment(0, 0, 100, 0)),
                Optional.of(new Rim(new Segment(0, 500, 800, 500), 400, 500)),
                Optional.empty(),
                Facing.UNKNOWN);
        Map<String, Measured> values = measured(marks);
        assertThat(values.get("nozzle.exit_diameter").half()).isCloseTo(0.05 * 1.6, within(1e-6));
        assertThat(values.get("nozzle.area_ratio").half()).isLessThan(1e-6);
        assertThat(p.tilt()).isPositive();
    }

    @Test
    void whatCannotBeReadIsRefusedInOneSentence() {
        Segment line = new Segment(0, 0, 100, 0);
        assertThatThrownBy(() -> new Rim(line, 99, 3))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("half-way");
        assertThatThrownBy(() -> new Rim(line, 50, 80))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("longest diameter");
        assertThatThrownBy(() -> new Segment(1, 1, 2, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("3 pixels apart");
        assertThatThrownBy(() -> new PictureMeasurement(new PictureMarks(
                        500,
                        1,
                        1,
                        line,
                        1,
                        0,
                        false,
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(line),
                        Facing.UNKNOWN)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("mark the rim of the exit first");
        assertThatThrownBy(() -> new PictureMeasurement(new PictureMarks(
                        500,
                        1,
                        1,
                        line,
                        1,
                        0,
                        true,
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.of(new Rim(line, 50, 49.5)),
                        Optional.empty(),
                        Facing.UNKNOWN)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("so near to the camera");
    }
}

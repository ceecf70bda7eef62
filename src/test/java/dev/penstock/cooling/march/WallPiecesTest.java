package dev.penstock.cooling.march;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.gas.HotGas;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasStation;
import dev.penstock.errors.OutsideValidity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Cells of a chamber of cylinder and cones, whose joints are known by hand. */
class WallPiecesTest {

    private static final double CONVERGENT = 1.5;
    private static final double RADIUS = 2;

    /** Throat of radius 1; a cone down to it from radius 2, and one of slope 0.3 up to an area ratio of 16. */
    private static HotGasProfile chamber(double cylinder) {
        List<HotGasStation> stations = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            stations.add(station(-CONVERGENT - cylinder * (1 - 0.2 * i), RADIUS));
        }
        for (int i = 0; i < 10; i++) {
            stations.add(station(-CONVERGENT * (1 - 0.1 * i), RADIUS - 0.1 * i));
        }
        for (int i = 0; i <= 50; i++) {
            stations.add(station(0.2 * i, 1 + 0.06 * i));
        }
        HotGas gas = new HotGas(1e7, 3500, 1800, 1e-4, 2500, 0.7, 4000, 0.6, Map.of());
        return new HotGasProfile(gas, 0, 1, 1, stations, Optional.empty());
    }

    private static HotGasStation station(double x, double radius) {
        return new HotGasStation(x, radius, 1, 5e6, 3000, 2, 1000, 1.2);
    }

    private static JacketGrid grid(double cylinder, List<Double> joints, int cells) {
        return new JacketGrid(chamber(cylinder), OptionalDouble.empty(), 9, joints, cells, false);
    }

    /** By hand: the first six of forty cells are a sixth of the cylinder each, the next eleven reach to the throat, however long it is. */
    @Test
    void facesStandAtTheEndOfTheCylinderAndAtTheThroat() {
        for (double cylinder = 1; cylinder < 3; cylinder += 0.013) {
            JacketGrid grid = grid(cylinder, List.of(), 40);
            for (int c = 0; c < 6; c++) {
                assertThat(grid.length[c]).isCloseTo(cylinder / 6, within(1e-12));
                assertThat(grid.radius[c]).isCloseTo(RADIUS, within(1e-12));
            }
            double convergent = 0;
            for (int c = 6; c < 17; c++) {
                convergent += grid.length[c];
                assertThat(grid.x[c]).isBetween(-CONVERGENT, 0.0);
            }
            assertThat(convergent).isCloseTo(Math.hypot(CONVERGENT, 1), within(1e-9));
            assertThat(grid.x[17]).isPositive();
        }
    }

    /** Identity: a joint anywhere parts the area of the wall, that of a frustum, without remainder. */
    @Test
    void aJointPartsTheWall() {
        double slot = -Math.log(1.5 * 1.5);
        double manifold = Math.log(4);
        JacketGrid grid = grid(2, List.of(manifold, slot), 100);
        double slant = Math.hypot(CONVERGENT, 1);
        double cylinder = 2 * Math.PI * RADIUS * 2;
        double before = 0;
        double toManifold = 0;
        for (int c = 0; c < grid.cells; c++) {
            before += grid.place[c] < slot ? grid.area[c] : 0;
            toManifold += grid.x[c] > 0 && grid.place[c] < manifold ? grid.area[c] : 0;
        }
        assertThat(before).isCloseTo(cylinder + Math.PI * (RADIUS + 1.5) * slant / 2, within(1e-9));
        assertThat(toManifold).isCloseTo(Math.PI * (1 + 2) * Math.hypot(1 / 0.3, 1), within(1e-9));
    }

    /** A jacket on the nozzle has as many cells before it as in it, and begins at its area ratio. */
    @Test
    void aJacketOnTheNozzleBeginsAtAFace() {
        JacketGrid grid = new JacketGrid(chamber(2), OptionalDouble.of(4), 9, List.of(), 20, false);
        assertThat(grid.first).isEqualTo(20);
        assertThat(grid.cells).isEqualTo(40);
        assertThat(grid.wallLength).isCloseTo(Math.hypot(1, 0.3) / 0.3, within(1e-9));
    }

    @Test
    void fewerCellsThanPiecesAreRefused() {
        assertThatThrownBy(() -> grid(2, List.of(Math.log(2), Math.log(4)), 4))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("5 or more");
    }
}

package dev.penstock.cooling.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cooling.Cases;
import dev.penstock.errors.InvalidInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Material files. */
class WallLibraryTest {

    @Test
    void everyMaterialIsSoundFromColdToItsLimit() {
        assertThat(Cases.WALLS.ids())
                .contains(
                        "copper-silver-zirconium",
                        "grcop-84",
                        "grcop-42",
                        "inconel-718",
                        "inconel-625",
                        "stainless-347",
                        "niobium-c103",
                        "nickel-200");
        for (String id : Cases.WALLS.ids()) {
            WallMaterial m = Cases.WALLS.material(id);
            for (double t = 100; t <= m.maximumTemperature(); t += 50) {
                assertThat(m.yieldStrength().at(t))
                        .as(id)
                        .isLessThan(m.ultimateStrength().at(t));
                assertThat(m.modulus().at(t)).as(id).isBetween(10e9, 300e9);
                assertThat(m.conductivity().at(t)).as(id).isBetween(5.0, 500.0);
                assertThat(m.heatCapacity().at(t)).as(id).isBetween(200.0, 700.0);
                assertThat(m.expansion().at(t)).as(id).isBetween(5e-6, 25e-6);
            }
            assertThat(m.conductivity().highest()).as(id).isGreaterThan(0.8 * m.maximumTemperature());
            assertThat(m.sources()).as(id).isNotEmpty();
        }
    }

    /** Published: pure copper 401 and nickel 90.7 W/(m K) at 300 K, [incropera-2007] table A.1. */
    @Test
    void pureMetalsConductAsTheTableSays() {
        assertThat(Cases.WALLS.material("copper").conductivity().at(300)).isBetween(399.0, 403.0);
        assertThat(Cases.WALLS.material("nickel-200").conductivity().at(300)).isBetween(90.0, 91.5);
    }

    @Test
    void aWrongFileNamesEveryProblem(@TempDir Path folder) throws IOException {
        String good = Files.readString(Path.of("fluids/walls/grcop-42.toml"));
        Files.writeString(
                folder.resolve("bad.toml"),
                good.replace("density = \"8850 kg/m^3\"", "density = \"8850 K\"")
                        .replace("poisson_ratio = 0.33", "poisson_ratio = 0.9"));
        assertThatThrownBy(() -> WallLibrary.load(folder))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("density")
                .hasMessageContaining("poisson_ratio");
    }

    @Test
    void columnsOfUnequalLengthAreNamed(@TempDir Path folder) throws IOException {
        String good = Files.readString(Path.of("fluids/walls/copper.toml"));
        Files.writeString(folder.resolve("bad.toml"), good.replace("\"483 W/(m*K)\", ", ""));
        assertThatThrownBy(() -> WallLibrary.load(folder))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("conductivity")
                .hasMessageContaining("one value for each");
    }

    @Test
    void aHomeWithoutFluidsHasTheMaterialsThatComeWithPenstock(@TempDir Path home) {
        assertThat(WallLibrary.open(home).ids()).isEqualTo(Cases.WALLS.ids());
    }

    @Test
    void aMissingFolderIsAnInputError() {
        assertThatThrownBy(() -> WallLibrary.load(Path.of("no-such-folder"))).isInstanceOf(InvalidInput.class);
    }
}

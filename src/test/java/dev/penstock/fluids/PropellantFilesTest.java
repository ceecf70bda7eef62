package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import dev.penstock.fluids.property.AtomicWeights;
import dev.penstock.fluids.state.Fluid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the files of the fluids state, against their own models, the handbook's figures and a reader's mistakes. */
class PropellantFilesTest {

    private static final Path HOME = Path.of("").toAbsolutePath();
    private static final FluidLibrary LIBRARY = FluidLibrary.open(HOME);

    @TempDir
    Path folder;

    static Stream<String> ids() {
        return LIBRARY.ids().stream();
    }

    @Test
    void everyPromisedFluidIsThere() {
        assertThat(LIBRARY.ids())
                .contains(
                        "oxygen",
                        "hydrogen",
                        "methane",
                        "propane",
                        "ethanol",
                        "rp-1",
                        "ammonia",
                        "nitrous-oxide",
                        "nitrogen-tetroxide",
                        "mmh",
                        "udmh",
                        "hydrazine",
                        "hydrazine-50",
                        "hydrogen-peroxide-98",
                        "hydrogen-peroxide-90",
                        "water",
                        "helium",
                        "nitrogen");
    }

    @ParameterizedTest
    @MethodSource("ids")
    void statedDensitiesAgreeWithTheModel(String id) {
        Propellant propellant = LIBRARY.propellant(id);
        double normal = propellant.storageState().density();
        assertThat(normal).isCloseTo(propellant.loadingDensity(), within(0.005 * normal));
        propellant.subcooledTemperature().ifPresent(t -> {
            double cold = propellant
                    .fluid()
                    .atPressureTemperature(propellant.storagePressure(), t)
                    .density();
            assertThat(propellant.subcooledDensity()).isPresent();
            assertThat(propellant.subcooledDensity().getAsDouble()).isCloseTo(cold, within(0.005 * cold));
            assertThat(cold).isGreaterThan(normal);
        });
    }

    @ParameterizedTest
    @MethodSource("ids")
    void storedLiquidsLieBetweenFreezingAndDecomposition(String id) {
        Propellant propellant = LIBRARY.propellant(id);
        PropellantLimits limits = propellant.limits();
        double t = propellant.storageTemperature();
        limits.freezing().ifPresent(freezing -> assertThat(t).isGreaterThan(freezing));
        limits.decomposition().ifPresent(decomposition -> assertThat(t).isLessThan(decomposition));
        limits.coking().ifPresent(coking -> assertThat(t).isLessThan(coking));
        assertThat(propellant.roles()).isNotEmpty();
        assertThat(propellant.hazards()).isNotEmpty();
        assertThat(propellant.sources()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void aKilogramOfAtomsWeighsAKilogram(String id) {
        double mass = LIBRARY.propellant(id).composition().molesPerKilogram().entrySet().stream()
                .mapToDouble(e -> e.getValue() * AtomicWeights.of(e.getKey()).orElseThrow())
                .sum();
        assertThat(mass).isCloseTo(1, within(1e-12));
    }

    /** Heats of formation in kJ/kg: NASA/TP-2002-211556, RP-1311 and JANAF values, from memory. */
    @ParameterizedTest
    @CsvSource({
        "oxygen, -405.6",
        "hydrogen, -4470.5",
        "methane, -5562.3",
        "propane, -2908.0",
        "ammonia, -4201.6",
        "rp-1, -1768.5",
        "nitrogen-tetroxide, -212.6",
        "hydrazine, 1572.2",
        "mmh, 1176.4",
        "udmh, 803.7",
        "hydrazine-50, 1187.9",
        "hydrogen-peroxide-98, -5727.5",
        "ethanol, -6024",
        "water, -15866"
    })
    void heatsOfFormationAreThePublishedOnes(String id, double kilojoulesPerKilogram) {
        Propellant propellant = LIBRARY.propellant(id);
        double inReferenceState = propellant.absoluteEnthalpy(propellant
                .fluid()
                .atPressureTemperature(propellant.referencePressure(), propellant.referenceTemperature())
                .enthalpy());
        assertThat(inReferenceState / 1e3)
                .isCloseTo(kilojoulesPerKilogram, within(2e-4 * Math.abs(kilojoulesPerKilogram)));
    }

    /** 1250 kg/m³ for subcooled oxygen and 840 kg/m³ for cooled kerosene: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"oxygen, 1250", "rp-1, 840"})
    void subcooledLoadingHasTheUsualDensity(String id, double density) {
        assertThat(LIBRARY.propellant(id).subcooledDensity().orElseThrow()).isEqualTo(density);
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everySourceIsListed(String id) throws IOException {
        String sources = Files.readString(HOME.resolve("docs/sources/fluids.md"));
        String file = Files.readString(HOME.resolve("fluids").resolve(id + ".toml"));
        for (String key : LIBRARY.propellant(id).sources()) {
            assertThat(sources).contains("**" + key + "**");
        }
        Matcher cited = Pattern.compile("\\[([a-z][a-z0-9.-]*-[a-z0-9.-]+)]").matcher(file);
        while (cited.find()) {
            if (!cited.group(1).contains("model")) {
                assertThat(sources).as("source %s in %s", cited.group(1), id).contains("**" + cited.group(1) + "**");
            }
        }
    }

    @Test
    void mistakesAreReportedTogetherWithTheirLines() throws IOException {
        String good = Files.readString(HOME.resolve("fluids/mmh.toml"));
        String bad = good.replace("density = \"870 kg/m³\"", "density = \"870 kg\"")
                .replace("form = \"antoine\"", "form = \"antwan\"")
                .replace("roles = [\"fuel\", \"coolant\"]", "roles = [\"fool\"]")
                .replace("freezing =", "freesing =");
        write("bad", bad);
        assertThatThrownBy(() -> FluidLibrary.open(folder).propellant("bad"))
                .isInstanceOfSatisfying(InvalidInput.class, e -> {
                    List<String> keys =
                            e.problems().stream().map(InvalidInput.Problem::key).toList();
                    assertThat(keys).contains("roles", "storage.density", "model.viscosity.form", "limits.freesing");
                    assertThat(e.problems())
                            .allSatisfy(problem -> assertThat(problem.where()).contains("bad.toml:"));
                    assertThat(e.getMessage()).contains("did you mean freezing?");
                });
    }

    /** What a role needs must be there: no model makes it up from a name. */
    @ParameterizedTest
    @CsvSource({
        "udmh, soot = false, combustion.soot",
        "udmh, releases_ammonia = true, combustion.releases_ammonia",
        "udmh, 'injected_as = \"liquid\"', combustion.injected_as",
        "udmh, 'characteristic_length = \"0.9 m\"', combustion.characteristic_length",
        "udmh, wall_zone_loss = 0.02, combustion.wall_zone_loss",
        "udmh, collapse_factor = 1.15, tank.collapse_factor",
        "udmh, 'correlation = \"sieder-tate\"', cooling.correlation",
        "nitrogen-tetroxide, [metals.titanium], metals",
    })
    void whatARoleNeedsMustBeThere(String id, String line, String key) throws IOException {
        String good = Files.readString(HOME.resolve("fluids/" + id + ".toml"));
        assertThat(good).contains(line);
        boolean table = line.startsWith("[");
        write("bad", table ? good.replaceAll("(?s)\\Q" + line + "\\E.*?(?=\n\\[|$)", "") : good.replace(line, ""));
        assertThatThrownBy(() -> FluidLibrary.open(folder).propellant("bad"))
                .isInstanceOfSatisfying(
                        InvalidInput.class, e -> assertThat(e.problems()).anySatisfy(problem -> {
                            assertThat(problem.key()).isEqualTo(key);
                            assertThat(problem.value()).isEqualTo("missing");
                        }));
    }

    @Test
    void aMisspeltTraitIsNamed() throws IOException {
        String good = Files.readString(HOME.resolve("fluids/udmh.toml"));
        write("bad", good.replace("soot = false", "sooth = false"));
        assertThatThrownBy(() -> FluidLibrary.open(folder).propellant("bad"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("did you mean soot?");
    }

    /** 200 K divides the two: kerosene's file knows no insulation, propane's has both factors. */
    @Test
    void aStateThatTheFileDoesNotProvideForIsRefused() {
        Propellant kerosene = LIBRARY.propellant("rp-1");
        assertThatThrownBy(() -> kerosene.needed(kerosene.tank().insulationMass(), "tank.insulation_mass", "a mass"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("fluids/rp-1.toml")
                .hasMessageContaining("tank.insulation_mass");
        Propellant propane = LIBRARY.propellant("propane");
        assertThat(propane.collapseFactor(231)).isEqualTo(1.15);
        assertThat(propane.collapseFactor(100)).isEqualTo(1.4);
    }

    /** A square root of what is negative above 400 K: the density has no value there. */
    @Test
    void aPropertyWithoutAValueIsNamedWithItsTemperature() throws IOException {
        String good = Files.readString(HOME.resolve("fluids/uh-25.toml"));
        write(
                "bad",
                good.replace(
                        "form = \"polynomial\"\ncoefficients = [1146.15, -1.0]",
                        "form = \"dippr-105\"\ncoefficients = [80, 0.27, 400, 0.29]"));
        assertThatThrownBy(() -> FluidLibrary.open(folder).propellant("bad"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("bad.toml:")
                .hasMessageContaining("density of NaN at 404.000 K");
    }

    /** CoolProp gives all but the gas's transport properties, and none below the triple point. */
    @Test
    void aFluidOfCoolPropIsCheckedByPropertyToo() throws IOException {
        String gas = Files.readString(HOME.resolve("fluids/nitrous-oxide.toml"));
        write("bad-gas", gas.replace("coefficients = [2.115e-6, 0.4642,", "coefficients = [-2.115e-6, 0.4642,"));
        assertThatThrownBy(() -> FluidLibrary.open(folder, () -> CoolPropLibrary.load(HOME))
                        .propellant("bad-gas"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("bad-gas.toml:")
                .hasMessageContaining("gas viscosity of -")
                .hasMessageContaining("at 182.300 K");
        String liquid = Files.readString(HOME.resolve("fluids/ethanol.toml"));
        write("cold", liquid.replaceFirst("temperature = \"298.15 K\"", "temperature = \"50 K\""));
        assertThatThrownBy(() -> FluidLibrary.open(folder, () -> CoolPropLibrary.load(HOME))
                        .propellant("cold"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("cold.toml")
                .hasMessageContaining("formation.temperature is 50.0000 K")
                .hasMessageContaining("at 100000 Pa");
    }

    /** A figure of another fluid, or of other units, whether the model is CoolProp's or a correlation. */
    @ParameterizedTest
    @CsvSource({"ethanol, density, 785 kg/m³, 7850, 785.", "udmh, density, 786 kg/m³, 870, 78"})
    void aStatedDensityThatIsNotTheModelsIsRefused(String id, String key, String right, String wrong, String model)
            throws IOException {
        String good = Files.readString(HOME.resolve("fluids/" + id + ".toml"));
        assertThat(good).contains(key + " = \"" + right);
        write("bad", good.replace(key + " = \"" + right, key + " = \"" + wrong + " kg/m³"));
        assertThatThrownBy(() -> FluidLibrary.open(folder, () -> CoolPropLibrary.load(HOME))
                        .propellant("bad"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("bad.toml:")
                .hasMessageContaining("storage." + key + " is " + wrong)
                .hasMessageContaining("the model has " + model)
                .hasMessageContaining(" K and ");
    }

    @Test
    void aFluidIsAddedByAFileAlone() throws IOException {
        String copy = Files.readString(HOME.resolve("fluids/udmh.toml"));
        write("my-fuel", copy);
        assertThat(FluidLibrary.open(folder)
                        .propellant("my-fuel")
                        .storageState()
                        .density())
                .isCloseTo(LIBRARY.propellant("udmh").storageState().density(), within(1e-9));
    }

    @Test
    void extrapolatedPropertiesAreNamed() {
        Fluid rp1 = LIBRARY.propellant("rp-1").fluid();
        assertThat(rp1.warnings(rp1.atPressureTemperature(5e6, 300))).isEmpty();
        assertThat(rp1.warnings(rp1.atPressureTemperature(5e6, 620)))
                .anySatisfy(warning -> assertThat(warning.message()).contains("conductivity at 620.0 K"));
    }

    private void write(String id, String text) throws IOException {
        Files.createDirectories(folder.resolve("fluids"));
        Files.writeString(folder.resolve("fluids").resolve(id + ".toml"), text);
    }
}

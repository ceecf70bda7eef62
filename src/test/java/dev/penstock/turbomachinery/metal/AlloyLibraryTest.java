package dev.penstock.turbomachinery.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.turbomachinery.metal.HydrogenEmbrittlement.HarmClass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of alloy families, and what they say of a part. */
class AlloyLibraryTest {

    private static final AlloyLibrary ALLOYS = AlloyLibrary.load(Path.of("fluids/metals"));

    private static MetalCheck inOxygen(String family, double pressure) {
        return part(family, pressure, 300, 1, 0);
    }

    private static MetalCheck inHydrogen(String family, double pressure) {
        return part(family, pressure, 300, 0, 1);
    }

    private static MetalCheck part(String family, double pressure, double temperature, double oxygen, double hydrogen) {
        return new MetalCheck(
                "turbine wheel",
                1,
                ALLOYS.family(family).orElseThrow(),
                "gas",
                pressure,
                temperature,
                OptionalDouble.of(oxygen),
                OptionalDouble.of(hydrogen));
    }

    @Test
    void everyTestSaysWhereItComesFrom() {
        assertThat(ALLOYS.families()).hasSizeGreaterThan(10);
        for (AlloyFamily family : ALLOYS.families()) {
            assertThat(family.oxygen().size() + family.hydrogen().size())
                    .as(family.id())
                    .isPositive();
            family.oxygen().forEach(t -> assertThat(t.source())
                    .as(family.id())
                    .containsAnyOf("from memory", "common practice, no source"));
            family.hydrogen().forEach(t -> assertThat(t.source())
                    .as(family.id())
                    .containsAnyOf("from memory", "common practice, no source"));
        }
    }

    /**
     * Published, from memory of [astm-mnl36]: rods of titanium burn in oxygen of atmospheric pressure, aluminium at a few bar, carbon
     * steel near 1 MPa, stainless steels and bare superalloys from some 3 to 7 MPa; copper and nickel-copper burn on at no
     * pressure tried, 50 MPa and more.
     */
    @Test
    void titaniumAndAluminiumBurnInOxygenAndCopperDoesNot() {
        assertThat(inOxygen("titanium-alloy", 101325).verdict()).isEqualTo("BURNS ON");
        assertThat(inOxygen("aluminium-alloy", 101325).verdict()).isNotEqualTo("BURNS ON");
        assertThat(inOxygen("aluminium-alloy", 1e6).verdict()).isEqualTo("BURNS ON");
        assertThat(inOxygen("low-alloy-steel", 2e6).verdict()).isEqualTo("BURNS ON");
        assertThat(inOxygen("austenitic-steel", 10e6).verdict()).isEqualTo("BURNS ON");
        assertThat(inOxygen("nickel-superalloy", 20e6).verdict()).isEqualTo("BURNS ON");
        assertThat(inOxygen("copper-alloy", 40e6).verdict()).isEqualTo("bears it");
        assertThat(inOxygen("nickel-burn-resistant", 60e6).verdict()).isEqualTo("bears it");
        assertThat(inOxygen("copper-alloy", 60e6).verdict()).isEqualTo("ABOVE WHAT WAS TRIED");
    }

    /** Published, from memory of [chandler-walter-1974], notched strength ratios at 69 MPa: 718 0.46, copper 1.00, 410 steel 0.22. */
    @Test
    void strengthFallsWithTheRootOfThePressure() {
        assertThat(inHydrogen("nickel-superalloy", 69e6).strengthRatio().orElseThrow())
                .isCloseTo(0.46, within(1e-12));
        // 1 - 0.54/2 at a quarter of the pressure of the test
        assertThat(inHydrogen("nickel-superalloy", 69e6 / 4).strengthRatio().orElseThrow())
                .isCloseTo(0.73, within(1e-12));
        assertThat(inHydrogen("martensitic-steel", 69e6).strengthRatio().orElseThrow())
                .isCloseTo(0.22, within(1e-12));
        assertThat(inHydrogen("austenitic-steel", 69e6).strengthRatio().orElseThrow())
                .isCloseTo(0.87, within(1e-12));
    }

    /** Classes by ratio, from memory of [nasa-tm-2016-218602]. */
    @Test
    void classesGoByTheRatio() {
        assertThat(HarmClass.of(1.1)).isEqualTo(HarmClass.NEGLIGIBLE);
        assertThat(HarmClass.of(0.92)).isEqualTo(HarmClass.SMALL);
        assertThat(HarmClass.of(0.79)).isEqualTo(HarmClass.HIGH);
        assertThat(HarmClass.of(0.58)).isEqualTo(HarmClass.SEVERE);
        assertThat(HarmClass.of(0.46)).isEqualTo(HarmClass.EXTREME);
    }

    @Test
    void theWorstPartIsTheLimit() {
        MetalReport report = new MetalReport(List.of(
                inOxygen("nickel-superalloy", 2e6),
                inOxygen("nickel-superalloy", 6e6),
                inHydrogen("copper-alloy", 1e7)));
        assertThat(report.limits()).hasSize(2);
        assertThat(report.limits().get(0).value()).isCloseTo(6.0 / 6.9, within(1e-12));
        assertThat(report.limits().get(0).met()).isTrue();
        assertThat(report.warnings()).anySatisfy(w -> {
            assertThat(w.message()).contains("6.00 MPa of oxygen", "hot gas may halve that");
            assertThat(w.aside()).isFalse();
        });
    }

    @Test
    void whatNobodyTestedIsADoubtAndNoPass() {
        MetalReport report = new MetalReport(List.of(inOxygen("iron-superalloy", 1e6)));
        assertThat(report.limits()).isEmpty();
        assertThat(report.parts().get(0).verdict()).isEqualTo("no test in oxygen held");
        assertThat(report.warnings()).singleElement().satisfies(w -> assertThat(w.aside())
                .isFalse());
    }

    @Test
    void coldLiquidsAndOtherGasesAreNotConcerned() {
        assertThat(part("titanium-alloy", 20e6, 40, 0, 1).concerned()).isFalse();
        assertThat(part("titanium-alloy", 20e6, 95, 1, 0).concerned()).isFalse();
        assertThat(part("titanium-alloy", 20e6, 900, 0, 0).concerned()).isFalse();
        assertThat(part("titanium-alloy", 20e6, 900, 0, 0.3).concerned()).isTrue();
    }

    /** Gas of a fuel with carbon holds some third of hydrogen; that of hydrogen almost nothing else but steam. */
    @Test
    void whatIsUsualFollowsTheGas() {
        AlloyFamily copper = ALLOYS.family("copper-alloy").orElseThrow();
        assertThat(copper.inFuelGas()).contains("sulphur");
        assertThat(part("copper-alloy", 10e6, 900, 0, 0.3).note()).isEqualTo(copper.inFuelGas());
        assertThat(part("copper-alloy", 10e6, 900, 0, 0.9).note()).isEqualTo(copper.inHydrogen());
        assertThat(part("copper-alloy", 10e6, 900, 0.9, 0).note()).isEqualTo(copper.inOxygen());
    }

    @Test
    void aWrongFileNamesItsKey(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("bad.toml"),
                Files.readString(Path.of("fluids/metals/titanium-alloy.toml")).replace("0.007 MPa", "0.007 K"));
        assertThatThrownBy(() -> AlloyLibrary.load(folder))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("threshold");
    }
}

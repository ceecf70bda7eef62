package dev.penstock.cycles.solving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.metal.MetalCheck;
import dev.penstock.turbomachinery.metal.MetalLimit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Metals of an engine's parts against what these meet. */
class MetalPartsTest {

    private static EngineBalance with(String file, String key, String family) {
        return Concepts.STUDY.balance(Concepts.READER.reread(Concepts.read(file), Map.of(key, '"' + family + '"')));
    }

    private static LimitCheck limit(EngineBalance balance, MetalLimit kind) {
        return balance.limits().stream()
                .filter(l -> l.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** Common practice: no titanium in oxygen-rich gas; the parts by default bear it. */
    @Test
    void aTitaniumTurbineInOxygenRichGasMissesItsLimit() {
        EngineBalance usual = Concepts.balance("razorbill.toml");
        assertThat(limit(usual, MetalLimit.OXYGEN_OVER_THRESHOLD).met()).isTrue();
        assertThat(usual.metals().parts())
                .extracting(MetalCheck::name)
                .contains(
                        "main turbine wheel",
                        "main turbine housing",
                        "main turbine seal",
                        "hot-gas duct",
                        "gas injector");
        EngineBalance titanium = with("razorbill.toml", "metals.oxidizer.turbine", "titanium-alloy");
        LimitCheck missed = limit(titanium, MetalLimit.OXYGEN_OVER_THRESHOLD);
        assertThat(missed.met()).isFalse();
        assertThat(missed.source()).contains("main turbine wheel", "6Al-4V", "from memory");
        assertThat(titanium.engine().vacuumIsp()).isEqualTo(usual.engine().vacuumIsp());
    }

    /** Oxygen counts by its partial pressure, which is less than that of the gas and most of it. */
    @Test
    void oxygenRichGasCountsByItsPartialPressure() {
        MetalCheck wheel = Concepts.balance("razorbill.toml").metals().parts().stream()
                .filter(p -> p.name().equals("main turbine wheel"))
                .findFirst()
                .orElseThrow();
        assertThat(wheel.oxygenPressure().orElseThrow() / wheel.pressure()).isBetween(0.8, 0.99);
        assertThat(wheel.hydrogenPressure()).isEmpty();
    }

    /** Hardened steel in hydrogen: the class is extreme (0.22 at 69 MPa), and the plated superalloy by default bears it. */
    @Test
    void hardenedSteelInHydrogenMissesItsLimit() {
        EngineBalance usual = Concepts.balance("tern.toml");
        assertThat(limit(usual, MetalLimit.STRENGTH_IN_HYDROGEN).met()).isTrue();
        EngineBalance steel = with("tern.toml", "metals.fuel.housing", "martensitic-steel");
        assertThat(limit(steel, MetalLimit.STRENGTH_IN_HYDROGEN).value())
                .isLessThan(limit(usual, MetalLimit.STRENGTH_IN_HYDROGEN).value())
                .isLessThan(0.7);
        assertThat(steel.warnings())
                .anySatisfy(w -> assertThat(w.message()).contains("martensitic-steel keeps", "notched strength"));
    }

    @Test
    void anUnknownFamilyIsRefusedByItsKey() {
        assertThatThrownBy(() -> with("heron.toml", "metals.fuel.seal", "unobtainium"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("metals.fuel.seal")
                .hasMessageContaining("unobtainium")
                .hasMessageContaining("titanium-alloy");
    }

    @Test
    void gasOfUnknownCompositionIsListedAndNotJudged() {
        List<MetalCheck> parts = Concepts.balance("heron.toml").metals().parts();
        assertThat(parts).isNotEmpty().allSatisfy(part -> assertThat(part.verdict())
                .contains("not judged"));
        assertThat(Concepts.balance("heron.toml").metals().limits()).isEmpty();
    }
}

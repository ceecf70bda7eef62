package dev.penstock.cycles.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.arrangements.DualExpander;
import dev.penstock.cycles.arrangements.ExpanderBleed;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.Side;
import dev.penstock.errors.InvalidInput;
import dev.penstock.study.CoolingRuns;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Several cooling circuits in a concept file, right and wrong. */
class CoolingCircuitsTest {

    private static final String HEAD =
            """
            name = "Two"
            cycle = "expander"
            [propellants]
            oxidizer = "oxygen"
            fuel = "hydrogen"
            mixture_ratio = 5.5
            [engine]
            thrust_vacuum = "80 kN"
            chamber_pressure = "4 MPa"
            [nozzle]
            area_ratio = 100
            """;

    private static final String CIRCUIT =
            """
            [[cooling.circuits]]
            name = "nozzle"
            coolant = "oxidizer"
            """;

    private static Concept read(String cooling) {
        return Concepts.READER.parse("two.toml", HEAD + cooling, Map.of());
    }

    private static void refused(String cooling, String... words) {
        assertThatThrownBy(() -> read(cooling))
                .isInstanceOf(InvalidInput.class)
                .satisfies(e -> assertThat(e.getMessage()).contains(words));
    }

    /** By hand, from the schedules of decision 0214: ducts where a propellant cools on its way, and an orifice in both of an expander. */
    @Test
    void aPropellantThatCoolsHasDucts() {
        Concept one = read("[cooling]\n");
        assertThat(one.feed(Side.FUEL).lineLoss()).isEqualTo(0.20);
        assertThat(one.feed(Side.OXIDIZER).lineLoss()).isEqualTo(0.02);
        Concept both = read("[cooling]\nend_area_ratio = 4\n" + CIRCUIT);
        assertThat(both.feed(Side.FUEL).lineLoss()).isEqualTo(0.20);
        assertThat(both.feed(Side.OXIDIZER).lineLoss()).isEqualTo(0.20);
        assertThat(both.feed(Side.OXIDIZER).valveLoss()).isEqualTo(0.18);
    }

    /** A circuit begins where the one before it ends; what belongs to the wall as a whole is stated once. */
    @Test
    void circuitsFollowEachOther() {
        Concept concept = read(
                """
                [cooling]
                end_area_ratio = 4
                heat_flux_factor = 1.1
                radiation = false
                extension_material = "inconel-718"
                [[cooling.circuits]]
                name = "nozzle"
                coolant = "oxidizer"
                end_area_ratio = 20
                material = "inconel-718"
                [[cooling.circuits]]
                name = "skirt"
                coolant = "fuel"
                flow_fraction = 0.5
                [cooling.circuits.limits]
                life = 20
                """);
        assertThat(concept.cooling())
                .extracting(CoolingCircuit::coolant)
                .containsExactly(Side.FUEL, Side.OXIDIZER, Side.FUEL);
        assertThat(concept.cooling())
                .extracting(c -> c.jacket().route().startAreaRatio().orElse(0))
                .containsExactly(0.0, 4.0, 20.0);
        assertThat(concept.cooling())
                .extracting(c -> c.jacket().route().endAreaRatio().orElse(0))
                .containsExactly(4.0, 20.0, 0.0);
        assertThat(concept.cooling()).allMatch(c -> c.heatFluxFactor() == 1.1);
        assertThat(concept.cooling()).allMatch(c -> !c.jacket().gasSide().radiation());
        assertThat(concept.cooling())
                .extracting(c -> c.jacket().extension().isPresent())
                .containsExactly(false, false, true);
        assertThat(concept.cooling().get(1).jacket().wall().material()).isEqualTo("inconel-718");
        assertThat(concept.cooling().get(2).jacket().limits().life()).isEqualTo(20);
        assertThat(concept.cooling().get(2).flowFraction()).isEqualTo(0.5);
        assertThat(Concepts.READER
                        .reread(concept, Map.of("cooling.circuits[1].limits.life", "30"))
                        .cooling()
                        .get(2)
                        .jacket()
                        .limits()
                        .life())
                .isEqualTo(30);
    }

    @Test
    void aCircuitThatEndsBeforeItBeginsIsRefused() {
        refused(
                "[cooling]\nend_area_ratio = 8\n" + CIRCUIT + "end_area_ratio = 5\n",
                "cooling.circuits[0].end_area_ratio",
                "5.0",
                "beyond 8.0");
    }

    @Test
    void aBorderThatIsNotStatedIsAskedFor() {
        refused("[cooling]\n" + CIRCUIT, "cooling.end_area_ratio", "missing", "the next begins");
    }

    @Test
    void twoCircuitsOfOneNameAreRefused() {
        String two = "[cooling]\nend_area_ratio = 4\n" + CIRCUIT + "end_area_ratio = 9\n" + CIRCUIT;
        refused(two, "cooling.circuits[1].name", "\"nozzle\"", "another circuit has that name");
        refused(
                "[cooling]\nend_area_ratio = 4\n" + CIRCUIT.replace("nozzle", "cooling"),
                "cooling.circuits[0].name",
                "the first is called cooling");
        refused(
                "[cooling]\nend_area_ratio = 4\n" + CIRCUIT.replace("nozzle", "a/b"),
                "cooling.circuits[0].name",
                "letters, digits");
    }

    @Test
    void circuitsBehindNothingAreRefused() {
        refused("[cooling]\ncoolant = \"none\"\nend_area_ratio = 4\n" + CIRCUIT, "cooling.coolant", "\"none\"");
    }

    @Test
    void whatBelongsToTheWholeWallIsRefusedInACircuit() {
        refused("[cooling]\nend_area_ratio = 4\n" + CIRCUIT + "radiation = false\n", "cooling.circuits[0].radiation");
        refused(
                "[cooling]\nend_area_ratio = 4\n" + CIRCUIT + "wall_thicknes = \"1 mm\"\n",
                "cooling.circuits[0].wall_thicknes",
                "did you mean",
                "wall_thickness");
        refused("[cooling]\nend_area_ratio = 4\n[[cooling.circuits]]\nname = \"nozzle\"\n", "coolant", "missing");
    }

    @Test
    void aDualExpanderNeedsBothJackets() {
        assertThatThrownBy(() -> Concepts.READER.parse(
                        "two.toml", HEAD.replace("\"expander\"", "\"dual-expander\"") + "[cooling]\n", Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("cooling.circuits")
                .hasMessageContaining("oxidizer");
    }

    @Test
    void aCircuitThatIsNotThereIsNamed() {
        assertThatThrownBy(() -> new CoolingRuns(Path.of("").toAbsolutePath())
                        .search(Concepts.balance("phalarope.toml"), "throat", 20, (done, all) -> {}))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("throat")
                .hasMessageContaining("cooling, nozzle");
    }

    /** Another cycle gets the jackets that it lives on, and keeps what was cooled. */
    @Test
    void anotherCycleTakesItsJackets() {
        Concept avocet = Concepts.read("avocet.toml");
        Concept dual = Concepts.READER.withCycle(avocet, new DualExpander());
        assertThat(dual.cooling()).hasSize(2);
        assertThat(dual.cooling().get(1).coolant()).isEqualTo(Side.OXIDIZER);
        assertThat(dual.cooling().get(1).jacket().route().endAreaRatio()).hasValue(60);
        Cycle bleed = new ExpanderBleed();
        Concept back = Concepts.READER.withCycle(Concepts.read("phalarope.toml"), bleed);
        assertThat(back.cooling()).hasSize(2);
    }
}

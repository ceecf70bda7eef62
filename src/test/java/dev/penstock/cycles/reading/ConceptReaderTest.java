package dev.penstock.cycles.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.penstock.chamber.design.OuterZone;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Expander;
import dev.penstock.cycles.arrangements.FullFlow;
import dev.penstock.cycles.arrangements.GasGenerator;
import dev.penstock.cycles.arrangements.StagedCombustion;
import dev.penstock.cycles.arrangements.TapOff;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Side;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.Spread;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ConceptReaderTest {

    private static final String TEXT = new GasGenerator().example().shortest("gas-generator", "Example");

    private static InvalidInput refused(String text, Map<String, String> changes) {
        return catchThrowableOfType(InvalidInput.class, () -> Concepts.READER.parse("test.toml", text, changes));
    }

    @Test
    void severalErrorsAreReportedTogetherWithLineAndRange() {
        String text = TEXT.replace("thrust_vacuum = \"600 kN\"", "thrust_vacuum = \"600 kg\"")
                .replace("mixture_ratio = 2.4", "mixture_ratio = -2\nmixing = 3");
        InvalidInput error = refused(text, Map.of("pumps.fuel.eficiency", "0.7"));
        assertThat(error.problems()).hasSize(4);
        assertThat(error.getMessage())
                .contains("propellants.mixture_ratio is -2; allowed is 0.05 to 50")
                .contains("test.toml:10")
                .contains("engine.thrust_vacuum is \"600 kg\"; write a force")
                .contains("did you mean efficiency?")
                .contains("propellants.mixing");
    }

    @Test
    void anUnknownPropellantDoesNotHideOtherErrors() {
        InvalidInput error = refused(
                TEXT.replace("\"oxygen\"", "\"oxigen\""),
                Map.of("engine.chamber_pressure", "8 kN", "nozzle.area_ratio", "0.5"));
        assertThat(error.getMessage())
                .contains("did you mean oxygen")
                .contains("engine.chamber_pressure is \"8 kN\"; write a pressure")
                .contains("nozzle.area_ratio is 0.5; allowed is");
    }

    @Test
    void unknownPropellantsAndCyclesNameWhatExists() {
        InvalidInput error =
                refused(TEXT.replace("\"oxygen\"", "\"oxigen\"").replace("\"gas-generator\"", "\"gas-gen\""), Map.of());
        assertThat(error.getMessage())
                .contains("did you mean oxygen")
                .contains("allowed are pressure-fed, gas-generator, staged-fuel-rich, staged-oxygen-rich, full-flow");
    }

    @Test
    void keysOfTheFilmThatCostsOrCoolsAloneNameTheOneThatDoesBoth() {
        InvalidInput error = refused(
                TEXT, Map.of("chamber.film_fuel_fraction", "0.05", "cooling.film.throat_flow_fraction", "0.01"));
        assertThat(error.getMessage())
                .contains("chamber.film_fuel_fraction is 0.05; write cooling.film.fuel_fraction")
                .contains("cooling.film.throat_flow_fraction is 0.01; write fuel_fraction");
    }

    @Test
    void filmAndOuterZoneBelongToTheChamber() {
        Concept concept = Concepts.READER.parse(
                "test.toml",
                TEXT,
                Map.of(
                        "cooling.film.fuel_fraction",
                        "0.04",
                        "cooling.outer_zone.flow_fraction",
                        "0.2",
                        "cooling.outer_zone.mixture_ratio_bias",
                        "0.6"));
        assertThat(concept.chamber().combustor().filmFuelFraction()).isEqualTo(0.04);
        assertThat(concept.chamber().combustor().outerZone()).contains(new OuterZone(0.2, 0.6));
    }

    @Test
    void sizesAndNozzleEndsExcludeEachOther() {
        InvalidInput error = refused(TEXT, Map.of("engine.throat_diameter", "0.2 m", "nozzle.exit_pressure", "50 kPa"));
        assertThat(error.getMessage()).contains("exactly one of thrust_vacuum").contains("exactly one of area_ratio");
    }

    @Test
    void temperatureAndPressureRatioOfAPreburnerExcludeEachOther() {
        String text = new FullFlow().example().shortest("full-flow", "x");
        InvalidInput error = refused(
                text, Map.of("turbines.fuel.pressure_ratio", "1.5", "preburner.fuel_rich.temperature", "800 K"));
        assertThat(error.getMessage())
                .contains("preburner.fuel_rich.temperature")
                .contains("closes the power balance");
    }

    @Test
    void inputsCarryTheirSourcesAndDefaultsSayWhatTheyRestOn() {
        Concept concept = Concepts.READER.parse(
                "x",
                TEXT + "[sources]\nengine = \"study of the booster\"\n\"nozzle.area_ratio\" = \"transport height\"\n",
                Map.of());
        Map<String, InputValue> inputs = new java.util.HashMap<>();
        concept.document().inputs().forEach(i -> inputs.put(i.key(), i));
        assertThat(inputs.get("engine.chamber_pressure").source()).isEqualTo("study of the booster");
        assertThat(inputs.get("nozzle.area_ratio").source()).isEqualTo("transport height");
        assertThat(inputs.get("pumps.fuel.tip_speed_limit").source()).isEqualTo("default: nickel alloy, nasa-sp-8109");
        assertThat(inputs.get("engine.chamber_pressure").unit()).isEqualTo("Pa");
    }

    @Test
    void aSourceForAnInputThatDoesNotExistIsAProblem() {
        InvalidInput error = refused(TEXT + "[sources]\n\"engine.chamber_presure\" = \"x\"\n", Map.of());
        assertThat(error.getMessage()).contains("did you mean \"engine.chamber_pressure\"");
    }

    @Test
    void theVehicleTableIsLeftUnread() {
        assertThat(Concepts.READER
                        .parse("x", TEXT + "[vehicle]\npayload = \"heavy\"\n", Map.of())
                        .name())
                .isEqualTo("Example");
    }

    @Test
    void aSpreadIsAboutTheValueInUse() {
        String sure = "[uncertainty]\n\"injector.fuel_loss\" = [0.1, 0.18, 0.2]\n";
        Concept concept = Concepts.READER.parse("x", TEXT + sure, Map.of());
        assertThat(spread(concept, "injector.fuel_loss")).contains(new Spread(0.1, 0.18, 0.2));
        // a change takes the bounds along
        Concept changed = Concepts.READER.parse("x", TEXT + sure, Map.of("injector.fuel_loss", "0.36"));
        assertThat(spread(changed, "injector.fuel_loss")).contains(new Spread(0.2, 0.36, 0.4));

        assertThat(refused(TEXT + "[uncertainty]\n\"injector.fuel_loss\" = [0.1, 0.15, 0.2]\n", Map.of())
                        .getMessage())
                .contains("uncertainty.\"injector.fuel_loss\" is 0.15")
                .contains("the most likely value must be the one in use, which is 0.18");
        assertThat(refused(TEXT + "[uncertainty]\n\"pumps.fuel.efficiency\" = [0.6, 0.7, 0.8]\n", Map.of())
                        .getMessage())
                .contains("the calculation finds this value: state it together with its spread");
        assertThat(refused(TEXT + "[uncertainty]\n\"nozzle.shape\" = [1, 2, 3]\n", Map.of())
                        .getMessage())
                .contains("only a number with a range may be uncertain");
    }

    private static Optional<Spread> spread(Concept concept, String key) {
        return concept.document().inputs().stream()
                .filter(i -> i.key().equals(key))
                .findFirst()
                .flatMap(InputValue::spread);
    }

    @Test
    void aConceptIsReadAgainFromItsOwnText() {
        Concept concept = Concepts.READER.parse("x", TEXT, Map.of("engine.chamber_pressure", "6 MPa"));
        Concept again = Concepts.READER.reread(concept, Map.of());
        assertThat(again).isEqualTo(concept);
        Concept changed = Concepts.READER.reread(concept, Map.of("pumps.fuel.efficiency", "0.7"));
        assertThat(changed.chamberPressure()).isEqualTo(6e6);
        assertThat(changed.fuelFeed().pump().efficiency()).hasValue(0.7);
        assertThat(concept.document().text()).isEqualTo(TEXT);
    }

    @Test
    void demoConceptsCarryNoProblem() throws Exception {
        try (var files = Files.list(Path.of("cycles"))) {
            List<Path> concepts =
                    files.filter(f -> f.toString().endsWith(".toml")).toList();
            assertThat(concepts).hasSizeGreaterThanOrEqualTo(5);
            concepts.forEach(
                    file -> assertThat(Concepts.READER.read(file).name()).isNotBlank());
        }
    }

    @Test
    void anotherCycleKeepsWhatIsNotItsOwn() {
        Concept gannet = Concepts.read("gannet.toml");
        Concept staged = Concepts.READER.withCycle(gannet, StagedCombustion.FUEL_RICH);
        assertThat(staged.cycle()).isEqualTo(StagedCombustion.FUEL_RICH);
        assertThat(staged.chamber())
                .extracting(c -> c.nozzle(), c -> c.chamberPressure())
                .containsExactly(gannet.chamber().nozzle(), gannet.chamberPressure());
        assertThat(staged.cooling()).isEqualTo(gannet.cooling());
        assertThat(staged.mixtureRatio()).isEqualTo(gannet.mixtureRatio());
        assertThat(staged.burners()).containsOnlyKeys(Burner.FUEL_RICH);
        assertThat(staged.burners().get(Burner.FUEL_RICH).temperature()).hasValue(850);
    }

    @Test
    void aCycleOfTheJacketsHeatGetsAJacket() {
        Concept kittiwake = Concepts.read("kittiwake.toml");
        assertThat(kittiwake.cooling()).isEmpty();
        Concept expander = Concepts.READER.withCycle(kittiwake, Expander.CLOSED);
        assertThat(expander.cooling().get(0).coolant()).isEqualTo(Side.FUEL);
    }

    @Test
    void changesOfTheOldCycleAreDroppedWithIt() {
        Concept heron = Concepts.READER.read(
                java.nio.file.Path.of("cycles/heron.toml"),
                java.util.Map.of("gas_generator.temperature", "800 K", "engine.chamber_pressure", "5 MPa"));
        Concept tap = Concepts.READER.withCycle(heron, new TapOff());
        assertThat(tap.chamberPressure()).isEqualTo(5e6);
        assertThat(tap.burners().get(Burner.TAP_OFF).temperature()).hasValue(1000);
    }
}

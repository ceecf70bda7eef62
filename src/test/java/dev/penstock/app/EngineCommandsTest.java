package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The contract of the commands that balance engines: documents, exit codes, sentences, pages. */
class EngineCommandsTest {

    private static final Pattern REFERENCE = Pattern.compile("(?:(?:src|href)\\s*=|url\\()\\s*[\"']?([^\"')\\s>]+)");

    @TempDir
    Path folder;

    @Test
    void balanceHasEveryPartOfItsContract() {
        Run run = Run.of("balance", "cycles/heron.toml", "--json");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        JsonNode json = run.json();
        for (String key : List.of(
                "chamber_pressure_Pa",
                "mixture_ratio",
                "thrust_vacuum_N",
                "isp_vacuum_s",
                "isp_sea_level_s",
                "mass_flow_kg_s")) {
            assertThat(json.at("/engine/" + key).doubleValue()).as(key).isPositive();
        }
        assertThat(json.at("/engine/cycle").textValue()).isEqualTo("gas-generator");
        for (String key : List.of(
                "coolant_temperature_rise_K",
                "coolant_pressure_drop_Pa",
                "peak_wall_temperature_K",
                "peak_heat_flux_W_m2")) {
            assertThat(json.at("/cooling/" + key).doubleValue()).as(key).isPositive();
        }
        for (String key : List.of("stations", "pumps", "turbines", "shafts")) {
            assertThat(json.get(key).size()).as(key).isPositive();
        }
        assertThat(json.get("warnings").isArray()).isTrue();
        assertThat(json.get("residual_worst").doubleValue()).isLessThan(1e-8);
        // identity: Isp is thrust over weight flow
        assertThat(json.at("/engine/thrust_vacuum_N").doubleValue()
                        / json.at("/engine/mass_flow_kg_s").doubleValue()
                        / 9.80665)
                .isCloseTo(json.at("/engine/isp_vacuum_s").doubleValue(), within(1e-9));
    }

    @Test
    void aConceptThatComesWithPenstockIsFoundByItsName() {
        assertThat(Run.of("balance", "heron", "--json").json())
                .isEqualTo(Run.of("balance", "cycles/heron.toml", "--json").json());
    }

    @Test
    void anUncooledEngineHasNoCooling() {
        Run run = Run.of("balance", "dunlin", "--json");
        assertThat(run.code()).isZero();
        assertThat(run.json().get("cooling").isNull()).isTrue();
        assertThat(run.json().get("pumps")).isEmpty();
    }

    @Test
    void aChangeReachesTheResult() {
        JsonNode json = Run.of("balance", "heron", "--json", "--set", "engine.chamber_pressure=6 MPa")
                .json();
        assertThat(json.at("/engine/chamber_pressure_Pa").doubleValue()).isCloseTo(6e6, within(1e-3));
    }

    @Test
    void tablesComeInTheUnitsOfTheTrade() {
        Run run = Run.of("balance", "heron");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("specific impulse, vacuum", "80.00  bar", "rpm", "closed to ", "kept");
    }

    @Test
    void aFileThatIsNotThereIsBadInput() {
        Run run = Run.of("balance", "nowhere.toml", "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("penstock: CASE is nowhere.toml; write the path of a concept file, or one of ")
                .contains("heron");
    }

    @Test
    void everyMistakeOfAFileIsReportedWithItsLine() throws Exception {
        Path file = Files.writeString(
                folder.resolve("bad.toml"),
                """
                name = "Bad"
                cycle = "gas-generator"
                [propellants]
                oxidizer = "oxygen"
                fuel = "methane"
                mixture_ratio = -2
                [engine]
                thrust_vacuum = "500 kg"
                chamber_pressure = "8 MPa"
                [nozzle]
                area_ratoi = 20
                """);
        Run run = Run.of("balance", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems())
                .contains(
                        "penstock: " + file + ":6: propellants.mixture_ratio is -2; allowed is 0.05 to 50",
                        "penstock: " + file
                                + ":8: engine.thrust_vacuum is \"500 kg\"; write a force such as \"600 kN\"",
                        "penstock: " + file + ":11: nozzle.area_ratoi is not a known key; did you mean area_ratio?");
    }

    @Test
    void aChangeWithoutAValueIsBadInput() {
        Run run = Run.of("balance", "heron", "--set", "engine.chamber_pressure");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo("penstock: --set is engine.chamber_pressure; write path=value, for example"
                        + " engine.chamber_pressure=\"12 MPa\"\n");
    }

    @Test
    void anUnknownKeyInAChangeIsBadInput() {
        Run run = Run.of("balance", "heron", "--set", "engine.chamber_presure=9 MPa");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("engine.chamber_presure is not a known key; did you mean chamber_pressure?");
    }

    @Test
    void anEngineThatCannotCloseHasNoSolution() {
        Run run = Run.of(
                "balance",
                "razorbill",
                "--json",
                "--set",
                "engine.chamber_pressure=60 MPa",
                "--set",
                "preburner.oxidizer_rich.temperature=350 K");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems()).hasSize(1);
        assertThat(run.err()).startsWith("penstock: ").doesNotContain("defect");
    }

    @Test
    void thePageNeedsNothingButItself() throws Exception {
        Run run = Run.of("balance", "heron", "--report", folder.resolve("pages").toString());
        assertThat(run.code()).isZero();
        Path page = folder.resolve("pages/heron.html");
        assertThat(run.out()).contains("wrote " + page);
        String html = Files.readString(page);
        assertThat(html).startsWith("<!DOCTYPE html>").endsWith("</html>\n").doesNotContain("<script");
        Set<String> ids = new HashSet<>();
        Matcher id = Pattern.compile(" id=[\"']([^\"']+)[\"']").matcher(html);
        while (id.find()) {
            assertThat(ids.add(id.group(1))).as("id %s once", id.group(1)).isTrue();
        }
        Matcher reference = REFERENCE.matcher(html);
        while (reference.find()) {
            String target = reference.group(1);
            if (target.startsWith("data:")) {
                continue; // a file that the page itself holds
            }
            assertThat(target).as("reference").startsWith("#");
            assertThat(ids.contains(target.substring(1)))
                    .as("target of %s", target)
                    .isTrue();
        }
        assertThat(html)
                .contains("data-component=", "Heat flux and wall temperature", "Pressure along every line")
                .contains("Power by shaft", "Specific impulse and thrust against altitude", "From ideal to delivered")
                .contains("Cautions", "Assumptions", "invented for the demo", "cycle = &quot;gas-generator&quot;")
                .doesNotContain(Path.of("").toAbsolutePath().toString());
        try (Stream<Path> files = Files.list(folder.resolve("pages"))) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void whatAConceptSaysIsEscaped() throws Exception {
        String text = Files.readString(Path.of("cycles/dunlin.toml"))
                .replaceFirst("name = .*", "name = \"<script>alert(1)</script> & co\"")
                .replaceFirst("description = .*", "description = \"<img src=x onerror=alert(2)>\"");
        Path file = Files.writeString(folder.resolve("x.toml"), text);
        Run run = Run.of("balance", file.toString(), "--report", folder.toString());
        assertThat(run.code()).isZero();
        String html = Files.readString(folder.resolve("script-alert-1-script-co.html"));
        assertThat(html).doesNotContain("<script", "<img").contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; co");
    }

    @Test
    void aFailureLeavesNoPage() {
        Run run = Run.of("balance", "heron", "--set", "propellants.mixture_ratio=-1", "--report", folder + "/none");
        assertThat(run.code()).isEqualTo(2);
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void limitNamesWhatBinds() throws Exception {
        Run run = Run.of("limit", "heron", "--json", "--report", folder.toString());
        assertThat(run.code()).isZero();
        JsonNode json = run.json();
        assertThat(json.get("binding_limit").textValue()).isNotBlank();
        double reach = json.get("chamber_pressure_Pa").doubleValue();
        assertThat(json.at("/balance/engine/chamber_pressure_Pa").doubleValue()).isCloseTo(reach, within(1e-3));
        assertThat(json.get("held")).allMatch(limit -> limit.get("margin").doubleValue() > -1e-3);
        assertThat(Files.readString(folder.resolve("heron-limit.html"))).contains("What each limit is worth");
        assertThat(Run.of("limit", "dunlin").out()).contains("Dunlin reaches ", " binds");
    }

    @Test
    void compareKeepsTheOrderAndWritesEveryPage() throws Exception {
        Run run = Run.of("compare", "heron", "dunlin", "--json", "--report", folder.toString());
        assertThat(run.code()).isZero();
        JsonNode concepts = run.json().get("concepts");
        assertThat(concepts).hasSize(2);
        assertThat(concepts.get(0).get("name").textValue()).isEqualTo("Heron");
        assertThat(concepts.get(1).at("/engine/cycle").textValue()).isEqualTo("pressure-fed");
        for (String page : List.of("comparison.html", "heron.html", "dunlin.html")) {
            assertThat(folder.resolve(page)).exists();
        }
        assertThat(Files.readString(folder.resolve("comparison.html"))).contains("href=\"heron.html\"");
    }

    @Test
    void compareShowsTheOthersWhenOneHasNoSolution() throws Exception {
        String text =
                Files.readString(Path.of("cycles/razorbill.toml")).replaceFirst("name = .*", "name = \"Too far\"");
        Path far = Files.writeString(
                folder.resolve("far.toml"),
                text.replaceFirst("chamber_pressure = .*", "chamber_pressure = \"60 MPa\"")
                        .replaceFirst("temperature = .*", "temperature = \"350 K\""));
        Run run = Run.of("compare", far.toString(), "dunlin");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("Too far  no solution", "Dunlin", "Too far: ");
    }

    @Test
    void compareReportsTheMistakesOfAllFilesTogether() throws Exception {
        Path one = Files.writeString(folder.resolve("one.toml"), "name = \"One\"\ncycle = \"steam\"\n");
        Path two = Files.writeString(folder.resolve("two.toml"), "name = 3\n");
        Run run = Run.of("compare", one.toString(), two.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("one.toml:2: cycle is \"steam\"", "two.toml:1: name is 3");
    }

    @Test
    void newWritesAConceptThatBalancesAndTouchesNoOther() throws Exception {
        Path file = folder.resolve("mine.toml");
        Run run = Run.of("new", "gas-generator", file.toString());
        assertThat(run.code()).isZero();
        String text = Files.readString(file);
        assertThat(text).contains("name = \"mine\"", "cycle = \"gas-generator\"", "# ");
        assertThat(Run.of("balance", file.toString(), "--json").code()).isZero();
        Run again = Run.of("new", "gas-generator", file.toString());
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err())
                .isEqualTo("penstock: FILE is " + file + "; there is such a file already; name another\n");
        assertThat(Files.readString(file)).isEqualTo(text);
    }

    @Test
    void newListsTheCyclesAndNamesThemWhenOneIsUnknown() {
        assertThat(Run.of("new").out()).contains("pressure-fed", "full-flow");
        Run run = Run.of("new", "steam");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("penstock: KIND is steam; allowed are pressure-fed, gas-generator");
    }

    @Test
    void explainFollowsANumberToWhatTheConceptStates() {
        Run run = Run.of("explain", "heron", "engine.isp_vacuum_s", "--depth", "6", "--json");
        assertThat(run.code()).isZero();
        JsonNode json = run.json();
        assertThat(json.get("value"))
                .isEqualTo(Run.of("balance", "heron", "--json").json().at("/engine/isp_vacuum_s"));
        assertThat(json.at("/model/equation").textValue()).isEqualTo("Isp = F/(ṁ g₀)");
        assertThat(json.toString()).contains("stated by the concept", "invented for the demo", "nasa-rp-1311");
        String text = Run.of("explain", "heron", "pumps.fuel-pump.efficiency", "--depth", "1")
                .out();
        assertThat(text).contains("pumps.fuel-pump.efficiency = ", "holds for", "uncertainty", "source gulich-2014");
    }

    /** One shaft carries both pumps: the fuel pump turns as slowly as the oxidizer pump's suction asks for. */
    @Test
    void explainNamesTheBoundThatSetsASharedShaft() {
        JsonNode balance = Run.of("balance", "heron", "--json").json();
        assertThat(balance.toString()).contains("\"speed_set_by\":\"suction of the oxidizer pump\"");
        String speed = Run.of("explain", "heron", "pumps.fuel-pump.speed_rad_s", "--depth", "1")
                .out();
        assertThat(speed)
                .contains("pumps.oxidizer-pump.suction_head_available_m", "concept.pumps.oxidizer.suction_margin")
                .doesNotContain("pumps.fuel-pump.suction_head_available_m", "concept.pumps.fuel.suction_margin");
    }

    @Test
    void explainSuggestsTheNearestPath() {
        Run run = Run.of("explain", "heron", "engine.isp_vacum_s");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("penstock: PATH is engine.isp_vacum_s; did you mean engine.isp_vacuum_s?\n");
        assertThat(Run.of("explain", "heron").out()).contains("engine.isp_vacuum_s", "stations.1.pressure_Pa");
    }

    @Test
    void sizeHasEveryPartOfItsContract() throws Exception {
        Path file = Files.writeString(
                folder.resolve("v.toml"),
                Files.readString(Path.of("cycles/heron.toml"))
                        + "\n[vehicle]\npayload = \"3 t\"\nstages = 2\n[vehicle.mission]\ndelta_v = \"9400 m/s\"\n");
        Run run = Run.of("size", file.toString(), "--json");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        JsonNode json = run.json();
        assertThat(json.get("payload_kg").doubleValue()).isCloseTo(3000, within(1e-9));
        assertThat(json.get("stages")).hasSize(2);
        double deltaV = 0;
        for (JsonNode stage : json.get("stages")) {
            for (String key : List.of(
                    "start_mass_kg",
                    "propellant_mass_kg",
                    "oxidizer_mass_kg",
                    "fuel_mass_kg",
                    "oxidizer_tank_m3",
                    "fuel_tank_m3",
                    "dry_mass_kg",
                    "delta_v_m_s",
                    "isp_s")) {
                assertThat(stage.get(key).doubleValue()).as(key).isPositive();
            }
            deltaV += stage.get("delta_v_m_s").doubleValue();
            // identity: the propellant is oxidizer and fuel
            assertThat(stage.get("oxidizer_mass_kg").doubleValue()
                            + stage.get("fuel_mass_kg").doubleValue())
                    .isCloseTo(stage.get("propellant_mass_kg").doubleValue(), within(1e-6));
        }
        assertThat(deltaV).isCloseTo(9400, within(1e-3));
        assertThat(json.get("start_mass_kg").doubleValue())
                .isEqualTo(json.at("/stages/0/start_mass_kg").doubleValue());
        assertThat(Run.of("size", file.toString()).out()).contains("Start mass is everything on the pad");
    }

    @Test
    void sizeOfAConceptWithoutAVehicleIsBadInput() {
        Run run = Run.of("size", "cycles/dunlin.toml", "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo(
                        "penstock: cycles/dunlin.toml: vehicle is missing; write a table [vehicle], or name a vehicle"
                                + " file\n");
    }

    @Test
    void vehiclesAndSearchesAreExplainedToo() {
        Run vehicle = Run.of("explain", "skerry", "stages.first-stage.dry_mass_kg", "--depth", "1");
        assertThat(vehicle.code()).as(vehicle.err()).isZero();
        assertThat(vehicle.out()).contains("stages.first-stage.dry_mass.engines.mass_kg", "Sum");
        Run search = Run.of("explain", "dunlin", "chamber_pressure_Pa", "--limit", "--depth", "2");
        assertThat(search.code()).as(search.err()).isZero();
        assertThat(search.out()).contains("Highest chamber pressure", "limits.fuel-tank.pressure.limit");
    }
}

package dev.penstock.vehicle.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.vehicle.VehicleDoubts;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.mass.FactoredDryMass;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VehicleReaderTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();

    @TempDir
    private Path folder;

    private VehiclePlan read(String text, Map<String, String> changes) throws IOException {
        Path file = folder.resolve("sample.toml");
        Files.writeString(file, text);
        return new VehicleReader(FLUIDS).read(file, changes);
    }

    private static final String TWO_STAGES =
            """
            name = "Sample"
            payload = "2 t"
            [mission]
            orbit_altitude = "400 km"
            inclination = "45 deg"
            latitude = "5 deg"
            [mission.losses]
            gravity = "1250 m/s"
            drag = "90 m/s"
            [[stage]]
            name = "lower"
            engine = "../lower-engine.toml"
            thrust_to_weight = 1.25
            engines_out = 1
            [stage.dry_mass]
            structural_coefficient = 0.07
            [[stage]]
            name = "upper"
            engine = "../upper-engine.toml"
            engines = 2
            diameter = "3 m"
            [stage.allowances]
            residual = 0.015
            """;

    @Test
    void readsStagesWithTheirEngines() throws IOException {
        VehiclePlan plan = read(TWO_STAGES, Map.of());
        assertThat(plan.payload()).hasValue(2000);
        assertThat(plan.stages()).hasSize(2);
        StagePlan lower = plan.stages().get(0);
        assertThat(lower.engineFile())
                .contains(folder.toAbsolutePath().getParent().resolve("lower-engine.toml"));
        assertThat(lower.engines().enginesOut()).isEqualTo(1);
        assertThat(lower.dryMass()).isEqualTo(new FactoredDryMass(new StructuralCoefficient(0.07, 0), 1));
        assertThat(lower.ignitionPressure()).isEqualTo(101325);
        StagePlan upper = plan.stages().get(1);
        assertThat(upper.engines().given()).hasValue(2);
        assertThat(upper.diameter()).hasValue(3);
        assertThat(upper.allowances().residual()).isEqualTo(0.015);
        assertThat(plan.mission().terms())
                .extracting(DeltaVBudget.Term::name)
                .containsExactly(
                        "orbital speed",
                        "circularisation",
                        "rotation of the Earth",
                        "gravity loss",
                        "drag loss",
                        "flight reserve");
        assertThat(plan.notes()).isEmpty();
    }

    @Test
    void startMassInsteadOfPayloadByAChange() throws IOException {
        String withoutPayload = TWO_STAGES.replace("payload = \"2 t\"\n", "");
        VehiclePlan plan = read(withoutPayload, Map.of("start_mass", "80 t"));
        assertThat(plan.startMass()).hasValue(80_000);
        assertThat(plan.payload()).isEmpty();
    }

    @Test
    void reportsAllProblemsTogetherWithTheirLines() {
        String text = TWO_STAGES
                .replace("\"2 t\"", "\"-2 t\"")
                .replace("\"45 deg\"", "\"3 deg\"")
                .replace("engines = 2", "engines = 2.5")
                .replace("residual = 0.015", "residul = 0.015");
        assertThatThrownBy(() -> read(text, Map.of()))
                .isInstanceOfSatisfying(InvalidInput.class, e -> assertThat(e.problems())
                        .extracting(InvalidInput.Problem::key)
                        .containsExactlyInAnyOrder(
                                "payload", "mission.inclination", "stage[1].engines", "stage[1].allowances.residul"));
    }

    @Test
    void readsTheTableOfAConceptWithAlikeStages() {
        VehiclePlan plan = new VehicleReader(FLUIDS)
                .readConcept(
                        "concept.toml",
                        """
                        name = "Sample"
                        cycle = "left to the reader of concepts"
                        [vehicle]
                        start_mass = "60 t"
                        stages = 2
                        thrust_to_weight = [1.3, 0.9]
                        [vehicle.mission]
                        delta_v = "9400 m/s"
                        """,
                        Map.of())
                .orElseThrow();
        assertThat(plan.name()).isEqualTo("Sample");
        assertThat(plan.stages()).extracting(StagePlan::name).containsExactly("stage 1", "stage 2");
        assertThat(plan.stages().get(1).engines().thrustToWeight()).isEqualTo(0.9);
        assertThat(plan.mission().total()).isEqualTo(9400);
    }

    @Test
    void aConceptWithoutVehicleHasNoPlan() {
        assertThat(new VehicleReader(FLUIDS).readConcept("concept.toml", "name = \"Sample\"", Map.of()))
                .isEmpty();
    }

    @Test
    void aMisspelledKeyOfTheTableIsAProblem() {
        String text =
                """
                name = "Sample"
                [vehicle]
                payload = "1 t"
                stags = 2
                [vehicle.mission]
                delta_v = "9400 m/s"
                """;
        assertThatThrownBy(() -> new VehicleReader(FLUIDS).readConcept("concept.toml", text, Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("vehicle.stags");
    }

    @Test
    void oneOfPayloadAndStartMassIsNeeded() {
        assertThatThrownBy(() -> read(TWO_STAGES.replace("payload = \"2 t\"\n", ""), Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("missing, and start_mass too");
    }

    @Test
    void aCoastWithoutAStageIsSaidLikeAnyOther() {
        String text = TWO_STAGES
                .substring(0, TWO_STAGES.indexOf("[[stage]]"))
                .replace("[mission]\n", "[mission]\nparking_coast = \"10 min\"\n");
        assertThatThrownBy(() -> read(text, Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("stage")
                .hasMessageContaining("missing");
    }

    @Test
    void impossibleStagesAreSaidWithWhatIsAllowed() {
        String text = TWO_STAGES.replace("structural_coefficient = 0.07", "mass = \"-5 t\"")
                + """
                [boosters]
                engine = "../booster-engine.toml"
                propellant = "0 t"
                """;
        assertThatThrownBy(() -> read(text, Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("stage[0].dry_mass.mass is \"-5 t\"; allowed is 0 t or more")
                .hasMessageContaining("boosters.propellant is \"0 t\"; allowed is above 0 t");
    }

    @Test
    void readsBoostersRecoveryAndFlight() throws IOException {
        String text = TWO_STAGES.replace(
                        "[[stage]]\nname = \"upper\"",
                        "[stage.recovery]\nmode = \"launch-site\"\nlanding = \"600 m/s\"\n[[stage]]\nname = \"upper\"")
                + """
                [boosters]
                engine = "../booster-engine.toml"
                count = 4
                propellant = "20 t"
                [boosters.dry_mass]
                structural_coefficient = 0.12
                [ascent]
                dynamic_pressure_limit = "30 kPa"
                mach = [0, 1, 2]
                drag_coefficient = [0.3, 0.5, 0.4]
                """;
        VehiclePlan plan = read(text, Map.of());
        assertThat(plan.boosters().orElseThrow().count()).isEqualTo(4);
        assertThat(plan.engineFiles()).hasSize(3);
        Recovery recovery = plan.stages().get(0).recovery();
        assertThat(recovery.mode()).isEqualTo(Recovery.Mode.LAUNCH_SITE);
        assertThat(recovery.landing()).isEqualTo(600);
        AscentPlan ascent = plan.ascent().orElseThrow();
        assertThat(ascent.mission().dynamicPressureLimit()).isEqualTo(30e3);
        assertThat(ascent.mission().insertionAltitude()).isEqualTo(200e3);
        assertThat(ascent.mission().target()).isEqualTo(Target.circular(400e3));
        assertThat(ascent.dragTable().coefficient(1.5)).isEqualTo(0.45);
    }

    private static final String BY_FIGURES =
            """
            name = "First guess"
            payload = "2 t"
            [mission]
            delta_v = "9300 m/s"
            [[stage]]
            isp = "310 s"
            thrust = "900 kN"
            exit_area = "0.9 m²"
            mixture_ratio = 2.3
            oxidizer_density = "1200 kg/m³"
            [stage.dry_mass]
            mass = "0 kg"
            [stage.body]
            shape = "sphere"
            base_diameter = "1 m"
            [[stage]]
            isp = "345 s"
            thrust = "80 kN"
            [stage.dry_mass]
            structural_coefficient = 0.08
            """;

    @Test
    void anImpulseIsEnoughForAFirstEstimate() throws IOException {
        VehiclePlan plan = read(BY_FIGURES, Map.of());
        assertThat(plan.engineFiles()).isEmpty();
        VehicleSizing sized = new VehicleSizer().size(plan, file -> {
            throw new AssertionError("no concept is needed");
        });
        StageSizing lower = sized.stages().get(0);
        assertThat(lower.isp()).isCloseTo(310, within(1e-9));
        assertThat(lower.engine().thrustAt(101325)).isCloseTo(900e3 - 0.9 * 101325, within(1e-6));
        assertThat(lower.engine().oxidizer().density()).isEqualTo(1200);
        assertThat(lower.propellant().oxidizer() / lower.propellant().fuel()).isCloseTo(2.3, within(1e-9));
        assertThat(lower.dryMass().total()).isZero();
        assertThat(sized.warnings()).anySatisfy(w -> assertThat(w.message()).contains("do not fit into its body"));
    }

    @Test
    void figuresOfAnEngineComeTogetherAndWithoutAFile() {
        assertThatThrownBy(() -> read(BY_FIGURES.replace("thrust = \"900 kN\"", "engine = \"../some.toml\""), Map.of()))
                .hasMessageContaining("a stated engine needs thrust beside isp")
                .hasMessageContaining("given together with isp or thrust");
    }

    @Test
    void aNozzleForVacuumMayBeTooLargeForTheGround() throws IOException {
        String wide = "thrust = \"80 kN\"\nexit_area = \"3 m²\"";
        VehiclePlan plan = read(BY_FIGURES.replace("thrust = \"80 kN\"", wide), Map.of());
        assertThat(plan.stages().get(1).stated().orElseThrow().exitArea()).isEqualTo(3);
        assertThatThrownBy(() -> read(BY_FIGURES.replace("0.9 m²", "9 m²"), Map.of()))
                .hasMessageContaining("stage[0].exit_area")
                .hasMessageContaining("at the 101.3 kPa where it ignites; write less than 8.882 m²"); // 900/101.325
    }

    @Test
    void aFairingStandsBesideAStatedMass() throws IOException {
        String fairing = "structural_coefficient = 0.08\nfairing = \"300 kg\"\ngrowth_margin = 0.1";
        VehiclePlan plan = read(BY_FIGURES.replace("structural_coefficient = 0.08", fairing), Map.of());
        VehicleSizing sized = new VehicleSizer().size(plan, file -> {
            throw new AssertionError("no concept is needed");
        });
        StageSizing upper = sized.stages().get(1);
        assertThat(plan.stages().get(1).dryMass().fairing()).isEqualTo(300);
        double stage = 0.08 / 0.92 * upper.propellant().loaded();
        assertThat(upper.dryMass().total()).isCloseTo(1.1 * stage + 300, within(1e-6));
    }

    @Test
    void aShapeTakesItsOwnMeasuresOnly() {
        String high = "base_diameter = \"1 m\"\nheight = \"3 m\"\ntop_diameter = \"1 m\"";
        assertThatThrownBy(() -> read(BY_FIGURES.replace("base_diameter = \"1 m\"", high), Map.of()))
                .hasMessageContaining("stage[0].body.height is 3.000 m; a sphere is as high as its base_diameter")
                .hasMessageContaining("stage[0].body.top_diameter is 1.000 m; only a tapered body has one");
    }

    private static final String SOLID =
            """
            [boosters]
            count = 2
            propellant = "10.2 t"
            isp = "270 s"
            thrust_times = ["0 s", "50 s"]
            thrusts = ["600 kN", "480 kN"]
            [boosters.dry_mass]
            mass = "1.2 t"
            """;

    @Test
    void solidBoostersAreStated() throws IOException {
        var boosters = read(TWO_STAGES + SOLID, Map.of()).boosters().orElseThrow();
        var motor = boosters.solid().orElseThrow().motor();
        // 540 kN in the mean for 50 s: 27 MN s
        assertThat(motor.impulse()).isCloseTo(27e6, within(1.0));
        assertThat(motor.vacuumIsp()).isCloseTo(27e6 / (10200 * 9.80665), within(1e-9));
        assertThat(boosters.solid().orElseThrow().inert().mass()).isEqualTo(1200);
    }

    @Test
    void solidBoostersThatContradictThemselvesAreRefusedInOneSentence() {
        assertThatThrownBy(() -> read(TWO_STAGES + SOLID.replace("10.2 t", "14 t"), Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("boosters.propellant")
                .hasMessageContaining("burns 10197");
        assertThatThrownBy(() -> read(TWO_STAGES + SOLID.replace("\"50 s\"", "\"0 s\""), Map.of()))
                .hasMessageContaining("boosters.thrust_times")
                .hasMessageContaining("times rising");
        assertThatThrownBy(() -> read(TWO_STAGES + SOLID.replace("mass = \"1.2 t\"", ""), Map.of()))
                .hasMessageContaining("boosters.dry_mass.mass")
                .hasMessageContaining("inert mass");
        assertThatThrownBy(() -> read(TWO_STAGES + SOLID.replace("isp = \"270 s\"", ""), Map.of()))
                .hasMessageContaining("boosters.isp");
    }

    private static final String STATED_ENGINES =
            """
            name = "Sample"
            payload = "2 t"
            [mission]
            delta_v = "9300 m/s"
            [[stage]]
            name = "lower"
            isp = "310 s"
            thrust = "3 MN"
            engines = 1
            [stage.allowances]
            residual = 0.01
            [[stage]]
            name = "upper"
            isp = "345 s"
            thrust = "400 kN"
            engines = 1
            [stage.dry_mass]
            factor = 1.1
            """;

    /** What one stage states is exact for that stage alone: only the other's residual, and only the other's dry mass, is in doubt. */
    @Test
    void doubtIsJudgedStageByStage() throws IOException {
        VehiclePlan plan = read(STATED_ENGINES, Map.of());
        VehicleDoubts doubts = new VehicleDoubts(
                new VehicleSizer().size(plan, file -> {
                    throw new AssertionError("no concept is named");
                }),
                false);
        assertThat(doubts.names())
                .anyMatch(name -> name.startsWith("dry mass of lower"))
                .noneMatch(name -> name.startsWith("dry mass of upper"))
                .noneMatch(name -> name.contains("loss"));
        List<Double> factors = new ArrayList<>(doubts.none());
        for (int i = 0; i < factors.size(); i++) {
            if (doubts.names().get(i).startsWith("residual")) {
                factors.set(i, 2.0);
            }
        }
        VehiclePlan moved = doubts.plan(factors);
        assertThat(moved.stages().get(0).allowances().residual()).isEqualTo(0.01);
        assertThat(moved.stages().get(1).allowances().residual())
                .isCloseTo(2 * plan.stages().get(1).allowances().residual(), within(1e-12));
    }

    /** The trail of a loss names what it was multiplied by: stated 1250 m/s times 1.2, and a usual 1300 m/s times 1.2. */
    @Test
    void lossesNameTheirFactor() throws IOException {
        for (String text :
                List.of(TWO_STAGES, TWO_STAGES.replaceAll("gravity = .*\n", "").replaceAll("drag = .*\n", ""))) {
            DeltaVBudget.Term gravity = read(text, Map.of("mission.loss_factor", "1.2")).mission().terms().stream()
                    .filter(term -> term.name().equals("gravity loss"))
                    .findFirst()
                    .orElseThrow();
            assertThat(gravity.value()).isCloseTo(text.equals(TWO_STAGES) ? 1500 : 1560, within(1e-9));
            assertThat(gravity.inputs()).contains("mission.loss_factor");
            assertThat(gravity.model().orElseThrow().id())
                    .isEqualTo(text.equals(TWO_STAGES) ? "cycles.product" : "vehicle.usual-losses");
        }
    }
}

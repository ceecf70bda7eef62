package dev.penstock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The entry for other programs. */
class PenstockTest {

    private static final Path HOME = Path.of("").toAbsolutePath();
    /** Twenty rounds of all concepts; {@code -Dpenstock.threads.long=true} takes 2,000. */
    private static final int BALANCES = Boolean.getBoolean("penstock.threads.long") ? 2000 : 100;

    private static final int THREADS = 2;

    private final Penstock penstock = Penstock.open(HOME);

    private static EngineConcept heron() {
        return EngineConcept.named("Heron")
                .with("cycle", "gas-generator")
                .with("propellants.oxidizer", "oxygen")
                .with("propellants.fuel", "rp-1")
                .with("propellants.mixture_ratio", 2.35)
                .with("engine.thrust_sea_level", 620, "kN")
                .with("engine.chamber_pressure", 8, "MPa")
                .with("nozzle.area_ratio", 16)
                .with("chamber.contraction_ratio", 2.2)
                .with("cooling.coolant", "fuel")
                .with("cooling.film.fuel_fraction", 0.05)
                .with("gas_generator.temperature", 930, "K")
                .with("turbines.main.pressure_ratio", 18)
                .with("shafts.arrangement", "single");
    }

    @Test
    void aConceptBuiltInJavaIsTheSameAsItsFile() {
        Engine built = penstock.balance(heron());
        Engine read = penstock.balance(EngineConcept.read(HOME.resolve("cycles/heron.toml")));
        assertThat(built).isEqualTo(read);
        assertThat(built.withinLimits()).isTrue();
        assertThat(built.pumps()).hasSize(2);
        assertThat(built.turbines()).hasSize(1);
        assertThat(built.jackets()).hasSize(1);
    }

    @Test
    void aFileCanBeChangedInJava() {
        EngineConcept file = EngineConcept.read(HOME.resolve("cycles/heron.toml"));
        Engine changed = penstock.balance(file.with("engine.chamber_pressure", 7, "MPa"));
        assertThat(changed.chamberPressure()).isEqualTo(7e6);
        assertThat(changed).isEqualTo(penstock.balance(heron().with("engine.chamber_pressure", "7 MPa")));
        assertThat(penstock.balance(file).chamberPressure()).isEqualTo(8e6);
    }

    @Test
    void whatIsWrongIsReportedTogetherAsForAFile() {
        EngineConcept wrong = heron().with("nozzle.area_ratio", -3)
                .with("engine.chamber_pressure", 8, "kg")
                .with("propellants.fule", "methane");
        assertThatThrownBy(() -> penstock.balance(wrong))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Heron")
                .hasMessageContaining("nozzle.area_ratio is -3")
                .hasMessageContaining("engine.chamber_pressure is \"8 kg\"")
                .hasMessageContaining("propellants.fule");
        assertThatThrownBy(() -> heron().with("nozzle.area_ratio", Double.NaN))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("nozzle.area_ratio is NaN");
        assertThatThrownBy(() -> EngineConcept.read(Path.of("absent.toml"))).isInstanceOf(InvalidInput.class);
    }

    @Test
    void wordsStayWordsWhateverTheyLookLike() {
        EngineConcept concept = heron().with("name", "7\" \\ true\n");
        assertThat(penstock.balance(concept).name()).isEqualTo("7\" \\ true\n");
    }

    @Test
    void theHighestPressureNamesWhatBinds() {
        PressureLimit limit = penstock.limit(heron());
        assertThat(limit.chamberPressure())
                .isGreaterThan(8e6)
                .isEqualTo(limit.engine().chamberPressure());
        assertThat(limit.explanation()).isNotBlank();
        assertThat(limit.bindingLimit()).isNotBlank();
    }

    @Test
    void aVehicleIsSizedFromAConceptOrAFile() {
        EngineConcept concept = heron().with("vehicle.payload", 2, "t")
                .with("vehicle.stages", 2)
                .with("vehicle.mission.delta_v", 9400, "m/s");
        Vehicle vehicle = penstock.size(concept);
        assertThat(vehicle.payload()).isEqualTo(2000);
        assertThat(vehicle.stages()).hasSize(2);
        assertThat(vehicle.stages().get(0).startMass()).isEqualTo(vehicle.startMass());
        assertThatThrownBy(() -> penstock.size(heron()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("vehicle is missing");
        assertThat(penstock.size(HOME.resolve("cycles/vehicles/skerry.toml")).startMass())
                .isGreaterThan(0);
    }

    @Test
    void propellantsBurnAsStored() {
        Combustion burnt = penstock.combust("oxygen", "methane", 3.4, 1e7, 20, 80);
        assertThat(burnt.moleFractions().values().stream().mapToDouble(x -> x).sum())
                .isBetween(1 - 1e-9, 1 + 1e-9);
        assertThat(burnt.nozzles()).hasSize(2);
        assertThat(burnt.nozzles().get(1).vacuumIsp())
                .isGreaterThan(burnt.nozzles().get(0).vacuumIsp());
        // F_vac/ṁ is c* times the thrust coefficient.
        assertThat(burnt.nozzles().get(0).vacuumIsp() * 9.80665)
                .isBetween(
                        burnt.characteristicVelocity() * burnt.nozzles().get(0).vacuumThrustCoefficient() * (1 - 1e-9),
                        burnt.characteristicVelocity() * burnt.nozzles().get(0).vacuumThrustCoefficient() * (1 + 1e-9));
        assertThatThrownBy(() -> penstock.combust("methane", "oxygen", 3.4, 1e7))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("oxidizer is \"methane\"");
        assertThatThrownBy(() -> penstock.combust("oxygen", "methane", Double.NaN, -1, 0.5))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("mixture ratio is NaN")
                .hasMessageContaining("chamber pressure is -1")
                .hasMessageContaining("area ratio is 0.5");
    }

    @Test
    void everyFigureIsInTheJson() {
        assertThat(penstock.balanceAsJson(heron())).contains("\"isp_vacuum_s\"").contains("\"audit_worst\"");
    }

    @Test
    void theArchivesDataServeWhereTheHomeFolderHasNone(@TempDir Path empty) throws Exception {
        Files.createSymbolicLink(empty.resolve(".penstock"), HOME.resolve(".penstock"));
        Penstock packed = Penstock.open(empty);
        assertThat(packed.fluids()).isEqualTo(penstock.fluids());
        assertThat(packed.balance(heron())).isEqualTo(penstock.balance(heron()));
    }

    @Test
    void manyBalancesOnTwoThreadsGiveTheSerialBits() throws Exception {
        Map<EngineConcept, Object> serial = new LinkedHashMap<>();
        for (EngineConcept concept : concepts()) {
            serial.put(concept, answer(penstock, concept));
        }
        assertThat(serial.values()).anyMatch(Engine.class::isInstance).doesNotHaveDuplicates();
        List<EngineConcept> concepts = List.copyOf(serial.keySet());
        Penstock shared = Penstock.open(HOME);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<Object>> answers = new ArrayList<>();
            for (int i = 0; i < BALANCES; i++) {
                // A step that shares no factor with their number: neighbours are of different engines.
                EngineConcept concept = concepts.get(i * 7 % concepts.size());
                answers.add(threads.submit(() -> answer(shared, concept)));
            }
            for (int i = 0; i < BALANCES; i++) {
                EngineConcept concept = concepts.get(i * 7 % concepts.size());
                assertThat(answers.get(i).get()).as("balance " + i).isEqualTo(serial.get(concept));
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** Records compare their numbers bit by bit. */
    private static Object answer(Penstock penstock, EngineConcept concept) {
        try {
            return penstock.balance(concept);
        } catch (PenstockException e) {
            return e.getMessage();
        }
    }

    private static List<EngineConcept> concepts() throws Exception {
        List<EngineConcept> concepts = new ArrayList<>();
        for (String name : List.of("heron", "gannet", "razorbill", "dunlin")) {
            EngineConcept concept = EngineConcept.read(HOME.resolve("cycles").resolve(name + ".toml"));
            for (double areaRatio : new double[] {12, 14.5, 18, 21, 25}) {
                concepts.add(concept.with("nozzle.area_ratio", areaRatio));
            }
        }
        return concepts;
    }
}

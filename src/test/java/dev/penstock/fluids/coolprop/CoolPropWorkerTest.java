package dev.penstock.fluids.coolprop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.penstock.errors.PropertyFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The worker process: the same bits as in this process, and what happens when either process ends. */
class CoolPropWorkerTest {

    /** One for all tests: each start takes a second, and one that was ended starts again by itself. */
    private static CoolPropWorker worker;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() {
        worker = (CoolPropWorker) CoolPropWay.WORKER.load();
    }

    @AfterAll
    static void end() {
        worker.running().close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Methane", "Hydrogen", "Oxygen", "Water", "NitrousOxide", "Ammonia", "n-Propane"})
    void everyNumberAndEveryMessageIsTheSameAsInThisProcess(String name) {
        assumeTrue(CoolPropWay.PROCESS.isHere(), "the interpreter has no shared library to compare with");
        Random random = new Random(name.hashCode());
        int answered = 0;
        int refused = 0;
        try (CoolPropHandle there = worker.open(name, "fluid");
                CoolPropHandle here = CoolPropWay.PROCESS.library().open(name, "fluid")) {
            double cold = here.output(CoolPropOutput.MINIMUM_TEMPERATURE);
            for (int i = 0; i < 300; i++) {
                CoolPropInputs pair = CoolPropInputs.values()[random.nextInt(CoolPropInputs.values().length)];
                double pressure = 1e4 * Math.pow(1e4, random.nextDouble());
                double temperature = cold * (0.8 + 4 * random.nextDouble());
                double[] values = values(pair, pressure, temperature, random);
                String expected = answers(here, pair, values);
                assertThat(answers(there, pair, values)).isEqualTo(expected);
                answered += expected.contains("ENTHALPY=") ? 1 : 0;
                refused += expected.contains("no state of") ? 1 : 0;
            }
        }
        assertThat(answered).isGreaterThan(100);
        assertThat(refused).isGreaterThan(20);
    }

    private static double[] values(CoolPropInputs pair, double pressure, double temperature, Random random) {
        return switch (pair) {
            case PRESSURE_TEMPERATURE -> new double[] {pressure, temperature};
            case DENSITY_TEMPERATURE -> new double[] {1200 * random.nextDouble(), temperature};
            case ENTHALPY_PRESSURE -> new double[] {2e6 * (random.nextDouble() - 0.3), pressure};
            case PRESSURE_ENTROPY -> new double[] {pressure, 1e4 * (random.nextDouble() - 0.2)};
            case QUALITY_TEMPERATURE -> new double[] {random.nextInt(3) / 2.0, temperature};
            case PRESSURE_QUALITY -> new double[] {pressure, random.nextInt(3) / 2.0};
        };
    }

    /** All outputs as bits, or the messages in their place. */
    private static String answers(CoolPropHandle handle, CoolPropInputs pair, double[] values) {
        StringBuilder text = new StringBuilder();
        try {
            handle.update(pair, values[0], values[1]);
        } catch (PropertyFailure e) {
            return e.getMessage();
        }
        for (CoolPropOutput key : CoolPropOutput.values()) {
            text.append(key).append('=');
            try {
                text.append(Double.toHexString(handle.output(key)));
            } catch (PropertyFailure e) {
                text.append(e.getMessage());
            }
            text.append('\n');
        }
        return text.toString();
    }

    @Test
    void manyStatesAtOnceAreTheSameAsOneByOne() {
        int count = 5000;
        double[] pressures = new double[count];
        double[] temperatures = new double[count];
        for (int i = 0; i < count; i++) {
            pressures[i] = 1e5 + 4e3 * i;
            temperatures[i] = 80 + 0.1 * i; // the first are frozen
        }
        CoolPropOutput[] wanted = {CoolPropOutput.DENSITY, CoolPropOutput.TEMPERATURE, CoolPropOutput.CONDUCTIVITY};
        try (CoolPropHandle handle = worker.open("Methane", "methane");
                CoolPropHandle other = worker.open("Methane", "methane")) {
            double[] all = handle.evaluate(CoolPropInputs.PRESSURE_TEMPERATURE, pressures, temperatures, wanted);
            assertThat(all).hasSize(3 * count);
            assertThat(all[0]).isNaN();
            assertThat(all[3 * count - 2]).isEqualTo(temperatures[count - 1]);
            for (int i = 200; i < count; i += 97) {
                other.update(CoolPropInputs.PRESSURE_TEMPERATURE, pressures[i], temperatures[i]);
                assertThat(all[3 * i]).isEqualTo(other.output(CoolPropOutput.DENSITY));
                assertThat(all[3 * i + 2]).isEqualTo(other.output(CoolPropOutput.CONDUCTIVITY));
            }
        }
    }

    @Test
    void anEndedWorkerIsStartedAgainAndItsStatesStandWhereTheyStood() throws Exception {
        try (CoolPropHandle methane = worker.open("Methane", "methane");
                CoolPropHandle oxygen = worker.open("Oxygen", "oxygen")) {
            methane.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e7, 120);
            oxygen.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e7, 120);
            double before = oxygen.output(CoolPropOutput.DENSITY);
            ProcessHandle ended = worker.running().process();
            ended.destroyForcibly();
            ended.onExit().get(10, TimeUnit.SECONDS);
            double sound = methane.output(CoolPropOutput.SOUND_SPEED); // was not asked before the end
            assertThat(worker.running().process()).isNotEqualTo(ended);
            oxygen.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e7, 130);
            oxygen.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e7, 120);
            assertThat(oxygen.output(CoolPropOutput.DENSITY)).isEqualTo(before);
            methane.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e7, 120);
            assertThat(methane.output(CoolPropOutput.SOUND_SPEED)).isEqualTo(sound);
        }
    }

    @Test
    void aWorkerThatCannotBeStartedAgainIsAnErrorThatSaysSo() throws Exception {
        Path wheel = CoolPropWay.HOME.resolve(".penstock/coolprop");
        Path copy = folder.resolve("coolprop");
        Files.createDirectories(copy);
        Path link = Files.createSymbolicLink(copy.resolve("CoolProp"), wheel.resolve("CoolProp"));
        CoolPropWorker doomed = CoolPropWorker.load(copy);
        CoolPropHandle water = doomed.open("Water", "water");
        Files.delete(link);
        doomed.running().process().destroyForcibly();
        assertThatThrownBy(() -> water.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e5, 300))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("cannot be imported");
    }

    @Test
    void threadsShareTheWorkerWithoutDisturbingEachOther() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(4);
        List<Callable<Double>> jobs = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            int shift = i % 4;
            jobs.add(() -> {
                try (CoolPropHandle nitrogen = worker.open("Nitrogen", "nitrogen")) {
                    double sum = 0;
                    for (int k = 0; k < 50; k++) {
                        nitrogen.update(CoolPropInputs.PRESSURE_TEMPERATURE, 5e6 + k, 250 + shift);
                        sum += nitrogen.output(CoolPropOutput.DENSITY);
                    }
                    return sum;
                }
            });
        }
        List<Future<Double>> answers = pool.invokeAll(jobs);
        pool.shutdown();
        for (int i = 4; i < 16; i++) {
            assertThat(answers.get(i).get()).isEqualTo(answers.get(i % 4).get());
        }
    }

    /** A process that has a worker and says which; then it waits to be killed. */
    static final class Parent {
        public static void main(String[] arguments) throws InterruptedException {
            CoolPropWorker worker = (CoolPropWorker) CoolPropWay.WORKER.load();
            System.out.println(worker.running().process().pid());
            System.out.flush();
            Thread.sleep(60_000);
        }
    }

    @Test
    void theWorkerIsGoneWhenItsParentIsKilled() throws Exception {
        Process parent = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Parent.class.getName())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        ProcessHandle orphan = ProcessHandle.of(readPid(parent)).orElseThrow();
        assertThat(orphan.isAlive()).isTrue();
        parent.destroyForcibly(); // kill -9
        parent.waitFor();
        orphan.onExit().get(20, TimeUnit.SECONDS);
        assertThat(orphan.isAlive()).isFalse();
    }

    private static long readPid(Process parent) throws IOException {
        StringBuilder digits = new StringBuilder();
        for (int c = parent.getInputStream().read();
                c >= '0';
                c = parent.getInputStream().read()) {
            digits.append((char) c);
        }
        return Long.parseLong(digits.toString());
    }
}

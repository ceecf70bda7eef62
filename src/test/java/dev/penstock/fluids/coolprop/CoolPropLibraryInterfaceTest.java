package dev.penstock.fluids.coolprop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.jna.NativeLibrary;
import dev.penstock.errors.PropertyFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The binding to CoolProp's C interface, against a small library of the same functions over fluids in closed form. It shows
 * that calls, threads, errors and handles are right; that CoolProp itself is meant by them, only CoolProp can show.
 */
class CoolPropLibraryInterfaceTest {

    private static final double NITROGEN = 296.8;
    private static final double HELIUM = 2077.1;

    @TempDir
    Path folder;

    private CoolPropSharedLibrary library;
    private NativeLibrary raw;

    @BeforeEach
    void compile() throws IOException, InterruptedException {
        Path file = folder.resolve("libClosedForms.so");
        Path source = Path.of("src/test/resources/dev/penstock/fluids/coolprop/closed_forms.c");
        int code;
        try {
            Process process = new ProcessBuilder(
                            "cc", "-shared", "-fPIC", "-pthread", "-o", file.toString(), source.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("cc.txt").toFile())
                    .start();
            code = process.waitFor(120, TimeUnit.SECONDS) ? process.exitValue() : -1;
        } catch (IOException e) {
            assumeTrue(false, "needs a C compiler named cc");
            throw e;
        }
        assertThat(code).as(Files.readString(folder.resolve("cc.txt"))).isZero();
        library = CoolPropSharedLibrary.load(file);
        raw = NativeLibrary.getInstance(file.toAbsolutePath().toString());
    }

    @Test
    void theCheckWithWaterIsPassed() {
        library.verify();
    }

    @Test
    void argumentsAndResultsArriveToTheLastBit() {
        try (CoolPropHandle gas = library.open("IdealNitrogen", "nitrogen")) {
            gas.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1.0 / 3, Math.PI * 100);
            assertThat(gas.output(CoolPropOutput.PRESSURE)).isEqualTo(1.0 / 3);
            assertThat(gas.output(CoolPropOutput.TEMPERATURE)).isEqualTo(Math.PI * 100);
            gas.update(CoolPropInputs.DENSITY_TEMPERATURE, 20, 300);
            assertThat(gas.output(CoolPropOutput.PRESSURE)).isCloseTo(20 * NITROGEN * 300, within(1e-6));
            assertThat(gas.output(CoolPropOutput.PRESSURE_BY_DENSITY)).isCloseTo(NITROGEN * 300, within(1e-9));
            gas.update(CoolPropInputs.ENTHALPY_PRESSURE, 3.5 * NITROGEN * 250, 2e5);
            assertThat(gas.output(CoolPropOutput.TEMPERATURE)).isCloseTo(250, within(1e-9));
        }
    }

    @Test
    void handlesKeepTheirOwnStates() {
        try (CoolPropHandle one = library.open("IdealNitrogen", "nitrogen");
                CoolPropHandle two = library.open("IdealHelium", "helium")) {
            one.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e5, 300);
            two.update(CoolPropInputs.PRESSURE_TEMPERATURE, 2e5, 200);
            assertThat(one.output(CoolPropOutput.DENSITY)).isCloseTo(1e5 / (NITROGEN * 300), within(1e-12));
            assertThat(two.output(CoolPropOutput.DENSITY)).isCloseTo(2e5 / (HELIUM * 200), within(1e-12));
        }
    }

    @Test
    void everyHandleIsFreedOnce() {
        for (int i = 0; i < 100; i++) {
            CoolPropHandle handle = library.open("IdealHelium", "helium");
            assertThat(live()).isEqualTo(1);
            handle.close();
            handle.close();
            assertThat(live()).isZero();
            assertThatThrownBy(() -> handle.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e5, 300))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("closed");
        }
    }

    @Test
    void anErrorHasItsMessageAndIsForgottenByTheNextCall() {
        assertThatThrownBy(() -> library.open("Unobtainium", "lead"))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContainingAll("lead", "unknown fluid Unobtainium");
        try (CoolPropHandle gas = library.open("IdealHelium", "helium")) {
            assertThatThrownBy(() -> gas.output(CoolPropOutput.DENSITY)).hasMessageContaining("no state yet");
            assertThatThrownBy(() -> gas.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e5, -1))
                    .isInstanceOf(PropertyFailure.class)
                    .hasMessageContainingAll("helium", "T = -1.0", "temperature below zero");
            gas.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e5, 300);
            assertThat(gas.output(CoolPropOutput.TEMPERATURE)).isEqualTo(300);
            assertThatThrownBy(() -> gas.update(CoolPropInputs.PRESSURE_QUALITY, 1e5, 0.5))
                    .hasMessageContaining("unknown pair of inputs");
            assertThatThrownBy(() -> gas.output(CoolPropOutput.VISCOSITY)).hasMessageContaining("unknown output");
        }
    }

    @Test
    void threadsDoNotDisturbEachOther() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Callable<Double>> tasks = new ArrayList<>();
            for (int i = 0; i < 16; i++) {
                String fluid = i % 2 == 0 ? "IdealNitrogen" : "IdealHelium";
                double constant = i % 2 == 0 ? NITROGEN : HELIUM;
                double start = 100 + i;
                tasks.add(() -> worstDeviation(fluid, constant, start));
            }
            for (Future<Double> worst : threads.invokeAll(tasks)) {
                assertThat(worst.get()).isLessThan(1e-14);
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(live()).isZero();
    }

    /** Opens, moves and closes many states, with an error now and then; the worst relative deviation of a density. */
    private double worstDeviation(String fluid, double constant, double start) {
        double worst = 0;
        for (int round = 0; round < 20; round++) {
            try (CoolPropHandle gas = library.open(fluid, fluid)) {
                for (int i = 0; i < 200; i++) {
                    double temperature = start + i;
                    gas.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e5 + i, temperature);
                    double expected = (1e5 + i) / (constant * temperature);
                    worst = Math.max(worst, Math.abs(gas.output(CoolPropOutput.DENSITY) / expected - 1));
                }
                assertThatThrownBy(() -> gas.update(CoolPropInputs.PRESSURE_TEMPERATURE, 1e5, -start))
                        .hasMessageContainingAll(fluid, "temperature below zero");
            }
        }
        return worst;
    }

    private long live() {
        return raw.getFunction("live_handles").invokeLong(new Object[0]);
    }
}

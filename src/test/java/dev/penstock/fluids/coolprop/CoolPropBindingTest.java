package dev.penstock.fluids.coolprop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.store.FluidStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the bindings do when CoolProp is absent, unfit or in error. */
class CoolPropBindingTest {

    private static final Path HOME = Path.of("").toAbsolutePath();

    /** A C library with CoolProp's C interface: knows water at one density, fails below 0 K, frees what it gave. */
    private static final String STUB = String.join(
            "\n",
            "#include <string.h>",
            "#include <stdio.h>",
            "static double p, t; static long freed = 0, lifted = 0;",
            "static void fail(long *e, char *m, long n, const char *s) { *e = 1; strncpy(m, s, n - 1); }",
            "long get_input_pair_index(const char *s) { return !strcmp(s, \"PT_INPUTS\") ? 7 : !strcmp(s, \"HmassP_INPUTS\") ? 8 : 9; }",
            "long get_param_index(const char *s) { return !strcmp(s, \"T\") ? 1 : !strcmp(s, \"P\") ? 2 : !strcmp(s, \"Dmass\") ? 3"
                    + " : !strcmp(s, \"Hmass\") ? 4 : 5; }",
            "long AbstractState_factory(const char *b, const char *f, long *e, char *m, const long n) {",
            "  if (strcmp(b, \"HEOS\") || strcmp(f, \"H2O\")) { fail(e, m, n, \"unknown fluid\"); return -1; } return 42; }",
            "void AbstractState_free(const long h, long *e, char *m, const long n) { if (h == 42) freed++; }",
            "void AbstractState_unspecify_phase(const long h, long *e, char *m, const long n) { lifted++; }",
            "void AbstractState_update(const long h, const long i, const double a, const double b, long *e, char *m, const long n) {",
            "  if (h != 42) { fail(e, m, n, \"bad handle\"); return; }",
            "  if (i == 7) { p = a; t = b; } else if (i == 8) { p = b; t = a / 4180; } else { fail(e, m, n, \"bad pair\"); return; }",
            "  if (t < 0) fail(e, m, n, \"temperature below zero\"); }",
            "double AbstractState_keyed_output(const long h, const long k, long *e, char *m, const long n) {",
            "  if (k == 1) return t; if (k == 2) return p; if (k == 3) return DENSITY; if (k == 4) return 4180 * t;",
            "  fail(e, m, n, \"no such output\"); return 1.0 / 0.0; }",
            "double AbstractState_first_partial_deriv(const long h, const long o, const long w, const long c, long *e, char *m,"
                    + " const long n) { return 100 * o + 10 * w + c; }",
            "");

    @TempDir
    Path folder;

    @Test
    void withoutTheWheelTheErrorSaysWhatToRun() {
        assertThatThrownBy(() -> PythonRuntime.find(folder.resolve("coolprop")))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("run ./penstock demo")
                .hasMessageContaining("PENSTOCK_COOLPROP");
    }

    @Test
    void aWheelOfAnotherPythonIsRefusedWithAdvice() throws IOException {
        Files.createDirectories(folder.resolve("CoolProp"));
        Files.writeString(folder.resolve("VERSION"), "8.0.0 python2.7\n");
        assertThatThrownBy(() -> PythonRuntime.find(folder))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("python2.7")
                .hasMessageContaining("run ./penstock demo");
    }

    @Test
    void aWheelWithoutItsModuleIsRefusedWithPythonsReason() throws IOException {
        Path wheel = HOME.resolve(".penstock/coolprop");
        Optional<PythonRuntime> python = PythonRuntime.find(wheel);
        python.ifPresent(library -> CoolPropWheel.load(wheel, library));
        Files.createDirectories(folder.resolve("CoolProp"));
        Files.copy(wheel.resolve("VERSION"), folder.resolve("VERSION"));
        Files.writeString(folder.resolve("CoolProp/CoolProp.py"), "raise ImportError('damaged on purpose')\n");
        assertThatThrownBy(() -> CoolPropWorker.load(folder))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("damaged on purpose");
        python.ifPresent(library -> assertThatThrownBy(() -> CoolPropWheel.load(folder, library))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("damaged on purpose"));
        // an extension module that is begun twice ends the process
        python.ifPresent(library ->
                assertThat(CoolPropWheel.load(wheel, library).version()).isNotEmpty());
    }

    @Test
    void aFluidThatCoolPropDoesNotKnowIsNamed() {
        Fluid fluid = new CoolPropFluid(
                "my-fluid",
                "My fluid",
                "Unobtainium",
                () -> CoolPropLibrary.load(HOME),
                Optional.empty(),
                FluidStore.NONE);
        assertThatThrownBy(() -> fluid.atPressureTemperature(1e5, 300))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("my-fluid")
                .hasMessageContaining("Unobtainium");
    }

    @Test
    void theSharedLibraryIsServedThroughItsCInterface() throws Exception {
        CoolPropSharedLibrary library = CoolPropSharedLibrary.load(compile("997.047"));
        library.verify();
        try (CoolPropHandle water = library.open("H2O", "water")) {
            water.update(CoolPropInputs.PRESSURE_TEMPERATURE, 2e5, 310);
            assertThat(water.output(CoolPropOutput.TEMPERATURE)).isEqualTo(310);
            assertThat(water.output(CoolPropOutput.PRESSURE)).isEqualTo(2e5);
            assertThat(water.output(CoolPropOutput.PRESSURE_BY_DENSITY))
                    .isCloseTo(231, within(0.0)); // the stub answers 100 of + 10 by + constant
            assertThatThrownBy(() -> water.update(CoolPropInputs.PRESSURE_TEMPERATURE, 2e5, -1))
                    .isInstanceOf(PropertyFailure.class)
                    .hasMessageContaining("water")
                    .hasMessageContaining("temperature below zero");
            assertThatThrownBy(() -> water.output(CoolPropOutput.VISCOSITY))
                    .isInstanceOf(PropertyFailure.class)
                    .hasMessageContaining("no such output");
            water.update(CoolPropInputs.PRESSURE_TEMPERATURE, 2e5, 320);
            assertThat(water.output(CoolPropOutput.TEMPERATURE)).isEqualTo(320);
        }
        assertThatThrownBy(() -> library.open("Lead", "lead"))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("unknown fluid");
    }

    @Test
    void aLibraryThatAnswersWronglyForWaterIsRefused() throws Exception {
        CoolPropSharedLibrary library = CoolPropSharedLibrary.load(compile("1.0"));
        assertThatThrownBy(library::verify)
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("instead of 997.05");
    }

    @Test
    void aFileThatIsNoLibraryIsRefusedWithAdvice() throws IOException {
        Path file = folder.resolve("libCoolProp.so");
        Files.writeString(file, "not a library");
        assertThatThrownBy(() -> CoolPropSharedLibrary.load(file))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("PENSTOCK_COOLPROP")
                .hasMessageContaining("give the path of libCoolProp");
    }

    private Path compile(String density) throws IOException, InterruptedException {
        Path source = folder.resolve("stub.c");
        Path library = folder.resolve("libstub" + density.replace('.', '_') + ".so");
        Files.writeString(source, STUB.replace("DENSITY", density));
        int code;
        try {
            Process process = new ProcessBuilder("cc", "-shared", "-fPIC", "-o", library.toString(), source.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("cc.txt").toFile())
                    .start();
            code = process.waitFor(60, TimeUnit.SECONDS) ? process.exitValue() : -1;
        } catch (IOException e) {
            code = -1;
        }
        assumeTrue(code == 0, "needs a C compiler named cc to build a stand-in for CoolProp's shared library");
        return library;
    }
}

package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.quantities.Constants;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Independent library: a few mixtures drawn at random on every run, put to Cantera through Python. */
class CanteraLiveTest {

    private static final Path CANTERA = Path.of(".penstock", "cantera");
    private static final String PYTHON =
            Optional.ofNullable(System.getenv("PENSTOCK_PYTHON")).orElse("python3");
    private static final String SCRIPT = "src/test/python/cantera_reference.py";

    @TempDir
    private Path folder;

    @Test
    void randomMixturesAgreeWithCantera() throws IOException, InterruptedException {
        assumeTrue(Files.isDirectory(CANTERA.resolve("cantera")), "Cantera has not been fetched");
        int seed = ThreadLocalRandom.current().nextInt(1_000_000);
        List<ReferenceCase> cases = ReferenceCase.parse(run(seed));
        assertThat(cases).as("draw " + seed).hasSize(5);
        for (ReferenceCase c : cases) {
            EquilibriumSolver solver = EquilibriumSolver.of(Mixtures.LIBRARY, c.reactants());
            solver.setPressureEnthalpy(c.pressure(), c.reactants().enthalpy());
            String what = c + " of draw " + seed;
            assertThat(solver.temperature()).as(what).isCloseTo(c.temperature(), withinPercentage(1e-4));
            assertThat(solver.molarMass()).as(what).isCloseTo(1 / c.gasMoles(), withinPercentage(1e-4));
            solver.setPressureTemperature(c.pressure(), c.temperature());
            FrozenGas reference = c.frozen(solver.speciesSet());
            double excess = gibbs(solver) - gibbs(reference);
            double scale =
                    Math.max(Math.abs(gibbs(reference)), Constants.MOLAR_GAS_CONSTANT * c.temperature() * c.gasMoles());
            assertThat(excess / scale).as("Gibbs energy, " + what).isLessThan(1e-9);
        }
    }

    private static double gibbs(GasCursor gas) {
        return gas.enthalpy() - gas.temperature() * gas.entropy();
    }

    private List<String> run(int seed) throws IOException, InterruptedException {
        File output = folder.resolve("cases.csv").toFile();
        File errors = folder.resolve("errors.txt").toFile();
        ProcessBuilder builder = new ProcessBuilder(PYTHON, SCRIPT, "live", String.valueOf(seed));
        builder.environment().put("PYTHONPATH", CANTERA.toAbsolutePath().toString());
        builder.redirectOutput(output).redirectError(errors);
        Process process;
        try {
            process = builder.start();
        } catch (IOException e) {
            assumeTrue(false, PYTHON + " is not there");
            return List.of();
        }
        if (!process.waitFor(120, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        assertThat(process.waitFor()).as(Files.readString(errors.toPath())).isZero();
        return Files.readAllLines(output.toPath());
    }
}

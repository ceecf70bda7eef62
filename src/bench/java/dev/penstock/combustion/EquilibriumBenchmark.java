package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.combustion.species.SpeciesLibrary;

import dev.penstock.fluids.property.AtomicWeights;
import dev.penstock.fluids.property.ElementalComposition;
import dev.penstock.fluids.FluidLibrary;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleSupplier;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of an equilibrium of liquid methane and oxygen, with all species of carbon, hydrogen and oxygen in fluids/gas. The
 * same cases for Cantera are timed by src/bench/cantera_equilibrium.py.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EquilibriumBenchmark {

    private static final double PRESSURE = 10e6;
    private static final int STATIONS = 15;

    private EquilibriumSolver solver;
    private Reactants[] sweep;
    private Reactants mixture;
    private double entropy;
    private int turn;

    @Setup
    public void open() {
        SpeciesLibrary library = SpeciesLibrary.open(Path.of("."));
        sweep = new Reactants[8];
        for (int i = 0; i < sweep.length; i++) {
            sweep[i] = mixture(3.0 + 0.1 * i);
        }
        mixture = mixture(3.4);
        solver = EquilibriumSolver.of(library, mixture);
        solver.setPressureEnthalpy(PRESSURE, mixture.enthalpy());
        entropy = solver.entropy();
    }

    private static Reactants mixture(double ratio) {
        Reactants oxygen = liquid("oxygen", Map.of("O", 2.0), -12979);
        Reactants methane = liquid("methane", Map.of("C", 1.0, "H", 4.0), -89233);
        return oxygen.mixedWith(methane, 1 / (1 + ratio));
    }

    private static Reactants liquid(String id, Map<String, Double> formula, double molarEnthalpy) {
        double mass = AtomicWeights.ofFormula(formula).orElseThrow();
        return new Reactants(ElementalComposition.ofFormula(formula, mass), molarEnthalpy / mass, List.of(new Reactants.Part(FluidLibrary.open().propellant(id), 1.0)));
    }

    /** Enthalpy and pressure assigned, from the solution at another pressure. */
    @Benchmark
    public double warmEnthalpyPressure() {
        turn ^= 1;
        solver.setPressureEnthalpy(turn == 0 ? PRESSURE : 0.8 * PRESSURE, mixture.enthalpy());
        return solver.temperature();
    }

    /** Enthalpy and pressure assigned, from the solution at another mixture ratio. */
    @Benchmark
    public double sweepOfMixtureRatio() {
        turn = (turn + 1) % sweep.length;
        solver.setMixture(sweep[turn]);
        solver.setPressureEnthalpy(PRESSURE, sweep[turn].enthalpy());
        return solver.temperature();
    }

    /** Enthalpy and pressure assigned, without any earlier solution. */
    @Benchmark
    public double coldEnthalpyPressure() {
        solver.forget();
        solver.setMixture(mixture);
        solver.setPressureEnthalpy(PRESSURE, mixture.enthalpy());
        return solver.temperature();
    }

    /** Chamber and fifteen stations down the isentrope to a four-hundredth of the pressure, with speed of sound. */
    @Benchmark
    public double shiftingExpansion() {
        solver.setMixture(mixture);
        solver.setPressureEnthalpy(PRESSURE, mixture.enthalpy());
        double sum = 0;
        for (int i = 1; i <= STATIONS; i++) {
            solver.setPressureEntropy(PRESSURE * Math.exp(-0.4 * i), entropy);
            sum += solver.soundSpeed();
        }
        return sum;
    }

    /** A state with all properties as a record, transport included. */
    @Benchmark
    public GasState snapshot() {
        return solver.snapshot();
    }

    /**
     * Processor time instead of wall-clock time, best of seven, for a machine that is busy with other work; the script for
     * Cantera measures the same way.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        EquilibriumBenchmark bench = new EquilibriumBenchmark();
        bench.open();
        System.out.println(bench.solver.speciesSet().size() + " species; microseconds of processor time, best of 7");
        bench.print("warm, alternating pressure", bench::warmEnthalpyPressure);
        bench.print("sweep of mixture ratio", bench::sweepOfMixtureRatio);
        bench.print("cold, from likely products", bench::coldEnthalpyPressure);
        bench.print("chamber and 15 stations", bench::shiftingExpansion);
        bench.print("state with transport", () -> bench.snapshot().temperature());
    }

    private void print(String what, DoubleSupplier run) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double best = Double.POSITIVE_INFINITY;
        double sum = 0;
        int count = 5000;
        for (int repeat = 0; repeat < 7 + 5; repeat++) {
            long start = clock.getCurrentThreadCpuTime();
            for (int i = 0; i < count; i++) {
                sum += run.getAsDouble();
            }
            double each = (clock.getCurrentThreadCpuTime() - start) / 1e3 / count;
            best = repeat < 5 ? best : Math.min(best, each);
        }
        System.out.printf(Locale.ROOT, "%-30s %8.1f%s%n", what, best, sum == 0 ? "!" : "");
    }
}

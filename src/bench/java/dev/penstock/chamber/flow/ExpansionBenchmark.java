package dev.penstock.chamber.flow;

import dev.penstock.chamber.Designs;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;

import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
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
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of one expansion from combustion to exit, of a gas profile and of a whole chamber with its losses. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ExpansionBenchmark {

    @Param({"SHIFTING", "FROZEN"})
    private ExpansionMode mode;

    private Reactants lean;
    private Reactants rich;
    private NozzleFlow nozzle;
    private ThrustChamber chamber;
    private ChamberDesign design;
    private GasProfile kept;
    private double place;
    private boolean flip;

    @Setup
    public void prepare() {
        SpeciesLibrary library = SpeciesLibrary.open(Path.of("").toAbsolutePath());
        Reactants oxygen = liquid("oxygen", Map.of("O", 2.0), 0.0319988, -12_979);
        Reactants methane = liquid("methane", Map.of("C", 1.0, "H", 4.0), 0.0160425, -89_233);
        lean = oxygen.mixedWith(methane, 1 / 4.5);
        rich = oxygen.mixedWith(methane, 1 / 4.4);
        nozzle = NozzleFlow.of(library, lean);
        chamber = new ThrustChamber(nozzle);
        design = new ChamberDesign(
                10e6, Designs.combustor(2.5, 1.0), Designs.bell(40), mode, Efficiencies.MODELLED);
        kept = nozzle.expand(lean, 10e6, mode).profile(40);
    }

    private static Reactants liquid(String id, Map<String, Double> formula, double molarMass, double enthalpy) {
        return new Reactants(
                ElementalComposition.ofFormula(formula, molarMass), enthalpy / molarMass, List.of(new Reactants.Part(FluidLibrary.open().propellant(id), 1.0)));
    }

    /** Two mixtures by turns, so that no solution is its own start. */
    private Reactants next() {
        flip = !flip;
        return flip ? lean : rich;
    }

    @Benchmark
    public double chamberToExit() {
        return nozzle.toAreaRatio(next(), 10e6, 40, mode).vacuumImpulse();
    }

    @Benchmark
    public double station() {
        place = place > 38 ? 1 : place + 0.37;
        return kept.at(1 + place, true).temperature();
    }

    @Benchmark
    public double profile() {
        return nozzle.expand(next(), 10e6, mode).profile(40).exit().temperature();
    }

    @Benchmark
    public double thrustChamber() {
        return chamber.forVacuumThrust(design, Injection.of(next()), 1e6).massFlow();
    }

    /**
     * Prints processor time, best of several runs, for machines that are busy with other work.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        for (ExpansionMode mode : ExpansionMode.values()) {
            ExpansionBenchmark bench = new ExpansionBenchmark();
            bench.mode = mode;
            bench.prepare();
            System.out.println(mode + ", microseconds of processor time");
            bench.print("chamber to exit", bench::chamberToExit);
            bench.print("chamber, throat and profile", bench::profile);
            bench.print("one station from the profile", bench::station);
            bench.print("sized chamber with all losses", bench::thrustChamber);
        }
    }

    private void print(String what, DoubleSupplier run) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double best = Double.POSITIVE_INFINITY;
        double sum = 0;
        int count = 500;
        for (int repeat = 0; repeat < 20; repeat++) {
            long start = clock.getCurrentThreadCpuTime();
            for (int i = 0; i < count; i++) {
                sum += run.getAsDouble();
            }
            best = Math.min(best, (clock.getCurrentThreadCpuTime() - start) / 1e3 / count);
        }
        System.out.printf(Locale.ROOT, "%-32s %8.1f%s%n", what, best, sum == 0 ? "!" : "");
    }
}

package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.EquilibriumDoubt;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.equilibrium.HydrazineDecomposition;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.SoaveGas;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.property.ElementalComposition;
import dev.penstock.numerics.RootFinder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * Gas for turbines: burns a mixture in a gas generator or preburner, and finds the mixture ratio for a wanted gas
 * temperature. Keeps its solvers from call to call. Not thread-safe.
 */
public final class GasGeneratorGas {

    /** Side of the stoichiometric mixture. */
    public enum Branch {
        FUEL_RICH,
        OXIDIZER_RICH
    }

    private static final Set<String> SOOT = Set.of("C(gr)");
    private static final double STEP = 1.25;
    private static final double SMALLEST_RATIO = 1e-3;
    private static final double LARGEST_RATIO = 1e3;
    private static final double TOLERANCE = 1e-10;

    private final SpeciesLibrary library;
    private final GasModel model;
    private final double dissociation;
    private final Map<Set<String>, EquilibriumSolver> solvers = new HashMap<>();

    /**
     * @param library species data
     * @param model how to model the gas
     * @param ammoniaDissociation dissociated part of the ammonia where hydrazine is decomposed alone (-)
     */
    public GasGeneratorGas(SpeciesLibrary library, GasModel model, double ammoniaDissociation) {
        this.library = library;
        this.model = model;
        this.dissociation = ammoniaDissociation;
    }

    /**
     * @param library species data
     * @param model how to model the gas; hydrazine with its usual dissociation
     */
    public GasGeneratorGas(SpeciesLibrary library, GasModel model) {
        this(library, model, HydrazineDecomposition.USUAL_DISSOCIATION);
    }

    /**
     * @param reactants mixture with its enthalpy
     * @param pressure pressure of the burner (Pa)
     * @return the gas
     * @throws InvalidInput if measured data are asked for and none are held for this mixture
     * @throws OutsideValidity where the data or the model end
     */
    public TurbineGas burn(Reactants reactants, double pressure) {
        boolean measured = model == GasModel.EMPIRICAL || model == GasModel.AUTOMATIC;
        if (measured && HydrazineDecomposition.describes(reactants)) {
            return decomposed(reactants, pressure);
        }
        Optional<MeasuredGeneratorGas> table = measured(reactants);
        if (table.isPresent()) {
            return measured(table.get(), reactants, pressure, table.get().departure(library));
        }
        if (model == GasModel.EMPIRICAL) {
            throw new InvalidInput(
                    "",
                    "gas model",
                    "empirical",
                    "no measured gas is known of " + reactants.names(" with ")
                            + "; a fuel's file holds what is known in [combustion.generator_gas]");
        }
        return burnt(reactants, pressure);
    }

    private TurbineGas decomposed(Reactants reactants, double pressure) {
        FrozenGas gas = HydrazineDecomposition.decompose(library, dissociation, reactants.enthalpy(), pressure);
        String text = String.format(
                Locale.ROOT, "%s, ammonia %.0f %% dissociated", reactants.names(" with "), 100 * dissociation);
        DenseWorkingFluid fluid = new DenseWorkingFluid(gas, text, HydrazineDecomposition.CARD);
        WorkingState inlet = fluid.atPressureEnthalpy(pressure, reactants.enthalpy());
        return new TurbineGas(fluid, inlet, gas.molarMass(), GasModel.EMPIRICAL, List.of());
    }

    /** Measured gas of a mixture, where the model asks for it and the mixture is not richer in oxidizer than it reaches. */
    private Optional<MeasuredGeneratorGas> measured(Reactants reactants) {
        if (model != GasModel.EMPIRICAL && model != GasModel.AUTOMATIC) {
            return Optional.empty();
        }
        return MeasuredGeneratorGas.of(reactants)
                .filter(table -> model == GasModel.EMPIRICAL || table.reaches(table.mixtureRatio(reactants)));
    }

    private static TurbineGas measured(
            MeasuredGeneratorGas table, Reactants reactants, double pressure, Optional<SoaveGas> departure) {
        double ratio = table.mixtureRatio(reactants);
        EmpiricalWorkingFluid fluid = table.at(ratio, reactants.enthalpy());
        List<Warning> warnings = new ArrayList<>(table.warnings(ratio));
        WorkingFluid gas = fluid;
        if (departure.isPresent()) {
            // the table's temperature is that of the burner, and the dense gas has the enthalpy of the reactants there
            double excess =
                    departure.get().at(pressure, fluid.inletTemperature()).enthalpy() / fluid.molarMass();
            gas = new DenseWorkingFluid(
                    table.at(ratio, reactants.enthalpy() - excess), fluid.molarMass(), departure.get(), fluid.model());
        } else {
            warnings.addAll(DenseWorkingFluid.takenAsIdeal(pressure));
        }
        return new TurbineGas(
                gas,
                gas.atPressureTemperature(pressure, fluid.inletTemperature()),
                fluid.molarMass(),
                GasModel.EMPIRICAL,
                warnings);
    }

    private TurbineGas burnt(Reactants reactants, double pressure) {
        EquilibriumSolver solver = solver(reactants);
        solver.setMixture(reactants);
        solver.setPressureEnthalpy(pressure, reactants.enthalpy());
        List<Warning> warnings =
                new ArrayList<>(EquilibriumDoubt.of(reactants, solver.temperature(), solver.condensedCarbon()));
        double molarMass = solver.molarMass();
        if (model == GasModel.EQUILIBRIUM) {
            EquilibriumWorkingFluid fluid = new EquilibriumWorkingFluid(solver, reactants);
            WorkingState inlet = fluid.atPressureEnthalpy(pressure, reactants.enthalpy());
            warnings.addAll(DenseWorkingFluid.takenAsIdeal(pressure));
            return new TurbineGas(fluid, inlet, molarMass, GasModel.EQUILIBRIUM, warnings);
        }
        String text = "burnt gas of "
                + reactants.names(" and ")
                + (model == GasModel.AUTOMATIC ? ", frozen after burning without soot" : ", frozen after burning");
        DenseWorkingFluid fluid = new DenseWorkingFluid(solver.freeze(), text);
        WorkingState inlet = fluid.atPressureEnthalpy(pressure, reactants.enthalpy());
        warnings.addAll(fluid.warning(pressure).stream().toList());
        return new TurbineGas(fluid, inlet, molarMass, GasModel.FROZEN, warnings);
    }

    /** @return equilibria that were solved so far */
    public int equilibria() {
        return solvers.values().stream().mapToInt(EquilibriumSolver::solutions).sum();
    }

    private EquilibriumSolver solver(Reactants reactants) {
        return solvers.computeIfAbsent(
                reactants.composition().molesPerKilogram().keySet(), elements -> {
                    SpeciesSet set = library.speciesFor(elements);
                    return new EquilibriumSolver(model == GasModel.AUTOMATIC ? set.without(SOOT) : set);
                });
    }

    /**
     * Mixture ratio that gives a wanted gas temperature.
     *
     * @param mixture the mixture at each mixture ratio, with its enthalpy
     * @param pressure pressure of the burner (Pa)
     * @param temperature wanted temperature (K)
     * @param branch side of the stoichiometric mixture
     * @return mixture ratio (-)
     * @throws OutsideValidity if the gas does not reach, or does not fall to, that temperature on that side
     */
    public double mixtureRatioFor(
            DoubleFunction<Reactants> mixture, double pressure, double temperature, Branch branch) {
        if (branch == Branch.FUEL_RICH) {
            Optional<MeasuredGeneratorGas> table = measured(mixture.apply(SMALLEST_RATIO));
            if (table.isPresent()) {
                return table.get().mixtureRatioFor(temperature);
            }
        }
        double start = stoichiometric(mixture);
        double factor = branch == Branch.FUEL_RICH ? 1 / STEP : STEP;
        double hot = start;
        double hottest = excess(mixture, hot, pressure, 0);
        for (double r = start * factor; hottest < temperature && r > start / 4 && r < start * 4; r *= factor) {
            double t = excess(mixture, r, pressure, 0);
            if (t > hottest) {
                hottest = t;
                hot = r;
            }
        }
        if (hottest < temperature) {
            throw outside(branch, temperature, String.format(Locale.ROOT, "at most %.0f K", hottest));
        }
        double cold = hot;
        do {
            hot = cold;
            cold *= factor;
            if (cold < SMALLEST_RATIO || cold > LARGEST_RATIO) {
                throw outside(
                        branch,
                        temperature,
                        String.format(
                                Locale.ROOT,
                                "at least %.0f K, at a mixture ratio of %.3g",
                                excess(mixture, hot, pressure, 0),
                                hot));
            }
        } while (excess(mixture, cold, pressure, temperature) > 0);
        double log = RootFinder.between(
                        "mixture ratio for a gas temperature",
                        logRatio -> excess(mixture, Math.exp(logRatio), pressure, temperature),
                        Math.log(Math.min(cold, hot)),
                        Math.log(Math.max(cold, hot)),
                        TOLERANCE)
                .value();
        return Math.exp(log);
    }

    /** Gas temperature less another; a mixture too cold to burn counts as cold. */
    private double excess(DoubleFunction<Reactants> mixture, double ratio, double pressure, double temperature) {
        try {
            return burn(mixture.apply(ratio), pressure).inlet().temperature() - temperature;
        } catch (OutsideValidity e) {
            return 100 - temperature;
        }
    }

    private static PenstockException outside(Branch branch, double temperature, String allowed) {
        return new OutsideValidity(
                branch == Branch.FUEL_RICH ? "fuel-rich gas" : "oxidizer-rich gas",
                "gas temperature (K)",
                temperature,
                allowed);
    }

    /** Mixture ratio at which oxygen just suffices for carbon dioxide and water. */
    private static double stoichiometric(DoubleFunction<Reactants> mixture) {
        double poor = oxygenExcess(mixture.apply(SMALLEST_RATIO).composition());
        double rich = oxygenExcess(mixture.apply(LARGEST_RATIO).composition());
        if (!(poor < 0 && rich > 0)) {
            throw new InvalidInput(
                    "", "propellants", "fuel and oxidizer", "one must lack oxygen and the other have it");
        }
        double log = RootFinder.between(
                        "stoichiometric mixture ratio",
                        x -> oxygenExcess(mixture.apply(Math.exp(x)).composition()),
                        Math.log(SMALLEST_RATIO),
                        Math.log(LARGEST_RATIO),
                        1e-9)
                .value();
        return Math.exp(log);
    }

    private static double oxygenExcess(ElementalComposition atoms) {
        return atoms.of("O") - 2 * atoms.of("C") - 0.5 * atoms.of("H");
    }
}

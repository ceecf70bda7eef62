package dev.penstock.combustion;

import dev.penstock.combustion.GibbsNewton.Assigned;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.fluids.AtomicWeights;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Chemical equilibrium of a mixture of ideal gases with pure condensed carbon and water: least Gibbs energy at assigned
 * temperature, enthalpy or entropy, and pressure.
 *
 * <p>{@link GibbsNewton} solves for a given set of condensed species; here that set is found by the phase rule (a
 * condensed species whose amount comes out negative is taken away, one with which the gas is supersaturated is put in),
 * and Newton's start is chosen: the last solution, else equal amounts of all gas species, else a bracket on the
 * temperature. Source: [nasa-rp-1311], part I. The volume of condensed species is left out.
 *
 * <p>Holds where gas is ideal (density well below that of the liquids) and reactions are fast. Not thread-safe: one
 * solver per thread, reused.
 */
public final class EquilibriumSolver implements GasCursor {

    /** What this model is. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.equilibrium",
            "Chemical equilibrium by least Gibbs energy",
            "min Σ n_j (g°_j + RT ln(x_j p/p°)) + Σ n_c g°_c with Σ a_kj n_j + Σ a_kc n_c = b_k",
            "100 K to 8000 K (data 200 K to 6000 K, beyond: cp held, with a warning); 1 Pa to 1 GPa; ideal gas",
            "flame temperature to the data, a few kelvin; slow reactions are not seen",
            List.of("nasa-rp-1311", "nasa-tm-4513"));

    private static final double LOWEST_TEMPERATURE = 100;
    private static final double HIGHEST_TEMPERATURE = 8000;
    private static final double LOWEST_PRESSURE = 1;
    private static final double HIGHEST_PRESSURE = 1e9;
    private static final double START_TEMPERATURE = 3800;
    private static final int WARM_LIMIT = 30;
    private static final int COLD_LIMIT = 80;
    private static final int MOST_PHASE_CHANGES = 14;
    private static final int STEPS_BETWEEN_LOOKS = 8;
    /** Residual below which the potentials say which condensed species form. */
    private static final double NEARLY = 0.5;
    /** Steps after which a condensed species is tried all the same. */
    private static final int SLOW = 23;

    private static final double SUPERSATURATION = 1e-9;
    private static final double MASS_TOLERANCE = 5e-3;

    private final SpeciesSet set;
    private final Map<Integer, GibbsNewton> newtons = new HashMap<>();
    private final double[] composition;
    private final double[] atomicMass;
    private final GasSnapshot snapshots;
    private final TemperatureBracket.Attempt attempts = new TemperatureBracket.Attempt() {
        @Override
        public boolean atTemperature(double temperature, double pressure) {
            if (attempt(Assigned.TEMPERATURE, temperature, pressure, COLD_LIMIT)) {
                return true;
            }
            newton.start(temperature);
            return attempt(Assigned.TEMPERATURE, temperature, pressure, COLD_LIMIT);
        }

        @Override
        public boolean directly(Assigned assigned, double target, double pressure) {
            return attempt(assigned, target, pressure, WARM_LIMIT);
        }
    };
    private Reactants mixture;
    private GibbsNewton newton;
    private boolean warm;
    private int iterations;
    private double exponent;

    /** @param set elements and species to work with */
    public EquilibriumSolver(SpeciesSet set) {
        this.set = set;
        this.composition = new double[set.elements().size()];
        this.atomicMass = set.elements().stream()
                .mapToDouble(e -> AtomicWeights.of(e).orElse(0.0))
                .toArray();
        this.snapshots = new GasSnapshot(set);
    }

    /**
     * @param library species to choose from
     * @param reactants mixture whose elements matter
     * @return a solver for these elements, with the mixture set
     */
    public static EquilibriumSolver of(SpeciesLibrary library, Reactants reactants) {
        EquilibriumSolver solver = new EquilibriumSolver(
                library.speciesFor(reactants.composition().molesPerKilogram().keySet()));
        solver.setMixture(reactants);
        return solver;
    }

    /** @return elements and species this solver works with */
    public SpeciesSet speciesSet() {
        return set;
    }

    /**
     * Sets the elements of the mixture. The last solution stays the start for the next.
     *
     * @param reactants mixture; its enthalpy is not used here
     * @throws InvalidInput if it holds an element that the species set lacks, or its atoms do not weigh a kilogram
     */
    public void setMixture(Reactants reactants) {
        mixture = reactants;
        Map<String, Double> atoms = reactants.composition().molesPerKilogram();
        double mass = 0;
        int mask = 0;
        int found = 0;
        boolean near = warm;
        for (int k = 0; k < composition.length; k++) {
            String element = set.elements().get(k);
            double moles = atoms.getOrDefault(element, 0.0);
            Require.notNegative("reactants", "moles of " + element + " (mol/kg)", moles);
            found += atoms.containsKey(element) ? 1 : 0;
            near &= Math.abs(moles - composition[k]) <= 0.5 * composition[k];
            composition[k] = moles;
            mass += moles * atomicMass[k];
            mask |= moles > 0 ? 1 << k : 0;
        }
        if (found < atoms.size()) {
            throw new InvalidInput(
                    "reactants",
                    "elements",
                    atoms.keySet().toString(),
                    "this species set is made of " + set.elements());
        }
        if (Math.abs(mass - 1) > MASS_TOLERANCE) {
            throw new InvalidInput(
                    "reactants",
                    "composition",
                    String.format(Locale.ROOT, "%.5g kg of atoms per kilogram", mass),
                    "the atoms of a kilogram must weigh a kilogram within 0.5 %");
        }
        GibbsNewton before = newton;
        newton = newtons.computeIfAbsent(mask, this::newtonFor);
        warm = near && newton == before;
        double[] b = newton.composition();
        for (int k = 0; k < b.length; k++) {
            b[k] = composition[newton.species().elementIndex[k]];
        }
    }

    private GibbsNewton newtonFor(int mask) {
        boolean[] present = new boolean[composition.length];
        for (int k = 0; k < present.length; k++) {
            present[k] = (mask & 1 << k) != 0;
        }
        return new GibbsNewton(new ActiveSpecies(set, present));
    }

    // ---- one call, one state

    /**
     * @param reactants mixture
     * @param temperature temperature (K)
     * @param pressure absolute pressure (Pa)
     * @return equilibrium state
     */
    public GasState solveTemperaturePressure(Reactants reactants, double temperature, double pressure) {
        setMixture(reactants);
        setPressureTemperature(pressure, temperature);
        return snapshot();
    }

    /**
     * Adiabatic combustion at constant pressure.
     *
     * @param reactants mixture with its enthalpy
     * @param pressure absolute pressure (Pa)
     * @return equilibrium state
     */
    public GasState solveEnthalpyPressure(Reactants reactants, double pressure) {
        setMixture(reactants);
        setPressureEnthalpy(pressure, reactants.enthalpy());
        return snapshot();
    }

    /**
     * Isentropic change with shifting composition.
     *
     * @param reactants mixture
     * @param entropy specific entropy (J/(kg·K))
     * @param pressure absolute pressure (Pa)
     * @return equilibrium state
     */
    public GasState solveEntropyPressure(Reactants reactants, double entropy, double pressure) {
        setMixture(reactants);
        setPressureEntropy(pressure, entropy);
        return snapshot();
    }

    // ---- cursor

    @Override
    public void setPressureTemperature(double pressure, double temperature) {
        Require.within("equilibrium", "temperature (K)", temperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE);
        solve(Assigned.TEMPERATURE, temperature, pressure);
    }

    @Override
    public void setPressureEnthalpy(double pressure, double enthalpy) {
        Require.finite("equilibrium", "enthalpy (J/kg)", enthalpy);
        solve(Assigned.ENTHALPY, enthalpy, pressure);
    }

    @Override
    public void setPressureEntropy(double pressure, double entropy) {
        Require.finite("equilibrium", "entropy (J/(kg·K))", entropy);
        solve(Assigned.ENTROPY, entropy, pressure);
    }

    private void solve(Assigned assigned, double target, double pressure) {
        if (newton == null) {
            throw new InvalidInput("equilibrium", "mixture", "not set", "set the mixture first");
        }
        Require.within("equilibrium", "pressure (Pa)", pressure, LOWEST_PRESSURE, HIGHEST_PRESSURE);
        newton.reset();
        exponent = 0;
        boolean solved = warm && attempt(assigned, target, pressure, WARM_LIMIT);
        if (!solved) {
            if (assigned == Assigned.ENTHALPY) {
                newton.startFromEnthalpy(target);
            } else {
                newton.start(START_TEMPERATURE);
            }
            solved = attempt(assigned, target, pressure, COLD_LIMIT);
        }
        if (!solved) {
            solved = bracket(assigned, target, pressure);
        }
        iterations = newton.iterations();
        warm = solved && !newton.anySupersaturation();
        if (!solved) {
            newton.species().condensedAlone(newton.composition()).ifPresent(name -> {
                throw new OutsideValidity(
                        describe(assigned, target, pressure),
                        "gas (mol/kg)",
                        0,
                        "more: the mixture has the composition of " + name + ", which may take up all of it");
            });
            throw new NotConverged(
                    describe(assigned, target, pressure),
                    iterations,
                    newton.worstResidual(),
                    String.format(Locale.ROOT, "last at %.5g K", newton.temperature()));
        }
        double t = newton.temperature();
        if (!(t >= LOWEST_TEMPERATURE && t <= HIGHEST_TEMPERATURE)) {
            warm = false;
            throw new OutsideValidity(
                    describe(assigned, target, pressure),
                    "temperature (K)",
                    t,
                    "100 K to 8000 K, where the species data can be used");
        }
    }

    private boolean bracket(Assigned assigned, double target, double pressure) {
        TemperatureBracket.Outcome outcome = new TemperatureBracket(attempts, newton).solve(assigned, target, pressure);
        if (outcome == TemperatureBracket.Outcome.TOO_COLD) {
            warm = false;
            boolean enthalpy = assigned == Assigned.ENTHALPY;
            throw new OutsideValidity(
                    describe(assigned, target, pressure),
                    enthalpy ? "enthalpy (J/kg)" : "entropy (J/(kg·K))",
                    target,
                    String.format(
                            Locale.ROOT,
                            "above %.6g, what the products have at 100 K: the mixture is too cold to burn",
                            enthalpy ? newton.enthalpy() : newton.entropy()));
        }
        return outcome == TemperatureBracket.Outcome.SOLVED;
    }

    /** Newton with the set of condensed species corrected until it stands; a slow iteration is helped on its way. */
    boolean attempt(Assigned assigned, double target, double pressure, int limit) {
        if (assigned == Assigned.TEMPERATURE) {
            newton.setTemperature(target);
        }
        int start = newton.iterations();
        for (int change = 0; change <= MOST_PHASE_CHANGES; ) {
            boolean converged = newton.iterate(assigned, target, pressure, STEPS_BETWEEN_LOOKS);
            int steps = newton.iterations() - start;
            if (!converged && (newton.broken() || steps > limit)) {
                return false;
            }
            boolean look = converged || newton.worstResidual() < NEARLY || steps > SLOW;
            int drop = look ? condensedToDrop() : -1;
            int add = look && drop < 0 ? condensedToAdd() : -1;
            if (drop >= 0) {
                newton.setCondensed(drop, false);
                change++;
            } else if (add >= 0) {
                newton.setCondensed(add, true);
                change++;
            } else if (converged) {
                return true;
            }
        }
        return false;
    }

    /** The active condensed species of most negative amount, or beyond the end of its data; -1 if none. */
    private int condensedToDrop() {
        int drop = -1;
        double worst = 0;
        for (int c = 0; c < newton.species().condensedCount; c++) {
            if (newton.condensedActive(c)) {
                double amount = allowed(c) ? newton.condensedMoles()[c] : Double.NEGATIVE_INFINITY;
                if (amount < worst) {
                    worst = amount;
                    drop = c;
                }
            }
        }
        return drop;
    }

    /** The absent condensed species with which the gas is supersaturated most; -1 if none. */
    private int condensedToAdd() {
        int add = -1;
        double worst = SUPERSATURATION;
        for (int c = 0; c < newton.species().condensedCount; c++) {
            if (!newton.condensedActive(c) && allowed(c) && newton.affinity(c) > worst) {
                worst = newton.affinity(c);
                add = c;
            }
        }
        return add;
    }

    private boolean allowed(int c) {
        return newton.temperature() <= newton.species().condensedMaximum[c];
    }

    private String describe(Assigned assigned, double target, double pressure) {
        String given =
                switch (assigned) {
                    case TEMPERATURE -> String.format(Locale.ROOT, "%.6g K", target);
                    case ENTHALPY -> String.format(Locale.ROOT, "%.6g J/kg", target);
                    case ENTROPY -> String.format(Locale.ROOT, "%.6g J/(kg·K)", target);
                };
        return String.format(Locale.ROOT, "equilibrium of %s at %.6g Pa and %s", mixtureName(), pressure, given);
    }

    private String mixtureName() {
        Map<String, Double> propellants = mixture.propellants();
        return propellants.isEmpty() ? String.join("", set.elements()) : String.join(" with ", propellants.keySet());
    }

    @Override
    public double pressure() {
        return newton.pressure();
    }

    @Override
    public double temperature() {
        return newton.temperature();
    }

    @Override
    public double density() {
        return newton.pressure() / (newton.gasMoles() * Constants.MOLAR_GAS_CONSTANT * newton.temperature());
    }

    @Override
    public double enthalpy() {
        return newton.enthalpy();
    }

    @Override
    public double entropy() {
        return newton.entropy();
    }

    @Override
    public double molarMass() {
        return 1 / newton.gasMoles();
    }

    @Override
    public double isentropicExponent() {
        if (exponent == 0) {
            exponent = newton.isentropicExponent();
        }
        return exponent;
    }

    @Override
    public double soundSpeed() {
        return Math.sqrt(
                isentropicExponent() * newton.gasMoles() * Constants.MOLAR_GAS_CONSTANT * newton.temperature());
    }

    @Override
    public double frozenHeatCapacity() {
        return newton.frozenHeatCapacity();
    }

    /** @return cp with shifting composition (J/(kg·K)) */
    public double equilibriumHeatCapacity() {
        return newton.equilibriumHeatCapacity();
    }

    /** @return (∂ln v/∂ln T)_p with shifting composition (-) */
    public double volumeTemperatureSlope() {
        return newton.volumeTemperatureSlope();
    }

    /** @return (∂ln v/∂ln p)_T with shifting composition (-) */
    public double volumePressureSlope() {
        return newton.volumePressureSlope();
    }

    /** Starts the next solution afresh, as if none had gone before. */
    public void forget() {
        warm = false;
    }

    /** @return mass fraction of condensed carbon (-) */
    public double condensedCarbon() {
        int j = set.indexOf("C(gr)");
        ActiveSpecies active = newton.species();
        for (int c = 0; c < active.condensedCount; c++) {
            if (active.globalIndex[active.gasCount + c] == j) {
                return newton.condensedMoles()[c] * set.species().get(j).molarMass();
            }
        }
        return 0;
    }

    /** @return the mixture as set last */
    public Reactants mixture() {
        return mixture;
    }

    /** @return Newton steps that the last solution took, all attempts together */
    public int iterations() {
        return iterations;
    }

    /**
     * Copies the amounts of all species.
     *
     * @param target receives moles per kilogram (mol/kg) in the order of the species set
     */
    public void copyMoles(double[] target) {
        Arrays.fill(target, 0);
        ActiveSpecies active = newton.species();
        for (int j = 0; j < active.gasCount; j++) {
            target[active.globalIndex[j]] = newton.moles()[j];
        }
        for (int c = 0; c < active.condensedCount; c++) {
            target[active.globalIndex[active.gasCount + c]] = newton.condensedMoles()[c];
        }
    }

    /**
     * @param element index in the set's elements
     * @return chemical potential of a mole of its atoms over RT (-); zero for an element that is absent
     */
    public double elementPotential(int element) {
        int[] index = newton.species().elementIndex;
        for (int k = 0; k < index.length; k++) {
            if (index[k] == element) {
                return newton.potentials()[k];
            }
        }
        return 0;
    }

    /** @return the gas as it is now, with its composition frozen */
    public FrozenGas freeze() {
        double[] moles = new double[set.size()];
        copyMoles(moles);
        FrozenGas gas = new FrozenGas(set, moles);
        gas.setPressureTemperature(pressure(), temperature());
        return gas;
    }

    @Override
    public GasState snapshot() {
        return snapshots.equilibrium(this);
    }
}

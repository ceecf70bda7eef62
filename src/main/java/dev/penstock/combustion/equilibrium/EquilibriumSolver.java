package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.equilibrium.TemperatureBracket.Outcome;
import dev.penstock.combustion.gas.FrozenTransport;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.combustion.species.SecondVirial;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.Require;
import dev.penstock.fluids.property.AtomicWeights;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Chemical equilibrium of a mixture of gases, ideal ones or such as take up room ({@link SecondVirial}), with pure condensed carbon and water: least Gibbs energy at assigned
 * temperature, enthalpy or entropy, and pressure.
 *
 * <p>{@link GibbsNewton} solves for a given set of condensed species, {@link EquilibriumSearch} finds that set and the start.
 * Source: [nasa-rp-1311], part I. The volume of condensed species is left out.
 *
 * <p>Holds where the gas is near ideal (density well below that of the liquids) and reactions are fast. Not thread-safe: one
 * solver per thread, reused.
 */
public final class EquilibriumSolver implements GasCursor {

    /** What this model is. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.equilibrium",
            "Chemical equilibrium by least Gibbs energy",
            "min Σ n_j (g°_j + RT ln(x_j p/p°)) + Σ n_c g°_c with Σ a_kj n_j + Σ a_kc n_c = b_k",
            "100 K to 8000 K (data 200 K to 6000 K, beyond: cp held, with a warning); 1 Pa to 1 GPa; ideal gas, or that of combustion.second-virial",
            "flame temperature to the data, a few kelvin; slow reactions are not seen",
            List.of("nasa-rp-1311", "nasa-tm-4513"));

    private static final double LOWEST_TEMPERATURE = 100;
    private static final double HIGHEST_TEMPERATURE = 8000;
    private static final double LOWEST_PRESSURE = 1;
    private static final double HIGHEST_PRESSURE = 1e9;
    /** Moles of an element per kilogram below which it is taken to be absent: round-off of the others (mol/kg). */
    private static final double ABSENT = 1e-14;

    private static final double MASS_TOLERANCE = 5e-3;

    private final SpeciesSet set;
    private final Map<Integer, EquilibriumSearch> searches = new HashMap<>();
    private final double[] composition;
    private final double[] atomicMass;
    private final GasSnapshot snapshots;
    private Reactants mixture;
    private EquilibriumSearch search;
    private GibbsState state;
    private double exponent;
    private int solutions;

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
     * @return a solver of ideal gases of these elements, with the mixture set
     */
    public static EquilibriumSolver of(SpeciesLibrary library, Reactants reactants) {
        return of(library.speciesFor(reactants.composition().molesPerKilogram().keySet()), reactants);
    }

    /**
     * @param library species to choose from
     * @param reactants mixture whose elements matter
     * @return a solver of gases that take up room by their {@link SecondVirial}, with the mixture set
     */
    public static EquilibriumSolver dense(SpeciesLibrary library, Reactants reactants) {
        return of(
                library.speciesFor(reactants.composition().molesPerKilogram().keySet())
                        .dense(),
                reactants);
    }

    private static EquilibriumSolver of(SpeciesSet set, Reactants reactants) {
        EquilibriumSolver solver = new EquilibriumSolver(set);
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
        boolean near = true;
        for (int k = 0; k < composition.length; k++) {
            String element = set.elements().get(k);
            double moles = atoms.getOrDefault(element, 0.0);
            Require.notNegative("reactants", () -> "moles of " + element + " (mol/kg)", moles);
            found += atoms.containsKey(element) ? 1 : 0;
            near &= Math.abs(moles - composition[k]) <= 0.5 * composition[k];
            composition[k] = moles;
            mass += moles * atomicMass[k];
            mask |= moles > ABSENT ? 1 << k : 0;
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
        EquilibriumSearch before = search;
        search = searches.computeIfAbsent(mask, this::searchFor);
        state = search.state();
        if (!near || search != before) {
            search.forget();
        }
        for (int k = 0; k < state.b.length; k++) {
            state.b[k] = composition[state.species.elementIndex[k]];
        }
    }

    private EquilibriumSearch searchFor(int mask) {
        boolean[] present = new boolean[composition.length];
        for (int k = 0; k < present.length; k++) {
            present[k] = (mask & 1 << k) != 0;
        }
        return new EquilibriumSearch(new ActiveSpecies(set, present));
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

    // ---- cursor

    /**
     * @param pressure absolute pressure (Pa)
     * @param temperature temperature (K)
     */
    public void setPressureTemperature(double pressure, double temperature) {
        Require.within("equilibrium", "temperature (K)", temperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE);
        solve(Assigned.TEMPERATURE, temperature, pressure);
    }

    /**
     * @param pressure absolute pressure (Pa)
     * @param enthalpy specific enthalpy relative to the elements at 298.15 K (J/kg)
     */
    public void setPressureEnthalpy(double pressure, double enthalpy) {
        Require.finite("equilibrium", "enthalpy (J/kg)", enthalpy);
        solve(Assigned.ENTHALPY, enthalpy, pressure);
    }

    @Override
    public void setPressureEntropy(double pressure, double entropy) {
        Require.finite("equilibrium", "entropy (J/(kg·K))", entropy);
        solve(Assigned.ENTROPY, entropy, pressure);
    }

    /** @return states that were sought since this was made */
    public int solutions() {
        return solutions;
    }

    private void solve(Assigned assigned, double target, double pressure) {
        if (search == null) {
            throw new InvalidInput("equilibrium", "mixture", "not set", "set the mixture first");
        }
        Require.within("equilibrium", "pressure (Pa)", pressure, LOWEST_PRESSURE, HIGHEST_PRESSURE);
        exponent = 0;
        solutions++;
        Outcome outcome = search.solve(assigned, target, pressure);
        if (outcome != Outcome.SOLVED) {
            search.forget();
            throw outcome == Outcome.TOO_COLD
                    ? tooCold(assigned, target, pressure)
                    : notSolved(assigned, target, pressure);
        }
        if (!(state.temperature >= LOWEST_TEMPERATURE && state.temperature <= HIGHEST_TEMPERATURE)) {
            search.forget();
            throw new OutsideValidity(
                    describe(assigned, target, pressure),
                    "temperature (K)",
                    state.temperature,
                    "100 K to 8000 K, where the species data can be used");
        }
    }

    private PenstockException tooCold(Assigned assigned, double target, double pressure) {
        boolean enthalpy = assigned == Assigned.ENTHALPY;
        return new OutsideValidity(
                describe(assigned, target, pressure),
                enthalpy ? "enthalpy (J/kg)" : "entropy (J/(kg·K))",
                target,
                String.format(
                        Locale.ROOT,
                        "above %.6g, what the products have at 100 K: the mixture is too cold to burn",
                        enthalpy ? state.enthalpy() : state.entropy()));
    }

    private PenstockException notSolved(Assigned assigned, double target, double pressure) {
        String problem = describe(assigned, target, pressure);
        Optional<String> alone = state.species.condensedAlone(state.b);
        if (alone.isPresent()) {
            return new OutsideValidity(
                    problem,
                    "gas (mol/kg)",
                    0,
                    "more: the mixture has the composition of " + alone.get() + ", which may take up all of it");
        }
        return new NotConverged(
                problem,
                search.iterations(),
                search.worstResidual(),
                String.format(Locale.ROOT, "last at %.5g K", state.temperature));
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
        return mixture.parts().isEmpty() ? String.join("", set.elements()) : mixture.names(" with ");
    }

    @Override
    public double pressure() {
        return state.pressure;
    }

    @Override
    public double temperature() {
        return state.temperature;
    }

    @Override
    public double density() {
        return state.pressure / (state.volume() * Constants.MOLAR_GAS_CONSTANT * state.temperature);
    }

    @Override
    public double enthalpy() {
        return state.enthalpy();
    }

    @Override
    public double entropy() {
        return state.entropy();
    }

    @Override
    public double molarMass() {
        return 1 / state.gasMoles;
    }

    @Override
    public double isentropicExponent() {
        if (exponent == 0) {
            exponent = search.slopes().isentropicExponent();
        }
        return exponent;
    }

    @Override
    public double soundSpeed() {
        return Math.sqrt(isentropicExponent() * state.volume() * Constants.MOLAR_GAS_CONSTANT * state.temperature);
    }

    @Override
    public double frozenHeatCapacity() {
        return state.frozenHeatCapacity();
    }

    /** @return cp with shifting composition (J/(kg·K)) */
    public double equilibriumHeatCapacity() {
        return search.slopes().heatCapacity();
    }

    /** @return (∂ln v/∂ln T)_p with shifting composition (-) */
    public double volumeTemperatureSlope() {
        return search.slopes().volumeTemperatureSlope();
    }

    /** @return (∂ln v/∂ln p)_T with shifting composition (-) */
    public double volumePressureSlope() {
        return search.slopes().volumePressureSlope();
    }

    /** Starts the next solution afresh, as if none had gone before. */
    public void forget() {
        search.forget();
    }

    /**
     * Keeps where the last solution stands.
     *
     * @param mark receives it
     */
    public void keep(EquilibriumMark mark) {
        search.keep(mark);
    }

    /**
     * Lets the next solution start from a mark. Nothing may be asked before that solution.
     *
     * @param mark where a solution nearby stood; without effect if nothing of these elements was kept in it
     */
    public void startFrom(EquilibriumMark mark) {
        search.startFrom(mark);
    }

    /**
     * Makes the next solution take a step of Newton's method however near its start lies: a search along pressure then sees no stairs
     * where it moves by less than a solution's tolerance.
     */
    public void takeStep() {
        search.takeStep();
    }

    /** @return mass fraction of condensed carbon (-) */
    public double condensedCarbon() {
        int j = set.indexOf("C(gr)");
        ActiveSpecies active = state.species;
        for (int c = 0; c < active.condensedCount; c++) {
            if (active.globalIndex[active.gasCount + c] == j) {
                return state.condensedMoles[c] * set.species().get(j).molarMass();
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
        return search.iterations();
    }

    /**
     * Copies the amounts of all species.
     *
     * @param target receives moles per kilogram (mol/kg) in the order of the species set
     */
    public void copyMoles(double[] target) {
        Arrays.fill(target, 0);
        ActiveSpecies active = state.species;
        for (int j = 0; j < active.gasCount; j++) {
            target[active.globalIndex[j]] = state.moles[j];
        }
        for (int c = 0; c < active.condensedCount; c++) {
            target[active.globalIndex[active.gasCount + c]] = state.condensedMoles[c];
        }
    }

    /**
     * @param element index in the set's elements
     * @return chemical potential of a mole of its atoms over RT (-); zero for an element that is absent
     */
    public double elementPotential(int element) {
        int[] index = state.species.elementIndex;
        for (int k = 0; k < index.length; k++) {
            if (index[k] == element) {
                return state.potentials[k];
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

    /** @return the whole state as an immutable record, with transport properties */
    public GasState snapshot() {
        return snapshots.equilibrium(this);
    }

    @Override
    public FrozenTransport frozenTransport() {
        return snapshots.transport(this);
    }

    @Override
    public double condensedMassFraction() {
        return snapshots.condensedMassFraction(this);
    }
}

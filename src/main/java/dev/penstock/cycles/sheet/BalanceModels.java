package dev.penstock.cycles.sheet;

import dev.penstock.chamber.ThrustChamber;
import dev.penstock.combustion.GasGeneratorGas;
import dev.penstock.combustion.RealFluidWorkingFluid;
import dev.penstock.combustion.TurbineGas;
import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.MachineChoices;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.turbine.TurbineModel;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The models that one balance works with, solvers of its own among them, and what need not be computed twice: fluid states at
 * inputs that have not moved, burner gas whose mixture has not moved, and the choices that are held while equations are solved
 * ({@link MachineChoices}). Not thread-safe.
 */
public final class BalanceModels {

    private static final int MOST_STATES = 400;
    private static final double KICK_PUMP_EFFICIENCY = 0.62;

    private record StateKey(String fluid, double pressure, double enthalpy) {}

    private record GasKey(double oxidizerShare, double enthalpy, double pressure) {}

    private final Concept concept;
    private final Models models;
    private final Optional<BuiltMachines> built;
    private final PumpModel pumpModel;
    private final JacketSolver jackets;

    /** The burners' gas makers; each burner keeps its own, so that its solver stays near the solution. */
    private final Map<Burner, GasGeneratorGas> gasMakers = new EnumMap<>(Burner.class);

    private final Map<StateKey, FluidState> liquids = new HashMap<>();
    /** Propellants that drive turbines unburnt, each with the states of this balance. */
    private final Map<Propellant, RealFluidWorkingFluid> heated = new IdentityHashMap<>();

    private final Map<StateKey, FluidState> tanks = new HashMap<>();
    private final Map<Burner, GasKey> gasKeys = new EnumMap<>(Burner.class);
    private final Map<Burner, TurbineGas> gases = new EnumMap<>(Burner.class);
    private final MachineChoices choices = new MachineChoices();
    private ThrustChamber chamber;
    private int evaluations;

    public BalanceModels(Concept concept, Models models, Optional<BuiltMachines> built) {
        this.concept = concept;
        this.models = models;
        this.built = built;
        this.pumpModel = models.newPumpModel();
        this.jackets = models.jackets().counting();
    }

    /** Machines whose size is settled; empty while an engine is being sized. */
    public Optional<BuiltMachines> built() {
        return built;
    }

    public Concept concept() {
        return concept;
    }

    public Models models() {
        return models;
    }

    /** The jacket solver, which counts the marches of this balance. */
    public JacketSolver jackets() {
        return jackets;
    }

    public PumpModel pumpModel() {
        return pumpModel;
    }

    public TurbineModel turbineModel() {
        return models.turbines();
    }

    /** Efficiency of small pumps behind a main pump (-): common practice, no source. */
    double kickPumpEfficiency() {
        return KICK_PUMP_EFFICIENCY;
    }

    public FluidState tankState(FeedDesign feed, double pressure) {
        StateKey key = new StateKey(feed.propellant().id(), pressure, feed.tankTemperature());
        return tanks.computeIfAbsent(
                key, k -> feed.propellant().fluid().atPressureTemperature(pressure, feed.tankTemperature()));
    }

    FluidState liquidState(Medium.Liquid liquid, double pressure, double enthalpy) {
        if (liquids.size() > MOST_STATES) {
            liquids.clear();
        }
        StateKey key = new StateKey(liquid.name(), pressure, enthalpy);
        return liquids.computeIfAbsent(
                key,
                k -> liquid.state(
                        pressure, enthalpy, pumpModel.known(liquid.propellant().fluid())));
    }

    /** A propellant that drives turbines unburnt, for the search of this balance; what is kept of its answer has a fluid of its own. */
    WorkingFluid heatedFluid(Propellant propellant) {
        return heated.computeIfAbsent(propellant, RealFluidWorkingFluid::keepingStates);
    }

    /** @return effort of such propellants so far, in states */
    public long heatedEffort() {
        return heated.values().stream().mapToLong(RealFluidWorkingFluid::effort).sum();
    }

    /** Absolute enthalpy of a fluid as stored, at a pressure (J/kg). */
    public double storedEnthalpy(Propellant fluid, double pressure) {
        return fluid.absoluteEnthalpy(fluid.fluid()
                .atPressureTemperature(pressure, fluid.storageTemperature())
                .enthalpy());
    }

    /** Oxidizer and fuel as a burner mixes them, with the third fluid that it may take, at the enthalpy that all bring together. */
    public Reactants mixture(Burner burner, double oxidizerFlow, double fuelFlow, double enthalpy) {
        Reactants propellants = mixture(oxidizerFlow, fuelFlow, enthalpy);
        return concept.burners()
                .get(burner)
                .diluent()
                .map(d -> propellants
                        .mixedWith(Reactants.single(d.fluid(), enthalpy), d.share())
                        .withEnthalpy(enthalpy))
                .orElse(propellants);
    }

    /** Oxidizer and fuel mixed, at the enthalpy they bring together. */
    public Reactants mixture(double oxidizerFlow, double fuelFlow, double enthalpy) {
        double share = fuelFlow / (oxidizerFlow + fuelFlow);
        Reactants oxidizer = Reactants.single(concept.oxidizer(), 0);
        Reactants fuel = Reactants.single(concept.fuel(), 0);
        return oxidizer.mixedWith(fuel, share).withEnthalpy(enthalpy);
    }

    /** The chamber; made of the first mixture, whose elements are those of every later one. */
    public ThrustChamber chamber(Reactants mixture) {
        if (chamber == null) {
            chamber = models.newChamber(mixture);
        }
        return chamber;
    }

    public GasGeneratorGas gasMaker(Burner burner) {
        return gasMakers.computeIfAbsent(burner, b -> models.newGasMaker(concept, b));
    }

    /** Gas of a burner; the last one is kept for the case that nothing has moved. */
    TurbineGas gas(Burner burner, Reactants mixture, double pressure) {
        double share = mixture.fractionOf(concept.oxidizer());
        GasKey key = new GasKey(share, mixture.enthalpy(), pressure);
        if (!Objects.equals(key, gasKeys.get(burner))) {
            gases.put(burner, gasMaker(burner).burn(mixture, pressure));
            gasKeys.put(burner, key);
        }
        return gases.get(burner);
    }

    /** Kinds, stages and annuli of the machines. */
    public MachineChoices choices() {
        return choices;
    }

    public void countEvaluation() {
        evaluations++;
    }

    public int evaluations() {
        return evaluations;
    }

    /** Equilibria of chamber and burners that were solved. */
    public int equilibria() {
        int burners = gasMakers.values().stream()
                .mapToInt(GasGeneratorGas::equilibria)
                .sum();
        return burners + (chamber == null ? 0 : chamber.equilibria());
    }
}

package dev.penstock.chamber.flow;

import dev.penstock.combustion.WorkingState;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.FrozenTransport;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.combustion.gas.GasState;
import java.util.ArrayList;
import java.util.List;

/**
 * One chamber gas on its way to any number of exits: the chamber and the throat are solved once, here; each exit and the
 * profile come on request. Made by {@link NozzleFlow}, whose equilibrium solver it goes on using: not thread-safe.
 */
public final class Expansion {

    private static final double NODE_STEP = 0.35; // ln p between profile nodes
    private static final int SUBSONIC_NODES = 6;
    private static final int TRANSPORT_EVERY = 3;

    private final EquilibriumSolver solver;
    private final Reactants reactants;
    private final ExpansionMode mode;
    private final GasState chamber;
    private final NozzleGas gas;
    private final IsentropicFlow flow;
    private final NozzleStation throat;
    private final Recombination recombination;

    Expansion(
            EquilibriumSolver solver,
            Reactants reactants,
            double chamberPressure,
            ExpansionMode mode,
            NearExpansion near) {
        this.solver = solver;
        this.reactants = reactants;
        this.mode = mode;
        this.recombination = new Recombination(solver.speciesSet());
        NozzleGas.rest(solver, reactants, chamberPressure, near);
        chamber = solver.snapshot();
        gas = new NozzleGas(solver, mode, near);
        flow = gas.flow();
        throat = station(gas.upstream(), flow.throat(), 1);
    }

    /** @return gas at rest in the chamber, in equilibrium */
    public GasState chamber() {
        return chamber;
    }

    /** @return c* of this expansion (m/s) */
    public double characteristicVelocity() {
        return flow.characteristicVelocity();
    }

    /**
     * @param areaRatio exit area over throat area (-), 1 to 5000
     * @return the expansion to that exit
     * @throws dev.penstock.errors.OutsideValidity if the area ratio is outside these bounds or the gas gets too cold for
     *     the species data on the way
     */
    public IdealExpansion toAreaRatio(double areaRatio) {
        solver.setMixture(reactants);
        return toExit(gas.atAreaRatio(NozzleGas.within(areaRatio)), areaRatio);
    }

    /**
     * @param exitPressure static pressure at the exit (Pa)
     * @return the expansion to that exit
     * @throws dev.penstock.errors.OutsideValidity if the exit pressure is not below the throat pressure
     */
    public IdealExpansion toExitPressure(double exitPressure) {
        solver.setMixture(reactants);
        WorkingState exit = gas.atExitPressure(exitPressure);
        return toExit(exit, flow.areaRatio(exit));
    }

    /**
     * @param ideal an expansion of this gas
     * @return gas states all along the nozzle to its exit, quick to ask
     */
    public GasProfile profile(IdealExpansion ideal) {
        return profile(ideal.areaRatio(), ideal.exit().pressure());
    }

    /**
     * @param areaRatio exit area over throat area (-), above 1
     * @return gas states all along the nozzle, quick to ask
     */
    public GasProfile profile(double areaRatio) {
        solver.setMixture(reactants);
        return profile(areaRatio, gas.atAreaRatio(areaRatio).pressure());
    }

    private GasProfile profile(double areaRatio, double exitPressure) {
        solver.setMixture(reactants);
        double top = Math.log(chamber.pressure());
        double middle = Math.log(throat.pressure());
        double bottom = Math.log(exitPressure);
        int nodes = Math.max(4, (int) Math.ceil((middle - bottom) / NODE_STEP));
        TransportCurve transport = new TransportCurve(nodes + 2);
        transport.add(
                chamber.temperature(),
                chamber.transport().viscosity(),
                chamber.transport().frozenPrandtl());
        transport.add(throat.temperature(), throat.viscosity(), throat.prandtl());

        List<NozzleStation> subsonic = new ArrayList<>();
        for (int i = 0; i < SUBSONIC_NODES; i++) {
            // Closer together towards rest, where area changes fastest with pressure.
            double t = (double) i / SUBSONIC_NODES;
            WorkingState state = gas.subsonicNode(i, SUBSONIC_NODES, Math.exp(top + t * t * (middle - top)));
            subsonic.add(station(state, i == 0 ? Double.MAX_VALUE : flow.areaRatio(state), transport));
        }
        subsonic.add(throat);

        RecombinationTable table = new RecombinationTable(nodes + 1);
        List<WorkingState> states = new ArrayList<>();
        for (int i = 0; i <= nodes; i++) {
            states.add(gas.supersonicNode(i, nodes, Math.exp(middle + (bottom - middle) * i / nodes)));
            if (i == nodes || i > 0 && i % TRANSPORT_EVERY == 0) {
                transport.add(gas.downstream().temperature(), gas.downstream().frozenTransport());
            }
            note(table);
        }
        double condensed = gas.downstream().condensedMassFraction();
        List<NozzleStation> supersonic = new ArrayList<>();
        for (int i = 0; i <= nodes; i++) {
            WorkingState state = states.get(i);
            double ratio = i == 0 ? 1 : i == nodes ? areaRatio : flow.areaRatio(state);
            supersonic.add(station(state, ratio, transport));
        }
        return new GasProfile(subsonic, supersonic, chamber.enthalpy(), table, condensed);
    }

    private void note(RecombinationTable table) {
        if (mode == ExpansionMode.SHIFTING) {
            table.add(solver.pressure(), 1 / solver.molarMass(), recombination.rate(solver));
        }
    }

    private IdealExpansion toExit(WorkingState state, double areaRatio) {
        NozzleStation exit = station(gas.downstream(), state, Math.max(1, areaRatio));
        double characteristicVelocity = flow.characteristicVelocity();
        double impulse = exit.vacuumImpulse();
        return new IdealExpansion(
                mode,
                chamber,
                throat,
                exit,
                chamber.pressure(),
                characteristicVelocity,
                impulse / characteristicVelocity,
                impulse);
    }

    /** Station at the state at which the cursor stands, with its transport properties worked out. */
    private NozzleStation station(GasCursor gas, WorkingState state, double areaRatio) {
        FrozenTransport transport = gas.frozenTransport();
        return station(state, areaRatio, transport.viscosity(), transport.prandtl());
    }

    private NozzleStation station(WorkingState state, double areaRatio, TransportCurve transport) {
        double t = state.temperature();
        return station(state, areaRatio, transport.viscosity(t), transport.prandtl(t));
    }

    private NozzleStation station(WorkingState state, double areaRatio, double viscosity, double prandtl) {
        double v = flow.velocity(state);
        return new NozzleStation(
                Math.max(1, areaRatio),
                state.pressure(),
                state.temperature(),
                state.density(),
                v,
                v / state.soundSpeed(),
                state.enthalpy(),
                state.gamma(),
                state.isobaricHeatCapacity(),
                viscosity,
                prandtl);
    }
}

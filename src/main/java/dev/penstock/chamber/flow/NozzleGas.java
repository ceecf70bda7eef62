package dev.penstock.chamber.flow;

import dev.penstock.combustion.WorkingState;
import dev.penstock.combustion.equilibrium.EquilibriumMark;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.errors.Require;

/**
 * One chamber gas through a throat, as far as its impulse goes: neither transport properties nor a record of what it is made of
 * ({@link Expansion} adds those). It goes on using the solver that it was made with: not thread-safe.
 */
public final class NozzleGas {

    private final GasCursor upstream;
    private GasCursor downstream;
    private final IsentropicFlow flow;
    private final NearExpansion near;

    /**
     * Impulse of a gas at an exit.
     *
     * @param chamberTemperature temperature at rest in the chamber (K)
     * @param characteristicVelocity c* (m/s)
     * @param vacuumImpulse v + p/(ρ v) at the exit (m/s)
     */
    public record Impulse(double chamberTemperature, double characteristicVelocity, double vacuumImpulse) {}

    /**
     * @param solver stands at the gas at rest in the chamber
     * @param near where to start; moves along
     */
    NozzleGas(EquilibriumSolver solver, ExpansionMode mode, NearExpansion near) {
        this.near = near;
        upstream = mode == ExpansionMode.FROZEN ? solver.freeze() : solver;
        downstream = upstream;
        double entropy = upstream.entropy();
        WorkingState rest = working(upstream);
        startFrom(upstream, near.throat());
        flow = new IsentropicFlow(isentrope(upstream, entropy), rest, near, state -> {
            keep(upstream, near.throat());
            if (mode == ExpansionMode.FROZEN_AT_THROAT) {
                FrozenGas frozen = solver.freeze();
                downstream = frozen;
                return isentrope(frozen, frozen.entropy());
            }
            return isentrope(upstream, entropy);
        });
    }

    /**
     * @param solver solver of the gas
     * @param reactants mixture with its enthalpy as injected
     * @param chamberPressure pressure in the chamber (Pa)
     * @param mode how the composition goes on
     * @param areaRatio exit area over throat area (-), 1 to 5000
     * @param near where to start; moves along
     * @return impulse of that gas at that exit, without any loss
     */
    public static Impulse impulse(
            EquilibriumSolver solver,
            Reactants reactants,
            double chamberPressure,
            ExpansionMode mode,
            double areaRatio,
            NearExpansion near) {
        rest(solver, reactants, chamberPressure, near);
        double temperature = solver.temperature();
        NozzleGas gas = new NozzleGas(solver, mode, near);
        IsentropicFlow flow = gas.flow;
        WorkingState exit = gas.atAreaRatio(within(areaRatio));
        double v = flow.velocity(exit);
        return new Impulse(temperature, flow.characteristicVelocity(), v + exit.pressure() / (exit.density() * v));
    }

    /** Brings a solver to a gas at rest in a chamber; the last digits do not depend on what else it was used for before. */
    static void rest(EquilibriumSolver solver, Reactants reactants, double chamberPressure, NearExpansion near) {
        Require.positive("chamber", "chamber pressure (Pa)", chamberPressure);
        solver.setMixture(reactants);
        solver.forget();
        solver.startFrom(near.rest());
        solver.setPressureEnthalpy(chamberPressure, reactants.enthalpy());
        solver.keep(near.rest());
    }

    private static void startFrom(GasCursor gas, EquilibriumMark mark) {
        if (gas instanceof EquilibriumSolver shifting) {
            shifting.startFrom(mark);
        }
    }

    private static void keep(GasCursor gas, EquilibriumMark mark) {
        if (gas instanceof EquilibriumSolver shifting) {
            shifting.keep(mark);
        }
    }

    WorkingState atAreaRatio(double areaRatio) {
        startFrom(downstream, near.exit());
        WorkingState exit = flow.atAreaRatio(areaRatio);
        keep(downstream, near.exit());
        return exit;
    }

    WorkingState atExitPressure(double pressure) {
        startFrom(downstream, near.exit());
        WorkingState exit = flow.atExitPressure(pressure);
        keep(downstream, near.exit());
        return exit;
    }

    /** A node on the way from rest, the first one, to the throat. */
    WorkingState subsonicNode(int i, int nodes, double pressure) {
        EquilibriumMark mark = i == 0 ? near.rest() : near.subsonic(nodes).get(i);
        startFrom(upstream, mark);
        WorkingState state = flow.upstreamAt(pressure);
        keep(upstream, mark);
        return state;
    }

    /** A node on the way from the throat, the first one, to the exit, the last one. */
    WorkingState supersonicNode(int i, int last, double pressure) {
        EquilibriumMark mark = i == 0
                ? near.throat()
                : i == last ? near.exit() : near.supersonic(last).get(i);
        startFrom(downstream, mark);
        WorkingState state = flow.downstreamAt(pressure);
        keep(downstream, mark);
        return state;
    }

    static double within(double areaRatio) {
        Require.within("nozzle", "area ratio (-)", areaRatio, 1, 5000);
        return areaRatio;
    }

    GasCursor upstream() {
        return upstream;
    }

    GasCursor downstream() {
        return downstream;
    }

    IsentropicFlow flow() {
        return flow;
    }

    private static Isentrope isentrope(GasCursor gas, double entropy) {
        return pressure -> {
            if (gas instanceof EquilibriumSolver shifting) {
                shifting.takeStep();
            }
            gas.setPressureEntropy(pressure, entropy);
            return working(gas);
        };
    }

    private static WorkingState working(GasCursor gas) {
        double cp = gas instanceof EquilibriumSolver shifting
                ? shifting.equilibriumHeatCapacity()
                : gas.frozenHeatCapacity();
        return new WorkingState(
                gas.pressure(),
                gas.temperature(),
                gas.density(),
                gas.enthalpy(),
                gas.entropy(),
                cp,
                gas.isentropicExponent(),
                gas.soundSpeed());
    }
}

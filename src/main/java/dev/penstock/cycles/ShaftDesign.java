package dev.penstock.cycles;

import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.MechanicalLosses;

/**
 * How pumps and turbines are coupled.
 *
 * @param arrangement coupling
 * @param gas how two turbines share a gas stream
 * @param gearRatio turbine speed over fuel-pump speed, for {@link Arrangement#GEARED} (-)
 * @param losses what lies between turbine and pump power
 */
public record ShaftDesign(Arrangement arrangement, GasPath gas, double gearRatio, MechanicalLosses losses) {

    /** Coupling of the machines. */
    public enum Arrangement {
        /** Both pumps and one turbine on one shaft. */
        SINGLE,
        /** Each pump with its own turbine. */
        DUAL,
        /** One turbine drives both pumps through a gearbox, each pump at its own best speed. */
        GEARED
    }

    /** Way of the gas through two turbines. */
    public enum GasPath {
        /** Each turbine takes its share at the same pressures. */
        PARALLEL,
        /** All gas through the fuel turbine, then through the oxidizer turbine. */
        SERIES
    }

    public ShaftDesign {
        Require.positive("shafts", "gear ratio (-)", gearRatio);
    }

    /** @return whether one turbine drives both pumps */
    public boolean oneTurbine() {
        return arrangement != Arrangement.DUAL;
    }
}

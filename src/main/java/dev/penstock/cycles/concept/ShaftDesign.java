package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import java.util.OptionalDouble;

/**
 * How pumps and turbines are coupled.
 *
 * @param arrangement coupling
 * @param gas how two turbines share a gas stream
 * @param gearRatio turbine speed over fuel-pump speed, for {@link Arrangement#GEARED} (-)
 * @param pumpSpeedRatio fuel-pump speed over oxidizer-pump speed of a gearbox (-); empty where each pump has its own best speed
 * @param speedShare speed of the shafts of the main pumps over the fastest that their limits allow (-), where no speed is stated
 * @param kickGearRatio speed of a kick pump over that of the main pump before it (-); 1 on the shaft itself
 * @param kickGearEfficiency what that gear leaves (-); 1 on the shaft itself
 * @param gearSpeedLimit highest speed of gear teeth at the pitch line (m/s)
 * @param losses what lies between turbine and pump power
 */
public record ShaftDesign(
        Arrangement arrangement,
        GasPath gas,
        double gearRatio,
        OptionalDouble pumpSpeedRatio,
        double speedShare,
        double kickGearRatio,
        double kickGearEfficiency,
        double gearSpeedLimit,
        MechanicalLosses losses) {

    /** Coupling of the machines. */
    public enum Arrangement {
        /** Both pumps and one turbine on one shaft. */
        SINGLE,
        /** Each pump with its own turbine. */
        DUAL,
        /** One turbine drives both pumps through a gearbox, each pump at its own speed. */
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
        pumpSpeedRatio.ifPresent(r -> Require.positive("shafts", "pump speed ratio (-)", r));
        Require.within("shafts", "speed share (-)", speedShare, 0.2, 1);
        Require.positive("shafts", "kick gear ratio (-)", kickGearRatio);
        Require.within("shafts", "kick gear efficiency (-)", kickGearEfficiency, 0.5, 1);
        Require.positive("shafts", "gear speed limit (m/s)", gearSpeedLimit);
    }

    /** @return whether a gearbox stands between the pumps */
    public boolean geared() {
        return arrangement == Arrangement.GEARED;
    }

    /** @return whether kick pumps turn on a gear of their own */
    public boolean kickGeared() {
        return kickGearRatio != 1;
    }

    /** @return whether one turbine drives both pumps */
    public boolean oneTurbine() {
        return arrangement != Arrangement.DUAL;
    }
}

package dev.penstock.turbomachinery.pump;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.provenance.ModelCard;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Work of compressing a real liquid: the isentropic enthalpy rise from the fluid's equation of state.
 * <pre>Δhs = h(p2, s1) - h1,   shaft work = Δhs/η</pre>
 * The rest of the work, (1/η - 1)Δhs, heats the liquid. An inlet state asked for a second time gets an {@link LiquidIsentrope}, of
 * which the last {@value #MEMORY} are kept: pumps behind a tank are then nearly free in a solver loop, while pumps whose inlet
 * moves at every step cost one state each. Not thread-safe.
 */
final class PumpHead {

    static final ModelCard CARD = new ModelCard(
            "turbomachinery.pump-head",
            "Isentropic enthalpy rise of a pump",
            "Δhs = h(p2, s1) - h1; power = ṁ Δhs/η; h2 = h1 + Δhs/η",
            "that of the fluid's equation of state",
            "that of the equation of state, below 0.5 %",
            List.of("nasa-sp-8107"));

    private static final int MEMORY = 8;
    private static final double ROOM = 1.5;

    /** An inlet asked with this many pressures is likely to be asked with more; the pump behind another is not. */
    private static final int WORTH_AN_INTERPOLANT = 4;

    private final LiquidIsentrope[] remembered = new LiquidIsentrope[MEMORY];
    private final FluidState[] asked = new FluidState[MEMORY];
    private final double[] askedPressure = new double[MEMORY];
    private final double[] answered = new double[MEMORY];
    private final int[] pressures = new int[MEMORY];
    private final Map<Fluid, KnownStates> states = new IdentityHashMap<>();
    private int next;
    private int nextAsked;

    /**
     * @param propellant what is pumped
     * @param inlet total state at the inlet
     * @param pressure discharge pressure (Pa), above the inlet pressure
     * @return isentropic enthalpy rise (J/kg)
     */
    double rise(Propellant propellant, FluidState inlet, double pressure) {
        for (LiquidIsentrope isentrope : remembered) {
            if (isentrope != null && isentrope.covers(inlet, pressure)) {
                return isentrope.rise(pressure);
            }
        }
        int known = known(inlet);
        if (known >= 0 && askedPressure[known] == pressure) {
            return answered[known];
        }
        if (known < 0) {
            known = nextAsked;
            nextAsked = (nextAsked + 1) % MEMORY;
            asked[known] = inlet;
            pressures[known] = 0;
        }
        if (++pressures[known] < WORTH_AN_INTERPOLANT) {
            askedPressure[known] = pressure;
            answered[known] =
                    propellant.fluid().enthalpyAtPressureEntropy(pressure, inlet.entropy(), known(propellant.fluid()))
                            - inlet.enthalpy();
            return answered[known];
        }
        double ceiling = propellant.fluid().range().maximumPressure();
        double top = Math.max(pressure, Math.min(ROOM * pressure, ceiling));
        LiquidIsentrope made = new LiquidIsentrope(propellant.fluid(), inlet, top, known(propellant.fluid()));
        remembered[next] = made;
        next = (next + 1) % MEMORY;
        return made.rise(pressure);
    }

    /** States of a liquid that were found lately. */
    KnownStates known(Fluid fluid) {
        return states.computeIfAbsent(fluid, f -> new KnownStates());
    }

    private int known(FluidState inlet) {
        for (int i = 0; i < MEMORY; i++) {
            if (inlet.equals(asked[i])) {
                return i;
            }
        }
        return -1;
    }
}

package dev.penstock.turbomachinery.turbine;

import dev.penstock.errors.Require;

/**
 * The few numbers of a turbine that a cycle's solver needs at every step; a {@link TurbineSizing} holds the rest.
 *
 * @param isentropicDrop total-to-static isentropic enthalpy drop (J/kg)
 * @param efficiency work over that drop (-)
 * @param power shaft power (W)
 * @param outletEnthalpy total enthalpy at the outlet, relative to the elements (J/kg)
 */
public record TurbineWork(double isentropicDrop, double efficiency, double power, double outletEnthalpy) {

    public TurbineWork {
        Require.positive("turbine", "isentropic drop (J/kg)", isentropicDrop);
        Require.within("turbine", "efficiency (-)", efficiency, Double.MIN_NORMAL, 1);
        Require.positive("turbine", "power (W)", power);
        Require.finite("turbine", "outlet enthalpy (J/kg)", outletEnthalpy);
    }
}

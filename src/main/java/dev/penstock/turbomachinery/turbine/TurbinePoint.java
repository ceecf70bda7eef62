package dev.penstock.turbomachinery.turbine;

import dev.penstock.errors.Require;

/**
 * A built turbine at one operating point.
 *
 * @param massFlow mass flow that its nozzles pass (kg/s)
 * @param isentropicDrop total-to-static isentropic enthalpy drop (J/kg)
 * @param velocityRatio pitch-line speed over spouting velocity (-)
 * @param efficiency work over isentropic drop (-)
 * @param power shaft power (W)
 * @param outletEnthalpy total enthalpy at the outlet, relative to the elements (J/kg)
 * @param choked whether the flow no longer depends on the exit pressure
 */
public record TurbinePoint(
        double massFlow,
        double isentropicDrop,
        double velocityRatio,
        double efficiency,
        double power,
        double outletEnthalpy,
        boolean choked) {

    public TurbinePoint {
        Require.positive("turbine", "mass flow (kg/s)", massFlow);
        Require.positive("turbine", "isentropic drop (J/kg)", isentropicDrop);
        Require.positive("turbine", "velocity ratio (-)", velocityRatio);
        Require.positive("turbine", "efficiency (-)", efficiency);
        Require.positive("turbine", "power (W)", power);
        Require.finite("turbine", "outlet enthalpy (J/kg)", outletEnthalpy);
    }
}

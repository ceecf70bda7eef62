package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;

/**
 * The few numbers of a pump that a cycle's solver needs at every step; a {@link PumpSizing} holds the rest.
 *
 * @param speed shaft speed (rad/s)
 * @param head isentropic total enthalpy rise (J/kg)
 * @param efficiency head over shaft work (-)
 * @param power shaft power (W)
 * @param outletEnthalpy total enthalpy at the outlet, the fluid's own (J/kg)
 */
public record PumpWork(double speed, double head, double efficiency, double power, double outletEnthalpy) {

    public PumpWork {
        Require.positive("pump", "speed (rad/s)", speed);
        Require.positive("pump", "head (J/kg)", head);
        Require.within("pump", "efficiency (-)", efficiency, Double.MIN_NORMAL, 1);
        Require.positive("pump", "power (W)", power);
        Require.finite("pump", "outlet enthalpy (J/kg)", outletEnthalpy);
    }
}

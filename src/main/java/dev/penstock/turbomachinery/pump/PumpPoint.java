package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;

/**
 * A built pump at one operating point.
 *
 * @param speed shaft speed (rad/s)
 * @param flowRatio volume flow over design flow, over speed ratio (-)
 * @param head isentropic enthalpy rise (J/kg); negative beyond the flow that the pump can lift
 * @param dischargePressure total pressure at the outlet (Pa)
 * @param efficiency head over shaft work (-)
 * @param power shaft power (W)
 * @param outletEnthalpy total enthalpy at the outlet, the fluid's own (J/kg)
 * @param stallMargin flow ratio over that of stall, minus one (-); negative when stalled
 * @param cavitationMargin suction head with suppression over required head, minus one (-); negative when cavitating
 */
public record PumpPoint(
        double speed,
        double flowRatio,
        double head,
        double dischargePressure,
        double efficiency,
        double power,
        double outletEnthalpy,
        double stallMargin,
        double cavitationMargin) {

    public PumpPoint {
        Require.positive("pump", "speed (rad/s)", speed);
        Require.finite("pump", "head (J/kg)", head);
        Require.positive("pump", "discharge pressure (Pa)", dischargePressure);
        Require.positive("pump", "efficiency (-)", efficiency);
        Require.finite("pump", "power (W)", power);
        Require.finite("pump", "outlet enthalpy (J/kg)", outletEnthalpy);
        Require.finite("pump", "stall margin (-)", stallMargin);
        Require.finite("pump", "cavitation margin (-)", cavitationMargin);
    }
}

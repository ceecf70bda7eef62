package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;

/**
 * Turbine gas dumped through a nozzle of its own.
 *
 * @param name which exhaust
 * @param massFlow mass flow (kg/s)
 * @param vacuumThrust delivered thrust in vacuum (N)
 * @param exitArea exit area (m²)
 * @param throatArea throat area (m²)
 */
public record ExhaustJet(String name, double massFlow, double vacuumThrust, double exitArea, double throatArea) {

    public ExhaustJet {
        Require.positive(name, "mass flow (kg/s)", massFlow);
        Require.positive(name, "vacuum thrust (N)", vacuumThrust);
        Require.positive(name, "exit area (m²)", exitArea);
        Require.positive(name, "throat area (m²)", throatArea);
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust there (N); never below that of a nozzle cut off at its throat pressure, zero at least
     */
    public double thrustAt(double ambientPressure) {
        return Math.max(0, vacuumThrust - ambientPressure * exitArea);
    }
}

package dev.penstock.vehicle.engine;

import dev.penstock.errors.Require;
import dev.penstock.quantities.Constants;

/**
 * An engine known by its headline figures only. Thrust falls with ambient pressure as F = F_vac − p_a·A_e.
 *
 * @param name name for tables
 * @param vacuumThrust vacuum thrust (N)
 * @param massFlow propellant flow (kg/s)
 * @param exitArea nozzle exit area (m²); zero gives a thrust that does not depend on altitude
 * @param chamberPressure chamber pressure (Pa); zero where it is not known
 * @param mixtureRatio oxidizer over fuel by mass (-)
 * @param oxidizer oxidizer as loaded
 * @param fuel fuel as loaded
 * @param mass dry mass (kg)
 */
public record GivenEngine(
        String name,
        double vacuumThrust,
        double massFlow,
        double exitArea,
        double chamberPressure,
        double mixtureRatio,
        LoadedPropellant oxidizer,
        LoadedPropellant fuel,
        double mass)
        implements EnginePerformance {

    public GivenEngine {
        Require.positive(name, "vacuum thrust (N)", vacuumThrust);
        Require.positive(name, "mass flow (kg/s)", massFlow);
        Require.notNegative(name, "exit area (m²)", exitArea);
        Require.notNegative(name, "chamber pressure (Pa)", chamberPressure);
        Require.positive(name, "mixture ratio (-)", mixtureRatio);
        Require.notNegative(name, "mass (kg)", mass);
    }

    /**
     * @param name name for tables
     * @param vacuumThrust vacuum thrust (N)
     * @param vacuumIsp vacuum specific impulse (s)
     * @param exitArea nozzle exit area (m²)
     * @param mixtureRatio oxidizer over fuel by mass (-)
     * @param oxidizer oxidizer as loaded
     * @param fuel fuel as loaded
     * @param mass dry mass (kg)
     * @return the engine
     */
    public static GivenEngine ofIsp(
            String name,
            double vacuumThrust,
            double vacuumIsp,
            double exitArea,
            double mixtureRatio,
            LoadedPropellant oxidizer,
            LoadedPropellant fuel,
            double mass) {
        double massFlow = vacuumThrust / (Require.positive(name, "Isp (s)", vacuumIsp) * Constants.STANDARD_GRAVITY);
        return new GivenEngine(name, vacuumThrust, massFlow, exitArea, 0, mixtureRatio, oxidizer, fuel, mass);
    }

    @Override
    public double thrustAt(double ambientPressure) {
        return vacuumThrust - ambientPressure * exitArea;
    }
}

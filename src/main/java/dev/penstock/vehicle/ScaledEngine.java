package dev.penstock.vehicle;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.LoadedPropellant;

/**
 * An engine as it would have to be: same thrust and mass, specific impulse changed by a factor.
 *
 * @param original the engine as it is
 * @param factor specific impulse over that of the original (-)
 */
record ScaledEngine(EnginePerformance original, double factor) implements EnginePerformance {

    ScaledEngine {
        Require.positive("engine", "factor on specific impulse (-)", factor);
    }

    @Override
    public String name() {
        return original.name();
    }

    @Override
    public double vacuumThrust() {
        return original.vacuumThrust();
    }

    @Override
    public double massFlow() {
        return original.massFlow() / factor;
    }

    @Override
    public double thrustAt(double ambientPressure) {
        return original.thrustAt(ambientPressure);
    }

    @Override
    public double mixtureRatio() {
        return original.mixtureRatio();
    }

    @Override
    public LoadedPropellant oxidizer() {
        return original.oxidizer();
    }

    @Override
    public LoadedPropellant fuel() {
        return original.fuel();
    }

    @Override
    public double mass() {
        return original.mass();
    }

    @Override
    public double exitArea() {
        return original.exitArea();
    }

    @Override
    public double chamberPressure() {
        return original.chamberPressure();
    }
}

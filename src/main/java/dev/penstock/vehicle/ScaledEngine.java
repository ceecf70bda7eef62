package dev.penstock.vehicle;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.LoadedPropellant;
import dev.penstock.vehicle.engine.StartNeeds;
import java.util.Optional;

/**
 * An engine as it would have to be, or may turn out to be: specific impulse, thrust and mass each changed by a factor.
 *
 * @param original the engine as it is
 * @param factor specific impulse over that of the original (-)
 * @param size thrust and exit area over those of the original (-)
 * @param heaviness mass over that of the original (-)
 */
public record ScaledEngine(EnginePerformance original, double factor, double size, double heaviness)
        implements EnginePerformance {

    public ScaledEngine {
        Require.positive("engine", "factor on specific impulse (-)", factor);
        Require.positive("engine", "factor on thrust (-)", size);
        Require.positive("engine", "factor on mass (-)", heaviness);
    }

    /** Same mass. */
    ScaledEngine(EnginePerformance original, double factor, double size) {
        this(original, factor, size, 1);
    }

    /** Same thrust and mass. */
    ScaledEngine(EnginePerformance original, double factor) {
        this(original, factor, 1, 1);
    }

    @Override
    public String name() {
        return original.name();
    }

    @Override
    public Optional<LoadedPropellant> diluent() {
        return original.diluent();
    }

    @Override
    public double diluentShare() {
        return original.diluentShare();
    }

    @Override
    public double vacuumThrust() {
        return size * original.vacuumThrust();
    }

    @Override
    public double massFlow() {
        return size * original.massFlow() / factor;
    }

    @Override
    public double thrustAt(double ambientPressure) {
        return size * original.thrustAt(ambientPressure);
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
        return heaviness * original.mass();
    }

    @Override
    public double exitArea() {
        return size * original.exitArea();
    }

    @Override
    public StartNeeds starts(StartNeeds.Bottle bottle) {
        return original.starts(bottle);
    }

    @Override
    public double chamberPressure() {
        return original.chamberPressure();
    }
}

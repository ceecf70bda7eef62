package dev.penstock.turbomachinery.start;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import java.util.List;

/**
 * Energy that the turbine must deliver until the engine can run on its own gas.
 * <pre>
 * E = I ω²/2 + P t/4
 * </pre>
 * The speed rises in a straight line in the time t; the pumps take power with its cube, P at the end.
 *
 * @param inertia I of the turning parts (kg·m²)
 * @param speed ω to reach (rad/s)
 * @param pumpPower P that the pumps take at that speed (W)
 * @param duration t of the rise (s)
 */
public record SpinUpDemand(double inertia, double speed, double pumpPower, double duration) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.spin-up-energy",
            "Energy to spin a turbopump up",
            "E = I ω²/2 + P t/4",
            "straight rise of speed; pump power with its cube",
            "the inertia is a first estimate, a factor of 2",
            List.of("common practice, no source"));

    public SpinUpDemand {
        Require.positive("spin-up", "inertia (kg·m²)", inertia);
        Require.positive("spin-up", "speed (rad/s)", speed);
        Require.notNegative("spin-up", "pump power (W)", pumpPower);
        Require.positive("spin-up", "duration (s)", duration);
    }

    /**
     * @param shaft shaft as balanced
     * @param speedFraction share of its design speed to reach (-), usually 0.3 to 0.6
     * @param duration of the rise (s), usually 0.5 to 2
     * @return what it takes
     */
    public static SpinUpDemand of(ShaftBalance shaft, double speedFraction, double duration) {
        Require.within(shaft.name(), "fraction of the design speed (-)", speedFraction, 0.01, 1);
        return new SpinUpDemand(
                shaft.rotor().inertia(),
                speedFraction * shaft.speed(),
                shaft.powerAbsorbed() * Math.pow(speedFraction, 3),
                duration);
    }

    /** @return energy to the end of the rise (J) */
    public double energy() {
        return 0.5 * inertia * speed * speed + 0.25 * pumpPower * duration;
    }

    /**
     * @param fraction y, share of the speed to reach (-)
     * @return dE/dy there (J): I ω² y + P t y³
     */
    double energyPerFraction(double fraction) {
        return inertia * speed * speed * fraction + pumpPower * duration * fraction * fraction * fraction;
    }
}

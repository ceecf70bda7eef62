package dev.penstock.turbomachinery.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Mass of an engine, part by part, and what relations for whole engines say of it.
 *
 * @param items parts
 * @param wholeEngine relations for whole engines, to compare with the sum
 * @param vacuumThrust vacuum thrust (N)
 */
public record EngineMass(List<MassItem> items, List<MassItem> wholeEngine, double vacuumThrust) {

    /** What the mass counts. */
    public static final String SCOPE =
            "The engine from the tank outlets to the nozzle exit, dry. Tanks, pressurant and propellant"
                    + " belong to the vehicle.";

    public EngineMass {
        Require.positive("engine mass", "vacuum thrust (N)", vacuumThrust);
        items = List.copyOf(items);
        wholeEngine = List.copyOf(wholeEngine);
    }

    /** @return sum of the parts (kg): scatters of the parts independent of each other, and what modelled parts miss together */
    public Spread total() {
        double mode = 0;
        double below = 0;
        double above = 0;
        double modelled = 0;
        for (MassItem item : items) {
            Spread mass = item.mass();
            mode += mass.mode();
            below += square(mass.mode() - mass.low());
            above += square(mass.high() - mass.mode());
            modelled += item.part().scatter().low() < 1 ? mass.mode() : 0;
        }
        Spread together = MassPart.ENGINE.scatter();
        below += square(modelled * (1 - together.low()));
        above += square(modelled * (together.high() - 1));
        return new Spread(mode - Math.sqrt(below), mode, mode + Math.sqrt(above));
    }

    /** @return vacuum thrust over weight (-) */
    public Spread thrustToWeight() {
        Spread mass = total();
        double thrust = vacuumThrust / Constants.STANDARD_GRAVITY;
        return new Spread(thrust / mass.high(), thrust / mass.mode(), thrust / mass.low());
    }

    private static double square(double x) {
        return x * x;
    }
}

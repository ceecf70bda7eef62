package dev.penstock.vehicle;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.GivenEngine;
import dev.penstock.vehicle.engine.LoadedPropellant;

/** Invented engines for the tests. */
public final class SampleEngines {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();

    /** Subcooled oxygen at 1250 kg/m³: density as in common practice, no source. */
    public static final LoadedPropellant COLD_OXYGEN =
            new LoadedPropellant(FLUIDS.propellant("oxygen"), 1250, 66.5, 3e5);

    /** Cooled kerosene at 840 kg/m³: density as in common practice, no source. */
    public static final LoadedPropellant COLD_KEROSENE = new LoadedPropellant(FLUIDS.propellant("rp-1"), 840, 266, 3e5);

    public static final LoadedPropellant OXYGEN = new LoadedPropellant(FLUIDS.propellant("oxygen"), 1140, 90.2, 3e5);

    public static final LoadedPropellant HYDROGEN = new LoadedPropellant(FLUIDS.propellant("hydrogen"), 71, 20.3, 3e5);

    private SampleEngines() {}

    /** An engine whose thrust does not depend on altitude, of negligible mass. */
    public static GivenEngine kerosene(double exhaustVelocity) {
        return GivenEngine.ofIsp(
                "kerosene engine",
                1e6,
                exhaustVelocity / Constants.STANDARD_GRAVITY,
                0,
                2.7,
                COLD_OXYGEN,
                COLD_KEROSENE,
                1000);
    }

    /** As above, with hydrogen at a mixture ratio of 6. */
    public static GivenEngine hydrogen(double exhaustVelocity) {
        return GivenEngine.ofIsp(
                "hydrogen engine", 1e6, exhaustVelocity / Constants.STANDARD_GRAVITY, 0, 6, OXYGEN, HYDROGEN, 2000);
    }
}

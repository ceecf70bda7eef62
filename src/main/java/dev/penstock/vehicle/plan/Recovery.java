package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Words;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.EnginePerformance;
import java.util.List;

/**
 * How a stage comes back, and the speed changes it keeps propellant for.
 *
 * <pre>m_kept = (m_dry + m_residual) (exp((Δv_back + Δv_entry)/c_vac + Δv_landing/c_sea) − 1)</pre>
 *
 * The rocket equation for the empty stage; the usual speed changes are common practice, no source, and are no substitute
 * for a flight of the stage.
 *
 * @param mode where it lands
 * @param boostback speed change that turns it back (m/s), in thin air
 * @param entry speed change that spares it heat and load (m/s), in thin air
 * @param landing speed change on landing (m/s), at sea level
 * @param open whether boost-back and landing are usual figures, which a flight replaces by those it finds needed
 */
public record Recovery(Mode mode, double boostback, double entry, double landing, Open open) {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.recovery-burns",
            "Propellant kept for bringing a stage back",
            "m_kept = (m_dry + m_residual)(exp((Δv_back + Δv_entry)/c_vac + Δv_landing/c_sea) − 1)",
            "first stages; usual speed changes 700 + 450 m/s downrange, 2000 + 500 + 450 m/s to the launch site",
            "±30 % of the speed changes",
            List.of("tsiolkovsky-1903", "common practice, no source"));

    /**
     * Which speed changes nobody stated.
     *
     * @param boostback whether that of the boost-back is a usual figure
     * @param landing whether that of the landing is
     */
    public record Open(boolean boostback, boolean landing) {

        /** All are stated. */
        public static final Open NONE = new Open(false, false);

        /** All are usual figures. */
        public static final Open ALL = new Open(true, true);
    }

    /** Where a stage lands. */
    public enum Mode {
        /** It is lost. */
        NONE,
        /** On a platform under its path. */
        DOWNRANGE,
        /** Where it started. */
        LAUNCH_SITE;

        /** @return as a file writes it */
        public String key() {
            return Words.of(this);
        }
    }

    /** The stage is lost. */
    public static final Recovery NONE = new Recovery(Mode.NONE, 0, 0, 0, Open.NONE);

    /** Stated speed changes. */
    public Recovery(Mode mode, double boostback, double entry, double landing) {
        this(mode, boostback, entry, landing, Open.NONE);
    }

    public Recovery {
        Require.within("recovery", "boost-back (m/s)", boostback, 0, 1e4);
        Require.within("recovery", "entry burn (m/s)", entry, 0, 1e4);
        Require.within("recovery", "landing burn (m/s)", landing, 0, 1e4);
    }

    /**
     * @param mode where the stage lands
     * @return the usual speed changes for it
     */
    public static Recovery usual(Mode mode) {
        return switch (mode) {
            case NONE -> NONE;
            case DOWNRANGE -> new Recovery(mode, 0, 700, 450, Open.ALL);
            case LAUNCH_SITE -> new Recovery(mode, 2000, 500, 450, Open.ALL);
        };
    }

    /**
     * @param boostbackNeeded boost-back that a flight finds needed (m/s)
     * @param landingNeeded landing burn that a flight finds needed (m/s)
     * @return the same with these where nothing was stated
     */
    public Recovery flown(double boostbackNeeded, double landingNeeded) {
        return new Recovery(
                mode,
                open.boostback() ? boostbackNeeded : boostback,
                entry,
                open.landing() ? landingNeeded : landing,
                open);
    }

    /**
     * @param engine engine of the stage
     * @return propellant kept over what is left of the stage without it (-)
     */
    public double propellantFactor(EnginePerformance engine) {
        if (mode == Mode.NONE) {
            return 0;
        }
        double vacuum = engine.vacuumThrust() / engine.massFlow();
        double seaLevel = engine.thrustAt(Constants.STANDARD_ATMOSPHERE) / engine.massFlow();
        return Math.expm1((boostback + entry) / vacuum + landing / seaLevel);
    }
}

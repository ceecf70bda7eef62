package dev.penstock.fluids.state;

/**
 * Single-phase states of one fluid that were found lately, with the slopes of its equation there: a search for another state nearby
 * starts from one of them and takes one or two evaluations instead of four. What is found does not depend on where the search
 * started, to 1e-10. Belongs to one series of questions, such as those of one balance; not thread-safe.
 */
public final class KnownStates {

    private static final int MEMORY = 32;

    /**
     * A state.
     *
     * @param pressure pressure (Pa)
     * @param density density (kg/m³)
     * @param temperature temperature (K)
     * @param enthalpy specific enthalpy (J/kg)
     * @param entropy specific entropy (J/(kg·K))
     * @param pressureByDensity ∂p/∂ρ at constant temperature (Pa·m³/kg)
     * @param pressureByTemperature ∂p/∂T at constant density (Pa/K)
     * @param isochoricHeatCapacity ∂u/∂T at constant density (J/(kg·K))
     * @param slopesAway how far away the slopes were taken, as a share of density or temperature (-)
     */
    public record Point(
            double pressure,
            double density,
            double temperature,
            double enthalpy,
            double entropy,
            double pressureByDensity,
            double pressureByTemperature,
            double isochoricHeatCapacity,
            double slopesAway) {}

    private final Point[] points = new Point[MEMORY];
    private int size;
    private boolean mixed;
    private int next;
    private long sought;
    private long saturations;
    private double saturated = Double.NaN;

    /** @return how many are known */
    public int size() {
        return size;
    }

    /**
     * @param index from 0 to one less than how many are known
     * @return a state
     */
    public Point get(int index) {
        return points[index];
    }

    /** @return whether the last state that was found from none of these lay between the phases, as the next one then may */
    public boolean mixed() {
        return mixed;
    }

    /**
     * Notes a state that none of these led to.
     *
     * @param pressure its pressure (Pa)
     * @param between whether it lies between the phases
     */
    public void sought(double pressure, boolean between) {
        sought++;
        mixed = between;
        if (between && pressure != saturated) {
            saturations++;
            saturated = pressure;
        }
    }

    /** @return states so far that none of these led to */
    public long sought() {
        return sought;
    }

    /** @return pressures so far at which such states lay between the phases, one after the other */
    public long saturations() {
        return saturations;
    }

    /** @param point a state that was found; takes the place of the oldest once there are {@value #MEMORY} */
    public void add(Point point) {
        points[next] = point;
        next = (next + 1) % MEMORY;
        size = Math.min(MEMORY, size + 1);
    }
}

package dev.penstock.fluids;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Tables kept for reuse. The box asked for is widened to a coarse lattice, so that the ranges of successive solutions,
 * which differ by a little, fall on the same table. Safe to share between threads; the least recently used table goes
 * first.
 */
public final class FluidTables {

    private static final int KEPT = 24;
    private static final double PRESSURE_LATTICE = Math.log(1.5);
    private static final double ENTHALPY_LATTICES = 6;

    private static final FluidTables SHARED = new FluidTables();

    private record Box(String fluid, long pressureLow, long pressureHigh, long low, long high, int size) {}

    private final Map<Box, FluidTable> tables = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Box, FluidTable> eldest) {
            return size() > KEPT;
        }
    };

    /** Starts with no table. */
    public FluidTables() {
        // tables are built when asked for
    }

    /** @return the tables of this process */
    public static FluidTables shared() {
        return SHARED;
    }

    /**
     * @param fluid fluid; two fluids with the same id are taken for the same
     * @param lowestPressure lowest pressure (Pa)
     * @param highestPressure highest pressure (Pa)
     * @param lowestEnthalpy lowest enthalpy (J/kg)
     * @param highestEnthalpy highest enthalpy (J/kg)
     * @return a table that covers the box and a little more
     */
    public synchronized FluidTable covering(
            Fluid fluid, double lowestPressure, double highestPressure, double lowestEnthalpy, double highestEnthalpy) {
        int size = (int) Math.ceil(Math.log((highestEnthalpy - lowestEnthalpy) / ENTHALPY_LATTICES) / Math.log(2));
        double step = Math.pow(2, size);
        Box box = new Box(
                fluid.id(),
                (long) Math.floor(Math.log(lowestPressure) / PRESSURE_LATTICE),
                (long) Math.ceil(Math.log(highestPressure) / PRESSURE_LATTICE),
                (long) Math.floor(lowestEnthalpy / step),
                (long) Math.ceil(highestEnthalpy / step),
                size);
        return tables.computeIfAbsent(
                box,
                b -> FluidTable.build(
                        fluid,
                        Math.exp(b.pressureLow * PRESSURE_LATTICE),
                        Math.min(
                                Math.exp(b.pressureHigh * PRESSURE_LATTICE),
                                fluid.range().maximumPressure()),
                        b.low * step,
                        b.high * step));
    }
}

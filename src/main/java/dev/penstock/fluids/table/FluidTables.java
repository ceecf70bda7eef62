package dev.penstock.fluids.table;

import dev.penstock.fluids.state.Fluid;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Tables kept for reuse. The box asked for is widened to a coarse lattice, so that the ranges of successive solutions,
 * which differ by a little, fall on the same table. A table is made of its fluid and its box alone, so which ones are kept
 * changes no number. Safe to share between threads, which wait for each other only over the same table; the least
 * recently used table goes first.
 */
public final class FluidTables {

    private static final int KEPT = 48;
    private static final double PRESSURE_LATTICE = Math.log(1.5);
    private static final double ENTHALPY_LATTICES = 6;

    private record Box(Fluid fluid, long pressureLow, long pressureHigh, long low, long high, int size) {

        FluidTable table() {
            double step = Math.pow(2, size);
            return FluidTable.build(
                    fluid,
                    Math.exp(pressureLow * PRESSURE_LATTICE),
                    Math.min(
                            Math.exp(pressureHigh * PRESSURE_LATTICE),
                            fluid.range().maximumPressure()),
                    low * step,
                    high * step);
        }
    }

    /** A table that is made by the first thread that wants it. */
    private static final class Place {

        private final Box box;
        private FluidTable table;

        Place(Box box) {
            this.box = box;
        }

        synchronized FluidTable table() {
            if (table == null) {
                table = box.table();
            }
            return table;
        }
    }

    private final Map<Box, Place> places = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Box, Place> eldest) {
            return size() > KEPT;
        }
    };

    /** Starts with no table. */
    public FluidTables() {
        // tables are built when asked for
    }

    /**
     * @param fluid fluid
     * @param lowestPressure lowest pressure (Pa)
     * @param highestPressure highest pressure (Pa)
     * @param lowestEnthalpy lowest enthalpy (J/kg)
     * @param highestEnthalpy highest enthalpy (J/kg)
     * @return a table that covers the box and a little more
     */
    public FluidTable covering(
            Fluid fluid, double lowestPressure, double highestPressure, double lowestEnthalpy, double highestEnthalpy) {
        int size = (int) Math.ceil(Math.log((highestEnthalpy - lowestEnthalpy) / ENTHALPY_LATTICES) / Math.log(2));
        double step = Math.pow(2, size);
        return place(new Box(
                        fluid,
                        (long) Math.floor(Math.log(lowestPressure) / PRESSURE_LATTICE),
                        (long) Math.ceil(Math.log(highestPressure) / PRESSURE_LATTICE),
                        (long) Math.floor(lowestEnthalpy / step),
                        (long) Math.ceil(highestEnthalpy / step),
                        size))
                .table();
    }

    private synchronized Place place(Box box) {
        return places.computeIfAbsent(box, Place::new);
    }
}

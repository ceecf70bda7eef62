package dev.penstock.fluids.table;

import dev.penstock.fluids.state.Fluid;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The tables of fluids, each made once in a process. A table is made of its fluid alone, and equal fluids answer alike, so who
 * asked first changes no number. Safe to share between threads, which wait for each other only over the same table; the least
 * recently used one goes first.
 */
public final class FluidTables {

    private static final int KEPT = 64;

    private static final Map<Fluid, Place> PLACES = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Fluid, Place> eldest) {
            return size() > KEPT;
        }
    };

    /** A table that is made by the first thread that wants it. */
    private static final class Place {

        private FluidTable table;

        synchronized FluidTable table(Fluid fluid) {
            if (table == null) {
                table = fluid.store()
                        .get(
                                "properties",
                                FluidTable.FORMAT,
                                numbers -> new FluidTable(fluid, numbers),
                                FluidTable::isOfItsModel,
                                () -> new TableBuilder(fluid).build());
            }
            return table;
        }
    }

    private FluidTables() {}

    /**
     * @param fluid fluid
     * @return its table
     */
    public static FluidTable of(Fluid fluid) {
        Place place;
        synchronized (PLACES) {
            place = PLACES.computeIfAbsent(fluid, f -> new Place());
        }
        return place.table(fluid);
    }
}

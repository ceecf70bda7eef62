package dev.penstock.fluids.table;

import dev.penstock.fluids.state.Fluid;
import dev.penstock.numerics.Cancellation;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The tables of fluids, each made once in a process. A table is made of its fluid alone, and equal fluids answer alike, so who
 * asked first changes no number. Safe to share between threads, which wait for each other only over the same table; the least
 * recently used one goes first.
 */
public final class FluidTables {

    private static final int KEPT = 64;
    private static final long PATIENCE_MILLISECONDS = 50;

    private static final Map<Fluid, Place> PLACES = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Fluid, Place> eldest) {
            return size() > KEPT;
        }
    };

    /** A table that is made by the first thread that wants it. */
    private static final class Place {

        private final ReentrantLock making = new ReentrantLock();
        private volatile FluidTable table;

        FluidTable table(Fluid fluid) {
            if (table == null) {
                takeTurn();
                try {
                    make(fluid);
                } finally {
                    making.unlock();
                }
            }
            return table;
        }

        /** Who waits for another's table can be stopped meanwhile. */
        private void takeTurn() {
            boolean interrupted = false;
            boolean mine = false;
            while (!mine) {
                Cancellation.check();
                try {
                    mine = making.tryLock(PATIENCE_MILLISECONDS, TimeUnit.MILLISECONDS);
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }

        private void make(Fluid fluid) {
            if (table == null) {
                table = fluid.store()
                        .get(
                                "properties",
                                FluidTable.FORMAT,
                                numbers -> new FluidTable(fluid, numbers),
                                FluidTable::isOfItsModel,
                                () -> new TableBuilder(fluid).build());
            }
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

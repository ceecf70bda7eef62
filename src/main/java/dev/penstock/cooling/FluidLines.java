package dev.penstock.cooling;

import dev.penstock.fluids.Fluid;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Boiling and pseudo-critical lines by fluid, each made once, and tables that grow with use. Safe to share between threads. */
final class FluidLines {

    private final Map<String, Optional<SaturationLine>> saturation = new ConcurrentHashMap<>();
    private final Map<String, PseudoCriticalLine> pseudoCritical = new ConcurrentHashMap<>();

    private final Map<String, Queue<CoolantTable>> tables = new ConcurrentHashMap<>();

    /** Hands out a table of the fluid that nobody else uses; give it back with {@link #giveBack}. */
    CoolantTable borrow(Fluid fluid) {
        CoolantTable table = tables.computeIfAbsent(fluid.id(), id -> new ConcurrentLinkedQueue<>())
                .poll();
        return table == null ? new CoolantTable(fluid, saturation(fluid)) : table;
    }

    void giveBack(Fluid fluid, CoolantTable table) {
        tables.get(fluid.id()).add(table);
    }

    Optional<SaturationLine> saturation(Fluid fluid) {
        return saturation.computeIfAbsent(fluid.id(), id -> SaturationLine.of(fluid));
    }

    PseudoCriticalLine pseudoCritical(Fluid fluid) {
        return pseudoCritical.computeIfAbsent(fluid.id(), id -> PseudoCriticalLine.of(fluid));
    }
}

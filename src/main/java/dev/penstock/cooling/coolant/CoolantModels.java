package dev.penstock.cooling.coolant;

import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.table.FluidTables;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Boiling lines, pseudo-critical lines and property tables of fluids, each made once, of nothing but its fluid and range. Safe
 * to share between threads.
 */
public final class CoolantModels {

    private final Map<Fluid, Optional<SaturationLine>> saturation = new ConcurrentHashMap<>();
    private final Map<Fluid, PseudoCriticalLine> pseudoCritical = new ConcurrentHashMap<>();
    private final FluidTables tables = new FluidTables();

    public Optional<SaturationLine> saturation(Fluid fluid) {
        return saturation.computeIfAbsent(fluid, SaturationLine::of);
    }

    public PseudoCriticalLine pseudoCritical(Fluid fluid) {
        return pseudoCritical.computeIfAbsent(fluid, PseudoCriticalLine::of);
    }

    public FluidTables tables() {
        return tables;
    }
}

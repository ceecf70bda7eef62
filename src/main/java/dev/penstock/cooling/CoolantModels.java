package dev.penstock.cooling;

import dev.penstock.fluids.Fluid;
import dev.penstock.fluids.FluidTables;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Boiling lines, pseudo-critical lines and property tables of fluids, each made once, of nothing but its fluid and range. Safe
 * to share between threads.
 */
final class CoolantModels {

    private final Map<Fluid, Optional<SaturationLine>> saturation = new ConcurrentHashMap<>();
    private final Map<Fluid, PseudoCriticalLine> pseudoCritical = new ConcurrentHashMap<>();
    private final FluidTables tables = new FluidTables();

    Optional<SaturationLine> saturation(Fluid fluid) {
        return saturation.computeIfAbsent(fluid, SaturationLine::of);
    }

    PseudoCriticalLine pseudoCritical(Fluid fluid) {
        return pseudoCritical.computeIfAbsent(fluid, PseudoCriticalLine::of);
    }

    FluidTables tables() {
        return tables;
    }
}

package dev.penstock.cooling.coolant;

import dev.penstock.fluids.state.Fluid;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Boiling lines and pseudo-critical lines of fluids, each made once, of nothing but its fluid. Safe to share between threads.
 */
public final class CoolantModels {

    private final Map<Fluid, Optional<SaturationLine>> saturation = new ConcurrentHashMap<>();
    private final Map<Fluid, PseudoCriticalLine> pseudoCritical = new ConcurrentHashMap<>();

    public Optional<SaturationLine> saturation(Fluid fluid) {
        return saturation.computeIfAbsent(fluid, SaturationLine::of);
    }

    public PseudoCriticalLine pseudoCritical(Fluid fluid) {
        return pseudoCritical.computeIfAbsent(fluid, PseudoCriticalLine::of);
    }
}

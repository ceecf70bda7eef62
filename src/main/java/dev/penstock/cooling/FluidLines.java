package dev.penstock.cooling;

import dev.penstock.fluids.Fluid;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Boiling and pseudo-critical lines by fluid, each made once. Safe to share between threads. */
final class FluidLines {

    private final Map<String, Optional<SaturationLine>> saturation = new ConcurrentHashMap<>();
    private final Map<String, PseudoCriticalLine> pseudoCritical = new ConcurrentHashMap<>();

    Optional<SaturationLine> saturation(Fluid fluid) {
        return saturation.computeIfAbsent(fluid.id(), id -> SaturationLine.of(fluid));
    }

    PseudoCriticalLine pseudoCritical(Fluid fluid) {
        return pseudoCritical.computeIfAbsent(fluid.id(), id -> PseudoCriticalLine.of(fluid));
    }
}

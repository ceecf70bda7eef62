package dev.penstock.cooling.coolant;

import dev.penstock.fluids.state.Fluid;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Boiling lines and pseudo-critical lines of fluids, each made once, of nothing but its fluid. Safe to share between threads; counts
 * the marches of whom it was made for.
 */
public final class CoolantModels {

    private final Map<Fluid, Optional<SaturationLine>> saturation;
    private final Map<Fluid, PseudoCriticalLine> pseudoCritical;
    private final AtomicInteger marches = new AtomicInteger();
    private final AtomicLong work = new AtomicLong();

    public CoolantModels() {
        this(new ConcurrentHashMap<>(), new ConcurrentHashMap<>());
    }

    private CoolantModels(
            Map<Fluid, Optional<SaturationLine>> saturation, Map<Fluid, PseudoCriticalLine> pseudoCritical) {
        this.saturation = saturation;
        this.pseudoCritical = pseudoCritical;
    }

    /** @return the same lines for somebody whose marches are counted from none */
    public CoolantModels counting() {
        return new CoolantModels(saturation, pseudoCritical);
    }

    /** Notes the begin of a march through a jacket. */
    public void marching() {
        marches.incrementAndGet();
    }

    /**
     * Notes what a march has taken since the last note.
     *
     * @param effort in bulk states from a table
     */
    public void worked(long effort) {
        work.addAndGet(effort);
    }

    /** @return effort of the marches so far, in bulk states from a table */
    public long work() {
        return work.get();
    }

    /** @return marches so far */
    public int marches() {
        return marches.get();
    }

    public Optional<SaturationLine> saturation(Fluid fluid) {
        return saturation.computeIfAbsent(fluid, SaturationLine::of);
    }

    public PseudoCriticalLine pseudoCritical(Fluid fluid) {
        return pseudoCritical.computeIfAbsent(fluid, PseudoCriticalLine::of);
    }
}

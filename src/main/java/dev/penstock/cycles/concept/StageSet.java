package dev.penstock.cycles.concept;

import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import java.util.Map;

/**
 * Kinds and stages of all machines of an engine: whole-numbered choices between which a solver can jump.
 *
 * @param pumps settled pumps by id
 * @param turbines settled turbines by id
 */
public record StageSet(Map<String, PumpDesign> pumps, Map<String, TurbineDesign> turbines) {

    public StageSet {
        pumps = Map.copyOf(pumps);
        turbines = Map.copyOf(turbines);
    }

    /** Whether every machine has the same kind and stages, whatever else its design says. */
    public boolean sameAs(StageSet other) {
        return pumps.keySet().equals(other.pumps.keySet())
                && turbines.keySet().equals(other.turbines.keySet())
                && pumps.entrySet().stream().allMatch(e -> same(e.getValue(), other.pumps.get(e.getKey())))
                && turbines.entrySet().stream().allMatch(e -> same(e.getValue(), other.turbines.get(e.getKey())));
    }

    /** All stages together. */
    public int stages() {
        return pumps.values().stream().mapToInt(p -> p.stages().orElse(0)).sum()
                + turbines.values().stream().mapToInt(t -> t.stages().orElse(0)).sum();
    }

    private static boolean same(PumpDesign a, PumpDesign b) {
        return a.type() == b.type() && a.stages().equals(b.stages());
    }

    private static boolean same(TurbineDesign a, TurbineDesign b) {
        return a.type() == b.type() && a.stages().equals(b.stages());
    }
}

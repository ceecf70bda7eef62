package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * Mass and energy added up again at every component from the station table alone, independent of the equations that the
 * solver closed.
 *
 * @param items one per component, in the order of the arrangement, with the whole engine last
 */
public record EnergyAudit(List<Item> items) {

    /**
     * Imbalance of one component.
     *
     * @param component id of the component, or "engine" for the whole
     * @param massImbalance flow in minus flow out, over the larger (-)
     * @param energyImbalance enthalpy flow, heat and work in minus out, over the sum of their magnitudes (-)
     */
    public record Item(String component, double massImbalance, double energyImbalance) {

        public Item {
            Require.finite(component, "mass imbalance (-)", massImbalance);
            Require.finite(component, "energy imbalance (-)", energyImbalance);
        }
    }

    public EnergyAudit {
        items = List.copyOf(items);
    }

    /** @return largest relative imbalance of mass or energy (-) */
    public double worst() {
        double worst = 0;
        for (Item item : items) {
            worst = Math.max(worst, Math.max(Math.abs(item.massImbalance()), Math.abs(item.energyImbalance())));
        }
        return worst;
    }
}

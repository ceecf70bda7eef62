package dev.penstock.cycles.sheet;

import dev.penstock.cycles.origin.PartKey;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Adds up mass and energy again from the station table, the machines as sized and the jackets as solved. Nothing of the
 * solver's own equations is used.
 * <pre>
 * mass:    Σ ṁ_in = Σ ṁ_out
 * energy:  Σ (ṁ h)_in + heat + work = Σ (ṁ h)_out        for every component and for the whole engine
 * </pre>
 */
public final class Auditor {

    /** Largest relative imbalance of a result (-). */
    public static final double ALLOWED = 1e-8;

    private final Map<Integer, Station> stations = new HashMap<>();
    private final List<Component> components;

    public Auditor(List<Station> stations, List<Component> components) {
        stations.forEach(s -> this.stations.put(s.number(), s));
        this.components = components;
    }

    /**
     * @param heatLoads heat into each jacket, as the jacket was solved (W)
     * @param shafts shafts with the power of the machines as sized
     */
    public EnergyAudit audit(Map<PartKey, Double> heatLoads, Collection<ShaftBalance> shafts) {
        List<EnergyAudit.Item> items = new ArrayList<>();
        for (Component component : components) {
            if (!component.inlets().isEmpty() && !component.outlets().isEmpty()) {
                items.add(item(
                        component.id(),
                        component.inlets(),
                        component.outlets(),
                        heatOf(component, heatLoads),
                        component.workIn()));
            }
        }
        double work = 0;
        for (ShaftBalance shaft : shafts) {
            double fromGas = shaft.drivers().isEmpty() ? 0 : shaft.powerDelivered();
            work += shaft.powerAbsorbed() - fromGas;
            items.add(new EnergyAudit.Item(shaft.name(), 0, shaft.imbalance()));
        }
        List<Integer> sources = ends(true);
        List<Integer> sinks = ends(false);
        items.add(item("engine", sources, sinks, 0, work));
        return new EnergyAudit(items);
    }

    public static void check(EnergyAudit audit) {
        for (EnergyAudit.Item item : audit.items()) {
            if (!(Math.abs(item.massImbalance()) <= ALLOWED)) {
                throw new ConservationViolated("mass of " + item.component(), item.massImbalance(), ALLOWED);
            }
            if (!(Math.abs(item.energyImbalance()) <= ALLOWED)) {
                throw new ConservationViolated("energy of " + item.component(), item.energyImbalance(), ALLOWED);
            }
        }
    }

    private static double heatOf(Component component, Map<PartKey, Double> heatLoads) {
        return switch (component.kind()) {
            case JACKET -> heatLoads.get(component.key());
            case CHAMBER ->
                -heatLoads.values().stream().mapToDouble(Double::doubleValue).sum();
            default -> component.heatIn();
        };
    }

    /** Stations behind tanks, or before nozzles. */
    private List<Integer> ends(boolean sources) {
        List<Integer> numbers = new ArrayList<>();
        for (Component component : components) {
            if (sources && component.inlets().isEmpty()) {
                numbers.addAll(component.outlets());
            }
            if (!sources && component.outlets().isEmpty()) {
                numbers.addAll(component.inlets());
            }
        }
        return numbers;
    }

    private EnergyAudit.Item item(String id, List<Integer> in, List<Integer> out, double heat, double work) {
        double massIn = 0;
        double massOut = 0;
        double energy = heat + work;
        double scale = Math.abs(heat) + Math.abs(work);
        for (int number : in) {
            Station s = stations.get(number);
            massIn += s.massFlow();
            energy += s.massFlow() * s.enthalpy();
            scale += Math.abs(s.massFlow() * s.enthalpy());
        }
        for (int number : out) {
            Station s = stations.get(number);
            massOut += s.massFlow();
            energy -= s.massFlow() * s.enthalpy();
            scale += Math.abs(s.massFlow() * s.enthalpy());
        }
        return new EnergyAudit.Item(
                id,
                (massIn - massOut) / Math.max(Math.max(massIn, massOut), Double.MIN_NORMAL),
                energy / Math.max(scale, Double.MIN_NORMAL));
    }
}

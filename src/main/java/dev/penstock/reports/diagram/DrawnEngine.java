package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.Machines;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.ShaftKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An engine as its diagrams show it: the parts and stations of the balance, and beside them what the balance keeps in other
 * results: what turns boost pumps, with the liquid that passes a main pump twice, what keeps tanks under pressure, the battery of
 * motors, and what keeps the end of the nozzle from burning.
 */
public final class DrawnEngine {

    final List<Component> components;
    final List<Station> stations;
    final List<StationPlate> plates = new ArrayList<>();
    final List<FlowDiagram.Shaft> shafts;
    private final Map<String, String> notes = new LinkedHashMap<>();
    private final Map<String, String> signs = new LinkedHashMap<>();

    private DrawnEngine(List<Component> components, List<Station> stations, List<FlowDiagram.Shaft> shafts) {
        this.components = new ArrayList<>(components);
        this.stations = List.copyOf(stations);
        this.shafts = new ArrayList<>(shafts);
        stations.forEach(s -> plates.add(StationPlate.of(s)));
    }

    /**
     * @param balance balanced engine
     * @return the engine to be drawn
     */
    public static DrawnEngine of(EngineBalance balance) {
        DrawnEngine drawn = of(withShaftPower(balance), balance.stations(), shafts(balance));
        BoostDrives.add(balance, drawn);
        Pressurant.add(balance, drawn);
        Battery.add(balance, drawn);
        NozzleWall.Drawn nozzle = NozzleWall.of(balance);
        drawn.note(PartKey.NOZZLE, nozzle.caption());
        drawn.signs.put(PartKey.NOZZLE.id(), nozzle.wall().sign());
        return drawn;
    }

    /**
     * @param components parts of an arrangement
     * @param stations its stations
     * @param shafts shafts that join pumps and turbines
     * @return the arrangement to be drawn, without anything beside it
     */
    public static DrawnEngine of(List<Component> components, List<Station> stations, List<FlowDiagram.Shaft> shafts) {
        return new DrawnEngine(components, stations, shafts);
    }

    /** A pump whose liquid drives a boost pump takes more at its shaft than its liquid keeps; readers expect the former. */
    private static List<Component> withShaftPower(EngineBalance balance) {
        return balance.components().stream()
                .map(c -> balance.machines()
                        .pump(c.key())
                        .map(p -> new Component(c.key(), c.inlets(), c.outlets(), c.heatIn(), p.power()))
                        .orElse(c))
                .toList();
    }

    private static List<FlowDiagram.Shaft> shafts(EngineBalance balance) {
        Machines machines = balance.machines();
        List<FlowDiagram.Shaft> shafts = new ArrayList<>();
        machines.shafts()
                .forEach((key, shaft) -> shafts.add(
                        new FlowDiagram.Shaft(ids(machines.driven(shaft)), ids(driving(machines, key, shaft)))));
        return shafts;
    }

    /** Turbines; where there are none and the engine has motors, its motor. */
    private static List<PartKey> driving(Machines machines, ShaftKey key, ShaftBalance shaft) {
        return shaft.turbines().isEmpty() ? List.of(PartKey.motor(key)) : machines.driving(shaft);
    }

    private static List<String> ids(List<PartKey> parts) {
        return parts.stream().map(PartKey::id).toList();
    }

    /** @return whether gas that keeps tanks under pressure is drawn */
    public boolean hasPressurant() {
        return plates.stream().anyMatch(p -> p.content() == Content.PRESSURANT);
    }

    /** @return whether liquid is drawn that turns a boost pump and passes its main pump twice */
    public boolean hasLiquidDrawnOff() {
        return plates.stream().anyMatch(p -> !p.numbered() && p.content() != Content.PRESSURANT);
    }

    // ---- what stands beside a balance

    /** Number of the next plate that is no station. */
    int next() {
        return -1 - (int) plates.stream().filter(p -> !p.numbered()).count();
    }

    Component part(PartKey key) {
        return components.stream().filter(c -> c.key().equals(key)).findFirst().orElseThrow();
    }

    Station station(int number) {
        return stations.stream().filter(s -> s.number() == number).findFirst().orElseThrow();
    }

    /** Lets more flow into and out of a part, behind what the balance has there. */
    void join(PartKey key, List<Integer> inlets, List<Integer> outlets) {
        components.replaceAll(c -> c.key().equals(key)
                ? new Component(c.key(), both(c.inlets(), inlets), both(c.outlets(), outlets), c.heatIn(), c.workIn())
                : c);
    }

    private static List<Integer> both(List<Integer> one, List<Integer> other) {
        List<Integer> both = new ArrayList<>(one);
        both.addAll(other);
        return both;
    }

    /** What is written beside a part instead of its usual figure. */
    void note(PartKey key, String note) {
        notes.put(key.id(), note);
    }

    /** SVG elements of a part's sign: that of its kind, and what it has of its own. */
    String sign(Component component, String colour) {
        return Symbols.of(component.kind(), colour) + signs.getOrDefault(component.id(), "");
    }

    /** The figure to read beside a part; empty if its plates say all. */
    String figure(Component component, DrawnStates states) {
        return Optional.ofNullable(notes.get(component.id()))
                .orElseGet(() -> Symbols.figure(component, states::firstStation));
    }
}

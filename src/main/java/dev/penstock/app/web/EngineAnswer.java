package dev.penstock.app.web;

import dev.penstock.cooling.JacketResult;
import dev.penstock.cycles.BalanceTrail;
import dev.penstock.cycles.Component;
import dev.penstock.cycles.ConceptInput;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.Trail;
import dev.penstock.reports.EngineCharts;
import dev.penstock.reports.Figure;
import dev.penstock.reports.Figures;
import dev.penstock.study.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the page of a concept is told about a balanced engine. */
final class EngineAnswer {

    private EngineAnswer() {}

    /**
     * @param balance balanced engine
     * @return figures, stations, limits, inputs and the flow diagram
     */
    static Map<String, Object> of(EngineBalance balance) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", balance.concept().name());
        map.put("description", balance.concept().description());
        map.put(
                "kind",
                balance.concept().cycle().title() + ": "
                        + balance.concept().oxidizer().fluid().name() + " and "
                        + balance.concept().fuel().fluid().name());
        map.put("measures", measures(balance));
        Trail trail = BalanceTrail.of(balance);
        Map<String, Object> paths = new LinkedHashMap<>();
        for (Measure measure : Measure.ALL) {
            Stream.of("engine.", "cooling.")
                    .map(part -> part + measure.key())
                    .filter(trail::has)
                    .findFirst()
                    .ifPresent(path -> paths.put(measure.key(), path));
        }
        map.put("paths", paths);
        map.put("missed", (int) balance.limits().stream().filter(l -> !l.met()).count());
        map.put("residual", Figures.significant(balance.residualWorst(), 2));
        map.put(
                "warnings",
                balance.warnings().stream()
                        .distinct()
                        .map(w -> Map.of("source", w.source(), "message", w.message()))
                        .toList());
        map.put("limits", limits(balance));
        map.put("stations", stations(balance));
        map.put("machines", machines(balance));
        map.put("flow", figure(new EngineCharts(balance, "flow").flow()));
        return map;
    }

    /**
     * @param balance balanced engine
     * @return its charts
     */
    static Map<String, Object> charts(EngineBalance balance) {
        EngineCharts charts = new EngineCharts(balance, "chart");
        List<Map<String, Object>> figures = new ArrayList<>();
        figures.add(figure(charts.pressures()));
        if (!balance.shafts().isEmpty()) {
            figures.add(figure(charts.power()));
        }
        figures.add(figure(charts.losses()));
        figures.add(figure(charts.altitude()));
        balance.cooling().ifPresent(jacket -> figures.add(figure(charts.jacket(jacket))));
        return Map.of("figures", figures);
    }

    /**
     * @param balance balanced engine
     * @return what its jacket does; a note alone if it has none
     */
    static Map<String, Object> cooling(EngineBalance balance) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", balance.concept().name());
        if (balance.cooling().isEmpty()) {
            map.put("note", balance.concept().name() + " has no cooling jacket.");
            return map;
        }
        JacketResult jacket = balance.cooling().get();
        map.put("figures", List.of(figure(new EngineCharts(balance, "jacket").jacket(jacket))));
        map.put(
                "tables",
                List.of(new Grid("Jacket", "<quantity", "value")
                        .row(
                                "coolant in",
                                Figures.kelvin(jacket.inlet().temperature()) + " K, "
                                        + Figures.bar(jacket.inlet().pressure()) + " bar")
                        .row(
                                "coolant out",
                                Figures.kelvin(jacket.outlet().temperature()) + " K, "
                                        + Figures.bar(jacket.outlet().pressure()) + " bar")
                        .row("temperature rise", Figures.kelvin(jacket.coolantTemperatureRise()) + " K")
                        .row("pressure drop", Figures.bar(jacket.pressureDrop()) + " bar")
                        .row("heat taken up", Figures.withUnit(jacket.heatLoad(), "W"))
                        .row("peak heat flux", Figures.withUnit(jacket.peakHeatFlux(), "W/m²"))
                        .row("hottest wall", Figures.kelvin(jacket.peakWallTemperature()) + " K")
                        .map()));
        return map;
    }

    static Map<String, Object> figure(Figure figure) {
        return Map.of("svg", figure.themed(), "caption", figure.caption());
    }

    /** A figure as the pages show it; its raw value tells how far it has moved. */
    static List<Map<String, Object>> measures(EngineBalance balance) {
        List<Map<String, Object>> measures = new ArrayList<>();
        for (Measure measure : Measure.ALL) {
            measure.value().apply(balance).ifPresent(value -> {
                boolean margin = measure.key().equals("tightest_margin");
                measures.add(Map.of(
                        "key", measure.key(),
                        "name", measure.name(),
                        "better", measure.better(),
                        "value", value,
                        "text", margin ? Figures.margin(value) : Figures.withUnit(value, measure.unit())));
            });
        }
        return measures;
    }

    private static List<Map<String, Object>> limits(EngineBalance balance) {
        List<Map<String, Object>> limits = new ArrayList<>();
        for (LimitCheck l : balance.limits().stream()
                .sorted(Comparator.comparingDouble(LimitCheck::margin))
                .toList()) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("name", Figures.limitName(l.name()));
            map.put("value", Figures.withUnit(l.value(), l.unit()));
            map.put("bound", (l.upper() ? "at most " : "at least ") + Figures.withUnit(l.limit(), l.unit()));
            map.put("margin", Figures.margin(l.margin()));
            map.put("met", l.met());
            map.put("source", l.source());
            map.put("path", "limits." + l.name().replace(' ', '-') + ".margin");
            component(balance.components(), l.name()).ifPresent(id -> map.put("component", id));
            limits.add(map);
        }
        return limits;
    }

    /**
     * @param components components of the engine
     * @param limit dotted name of a limit, for example "fuel pump.tip_speed"
     * @return id of the component where it applies
     */
    static Optional<String> component(List<Component> components, String limit) {
        String[] words = limit.toLowerCase(java.util.Locale.ROOT).split("[^a-z]+");
        List<String> all = List.of(words);
        Optional<Component> best = Optional.empty();
        int most = 0;
        for (Component component : components) {
            List<String> own = List.of((component.id() + " " + component.label())
                    .toLowerCase(java.util.Locale.ROOT)
                    .split("[^a-z]+"));
            boolean named = limit.startsWith(component.label() + ".");
            int shared = named ? words.length : 0;
            for (String word : all) {
                String singular = word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
                String place = singular.equals("wall") || singular.equals("cooling") ? "jacket" : singular;
                if (own.contains(word) || own.contains(place)) {
                    shared++;
                }
            }
            if (shared > most) {
                most = shared;
                best = Optional.of(component);
            }
        }
        return best.map(Component::id);
    }

    private static Map<String, Object> stations(EngineBalance balance) {
        Grid grid =
                new Grid("Stations", "no.", "<station", "<medium", "pressure (bar)", "temperature (K)", "flow (kg/s)");
        balance.stations()
                .forEach(s -> grid.row(
                        Integer.toString(s.number()),
                        s.name(),
                        s.medium(),
                        Figures.bar(s.pressure()),
                        Figures.kelvin(s.temperature()),
                        Figures.massFlow(s.massFlow())));
        return grid.map();
    }

    private static Map<String, Object> machines(EngineBalance balance) {
        Grid grid = new Grid("Pumps and turbines", "<machine", "power", "speed (rpm)", "efficiency", "diameter (mm)");
        balance.pumps()
                .forEach(p -> grid.row(
                        p.name(),
                        Figures.power(p.power()),
                        Figures.rpm(p.speed()),
                        Figures.percent(p.efficiency()),
                        Figures.significant(p.impellerDiameter() * 1e3, 3)));
        balance.turbines()
                .forEach(t -> grid.row(
                        t.name(),
                        Figures.power(t.power()),
                        Figures.rpm(t.speed()),
                        Figures.percent(t.efficiency()),
                        Figures.significant(t.meanDiameter() * 1e3, 3)));
        return grid.map();
    }

    /**
     * @param inputs inputs of a concept
     * @param text text of its file
     * @param changes values that replace or add to what the text says
     * @return the inputs as a page offers them for change
     */
    static List<Map<String, Object>> inputs(List<ConceptInput> inputs, String text, Map<String, String> changes) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (ConceptInput input : inputs) {
            String plain = input.unit().isEmpty() || input.unit().equals("-")
                    ? input.value()
                    : input.value() + " " + input.unit();
            String file = TomlEdit.written(text, input.key()).orElse(plain);
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("key", input.key());
            map.put("written", changes.getOrDefault(input.key(), file));
            map.put("file", file);
            map.put("si", plain);
            map.put("given", input.given());
            map.put("source", input.source());
            list.add(map);
        }
        return list;
    }
}

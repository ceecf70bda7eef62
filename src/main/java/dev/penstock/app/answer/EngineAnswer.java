package dev.penstock.app.answer;

import dev.penstock.app.edit.TomlEdit;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.quantities.UnitSystem;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.engine.EngineCharts;
import dev.penstock.reports.engine.LimitsSentence;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.study.Measure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What the page of a concept is told about a balanced engine. */
public final class EngineAnswer {

    private static final Set<String> AS_WRITTEN = Set.of("m", "kg");

    private EngineAnswer() {}

    /**
     * @param balance balanced engine
     * @return figures, stations and limits; drawings are asked for when these are on the screen
     */
    public static Map<String, Object> of(EngineBalance balance) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", balance.concept().name());
        map.put("description", balance.concept().description());
        map.put(
                "kind",
                balance.concept().cycle().title() + ": "
                        + Propellant.pair(
                                balance.concept().oxidizer(), balance.concept().fuel()));
        map.put("measures", measures(balance, measure -> Map.of()));
        map.put("missed", LimitsSentence.missed(balance));
        map.put("limitsSentence", LimitsSentence.of(balance));
        map.put("doubts", balance.doubts().size());
        map.put("residual", new Cell(Notation.significant(balance.residualWorst(), 2), "residual_worst").map());
        map.put("warnings", warnings(balance.warnings()));
        map.put("limits", limits(balance));
        map.put("tables", tables(balance));
        return map;
    }

    /**
     * @param balance balanced engine
     * @return its flow diagram
     */
    public static Map<String, Object> flow(EngineBalance balance) {
        return Map.of("flow", figure(new EngineCharts(balance, "flow").flow()));
    }

    /**
     * @param balance balanced engine
     * @param before the same without its changes, if it has any and closes without them
     * @return its charts, each to be drawn when it is asked for, in the units of this thread's reader
     */
    public static List<Supplier<Map<String, Object>>> charts(EngineBalance balance, Optional<EngineBalance> before) {
        EngineCharts charts = new EngineCharts(balance, "chart", before);
        List<Supplier<Drawing>> drawings = new ArrayList<>();
        drawings.add(charts::pressures);
        if (!balance.shafts().isEmpty()) {
            drawings.add(charts::power);
        }
        drawings.add(charts::losses);
        drawings.add(charts::altitude);
        balance.cooling().forEach(jacket -> drawings.add(() -> charts.jacket(jacket)));
        UnitSystem units = UnitSystem.chosen();
        return drawings.stream()
                .map(d -> (Supplier<Map<String, Object>>) () -> figure(units.reading(d)))
                .toList();
    }

    /**
     * @param balance balanced engine
     * @param before the same without its changes, if it has any and closes without them
     * @return what its jackets do; a note alone if it has none
     */
    public static Map<String, Object> cooling(EngineBalance balance, Optional<EngineBalance> before) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", balance.concept().name());
        if (balance.cooling().isEmpty()) {
            map.put("note", balance.concept().name() + " has no cooling jacket.");
            return map;
        }
        EngineCharts charts = new EngineCharts(balance, "jacket", before);
        List<Map<String, Object>> figures = new ArrayList<>();
        List<Map<String, Object>> tables = new ArrayList<>();
        for (JacketResult jacket : balance.cooling()) {
            figures.add(figure(charts.jacket(jacket)));
            tables.add(Grid.of(EngineTables.cooling(jacket)));
            tables.add(Grid.of(EngineTables.profile(jacket)));
        }
        map.put("figures", figures);
        map.put("tables", tables);
        return map;
    }

    public static Map<String, Object> figure(Drawing figure) {
        return Map.of("svg", figure.themed(), "caption", figure.caption());
    }

    public static List<Map<String, Object>> warnings(List<Warning> warnings) {
        return FigureJson.each(
                CheckFigures.WARNINGS, warnings.stream().distinct().toList());
    }

    /** Figures of engines side by side: each also says whether none of the others is better by it. */
    public static List<Map<String, Object>> measures(EngineBalance balance, List<EngineBalance> among) {
        return measures(balance, measure -> Map.of("best", measure.best(balance, among)));
    }

    /** Figures as the pages show them; a raw value tells how far it has moved. */
    private static List<Map<String, Object>> measures(
            EngineBalance balance, Function<Measure, Map<String, Object>> further) {
        List<Map<String, Object>> measures = new ArrayList<>();
        for (Measure measure : Measure.ALL) {
            measure.of(balance).ifPresent(value -> {
                Map<String, Object> map = new LinkedHashMap<>();
                map.put("key", measure.key());
                map.put("name", measure.name());
                map.put("better", measure.better());
                map.put("value", value);
                map.put("path", measure.path());
                map.put("text", measure.text(balance));
                map.putAll(further.apply(measure));
                measures.add(map);
            });
        }
        return measures;
    }

    private static List<Map<String, Object>> tables(EngineBalance balance) {
        return Stream.of(
                        EngineTables.stations(balance),
                        EngineTables.pumps(balance),
                        EngineTables.turbines(balance),
                        EngineTables.shafts(balance),
                        EngineTables.losses(balance))
                .filter(table -> !table.rows().isEmpty())
                .map(Grid::of)
                .toList();
    }

    private static List<Map<String, Object>> limits(EngineBalance balance) {
        List<Map<String, Object>> limits = new ArrayList<>();
        for (LimitCheck l :
                balance.limits().stream().sorted(LimitCheck.TIGHTEST_FIRST).toList()) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("name", CheckFigures.title(l));
            map.put("value", Cell.of(CheckFigures.LIMITS, "value", l, l.path()));
            map.put("bound", Cell.of(CheckFigures.LIMITS, "limit", l, l.path()));
            map.put("margin", Cell.of(CheckFigures.LIMITS, "margin", l, l.path()));
            map.put("met", l.met());
            map.put("verdict", l.verdict());
            map.put("source", l.source());
            balance.origins()
                    .place(l.owner())
                    .ifPresent(place -> map.put("component", place.part().id()));
            limits.add(map);
        }
        return limits;
    }

    /** An input in the units of the reader; words as they stand. Metric lengths and masses are read as files write them. */
    private static String read(InputValue input) {
        OptionalDouble number = input.number();
        if (UnitSystem.chosen() == UnitSystem.METRIC && AS_WRITTEN.contains(input.unit())) {
            return input.readable();
        }
        return number.isPresent() && !input.unit().isEmpty()
                ? Notation.ofUnit(input.unit()).writeWithUnit(number.getAsDouble(), 5)
                : input.value();
    }

    /**
     * @param inputs inputs of a concept or vehicle
     * @param text text of its file
     * @param changes values that replace or add to what the text says
     * @param writing how an input is written that the text does not have
     * @param files ids of the files that an input may name, by its key; none where it names no file
     * @return the inputs as a page offers them for change
     */
    public static List<Map<String, Object>> inputs(
            List<InputValue> inputs,
            String text,
            Map<String, String> changes,
            Function<InputValue, String> writing,
            Function<String, List<String>> files) {
        Map<String, String> written = TomlEdit.written(text);
        List<Map<String, Object>> list = new ArrayList<>();
        for (InputValue input : inputs) {
            String file = written.containsKey(input.key()) ? written.get(input.key()) : writing.apply(input);
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("key", input.key());
            String change = changes.getOrDefault(input.key(), file);
            map.put("written", change.isEmpty() ? writing.apply(input) : change);
            map.put("file", file);
            map.put("read", read(input));
            map.put("given", input.given());
            map.put("source", input.source());
            List<String> words = input.input().kind().names();
            List<String> choices = words.isEmpty() ? files.apply(input.key()) : words;
            if (!choices.isEmpty()) {
                map.put("choices", choices);
            }
            list.add(map);
        }
        return list;
    }
}

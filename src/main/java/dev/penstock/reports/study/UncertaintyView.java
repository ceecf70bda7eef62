package dev.penstock.reports.study;

import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.Measure;
import dev.penstock.study.UncertaintyResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What an engine's figures may turn out to be: JSON object, terminal tables, section of a page. */
public final class UncertaintyView {

    /** Inputs shown of a tornado; the others move the figure less than all of these. */
    private static final int SHOWN = 8;

    private UncertaintyView() {}

    /**
     * @param result sampled engine
     * @return JSON object
     */
    public static Map<String, Object> json(UncertaintyResult result) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("samples", result.samples());
        map.put("closed", result.closed());
        map.put("failures", result.failures());
        Map<String, Object> inputs = new LinkedHashMap<>();
        result.inputs().forEach((key, value) -> {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("low", value.quantile(0));
            entry.put("likely", value.spread().orElseThrow().mode());
            entry.put("high", value.quantile(1));
            entry.put("unit", value.unitOfKind());
            entry.put("source", value.spreadSource());
            inputs.put(key, entry);
        });
        map.put("inputs", inputs);
        Map<String, Object> figures = new LinkedHashMap<>();
        result.distributions().forEach(d -> {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("likely", d.likely());
            entry.put("mean", d.mean());
            entry.put("standard_deviation", d.standardDeviation());
            entry.put("p5", d.percentile5());
            entry.put("p25", d.percentile25());
            entry.put("p50", d.median());
            entry.put("p75", d.percentile75());
            entry.put("p95", d.percentile95());
            figures.put(d.measure().key(), entry);
        });
        map.put("figures", figures);
        Map<String, Object> drivers = new LinkedHashMap<>();
        result.tornados()
                .forEach(t -> drivers.put(
                        t.measure().key(),
                        t.bars().stream()
                                .map(b -> {
                                    Map<String, Object> entry = new LinkedHashMap<>();
                                    entry.put("input", b.input());
                                    entry.put("low", b.low());
                                    entry.put("high", b.high());
                                    entry.put("at_low", b.atLow());
                                    entry.put("at_high", b.atHigh());
                                    return entry;
                                })
                                .toList()));
        map.put("drivers", drivers);
        return map;
    }

    /**
     * @param result sampled engine
     * @return tables for a terminal
     */
    public static String text(UncertaintyResult result) {
        String line = System.lineSeparator();
        TextTable table = new TextTable()
                .header(
                        result.closed() + " of " + result.samples() + " samples",
                        "likely",
                        "5 %",
                        "median",
                        "95 %",
                        "<moved most by");
        for (UncertaintyResult.Distribution d : result.distributions()) {
            table.row(
                    d.measure().name(),
                    shown(d.measure(), d.likely()),
                    shown(d.measure(), d.percentile5()),
                    shown(d.measure(), d.median()),
                    shown(d.measure(), d.percentile95()),
                    strongest(result, d.measure()));
        }
        StringBuilder text = new StringBuilder(table.text());
        result.failures().forEach((why, count) -> text.append(count)
                .append(" samples do not close: ")
                .append(why)
                .append(line));
        return text.toString();
    }

    private static String strongest(UncertaintyResult result, Measure measure) {
        return result.tornados().stream()
                .filter(t -> t.measure().equals(measure))
                .flatMap(t -> t.bars().stream().limit(2))
                .map(UncertaintyResult.Bar::input)
                .reduce((a, b) -> a + ", " + b)
                .orElse("nothing that is uncertain");
    }

    private static String shown(Measure measure, double value) {
        return measure.notation().writeWithUnit(value);
    }

    /**
     * @param result sampled engine
     * @return section of a page
     */
    public static PageSection section(UncertaintyResult result) {
        List<Drawing> figures = new ArrayList<>();
        for (String key : List.of(
                "isp_vacuum_s",
                "chamber_pressure_Pa",
                "discharge_pressure_Pa",
                "pump_power_W",
                "peak_wall_temperature_K",
                "mass_kg")) {
            result.tornados().stream()
                    .filter(t -> t.measure().key().equals(key))
                    .findFirst()
                    .ifPresent(t -> figures.add(tornado(t)));
        }
        PageTable.Builder spreads = PageTable.titled(
                "Figures", "<figure", "likely", "5 %", "25 %", "median", "75 %", "95 %", "standard deviation");
        for (UncertaintyResult.Distribution d : result.distributions()) {
            Measure m = d.measure();
            spreads.row(
                    m.name(),
                    shown(m, d.likely()),
                    shown(m, d.percentile5()),
                    shown(m, d.percentile25()),
                    shown(m, d.median()),
                    shown(m, d.percentile75()),
                    shown(m, d.percentile95()),
                    shown(m, d.standardDeviation()));
        }
        PageTable.Builder inputs =
                PageTable.titled("Uncertain inputs", "<input", "lowest", "most likely", "highest", "<unit", "<source");
        result.inputs()
                .forEach((key, value) -> inputs.row(
                        key,
                        Figures.significant(value.quantile(0), 4),
                        Figures.significant(value.spread().orElseThrow().mode(), 4),
                        Figures.significant(value.quantile(1), 4),
                        value.unitOfKind(),
                        value.spreadSource()));
        return new PageSection(
                "uncertainty",
                "Uncertainty",
                "How sure is all this, and what would make it surer?",
                List.of(result.closed() + " of " + result.samples()
                        + " samples close. Inputs are taken as independent; models themselves are taken as right,"
                        + " apart from the factors listed."),
                figures,
                List.of(spreads.table()),
                List.of(inputs.table()));
    }

    private static Drawing tornado(UncertaintyResult.Tornado tornado) {
        Measure measure = tornado.measure();
        double scale = scale(measure.notation().siUnit());
        List<SpanChart.Bar> bars = tornado.bars().stream()
                .limit(SHOWN)
                .map(b -> new SpanChart.Bar(
                        b.input(),
                        b.atLow() / scale,
                        b.atHigh() / scale,
                        b.atHigh() >= b.atLow() ? Ink.GAIN : Ink.FUEL,
                        brief(b.low()) + " to " + brief(b.high())))
                .toList();
        String label = measure.name() + " (" + axisUnit(measure.notation().siUnit()) + ")";
        String svg = SpanChart.svg(
                "u-" + measure.key().replace('_', '-'), "What moves " + measure.name(), label, false, bars);
        return new Drawing(
                svg,
                "What moves " + measure.name()
                        + ": each input by itself from its 5th to its 95th percentile, the others"
                        + " at their most likely values. Teal rises with the input, amber falls.",
                false);
    }

    private static double scale(String unit) {
        return switch (unit) {
            case "Pa" -> 1e5;
            case "W" -> 1e6;
            default -> 1;
        };
    }

    private static String axisUnit(String unit) {
        return switch (unit) {
            case "Pa" -> "bar";
            case "W" -> "MW";
            case "" -> "-";
            default -> unit;
        };
    }

    /** A drawing has no room for every digit of a percentile. */
    private static String brief(String value) {
        String[] parts = value.split(" ", 2);
        try {
            return Figures.significant(Double.parseDouble(parts[0]), 3) + (parts.length > 1 ? " " + parts[1] : "");
        } catch (NumberFormatException word) {
            return value;
        }
    }
}

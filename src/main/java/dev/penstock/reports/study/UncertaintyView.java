package dev.penstock.reports.study;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.errors.NotClosed;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.Measure;
import dev.penstock.study.UncertaintyResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What an engine's figures may turn out to be: JSON object, terminal tables, section of a page. */
public final class UncertaintyView {

    /** Inputs shown of a tornado; the others move the figure less than all of these. */
    private static final int SHOWN = 8;

    private static final Notation INPUT = significant("", 4);
    private static final Function<UncertaintyResult.Distribution, Notation> FIGURE =
            distribution -> distribution.measure().notation().namingUnit();

    /** Figures of an uncertain input. */
    private static final FigureTable<Map.Entry<String, InputValue>> INPUTS =
            FigureTable.<Map.Entry<String, InputValue>>named(Map.Entry::getKey)
                    .number("low", "lowest", INPUT, e -> e.getValue().quantile(0))
                    .number("likely", "most likely", INPUT, e -> e.getValue()
                            .spread()
                            .orElseThrow()
                            .mode())
                    .number("high", "highest", INPUT, e -> e.getValue().quantile(1))
                    .word("unit", "unit", e -> e.getValue().unitOfKind())
                    .word("source", "source", e -> e.getValue().spreadSource())
                    .word("key", "input", Map.Entry::getKey)
                    .outsideDocuments()
                    .table();

    /** How a figure is spread. */
    private static final FigureTable<UncertaintyResult.Distribution> FIGURES =
            FigureTable.<UncertaintyResult.Distribution>named(d -> d.measure().key())
                    .number("likely", "likely", FIGURE, UncertaintyResult.Distribution::likely)
                    .number("mean", "mean", FIGURE, UncertaintyResult.Distribution::mean)
                    .number(
                            "standard_deviation",
                            "standard deviation",
                            FIGURE,
                            UncertaintyResult.Distribution::standardDeviation)
                    .number(
                            "beyond_inputs",
                            "built engines beyond the inputs' spreads",
                            significant("", 2),
                            UncertaintyResult.Distribution::beyond)
                    .number("p5", "5 %", FIGURE, UncertaintyResult.Distribution::percentile5)
                    .number("p25", "25 %", FIGURE, UncertaintyResult.Distribution::percentile25)
                    .number("p50", "median", FIGURE, UncertaintyResult.Distribution::median)
                    .number("p75", "75 %", FIGURE, UncertaintyResult.Distribution::percentile75)
                    .number("p95", "95 %", FIGURE, UncertaintyResult.Distribution::percentile95)
                    .word("figure", "figure", d -> d.measure().name())
                    .outsideDocuments()
                    .table();

    /** What an input does to a figure. */
    private static final FigureTable<UncertaintyResult.Bar> BARS = FigureTable.<UncertaintyResult.Bar>ofOne()
            .word("input", "input", UncertaintyResult.Bar::input)
            .word("low", "lowest", UncertaintyResult.Bar::low)
            .word("high", "highest", UncertaintyResult.Bar::high)
            .word("at_low", "figure at the lowest", UncertaintyResult.Bar::atLow)
            .word("at_high", "figure at the highest", UncertaintyResult.Bar::atHigh)
            .table();

    /** The whole sample. */
    private static final FigureTable<UncertaintyResult> ALL = FigureTable.<UncertaintyResult>ofOne()
            .word("samples", "samples", UncertaintyResult::samples)
            .word("closed", "closed", UncertaintyResult::closed)
            .word("failures", "failures", UncertaintyResult::failures)
            .keyed("inputs", r -> List.copyOf(r.inputs().entrySet()), INPUTS)
            .keyed("figures", UncertaintyResult::distributions, FIGURES)
            .word("drivers", "drivers", UncertaintyView::drivers)
            .table();

    private UncertaintyView() {}

    /**
     * @param result sampled engine
     * @return JSON object
     */
    public static Map<String, Object> json(UncertaintyResult result) {
        return FigureJson.of(ALL, result);
    }

    /** What moves each figure, by the key of the figure. */
    private static Map<String, Object> drivers(UncertaintyResult result) {
        Map<String, Object> drivers = new LinkedHashMap<>();
        result.tornados()
                .forEach(tornado -> drivers.put(tornado.measure().key(), FigureJson.each(BARS, tornado.bars())));
        return drivers;
    }

    /**
     * @param result sampled engine
     * @return tables for a terminal
     */
    public static String text(UncertaintyResult result) {
        String line = System.lineSeparator();
        PageTable table = FigureRows.list(
                result.closed() + " of " + result.samples() + " samples",
                spreads(result),
                "figures",
                result.distributions(),
                "figure likely p5 p50 p95 moved_by");
        StringBuilder text = new StringBuilder(TextTable.of(table));
        told(result).forEach(sentence -> text.append(sentence).append(line));
        NotClosed.sentences(result.failures())
                .forEach(sentence -> text.append(sentence).append(line));
        return text.toString();
    }

    /** How figures are spread, and what moves each most. */
    private static FigureTable<UncertaintyResult.Distribution> spreads(UncertaintyResult result) {
        return FigureTable.<UncertaintyResult.Distribution>named(
                        d -> d.measure().key())
                .with(FIGURES, d -> d)
                .word("moved_by", "moved most by", d -> strongest(result, d.measure()))
                .table();
    }

    /** What must be known of the percentiles, in sentences. */
    private static List<String> told(UncertaintyResult result) {
        return Stream.concat(
                        NotClosed.meaning(result.closed(), result.samples()).stream(),
                        Stream.concat(
                                missed(result).stream(),
                                result.distributions().stream().flatMap(d -> d.aside().stream())))
                .toList();
    }

    /** What the bands hold beyond the spreads of inputs, in a sentence. */
    private static Optional<String> missed(UncertaintyResult result) {
        return result.distributions().stream()
                .filter(d -> d.beyond() > 0)
                .map(d -> String.format(
                        Locale.ROOT,
                        "%s %.1f %% (of %.1f %% over %d figures)",
                        d.measure().name(),
                        100 * d.beyond(),
                        100 * d.miss().orElseThrow().share(),
                        d.miss().orElseThrow().figures()))
                .reduce((a, b) -> a + ", " + b)
                .map(each ->
                        "the bands hold what built engines miss beyond the inputs' spreads, as standard deviations: "
                                + each);
    }

    private static String strongest(UncertaintyResult result, Measure measure) {
        return result.tornados().stream()
                .filter(t -> t.measure().equals(measure))
                .flatMap(t -> t.bars().stream().limit(2))
                .map(UncertaintyResult.Bar::input)
                .reduce((a, b) -> a + ", " + b)
                .orElse("nothing that is uncertain");
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
        PageTable spreads = FigureRows.list(
                "Figures",
                FIGURES,
                "figures",
                result.distributions(),
                "figure likely p5 p25 p50 p75 p95 standard_deviation");
        PageTable inputs = FigureRows.list(
                "Uncertain inputs",
                INPUTS,
                "inputs",
                List.copyOf(result.inputs().entrySet()),
                "key low likely high unit source");
        return new PageSection(
                "uncertainty",
                "Uncertainty",
                "How sure is all this, and what would make it surer?",
                Stream.concat(
                                Stream.of(result.closed() + " of " + result.samples()
                                        + " samples close. Inputs are taken as independent; what models miss of built engines beyond"
                                        + " them is in the bands of the figures named below, and in no driver."),
                                told(result).stream())
                        .toList(),
                figures,
                List.of(spreads.untraced()),
                List.of(inputs.untraced()));
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
            return Notation.significant(Double.parseDouble(parts[0]), 3) + (parts.length > 1 ? " " + parts[1] : "");
        } catch (NumberFormatException word) {
            return value;
        }
    }
}

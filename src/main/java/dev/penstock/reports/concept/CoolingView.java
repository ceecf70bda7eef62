package dev.penstock.reports.concept;

import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.jacket.CellCheck;
import dev.penstock.cooling.jacket.JacketFigures;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.search.FeasibilityMap;
import dev.penstock.cooling.search.JacketSearch;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.MapChart;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.SectionThinning;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A search for better channels, and a map of what can be cooled: JSON document, terminal text, section of a page. */
public final class CoolingView {

    private static final String LINE = System.lineSeparator();

    private final String name;
    private final JacketSearch.Outcome outcome;
    private final Optional<CellCheck> check;
    private final Optional<FeasibilityMap> map;

    /**
     * @param name name of the concept
     * @param outcome what the search found
     * @param check its hottest station with two-dimensional conduction; empty for tubes
     * @param map feasibility map, if one was asked for
     */
    public CoolingView(
            String name, JacketSearch.Outcome outcome, Optional<CellCheck> check, Optional<FeasibilityMap> map) {
        this.name = name;
        this.outcome = outcome;
        this.check = check;
        this.map = map;
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("name", name);
        document.put("feasible", outcome.feasible());
        document.put("evaluations", outcome.evaluations());
        document.put("start", FigureJson.of(JacketFigures.ALL, outcome.start()));
        document.put("best", FigureJson.of(JacketFigures.ALL, outcome.result()));
        document.put(
                "limits", FigureJson.each(CheckFigures.LIMITS, outcome.result().limits()));
        count().ifPresent(n -> document.put("channel_count", n));
        outcome.best().design().wall().thickness().ifPresent(t -> document.put("wall_thickness_m", t));
        document.put(
                "sections",
                sections().stream()
                        .map(s -> {
                            Map<String, Object> section = new LinkedHashMap<>();
                            section.put("area_ratio", s.areaRatio());
                            section.put("upstream", s.upstream());
                            section.put("width_m", s.width());
                            section.put("height_m", s.height());
                            return section;
                        })
                        .toList());
        document.put("concept_text", toml());
        check.ifPresent(c -> {
            Map<String, Object> cell = new LinkedHashMap<>();
            cell.put("x_m", c.x());
            cell.put("area_ratio", c.areaRatio());
            cell.put("heat_flux_fin_model_W_m2", c.finHeatFlux());
            cell.put("heat_flux_two_dimensional_W_m2", c.cellHeatFlux());
            cell.put("wall_temperature_fin_model_K", c.finWallTemperature());
            cell.put("wall_temperature_two_dimensional_K", c.cellWallTemperature());
            document.put("conduction_check", cell);
        });
        map.ifPresent(m -> document.put(
                "map",
                m.points().stream()
                        .map(p -> {
                            Map<String, Object> point = new LinkedHashMap<>();
                            point.put("chamber_pressure_Pa", p.chamberPressure());
                            point.put("thrust_vacuum_N", p.thrust());
                            point.put("feasible", p.feasible());
                            point.put("binding", p.binding());
                            point.put("margin", p.margin());
                            return point;
                        })
                        .toList()));
        return document;
    }

    private List<ChannelSection> sections() {
        return outcome.best().design().channels().sections();
    }

    private OptionalDouble count() {
        return outcome.best().design().channels().count();
    }

    /** @return the channels found as lines of a concept file */
    public String toml() {
        StringBuilder text = new StringBuilder("[cooling]" + LINE);
        count().ifPresent(n -> text.append(String.format(Locale.ROOT, "channel_count = %.0f%s", n, LINE)));
        outcome.best()
                .design()
                .wall()
                .thickness()
                .ifPresent(
                        t -> text.append(String.format(Locale.ROOT, "wall_thickness = \"%.3f mm\"%s", t * 1e3, LINE)));
        text.append("sections = [").append(LINE);
        for (ChannelSection s : SectionThinning.of(sections())) {
            text.append(String.format(
                    Locale.ROOT,
                    "    { area_ratio = %.4f, upstream = %b, width = \"%.4f mm\", height = \"%.4f mm\" },%s",
                    Math.max(1, s.areaRatio()),
                    s.upstream(),
                    s.width() * 1e3,
                    s.height() * 1e3,
                    LINE));
        }
        text.append("]").append(LINE);
        return text.toString();
    }

    /** @return text for a terminal */
    public String text() {
        StringBuilder text = new StringBuilder();
        text.append(name).append(": ").append(verdict()).append(LINE).append(LINE);
        TextTable table = new TextTable().header("jacket", "sized by rule", "searched", "<unit");
        compare(
                table,
                "coolant pressure drop",
                Figures.bar(outcome.start().pressureDrop()),
                Figures.bar(outcome.result().pressureDrop()),
                "bar");
        compare(
                table,
                "hottest wall",
                Figures.kelvin(outcome.start().peakWallTemperature()),
                Figures.kelvin(outcome.result().peakWallTemperature()),
                "K");
        compare(
                table,
                "coolant temperature rise",
                Figures.kelvin(outcome.start().coolantTemperatureRise()),
                Figures.kelvin(outcome.result().coolantTemperatureRise()),
                "K");
        compare(table, "peak heat flux", flux(outcome.start()), flux(outcome.result()), "MW/m²");
        text.append(table.text()).append(LINE);
        text.append(BalanceText.limits(outcome.result().limits())).append(LINE);
        check.ifPresent(c -> text.append(checkText(c)).append(LINE));
        map.ifPresent(m -> text.append(mapText(m)).append(LINE));
        text.append("for the concept file:").append(LINE).append(LINE).append(toml());
        text.append(BalanceText.warnings(outcome.result().warnings()));
        return text.toString();
    }

    private static String checkText(CellCheck c) {
        return String.format(
                Locale.ROOT,
                "two-dimensional conduction at the hottest station (area ratio %.3f): %.2f MW/m² and %.0f K at most,"
                        + " where the fin model has %.2f MW/m² and %.0f K%s",
                c.areaRatio(),
                c.cellHeatFlux() / 1e6,
                c.cellWallTemperature(),
                c.finHeatFlux() / 1e6,
                c.finWallTemperature(),
                LINE);
    }

    private static void compare(TextTable table, String what, String before, String after, String unit) {
        table.row(what, before, after, unit);
    }

    private static String flux(JacketResult jacket) {
        return Figures.significant(jacket.peakHeatFlux() / 1e6, 4);
    }

    private String verdict() {
        return outcome.feasible()
                ? "the jacket keeps every limit with a pressure drop of "
                        + Figures.bar(outcome.result().pressureDrop()) + " bar (" + outcome.evaluations()
                        + " jackets tried)"
                : "no jacket found keeps every limit; "
                        + outcome.result()
                                .bindingLimit()
                                .map(LimitCheck::name)
                                .map(Figures::limitName)
                                .orElse("one") + " is missed in the best of " + outcome.evaluations() + " tried";
    }

    private static String mapText(FeasibilityMap map) {
        List<String> head = new ArrayList<>(List.of("chamber bar"));
        map.thrusts().forEach(t -> head.add(Figures.kilonewton(t) + " kN"));
        TextTable table = new TextTable().header(head.toArray(String[]::new));
        for (int i = 0; i < map.chamberPressures().size(); i++) {
            List<String> cells = new ArrayList<>();
            cells.add(Figures.bar(map.chamberPressures().get(i)));
            for (int j = 0; j < map.thrusts().size(); j++) {
                FeasibilityMap.Point p = map.at(i, j);
                cells.add((p.feasible() ? "yes " : "NO ") + Figures.percent(p.margin()));
            }
            table.row(cells.toArray(String[]::new));
        }
        return map.title() + ": can it be cooled, and by what margin" + LINE + table.text();
    }

    /** @return section of a page */
    public PageSection section() {
        PageTable.Builder steps =
                PageTable.titled("How the search went", "jacket", "pressure drop (bar)", "worst margin");
        outcome.steps()
                .forEach(s -> steps.row(
                        Integer.toString(s.evaluation()),
                        Figures.bar(s.pressureDrop()),
                        Figures.percent(s.worstMargin())));
        List<Drawing> figures = new ArrayList<>();
        map.ifPresent(m -> figures.add(mapFigure(m)));
        return new PageSection(
                "search",
                "Channels",
                "Which channels cool with the least pressure drop?",
                Stream.concat(Stream.of(verdict()), check.map(c -> checkText(c).strip()).stream())
                        .map(line -> Character.toUpperCase(line.charAt(0)) + line.substring(1) + ".")
                        .toList(),
                figures,
                List.of(
                        EngineTables.cooling(outcome.result()),
                        EngineTables.limits(outcome.result().limits())),
                List.of(steps.table()));
    }

    private static Drawing mapFigure(FeasibilityMap map) {
        List<MapChart.Cell> cells = map.points().stream()
                .map(p -> new MapChart.Cell(
                        p.chamberPressure() / 1e5, Math.log10(p.thrust() / 1e3), 100 * p.margin(), p.feasible()))
                .toList();
        String svg = MapChart.svg(
                "c-map",
                "Where a chamber can be cooled",
                "chamber pressure (bar)",
                "lg of vacuum thrust in kN",
                "margin of the tightest limit (%)",
                cells);
        return new Drawing(
                svg,
                map.title() + ". A cross marks a chamber that no channel of the kind keeps within its limits.",
                true);
    }
}

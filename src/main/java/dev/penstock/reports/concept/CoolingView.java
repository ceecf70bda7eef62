package dev.penstock.reports.concept;

import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.jacket.CellCheck;
import dev.penstock.cooling.jacket.JacketFigures;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.search.FeasibilityMap;
import dev.penstock.cooling.search.JacketSearch;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.MapChart;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.SectionThinning;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A search for better channels, and a map of what can be cooled: JSON document, terminal text, section of a page. */
public final class CoolingView {

    /** Part of the document that is there only where a map was asked for. */
    public static final String CHAMBERS = "map";

    private static final String LINE = System.lineSeparator();
    private static final Notation FLUX = Notation.fixed("W/m²", "MW/m²", 1e-6, 2);
    private static final Notation KELVIN = Notation.fixed("K", "K", 1, 0);

    /** Size of the channels at a place. */
    private static final FigureTable<ChannelSection> SECTIONS = FigureTable.<ChannelSection>ofOne()
            .number("area_ratio", "area ratio", Notation.significant("", 4), ChannelSection::areaRatio)
            .word("upstream", "upstream", ChannelSection::upstream)
            .number("width_m", "width", Notation.LENGTH, ChannelSection::width)
            .number("height_m", "height", Notation.LENGTH, ChannelSection::height)
            .table();

    /** Figures of the check by two-dimensional conduction. */
    private static final FigureTable<CellCheck> CONDUCTION = FigureTable.<CellCheck>ofOne()
            .number("x_m", "distance", Notation.LENGTH, CellCheck::x)
            .number("area_ratio", "area ratio", Notation.significant("", 4), CellCheck::areaRatio)
            .number("heat_flux_fin_model_W_m2", "heat flux, fins", FLUX, CellCheck::finHeatFlux)
            .number("heat_flux_two_dimensional_W_m2", "heat flux, two-dimensional", FLUX, CellCheck::cellHeatFlux)
            .number("wall_temperature_fin_model_K", "wall, fins", KELVIN, CellCheck::finWallTemperature)
            .number(
                    "wall_temperature_two_dimensional_K",
                    "wall, two-dimensional",
                    KELVIN,
                    CellCheck::cellWallTemperature)
            .table();

    /** Figures of a point of the map. */
    private static final FigureTable<FeasibilityMap.Point> MAP = FigureTable.<FeasibilityMap.Point>ofOne()
            .number("chamber_pressure_Pa", "chamber", Notation.PRESSURE, FeasibilityMap.Point::chamberPressure)
            .number("thrust_vacuum_N", "thrust, vacuum", Notation.FORCE, FeasibilityMap.Point::thrust)
            .word("feasible", "feasible", FeasibilityMap.Point::feasible)
            .word("binding", "binds", FeasibilityMap.Point::binding)
            .number("margin", "margin", Notation.MARGIN, FeasibilityMap.Point::margin)
            .table();

    /** How the search went. */
    private static final FigureTable<JacketSearch.Step> STEPS = FigureTable.<JacketSearch.Step>ofOne()
            .word("evaluation", "jacket", JacketSearch.Step::evaluation)
            .number("pressure_drop_Pa", "pressure drop", Notation.PRESSURE, JacketSearch.Step::pressureDrop)
            .number("worst_margin", "worst margin", Notation.MARGIN, JacketSearch.Step::worstMargin)
            .table();

    /** The whole search. */
    private static final FigureTable<CoolingView> ALL = FigureTable.<CoolingView>ofOne()
            .word("name", "concept", v -> v.name)
            .word("feasible", "feasible", v -> v.outcome.feasible())
            .word("evaluations", "jackets tried", v -> v.outcome.evaluations())
            .part("start", v -> Optional.of(v.outcome.start()), JacketFigures.ALL)
            .part("best", v -> Optional.of(v.outcome.result()), JacketFigures.ALL)
            .each("limits", v -> v.outcome.result().limits(), CheckFigures.LIMITS)
            .optional("channel_count", "channels", Notation.COUNT, CoolingView::count)
            .leftOutIfAbsent()
            .optional("wall_thickness_m", "wall", Notation.LENGTH, CoolingView::thickness)
            .leftOutIfAbsent()
            .each("sections", CoolingView::sections, SECTIONS)
            .word("concept_text", "for the concept file", CoolingView::toml)
            .part("conduction_check", v -> v.check, CONDUCTION)
            .leftOutIfAbsent()
            .word(CHAMBERS, "map", v -> v.map.map(m -> FigureJson.each(MAP, m.points())))
            .leftOutIfAbsent()
            .table();

    private final String name;
    private final JacketSearch.Outcome outcome;
    private final Optional<CellCheck> check;
    private final Optional<FeasibilityMap> map;

    /**
     * @param name name of the concept
     * @param outcome what the search found
     * @param check its station at the throat with two-dimensional conduction; empty for tubes
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
        return FigureJson.of(ALL, this);
    }

    /** Table of the concept file that the lines belong to. */
    private String header() {
        CircuitKey circuit = outcome.result().circuit();
        return circuit.word().isEmpty()
                ? "[cooling]"
                : "# in the table [[cooling.circuits]] with name = \"" + circuit.name() + '"';
    }

    private List<ChannelSection> sections() {
        return outcome.best().design().channels().sections();
    }

    private OptionalDouble count() {
        return outcome.best().design().channels().count();
    }

    private OptionalDouble thickness() {
        return outcome.best().design().wall().thickness();
    }

    /** @return the channels found as lines of a concept file */
    public String toml() {
        StringBuilder text = new StringBuilder(header() + LINE);
        count().ifPresent(n -> text.append(String.format(Locale.ROOT, "channel_count = %.0f%s", n, LINE)));
        thickness()
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
        for (String key : List.of(
                "coolant_pressure_drop_Pa",
                "peak_wall_temperature_K",
                "coolant_temperature_rise_K",
                "peak_heat_flux_W_m2")) {
            Figure<JacketResult> figure = JacketFigures.ALL.figure(key);
            table.row(figure.title(), figure.text(outcome.start()), figure.text(outcome.result()), figure.unit());
        }
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
                "two-dimensional conduction at the throat (area ratio %.3f): %s and %s at most,"
                        + " where the fin model has %s and %s%s",
                c.areaRatio(),
                FLUX.writeWithUnit(c.cellHeatFlux()),
                KELVIN.writeWithUnit(c.cellWallTemperature()),
                FLUX.writeWithUnit(c.finHeatFlux()),
                KELVIN.writeWithUnit(c.finWallTemperature()),
                LINE);
    }

    private String verdict() {
        return outcome.feasible()
                ? "the jacket keeps every limit with a pressure drop of "
                        + Notation.PRESSURE.write(outcome.result().pressureDrop()) + " bar (" + outcome.evaluations()
                        + " jackets tried)"
                : "no jacket found keeps every limit; "
                        + outcome.result()
                                .bindingLimit()
                                .map(LimitCheck::name)
                                .map(CheckFigures::title)
                                .orElse("one") + " is missed in the best of " + outcome.evaluations() + " tried";
    }

    private static String mapText(FeasibilityMap map) {
        List<String> head = new ArrayList<>(List.of("chamber bar"));
        map.thrusts().forEach(t -> head.add(Notation.FORCE.write(t) + " kN"));
        TextTable table = new TextTable().header(head.toArray(String[]::new));
        for (int i = 0; i < map.chamberPressures().size(); i++) {
            List<String> cells = new ArrayList<>();
            cells.add(Notation.PRESSURE.write(map.chamberPressures().get(i)));
            for (int j = 0; j < map.thrusts().size(); j++) {
                FeasibilityMap.Point p = map.at(i, j);
                cells.add((p.feasible() ? "yes " : "NO ") + Notation.MARGIN.write(p.margin()));
            }
            table.row(cells.toArray(String[]::new));
        }
        return map.title() + ": can it be cooled, and by what margin" + LINE + table.text();
    }

    /** @return section of a page */
    public PageSection section() {
        PageTable steps = FigureRows.list(
                        "How the search went", STEPS, "", outcome.steps(), "evaluation pressure_drop_Pa worst_margin")
                .untraced();
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
                List.of(steps));
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

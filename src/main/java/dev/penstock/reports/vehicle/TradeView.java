package dev.penstock.reports.vehicle;

import static dev.penstock.quantities.Notation.TONNES;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.concept.InputsAndWarnings;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.TradeResult;
import dev.penstock.vehicle.VehicleSpread;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ClosingCurve;
import dev.penstock.vehicle.trade.PropellantTrade;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Propellant pairs on one mission as JSON document, terminal table and page. */
public final class TradeView {

    private static final String SINGLE_STAGES =
            "The single stages have one start mass: that of the vehicle where it is given, else the mean of the vehicles that"
                    + " close, or 50 times the payload where none does.";

    private static final List<Ink> INKS = List.of(Ink.FUEL, Ink.OXIDIZER, Ink.GAS, Ink.GAIN, Ink.STEEL, Ink.MUTED);

    private static final Notation HEIGHT = Notation.fixed("m", "m", 1, 1);
    private static final String COLUMNS =
            "pair isp_s bulk_density_kg_m3 start_mass_kg payload_kg dry_mass_kg tank_volume_m3 height_m"
                    + " single_stage_start_mass_kg single_stage_dry_mass_kg single_stage_closes_kg";

    /** A point of a closing curve. */
    private static final FigureTable<ClosingCurve.Point> POINTS = FigureTable.<ClosingCurve.Point>ofOne()
            .number("dry_mass_kg", "dry mass", TONNES, ClosingCurve.Point::dryMass)
            .number("payload_kg", "payload", TONNES, ClosingCurve.Point::payload)
            .table();

    /** A pair whose single stage has a closing curve. */
    private static final FigureTable<TradeResult.Candidate> SINGLE_STAGE = FigureTable.<TradeResult.Candidate>ofOne()
            .optional("start_mass_kg", "start mass", TONNES, c -> c.curve().map(ClosingCurve::startMass))
            .optional("closing_dry_mass_kg", "closes below", TONNES, c -> c.curve()
                    .map(ClosingCurve::closingDryMass))
            .number("modelled_dry_mass_kg", "dry mass", TONNES, TradeResult.Candidate::modelledDryMass)
            .each("points", c -> c.curve().orElseThrow().points(), POINTS)
            .table();

    /** Figures of what a pair's vehicle may turn out to be. */
    private static final FigureTable<VehicleSpread> SPREAD = FigureTable.<VehicleSpread>ofOne()
            .word("figure", "figure", s -> s.figure().key())
            .count("samples", "samples", VehicleSpread::samples)
            .count("closed", "of them close", VehicleSpread::closed)
            .optional("p5", "5 %", significant("", 4), s -> there(s, s.percentile5()))
            .optional("p50", "50 %", significant("", 4), s -> there(s, s.median()))
            .optional("p95", "95 %", significant("", 4), s -> there(s, s.percentile95()))
            .word(
                    "driver",
                    "moved most by",
                    s -> s.drivers().isEmpty() ? "" : s.drivers().get(0).name())
            .table();

    /** Figures of a pair. */
    private static final FigureTable<TradeResult.Candidate> PAIRS = FigureTable.<TradeResult.Candidate>ofOne()
            .word("oxidizer", "oxidizer", c -> c.pair().oxidizer())
            .word("fuel", "fuel", c -> c.pair().fuel())
            .number("mixture_ratio", "mixture ratio", significant("", 4), c -> c.pair()
                    .mixtureRatio())
            .word("closes", "closes", c -> sized(c).isPresent())
            .word("reason", "reason", TradeView::reason)
            .optional("isp_s", "Isp", Notation.fixed("s", "s", 1, 1), c -> c.row()
                    .map(r -> r.engine().vacuumIsp()))
            .leftOutIfAbsent()
            .optional("bulk_density_kg_m3", "bulk density", Notation.fixed("kg/m³", "kg/m³", 1, 0), c -> c.row()
                    .map(PropellantTrade.Row::bulkDensity))
            .leftOutIfAbsent()
            .optional("start_mass_kg", "start mass", TONNES, c -> sized(c).map(VehicleSizing::startMass))
            .leftOutIfAbsent()
            .optional("payload_kg", "payload", TONNES, c -> sized(c).map(VehicleSizing::payload))
            .leftOutIfAbsent()
            .optional("dry_mass_kg", "dry", TONNES, c -> sized(c).map(VehicleSizing::dryMass))
            .leftOutIfAbsent()
            .optional("propellant_mass_kg", "propellant", TONNES, c -> sized(c).map(VehicleSizing::propellantMass))
            .leftOutIfAbsent()
            .optional("tank_volume_m3", "tanks", significant("m³", 3), closing(PropellantTrade.Row::tankVolume))
            .leftOutIfAbsent()
            .optional("height_m", "height", HEIGHT, closing(PropellantTrade.Row::height))
            .leftOutIfAbsent()
            .optional(
                    "structural_coefficient",
                    "structural coefficient",
                    significant("", 4),
                    closing(PropellantTrade.Row::structuralCoefficient))
            .leftOutIfAbsent()
            .part("uncertainty", TradeResult.Candidate::spread, SPREAD)
            .leftOutIfAbsent()
            .part("single_stage", c -> c.curve().map(curve -> c), SINGLE_STAGE)
            .leftOutIfAbsent()
            .word("pair", "pair", c -> c.pair().toString())
            .outsideDocuments()
            .optional("single_stage_start_mass_kg", "single stage: start mass", TONNES, c -> c.curve()
                    .map(ClosingCurve::startMass))
            .outsideDocuments()
            .optional("single_stage_dry_mass_kg", "single stage: dry mass", TONNES, c -> c.row()
                    .map(row -> c.modelledDryMass()))
            .outsideDocuments()
            .optional("single_stage_closes_kg", "closes below", TONNES, c -> c.curve()
                    .map(ClosingCurve::closingDryMass))
            .outsideDocuments()
            .table();

    /** The whole comparison. */
    private static final FigureTable<TradeResult> ALL = FigureTable.<TradeResult>ofOne()
            .word("name", "vehicle", r -> r.plan().name())
            .number("delta_v_m_s", "ideal delta-v", Notation.fixed("m/s", "m/s", 1, 0), r -> r.plan()
                    .mission()
                    .total())
            .each("pairs", TradeResult::candidates, PAIRS)
            .table();

    private TradeView() {}

    private static Optional<Double> there(VehicleSpread spread, double value) {
        return spread.closed() > 0 ? Optional.of(value) : Optional.empty();
    }

    /** As the table of a vehicle's own spread writes it; nothing where no sample closes. */
    private static String percentile(VehicleSpread spread, ToDoubleFunction<VehicleSpread> value) {
        return spread.closed() > 0 ? SpreadView.notation(spread).write(value.applyAsDouble(spread)) : "";
    }

    private static String spreads(TradeResult result) {
        List<TradeResult.Candidate> sampled =
                result.candidates().stream().filter(c -> c.spread().isPresent()).toList();
        if (sampled.isEmpty()) {
            return "";
        }
        PageTable.Builder table = PageTable.titled(
                "What they may turn out to be, "
                        + SpreadView.titleWithUnit(sampled.get(0).spread().get()),
                "<pair",
                "samples",
                "of them close",
                "5 %",
                "50 %",
                "95 %",
                "<moved most by");
        for (TradeResult.Candidate c : sampled) {
            VehicleSpread s = c.spread().get();
            table.row(
                    c.pair().toString(),
                    SPREAD.figure("samples").text(s),
                    SPREAD.figure("closed").text(s),
                    percentile(s, VehicleSpread::percentile5),
                    percentile(s, VehicleSpread::median),
                    percentile(s, VehicleSpread::percentile95),
                    SPREAD.figure("driver").text(s));
        }
        return System.lineSeparator() + TextTable.of(table.table());
    }

    private static Optional<VehicleSizing> sized(TradeResult.Candidate candidate) {
        return candidate.row().flatMap(PropellantTrade.Row::sizing);
    }

    /** A figure of a vehicle that closes. */
    private static Function<TradeResult.Candidate, Optional<Double>> closing(
            Function<PropellantTrade.Row, Double> figure) {
        return candidate ->
                candidate.row().filter(row -> row.sizing().isPresent()).map(figure);
    }

    /**
     * @param result pairs on a mission
     * @return JSON document
     */
    public static Map<String, Object> json(TradeResult result) {
        return FigureJson.of(ALL, result);
    }

    /**
     * @param result pairs on a mission
     * @return table for a terminal
     */
    public static String text(TradeResult result) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(result.plan().name() + ", ideal delta-v "
                + ALL.figure("delta_v_m_s").text(result) + " m/s" + line + line + TextTable.of(pairs("", result)));
        text.append(spreads(result));
        text.append(line).append(SINGLE_STAGES).append(line);
        result.candidates().stream().filter(c -> !reason(c).isEmpty()).forEach(c -> text.append(line)
                .append(c.pair())
                .append(": ")
                .append(reason(c))
                .append(line));
        return text.toString();
    }

    private static PageTable pairs(String caption, TradeResult result) {
        return FigureRows.list(caption, PAIRS, "pairs", result.candidates(), COLUMNS)
                .untraced();
    }

    private static String reason(TradeResult.Candidate c) {
        return c.failure().isEmpty() ? c.row().map(PropellantTrade.Row::reason).orElse("") : c.failure();
    }

    /**
     * @param result pairs on a mission
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(TradeResult result, Software software) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", result.plan().name() + ": propellants");
        model.put("subtitle", result.plan().description());
        model.put("kind", "Propellant pairs on one mission");
        model.put("figures", headline(result));
        model.put(
                "warnings",
                result.candidates().stream()
                        .filter(c -> !reason(c).isEmpty())
                        .map(c -> Map.of("source", c.pair().toString(), "message", reason(c)))
                        .toList());
        model.put("parts", List.of(section(result), InputsAndWarnings.of(result.plan())));
        model.put("assumptions", Cautions.ofVehicle());
        model.put(
                "cautions",
                Cautions.dangers(result.candidates().stream()
                        .flatMap(c -> c.row().stream())
                        .flatMap(r -> Stream.of(
                                r.engine().oxidizer().propellant(),
                                r.engine().fuel().propellant()))));
        model.put("software", software);
        return Pages.fill("vehicle.ftlh", model);
    }

    private static List<Map<String, String>> headline(TradeResult result) {
        List<Map<String, String>> figures = new ArrayList<>();
        for (TradeResult.Candidate c : result.candidates()) {
            c.row()
                    .flatMap(PropellantTrade.Row::sizing)
                    .ifPresent((VehicleSizing s) -> figures.add(Map.of(
                            "name", "start mass, " + c.pair(), "value", TONNES.write(s.startMass()), "unit", "t")));
        }
        return figures;
    }

    private static PageSection section(TradeResult result) {
        return new PageSection(
                "trade",
                "Propellants",
                "Which pair carries this mission lightest?",
                List.of(
                        "Every pair runs the same engine concept with its propellants changed, and every stage takes that"
                                + " engine: the pairs differ in nothing else.",
                        "A single stage carries what its final mass leaves over its dry mass. Where a line meets zero, the"
                                + " stage stops closing; the table says what the dry-mass model gives.",
                        SINGLE_STAGES),
                List.of(chart(result)),
                List.of(pairs("Pairs", result)),
                List.of());
    }

    private static Drawing chart(TradeResult result) {
        List<Curve> curves = new ArrayList<>();
        for (TradeResult.Candidate c : result.candidates()) {
            c.curve().ifPresent(curve -> curves.add(line(curve, INKS.get(curves.size() % INKS.size()))));
        }
        LineChart.Panel panel = new LineChart.Panel("payload (t)", 1, true, curves);
        return new Drawing(
                LineChart.svg("t-closing", "Payload of a single stage", "dry mass (t)", List.of(panel), 420),
                "Payload of a single stage of equal start mass against its dry mass; each line ends where nothing is left.",
                false);
    }

    private static Curve line(ClosingCurve curve, Ink ink) {
        List<Curve.Point> points = new ArrayList<>();
        for (ClosingCurve.Point p : curve.points()) {
            if (p.payload() >= 0) {
                points.add(new Curve.Point(p.dryMass() / 1e3, p.payload() / 1e3));
            }
        }
        if (curve.closingDryMass() > 0) {
            points.add(new Curve.Point(curve.closingDryMass() / 1e3, 0));
        }
        return new Curve(curve.pair(), ink, ink == Ink.GAIN || ink == Ink.STEEL, points);
    }
}

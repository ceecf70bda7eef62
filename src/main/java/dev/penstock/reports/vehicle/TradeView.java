package dev.penstock.reports.vehicle;

import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.concept.InputsAndWarnings;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.table.VehicleTables;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.TradeResult;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ClosingCurve;
import dev.penstock.vehicle.trade.PropellantTrade;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Propellant pairs on one mission as JSON document, terminal table and page. */
public final class TradeView {

    private static final List<Ink> INKS = List.of(Ink.FUEL, Ink.OXIDIZER, Ink.GAS, Ink.GAIN, Ink.STEEL, Ink.MUTED);

    private TradeView() {}

    /**
     * @param result pairs on a mission
     * @return JSON document
     */
    public static Map<String, Object> json(TradeResult result) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", result.plan().name());
        map.put("delta_v_m_s", result.plan().mission().total());
        map.put("pairs", result.candidates().stream().map(TradeView::candidate).toList());
        return map;
    }

    private static Map<String, Object> candidate(TradeResult.Candidate c) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("oxidizer", c.pair().oxidizer());
        map.put("fuel", c.pair().fuel());
        map.put("mixture_ratio", c.pair().mixtureRatio());
        map.put("closes", c.row().flatMap(PropellantTrade.Row::sizing).isPresent());
        map.put(
                "reason",
                c.failure().isEmpty() ? c.row().map(PropellantTrade.Row::reason).orElse("") : c.failure());
        c.row().ifPresent(row -> {
            map.put("isp_s", row.engine().vacuumIsp());
            map.put("bulk_density_kg_m3", row.bulkDensity());
            row.sizing().ifPresent(s -> {
                map.put("start_mass_kg", s.startMass());
                map.put("payload_kg", s.payload());
                map.put("dry_mass_kg", s.dryMass());
                map.put("propellant_mass_kg", s.propellantMass());
                map.put("tank_volume_m3", row.tankVolume());
                map.put("height_m", row.height());
                map.put("structural_coefficient", row.structuralCoefficient());
            });
        });
        c.curve().ifPresent(curve -> {
            Map<String, Object> single = new LinkedHashMap<>();
            single.put("start_mass_kg", curve.startMass());
            single.put("closing_dry_mass_kg", curve.closingDryMass());
            single.put("modelled_dry_mass_kg", c.modelledDryMass());
            single.put(
                    "points",
                    curve.points().stream()
                            .map(p -> Map.of("dry_mass_kg", p.dryMass(), "payload_kg", p.payload()))
                            .toList());
            map.put("single_stage", single);
        });
        return map;
    }

    /**
     * @param result pairs on a mission
     * @return table for a terminal
     */
    public static String text(TradeResult result) {
        String line = System.lineSeparator();
        TextTable table = new TextTable()
                .header(
                        "pair",
                        "Isp s",
                        "bulk kg/m³",
                        "start t",
                        "payload t",
                        "dry t",
                        "tanks m³",
                        "height m",
                        "single stage: dry t",
                        "closes below t");
        result.candidates().forEach(c -> table.row(cells(c).toArray(String[]::new)));
        StringBuilder text = new StringBuilder(result.plan().name() + ", ideal speed gain "
                + Figures.fixed(result.plan().mission().total(), 0) + " m/s" + line + line + table.text());
        result.candidates().stream().filter(c -> !reason(c).isEmpty()).forEach(c -> text.append(line)
                .append(c.pair())
                .append(": ")
                .append(reason(c))
                .append(line));
        return text.toString();
    }

    private static String reason(TradeResult.Candidate c) {
        return c.failure().isEmpty() ? c.row().map(PropellantTrade.Row::reason).orElse("") : c.failure();
    }

    private static List<String> cells(TradeResult.Candidate c) {
        List<String> cells = new ArrayList<>();
        cells.add(c.pair().toString());
        if (c.row().isEmpty()) {
            return cells;
        }
        PropellantTrade.Row row = c.row().get();
        cells.add(Figures.fixed(row.engine().vacuumIsp(), 1));
        cells.add(Figures.fixed(row.bulkDensity(), 0));
        boolean closes = row.sizing().isPresent();
        cells.add(closes ? VehicleTables.tonnes(row.sizing().get().startMass()) : "none");
        cells.add(closes ? VehicleTables.tonnes(row.sizing().get().payload()) : "");
        cells.add(closes ? VehicleTables.tonnes(row.sizing().get().dryMass()) : "");
        cells.add(closes ? Figures.significant(row.tankVolume(), 3) : "");
        cells.add(closes ? Figures.fixed(row.height(), 1) : "");
        cells.add(VehicleTables.tonnes(c.modelledDryMass()));
        cells.add(c.curve()
                .map(curve -> VehicleTables.tonnes(curve.closingDryMass()))
                .orElse(""));
        return cells;
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
        model.put("cautions", Cautions.CAUTIONS);
        model.put("software", software);
        return Pages.fill("vehicle.ftlh", model);
    }

    private static List<Map<String, String>> headline(TradeResult result) {
        List<Map<String, String>> figures = new ArrayList<>();
        for (TradeResult.Candidate c : result.candidates()) {
            c.row()
                    .flatMap(PropellantTrade.Row::sizing)
                    .ifPresent((VehicleSizing s) -> figures.add(Map.of(
                            "name",
                            "start mass, " + c.pair(),
                            "value",
                            VehicleTables.tonnes(s.startMass()),
                            "unit",
                            "t")));
        }
        return figures;
    }

    private static PageSection section(TradeResult result) {
        PageTable.Builder table = PageTable.titled(
                "Pairs",
                "<pair",
                "Isp (s)",
                "bulk density (kg/m³)",
                "start mass (t)",
                "payload (t)",
                "dry (t)",
                "tanks (m³)",
                "height (m)",
                "single stage: dry mass (t)",
                "closes below (t)");
        result.candidates().forEach(c -> {
            List<String> cells = cells(c);
            while (cells.size() < 10) {
                cells.add("");
            }
            table.row(cells.toArray(String[]::new));
        });
        return new PageSection(
                "trade",
                "Propellants",
                "Which pair carries this mission lightest?",
                List.of(
                        "Every pair runs the same engine concept with its propellants changed, and every stage takes that"
                                + " engine: the pairs differ in nothing else.",
                        "A single stage carries what its final mass leaves over its dry mass. Where a line meets zero, the"
                                + " stage stops closing; the table says what the dry-mass model gives."),
                List.of(chart(result)),
                List.of(table.table()),
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

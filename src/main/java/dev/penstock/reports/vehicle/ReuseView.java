package dev.penstock.reports.vehicle;

import static dev.penstock.quantities.Notation.TONNES;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.StageReturn;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ReuseTrade;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What it costs to bring the first stage back, as JSON document and terminal table. */
public final class ReuseView {

    private static final Notation SPEED = Notation.fixed("m/s", "m/s", 1, 0);

    /** Figures of a way of recovery. */
    private static final FigureTable<ReuseTrade.Row> ROWS = FigureTable.<ReuseTrade.Row>ofOne()
            .word("mode", "first stage", ReuseView::name)
            .number("boostback_m_s", "boost back", SPEED, r -> r.recovery().boostback())
            .number("entry_m_s", "entry", SPEED, r -> r.recovery().entry())
            .number("landing_m_s", "landing", SPEED, r -> r.recovery().landing())
            .word("closes", "closes", r -> r.sizing().isPresent())
            .word("reason", "reason", ReuseTrade.Row::reason)
            .optional("start_mass_kg", "start", TONNES, of(VehicleSizing::startMass))
            .leftOutIfAbsent()
            .optional("payload_kg", "payload", TONNES, of(VehicleSizing::payload))
            .leftOutIfAbsent()
            .optional("payload_fraction", "payload", significant("", "%", 100, 3), of(VehicleSizing::payloadFraction))
            .leftOutIfAbsent()
            .optional("recovery_propellant_kg", "kept propellant", TONNES, of(v -> v.stages()
                    .get(0)
                    .propellant()
                    .recovery()))
            .leftOutIfAbsent()
            .optional("first_stage_dry_mass_kg", "its dry mass", TONNES, of(v -> v.stages()
                    .get(0)
                    .dryMass()
                    .total()))
            .leftOutIfAbsent()
            .word("flown", "flown", r -> flown(r).isPresent())
            .optional("landing_needed_m_s", "landing needs", SPEED, r -> back(r).map(StageReturn::landingDeltaV))
            .leftOutIfAbsent()
            .optional("boostback_needed_m_s", "boost back needs", SPEED, r -> back(r).map(StageReturn::boostbackDeltaV))
            .leftOutIfAbsent()
            .each("warnings", r -> r.made().map(ReuseTrade.Made::warnings).orElse(List.of()), CheckFigures.WARNINGS)
            .number(
                    "burns_m_s",
                    "burns",
                    SPEED,
                    r -> r.recovery().boostback()
                            + r.recovery().entry()
                            + r.recovery().landing())
            .outsideDocuments()
            .table();

    private ReuseView() {}

    private static Optional<FlownSizing> flown(ReuseTrade.Row row) {
        return row.made().flatMap(ReuseTrade.Made::flown);
    }

    private static Optional<StageReturn> back(ReuseTrade.Row row) {
        return flown(row).flatMap(FlownSizing::back);
    }

    private static Function<ReuseTrade.Row, Optional<Double>> of(Function<VehicleSizing, Double> figure) {
        return row -> row.sizing().map(figure);
    }

    /**
     * @param rows what became of each way of recovery
     * @return JSON document
     */
    public static Map<String, Object> json(List<ReuseTrade.Row> rows) {
        return Map.of("reuse", FigureJson.each(ROWS, rows));
    }

    /**
     * @param rows what became of each way of recovery
     * @return table for a terminal
     */
    public static String text(List<ReuseTrade.Row> rows) {
        StringBuilder text = new StringBuilder(TextTable.of(FigureRows.list(
                "",
                ROWS,
                "reuse",
                rows,
                "mode start_mass_kg payload_kg payload_fraction recovery_propellant_kg first_stage_dry_mass_kg"
                        + " burns_m_s")));
        String line = System.lineSeparator();
        rows.stream().filter(row -> row.sizing().isEmpty()).forEach(row -> text.append(line)
                .append(name(row))
                .append(": ")
                .append(row.reason())
                .append(line));
        rows.forEach(row -> row.made()
                .ifPresent(made -> text.append(BalanceText.warnings(made.warnings().stream()
                        .map(w -> new Warning(name(row) + ", " + w.source(), w.message()))
                        .toList()))));
        return text.toString();
    }

    private static String name(ReuseTrade.Row row) {
        return name(row.recovery().mode());
    }

    static String name(Recovery.Mode mode) {
        return mode == Recovery.Mode.NONE ? "lost" : mode.key().replace('-', ' ');
    }
}

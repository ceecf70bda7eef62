package dev.penstock.reports.vehicle;

import dev.penstock.reports.table.VehicleTables;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.trade.ReuseTrade;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What it costs to bring the first stage back, as JSON document and terminal table. */
public final class ReuseView {

    private ReuseView() {}

    /**
     * @param rows what became of each way of recovery
     * @return JSON document
     */
    public static Map<String, Object> json(List<ReuseTrade.Row> rows) {
        return Map.of("reuse", rows.stream().map(ReuseView::row).toList());
    }

    private static Map<String, Object> row(ReuseTrade.Row row) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("mode", name(row.recovery()));
        map.put("boostback_m_s", row.recovery().boostback());
        map.put("entry_m_s", row.recovery().entry());
        map.put("landing_m_s", row.recovery().landing());
        map.put("closes", row.sizing().isPresent());
        map.put("reason", row.reason());
        row.sizing().ifPresent(s -> {
            StageSizing first = s.stages().get(0);
            map.put("start_mass_kg", s.startMass());
            map.put("payload_kg", s.payload());
            map.put("payload_fraction", s.payloadFraction());
            map.put("recovery_propellant_kg", first.propellant().recovery());
            map.put("first_stage_dry_mass_kg", first.dryMass().total());
        });
        return map;
    }

    /**
     * @param rows what became of each way of recovery
     * @return table for a terminal
     */
    public static String text(List<ReuseTrade.Row> rows) {
        String line = System.lineSeparator();
        TextTable table = new TextTable()
                .header(
                        "first stage",
                        "start t",
                        "payload t",
                        "payload %",
                        "kept propellant t",
                        "its dry mass t",
                        "burns m/s");
        StringBuilder reasons = new StringBuilder();
        for (ReuseTrade.Row row : rows) {
            Recovery r = row.recovery();
            if (row.sizing().isEmpty()) {
                table.row(name(r), "none");
                reasons.append(line)
                        .append(name(r))
                        .append(": ")
                        .append(row.reason())
                        .append(line);
                continue;
            }
            StageSizing first = row.sizing().get().stages().get(0);
            table.row(
                    name(r),
                    VehicleTables.tonnes(row.sizing().get().startMass()),
                    VehicleTables.tonnes(row.sizing().get().payload()),
                    Figures.significant(100 * row.sizing().get().payloadFraction(), 3),
                    VehicleTables.tonnes(first.propellant().recovery()),
                    VehicleTables.tonnes(first.dryMass().total()),
                    Figures.fixed(r.boostback() + r.entry() + r.landing(), 0));
        }
        return table.text() + reasons;
    }

    private static String name(Recovery recovery) {
        return switch (recovery.mode()) {
            case NONE -> "lost";
            default -> recovery.mode().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }
}

package dev.penstock.reports.vehicle;

import dev.penstock.errors.NotClosed;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.VehicleSpread;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** What a vehicle's start mass or payload may turn out to be, as JSON object and text. */
public final class SpreadView {

    private SpreadView() {}

    /**
     * @param spread sampled vehicle
     * @return JSON object
     */
    public static Map<String, Object> json(VehicleSpread spread) {
        Map<String, Object> figure = new LinkedHashMap<>();
        figure.put("likely", spread.likely());
        if (spread.closed() > 0) {
            figure.put("p5", spread.percentile5());
            figure.put("p50", spread.median());
            figure.put("p95", spread.percentile95());
        }
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("samples", spread.samples());
        map.put("closed", spread.closed());
        map.put("failures", spread.failures());
        map.put("figures", Map.of(spread.figure().key(), figure));
        map.put("drivers", Map.of(spread.figure().key(), FigureJson.each(drivers(spread), spread.drivers())));
        return map;
    }

    /**
     * @param spread sampled vehicle
     * @return sentence and table for a terminal
     */
    public static String text(VehicleSpread spread) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(line);
        if (spread.closed() > 0) {
            Notation notation = notation(spread);
            text.append(String.format(
                            Locale.ROOT,
                            "%d of %d samples close: %s %s at 5 %%, %s at 50 %%, %s at 95 %%; most likely %s",
                            spread.closed(),
                            spread.samples(),
                            spread.figure().title(),
                            notation.writeWithUnit(spread.percentile5()),
                            notation.writeWithUnit(spread.median()),
                            notation.writeWithUnit(spread.percentile95()),
                            notation.writeWithUnit(spread.likely())))
                    .append(line);
            NotClosed.meaning(spread.closed(), spread.samples())
                    .ifPresent(told -> text.append(told).append(line));
            text.append(line);
        }
        text.append(TextTable.of(FigureRows.list(
                "What moves the " + spread.figure().title(),
                drivers(spread),
                "drivers",
                spread.drivers(),
                "driver low high")));
        NotClosed.sentences(spread.failures())
                .forEach(sentence -> text.append(sentence).append(line));
        return text.toString();
    }

    /** Its title with the unit in which it is written. */
    static String titleWithUnit(VehicleSpread spread) {
        String unit = notation(spread).unit();
        return spread.figure().title() + (unit.isEmpty() ? "" : " (" + unit + ")");
    }

    static Notation notation(VehicleSpread spread) {
        return spread.figure() == VehicleSpread.Figure.ISP_FACTOR ? Notation.significant("", 4) : Notation.TONNES;
    }

    private static FigureTable<VehicleSpread.Driver> drivers(VehicleSpread spread) {
        return FigureTable.<VehicleSpread.Driver>ofOne()
                .word("driver", "uncertain by itself", VehicleSpread.Driver::name)
                .number("low", spread.figure().title() + " at 5 %", notation(spread), VehicleSpread.Driver::low)
                .number("high", "at 95 %", notation(spread), VehicleSpread.Driver::high)
                .table();
    }
}

package dev.penstock.reports.vehicle;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.PayloadPartials;
import dev.penstock.vehicle.PayloadToOrbit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What moves the payload of a vehicle that flies, and what it carries to other orbits: documents, tables, chart. */
public final class PayloadView {

    /** Derivatives by stage. */
    private static final FigureTable<PayloadPartials.Stage> PARTIALS = FigureTable.named(PayloadPartials.Stage::name)
            .word("stage", "stage", PayloadPartials.Stage::name)
            .number("by_isp_kg_s", "payload by Isp", Notation.significant("kg/s", 4), PayloadPartials.Stage::impulse)
            .number("by_dry_mass", "by dry mass", Notation.significant("kg/kg", 4), PayloadPartials.Stage::dryMass)
            .number(
                    "by_thrust_kg_N",
                    "by thrust",
                    Notation.significant("kg/N", "kg/kN", 1e3, 4),
                    PayloadPartials.Stage::thrust)
            .table();

    /** Payload by orbit. */
    private static final FigureTable<PayloadToOrbit> ORBITS = FigureTable.<PayloadToOrbit>ofOne()
            .number("altitude_m", "altitude", Notation.significant("m", "km", 1e-3, 5), PayloadToOrbit::altitude)
            .number(
                    "inclination_rad",
                    "inclination",
                    new Notation("rad", "deg", angle -> Notation.fixed(Math.toDegrees(angle), 2)),
                    PayloadToOrbit::inclination)
            .optional("payload_kg", "payload", Notation.MASS, PayloadToOrbit::payload)
            .word(
                    "failure",
                    "why not",
                    orbit -> orbit.reason().isEmpty() ? Optional.empty() : Optional.of(orbit.reason()))
            .table();

    private static final List<Ink> INKS = List.of(Ink.OXIDIZER, Ink.FUEL, Ink.GAS, Ink.GAIN, Ink.STEEL);

    private PayloadView() {}

    /**
     * @param partials derivatives
     * @return their list for a document
     */
    public static List<Map<String, Object>> json(PayloadPartials partials) {
        return FigureJson.each(PARTIALS, partials.stages());
    }

    /**
     * @param orbits payload by orbit
     * @return their list for a document
     */
    public static List<Map<String, Object>> json(List<PayloadToOrbit> orbits) {
        return FigureJson.each(ORBITS, orbits);
    }

    /**
     * @param partials derivatives
     * @return table for a terminal
     */
    public static String text(PayloadPartials partials) {
        return System.lineSeparator() + TextTable.of(table(partials));
    }

    /**
     * @param orbits payload by orbit
     * @return table for a terminal; empty text for none
     */
    public static String text(List<PayloadToOrbit> orbits) {
        return orbits.isEmpty() ? "" : System.lineSeparator() + TextTable.of(table(orbits));
    }

    private static PageTable table(PayloadPartials partials) {
        return FigureRows.list(
                        "What the payload gains",
                        PARTIALS,
                        "flight.payload_partials",
                        partials.stages(),
                        "stage by_isp_kg_s by_dry_mass by_thrust_kg_N")
                .untraced();
    }

    private static PageTable table(List<PayloadToOrbit> orbits) {
        return FigureRows.list(
                        "Payload to other orbits",
                        ORBITS,
                        "orbits",
                        orbits,
                        "altitude_m inclination_rad payload_kg failure")
                .untraced();
    }

    /**
     * @param orbits payload by orbit
     * @return section of a page, with a chart where there is a line to draw
     */
    public static PageSection section(List<PayloadToOrbit> orbits) {
        Map<Double, List<Curve.Point>> lines = new LinkedHashMap<>();
        orbits.forEach(orbit -> orbit.payload()
                .ifPresent(payload -> lines.computeIfAbsent(orbit.inclination(), i -> new ArrayList<>())
                        .add(new Curve.Point(orbit.altitude() / 1e3, payload / 1e3))));
        List<Curve> curves = new ArrayList<>();
        lines.forEach((inclination, points) -> {
            if (points.size() > 1) {
                int index = curves.size();
                curves.add(new Curve(
                        Notation.fixed(Math.toDegrees(inclination), 1) + " deg",
                        INKS.get(index % INKS.size()),
                        index >= INKS.size(),
                        points));
            }
        });
        List<Drawing> drawings = curves.isEmpty()
                ? List.of()
                : List.of(new Drawing(
                        LineChart.svg(
                                "f-orbits",
                                "Payload over altitude",
                                "altitude of the orbit (km)",
                                List.of(new LineChart.Panel("payload (t)", 1, false, curves)),
                                320),
                        "Payload of this vehicle by altitude, a line for each inclination.",
                        false));
        return new PageSection(
                "orbits",
                "Other orbits",
                "What does this vehicle carry to other orbits?",
                List.of("Stages and propellant stay as they are; each orbit has its own best flight, manoeuvres and"
                        + " reserve."),
                drawings,
                List.of(table(orbits)),
                List.of());
    }
}

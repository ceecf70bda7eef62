package dev.penstock.reports.vehicle;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.quantities.Scale;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.FlightFigures;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.StageReturn;
import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.Target;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** A flight to orbit as JSON document, terminal tables and section of a page. */
public final class FlightView {

    /** Part of a document about a vehicle whose first stage comes back. */
    public static final String RETURN = "return";

    private FlightView() {}

    /**
     * @param flown vehicle and flight
     * @return JSON document: the vehicle with its flight
     */
    public static Map<String, Object> json(FlownSizing flown) {
        Map<String, Object> map = new LinkedHashMap<>(VehicleView.json(flown.sizing()));
        map.put("warnings", FigureJson.each(CheckFigures.WARNINGS, flown.warnings()));
        Map<String, Object> flight = new LinkedHashMap<>(FigureJson.of(FlightFigures.FLOWN, flown));
        flight.putAll(new FlightDocument(flown).json());
        map.put("flight", flight);
        flown.back().ifPresent(b -> map.put(RETURN, FigureJson.of(FlightFigures.RETURN, b)));
        return map;
    }

    /**
     * @param flown vehicle and flight
     * @return tables for a terminal
     */
    public static String text(FlownSizing flown) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(VehicleView.tables(flown.sizing())).append(line);
        text.append(TextTable.of(segments(flown.ascent()))).append(line);
        text.append(TextTable.of(facts(flown.ascent())));
        flown.back().ifPresent(b -> text.append(line).append(TextTable.of(wayBack(b))));
        text.append(line).append(BalanceText.limits(flown.ascent().limits()));
        return text.append(BalanceText.warnings(flown.warnings())).toString();
    }

    /**
     * @param flown vehicle and flight
     * @return the section of a page
     */
    static PageSection section(FlownSizing flown) {
        AscentResult a = flown.ascent();
        List<PageTable> tables = new ArrayList<>(List.of(segments(a), facts(a), limits(a)));
        flown.back().ifPresent(b -> tables.add(wayBack(b)));
        return new PageSection(
                "flight",
                "Flight",
                "What does the way to orbit cost?",
                List.of(
                        "Thrust and specific impulse are those of the engine at every height. Losses are counted in"
                                + " the frame that turns with the air; together with the speed reached they add up to the"
                                + " ideal gain.",
                        "The mean specific impulse is what a fixed figure would have to be for the same impulse from"
                                + " the same propellant."),
                figures(a),
                tables,
                List.of());
    }

    /**
     * @param flight a flight to orbit
     * @return its path and its loads
     */
    public static List<Drawing> figures(AscentResult flight) {
        return List.of(path(flight), loads(flight));
    }

    private static Drawing path(AscentResult a) {
        Scale height = Scale.of("km");
        Scale speed = Scale.of("km/s");
        List<LineChart.Panel> panels = List.of(
                panel(
                        height.label("altitude"),
                        curve(a, "altitude", Ink.OXIDIZER, false, p -> height.of(p.altitude()))),
                new LineChart.Panel(
                        speed.label("speed"),
                        1,
                        true,
                        List.of(
                                curve(a, "against the stars", Ink.GAS, false, p -> speed.of(p.inertialSpeed())),
                                curve(a, "through the air", Ink.FUEL, true, p -> speed.of(p.airSpeed())))),
                new LineChart.Panel(
                        "angle (deg)",
                        1,
                        true,
                        List.of(
                                curve(a, "thrust", Ink.GAIN, false, p -> Math.toDegrees(p.pitch())),
                                curve(a, "path", Ink.STEEL, true, p -> Math.toDegrees(p.pathAngle())))));
        return new Drawing(
                LineChart.svg("f-path", "Path to orbit", "time since release (s)", panels, 520),
                "Height, speed and angles above the horizon. Thrust follows the path while the air is dense.",
                false);
    }

    private static Drawing loads(AscentResult a) {
        Scale pressure = Scale.of("kPa");
        Scale acceleration = Scale.of("m/s²");
        List<LineChart.Panel> panels = List.of(
                panel(
                        pressure.label("dynamic pressure"),
                        curve(a, "dynamic pressure", Ink.OXIDIZER, false, p -> pressure.of(p.dynamicPressure()))),
                panel(
                        acceleration.label("acceleration"),
                        curve(a, "acceleration", Ink.GAS, false, p -> acceleration.of(p.acceleration()))),
                panel("specific impulse (s)", new Curve("specific impulse", Ink.GAIN, false, burning(a))),
                panel("throttle (%)", curve(a, "throttle", Ink.STEEL, false, p -> 100 * p.throttle())));
        return new Drawing(
                LineChart.svg("f-loads", "Loads in flight", "time since release (s)", panels, 620),
                "What the vehicle feels, and what its engines give: specific impulse rises as the air thins.",
                false);
    }

    private static List<Curve.Point> burning(AscentResult a) {
        // A coast has no impulse: a gap, not a line from one burn to the next.
        return a.points().stream()
                .map(p -> new Curve.Point(p.time(), p.throttle() > 0 ? p.isp() : Double.NaN))
                .toList();
    }

    private static LineChart.Panel panel(String label, Curve curve) {
        return new LineChart.Panel(label, 1, true, List.of(curve));
    }

    private static Curve curve(
            AscentResult a, String name, Ink ink, boolean dashed, ToDoubleFunction<AscentPoint> value) {
        return new Curve(
                name,
                ink,
                dashed,
                a.points().stream()
                        .map(p -> new Curve.Point(p.time(), value.applyAsDouble(p)))
                        .toList());
    }

    private static PageTable segments(AscentResult a) {
        return FigureRows.list(
                        "Parts of the flight",
                        FlightFigures.SEGMENTS,
                        "flight.segments",
                        a.segments(),
                        "name ignition_s cut_off_s isp_mean_s isp_vacuum_s ideal_delta_v_m_s altitude_m air_speed_m_s"
                                + " dynamic_pressure_Pa")
                .untraced();
    }

    private static PageTable facts(AscentResult a) {
        String fairing = a.fairingDrop().isPresent() ? " fairing_overboard_s fairing_overboard_m" : "";
        String second = a.secondBurn().isPresent()
                ? " parking_coast_s second_burn_s second_burn_end_s second_burn_ideal_delta_v_m_s"
                : "";
        String target = a.mission().target() instanceof Target.Escape
                ? " c3_m2_s2"
                : second.isEmpty() ? " apogee_altitude_m" : " perigee_reached_m apogee_reached_m";
        return FigureRows.sheet(
                        "Flight to orbit",
                        FlightFigures.FLIGHT,
                        a,
                        "flight",
                        "insertion_altitude_m" + target + second
                                + " inertial_speed_m_s rotation_credit_m_s gravity_loss_m_s drag_loss_m_s steering_loss_m_s"
                                + " back_pressure_loss_m_s ideal_delta_v_m_s delta_v_left_m_s isp_mean_s tilt_rad"
                                + " free_above_m insertion_time_s" + fairing)
                .untraced();
    }

    private static PageTable wayBack(StageReturn b) {
        return FigureRows.sheet(
                        "Way back of " + b.stage(),
                        FlightFigures.RETURN,
                        b,
                        "return",
                        "speed_before_entry_burn_m_s ballistic_coefficient_kg_m2 heat_flux_peak_W_m2 heat_load_J_m2"
                                + " dynamic_pressure_peak_Pa deceleration_peak_m_s2 terminal_speed_m_s"
                                + " boostback_delta_v_m_s landing_delta_v_m_s")
                .untraced();
    }

    private static PageTable limits(AscentResult a) {
        return EngineTables.limits(a.limits(), "title value limit margin verdict source")
                .untraced();
    }
}

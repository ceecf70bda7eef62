package dev.penstock.reports.vehicle;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Figure;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.StageReturn;
import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.Entry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A flight to orbit as JSON document, terminal tables and section of a page. */
public final class FlightView {

    private static final int JSON_POINTS = 200;

    private FlightView() {}

    /**
     * @param flown vehicle and flight
     * @param back way back of the first stage, if it is recovered
     * @return JSON document: the vehicle with its flight
     */
    public static Map<String, Object> json(FlownSizing flown, Optional<StageReturn> back) {
        Map<String, Object> map = new LinkedHashMap<>(VehicleView.json(flown.sizing()));
        AscentResult a = flown.ascent();
        Map<String, Object> flight = new LinkedHashMap<>();
        flight.put("insertion_altitude_m", a.mission().insertionAltitude());
        flight.put("apogee_altitude_m", a.mission().apogeeAltitude());
        flight.put("insertion_time_s", a.insertionTime());
        flight.put("inertial_speed_m_s", a.inertialSpeed());
        flight.put("final_mass_kg", a.finalMass());
        flight.put("delta_v_left_m_s", a.margin());
        flight.put("ideal_delta_v_m_s", a.idealDeltaV());
        flight.put("gravity_loss_m_s", a.gravityLoss());
        flight.put("drag_loss_m_s", a.dragLoss());
        flight.put("steering_loss_m_s", a.steeringLoss());
        flight.put("back_pressure_loss_m_s", a.backPressureLoss());
        flight.put("rotation_credit_m_s", a.rotationCredit());
        flight.put("isp_mean_s", a.meanIsp());
        flight.put("tilt_rad", a.tilt());
        flight.put("dynamic_pressure_max_Pa", a.maxDynamicPressure());
        flight.put("acceleration_max_m_s2", a.maxAcceleration());
        flight.put("rounds", flown.rounds());
        flight.put("segments", a.segments().stream().map(FlightView::segment).toList());
        flight.put("limits", a.limits().stream().map(FlightView::limit).toList());
        flight.put("warnings", FigureJson.each(CheckFigures.WARNINGS, a.warnings()));
        flight.put("points", points(a));
        map.put("flight", flight);
        back.ifPresent(b -> map.put("return", entry(b)));
        return map;
    }

    private static Map<String, Object> segment(AscentResult.SegmentFlight s) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", s.name());
        map.put("ignition_s", s.ignition());
        map.put("cut_off_s", s.cutOff());
        map.put("isp_mean_s", s.meanIsp());
        map.put("isp_vacuum_s", s.vacuumIsp());
        map.put("ideal_delta_v_m_s", s.idealDeltaV());
        map.put("altitude_m", s.altitude());
        map.put("air_speed_m_s", s.airSpeed());
        map.put("dynamic_pressure_Pa", s.dynamicPressure());
        return map;
    }

    private static Map<String, Object> limit(LimitCheck c) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", c.name());
        map.put("value", c.value());
        map.put("limit", c.limit());
        map.put("unit", c.unit());
        map.put("met", c.met());
        map.put("source", c.source());
        return map;
    }

    private static List<Map<String, Object>> points(AscentResult a) {
        int every = Math.max(1, a.points().size() / JSON_POINTS);
        List<Map<String, Object>> list = new ArrayList<>();
        for (int i = 0; i < a.points().size(); i++) {
            if (i % every == 0 || i == a.points().size() - 1) {
                AscentPoint p = a.points().get(i);
                Map<String, Object> map = new LinkedHashMap<>();
                map.put("time_s", p.time());
                map.put("altitude_m", p.altitude());
                map.put("downrange_m", p.downrange());
                map.put("air_speed_m_s", p.airSpeed());
                map.put("inertial_speed_m_s", p.inertialSpeed());
                map.put("path_angle_rad", p.pathAngle());
                map.put("pitch_rad", p.pitch());
                map.put("mass_kg", p.mass());
                map.put("thrust_N", p.thrust());
                map.put("throttle", p.throttle());
                map.put("isp_s", p.isp());
                map.put("dynamic_pressure_Pa", p.dynamicPressure());
                map.put("mach", p.mach());
                map.put("acceleration_m_s2", p.acceleration());
                list.add(map);
            }
        }
        return list;
    }

    private static Map<String, Object> entry(StageReturn b) {
        Entry.Result e = b.entry();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("stage", b.stage());
        map.put("speed_before_entry_burn_m_s", b.speedBeforeEntryBurn());
        map.put("heat_flux_peak_W_m2", e.peakHeatFlux());
        map.put("heat_load_J_m2", e.heatLoad());
        map.put("dynamic_pressure_peak_Pa", e.peakDynamicPressure());
        map.put("deceleration_peak_m_s2", e.peakDeceleration());
        map.put("terminal_speed_m_s", e.terminalSpeed());
        map.put("ballistic_coefficient_kg_m2", e.body().ballisticCoefficient(0));
        map.put("landing_delta_v_m_s", b.landingDeltaV());
        map.put("warnings", FigureJson.each(CheckFigures.WARNINGS, b.warnings()));
        return map;
    }

    /**
     * @param flown vehicle and flight
     * @param back way back of the first stage, if it is recovered
     * @return tables for a terminal
     */
    public static String text(FlownSizing flown, Optional<StageReturn> back) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(VehicleView.text(flown.sizing())).append(line);
        TextTable table = new TextTable()
                .header(
                        "flight",
                        "from s",
                        "to s",
                        "mean Isp s",
                        "vacuum Isp s",
                        "ideal gain m/s",
                        "altitude km",
                        "air speed m/s",
                        "dyn. pressure kPa");
        flown.ascent().segments().forEach(s -> table.row(segmentCells(s)));
        text.append(table.text()).append(line);
        TextTable facts = new TextTable().header("flight to orbit", "value", "<unit");
        facts(flown.ascent()).forEach(row -> facts.row(row.toArray(String[]::new)));
        text.append(facts.text());
        back.ifPresent(b -> {
            TextTable way = new TextTable().header("way back of " + b.stage(), "value", "<unit");
            back(b).forEach(row -> way.row(row.toArray(String[]::new)));
            text.append(line).append(way.text()).append(BalanceText.warnings(b.warnings()));
        });
        return text.append(BalanceText.warnings(flown.ascent().warnings())).toString();
    }

    /**
     * @param flown vehicle and flight
     * @param back way back of the first stage, if it is recovered
     * @return the section of a page
     */
    static PageSection section(FlownSizing flown, Optional<StageReturn> back) {
        AscentResult a = flown.ascent();
        PageTable.Builder segments = PageTable.titled(
                "Parts of the flight",
                "<part",
                "from (s)",
                "to (s)",
                "mean Isp (s)",
                "vacuum Isp (s)",
                "ideal gain (m/s)",
                "altitude (km)",
                "air speed (m/s)",
                "dynamic pressure (kPa)");
        a.segments().forEach(s -> segments.row(segmentCells(s)));
        PageTable.Builder facts = PageTable.titled("Flight to orbit", "<quantity", "value", "<unit");
        facts(a).forEach(row -> facts.row(row.toArray(String[]::new)));
        List<PageTable> tables = new ArrayList<>(List.of(segments.table(), facts.table(), limits(a)));
        back.ifPresent(b -> {
            PageTable.Builder way = PageTable.titled("Way back of " + b.stage(), "<quantity", "value", "<unit");
            back(b).forEach(row -> way.row(row.toArray(String[]::new)));
            tables.add(way.table());
        });
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
    public static List<Figure> figures(AscentResult flight) {
        return List.of(path(flight), loads(flight));
    }

    private static Figure path(AscentResult a) {
        List<LineChart.Panel> panels = List.of(
                panel("altitude (km)", curve(a, "altitude", Ink.OXIDIZER, false, p -> p.altitude() / 1e3)),
                new LineChart.Panel(
                        "speed (km/s)",
                        1,
                        true,
                        List.of(
                                curve(a, "against the stars", Ink.GAS, false, p -> p.inertialSpeed() / 1e3),
                                curve(a, "through the air", Ink.FUEL, true, p -> p.airSpeed() / 1e3))),
                new LineChart.Panel(
                        "angle (deg)",
                        1,
                        true,
                        List.of(
                                curve(a, "thrust", Ink.GAIN, false, p -> Math.toDegrees(p.pitch())),
                                curve(a, "path", Ink.STEEL, true, p -> Math.toDegrees(p.pathAngle())))));
        return new Figure(
                LineChart.svg("f-path", "Path to orbit", "time since release (s)", panels, 520),
                "Height, speed and angles above the horizon. Thrust follows the path while the air is dense.",
                false);
    }

    private static Figure loads(AscentResult a) {
        List<LineChart.Panel> panels = List.of(
                panel(
                        "dynamic pressure (kPa)",
                        curve(a, "dynamic pressure", Ink.OXIDIZER, false, p -> p.dynamicPressure() / 1e3)),
                panel("acceleration (m/s²)", curve(a, "acceleration", Ink.GAS, false, AscentPoint::acceleration)),
                panel("specific impulse (s)", new Curve("specific impulse", Ink.GAIN, false, burning(a))),
                panel("throttle (%)", curve(a, "throttle", Ink.STEEL, false, p -> 100 * p.throttle())));
        return new Figure(
                LineChart.svg("f-loads", "Loads on the way", "time since release (s)", panels, 620),
                "What the vehicle feels, and what its engines give: specific impulse rises as the air thins.",
                false);
    }

    private static List<Curve.Point> burning(AscentResult a) {
        return a.points().stream()
                .filter(p -> p.throttle() > 0)
                .map(p -> new Curve.Point(p.time(), p.isp()))
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

    private static String[] segmentCells(AscentResult.SegmentFlight s) {
        return new String[] {
            s.name(),
            Figures.fixed(s.ignition(), 1),
            Figures.fixed(s.cutOff(), 1),
            Figures.fixed(s.meanIsp(), 1),
            Figures.fixed(s.vacuumIsp(), 1),
            Figures.fixed(s.idealDeltaV(), 0),
            Figures.fixed(s.altitude() / 1e3, 1),
            Figures.fixed(s.airSpeed(), 0),
            Figures.significant(s.dynamicPressure() / 1e3, 3)
        };
    }

    private static List<List<String>> facts(AscentResult a) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("speed in orbit", Figures.fixed(a.inertialSpeed(), 1), "m/s"));
        rows.add(List.of("speed of the turning air there", Figures.fixed(a.rotationCredit(), 1), "m/s"));
        rows.add(List.of("gravity loss", Figures.fixed(a.gravityLoss(), 1), "m/s"));
        rows.add(List.of("drag loss", Figures.fixed(a.dragLoss(), 1), "m/s"));
        rows.add(List.of("steering loss", Figures.fixed(a.steeringLoss(), 1), "m/s"));
        rows.add(List.of("back-pressure loss", Figures.fixed(a.backPressureLoss(), 1), "m/s"));
        rows.add(List.of("ideal speed gain", Figures.fixed(a.idealDeltaV(), 1), "m/s"));
        rows.add(List.of("left in the stages", Figures.fixed(a.margin(), 1), "m/s"));
        rows.add(List.of("mean specific impulse", Figures.fixed(a.meanIsp(), 1), "s"));
        rows.add(List.of("tilt after release", Figures.fixed(Math.toDegrees(a.tilt()), 2), "deg"));
        rows.add(List.of("time to orbit", Figures.fixed(a.insertionTime(), 0), "s"));
        return rows;
    }

    private static List<List<String>> back(StageReturn b) {
        Entry.Result e = b.entry();
        return List.of(
                List.of("speed before the entry burn", Figures.fixed(b.speedBeforeEntryBurn(), 0), "m/s"),
                List.of("ballistic coefficient", Figures.significant(e.body().ballisticCoefficient(0), 3), "kg/m²"),
                List.of("highest heat flux", Figures.significant(e.peakHeatFlux() / 1e3, 3), "kW/m²"),
                List.of("heat load", Figures.significant(e.heatLoad() / 1e6, 3), "MJ/m²"),
                List.of("highest dynamic pressure", Figures.significant(e.peakDynamicPressure() / 1e3, 3), "kPa"),
                List.of("highest deceleration", Figures.fixed(e.peakDeceleration(), 1), "m/s²"),
                List.of("terminal speed at the ground", Figures.fixed(e.terminalSpeed(), 0), "m/s"),
                List.of("speed change to land", Figures.fixed(b.landingDeltaV(), 0), "m/s"));
    }

    private static PageTable limits(AscentResult a) {
        PageTable.Builder table =
                PageTable.titled("Limits of the flight", "<limit", "value", "bound", "<unit", "<source");
        for (LimitCheck c : a.limits()) {
            table.marked(
                    c.met() ? "" : "missed",
                    c.name(),
                    Figures.significant(c.value(), 4),
                    Figures.significant(c.limit(), 4),
                    c.unit(),
                    c.source());
        }
        return table.table();
    }
}

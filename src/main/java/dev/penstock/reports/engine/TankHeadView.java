package dev.penstock.reports.engine;

import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.TextTable;
import dev.penstock.turbomachinery.start.TankHeadRun;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A start on tank head as JSON document and terminal table. */
public final class TankHeadView {

    /** Rows of a table that a reader follows. */
    private static final int ROWS = 12;

    private TankHeadView() {}

    /**
     * @param name name of the engine
     * @param run the start
     * @return JSON document
     */
    public static Map<String, Object> json(String name, TankHeadRun run) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", name);
        map.put("reached", run.reached());
        map.put("speed_fraction", run.speedFraction());
        map.put("time_s", run.time());
        map.put("torque_over_breakaway", run.breakaway());
        map.put("propellant_used_kg", run.used());
        map.put("metal_temperature_K", run.metalTemperature());
        map.put("why", run.why());
        map.put("points", thinned(run).stream().map(TankHeadView::point).toList());
        return map;
    }

    private static Map<String, Object> point(TankHeadRun.Point p) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("time_s", p.time());
        map.put("speed_fraction", p.speedFraction());
        map.put("gas_flow_kg_s", p.flow());
        map.put("turbine_inlet_pressure_Pa", p.pressure());
        map.put("turbine_inlet_temperature_K", p.temperature());
        map.put("metal_temperature_K", p.metalTemperature());
        return map;
    }

    /** Points evenly along the run, both ends among them. */
    private static List<TankHeadRun.Point> thinned(TankHeadRun run) {
        List<TankHeadRun.Point> all = run.points();
        if (all.size() <= ROWS) {
            return all;
        }
        List<TankHeadRun.Point> few = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            few.add(all.get(i * (all.size() - 1) / (ROWS - 1)));
        }
        return few;
    }

    /**
     * @param name name of the engine
     * @param run the start
     * @return table and a sentence for a terminal
     */
    public static String text(String name, TankHeadRun run) {
        String line = System.lineSeparator();
        TextTable table = new TextTable().header("s", "speed", "gas kg/s", "before turbine bar", "K", "metal K");
        thinned(run)
                .forEach(p -> table.row(
                        Figures.fixed(p.time(), 2),
                        Figures.percent(p.speedFraction()),
                        Figures.significant(p.flow(), 3),
                        Figures.bar(p.pressure()),
                        Figures.kelvin(p.temperature()),
                        p.metalTemperature() > 0 ? Figures.kelvin(p.metalTemperature()) : "-"));
        StringBuilder text = new StringBuilder(name + ", started on tank head" + line + line);
        if (!table.isEmpty()) {
            text.append(table.text()).append(line);
        }
        text.append(
                run.reached()
                        ? Figures.percent(run.speedFraction()) + " of the design speed is reached in "
                                + Figures.significant(run.time(), 2) + " s with "
                                + Figures.significant(run.used(), 3) + " kg through the turbines."
                        : "The speed is not reached; the shafts come to " + Figures.percent(run.speedFraction()) + ": "
                                + run.why() + ".");
        text.append(line)
                .append("The torque at rest is ")
                .append(Figures.significant(run.breakaway(), 3))
                .append(
                        " times what breaks the shafts away. Inertia and breakaway torque are first estimates, a factor of"
                                + " 2; so is the time. Opening of valves and filling of lines and jacket come on top; for a small"
                                + " expander they are most of it.")
                .append(line);
        return text.toString();
    }
}

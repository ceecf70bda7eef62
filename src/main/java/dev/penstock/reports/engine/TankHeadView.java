package dev.penstock.reports.engine;

import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.turbomachinery.start.StartFigures;
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
        map.putAll(FigureJson.of(StartFigures.TANK_HEAD, run));
        map.put("points", FigureJson.each(StartFigures.MOMENTS, thinned(run)));
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
        PageTable table = FigureRows.list(
                "",
                StartFigures.MOMENTS,
                "points",
                thinned(run),
                "time_s speed_fraction gas_flow_kg_s turbine_inlet_pressure_Pa turbine_inlet_temperature_K"
                        + " metal_temperature_K");
        StringBuilder text = new StringBuilder(name + ", started on tank head" + line + line);
        if (!table.rows().isEmpty()) {
            text.append(TextTable.of(table)).append(line);
        }
        text.append(
                run.reached()
                        ? Notation.PERCENT.write(run.speedFraction()) + " of the design speed is reached in "
                                + Notation.significant(run.time(), 2) + " s with "
                                + Notation.significant(run.used(), 3) + " kg through the turbines."
                        : "The speed is not reached; the shafts come to " + Notation.PERCENT.write(run.speedFraction())
                                + ": " + run.why() + ".");
        text.append(line)
                .append("The torque at rest is ")
                .append(Notation.significant(run.breakaway(), 3))
                .append(" times what breaks the shafts away. Inertia and breakaway torque are first estimates, a"
                        + " factor of 2; so is the time. Opening of valves and filling of lines and jacket come on"
                        + " top; for a small expander they are most of it.")
                .append(line);
        return text.toString();
    }
}

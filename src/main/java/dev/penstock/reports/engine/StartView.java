package dev.penstock.reports.engine;

import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.StartRuns;
import dev.penstock.study.StartRuns.ShaftStart;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Starts on bottled gas as JSON document and terminal table. */
public final class StartView {

    private StartView() {}

    /**
     * @param name name of the engine
     * @param starts one per shaft
     * @return JSON document
     */
    public static Map<String, Object> json(String name, List<ShaftStart> starts) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", name);
        map.put("shafts", FigureJson.each(StartRuns.FIGURES, starts));
        return map;
    }

    /**
     * @param name name of the engine
     * @param starts one per shaft
     * @return table for a terminal
     */
    public static String text(String name, List<ShaftStart> starts) {
        PageTable table = FigureRows.list(
                "",
                StartRuns.FIGURES,
                "shafts",
                starts,
                "shaft speed_rad_s gas energy_J starts gas_per_start_kg gas_loaded_kg bottle_volume_m3 bottle_mass_kg"
                        + " final_pressure_Pa final_temperature_K");
        return name + ", spun up on bottled gas" + System.lineSeparator() + System.lineSeparator() + TextTable.of(table)
                + System.lineSeparator()
                + "The moment of inertia is a first estimate, a factor of 2. The bottle is blown down with real gas"
                + " and warms up again between starts." + System.lineSeparator();
    }
}

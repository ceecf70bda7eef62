package dev.penstock.reports.engine;

import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.StartRuns.ShaftStart;
import java.util.ArrayList;
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
        List<Map<String, Object>> rows = new ArrayList<>();
        for (ShaftStart start : starts) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("shaft", start.shaft());
            row.put("turbine", start.turbine());
            row.put("speed_rad_s", start.speed());
            row.put("gas", start.gas().gas());
            row.put("energy_J", start.gas().energy());
            row.put("starts", start.gas().starts());
            row.put("gas_per_start_kg", start.gas().gasPerStart());
            row.put("gas_used_kg", start.gas().gasUsed());
            row.put("gas_loaded_kg", start.gas().gasLoaded());
            row.put("bottle_volume_m3", start.gas().bottleVolume());
            row.put("bottle_mass_kg", start.gas().bottleMass());
            row.put("final_pressure_Pa", start.gas().finalPressure());
            row.put("final_temperature_K", start.gas().finalTemperature());
            rows.add(row);
        }
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", name);
        map.put("shafts", rows);
        return map;
    }

    /**
     * @param name name of the engine
     * @param starts one per shaft
     * @return table for a terminal
     */
    public static String text(String name, List<ShaftStart> starts) {
        TextTable table = new TextTable()
                .header(
                        "shaft",
                        "to rpm",
                        "<gas",
                        "energy kJ",
                        "starts",
                        "last start kg",
                        "loaded kg",
                        "bottle L",
                        "bottle kg",
                        "left bar",
                        "left K");
        for (ShaftStart start : starts) {
            table.row(
                    start.shaft(),
                    Figures.significant(start.speed() * 30 / Math.PI, 4),
                    start.gas().gas(),
                    Figures.significant(start.gas().energy() / 1e3, 4),
                    Integer.toString(start.gas().starts()),
                    Figures.significant(start.gas().gasPerStart(), 3),
                    Figures.significant(start.gas().gasLoaded(), 3),
                    Figures.significant(start.gas().bottleVolume() * 1e3, 4),
                    Figures.significant(start.gas().bottleMass(), 3),
                    Figures.significant(start.gas().finalPressure() / 1e5, 4),
                    Figures.significant(start.gas().finalTemperature(), 4));
        }
        return name + ", spun up on bottled gas" + System.lineSeparator() + System.lineSeparator() + table.text()
                + System.lineSeparator()
                + "The moment of inertia is a first estimate, a factor of 2. The bottle is blown down with real gas and warms up"
                + " again between starts." + System.lineSeparator();
    }
}

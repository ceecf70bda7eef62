package dev.penstock.reports;

import dev.penstock.cooling.ProtectionStudy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ways to protect a wall without a jacket, as JSON document and terminal table. */
public final class ProtectionView {

    private ProtectionView() {}

    /**
     * @param load heat load on the wall
     * @param options ways to protect it
     * @return JSON document
     */
    public static Map<String, Object> json(ProtectionStudy.Load load, List<ProtectionStudy.Option> options) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("gas_side_coefficient_W_m2_K", load.gasCoefficient());
        map.put("adiabatic_wall_temperature_K", load.adiabaticWallTemperature());
        map.put("time_s", load.time());
        map.put("initial_temperature_K", load.initialTemperature());
        List<Map<String, Object>> rows = new ArrayList<>();
        for (ProtectionStudy.Option option : options) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("name", option.name());
            row.put("possible", option.possible());
            row.put("thickness_m", option.thickness());
            row.put("areal_mass_kg_m2", option.arealMass());
            row.put("reusable", option.reusable());
            row.put("note", option.note());
            rows.add(row);
        }
        map.put("options", rows);
        return map;
    }

    /**
     * @param load heat load on the wall
     * @param options ways to protect it
     * @return table for a terminal
     */
    public static String text(ProtectionStudy.Load load, List<ProtectionStudy.Option> options) {
        TextTable table = new TextTable().header("way", "stands it", "mm", "kg/m²", "reusable", "<note");
        for (ProtectionStudy.Option option : options) {
            table.row(
                    option.name(),
                    option.possible() ? "yes" : "no",
                    option.thickness() > 0 ? Figures.significant(option.thickness() * 1e3, 3) : "-",
                    option.possible() ? Figures.significant(option.arealMass(), 3) : "-",
                    option.reusable() ? "yes" : "no",
                    option.note());
        }
        return Figures.significant(load.gasCoefficient() / 1e3, 3) + " kW/(m²·K) to gas at "
                + Figures.significant(load.adiabaticWallTemperature(), 4) + " K for "
                + Figures.significant(load.time(), 3) + " s" + System.lineSeparator() + System.lineSeparator()
                + table.text();
    }
}

package dev.penstock.reports.engine;

import dev.penstock.cooling.protection.HeatSinkWall;
import dev.penstock.cooling.protection.ProtectionStudy;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Ways to protect a wall without a jacket, as JSON document and terminal table. */
public final class ProtectionView {

    private static final String LINE = System.lineSeparator();

    private final ProtectionStudy.Load load;
    private final List<ProtectionStudy.Option> options;
    private final Optional<HeatSinkWall.Outcome> history;

    /**
     * @param load heat load on the wall
     * @param options ways to protect it
     * @param history what becomes of a plain wall through its pulses, if asked for
     */
    public ProtectionView(
            ProtectionStudy.Load load, List<ProtectionStudy.Option> options, Optional<HeatSinkWall.Outcome> history) {
        this.load = load;
        this.options = List.copyOf(options);
        this.history = history;
    }

    /** @return JSON document */
    public Map<String, Object> json() {
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
        history.ifPresent(h -> map.put("plain_wall", wallJson(h)));
        return map;
    }

    private static Map<String, Object> wallJson(HeatSinkWall.Outcome outcome) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("peak_temperature_K", outcome.peakTemperature());
        outcome.timeToLimit().ifPresent(t -> map.put("time_to_limit_s", t));
        map.put("heat_absorbed_J_m2", outcome.heatAbsorbed());
        map.put("heat_stored_J_m2", outcome.heatStored());
        map.put("heat_radiated_J_m2", outcome.heatRadiated());
        List<Map<String, Object>> instants = new ArrayList<>();
        for (HeatSinkWall.Instant instant : outcome.history()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("time_s", instant.time());
            row.put("hot_face_K", instant.hotFace());
            row.put("cold_face_K", instant.coldFace());
            instants.add(row);
        }
        map.put("history", instants);
        return map;
    }

    /** @return table for a terminal */
    public String text() {
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
                + Figures.significant(load.time(), 3) + " s" + LINE + LINE + table.text()
                + history.map(ProtectionView::wallText).orElse("");
    }

    private static String wallText(HeatSinkWall.Outcome outcome) {
        HeatSinkWall.Instant end = outcome.history().get(outcome.history().size() - 1);
        String limit = outcome.timeToLimit().isPresent()
                ? "passes its limit after "
                        + Figures.significant(outcome.timeToLimit().getAsDouble(), 3) + " s"
                : "stays below its limit";
        return LINE + "plain wall: hot face " + Figures.kelvin(outcome.peakTemperature()) + " K at most, it " + limit
                + "; after " + Figures.significant(end.time(), 4) + " s hot face " + Figures.kelvin(end.hotFace())
                + " K, cold face " + Figures.kelvin(end.coldFace()) + " K" + LINE;
    }
}

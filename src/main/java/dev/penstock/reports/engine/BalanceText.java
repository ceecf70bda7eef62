package dev.penstock.reports.engine;

import dev.penstock.cooling.jacket.JacketFigures;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.turbomachinery.pump.PumpFigures;
import dev.penstock.turbomachinery.shaft.ShaftFigures;
import dev.penstock.turbomachinery.turbine.TurbineFigures;
import java.util.ArrayList;
import java.util.List;

/** A balanced engine as tables for a terminal: which of its figures fit side by side there. */
public final class BalanceText {

    private static final String LINE = System.lineSeparator();

    private BalanceText() {}

    /**
     * @param balance balanced engine
     * @return tables of engine, stations, machines and cooling, then limits and warnings
     */
    public static String of(EngineBalance balance) {
        StringBuilder text = new StringBuilder();
        text.append(balance.concept().name()).append(": ");
        text.append(balance.concept().cycle().title()).append(", ");
        text.append(Propellant.pair(
                        balance.concept().oxidizer(), balance.concept().fuel()))
                .append(LINE)
                .append(LINE);
        for (PageTable table : tables(balance)) {
            if (!table.rows().isEmpty()) {
                text.append(TextTable.of(table)).append(LINE);
            }
        }
        text.append(limits(balance.limits())).append(LINE);
        text.append("closed to ").append(Notation.significant(balance.residualWorst(), 2));
        text.append(" (worst relative residual, energy audit included)").append(LINE);
        text.append(defaults(balance.concept().document().byTechnology()));
        text.append(warnings(balance.warnings()));
        return text.toString();
    }

    /**
     * @param set defaults that follow from the technology of the engine
     * @return one line for each, with what it rests on
     */
    static String defaults(List<InputValue> set) {
        StringBuilder text = new StringBuilder();
        set.forEach(input -> text.append(input.key())
                .append(" = ")
                .append(input.toml().orElse(input.value()))
                .append(", ")
                .append(input.source())
                .append(LINE));
        return text.toString();
    }

    private static List<PageTable> tables(EngineBalance balance) {
        List<PageTable> cooling = balance.cooling().stream()
                .map(jacket -> FigureRows.sheet(
                        jacket.circuit().owner(),
                        JacketFigures.ALL,
                        jacket,
                        jacket.circuit().path(),
                        "coolant_temperature_rise_K coolant_pressure_drop_Pa heat_load_W peak_heat_flux_W_m2"
                                + " peak_wall_temperature_K"))
                .toList();
        List<PageTable> tables = new ArrayList<>(
                List.of(
                        FigureRows.sheet(
                                "engine",
                                EngineFigures.HEADLINE,
                                balance,
                                "engine",
                                "thrust_vacuum_N thrust_sea_level_N isp_vacuum_s isp_sea_level_s chamber_pressure_Pa"
                                        + " mixture_ratio chamber_mixture_ratio mass_flow_kg_s area_ratio throat_diameter_m"
                                        + " exit_diameter_m characteristic_velocity_m_s mass_kg mass_low_kg mass_high_kg"
                                        + " thrust_to_weight thrust_to_weight_low thrust_to_weight_high"),
                        FigureRows.list(
                                "",
                                EngineFigures.STATIONS,
                                "stations",
                                balance.stations(),
                                "number name medium pressure_Pa temperature_K density_kg_m3 mass_flow_kg_s"),
                        FigureRows.list(
                                "",
                                PumpFigures.ALL,
                                "pumps",
                                balance.pumps(),
                                "name discharge_pressure_Pa power_W efficiency speed_rad_s stages impeller_diameter_m"
                                        + " tip_speed_m_s"),
                        FigureRows.list(
                                "",
                                TurbineFigures.ALL,
                                "turbines",
                                balance.turbines(),
                                "name inlet_temperature_K pressure_ratio power_W efficiency speed_rad_s mass_flow_kg_s"
                                        + " mean_diameter_m"),
                        FigureRows.list(
                                "",
                                ShaftFigures.ALL,
                                "shafts",
                                balance.shafts(),
                                "name speed_rad_s power_delivered_W power_absorbed_W mechanical_loss_W mass_kg turbines pumps")));
        tables.addAll(cooling);
        tables.add(EngineTables.mass(balance));
        tables.add(EngineTables.hardware(balance));
        tables.add(EngineTables.metals(
                balance,
                "name metal temperature_K oxygen_pressure_Pa oxygen_threshold_Pa hydrogen_pressure_Pa"
                        + " strength_in_hydrogen verdict"));
        return tables;
    }

    /**
     * @param limits limit checks
     * @return table with the margin of each
     */
    public static String limits(List<LimitCheck> limits) {
        return TextTable.of(EngineTables.limits(limits, "title value limit margin verdict"));
    }

    /**
     * @param warnings warnings
     * @return one line for each
     */
    public static String warnings(List<Warning> warnings) {
        StringBuilder text = new StringBuilder();
        warnings.stream().distinct().forEach(w -> text.append("warning, ")
                .append(w.source())
                .append(": ")
                .append(w.message())
                .append(LINE));
        return text.toString();
    }
}

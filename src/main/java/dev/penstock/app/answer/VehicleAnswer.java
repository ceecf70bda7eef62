package dev.penstock.app.answer;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.Figure;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.table.VehicleTables;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.vehicle.FlightView;
import dev.penstock.reports.vehicle.VehicleView;
import dev.penstock.vehicle.FlightFigures;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.stage.VehicleFigures;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page of a vehicle is told: figures, tables and drawings; every number names its path in the trail. */
public final class VehicleAnswer {

    private static final List<String> MEASURES = List.of(
            "start_mass_kg",
            "propellant_mass_kg",
            "dry_mass_kg",
            "payload_kg",
            "payload_fraction",
            "delta_v_m_s",
            "isp_needed_over_isp");
    private static final String FLIGHT = "inertial_speed_m_s rotation_credit_m_s gravity_loss_m_s drag_loss_m_s"
            + " steering_loss_m_s back_pressure_loss_m_s ideal_delta_v_m_s delta_v_left_m_s isp_mean_s insertion_time_s"
            + " dynamic_pressure_max_Pa acceleration_max_m_s2";

    private final VehicleSizing vehicle;
    private final Optional<AscentResult> flight;
    private final List<Warning> warnings;

    public VehicleAnswer(VehicleSizing vehicle, Optional<AscentResult> flight, List<Warning> warnings) {
        this.vehicle = vehicle;
        this.flight = flight;
        this.warnings = warnings;
    }

    public Map<String, Object> map() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", vehicle.plan().name());
        map.put("kind", VehicleView.kind(vehicle));
        map.put("description", vehicle.plan().description());
        map.put("flown", flight.isPresent());
        map.put("measures", measures());
        map.put("warnings", EngineAnswer.warnings(warnings));
        List<PageTable> tables = new ArrayList<>();
        flight.ifPresent(
                a -> tables.add(FigureRows.sheet("Flight to orbit", FlightFigures.FLIGHT, a, "flight", FLIGHT)));
        tables.addAll(
                List.of(VehicleTables.stages(vehicle), VehicleTables.tanks(vehicle), VehicleTables.budget(vehicle)));
        tables.addAll(VehicleTables.dryMasses(vehicle));
        map.put("tables", tables.stream().map(Grid::of).toList());
        List<Map<String, Object>> figures = new ArrayList<>();
        figures.add(EngineAnswer.figure(VehicleView.scale(vehicle)));
        figures.add(EngineAnswer.figure(VehicleView.masses(vehicle)));
        flight.ifPresent(a -> FlightView.figures(a).forEach(f -> figures.add(EngineAnswer.figure(f))));
        map.put("figures", figures);
        map.put("definitions", VehicleSizing.DEFINITIONS);
        return map;
    }

    private List<Map<String, Object>> measures() {
        List<Map<String, Object>> measures = new ArrayList<>();
        for (String key : MEASURES) {
            Figure<VehicleSizing> figure = VehicleFigures.ALL.figure(key);
            figure.number(vehicle)
                    .ifPresent(value -> measures.add(Map.of(
                            "key",
                            key,
                            "name",
                            figure.title(),
                            "better",
                            figure.better(),
                            "value",
                            value,
                            "text",
                            figure.notation().writeWithUnit(value),
                            "path",
                            "vehicle." + key)));
        }
        return measures;
    }
}

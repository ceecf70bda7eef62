package dev.penstock.claims.answer;

import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.ClaimsFile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The figures that every judgement tells of: the headline figures of an engine, and of a vehicle where claims speak of one. */
final class WatchList {

    static final List<String> ENGINE = List.of(
            "engine.isp_vacuum_s",
            "engine.isp_sea_level_s",
            "engine.thrust_vacuum_N",
            "engine.thrust_sea_level_N",
            "engine.chamber_pressure_Pa",
            "engine.mixture_ratio",
            "engine.area_ratio",
            "engine.mass_flow_kg_s",
            "engine.throat_diameter_m",
            "engine.exit_diameter_m",
            "chamber.nozzle_length_m",
            "engine.mass_kg",
            "engine.thrust_to_weight",
            "engine.impulse_efficiency",
            "figures.turbine_temperature_K",
            "figures.pump_power_W",
            "figures.discharge_pressure_Pa");

    static final List<String> VEHICLE = List.of(
            "vehicle.start_mass_kg",
            "vehicle.payload_kg",
            "vehicle.propellant_mass_kg",
            "vehicle.dry_mass_kg",
            "vehicle.mass_ratio",
            "vehicle.thrust_to_weight",
            "vehicle.liftoff_acceleration_m_s2",
            "vehicle.burn_time_s",
            "vehicle.diameter_m",
            "vehicle.height_m",
            "vehicle.tank_volume_m3",
            ClaimPaths.FILLING);

    /** What people outside cannot see or measure. */
    static final List<String> HIDDEN = List.of("engine.impulse_efficiency", "vehicle.mass_ratio", ClaimPaths.FILLING);

    private WatchList() {}

    static List<ClaimFigure> of(ClaimsFile file) {
        Map<String, ClaimFigure> figures = new LinkedHashMap<>();
        ENGINE.forEach(path -> put(figures, path));
        if (file.aboutVehicle()) {
            VEHICLE.forEach(path -> put(figures, path));
        }
        file.about().ifPresent(path -> put(figures, path));
        file.claims().forEach(claim -> put(figures, claim.path()));
        return List.copyOf(figures.values());
    }

    private static void put(Map<String, ClaimFigure> figures, String path) {
        ClaimPaths.figure(path).ifPresent(f -> figures.putIfAbsent(f.path(), f));
    }
}

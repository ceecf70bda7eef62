package dev.penstock.app.web;

import dev.penstock.chamber.NamedLoss;
import dev.penstock.cooling.JacketResult;
import dev.penstock.cooling.JacketStation;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.provenance.Trail;
import dev.penstock.reports.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The tables of a balanced engine; every number names its path in the trail. */
final class EngineGrids {

    private final EngineBalance balance;

    EngineGrids(EngineBalance balance) {
        this.balance = balance;
    }

    /** @return tables that have lines */
    List<Map<String, Object>> all() {
        List<Map<String, Object>> grids = new ArrayList<>(List.of(stations()));
        if (!balance.pumps().isEmpty() || !balance.turbines().isEmpty()) {
            grids.add(machines());
        }
        if (!balance.shafts().isEmpty()) {
            grids.add(shafts());
        }
        grids.add(losses());
        return grids;
    }

    private Map<String, Object> stations() {
        Grid grid =
                new Grid("Stations", "no.", "<station", "<medium", "pressure (bar)", "temperature (K)", "flow (kg/s)");
        balance.stations().forEach(s -> {
            String p = "stations." + s.number();
            grid.row(
                    Integer.toString(s.number()),
                    s.name(),
                    s.medium(),
                    new Cell(Figures.bar(s.pressure()), p + ".pressure_Pa"),
                    new Cell(Figures.kelvin(s.temperature()), p + ".temperature_K"),
                    new Cell(Figures.massFlow(s.massFlow()), p + ".mass_flow_kg_s"));
        });
        return grid.map();
    }

    private Map<String, Object> machines() {
        Grid grid = new Grid("Pumps and turbines", "<machine", "power", "speed (rpm)", "efficiency", "diameter (mm)");
        balance.pumps().forEach(pump -> {
            String p = "pumps." + Trail.slug(pump.name());
            grid.row(
                    pump.name(),
                    new Cell(Figures.power(pump.power()), p + ".power_W"),
                    new Cell(Figures.rpm(pump.speed()), p + ".speed_rad_s"),
                    new Cell(Figures.percent(pump.efficiency()), p + ".efficiency"),
                    new Cell(Figures.significant(pump.impellerDiameter() * 1e3, 3), p + ".impeller_diameter_m"));
        });
        balance.turbines().forEach(turbine -> {
            String p = "turbines." + Trail.slug(turbine.name());
            grid.row(
                    turbine.name(),
                    new Cell(Figures.power(turbine.power()), p + ".power_W"),
                    new Cell(Figures.rpm(turbine.speed()), p + ".speed_rad_s"),
                    new Cell(Figures.percent(turbine.efficiency()), p + ".efficiency"),
                    new Cell(Figures.significant(turbine.meanDiameter() * 1e3, 3), p + ".mean_diameter_m"));
        });
        return grid.map();
    }

    private Map<String, Object> shafts() {
        Grid grid = new Grid(
                "Shafts",
                "<shaft",
                "speed (rpm)",
                "power of the turbines",
                "power of the pumps",
                "mechanical loss",
                "diameter (mm)",
                "turbopump mass (kg)");
        balance.shafts().forEach(shaft -> {
            String p = "shafts." + Trail.slug(shaft.name());
            grid.row(
                    shaft.name(),
                    new Cell(Figures.rpm(shaft.speed()), p + ".speed_rad_s"),
                    new Cell(Figures.power(shaft.powerDelivered()), p + ".power_delivered_W"),
                    new Cell(Figures.power(shaft.powerAbsorbed()), p + ".power_absorbed_W"),
                    new Cell(Figures.power(shaft.mechanicalLoss()), p + ".mechanical_loss_W"),
                    new Cell(Figures.significant(shaft.diameter() * 1e3, 3), p + ".diameter_m"),
                    new Cell(Figures.significant(shaft.mass(), 3), p + ".mass_kg"));
        });
        return grid.map();
    }

    private Map<String, Object> losses() {
        Grid grid = new Grid(
                "From ideal to delivered specific impulse", "<loss", "factor", "impulse lost (m/s)", "<by which model");
        balance.chamber().losses().forEach(loss -> loss(grid, "losses.", loss));
        balance.engineLosses().forEach(loss -> loss(grid, "engine_losses.", loss));
        return grid.map();
    }

    private static void loss(Grid grid, String list, NamedLoss loss) {
        String p = list + Trail.slug(loss.name());
        grid.row(
                loss.name(),
                new Cell(Figures.fixed(loss.factor(), 4), p + ".factor"),
                new Cell(Figures.fixed(loss.impulseLoss(), 1), p + ".impulse_loss_m_s"),
                loss.model().map(card -> card.title()).orElse("stated by the concept"));
    }

    /**
     * @param jacket jacket of the engine
     * @return its figures, and its profile line by line
     */
    static List<Map<String, Object>> jacket(JacketResult jacket) {
        String p = "cooling.";
        Grid figures = new Grid("Jacket", "<quantity", "value")
                .row("coolant in, pressure", bar(jacket.inlet().pressure(), p + "inlet_pressure_Pa"))
                .row("coolant in, temperature", kelvin(jacket.inlet().temperature(), p + "inlet_temperature_K"))
                .row("coolant out, pressure", bar(jacket.outlet().pressure(), p + "outlet_pressure_Pa"))
                .row("coolant out, temperature", kelvin(jacket.outlet().temperature(), p + "outlet_temperature_K"))
                .row("temperature rise", kelvin(jacket.coolantTemperatureRise(), p + "coolant_temperature_rise_K"))
                .row("pressure drop", bar(jacket.pressureDrop(), p + "coolant_pressure_drop_Pa"))
                .row("heat taken up", new Cell(Figures.withUnit(jacket.heatLoad(), "W"), p + "heat_load_W"))
                .row(
                        "peak heat flux",
                        new Cell(Figures.withUnit(jacket.peakHeatFlux(), "W/m²"), p + "peak_heat_flux_W_m2"))
                .row("hottest wall", kelvin(jacket.peakWallTemperature(), p + "peak_wall_temperature_K"));
        return List.of(figures.map(), profile(jacket.stations()));
    }

    private static Map<String, Object> profile(List<JacketStation> stations) {
        Grid grid = new Grid(
                "Along the wall, from the place that the coolant reaches first; distances from the throat",
                "distance (mm)",
                "radius (mm)",
                "heat flux (MW/m²)",
                "wall, gas side (K)",
                "wall, coolant side (K)",
                "coolant (K)",
                "coolant (bar)",
                "coolant speed (m/s)");
        for (int i = 0; i < stations.size(); i++) {
            JacketStation s = stations.get(i);
            String p = "cooling.profile." + i + ".";
            grid.row(
                    new Cell(Figures.fixed(s.x() * 1e3, 1), p + "x_m"),
                    new Cell(Figures.fixed(s.radius() * 1e3, 1), p + "radius_m"),
                    new Cell(Figures.significant(s.heatFlux() / 1e6, 3), p + "heat_flux_W_m2"),
                    new Cell(Figures.kelvin(s.gasSideWallTemperature()), p + "wall_temperature_gas_side_K"),
                    new Cell(Figures.kelvin(s.coolantSideWallTemperature()), p + "wall_temperature_coolant_side_K"),
                    new Cell(Figures.kelvin(s.coolantTemperature()), p + "coolant_temperature_K"),
                    new Cell(Figures.bar(s.coolantPressure()), p + "coolant_pressure_Pa"),
                    new Cell(Figures.significant(s.coolantVelocity(), 3), p + "coolant_velocity_m_s"));
        }
        return grid.map();
    }

    private static Cell bar(double pressure, String path) {
        return new Cell(Figures.bar(pressure) + " bar", path);
    }

    private static Cell kelvin(double temperature, String path) {
        return new Cell(Figures.kelvin(temperature) + " K", path);
    }
}

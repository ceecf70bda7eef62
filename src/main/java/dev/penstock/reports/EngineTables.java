package dev.penstock.reports;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.NamedLoss;
import dev.penstock.cooling.JacketResult;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.EngineSummary;
import dev.penstock.cycles.PressureStep;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Constants;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The tables of one balanced engine. */
final class EngineTables {

    private EngineTables() {}

    static PageTable stations(EngineBalance balance) {
        PageTable.Builder table = PageTable.titled(
                "Stations",
                "no.",
                "<station",
                "<medium",
                "pressure (bar)",
                "temperature (K)",
                "density (kg/m³)",
                "enthalpy (kJ/kg)",
                "flow (kg/s)");
        balance.stations().forEach(s -> table.row(
                        Integer.toString(s.number()),
                        s.name(),
                        s.medium(),
                        Figures.bar(s.pressure()),
                        Figures.kelvin(s.temperature()),
                        Figures.significant(s.density(), 4),
                        Figures.fixed(s.enthalpy() / 1e3, 1),
                        Figures.massFlow(s.massFlow()))
                .traced(traces(
                        "stations." + s.number(),
                        "",
                        "",
                        "",
                        "pressure_Pa",
                        "temperature_K",
                        "density_kg_m3",
                        "enthalpy_J_kg",
                        "mass_flow_kg_s")));
        return table.table();
    }

    /** Paths of the cells of a row: a base with a key each; an empty key for a cell without a trail. */
    static String[] traces(String base, String... keys) {
        return java.util.Arrays.stream(keys)
                .map(key -> key.isEmpty() ? "" : base + "." + key)
                .toArray(String[]::new);
    }

    static PageTable ladder(EngineBalance balance) {
        PageTable.Builder table =
                PageTable.titled("Pressure steps", "<line", "<at", "from (bar)", "to (bar)", "step (bar)");
        List<PressureStep> steps = balance.pressureLadder();
        IntStream.range(0, steps.size())
                .boxed()
                .sorted(Comparator.comparing(i -> steps.get(i).line()))
                .forEach(i -> {
                    PressureStep s = steps.get(i);
                    table.row(
                                    s.line(),
                                    s.component(),
                                    Figures.bar(s.from()),
                                    Figures.bar(s.to()),
                                    Figures.bar(s.rise()))
                            .traced(traces("pressure_ladder." + i, "", "", "from_Pa", "to_Pa", "rise_Pa"));
                });
        return table.table();
    }

    static PageTable pumps(EngineBalance balance) {
        PageTable.Builder table = PageTable.titled(
                "Pumps",
                "<pump",
                "discharge (bar)",
                "flow (kg/s)",
                "head (kJ/kg)",
                "efficiency",
                "power",
                "speed (rpm)",
                "stages",
                "impeller (mm)",
                "tip speed (m/s)",
                "suction head needed / there (m)");
        balance.pumps().forEach(p -> table.row(
                        p.name(),
                        Figures.bar(p.duty().dischargePressure()),
                        Figures.massFlow(p.duty().massFlow()),
                        Figures.significant(p.head() / 1e3, 4),
                        Figures.percent(p.efficiency()),
                        Figures.power(p.power()),
                        Figures.rpm(p.speed()),
                        Integer.toString(p.stages()),
                        Figures.significant(p.impellerDiameter() * 1e3, 3),
                        Figures.significant(p.tipSpeed(), 3),
                        Figures.significant(p.requiredSuctionHead(), 3) + " / "
                                + Figures.significant(p.netPositiveSuctionHead() + p.suppressionHead(), 3))
                .traced(traces(
                        "pumps." + Trail.slug(p.name()),
                        "",
                        "discharge_pressure_Pa",
                        "mass_flow_kg_s",
                        "head_J_kg",
                        "efficiency",
                        "power_W",
                        "speed_rad_s",
                        "stages",
                        "impeller_diameter_m",
                        "tip_speed_m_s",
                        "suction_head_required_m")));
        return table.table();
    }

    static PageTable turbines(EngineBalance balance) {
        PageTable.Builder table = PageTable.titled(
                "Turbines",
                "<turbine",
                "<kind",
                "inlet (bar)",
                "inlet (K)",
                "exit (bar)",
                "ratio",
                "flow (kg/s)",
                "efficiency",
                "power",
                "blade / jet speed",
                "mean diameter (mm)",
                "blade height (mm)");
        balance.turbines().forEach(t -> table.row(
                        t.name(),
                        t.type().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + ", " + t.stages()
                                + (t.stages() == 1 ? " stage" : " stages"),
                        Figures.bar(t.inlet().pressure()),
                        Figures.kelvin(t.inlet().temperature()),
                        Figures.bar(t.outlet().pressure()),
                        Figures.significant(t.inlet().pressure() / t.outlet().pressure(), 3),
                        Figures.massFlow(t.duty().massFlow()),
                        Figures.percent(t.efficiency()),
                        Figures.power(t.power()),
                        Figures.significant(t.velocityRatio(), 3),
                        Figures.significant(t.meanDiameter() * 1e3, 3),
                        Figures.significant(t.bladeHeight() * 1e3, 3))
                .traced(traces(
                        "turbines." + Trail.slug(t.name()),
                        "",
                        "",
                        "inlet_pressure_Pa",
                        "inlet_temperature_K",
                        "exit_pressure_Pa",
                        "pressure_ratio",
                        "mass_flow_kg_s",
                        "efficiency",
                        "power_W",
                        "velocity_ratio",
                        "mean_diameter_m",
                        "blade_height_m")));
        return table.table();
    }

    static PageTable shafts(EngineBalance balance) {
        PageTable.Builder table = PageTable.titled(
                "Shafts",
                "<shaft",
                "<joins",
                "speed (rpm)",
                "<speed set by",
                "delivered",
                "absorbed",
                "mechanical loss",
                "mass (kg)");
        balance.shafts().forEach(s -> table.row(
                        s.name(),
                        String.join(", ", s.turbines()) + " to " + String.join(", ", s.pumps()),
                        Figures.rpm(s.speed()),
                        s.speedSetBy(),
                        Figures.power(s.powerDelivered()),
                        Figures.power(s.powerAbsorbed()),
                        Figures.power(s.mechanicalLoss()),
                        Figures.significant(s.mass(), 3))
                .traced(traces(
                        "shafts." + Trail.slug(s.name()),
                        "",
                        "",
                        "speed_rad_s",
                        "",
                        "power_delivered_W",
                        "power_absorbed_W",
                        "mechanical_loss_W",
                        "mass_kg")));
        return table.table();
    }

    static PageTable chamber(EngineBalance balance) {
        ChamberPerformance c = balance.chamber();
        EngineSummary e = balance.engine();
        return PageTable.titled("Thrust chamber and engine", "<quantity", "value", "<unit")
                .row(
                        "gas temperature in the chamber",
                        Figures.kelvin(c.ideal().chamber().temperature()),
                        "K")
                .traced("", "chamber.gas_temperature_K")
                .row("molar mass", Figures.significant(c.ideal().chamber().molarMass() * 1e3, 4), "g/mol")
                .traced("", "chamber.gas_molar_mass_kg_mol")
                .row(
                        "isentropic exponent",
                        Figures.significant(c.ideal().chamber().gammaS(), 4),
                        "")
                .traced("", "chamber.gas_isentropic_exponent")
                .row("mixture ratio in the chamber", Figures.significant(e.chamberMixtureRatio(), 4), "")
                .traced("", "engine.chamber_mixture_ratio")
                .row("characteristic velocity, ideal", Figures.fixed(c.ideal().characteristicVelocity(), 1), "m/s")
                .traced("", "chamber.ideal_characteristic_velocity_m_s")
                .row("characteristic velocity, delivered", Figures.fixed(c.characteristicVelocity(), 1), "m/s")
                .traced("", "engine.characteristic_velocity_m_s")
                .row("thrust coefficient in vacuum", Figures.significant(c.vacuumThrustCoefficient(), 5), "")
                .traced("", "chamber.thrust_coefficient_vacuum")
                .row("chamber specific impulse in vacuum", Figures.fixed(c.vacuumSpecificImpulse(), 1), "s")
                .traced("", "engine.chamber_isp_vacuum_s")
                .row("chamber mass flow", Figures.massFlow(c.massFlow()), "kg/s")
                .traced("", "chamber.mass_flow_kg_s")
                .row("area ratio", Figures.significant(c.areaRatio(), 4), "")
                .traced("", "engine.area_ratio")
                .row("throat diameter", Figures.millimetre(e.throatDiameter()), "mm")
                .traced("", "engine.throat_diameter_m")
                .row("exit diameter", Figures.millimetre(e.exitDiameter()), "mm")
                .traced("", "engine.exit_diameter_m")
                .row("injector to throat", Figures.millimetre(c.contour().chamberLength()), "mm")
                .traced("", "chamber.length_m")
                .row("throat to exit", Figures.millimetre(c.contour().nozzleLength()), "mm")
                .traced("", "chamber.nozzle_length_m")
                .row("engine thrust in vacuum", Figures.kilonewton(e.vacuumThrust()), "kN")
                .traced("", "engine.thrust_vacuum_N")
                .row("engine thrust at sea level", Figures.kilonewton(e.seaLevelThrust()), "kN")
                .traced("", "engine.thrust_sea_level_N")
                .table();
    }

    static PageTable losses(EngineBalance balance) {
        PageTable.Builder table =
                PageTable.titled("Losses", "<loss", "factor", "impulse lost (s)", "<model", "<source", "<note");
        balance.chamber().losses().forEach(l -> loss(table, l, "losses."));
        balance.engineLosses().forEach(l -> loss(table, l, "engine_losses."));
        return table.table();
    }

    private static void loss(PageTable.Builder table, NamedLoss l, String list) {
        table.row(
                        l.name(),
                        Figures.significant(l.factor(), 5),
                        Figures.fixed(l.impulseLoss() / Constants.STANDARD_GRAVITY, 2),
                        model(l),
                        l.model().map(card -> String.join(", ", card.sources())).orElse(""),
                        l.note())
                .traced(traces(list + Trail.slug(l.name()), "", "factor", "impulse_loss_m_s"));
    }

    private static String model(NamedLoss loss) {
        return loss.model().map(card -> card.title()).orElse("stated by the concept");
    }

    static PageTable cooling(JacketResult jacket) {
        return PageTable.titled("Jacket", "<quantity", "value", "<unit")
                .row("coolant flow in", Figures.kelvin(jacket.inlet().temperature()), "K")
                .traced("", "cooling.inlet_temperature_K")
                .row("coolant flow out", Figures.kelvin(jacket.outlet().temperature()), "K")
                .traced("", "cooling.outlet_temperature_K")
                .row("temperature rise", Figures.kelvin(jacket.coolantTemperatureRise()), "K")
                .traced("", "cooling.coolant_temperature_rise_K")
                .row("pressure in", Figures.bar(jacket.inlet().pressure()), "bar")
                .traced("", "cooling.inlet_pressure_Pa")
                .row("pressure drop", Figures.bar(jacket.pressureDrop()), "bar")
                .traced("", "cooling.coolant_pressure_drop_Pa")
                .row("heat taken up", Figures.significant(jacket.heatLoad() / 1e6, 4), "MW")
                .traced("", "cooling.heat_load_W")
                .row("peak heat flux", Figures.significant(jacket.peakHeatFlux() / 1e6, 4), "MW/m²")
                .traced("", "cooling.peak_heat_flux_W_m2")
                .row("hottest wall", Figures.kelvin(jacket.peakWallTemperature()), "K")
                .traced("", "cooling.peak_wall_temperature_K")
                .table();
    }

    static PageTable residuals(EngineBalance balance) {
        PageTable.Builder table = PageTable.titled("Closing equations", "<equation", "left over", "<unit", "relative");
        balance.residuals().forEach(r -> table.row(
                        r.name(), Figures.significant(r.value(), 3), r.unit(), Figures.significant(r.relative(), 2))
                .traced(traces("residuals." + Trail.slug(r.name()), "", "value", "", "relative")));
        return table.table();
    }

    static PageTable audit(EngineBalance balance) {
        PageTable.Builder table =
                PageTable.titled("Audit by component", "<component", "mass imbalance", "energy imbalance");
        balance.audit().items().forEach(i -> table.row(
                        i.component(),
                        Figures.significant(i.massImbalance(), 2),
                        Figures.significant(i.energyImbalance(), 2))
                .traced(traces("audit." + Trail.slug(i.component()), "", "mass_imbalance", "energy_imbalance")));
        return table.table();
    }
}

package dev.penstock.turbomachinery.start;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;

/** What a start publishes: on bottled gas, and on tank head. */
public final class StartFigures {

    /** Figures of the gas that spins up a shaft. */
    public static final FigureTable<StartGas> GAS = FigureTable.<StartGas>ofOne()
            .word("gas", "gas", StartGas::gas)
            .number("energy_J", "energy", significant("J", "kJ", 1e-3, 4), StartGas::energy)
            .count("starts", "starts", StartGas::starts)
            .number("gas_per_start_kg", "last start", Notation.MASS, StartGas::gasPerStart)
            .number("gas_used_kg", "used", Notation.MASS, StartGas::gasUsed)
            .number("gas_loaded_kg", "loaded", Notation.MASS, StartGas::gasLoaded)
            .number("bottle_volume_m3", "bottle", significant("m³", "L", 1e3, 4), StartGas::bottleVolume)
            .number("bottle_mass_kg", "bottle", Notation.MASS, StartGas::bottleMass)
            .number("final_pressure_Pa", "left", significant("Pa", "bar", 1e-5, 4), StartGas::finalPressure)
            .number("final_temperature_K", "left", significant("K", 4), StartGas::finalTemperature)
            .table();

    /** Figures of a moment of a start on tank head. */
    public static final FigureTable<TankHeadRun.Point> MOMENTS = FigureTable.<TankHeadRun.Point>ofOne()
            .number("time_s", "time", Notation.fixed("s", "s", 1, 2), TankHeadRun.Point::time)
            .number("speed_fraction", "speed", Notation.PERCENT, TankHeadRun.Point::speedFraction)
            .number("gas_flow_kg_s", "gas", significant("kg/s", 3), TankHeadRun.Point::flow)
            .number("turbine_inlet_pressure_Pa", "before turbine", Notation.PRESSURE, TankHeadRun.Point::pressure)
            .number(
                    "turbine_inlet_temperature_K",
                    "before turbine",
                    Notation.TEMPERATURE,
                    TankHeadRun.Point::temperature)
            .number(
                    "metal_temperature_K",
                    "metal",
                    new Notation("K", "K", metal -> metal > 0 ? Notation.TEMPERATURE.write(metal) : "-"),
                    TankHeadRun.Point::metalTemperature)
            .table();

    /** Figures of a start on tank head. */
    public static final FigureTable<TankHeadRun> TANK_HEAD = FigureTable.<TankHeadRun>ofOne()
            .word("reached", "reached", TankHeadRun::reached)
            .number("speed_fraction", "speed", Notation.PERCENT, TankHeadRun::speedFraction)
            .number("time_s", "time", significant("s", 2), TankHeadRun::time)
            .number("torque_over_breakaway", "torque at rest", significant("", 3), TankHeadRun::breakaway)
            .number("propellant_used_kg", "through the turbines", Notation.MASS, TankHeadRun::used)
            .number("metal_temperature_K", "metal", Notation.TEMPERATURE, TankHeadRun::metalTemperature)
            .word("why", "why", TankHeadRun::why)
            .table();

    private StartFigures() {}
}

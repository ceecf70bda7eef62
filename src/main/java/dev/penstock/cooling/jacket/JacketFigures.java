package dev.penstock.cooling.jacket;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;

/** What a jacket publishes, as a whole and along the wall. */
public final class JacketFigures {

    /** Figures of one place along the wall. */
    public static final FigureTable<JacketStation> CELLS = FigureTable.<JacketStation>ofOne()
            .number("x_m", "distance", Notation.fixed("m", "mm", 1e3, 1), JacketStation::x)
            .number("radius_m", "radius", Notation.fixed("m", "mm", 1e3, 1), JacketStation::radius)
            .number("heat_flux_W_m2", "heat flux", significant("W/m²", "MW/m²", 1e-6, 3), JacketStation::heatFlux)
            .number(
                    "wall_temperature_gas_side_K",
                    "wall, gas side",
                    Notation.TEMPERATURE,
                    JacketStation::gasSideWallTemperature)
            .number(
                    "wall_temperature_coolant_side_K",
                    "wall, coolant side",
                    Notation.TEMPERATURE,
                    JacketStation::coolantSideWallTemperature)
            .number("coolant_temperature_K", "coolant", Notation.TEMPERATURE, JacketStation::coolantTemperature)
            .number("coolant_pressure_Pa", "coolant", Notation.PRESSURE, JacketStation::coolantPressure)
            .number("coolant_velocity_m_s", "coolant speed", significant("m/s", 3), JacketStation::coolantVelocity)
            .table();

    /** Figures of a jacket. */
    public static final FigureTable<JacketResult> ALL = of(FigureTable.<JacketResult>ofOne());

    /** Figures of a jacket that does not begin at the injector. */
    public static final FigureTable<JacketResult> BEHIND =
            of(FigureTable.<JacketResult>named(j -> j.circuit().label())
                    .word("name", "jacket", j -> j.circuit().name()));

    private JacketFigures() {}

    private static FigureTable<JacketResult> of(FigureTable.Builder<JacketResult> builder) {
        return builder.word("coolant", "coolant", jacket -> jacket.inlet().fluid())
                .number(
                        "coolant_temperature_rise_K",
                        "coolant temperature rise",
                        Notation.TEMPERATURE,
                        JacketResult::coolantTemperatureRise)
                .lessIsBetter()
                .number(
                        "coolant_pressure_drop_Pa",
                        "coolant pressure drop",
                        Notation.PRESSURE,
                        JacketResult::pressureDrop)
                .lessIsBetter()
                .number(
                        "peak_wall_temperature_K",
                        "hottest wall",
                        Notation.TEMPERATURE,
                        JacketResult::peakWallTemperature)
                .lessIsBetter()
                .number("peak_heat_flux_W_m2", "peak heat flux", Notation.HEAT_FLUX, JacketResult::peakHeatFlux)
                .lessIsBetter()
                .number("heat_load_W", "heat taken up", significant("W", "MW", 1e-6, 4), JacketResult::heatLoad)
                .number("inlet_pressure_Pa", "coolant in, pressure", Notation.PRESSURE, j -> j.inlet()
                        .pressure())
                .number("inlet_temperature_K", "coolant in, temperature", Notation.TEMPERATURE, j -> j.inlet()
                        .temperature())
                .number("outlet_pressure_Pa", "coolant out, pressure", Notation.PRESSURE, j -> j.outlet()
                        .pressure())
                .number("outlet_temperature_K", "coolant out, temperature", Notation.TEMPERATURE, j -> j.outlet()
                        .temperature())
                .each("profile", JacketResult::stations, CELLS)
                .table();
    }
}

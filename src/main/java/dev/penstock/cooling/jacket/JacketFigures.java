package dev.penstock.cooling.jacket;

import static dev.penstock.provenance.Place.Role.GAS;
import static dev.penstock.provenance.Place.Role.INLET;
import static dev.penstock.provenance.Place.Role.WHOLE;
import static dev.penstock.provenance.Place.fixed;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.cooling.coolant.ChannelFriction;
import dev.penstock.cooling.gas.RecoveryTemperature;
import dev.penstock.cooling.gas.SootLayer;
import dev.penstock.cooling.march.ChannelSizing;
import dev.penstock.cooling.march.JacketMarch;
import dev.penstock.cooling.march.WallBalance;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What a jacket publishes, as a whole and along the wall. */
public final class JacketFigures {

    /**
     * A place along the wall with the jacket that it belongs to.
     *
     * @param jacket the jacket
     * @param station state there
     */
    public record Cell(JacketResult jacket, JacketStation station) {

        /**
         * @param jacket a jacket
         * @return its places, in their order
         */
        public static List<Cell> of(JacketResult jacket) {
            return jacket.stations().stream()
                    .map(station -> new Cell(jacket, station))
                    .toList();
        }
    }

    private static final Notation MILLIMETRES = Notation.fixed("m", "mm", 1e3, 3);
    private static final Notation COEFFICIENT = significant("W/(m²·K)", "kW/(m²·K)", 1e-3, 3);
    private static final Place.Source THROAT = fixed("chamber.throat_area_m2");

    /** Figures of one place along the wall. */
    public static final FigureTable<Cell> CELLS = FigureTable.<Cell>ofOne()
            .number("x_m", "distance", Notation.fixed("m", "mm", 1e3, 1), c -> c.station()
                    .x())
            .by(JacketMarch.CARD, given(), Place.of(GAS, "pressure_Pa"), Place.of(GAS, "temperature_K"), THROAT)
            .number("radius_m", "radius", Notation.fixed("m", "mm", 1e3, 1), c -> c.station()
                    .radius())
            .by(JacketMarch.CARD, own("x_m"))
            .number("heat_flux_W_m2", "heat flux", significant("W/m²", "MW/m²", 1e-6, 3), c -> c.station()
                    .heatFlux())
            .by(
                    c -> c.jacket().gasModel(),
                    Place.of(GAS, "pressure_Pa"),
                    Place.of(GAS, "temperature_K"),
                    THROAT,
                    own(
                            "radius_m",
                            "wall_temperature_gas_side_K",
                            "adiabatic_wall_temperature_K",
                            "gas_side_coefficient_W_m2_K"),
                    Place.of(WHOLE, "soot_resistance_m2_K_W"))
            .number("wall_temperature_gas_side_K", "wall, gas side", Notation.TEMPERATURE, c -> c.station()
                    .gasSideWallTemperature())
            .by(WallBalance.CARD, own("heat_flux_W_m2", "wall_temperature_coolant_side_K"))
            .number("wall_temperature_coolant_side_K", "wall, coolant side", Notation.TEMPERATURE, c -> c.station()
                    .coolantSideWallTemperature())
            .by(c -> c.jacket().coolantModel(), own("heat_flux_W_m2", "coolant_temperature_K", "coolant_velocity_m_s"))
            .number("coolant_temperature_K", "coolant", Notation.TEMPERATURE, c -> c.station()
                    .coolantTemperature())
            .by(JacketMarch.CARD, own("heat_flux_W_m2"), Place.of(WHOLE, "inlet_temperature_K"))
            .number("coolant_pressure_Pa", "coolant", Notation.PRESSURE, c -> c.station()
                    .coolantPressure())
            .by(ChannelFriction.CARD, own("coolant_velocity_m_s"), Place.of(WHOLE, "inlet_pressure_Pa"))
            .number("coolant_velocity_m_s", "coolant speed", significant("m/s", 3), c -> c.station()
                    .coolantVelocity())
            .by(JacketMarch.CARD, own("coolant_temperature_K", "coolant_pressure_Pa"))
            .number("channel_width_m", "channel width", MILLIMETRES, c -> c.station()
                    .channelWidth())
            .by(ChannelSizing.CARD, given(), THROAT)
            .number("channel_height_m", "channel height", MILLIMETRES, c -> c.station()
                    .channelHeight())
            .by(ChannelSizing.CARD, given(), THROAT)
            .number("land_width_m", "land width", MILLIMETRES, c -> c.station().landWidth())
            .by(ChannelSizing.CARD, own("radius_m", "channel_width_m"), Place.of(WHOLE, "channel_count"))
            .number("wall_thickness_m", "wall thickness", MILLIMETRES, c -> c.station()
                    .wallThickness())
            .by(ChannelSizing.CARD, given(), THROAT)
            .number("adiabatic_wall_temperature_K", "adiabatic wall", Notation.TEMPERATURE, c -> c.station()
                    .adiabaticWallTemperature())
            .by(RecoveryTemperature.CARD, given(), Place.of(GAS, "pressure_Pa"), Place.of(GAS, "temperature_K"))
            .number("gas_side_coefficient_W_m2_K", "coefficient, gas side", COEFFICIENT, c -> c.station()
                    .gasSideCoefficient())
            .by(
                    c -> c.jacket().gasModel(),
                    given(),
                    Place.of(GAS, "pressure_Pa"),
                    Place.of(GAS, "temperature_K"),
                    THROAT)
            .number("coolant_side_coefficient_W_m2_K", "coefficient, coolant side", COEFFICIENT, c -> c.station()
                    .coolantSideCoefficient())
            .by(
                    c -> c.jacket().coolantModel(),
                    own("coolant_temperature_K", "coolant_velocity_m_s", "channel_width_m", "channel_height_m"))
            .table();

    /** Figures of a jacket. */
    public static final FigureTable<JacketResult> ALL = of(FigureTable.<JacketResult>ofOne());

    /** Figures of a jacket that does not begin at the injector. */
    public static final FigureTable<JacketResult> BEHIND =
            of(FigureTable.<JacketResult>named(j -> j.circuit().label())
                    .word("name", "jacket", j -> j.circuit().label()));

    private JacketFigures() {}

    private static FigureTable<JacketResult> of(FigureTable.Builder<JacketResult> builder) {
        return builder.word("coolant", "coolant", jacket -> jacket.inlet().fluid())
                .number(
                        "coolant_temperature_rise_K",
                        "coolant temperature rise",
                        Notation.TEMPERATURE,
                        JacketResult::coolantTemperatureRise)
                .by(JacketMarch.CARD, own("inlet_temperature_K", "outlet_temperature_K"))
                .lessIsBetter()
                .number(
                        "coolant_pressure_drop_Pa",
                        "coolant pressure drop",
                        Notation.PRESSURE,
                        JacketResult::pressureDrop)
                .from(along(jacket -> ChannelFriction.CARD, "coolant_velocity_m_s"))
                .lessIsBetter()
                .number(
                        "peak_wall_temperature_K",
                        "hottest wall",
                        Notation.TEMPERATURE,
                        JacketResult::peakWallTemperature)
                .briefly("wall")
                .from(along(jacket -> WallBalance.CARD, "wall_temperature_gas_side_K"))
                .lessIsBetter()
                .number("peak_heat_flux_W_m2", "peak heat flux", Notation.HEAT_FLUX, JacketResult::peakHeatFlux)
                .from(along(JacketResult::gasModel, "heat_flux_W_m2"))
                .lessIsBetter()
                .number("heat_load_W", "heat taken up", significant("W", "MW", 1e-6, 4), JacketResult::heatLoad)
                .from(along(jacket -> JacketMarch.CARD, "heat_flux_W_m2"))
                .number("inlet_pressure_Pa", "coolant in, pressure", Notation.PRESSURE, j -> j.inlet()
                        .pressure())
                .by(JacketMarch.CARD, Place.of(INLET, "pressure_Pa"))
                .number("inlet_temperature_K", "coolant in, temperature", Notation.TEMPERATURE, j -> j.inlet()
                        .temperature())
                .by(JacketMarch.CARD, Place.of(INLET, "temperature_K"))
                .number("outlet_pressure_Pa", "coolant out, pressure", Notation.PRESSURE, j -> j.outlet()
                        .pressure())
                .by(JacketMarch.CARD, own("inlet_pressure_Pa", "coolant_pressure_drop_Pa"))
                .number("outlet_temperature_K", "coolant out, temperature", Notation.TEMPERATURE, j -> j.outlet()
                        .temperature())
                .by(JacketMarch.CARD, own("inlet_temperature_K", "heat_load_W"), Place.of(INLET, "mass_flow_kg_s"))
                .number("channel_count", "channels at the throat", significant("", 4), j -> j.layout()
                        .count()
                        .orElseThrow())
                .by(ChannelSizing.CARD, given(), THROAT)
                .number("wall_thickness_m", "wall thickness at the throat", MILLIMETRES, JacketResult::wallThickness)
                .by(WallBalance.CARD, given(), THROAT)
                .number(
                        "soot_resistance_m2_K_W",
                        "soot at the throat",
                        significant("m²·K/W", 3),
                        JacketResult::sootResistance)
                .by(SootLayer.CARD, given(), Place.of(GAS, "pressure_Pa"))
                .each("profile", Cell::of, CELLS)
                .table();
    }

    /** Made from a figure of every place along the wall. */
    private static BiFunction<JacketResult, Place, Origin> along(Function<JacketResult, ModelCard> model, String key) {
        return (jacket, at) -> new Origin(model.apply(jacket), CELLS.paths(at.own("profile"), Cell.of(jacket), key));
    }
}

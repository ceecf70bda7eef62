package dev.penstock.cycles.trail;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.feed.PressurantBottle;
import java.util.Locale;

/** What a pressure feed publishes: tanks, bottle, heater, and the engine over its life. */
public final class FeedFigures {

    private static final Notation GAS = Notation.MASS;

    /** Figures of a tank. */
    public static final FigureTable<PressureFeed.Tank> TANKS = FigureTable.<PressureFeed.Tank>named(
                    tank -> tank.side().key())
            .word("name", "tank", tank -> tank.side().key())
            .number("propellant_mass_kg", "propellant", significant("kg", 4), PressureFeed.Tank::propellantMass)
            .number("volume_m3", "volume", significant("m³", 3), PressureFeed.Tank::volume)
            .number("pressure_begin_Pa", "pressure at start", Notation.PRESSURE, PressureFeed.Tank::beginPressure)
            .number("pressure_end_Pa", "at end", Notation.PRESSURE, PressureFeed.Tank::endPressure)
            .number("blowdown_ratio", "blowdown ratio", significant("", 3), PressureFeed.Tank::blowdownRatio)
            .number("gas_mass_kg", "gas closed in", GAS, PressureFeed.Tank::gasMass)
            .number("vapour_pressure_Pa", "vapour pressure", Notation.PRESSURE, PressureFeed.Tank::vapourPressure)
            .number("residual_kg", "left over", GAS, PressureFeed.Tank::residual)
            .table();

    /** Figures of the engine when part of the propellant is gone. */
    public static final FigureTable<PressureFeed.Point> POINTS = FigureTable.<PressureFeed.Point>ofOne()
            .number("expelled", "expelled", Notation.PERCENT, PressureFeed.Point::expelled)
            .number("time_s", "time", significant("s", 4), PressureFeed.Point::time)
            .number(
                    "oxidizer_tank_pressure_Pa",
                    "oxidizer tank",
                    Notation.PRESSURE,
                    PressureFeed.Point::oxidizerTankPressure)
            .number("fuel_tank_pressure_Pa", "fuel tank", Notation.PRESSURE, PressureFeed.Point::fuelTankPressure)
            .number("chamber_pressure_Pa", "chamber", Notation.PRESSURE, PressureFeed.Point::chamberPressure)
            .number("mixture_ratio", "mixture ratio", significant("", 4), PressureFeed.Point::mixtureRatio)
            .number("thrust_vacuum_N", "thrust, vacuum", Notation.FORCE, PressureFeed.Point::vacuumThrust)
            .number("isp_vacuum_s", "Isp, vacuum", Notation.fixed("s", "s", 1, 1), PressureFeed.Point::vacuumIsp)
            .number("mass_flow_kg_s", "flow", Notation.MASS_FLOW, PressureFeed.Point::massFlow)
            .number(
                    "injector_drop_share",
                    "injector drop / chamber",
                    Notation.PERCENT,
                    PressureFeed.Point::injectorDrop)
            .table();

    /** Figures of a pressurant bottle. */
    public static final FigureTable<PressurantBottle> BOTTLE = FigureTable.<PressurantBottle>ofOne()
            .number("gas_loaded_kg", "gas loaded", GAS, PressurantBottle::loaded)
            .number("gas_used_kg", "gas used", GAS, PressurantBottle::used)
            .number("volume_m3", "volume", significant("m³", "l", 1e3, 3), PressurantBottle::volume)
            .number("bottle_mass_kg", "bottle", GAS, PressurantBottle::bottleMass)
            .number("end_pressure_Pa", "pressure at end", Notation.PRESSURE, PressurantBottle::endPressure)
            .number("end_temperature_K", "temperature at end", Notation.TEMPERATURE, PressurantBottle::endTemperature)
            .number(
                    "tank_gas_temperature_K",
                    "gas in the tanks",
                    Notation.TEMPERATURE,
                    PressurantBottle::tankTemperature)
            .number("heat_J", "heat", significant("J", "kJ", 1e-3, 4), PressurantBottle::heat)
            .table();

    /** The heater of a feed that has one. */
    private static final FigureTable<PressureFeed> HEATER = FigureTable.<PressureFeed>ofOne()
            .word("source", "heated by", feed -> heater(feed).source().title())
            .number("power_W", "power", Notation.POWER, feed -> heater(feed).power())
            .number("share_of_jet_power", "share of the jet's power", Notation.PERCENT, feed -> heater(feed)
                    .jetShare())
            .optional("isp_cost_s", "specific impulse that it costs", significant("s", 2), feed -> heater(feed)
                    .impulseCost())
            .leftOutIfAbsent()
            .number("mass_saved_kg", "gas and bottle saved", GAS, PressureFeed::massSaved)
            .table();

    /** The whole feed. */
    public static final FigureTable<PressureFeed> ALL = FigureTable.<PressureFeed>ofOne()
            .word("feed", "feed", feed -> feed.design().feed().name().toLowerCase(Locale.ROOT))
            .word("gas", "gas", feed -> feed.design().gas().id())
            .each("tanks", PressureFeed::tanks, TANKS)
            .each("points", PressureFeed::points, POINTS)
            .number(
                    "total_impulse_N_s",
                    "total impulse in vacuum",
                    significant("N s", "MN·s", 1e-6, 4),
                    PressureFeed::totalImpulse)
            .part("bottle", PressureFeed::bottle, BOTTLE)
            .part("bottle_unheated", PressureFeed::unheated, BOTTLE)
            .part("heater", feed -> feed.heater().map(heater -> feed), HEATER)
            .table();

    private FeedFigures() {}

    private static PressureFeed.Heater heater(PressureFeed feed) {
        return feed.heater().orElseThrow();
    }
}

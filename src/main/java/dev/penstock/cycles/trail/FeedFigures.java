package dev.penstock.cycles.trail;

import static dev.penstock.provenance.Place.Role.BEFORE;
import static dev.penstock.provenance.Place.Role.INLET;
import static dev.penstock.provenance.Place.Role.WHOLE;
import static dev.penstock.provenance.Place.fixed;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.stated;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.questions.BlowdownLife;
import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Place.Source;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.feed.PressurantBottle;
import dev.penstock.turbomachinery.feed.UllageGas;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a pressure feed publishes: tanks, bottle, heater, and the engine over its life. */
public final class FeedFigures {

    /**
     * A tank with the feed that it belongs to.
     *
     * @param feed the feed
     * @param tank the tank
     */
    public record FedTank(PressureFeed feed, PressureFeed.Tank tank) {

        /**
         * @param feed a pressure feed
         * @return its tanks
         */
        public static List<FedTank> of(PressureFeed feed) {
            return feed.tanks().stream().map(tank -> new FedTank(feed, tank)).toList();
        }
    }

    /**
     * A point of an engine's life with the feed that it belongs to.
     *
     * @param feed the feed
     * @param number number of the point, from the start of life
     */
    public record Moment(PressureFeed feed, int number) {

        /**
         * @param feed a pressure feed
         * @return the points of the life that it gives
         */
        public static List<Moment> of(PressureFeed feed) {
            return IntStream.range(0, feed.points().size())
                    .mapToObj(number -> new Moment(feed, number))
                    .toList();
        }

        private PressureFeed.Point point() {
            return feed.points().get(number);
        }
    }

    private static final Notation GAS = Notation.MASS;
    private static final String ROOT = "pressure_feed";
    private static final String TANK_LIST = ROOT + ".tanks";
    private static final String POINT_LIST = ROOT + ".points";
    private static final Origin NOTHING = Origin.given("nothing, by the kind of feed", "definition");

    private static final Source FLOW = fixed("engine.mass_flow_kg_s");
    private static final Source FEED = stated("pressurization.");
    private static final Source ULLAGES = stated("pressurization.initial_ullage", "pressurization.fuel_initial_ullage");
    private static final Source EXPONENT = stated("pressurization.polytropic_exponent");
    private static final Source INJECTORS = stated("injector.");
    private static final Source LOADS = tanks("propellant_mass_kg");
    private static final Source HARDWARE =
            fixed("engine.chamber_pressure_Pa", "engine.mass_flow_kg_s", "engine.characteristic_velocity_m_s");
    private static final Source PRESSURES = own("oxidizer_tank_pressure_Pa", "fuel_tank_pressure_Pa");
    private static final Source CHAMBER = own("chamber_pressure_Pa", "mixture_ratio");

    /** Figures of a tank. */
    public static final FigureTable<FedTank> TANKS = FigureTable.<FedTank>named(
                    t -> t.tank().side().key())
            .word("name", "tank", t -> t.tank().side().key())
            .number("propellant_mass_kg", "propellant", significant("kg", 4), t -> t.tank()
                    .propellantMass())
            .from((t, at) -> made(
                    PressureFeedCards.LOAD,
                    at,
                    FLOW,
                    fixed("engine.mixture_ratio"),
                    falls(t.feed()) ? FEED : stated("pressurization.propellant_mass", "pressurization.burn_time")))
            .number("volume_m3", "volume", significant("m³", 3), t -> t.tank().volume())
            .by(PressureFeedCards.TANK_VOLUME, own("propellant_mass_kg"), of(INLET, "density_kg_m3"), ULLAGES)
            .number("pressure_begin_Pa", "pressure at start", Notation.PRESSURE, t -> t.tank()
                    .beginPressure())
            .by(ModelCard.SAME, of(INLET, "pressure_Pa"))
            .number("pressure_end_Pa", "at end", Notation.PRESSURE, t -> t.tank()
                    .endPressure())
            .from((t, at) ->
                    new Origin(ModelCard.SAME, last(t.feed(), t.tank().side().key() + "_tank_pressure_Pa")))
            .number("blowdown_ratio", "blowdown ratio", significant("", 3), t -> t.tank()
                    .blowdownRatio())
            .by(Definitions.RATIO, own("pressure_begin_Pa", "pressure_end_Pa"))
            .number("gas_mass_kg", "pressurant", GAS, t -> t.tank().gasMass())
            .from((t, at) -> falls(t.feed()) ? expanding(at) : NOTHING)
            .number("vapour_pressure_Pa", "vapour pressure", Notation.PRESSURE, t -> t.tank()
                    .vapourPressure())
            .by(t -> PressureFeedCards.vapourPressure(t.tank().propellant()), of(INLET, "temperature_K"))
            .number("residual_kg", "residual", GAS, t -> t.tank().residual())
            .from((t, at) -> falls(t.feed())
                    ? Origin.of(BlowdownLife.CARD, own("propellant_mass_kg").paths(at), last(t.feed(), "expelled"))
                    : NOTHING)
            .table();

    /** Figures of the engine when part of the propellant is gone. */
    public static final FigureTable<Moment> POINTS = FigureTable.<Moment>ofOne()
            .number("expelled", "expelled", Notation.PERCENT, m -> m.point().expelled())
            .from((m, at) -> m.number() == 0
                    ? NOTHING
                    : falls(m.feed())
                            ? made(BlowdownLife.CARD, at, LOADS, of(BEFORE, "expelled"))
                            : made(PressureFeedCards.LOAD, at, LOADS))
            .number("time_s", "time", significant("s", 4), m -> m.point().time())
            .from((m, at) -> m.number() == 0
                    ? NOTHING
                    : falls(m.feed())
                            ? made(
                                    BlowdownLife.CARD,
                                    at,
                                    of(BEFORE, "time_s"),
                                    of(BEFORE, "mass_flow_kg_s"),
                                    own("expelled", "mass_flow_kg_s"),
                                    LOADS)
                            : made(Definitions.RATIO, at, LOADS, FLOW))
            .number("oxidizer_tank_pressure_Pa", "oxidizer tank", Notation.PRESSURE, m -> m.point()
                    .oxidizerTankPressure())
            .from((m, at) -> tankPressure(m, at, Side.OXIDIZER))
            .number("fuel_tank_pressure_Pa", "fuel tank", Notation.PRESSURE, m -> m.point()
                    .fuelTankPressure())
            .from((m, at) -> tankPressure(m, at, Side.FUEL))
            .number("chamber_pressure_Pa", "chamber", Notation.PRESSURE, m -> m.point()
                    .chamberPressure())
            .from(life("engine.chamber_pressure_Pa", PRESSURES, HARDWARE))
            .number("mixture_ratio", "mixture ratio", significant("", 4), m -> m.point()
                    .mixtureRatio())
            .from(life("engine.mixture_ratio", PRESSURES, fixed("engine.mixture_ratio")))
            .number("thrust_vacuum_N", "thrust, vacuum", Notation.FORCE, m -> m.point()
                    .vacuumThrust())
            .from(life("engine.thrust_vacuum_N", CHAMBER, fixed("engine.thrust_vacuum_N")))
            .number("isp_vacuum_s", "Isp, vacuum", Notation.fixed("s", "s", 1, 1), m -> m.point()
                    .vacuumIsp())
            .from(life("engine.isp_vacuum_s", CHAMBER, fixed("engine.isp_vacuum_s")))
            .number("mass_flow_kg_s", "flow", Notation.MASS_FLOW, m -> m.point().massFlow())
            .from(life("engine.mass_flow_kg_s", PRESSURES, HARDWARE))
            .number("injector_drop_share", "injector drop / chamber", Notation.PERCENT, m -> m.point()
                    .injectorDrop())
            .from((m, at) -> falls(m.feed())
                    ? made(BlowdownLife.CARD, at, CHAMBER, own("mass_flow_kg_s"), INJECTORS)
                    : made(Definitions.SMALLEST, at, INJECTORS))
            .table();

    /** Figures of a pressurant bottle. */
    public static final FigureTable<PressurantBottle> BOTTLE = FigureTable.<PressurantBottle>ofOne()
            .number("gas_loaded_kg", "gas loaded", GAS, PressurantBottle::loaded)
            .from(FeedFigures::bottle)
            .number("gas_used_kg", "gas used", GAS, PressurantBottle::used)
            .from(FeedFigures::bottle)
            .number("volume_m3", "volume", significant("m³", "l", 1e3, 3), PressurantBottle::volume)
            .from(FeedFigures::bottle)
            .number("bottle_mass_kg", "bottle", GAS, PressurantBottle::bottleMass)
            .from(FeedFigures::bottle)
            .number("end_pressure_Pa", "pressure at end", Notation.PRESSURE, PressurantBottle::endPressure)
            .from(FeedFigures::bottle)
            .number("end_temperature_K", "temperature at end", Notation.TEMPERATURE, PressurantBottle::endTemperature)
            .from(FeedFigures::bottle)
            .number(
                    "tank_gas_temperature_K",
                    "gas in the tanks",
                    Notation.TEMPERATURE,
                    PressurantBottle::tankTemperature)
            .from(FeedFigures::bottle)
            .number("heat_J", "heat", significant("J", "kJ", 1e-3, 4), PressurantBottle::heat)
            .from(FeedFigures::bottle)
            .table();

    /** The heater of a feed that has one. */
    private static final FigureTable<PressureFeed> HEATER = FigureTable.<PressureFeed>ofOne()
            .word("source", "heated by", feed -> heater(feed).source().title())
            .number("power_W", "power", Notation.POWER, feed -> heater(feed).power())
            .from((feed, at) ->
                    Origin.of(PressureFeedCards.HEATER, at.all(WHOLE, "bottle.heat_J"), last(feed, "time_s")))
            .number("share_of_jet_power", "share of the jet's power", Notation.PERCENT, feed -> heater(feed)
                    .jetShare())
            .by(PressureFeedCards.HEATER, own("power_W"), fixed("engine.thrust_vacuum_N", "engine.isp_vacuum_s"))
            .optional("isp_cost_s", "specific impulse that it costs", significant("s", 2), feed -> heater(feed)
                    .impulseCost())
            .by(PressureFeedCards.HEATER, own("share_of_jet_power"), fixed("engine.isp_vacuum_s"))
            .leftOutIfAbsent()
            .number("mass_saved_kg", "gas and bottle saved", GAS, PressureFeed::massSaved)
            .by(
                    Definitions.DIFFERENCE,
                    of(WHOLE, "bottle_unheated.gas_loaded_kg"),
                    of(WHOLE, "bottle_unheated.bottle_mass_kg"),
                    of(WHOLE, "bottle.gas_loaded_kg"),
                    of(WHOLE, "bottle.bottle_mass_kg"))
            .table();

    /** The whole feed. */
    public static final FigureTable<PressureFeed> ALL = FigureTable.<PressureFeed>ofOne()
            .word("feed", "feed", feed -> feed.design().feed().name().toLowerCase(Locale.ROOT))
            .word("gas", "gas", feed -> feed.design().gas().id())
            .each(
                    "tanks",
                    FedTank::of,
                    TANKS,
                    (feed, t, at) -> at.with(
                            INLET,
                            List.of(at.all(Place.Role.TANKS).get(t.tank().side().ordinal()))))
            .each(
                    "points",
                    Moment::of,
                    POINTS,
                    (feed, m, at) -> at.with(
                            BEFORE,
                            POINTS.paths(POINT_LIST, Moment.of(feed)).subList(Math.max(0, m.number() - 1), m.number())))
            .number(
                    "total_impulse_N_s",
                    "total impulse in vacuum",
                    significant("N s", "MN·s", 1e-6, 4),
                    PressureFeed::totalImpulse)
            .from((feed, at) ->
                    Origin.of(PressureFeedCards.IMPULSE, points(feed, "thrust_vacuum_N"), points(feed, "time_s")))
            .part("bottle", PressureFeed::bottle, BOTTLE)
            .part(
                    "bottle_unheated",
                    PressureFeed::unheated,
                    BOTTLE,
                    (feed, bottle, at) -> at.with(
                            Place.Role.GIVEN,
                            stated(
                                            "pressurization.bottle_",
                                            "pressurization.oxidizer_collapse",
                                            "pressurization.fuel_collapse")
                                    .paths(at)))
            .part("heater", feed -> feed.heater().map(heater -> feed), HEATER)
            .table();

    private FeedFigures() {}

    /**
     * @param balance balanced engine
     * @param feed its pressure feed
     * @param trail trail of the balance, which gets the entries of its pressure feed too
     * @return the same trail
     */
    public static Trail record(EngineBalance balance, PressureFeed feed, Trail trail) {
        ALL.record(feed, EnginePlaces.of(balance).part(ROOT), trail);
        return trail;
    }

    private static PressureFeed.Heater heater(PressureFeed feed) {
        return feed.heater().orElseThrow();
    }

    private static boolean falls(PressureFeed feed) {
        return feed.design().feed() == PressurizationDesign.Feed.BLOWDOWN;
    }

    // ---- origins

    private static Origin made(ModelCard model, Place at, Source... from) {
        return new Origin(
                model,
                Stream.of(from)
                        .flatMap(source -> source.paths(at).stream())
                        .distinct()
                        .toList());
    }

    /** A regulator holds a figure of the engine; on falling pressure it follows from what is given. */
    private static BiFunction<Moment, Place, Origin> life(String held, Source... falling) {
        return (m, at) ->
                falls(m.feed()) ? made(BlowdownLife.CARD, at, falling) : made(ModelCard.SAME, at, fixed(held));
    }

    private static Origin expanding(Place tank) {
        return made(
                UllageGas.CARD,
                tank,
                own("pressure_begin_Pa", "vapour_pressure_Pa", "volume_m3"),
                of(INLET, "temperature_K"),
                ULLAGES,
                EXPONENT);
    }

    private static Origin tankPressure(Moment moment, Place at, Side side) {
        Place tank = Place.at(TANK_LIST + "." + side.key());
        return falls(moment.feed())
                ? made(
                        UllageGas.CARD,
                        at,
                        own("expelled"),
                        here -> own("pressure_begin_Pa", "vapour_pressure_Pa", "volume_m3")
                                .paths(tank),
                        fixed(at.all(Place.Role.TANKS).get(side.ordinal()) + ".temperature_K"),
                        ULLAGES,
                        EXPONENT)
                : made(ModelCard.SAME, at, fixed(at.all(Place.Role.TANKS).get(side.ordinal()) + ".pressure_Pa"));
    }

    private static Origin bottle(PressurantBottle bottle, Place at) {
        return made(
                PressurantBottle.CARD,
                at,
                stated(
                        "pressurization.bottle_",
                        "pressurization.heated_temperature",
                        "pressurization.heat_source",
                        "pressurization.oxidizer_collapse",
                        "pressurization.fuel_collapse"),
                tanks("pressure_begin_Pa"),
                tanks("volume_m3"));
    }

    private static Source tanks(String key) {
        return at -> Stream.of(Side.values())
                .map(side -> TANK_LIST + "." + side.key() + "." + key)
                .toList();
    }

    private static List<String> points(PressureFeed feed, String key) {
        return POINTS.paths(POINT_LIST, Moment.of(feed), key);
    }

    private static List<String> last(PressureFeed feed, String key) {
        List<String> all = points(feed, key);
        return all.subList(all.size() - 1, all.size());
    }
}

package dev.penstock.cycles.trail;

import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.questions.BlowdownLife;
import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import dev.penstock.turbomachinery.feed.PressurantBottle;
import dev.penstock.turbomachinery.feed.UllageGas;
import java.util.ArrayList;
import java.util.List;

/** Records where the numbers of a pressure feed come from: tanks, bottle, heater, and the engine over its life. */
public final class PressureFeedTrail {

    private static final String ROOT = "pressure_feed.";

    private final EngineBalance balance;
    private final PressureFeed feed;
    private final Trail trail;

    private PressureFeedTrail(EngineBalance balance, PressureFeed feed, Trail trail) {
        this.balance = balance;
        this.feed = feed;
        this.trail = trail;
    }

    /**
     * @param trail trail of the balance, which gets the entries of its pressure feed too
     * @param balance balanced engine
     * @param feed its pressure feed
     * @return the same trail
     */
    public static Trail extend(Trail trail, EngineBalance balance, PressureFeed feed) {
        new PressureFeedTrail(balance, feed, trail).record();
        return trail;
    }

    private void record() {
        feed.tanks().forEach(this::load);
        for (int i = 0; i < feed.points().size(); i++) {
            if (blowdown()) {
                falling(i, feed.points().get(i));
            } else {
                held(i, feed.points().get(i));
            }
        }
        feed.tanks().forEach(this::tank);
        feed.bottle().ifPresent(b -> bottle("bottle", b, concept("bottle_", "heated_temperature", "heat_source")));
        feed.unheated().ifPresent(b -> bottle("bottle_unheated", b, concept("bottle_")));
        feed.heater().ifPresent(this::heater);
        List<String> impulse = new ArrayList<>();
        for (int i = 0; i < feed.points().size(); i++) {
            impulse.add(point(i, "thrust_vacuum_N"));
            impulse.add(point(i, "time_s"));
        }
        put(ROOT + "total_impulse_N_s", feed.totalImpulse(), "N s", PressureFeedCards.IMPULSE, impulse);
    }

    // ---- tanks

    private void load(PressureFeed.Tank tank) {
        String at = at(tank.side());
        List<String> flow = List.of("engine.mass_flow_kg_s", "engine.mixture_ratio");
        List<String> asked = blowdown() ? concept("") : concept("propellant_mass", "burn_time");
        put(at + "propellant_mass_kg", tank.propellantMass(), "kg", PressureFeedCards.LOAD, flow, asked);
        put(
                at + "volume_m3",
                tank.volume(),
                "m³",
                PressureFeedCards.TANK_VOLUME,
                List.of(at + "propellant_mass_kg", outlet(tank.side()) + ".density_kg_m3"),
                ullage());
        same(at + "pressure_begin_Pa", tank.beginPressure(), "Pa", outlet(tank.side()) + ".pressure_Pa");
        put(
                at + "vapour_pressure_Pa",
                tank.vapourPressure(),
                "Pa",
                PressureFeedCards.vapourPressure(
                        balance.concept().feed(tank.side()).propellant()),
                List.of(outlet(tank.side()) + ".temperature_K"));
        if (blowdown()) {
            put(at + "gas_mass_kg", tank.gasMass(), "kg", UllageGas.CARD, ullageOf(tank.side()));
        } else {
            none(at + "gas_mass_kg", "kg");
        }
    }

    private void tank(PressureFeed.Tank tank) {
        String at = at(tank.side());
        int last = feed.points().size() - 1;
        same(
                at + "pressure_end_Pa",
                tank.endPressure(),
                "Pa",
                point(last, tank.side().key() + "_tank_pressure_Pa"));
        put(
                at + "blowdown_ratio",
                tank.blowdownRatio(),
                "",
                Definitions.RATIO,
                List.of(at + "pressure_begin_Pa", at + "pressure_end_Pa"));
        if (blowdown()) {
            List<String> spent = List.of(at + "propellant_mass_kg", point(last, "expelled"));
            put(at + "residual_kg", tank.residual(), "kg", BlowdownLife.CARD, spent);
        } else {
            none(at + "residual_kg", "kg");
        }
    }

    // ---- the engine over its life

    private void held(int i, PressureFeed.Point p) {
        if (i == 0) {
            none(point(i, "expelled"), "");
            none(point(i, "time_s"), "s");
        } else {
            put(point(i, "expelled"), p.expelled(), "", PressureFeedCards.LOAD, masses());
            List<String> flow = List.of("engine.mass_flow_kg_s");
            put(point(i, "time_s"), p.time(), "s", Definitions.RATIO, masses(), flow);
        }
        for (Side side : Side.values()) {
            double pressure = side == Side.OXIDIZER ? p.oxidizerTankPressure() : p.fuelTankPressure();
            same(point(i, side.key() + "_tank_pressure_Pa"), pressure, "Pa", outlet(side) + ".pressure_Pa");
        }
        same(point(i, "chamber_pressure_Pa"), p.chamberPressure(), "Pa", "engine.chamber_pressure_Pa");
        same(point(i, "mixture_ratio"), p.mixtureRatio(), "", "engine.mixture_ratio");
        same(point(i, "thrust_vacuum_N"), p.vacuumThrust(), "N", "engine.thrust_vacuum_N");
        same(point(i, "isp_vacuum_s"), p.vacuumIsp(), "s", "engine.isp_vacuum_s");
        same(point(i, "mass_flow_kg_s"), p.massFlow(), "kg/s", "engine.mass_flow_kg_s");
        put(point(i, "injector_drop_share"), p.injectorDrop(), "", Definitions.SMALLEST, injectors());
    }

    private void falling(int i, PressureFeed.Point p) {
        if (i == 0) {
            none(point(i, "expelled"), "");
            none(point(i, "time_s"), "s");
        } else {
            List<String> before = List.of(point(i - 1, "expelled"));
            put(point(i, "expelled"), p.expelled(), "", BlowdownLife.CARD, masses(), before);
        }
        for (Side side : Side.values()) {
            double pressure = side == Side.OXIDIZER ? p.oxidizerTankPressure() : p.fuelTankPressure();
            String path = point(i, side.key() + "_tank_pressure_Pa");
            put(path, pressure, "Pa", UllageGas.CARD, ullageOf(side), List.of(point(i, "expelled")));
        }
        List<String> tanks = List.of(point(i, "oxidizer_tank_pressure_Pa"), point(i, "fuel_tank_pressure_Pa"));
        List<String> hardware =
                List.of("engine.chamber_pressure_Pa", "engine.mass_flow_kg_s", "engine.characteristic_velocity_m_s");
        put(point(i, "chamber_pressure_Pa"), p.chamberPressure(), "Pa", BlowdownLife.CARD, tanks, hardware);
        put(point(i, "mixture_ratio"), p.mixtureRatio(), "", BlowdownLife.CARD, tanks, List.of("engine.mixture_ratio"));
        put(point(i, "mass_flow_kg_s"), p.massFlow(), "kg/s", BlowdownLife.CARD, tanks, hardware);
        List<String> here = List.of(point(i, "chamber_pressure_Pa"), point(i, "mixture_ratio"));
        put(
                point(i, "thrust_vacuum_N"),
                p.vacuumThrust(),
                "N",
                BlowdownLife.CARD,
                here,
                List.of("engine.thrust_vacuum_N"));
        put(point(i, "isp_vacuum_s"), p.vacuumIsp(), "s", BlowdownLife.CARD, here, List.of("engine.isp_vacuum_s"));
        List<String> flow = List.of(point(i, "mass_flow_kg_s"));
        put(point(i, "injector_drop_share"), p.injectorDrop(), "", BlowdownLife.CARD, here, flow, injectors());
        if (i > 0) {
            List<String> burnt = List.of(point(i - 1, "time_s"), point(i - 1, "mass_flow_kg_s"), point(i, "expelled"));
            put(point(i, "time_s"), p.time(), "s", BlowdownLife.CARD, burnt, flow, masses());
        }
    }

    // ---- bottle and heater

    private void bottle(String name, PressurantBottle b, List<String> asked) {
        String at = ROOT + name + ".";
        List<String> inputs = new ArrayList<>(asked);
        inputs.addAll(concept("oxidizer_collapse", "fuel_collapse"));
        for (Side side : Side.values()) {
            inputs.add(at(side) + "pressure_begin_Pa");
            inputs.add(at(side) + "volume_m3");
        }
        put(at + "gas_loaded_kg", b.loaded(), "kg", PressurantBottle.CARD, inputs);
        put(at + "gas_used_kg", b.used(), "kg", PressurantBottle.CARD, inputs);
        put(at + "volume_m3", b.volume(), "m³", PressurantBottle.CARD, inputs);
        put(at + "bottle_mass_kg", b.bottleMass(), "kg", PressurantBottle.CARD, inputs);
        put(at + "end_pressure_Pa", b.endPressure(), "Pa", PressurantBottle.CARD, inputs);
        put(at + "end_temperature_K", b.endTemperature(), "K", PressurantBottle.CARD, inputs);
        put(at + "tank_gas_temperature_K", b.tankTemperature(), "K", PressurantBottle.CARD, inputs);
        put(at + "heat_J", b.heat(), "J", PressurantBottle.CARD, inputs);
    }

    private void heater(PressureFeed.Heater heater) {
        String at = ROOT + "heater.";
        List<String> heat = List.of(ROOT + "bottle.heat_J", point(feed.points().size() - 1, "time_s"));
        List<String> jet = List.of("engine.thrust_vacuum_N", "engine.isp_vacuum_s");
        put(at + "power_W", heater.power(), "W", PressureFeedCards.HEATER, heat);
        put(at + "share_of_jet_power", heater.jetShare(), "", PressureFeedCards.HEATER, List.of(at + "power_W"), jet);
        heater.impulseCost()
                .ifPresent(cost -> put(
                        at + "isp_cost_s",
                        cost,
                        "s",
                        PressureFeedCards.HEATER,
                        List.of(at + "share_of_jet_power", "engine.isp_vacuum_s")));
        double saved = feed.unheated().orElseThrow().mass()
                - feed.bottle().orElseThrow().mass();
        List<String> parts = new ArrayList<>();
        for (String name : List.of("bottle_unheated", "bottle")) {
            parts.add(ROOT + name + ".gas_loaded_kg");
            parts.add(ROOT + name + ".bottle_mass_kg");
        }
        put(at + "mass_saved_kg", saved, "kg", Definitions.DIFFERENCE, parts);
    }

    // ---- paths

    private boolean blowdown() {
        return feed.design().feed() == PressurizationDesign.Feed.BLOWDOWN;
    }

    private static String at(Side side) {
        return ROOT + "tanks." + side.key() + ".";
    }

    private static String point(int number, String key) {
        return ROOT + "points." + number + "." + key;
    }

    private String outlet(Side side) {
        return BalanceTrail.at(balance.tankOutlet(side).number());
    }

    private List<String> masses() {
        return List.of(at(Side.OXIDIZER) + "propellant_mass_kg", at(Side.FUEL) + "propellant_mass_kg");
    }

    private List<String> ullageOf(Side side) {
        List<String> paths = new ArrayList<>(List.of(
                at(side) + "pressure_begin_Pa",
                at(side) + "vapour_pressure_Pa",
                at(side) + "volume_m3",
                outlet(side) + ".temperature_K"));
        paths.addAll(ullage());
        paths.addAll(concept("polytropic_exponent"));
        return paths;
    }

    private List<String> ullage() {
        return concept("initial_ullage", "fuel_initial_ullage");
    }

    private List<String> injectors() {
        return BalanceTrail.concept(balance, trail, "injector.");
    }

    private List<String> concept(String... keys) {
        String[] prefixes = new String[keys.length];
        for (int i = 0; i < keys.length; i++) {
            prefixes[i] = "pressurization." + keys[i];
        }
        return BalanceTrail.concept(balance, trail, prefixes);
    }

    // ---- entries

    @SafeVarargs
    private void put(String path, double value, String unit, ModelCard card, List<String>... inputs) {
        BalanceTrail.put(trail, path, value, unit, card, inputs);
    }

    private void same(String path, double value, String unit, String other) {
        put(path, value, unit, Definitions.SAME, List.of(other));
    }

    private void none(String path, String unit) {
        trail.given(path, 0, unit, "nothing, by the kind of feed", "definition");
    }
}

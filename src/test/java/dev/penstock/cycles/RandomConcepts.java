package dev.penstock.cycles;

import static dev.penstock.cycles.Dice.number;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Concepts that an engineer might ask for, at random: every cycle, the propellants it is used with, sizes from small
 * thrusters to the largest boosters, chamber pressures and gas temperatures inside what the cycle is known to reach.
 */
final class RandomConcepts {

    record Pair(String oxidizer, String fuel, double mixtureRatio) {}

    private static final List<Pair> CRYOGENIC = List.of(
            new Pair("oxygen", "hydrogen", 5.8),
            new Pair("oxygen", "methane", 3.4),
            new Pair("oxygen", "rp-1", 2.5),
            new Pair("oxygen", "propane", 2.9),
            new Pair("oxygen", "ethanol", 1.6),
            new Pair("oxygen", "ammonia", 1.3));
    private static final List<Pair> STORABLE = List.of(
            new Pair("nitrogen-tetroxide", "mmh", 1.9),
            new Pair("nitrogen-tetroxide", "udmh", 2.4),
            new Pair("nitrogen-tetroxide", "hydrazine-50", 1.9),
            new Pair("nitrogen-tetroxide", "hydrazine", 1.2),
            new Pair("nitrous-oxide", "ethanol", 4.5),
            new Pair("hydrogen-peroxide-98", "rp-1", 7.0),
            new Pair("hydrogen-peroxide-90", "rp-1", 7.4));
    /** Every pair that is drawn. */
    static final List<Pair> PAIRS =
            Stream.of(CRYOGENIC, STORABLE).flatMap(List::stream).toList();

    private static final List<Pair> HEATED =
            List.of(new Pair("oxygen", "hydrogen", 5.8), new Pair("oxygen", "methane", 3.4));
    private static final List<Pair> DECOMPOSING = List.of(
            new Pair("hydrogen-peroxide-90", "rp-1", 7.4),
            new Pair("hydrogen-peroxide-98", "rp-1", 7.0),
            new Pair("nitrogen-tetroxide", "hydrazine", 1.2));

    /** A circuit of the oxidizer behind that of the fuel. */
    static final String OXIDIZER_NOZZLE = "[{name = \"nozzle\", coolant = \"oxidizer\"}]";

    private final Dice dice;

    RandomConcepts(long seed) {
        this.dice = new Dice(seed);
    }

    /** A concept as the changes to nothing: keys and values of its file. */
    record Draw(Cycle cycle, Map<String, String> values) {

        Concept concept() {
            return Concepts.READER.parse("random", "cycle = \"" + cycle.id() + "\"\n", values);
        }
    }

    Draw next() {
        Cycle cycle = dice.of(Cycle.all());
        Pair pair = pair(cycle);
        Map<String, String> v = new LinkedHashMap<>();
        v.put("name", "Random");
        v.put("propellants.oxidizer", pair.oxidizer());
        v.put("propellants.fuel", pair.fuel());
        v.put("propellants.mixture_ratio", number(pair.mixtureRatio() * dice.between(0.85, 1.15)));
        boolean hydrogen = pair.fuel().equals("hydrogen");
        switch (cycle.id()) {
            case "pressure-fed" -> size(v, 100, 1e6, 0.2, 3, dice.between(5, 120));
            case "gas-generator" -> {
                size(v, 1e4, 1e7, 1.5, 14, dice.between(8, 60));
                v.put("gas_generator.temperature", number(generatorTemperature(pair)) + " K");
                v.put("turbines." + leading(v, pair, "gas-generator") + ".pressure_ratio", number(dice.between(6, 24)));
            }
            case "staged-fuel-rich" -> {
                size(v, 3e4, 5e6, 4, pair.fuel().equals("hydrogen") ? 20 : 11, dice.between(15, 80));
                v.put("preburner.fuel_rich.temperature", number(dice.between(850, 1050)) + " K");
            }
            case "staged-oxygen-rich" -> {
                size(v, 3e4, 8e6, 4, 17, dice.between(15, 60));
                v.put("preburner.oxidizer_rich.temperature", number(dice.between(650, 800)) + " K");
            }
            case "full-flow" -> {
                size(v, 5e4, 5e6, 6, 22, dice.between(15, 60));
                v.put("preburner.fuel_rich.temperature", number(dice.between(800, 1000)) + " K");
                v.put("preburner.oxidizer_rich.temperature", number(dice.between(650, 800)) + " K");
            }
            case "expander", "split-expander" ->
                size(v, 2e4, hydrogen ? 1.5e5 : 6e4, 1.2, hydrogen ? 4 : 2.2, dice.between(40, 150));
            case "expander-bleed" -> size(v, 3e4, 1e6, 2, 6, dice.between(40, 130));
            case "tap-off" -> {
                size(v, 2e4, 2e6, 2, 10, dice.between(10, 60));
                v.put("tap_off.temperature", number(dice.between(850, 1100)) + " K");
            }
            case "dual-expander" -> {
                size(v, 2e4, 1.2e5, 2, 3.2, dice.between(50, 150));
                v.put("cooling.end_area_ratio", number(dice.between(1.4, 2)));
                v.put("cooling.circuits", OXIDIZER_NOZZLE);
            }
            case "electric-pump" -> size(v, 1e3, 2e5, 1, 12, dice.between(8, 60));
            default -> size(v, 1e4, 1e6, 1, 7, dice.between(8, 50));
        }
        boolean cool = cycle.traits().livesOnJacketHeat()
                || dice.oneIn(3)
                        && CRYOGENIC.subList(0, 3).contains(pair)
                        && !cycle.id().equals("pressure-fed")
                        && !cycle.id().equals("electric-pump");
        if (cool) {
            v.put("cooling.coolant", "fuel");
        }
        return new Draw(cycle, v);
    }

    private Pair pair(Cycle cycle) {
        List<Pair> list =
                switch (cycle.id()) {
                    case "expander" -> HEATED;
                    case "split-expander", "expander-bleed", "dual-expander" -> HEATED.subList(0, 1);
                    case "decomposition-generator" -> DECOMPOSING;
                    case "staged-fuel-rich" -> CRYOGENIC.subList(0, 2);
                    case "full-flow" -> CRYOGENIC.subList(0, 2);
                    case "staged-oxygen-rich" -> CRYOGENIC.subList(1, 4);
                    case "tap-off" -> CRYOGENIC.subList(0, 3);
                    case "gas-generator" -> CRYOGENIC;
                    case "electric-pump" -> CRYOGENIC;
                    default -> dice.coin() ? CRYOGENIC : STORABLE;
                };
        return dice.of(list);
    }

    private double generatorTemperature(Pair pair) {
        return pair.fuel().equals("ammonia") ? dice.between(900, 1100) : dice.between(870, 1100);
    }

    private static String leading(Map<String, String> v, Pair pair, String cycle) {
        return pair.fuel().equals("hydrogen") && !v.containsKey("shafts.arrangement") ? "fuel" : "main";
    }

    private void size(
            Map<String, String> v,
            double lowThrust,
            double highThrust,
            double lowPressure,
            double highPressure,
            double areaRatio) {
        v.put("engine.thrust_vacuum", number(dice.logarithmic(lowThrust, highThrust)) + " N");
        v.put("engine.chamber_pressure", number(dice.logarithmic(lowPressure, highPressure)) + " MPa");
        v.put("nozzle.area_ratio", number(areaRatio));
    }
}

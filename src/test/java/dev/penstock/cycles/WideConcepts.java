package dev.penstock.cycles;

import static dev.penstock.cycles.Dice.number;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.ShaftDesign;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Concepts far beyond what an engineer asks for, at random: every cycle with every pair, sizes, pressures and area ratios
 * over their whole ranges, whichever coolant and shafts. Many have no balance; each must close or be refused in a sentence.
 */
final class WideConcepts {

    private static final double LOWEST_THRUST = 100;
    private static final double HIGHEST_THRUST = 1e7;
    private static final double LOWEST_PRESSURE = 0.3;
    private static final double HIGHEST_PRESSURE = 40;
    private static final double LOWEST_AREA_RATIO = 2;
    private static final double HIGHEST_AREA_RATIO = 400;
    private static final List<String> COOLANTS = List.of("fuel", "oxidizer", "none");

    private final Dice dice;

    WideConcepts(long seed) {
        this.dice = new Dice(seed);
    }

    /** A staged engine whose methane boils beside its critical point all along the jacket: number 14 of seed 11. */
    static RandomConcepts.Draw boiling() {
        return draw(11, 14);
    }

    /** One of the concepts that a seed gives, counted from 0. */
    static RandomConcepts.Draw draw(long seed, int number) {
        WideConcepts draws = new WideConcepts(seed);
        return Stream.generate(draws::next).skip(number).findFirst().orElseThrow();
    }

    RandomConcepts.Draw next() {
        Cycle cycle = dice.of(Cycle.all());
        RandomConcepts.Pair pair = dice.of(RandomConcepts.PAIRS);
        Map<String, String> v = new LinkedHashMap<>();
        v.put("name", "Random");
        v.put("propellants.oxidizer", pair.oxidizer());
        v.put("propellants.fuel", pair.fuel());
        v.put("propellants.mixture_ratio", number(pair.mixtureRatio() * dice.logarithmic(0.5, 2)));
        v.put("engine.thrust_vacuum", number(dice.logarithmic(LOWEST_THRUST, HIGHEST_THRUST)) + " N");
        v.put("engine.chamber_pressure", number(dice.logarithmic(LOWEST_PRESSURE, HIGHEST_PRESSURE)) + " MPa");
        v.put("nozzle.area_ratio", number(dice.logarithmic(LOWEST_AREA_RATIO, HIGHEST_AREA_RATIO)));
        for (Burner burner : cycle.traits().burners()) {
            if (burner != Burner.DECOMPOSITION) {
                v.put(burner.key() + ".temperature", number(dice.between(600, 1200)) + " K");
            }
        }
        if (cycle.traits().pumped()) {
            ShaftDesign.Arrangement arrangement = dice.of(cycle.traits().arrangements());
            v.put("shafts.arrangement", arrangement.name().toLowerCase(Locale.ROOT));
        }
        v.put("cooling.coolant", cycle.traits().livesOnJacketHeat() ? "fuel" : dice.of(COOLANTS));
        if (cycle.traits().heated().size() > 1) {
            v.put("cooling.end_area_ratio", number(dice.logarithmic(1.2, 30)));
            v.put("cooling.circuits", RandomConcepts.OXIDIZER_NOZZLE);
        }
        return new RandomConcepts.Draw(cycle, v);
    }
}

package dev.penstock.cycles;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A sequence of random choices and numbers, the same for the same seed. */
final class Dice {

    private final Random random;

    Dice(long seed) {
        this.random = new Random(seed);
    }

    <T> T of(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    boolean oneIn(int count) {
        return random.nextInt(count) == 0;
    }

    boolean coin() {
        return random.nextBoolean();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    double logarithmic(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    /** The number as text of a concept file, with five digits. */
    static String number(double value) {
        return String.format(Locale.ROOT, "%.5g", value);
    }
}

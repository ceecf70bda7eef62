package dev.penstock.cycles;

/** The solver's unknowns, handed out in the order in which a cycle listed them. */
final class Values {

    private final double[] values;
    private int position;

    Values(double... values) {
        this.values = values;
    }

    double next() {
        return values[position++];
    }

    boolean exhausted() {
        return position == values.length;
    }
}

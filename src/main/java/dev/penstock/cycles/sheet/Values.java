package dev.penstock.cycles.sheet;

/** The solver's unknowns, handed out in the order in which a cycle listed them. */
public final class Values {

    private final double[] values;
    private int position;

    public Values(double... values) {
        this.values = values;
    }

    public double next() {
        return values[position++];
    }

    public boolean exhausted() {
        return position == values.length;
    }
}

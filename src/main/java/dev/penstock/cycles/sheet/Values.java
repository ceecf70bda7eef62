package dev.penstock.cycles.sheet;

import dev.penstock.provenance.Traced;
import java.util.ArrayList;
import java.util.List;

/** The solver's unknowns, handed out in the order in which a cycle listed them. */
public final class Values {

    private final List<Traced> values;
    private int position;

    private Values(List<Traced> values) {
        this.values = values;
    }

    /** Numbers that the solver tries. */
    public static Values tried(double... x) {
        List<Traced> values = new ArrayList<>(x.length);
        for (double value : x) {
            values.add(Traced.of(value));
        }
        return new Values(values);
    }

    /** Numbers with what they depend on. */
    public static Values of(List<Traced> values) {
        return new Values(values);
    }

    public Traced next() {
        return values.get(position++);
    }

    public boolean exhausted() {
        return position == values.size();
    }
}

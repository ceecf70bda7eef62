package dev.penstock.cycles.reading;

import dev.penstock.input.InputTable;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the table {@code [uncertainty]} of a concept: how sure its values are. The most likely value is the value in use; a
 * file that says otherwise contradicts itself and is refused. Where a change puts another value in place of the file's, the
 * bounds move with it in proportion.
 */
final class ConceptUncertainty {

    private static final String SOURCE = "concept file";
    private static final double SAME = 1e-9;

    private ConceptUncertainty() {}

    /**
     * @param table the table
     * @param changed keys whose values are not the file's
     * @param inputs every input read
     * @return the same, with what the table says of them; problems are noted
     */
    static List<InputValue> read(InputTable table, Set<String> changed, List<InputValue> inputs) {
        List<InputValue> all = new ArrayList<>();
        for (InputValue input : inputs) {
            all.add(table.has(input.key()) ? read(table, changed.contains(input.key()), input) : input);
        }
        return all;
    }

    private static InputValue read(InputTable table, boolean changed, InputValue input) {
        String quoted = '"' + input.key() + '"';
        Optional<Spread> spread = table.spread(input.key(), input.input());
        if (spread.isEmpty()) {
            return input;
        }
        if (input.number().isEmpty()) {
            table.problem(
                    quoted,
                    "[" + Double.toString(spread.get().mode()) + "]",
                    "the calculation finds this value: state it together with its spread");
            return input;
        }
        double used = input.number().getAsDouble();
        double mode = spread.get().mode();
        boolean same = Math.abs(used - mode) <= SAME * Math.max(Math.abs(used), Math.abs(mode));
        if (!same && !changed) {
            table.problem(
                    quoted,
                    input.shown(mode),
                    "the most likely value must be the one in use, which is " + input.shown(used));
            return input;
        }
        return input.known(spread.get().about(used), SOURCE);
    }
}

package dev.penstock.input;

import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one file says of an input, or what stands for it where the file is silent.
 *
 * @param input the declaration
 * @param key dotted key in the file, for example "pumps.fuel.efficiency"
 * @param said the value as its kind has it, SI; empty where the calculation finds it
 * @param given whether the file states it, or a change does
 * @param source the file's own source, or what the default rests on
 * @param spread how sure it is; empty for what counts as exact or is not known before the calculation
 * @param spreadSource where the spread comes from; empty without one
 * @param follows dotted keys of the inputs that a default is made from; empty for what is given and for constants
 */
public record InputValue(
        Input<?> input,
        String key,
        Optional<?> said,
        boolean given,
        String source,
        Optional<Spread> spread,
        String spreadSource,
        List<String> follows) {

    public InputValue {
        follows = List.copyOf(follows);
    }

    /** What stands for a value that the calculation finds. */
    public static final String COMPUTED = "computed";

    /**
     * @param table a declared table
     * @return whether the key lies in a table of that key, at any depth
     */
    public boolean within(InputGroup table) {
        return Arrays.asList(key.split("\\.")).contains(table.key());
    }

    /**
     * @param table a declared table that repeats
     * @param place which of them, from zero
     * @return whether the key lies in that table, at any depth
     */
    public boolean within(InputGroup table, int place) {
        return Arrays.asList(key.split("\\.")).contains(table.key() + '[' + place + ']');
    }

    /** @return the value in SI or the text chosen, as text; "computed" where the calculation finds it */
    public String value() {
        return said.map(v -> text(input.kind(), v)).orElse(COMPUTED);
    }

    @SuppressWarnings("unchecked")
    private static <T> String text(InputKind<T> kind, Object value) {
        return kind.text((T) value);
    }

    /** @return SI unit as text; empty for plain numbers, texts and what is computed */
    public String unit() {
        return said.isPresent() ? unitOfKind() : "";
    }

    /** @return the value where it is one number, SI, every bit of it */
    public OptionalDouble number() {
        return said.map(InputValue::numberOf).orElse(OptionalDouble.empty());
    }

    static OptionalDouble numberOf(Object value) {
        Object one = value instanceof List<?> list && list.size() == 1 ? list.get(0) : value;
        return one instanceof Number n ? OptionalDouble.of(n.doubleValue()) : OptionalDouble.empty();
    }

    /** @return whether the calculation finds the value */
    public boolean computed() {
        return said.isEmpty();
    }

    /** @return value and unit as people write them in a file, to six digits; words and open values as they stand */
    public String readable() {
        OptionalDouble number = number();
        return number.isPresent() && !unit().isEmpty() ? Digits.readable(number.getAsDouble(), unit()) : value();
    }

    /**
     * @return the value as a TOML file has it: as people write it where that means the same number to the last bit, else in
     *     SI with every digit; empty where the calculation finds it
     */
    public Optional<String> toml() {
        if (computed()) {
            return Optional.empty();
        }
        OptionalDouble number = number();
        if (number.isPresent() && input.kind() instanceof InputKind.Quantity kind) {
            double exact = number.getAsDouble();
            String short6 = Digits.readable(exact, kind.unit());
            boolean same = Units.parse(short6, kind.dimension())
                    .filter(read -> read == exact)
                    .isPresent();
            return Optional.of(same && !kind.unit().isEmpty() ? '"' + short6 + '"' : same ? short6 : kind.toml(exact));
        }
        return Optional.of(
                input.kind() instanceof InputKind.Whole || input.kind() instanceof InputKind.Flag
                        ? value()
                        : new InputKind.Text().toml(value()));
    }

    /**
     * @param x another value, SI
     * @return it as a change of the file has it, every bit of it
     */
    public String written(double x) {
        return input.kind().change(x);
    }

    /**
     * @param x another value, SI
     * @return it to ten digits with its SI unit, for people
     */
    public String shown(double x) {
        String number = Digits.number(x, 10);
        return unitOfKind().isEmpty() ? number : number + " " + unitOfKind();
    }

    /**
     * @param probability cumulative probability (-), 0 to 1
     * @return the value there, SI
     * @throws IllegalStateException if the value counts as exact (a defect in the caller)
     */
    public double quantile(double probability) {
        return sure().quantile(probability);
    }

    /**
     * @param x a value, SI
     * @return cumulative probability of it (-), 0 to 1
     * @throws IllegalStateException if the value counts as exact (a defect in the caller)
     */
    public double probability(double x) {
        return sure().probability(x);
    }

    private Spread sure() {
        return spread.orElseThrow(() -> new IllegalStateException(key + " has no spread"));
    }

    /** @return SI unit of its numbers, known even before the calculation finds the value */
    public String unitOfKind() {
        return input.kind().unit();
    }

    /**
     * @param sure how sure it is
     * @param from where that comes from
     * @return the same value with that spread
     */
    public InputValue known(Spread sure, String from) {
        return new InputValue(input, key, said, given, source, Optional.of(sure), from, follows);
    }
}

package dev.penstock.claims.file;

import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.input.Input;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one claim, or one prior, in the unit of what it is about. */
final class ClaimKeys {

    private final String path;
    private final List<InputTable> tables;
    private final Optional<Dimension> dimension;

    ClaimKeys(String path, List<InputTable> tables) {
        this.path = path;
        this.tables = tables;
        this.dimension = ClaimPaths.dimension(path);
    }

    private InputTable last() {
        return tables.get(tables.size() - 1);
    }

    private void problem(String key, String value, String allowed) {
        last().problem(key, value, allowed);
    }

    private Map<String, String> texts(Input<?>... inputs) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Input<?> input : inputs) {
            for (InputTable table : tables) {
                table.find(anyOf(input)).ifPresent(text -> texts.put(input.key(), text));
            }
        }
        return texts;
    }

    @SuppressWarnings("unchecked")
    private static Input<String> anyOf(Input<?> input) {
        return (Input<String>) input;
    }

    /** What a table says, as the middle of a sentence. */
    private static String told(Map<String, String> texts) {
        return texts.isEmpty() ? "empty" : "stated by " + String.join(" and ", texts.keySet());
    }

    private String source() {
        String source = "";
        for (InputTable table : tables) {
            String own = table.read(ClaimsInputs.SOURCE);
            source = own.isEmpty() ? source : own;
        }
        return source;
    }

    /** The claim; empty after a noted problem, and for a word or a count, which is taken as given. */
    Optional<Claim> claim(Map<String, String> given) {
        Map<String, String> texts = texts(
                ClaimsInputs.VALUE,
                ClaimsInputs.WITHIN,
                ClaimsInputs.LOW,
                ClaimsInputs.HIGH,
                ClaimsInputs.AT_LEAST,
                ClaimsInputs.AT_MOST);
        String source = source();
        if (dimension.isEmpty()) {
            return certain(texts, given);
        }
        boolean valued = texts.containsKey("value");
        boolean ranged = texts.containsKey("low") || texts.containsKey("high");
        boolean bound = texts.containsKey("at_least") || texts.containsKey("at_most");
        boolean whole = texts.containsKey("low") == texts.containsKey("high");
        if ((valued ? 1 : 0) + (ranged ? 1 : 0) + (bound ? 1 : 0) != 1 || !whole) {
            problem("", told(texts), "write value and within, or low and high, or at_least, or at_most");
            return Optional.empty();
        }
        OptionalDouble value = number(texts, "value");
        OptionalDouble low = either(number(texts, "low"), number(texts, "at_least"));
        OptionalDouble high = either(number(texts, "high"), number(texts, "at_most"));
        if (low.isPresent() && high.isPresent() && !(low.getAsDouble() < high.getAsDouble())) {
            problem("high", texts.getOrDefault("high", texts.get("at_most")), "it must be above the lower end");
            return Optional.empty();
        }
        OptionalDouble half = half(texts, either(value, either(low, high)));
        if (value.isEmpty() && low.isEmpty() && high.isEmpty()) {
            return Optional.empty();
        }
        if (value.isPresent()) {
            double usual = Math.max(Claim.USUAL_SHARE * Math.abs(value.getAsDouble()), Double.MIN_NORMAL);
            return Optional.of(Claim.within(path, value.getAsDouble(), half.orElse(usual), source));
        }
        return Optional.of(Claim.range(path, low, high, half, source));
    }

    private Optional<Claim> certain(Map<String, String> texts, Map<String, String> given) {
        if (ClaimPaths.input(path).isEmpty()) {
            problem("", "not an input or figure", ClaimPaths.near(path));
        } else if (!texts.keySet().equals(java.util.Set.of("value"))) {
            problem("", told(texts), "of a word or a whole number, write value alone");
        } else {
            given.put(path, texts.get("value"));
        }
        return Optional.empty();
    }

    /** The prior; empty after a noted problem. */
    Optional<ClaimsFile.Narrowed> narrowed() {
        Map<String, String> texts = texts(ClaimsInputs.LOW, ClaimsInputs.HIGH, ClaimsInputs.LIKELY);
        String source = source();
        if (ClaimPaths.input(path).isEmpty() || dimension.isEmpty()) {
            problem("", "not an input with a range", ClaimPaths.near(path));
            return Optional.empty();
        }
        OptionalDouble low = number(texts, "low");
        OptionalDouble high = number(texts, "high");
        OptionalDouble likely = number(texts, "likely");
        if (!texts.containsKey("low") || !texts.containsKey("high")) {
            problem("", told(texts), "write low and high, and likely if one value is the most likely");
            return Optional.empty();
        }
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        double middle = likely.orElse(low.getAsDouble());
        if (!(low.getAsDouble() < high.getAsDouble() && middle >= low.getAsDouble() && middle <= high.getAsDouble())) {
            problem("high", texts.get("high"), "low, likely and high must rise");
            return Optional.empty();
        }
        return Optional.of(new ClaimsFile.Narrowed(
                low.getAsDouble(),
                high.getAsDouble(),
                likely.isPresent() ? Optional.of(likely.getAsDouble()) : Optional.empty(),
                source));
    }

    private static OptionalDouble either(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() ? one : other;
    }

    private OptionalDouble number(Map<String, String> texts, String key) {
        return texts.containsKey(key) ? parsed(key, texts.get(key), dimension.orElseThrow()) : OptionalDouble.empty();
    }

    private OptionalDouble half(Map<String, String> texts, OptionalDouble about) {
        String text = texts.get("within");
        if (text == null) {
            return OptionalDouble.empty();
        }
        OptionalDouble half;
        String plain = text.replace("\"", "").strip();
        if (plain.endsWith("%")) {
            OptionalDouble share = parsed("within", plain.substring(0, plain.length() - 1), Dimension.RATIO);
            half = share.isPresent() ? OptionalDouble.of(share.getAsDouble() / 100 * Math.abs(about.orElse(0))) : share;
        } else {
            Dimension own = dimension.orElseThrow();
            half = parsed("within", text, own == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : own);
        }
        if (half.isPresent() && !(half.getAsDouble() > 0)) {
            problem("within", text, "it must be above zero");
            return OptionalDouble.empty();
        }
        return half;
    }

    private OptionalDouble parsed(String key, String text, Dimension what) {
        String plain = text.replace("\"", "").strip();
        Optional<Double> number = Units.parse(plain, what).filter(Double::isFinite);
        if (number.isEmpty()) {
            problem(key, text, "write " + what.description());
        }
        return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
    }
}

package dev.penstock.study.space;

import dev.penstock.input.InputKind;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.KeyPath;
import java.util.List;

/**
 * An input that a study varies. Its value is a number: SI where it is continuous, the whole number itself, or the place of
 * a name in its list.
 */
public sealed interface Variable {

    /** @return dotted path of the input */
    String path();

    /** @return its path for people */
    default String words() {
        return KeyPath.words(path());
    }

    /** @return what it is */
    String title();

    /** @return SI unit; empty for plain numbers and for names */
    String unit();

    /**
     * @param share place between its ends, 0 to 1; names and whole numbers have equal parts of it
     * @return the value there
     */
    double at(double share);

    /**
     * @param value a value
     * @return the middle of its place between the ends, 0 to 1
     */
    double share(double value);

    /**
     * @param value a value
     * @return it as a change of a file has it, every bit of it
     */
    String change(double value);

    /**
     * @param value a value
     * @return it as documents have it: a number in SI, a whole number or a name
     */
    default Object document(double value) {
        return value;
    }

    /** @return how many values it can take; 0 for a continuous one */
    default int count() {
        return 0;
    }

    /** @return whether its values are names without an order between them */
    default boolean named() {
        return false;
    }

    private static int part(double share, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor(share * count)));
    }

    /**
     * Any number between two ends.
     *
     * @param path dotted path
     * @param title what it is
     * @param kind what it measures
     * @param low lower end, SI
     * @param high upper end, SI
     */
    record Continuous(String path, String title, InputKind.Quantity kind, double low, double high) implements Variable {

        @Override
        public String unit() {
            return kind.unit();
        }

        @Override
        public double at(double share) {
            return share >= 1 ? high : share <= 0 ? low : low + share * (high - low);
        }

        @Override
        public double share(double value) {
            return (value - low) / (high - low);
        }

        @Override
        public String change(double value) {
            return kind.change(value);
        }
    }

    /**
     * A number that is only known within bounds: equal shares are equally probable.
     *
     * @param path dotted path
     * @param input the input, which has a spread
     */
    record Uncertain(String path, InputValue input) implements Variable {

        @Override
        public String title() {
            return input.input().title();
        }

        @Override
        public String unit() {
            return input.unitOfKind();
        }

        @Override
        public double at(double share) {
            return input.quantile(Math.max(0, Math.min(1, share)));
        }

        @Override
        public double share(double value) {
            return input.probability(value);
        }

        @Override
        public String change(double value) {
            return input.written(value);
        }
    }

    /**
     * A whole number between two ends, both included.
     *
     * @param path dotted path
     * @param title what it is
     * @param low lower end
     * @param high upper end
     */
    record Whole(String path, String title, int low, int high) implements Variable {

        @Override
        public String unit() {
            return "";
        }

        @Override
        public double at(double share) {
            return low + (double) part(share, count());
        }

        @Override
        public double share(double value) {
            return (value - low + 0.5) / count();
        }

        @Override
        public String change(double value) {
            return Integer.toString((int) Math.round(value));
        }

        @Override
        public Object document(double value) {
            return (int) Math.round(value);
        }

        @Override
        public int count() {
            return high - low + 1;
        }
    }

    /**
     * One of some values that were listed.
     *
     * @param path dotted path
     * @param title what it is
     * @param values the values, as a file has them
     * @param documents the values, as documents have them
     */
    record Named(String path, String title, List<String> values, List<Object> documents) implements Variable {

        public Named {
            values = List.copyOf(values);
            documents = List.copyOf(documents);
        }

        @Override
        public String unit() {
            return "";
        }

        @Override
        public double at(double share) {
            return part(share, values.size());
        }

        @Override
        public double share(double value) {
            return (value + 0.5) / values.size();
        }

        @Override
        public String change(double value) {
            return values.get((int) Math.round(value));
        }

        @Override
        public Object document(double value) {
            return documents.get((int) Math.round(value));
        }

        @Override
        public int count() {
            return values.size();
        }

        @Override
        public boolean named() {
            return true;
        }
    }
}

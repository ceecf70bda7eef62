package dev.penstock.study;

import dev.penstock.input.InputValue;
import dev.penstock.numerics.LowDiscrepancy;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Samples of uncertain inputs, as changes of a concept. They fill the space evenly and are the same at every run. */
public final class UncertainSamples {

    private UncertainSamples() {}

    /**
     * @param inputs uncertain inputs by dotted key, independent of each other
     * @param samples number of samples
     * @return value of every input by its key, once per sample
     */
    static List<Map<String, String>> of(Map<String, InputValue> inputs, int samples) {
        return LowDiscrepancy.points(Math.max(1, inputs.size()), samples).stream()
                .map(point -> at(inputs, point))
                .toList();
    }

    /**
     * @param inputs uncertain inputs by dotted key
     * @param point probability that each stays below its value (-), in the order of the inputs
     * @return value of every input by its key
     */
    public static Map<String, String> at(Map<String, InputValue> inputs, List<Double> point) {
        Map<String, String> values = new LinkedHashMap<>();
        int next = 0;
        for (Map.Entry<String, InputValue> input : inputs.entrySet()) {
            InputValue value = input.getValue();
            values.put(input.getKey(), value.written(value.quantile(point.get(next++))));
        }
        return values;
    }
}

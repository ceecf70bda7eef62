package dev.penstock.study;

import dev.penstock.input.InputValue;
import dev.penstock.numerics.LowDiscrepancy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Samples of uncertain inputs, as changes of a concept. They fill the space evenly and are the same at every run. */
final class UncertainSamples {

    private UncertainSamples() {}

    /**
     * @param inputs uncertain inputs by dotted key, independent of each other
     * @param samples number of samples
     * @return value of every input by its key, once per sample
     */
    static List<Map<String, String>> of(Map<String, InputValue> inputs, int samples) {
        List<String> keys = List.copyOf(inputs.keySet());
        List<Map<String, String>> changes = new ArrayList<>();
        for (List<Double> point : LowDiscrepancy.points(Math.max(1, keys.size()), samples)) {
            Map<String, String> values = new LinkedHashMap<>();
            for (int i = 0; i < keys.size(); i++) {
                InputValue input = inputs.get(keys.get(i));
                values.put(keys.get(i), input.written(input.quantile(point.get(i))));
            }
            changes.add(values);
        }
        return changes;
    }
}

package dev.penstock.cooling.wall;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import java.util.List;

/** A material property over temperature: straight lines between points, constant beyond the ends. Immutable. */
public final class TemperatureTable {

    private final double[] temperatures;
    private final double[] values;

    /**
     * @param name what it is, with its SI unit, for messages
     * @param temperatures temperatures, rising (K)
     * @param values property at each of them, above zero
     * @throws OutsideValidity if the lists differ in length, are empty, or the temperatures do not rise
     */
    public TemperatureTable(String name, List<Double> temperatures, List<Double> values) {
        int n = temperatures.size();
        if (n == 0 || values.size() != n) {
            throw new OutsideValidity(
                    name, "number of values (-)", values.size(), "one for each of " + n + " temperatures");
        }
        this.temperatures = new double[n];
        this.values = new double[n];
        for (int i = 0; i < n; i++) {
            this.temperatures[i] = Require.positive(name, "temperature (K)", temperatures.get(i));
            this.values[i] = Require.positive(name, "value", values.get(i));
            if (i > 0) {
                Require.positive(
                        name, "step to the next temperature (K)", this.temperatures[i] - this.temperatures[i - 1]);
            }
        }
    }

    /**
     * @param temperature temperature (K)
     * @return the property there, that of the nearer end outside the table
     */
    public double at(double temperature) {
        int last = temperatures.length - 1;
        if (temperature <= temperatures[0]) {
            return values[0];
        }
        if (temperature >= temperatures[last]) {
            return values[last];
        }
        int i = 1;
        while (temperatures[i] < temperature) {
            i++;
        }
        double fraction = (temperature - temperatures[i - 1]) / (temperatures[i] - temperatures[i - 1]);
        return values[i - 1] + fraction * (values[i] - values[i - 1]);
    }

    /** @return highest temperature of the table (K) */
    public double highest() {
        return temperatures[temperatures.length - 1];
    }
}

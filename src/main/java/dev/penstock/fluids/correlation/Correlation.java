package dev.penstock.fluids.correlation;

import dev.penstock.fluids.property.Polynomial;
import dev.penstock.fluids.property.TemperatureFunction;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;

/**
 * One property of a fluid as its file states it.
 *
 * @param function the property by temperature, SI
 * @param lowest lowest temperature of the data behind it (K)
 * @param highest highest temperature of the data behind it (K)
 */
public record Correlation(TemperatureFunction function, double lowest, double highest) {

    private static final Range TEMPERATURE = Range.of(1, 3000);

    /**
     * @param table table of the property
     * @param allowed forms that the property may take
     * @return the property; a placeholder after noted problems
     */
    public static Correlation read(InputTable table, List<CorrelationForm> allowed) {
        List<String> names = allowed.stream().map(CorrelationForm::fileName).toList();
        CorrelationForm form = CorrelationForm.of(table.choice("form", names));
        List<Double> coefficients = table.quantities("coefficients", Dimension.RATIO, Range.ANY);
        List<Double> range = table.quantities("range", Dimension.TEMPERATURE, TEMPERATURE);
        table.text("uncertainty");
        table.text("source");
        if (range.size() != 2 || !(range.get(0) < range.get(1))) {
            table.problem("range", range.toString(), "write two temperatures, the lower first");
            range = List.of(1.0, 3000.0);
        }
        if (!form.takes(coefficients.size())) {
            table.problem("coefficients", coefficients.size() + " numbers", form.fileName() + " takes " + form.count());
            return new Correlation(new Polynomial(List.of(1.0)), range.get(0), range.get(1));
        }
        return new Correlation(form.with(coefficients), range.get(0), range.get(1));
    }

    double value(double temperature) {
        return function.value(temperature);
    }

    boolean covers(double temperature) {
        return temperature >= lowest && temperature <= highest;
    }
}

package dev.penstock.study.space;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The inputs that a study varies, each between its ends. A point has a value for each, in their order.
 *
 * @param variables the inputs
 */
public record StudySpace(List<Variable> variables) {

    public StudySpace {
        variables = List.copyOf(variables);
    }

    /** @return number of inputs */
    public int size() {
        return variables.size();
    }

    /**
     * @param shares a point of the unit cube
     * @return the values there
     */
    public double[] values(double[] shares) {
        double[] values = new double[size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = variables.get(i).at(shares[i]);
        }
        return values;
    }

    /**
     * @param values a point
     * @return its place in the unit cube
     */
    public double[] shares(double[] values) {
        double[] shares = new double[size()];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = variables.get(i).share(values[i]);
        }
        return shares;
    }

    /**
     * @param values a point
     * @return its values by path, as changes of a file have them
     */
    public Map<String, String> changes(double[] values) {
        Map<String, String> changes = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            changes.put(variables.get(i).path(), variables.get(i).change(values[i]));
        }
        return changes;
    }

    /**
     * @param values a point
     * @return its values by path, as documents have them: SI
     */
    public Map<String, Object> document(double[] values) {
        Map<String, Object> document = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            document.put(variables.get(i).path(), variables.get(i).document(values[i]));
        }
        return document;
    }
}

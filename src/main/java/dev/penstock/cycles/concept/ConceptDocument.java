package dev.penstock.cycles.concept;

import dev.penstock.input.InputValue;
import java.util.List;
import java.util.Map;

/**
 * The text behind a concept: kept so that it can be saved again, shown in a report, or read with changes.
 *
 * @param file name of the file
 * @param text text of the file
 * @param changes values by dotted path that replaced or added to what the text says
 * @param inputs every input with its value, in the order of reading
 */
public record ConceptDocument(String file, String text, Map<String, String> changes, List<InputValue> inputs) {

    public ConceptDocument {
        changes = Map.copyOf(changes);
        inputs = List.copyOf(inputs);
    }

    /** @return defaults that follow from how the engine is built */
    public List<InputValue> byTechnology() {
        return inputs.stream()
                .filter(input -> !input.given() && input.follows().contains(ConceptTables.TECHNOLOGY))
                .toList();
    }
}

package dev.penstock.fluids.traits;

import dev.penstock.errors.Warning;
import dev.penstock.fluids.property.ElementalComposition;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Gas of a fuel-rich gas generator as measured: temperature, heat capacity and gamma against mixture ratio, from the table
 * {@code [combustion.generator_gas]} of a fuel's file.
 *
 * @param oxidizer atoms of the oxidizer that it was measured with
 * @param mixtureRatio oxidizer over fuel by mass, rising (-)
 * @param temperature gas temperature, rising (K)
 * @param heatCapacity heat capacity at constant pressure (J/(kg·K))
 * @param gamma ratio of the heat capacities (-)
 * @param lowest mixture ratio down to which the first slope may be continued, with a {@link Warning} (-)
 * @param highest mixture ratio up to which the last slope may be continued, with a warning (-)
 * @param denseAs moles of each gas species that it is as dense as; empty where it counts as an ideal gas
 * @param doubt what the reader must know of the figures, as part of a sentence; empty where they are as good as the model says
 */
public record GeneratorGasData(
        ElementalComposition oxidizer,
        List<Double> mixtureRatio,
        List<Double> temperature,
        List<Double> heatCapacity,
        List<Double> gamma,
        double lowest,
        double highest,
        Map<String, Double> denseAs,
        Optional<String> doubt) {

    public GeneratorGasData {
        mixtureRatio = List.copyOf(mixtureRatio);
        temperature = List.copyOf(temperature);
        heatCapacity = List.copyOf(heatCapacity);
        gamma = List.copyOf(gamma);
        denseAs = Collections.unmodifiableMap(new TreeMap<>(denseAs));
    }
}

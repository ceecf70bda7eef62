package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.ElectricDesign;
import dev.penstock.provenance.UncertainInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads the table {@code [electric]} of a cycle whose pumps are driven by motors. */
final class ElectricKeys {

    private static final Map<String, Dimension> DIMENSIONS =
            Map.of("W/kg", Dimension.SPECIFIC_POWER, "J/kg", Dimension.SPECIFIC_ENERGY, "-", Dimension.RATIO);

    private ElectricKeys() {}

    static Supplier<Optional<ElectricDesign>> read(ConceptKeys root, CycleTraits traits) {
        if (traits.closure() != CycleTraits.Closure.MOTOR_POWER) {
            return Optional::empty;
        }
        ConceptKeys keys = root.table("electric");
        double time = keys.quantity(
                "burn_time", Dimension.TIME, Range.of(1, 1e4), 150, "a first stage, " + ConceptKeys.COMMON);
        Map<String, Double> values = new HashMap<>();
        for (UncertainInput input : ElectricDrive.uncertain()) {
            Dimension dimension = DIMENSIONS.get(input.unit());
            Range range = dimension == Dimension.RATIO ? Range.of(0.3, 1) : Range.of(10, 1e8);
            values.put(
                    input.key(),
                    keys.quantity(input.key(), dimension, range, input.spread().mode(), input.source()));
        }
        return () -> Optional.of(new ElectricDesign(
                new ElectricDrive(
                        values.get("motor_power"),
                        values.get("motor_efficiency"),
                        values.get("inverter_power"),
                        values.get("inverter_efficiency"),
                        values.get("battery_energy"),
                        values.get("battery_power"),
                        values.get("discharge_efficiency"),
                        values.get("usable_fraction")),
                time));
    }
}

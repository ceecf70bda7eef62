package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.ElectricDesign;
import dev.penstock.input.InputTable;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads the table {@code [electric]} of a cycle whose pumps are driven by motors. */
final class ElectricKeys {

    private ElectricKeys() {}

    static Supplier<Optional<ElectricDesign>> read(InputTable root, CycleTraits traits) {
        if (traits.closure() != CycleTraits.Closure.MOTOR_POWER) {
            return Optional::empty;
        }
        InputTable keys = root.table(ElectricDrive.GROUP);
        double time = keys.read(ConceptInputs.BATTERY_BURN_TIME);
        ElectricDrive drive = ElectricDrive.of(keys::read);
        return () -> Optional.of(new ElectricDesign(drive, time));
    }
}

package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Medium;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.cycles.sheet.StationRecorder;
import dev.penstock.turbomachinery.metal.AlloyFamily;
import dev.penstock.turbomachinery.metal.MetalCheck;
import dev.penstock.turbomachinery.metal.MetalPart;
import dev.penstock.turbomachinery.metal.MetalReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Which parts of an arrangement meet what, at their end of higher pressure. */
final class MetalParts {

    private MetalParts() {}

    static MetalReport of(Concept concept, Flowsheet sheet) {
        StationRecorder recorder = sheet.recorder().orElseThrow();
        List<Station> stations = sheet.stations();
        List<MetalCheck> checks = new ArrayList<>();
        for (Component component : sheet.components()) {
            List<MetalPart> parts = parts(component);
            if (parts.isEmpty()) {
                continue;
            }
            boolean burner = parts.contains(MetalPart.BURNER);
            int number = (burner ? component.outlets() : component.inlets()).get(0);
            Station station = stations.get(number - 1);
            Medium medium = recorder.medium(number);
            OptionalDouble oxygen = medium.moleFraction("O2", station.pressure(), station.temperature());
            OptionalDouble hydrogen = medium.moleFraction("H2", station.pressure(), station.temperature());
            Map<MetalPart, AlloyFamily> families = oxygen.orElse(0) > hydrogen.orElse(0)
                    ? concept.metals().oxidizer()
                    : concept.metals().fuel();
            for (MetalPart part : parts) {
                checks.add(new MetalCheck(
                        part.of(component.label()),
                        number,
                        families.get(part),
                        station.medium(),
                        station.pressure(),
                        station.temperature(),
                        oxygen,
                        hydrogen));
            }
        }
        return new MetalReport(checks);
    }

    private static List<MetalPart> parts(Component component) {
        return switch (component.kind()) {
            case GAS_GENERATOR, PREBURNER -> List.of(MetalPart.BURNER);
            case TURBINE -> List.of(MetalPart.TURBINE, MetalPart.HOUSING, MetalPart.SEAL);
            case LINE, VALVE, ORIFICE -> List.of(MetalPart.DUCT);
            case INJECTOR -> List.of(MetalPart.INJECTOR);
            default -> List.of();
        };
    }
}

package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.Side;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputTable;
import dev.penstock.turbomachinery.metal.AlloyFamily;
import dev.penstock.turbomachinery.metal.AlloyLibrary;
import dev.penstock.turbomachinery.metal.MetalDesign;
import dev.penstock.turbomachinery.metal.MetalPart;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads what a concept says of the metals of parts that meet oxygen or hydrogen. */
final class MetalKeys {

    private MetalKeys() {}

    static Supplier<MetalDesign> read(InputTable root, AlloyLibrary alloys, Propellant fuel) {
        boolean hydrogen = fuel.moleFraction("H2") > 0;
        Map<MetalPart, AlloyFamily> oxidizer = side(root, alloys, Side.OXIDIZER, hydrogen);
        Map<MetalPart, AlloyFamily> fuelSide = side(root, alloys, Side.FUEL, hydrogen);
        return () -> new MetalDesign(oxidizer, fuelSide);
    }

    private static Map<MetalPart, AlloyFamily> side(InputTable root, AlloyLibrary alloys, Side side, boolean hydrogen) {
        InputTable keys = root.at(ConceptTables.metals(side));
        Map<MetalPart, AlloyFamily> families = new EnumMap<>(MetalPart.class);
        for (MetalPart part : MetalPart.values()) {
            String id = keys.read(part.input(), MetalPart.usual(side == Side.OXIDIZER, hydrogen));
            Optional<AlloyFamily> family = alloys.family(id);
            family.ifPresent(found -> families.put(part, found));
            if (family.isEmpty()) {
                keys.problem(part.input(), '"' + id + '"', "known are " + String.join(", ", alloys.ids()));
            }
        }
        return families;
    }
}

package dev.penstock.cycles.sheet;

import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.input.Input;
import dev.penstock.provenance.Spread;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import dev.penstock.turbomachinery.electric.ElectricSizing;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.EngineMassModel;
import dev.penstock.turbomachinery.mass.EngineParts;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.mass.MassPart;
import java.util.ArrayList;
import java.util.List;

/** Mass of a balanced engine: hands its parts to the mass model. Motors and batteries of an electric engine are among them. */
public final class EngineMasses {

    private EngineMasses() {}

    /**
     * @param balance a balanced engine
     * @return its mass, part by part
     */
    public static EngineMass of(EngineBalance balance) {
        double cooled = balance.cooling().stream()
                .flatMap(jacket -> jacket.stations().stream())
                .filter(s -> s.x() > 0)
                .mapToDouble(JacketStation::areaRatio)
                .max()
                .orElse(1.0);
        return new EngineMassModel()
                .estimate(new EngineParts(
                        balance.thrustAt(0),
                        balance.chamber(),
                        balance.concept().chambers(),
                        Math.max(cooled, 1),
                        balance.concept().uncooledWall(),
                        !balance.cooling().isEmpty(),
                        balance.shafts(),
                        burners(balance),
                        lines(balance),
                        true,
                        swivels(balance),
                        balance.electric().map(EngineMasses::electric).orElse(List.of()),
                        balance.concept().mass()));
    }

    /** The nozzle of the turbine gas, where it swivels. */
    private static List<EngineParts.SmallNozzle> swivels(EngineBalance balance) {
        if (balance.concept().gasPath().exhaust().swivel() == 0) {
            return List.of();
        }
        return balance.exhausts().stream()
                .filter(jet -> jet.part().equals(PartKey.EXHAUST))
                .map(jet -> new EngineParts.SmallNozzle(
                        PartKey.EXHAUST.label(), jet.vacuumThrust(), jet.exitArea() - jet.throatArea()))
                .toList();
    }

    private static List<EngineParts.Burner> burners(EngineBalance balance) {
        List<EngineParts.Burner> burners = new ArrayList<>();
        for (Component part : balance.components()) {
            if (part.kind() == PartKind.GAS_GENERATOR || part.kind() == PartKind.PREBURNER) {
                Station gas = balance.station(part.outlets().get(0));
                burners.add(new EngineParts.Burner(part.label(), gas.massFlow(), gas.pressure(), gas.density()));
            }
        }
        return burners;
    }

    /** Lines with a main valve each: behind every pump that delivers to the chamber, or behind the tanks without pumps. */
    private static List<EngineParts.Line> lines(EngineBalance balance) {
        boolean pumped = !balance.pumps().isEmpty();
        List<EngineParts.Line> lines = new ArrayList<>();
        for (Component part : balance.components()) {
            if (part.kind() == (pumped ? PartKind.PUMP : PartKind.TANK)) {
                Station outlet = balance.station(part.outlets().get(0));
                lines.add(new EngineParts.Line(part.label(), outlet.massFlow(), outlet.pressure(), outlet.density()));
            }
        }
        return lines;
    }

    private static List<MassItem> electric(ElectricSizing sizing) {
        return List.of(
                item("motors", sizing.motorMass(), ElectricDrive.MOTOR_POWER),
                item("inverters", sizing.inverterMass(), ElectricDrive.INVERTER_POWER),
                item(
                        "battery",
                        sizing.batteryMass(),
                        sizing.energyLimited() ? ElectricDrive.BATTERY_ENERGY : ElectricDrive.BATTERY_POWER));
    }

    /** Mass goes with the inverse of the specific power or energy, whose spread is known. */
    private static MassItem item(String name, double mass, Input<Double> specific) {
        Spread s = specific.standing().spread().orElseThrow();
        return new MassItem(
                MassPart.ELECTRIC,
                name,
                name,
                new Spread(mass * s.mode() / s.high(), mass, mass * s.mode() / s.low()),
                specific.standing().source());
    }
}

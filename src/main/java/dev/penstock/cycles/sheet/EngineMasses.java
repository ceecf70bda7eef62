package dev.penstock.cycles.sheet;

import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.input.Input;
import dev.penstock.provenance.Spread;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import dev.penstock.turbomachinery.electric.ElectricSizing;
import dev.penstock.turbomachinery.mass.CooledWall;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.EngineMassModel;
import dev.penstock.turbomachinery.mass.EngineParts;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.mass.MassPart;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
                        balance.cooling().stream().map(EngineMasses::wall).toList(),
                        balance.shafts(),
                        burners(balance),
                        lines(balance),
                        ducts(balance),
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

    /** The wall of a jacket, with the mean tube of its stations where it is of tubes. */
    private static CooledWall wall(JacketResult jacket) {
        List<JacketStation> stations = jacket.stations();
        double from = stations.get(0).x();
        double to = stations.get(stations.size() - 1).x();
        if (jacket.layout().kind() != ChannelKind.TUBE) {
            return CooledWall.lined(from, to);
        }
        return CooledWall.tubes(
                from, to, mean(stations, JacketStation::wallThickness), mean(stations, JacketStation::channelWidth));
    }

    private static double mean(List<JacketStation> stations, ToDoubleFunction<JacketStation> of) {
        return stations.stream().mapToDouble(of).average().orElseThrow();
    }

    /** Lines that carry no propellant from a tank to its pump or from there to the chamber: those before and behind turbines. */
    private static List<EngineParts.GasDuct> ducts(EngineBalance balance) {
        Set<PartKey> feed = Arrays.stream(Side.values())
                .flatMap(side -> Stream.of(PartKey.suctionLine(side), PartKey.dischargeLine(side)))
                .collect(Collectors.toSet());
        List<EngineParts.GasDuct> ducts = new ArrayList<>();
        for (Component part : balance.components()) {
            if (part.kind() == PartKind.LINE && !feed.contains(part.key())) {
                Station gas = balance.station(part.outlets().get(0));
                ducts.add(new EngineParts.GasDuct(
                        part.label(),
                        gas.massFlow(),
                        gas.pressure(),
                        gas.density(),
                        part.key().equals(PartKey.EXHAUST_DUCT)));
            }
        }
        return ducts;
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

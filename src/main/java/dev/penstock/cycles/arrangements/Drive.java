package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Machinery;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.List;

/**
 * Gas through the turbine or turbines of an engine. With two turbines side by side each takes its share of the gas at the
 * same pressures; one behind the other they share the logarithm of the pressure ratio. That share is the unknown which the
 * power of the second shaft closes.
 */
final class Drive {

    private static final PartKey TURBINES_SPLIT =
            PartKey.branch("turbines", "turbine branch", "gas to the fuel turbine", "gas to the oxidizer turbine");
    private static final PartKey TURBINES_MERGE = PartKey.of(PartKind.MERGE, "turbines", "turbine exhaust");

    private Drive() {}

    static List<Unknown> unknowns(FirstGuess guess) {
        if (guess.concept().shafts().oneTurbine()) {
            return List.of();
        }
        double fuel = guess.pumpPower(Side.FUEL, 1.6);
        double oxidizer = guess.pumpPower(Side.OXIDIZER, 1.4);
        return List.of(new Unknown("share of the fuel turbine", "-", 0.01, 0.99, 0.2, fuel / (fuel + oxidizer)));
    }

    /** Gas through the turbines, and beside them through those of boost pumps that it drives. */
    static Stream expand(Flowsheet sheet, Stream gas, Traced exitPressure, Values x) {
        return sheet.boostTurbines()
                .besideTurbines(gas, exitPressure, rest -> turbines(sheet, rest, exitPressure, x), Side.values());
    }

    private static Stream turbines(Flowsheet sheet, Stream gas, Traced exitPressure, Values x) {
        ShaftDesign shafts = sheet.concept().shafts();
        Machinery machinery = sheet.machinery();
        if (shafts.oneTurbine()) {
            return machinery.turbine(TurbinePlace.MAIN, gas, exitPressure);
        }
        Traced share = x.next();
        if (shafts.gas() == ShaftDesign.GasPath.SERIES) {
            Traced between = Traced.made(
                    gas.pressure() * Math.pow(exitPressure.value() / gas.pressure(), share.value()),
                    sheet.pressureOf(gas),
                    exitPressure,
                    share);
            Stream middle = machinery.turbine(TurbinePlace.FUEL, gas, between);
            return machinery.turbine(TurbinePlace.OXIDIZER, middle, exitPressure);
        }
        List<Stream> ways = sheet.split(TURBINES_SPLIT, gas, share);
        Stream fuel = machinery.turbine(TurbinePlace.FUEL, ways.get(0), exitPressure);
        Stream oxidizer = machinery.turbine(TurbinePlace.OXIDIZER, ways.get(1), exitPressure);
        return sheet.merge(TURBINES_MERGE, fuel, oxidizer);
    }

    /** Place whose table states the pressure ratio of the whole gas path. */
    static TurbinePlace leading(Concept concept) {
        return concept.shafts().oneTurbine() ? TurbinePlace.MAIN : TurbinePlace.FUEL;
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.CycleTraits;
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
import java.util.ArrayList;
import java.util.List;

/**
 * Both propellants pass a preburner: fuel-rich gas drives the fuel pump, oxidizer-rich gas the oxidizer pump, and both
 * gases burn to the end in the chamber.
 * <pre>
 * fuel tank - pump -+- line - (jacket) - valve - fuel-rich preburner - turbine - gas injector - chamber
 *                   +- valve - oxidizer-rich preburner
 * oxidizer tank - pump -+- line - (jacket) - valve - oxidizer-rich preburner - turbine - gas injector - chamber
 *                       +- valve - fuel-rich preburner
 * </pre>
 * Given for each side: gas temperature or turbine pressure ratio; unknown: mixture of each preburner and the other of the
 * two. Closed by: the gas temperatures that are given, power of each shaft. A pump delivers what the preburner with the
 * higher pressure needs; the valve to the other takes the rest.
 */
public record FullFlow() implements Cycle {

    private static final About ABOUT = new About(
            "full-flow",
            "Full-flow staged combustion",
            "two preburners, one fuel-rich and one oxidizer-rich, pass all propellant through the turbines",
            new CycleTraits(
                    BuiltPressures.STAGED,
                    CycleTraits.Closure.RATIO_OR_TEMPERATURE,
                    List.of(Burner.FUEL_RICH, Burner.OXIDIZER_RICH),
                    List.of(ShaftDesign.Arrangement.DUAL),
                    false,
                    true,
                    0));
    private static final PartKey FUEL_SPLIT = branch(Side.FUEL, Burner.OXIDIZER_RICH, Burner.FUEL_RICH);
    private static final PartKey OXIDIZER_SPLIT = branch(Side.OXIDIZER, Burner.FUEL_RICH, Burner.OXIDIZER_RICH);
    private static final PartKey FUEL_RICH_OXIDIZER_VALVE =
            PartKey.of(PartKind.VALVE, "fuel_rich_oxidizer", "oxidizer valve of the fuel-rich preburner");
    private static final PartKey OXIDIZER_RICH_FUEL_VALVE =
            PartKey.of(PartKind.VALVE, "oxidizer_rich_fuel", "fuel valve of the oxidizer-rich preburner");

    @Override
    public About about() {
        return ABOUT;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        List<Unknown> unknowns = new ArrayList<>(Preburner.unknowns(guess, Burner.FUEL_RICH, TurbinePlace.FUEL));
        unknowns.addAll(Preburner.unknowns(guess, Burner.OXIDIZER_RICH, TurbinePlace.OXIDIZER));
        return unknowns;
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        Preburner fuelRich = Preburner.of(sheet, Burner.FUEL_RICH, TurbinePlace.FUEL, x);
        Preburner oxidizerRich = Preburner.of(sheet, Burner.OXIDIZER_RICH, TurbinePlace.OXIDIZER, x);
        Traced oxidizer = sheet.oxidizerOf(sheet.chamberFlow());
        Traced fuel = sheet.chamberFlow().minus(oxidizer);
        // What each preburner burns of its own propellant, from both mixtures and both totals.
        Traced crossed = fuelRich.ratio().times(oxidizerRich.ratio()).oneMinus();
        Traced fuelOfFuelRich = fuel.minus(oxidizerRich.ratio().times(oxidizer)).over(crossed);
        Traced oxidizerOfFuelRich = fuelRich.ratio().times(fuelOfFuelRich);

        Traced fuelDischarge = Traced.largest(
                sheet.upstream(Side.FUEL, fuelRich.injectorInlet()),
                sheet.upstreamOfValve(Side.FUEL, oxidizerRich.injectorInlet()));
        Traced oxidizerDischarge = Traced.largest(
                sheet.upstream(Side.OXIDIZER, oxidizerRich.injectorInlet()),
                sheet.upstreamOfValve(Side.OXIDIZER, fuelRich.injectorInlet()));
        Machinery.Pumped pumped = sheet.machinery().mainPumps(oxidizer, oxidizerDischarge, fuel, fuelDischarge);
        List<Stream> fuelWays =
                sheet.split(FUEL_SPLIT, pumped.fuel(), fuelOfFuelRich.over(fuel).oneMinus());
        List<Stream> oxidizerWays = sheet.split(OXIDIZER_SPLIT, pumped.oxidizer(), oxidizerOfFuelRich.over(oxidizer));

        Stream fuelGas = sheet.burn(
                Burner.FUEL_RICH,
                sheet.valve(Side.OXIDIZER, FUEL_RICH_OXIDIZER_VALVE, oxidizerWays.get(0), fuelRich.injectorInlet()),
                sheet.deliver(Side.FUEL, fuelWays.get(1), fuelRich.injectorInlet()),
                fuelRich.pressure());
        Stream oxidizerGas = sheet.burn(
                Burner.OXIDIZER_RICH,
                sheet.deliver(Side.OXIDIZER, oxidizerWays.get(1), oxidizerRich.injectorInlet()),
                sheet.valve(Side.FUEL, OXIDIZER_RICH_FUEL_VALVE, fuelWays.get(0), oxidizerRich.injectorInlet()),
                oxidizerRich.pressure());

        Stream fuelSide = throughTurbine(sheet, Burner.FUEL_RICH, Side.FUEL, fuelGas, fuelRich.turbineExit());
        Stream oxidizerSide =
                throughTurbine(sheet, Burner.OXIDIZER_RICH, Side.OXIDIZER, oxidizerGas, oxidizerRich.turbineExit());
        sheet.machinery().closesShafts();
        sheet.chamber(List.of(fuelSide, oxidizerSide));
    }

    private static PartKey branch(Side side, Burner to, Burner rest) {
        String taken = side.key() + " to the " + to.title();
        return PartKey.branch(side.key(), taken, taken, side.key() + " to the " + rest.title());
    }

    private static Stream throughTurbine(Flowsheet sheet, Burner burner, Side own, Stream gas, Traced exitPressure) {
        String side = own.key();
        Stream inlet = sheet.hotDuct(PartKey.of(PartKind.LINE, side + "_hot_gas", side + "-side hot-gas duct"), gas);
        sheet.closesTemperature(burner, inlet);
        TurbinePlace place = TurbinePlace.of(own);
        Stream expanded = sheet.boostTurbines()
                .besideTurbines(inlet, exitPressure, rest -> sheet.machinery().turbine(place, rest, exitPressure), own);
        Stream returned =
                sheet.hotDuct(PartKey.of(PartKind.LINE, side + "_exhaust", side + " turbine exhaust duct"), expanded);
        return sheet.injector(
                PartKey.of(PartKind.INJECTOR, side + "_gas", side + "-side gas injector"), returned.line(), returned);
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Machinery;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.List;

/**
 * Gas from the chamber itself drives the turbines: taken beside the injector face, where extra fuel keeps it cool, and
 * dumped through a nozzle of its own.
 * <pre>
 * tanks - pumps - lines - (jacket) - valves - injectors -+- chamber
 *                                                        +- tap - duct - turbines - exhaust nozzle
 * </pre>
 * The tapped gas is what a fuel-rich mixture gives at the injector-face pressure; its temperature and the turbine pressure
 * ratio are given. Unknown: tapped flow and its mixture, and with two shafts the share of the fuel turbine. Closed by: gas
 * temperature, power of each shaft.
 */
public record TapOff() implements Cycle {

    private static final About ABOUT = new About(
            "tap-off",
            "Combustion tap-off",
            "cooled gas from the chamber drives the turbines and is dumped",
            new CycleTraits(
                    BuiltPressures.OPEN,
                    CycleTraits.Closure.GAS_FLOW,
                    List.of(Burner.TAP_OFF),
                    CycleTraits.ANY,
                    true,
                    false,
                    0));
    private static final PartKey OXIDIZER_SPLIT = branch(Side.OXIDIZER);
    private static final PartKey FUEL_SPLIT = branch(Side.FUEL);

    @Override
    public About about() {
        return ABOUT;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        return GasFlow.unknowns(guess, Burner.TAP_OFF, "tapped flow");
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        Traced gas = x.next();
        Traced mixture = x.next();
        Traced total = sheet.chamberFlow().plus(gas);
        Traced oxidizer = sheet.oxidizerOf(total);
        Traced fuel = total.minus(oxidizer);
        Traced gasOxidizer = gas.times(mixture).over(mixture.onePlus());
        Machinery.Pumped pumped = sheet.machinery()
                .mainPumps(
                        oxidizer,
                        sheet.upstream(Side.OXIDIZER, sheet.injectorInlet(Side.OXIDIZER)),
                        fuel,
                        sheet.upstream(Side.FUEL, sheet.injectorInlet(Side.FUEL)));
        Stream oxidizerFace = injected(sheet, Side.OXIDIZER, pumped.oxidizer());
        Stream fuelFace = injected(sheet, Side.FUEL, pumped.fuel());
        List<Stream> oxidizerWays = sheet.split(OXIDIZER_SPLIT, oxidizerFace, gasOxidizer.over(oxidizer));
        List<Stream> fuelWays =
                sheet.split(FUEL_SPLIT, fuelFace, gas.minus(gasOxidizer).over(fuel));
        Stream hot = sheet.burn(Burner.TAP_OFF, oxidizerWays.get(0), fuelWays.get(0), sheet.facePressure());
        GasFlow.dump(sheet, Burner.TAP_OFF, hot, x);
        sheet.chamber(List.of(oxidizerWays.get(1), fuelWays.get(1)));
    }

    private static PartKey branch(Side side) {
        String near = side.key() + " near the tap";
        return PartKey.branch(side.key(), near, near, side.key() + " away from the tap");
    }

    private static Stream injected(Flowsheet sheet, Side side, Stream pumped) {
        return sheet.liquidInjector(side, sheet.deliver(side, pumped, sheet.injectorInlet(side)));
    }
}

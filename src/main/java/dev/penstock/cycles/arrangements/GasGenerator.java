package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.BurnerDesign;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Machinery;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.List;
import java.util.Optional;

/**
 * A small burner beside the chamber feeds the turbines; its gas is dumped through a nozzle of its own.
 * <pre>
 * tanks - pumps -+- lines - (jacket) - valves - injectors - chamber
 *                +- generator valves - gas generator - turbines - exhaust nozzle
 * </pre>
 * A third fluid may be injected into the generator, from a tank and a pump of its own. Gas temperature and turbine pressure ratio are
 * given. Unknown: flow of propellants to the generator and their mixture, and with two shafts the share
 * of the fuel turbine. Closed by: gas temperature, power of each shaft.
 */
public record GasGenerator() implements Cycle {

    private static final About ABOUT = new About(
            "gas-generator",
            "Gas generator",
            "a small burner drives the turbines and its gas is dumped",
            new CycleTraits(
                    BuiltPressures.OPEN,
                    CycleTraits.Closure.GAS_FLOW,
                    List.of(Burner.GENERATOR),
                    CycleTraits.ANY,
                    true,
                    false,
                    0));
    private static final PartKey OXIDIZER_SPLIT = GasFlow.generatorBranch(Side.OXIDIZER);
    private static final PartKey FUEL_SPLIT = GasFlow.generatorBranch(Side.FUEL);
    private static final PartKey GENERATOR_OXIDIZER_VALVE =
            PartKey.of(PartKind.VALVE, "generator_oxidizer", "generator oxidizer valve");
    private static final PartKey GENERATOR_FUEL_VALVE =
            PartKey.of(PartKind.VALVE, "generator_fuel", "generator fuel valve");

    @Override
    public About about() {
        return ABOUT;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        return GasFlow.unknowns(guess, Burner.GENERATOR, "gas generator flow");
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        Traced gas = x.next();
        Traced mixture = x.next();
        Optional<BurnerDesign.Diluent> diluent =
                sheet.concept().burners().get(Burner.GENERATOR).diluent();
        Traced total = sheet.chamberFlow().plus(gas);
        Traced oxidizer = sheet.oxidizerOf(total);
        Traced fuel = total.minus(oxidizer);
        Traced gasOxidizer = gas.times(mixture).over(mixture.onePlus());

        Traced oxidizerDischarge = sheet.upstream(Side.OXIDIZER, sheet.injectorInlet(Side.OXIDIZER));
        Traced fuelDischarge = sheet.upstream(Side.FUEL, sheet.injectorInlet(Side.FUEL));
        Machinery.Pumped pumped = sheet.machinery().mainPumps(oxidizer, oxidizerDischarge, fuel, fuelDischarge);
        List<Stream> oxidizerWays = sheet.split(OXIDIZER_SPLIT, pumped.oxidizer(), gasOxidizer.over(oxidizer));
        List<Stream> fuelWays =
                sheet.split(FUEL_SPLIT, pumped.fuel(), gas.minus(gasOxidizer).over(fuel));

        Traced available = Traced.least(
                oxidizerDischarge.minus(sheet.valveDrop(Side.OXIDIZER)),
                fuelDischarge.minus(sheet.valveDrop(Side.FUEL)));
        Traced pressure = sheet.generatorPressure(
                available.over(sheet.burnerLoss(Burner.GENERATOR).onePlus()),
                diluent.map(d -> sheet.diluted(gas)).orElse(gas));
        Stream hot = sheet.burn(
                Burner.GENERATOR,
                sheet.valve(Side.OXIDIZER, GENERATOR_OXIDIZER_VALVE, oxidizerWays.get(0), available),
                sheet.valve(Side.FUEL, GENERATOR_FUEL_VALVE, fuelWays.get(0), available),
                diluent.map(d -> sheet.diluent(d, gas, available)),
                pressure);
        GasFlow.dump(sheet, Burner.GENERATOR, hot, x);

        Stream oxidizerMain = sheet.deliver(Side.OXIDIZER, oxidizerWays.get(1), sheet.injectorInlet(Side.OXIDIZER));
        Stream fuelMain = sheet.deliver(Side.FUEL, fuelWays.get(1), sheet.injectorInlet(Side.FUEL));
        sheet.chamber(
                List.of(sheet.liquidInjector(Side.OXIDIZER, oxidizerMain), sheet.liquidInjector(Side.FUEL, fuelMain)));
    }
}

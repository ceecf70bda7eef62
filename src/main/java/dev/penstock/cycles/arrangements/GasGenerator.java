package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.BurnerDesign;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.sheet.FirstGuess;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Machinery;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import java.util.List;

/**
 * A small burner beside the chamber feeds the turbines; its gas is dumped through a nozzle of its own.
 * <pre>
 * tanks - pumps -+- lines - (jacket) - valves - injectors - chamber
 *                +- generator valves - gas generator - turbines - exhaust nozzle
 * </pre>
 * Gas temperature and turbine pressure ratio are given. Unknown: gas flow and its mixture, and with two shafts the share
 * of the fuel turbine. Closed by: gas temperature, power of each shaft.
 */
public record GasGenerator() implements Cycle {

    @Override
    public String id() {
        return "gas-generator";
    }

    @Override
    public String title() {
        return "Gas generator";
    }

    @Override
    public String summary() {
        return "a small burner drives the turbines and its gas is dumped";
    }

    @Override
    public CycleTraits traits() {
        return new CycleTraits(
                CycleTraits.Closure.GAS_FLOW, List.of(Burner.GENERATOR), CycleTraits.ANY, true, false, 0);
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        return GasFlow.unknowns(guess, Burner.GENERATOR, "gas generator flow");
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        double gas = x.next();
        double mixture = x.next();
        double total = sheet.chamberFlow() + gas;
        double oxidizer = sheet.oxidizerOf(total);
        double fuel = total - oxidizer;
        double gasOxidizer = gas * mixture / (1 + mixture);

        double oxidizerDischarge = sheet.upstream(Side.OXIDIZER, sheet.injectorInlet(Side.OXIDIZER));
        double fuelDischarge = sheet.upstream(Side.FUEL, sheet.injectorInlet(Side.FUEL));
        Machinery.Pumped pumped = sheet.machinery().mainPumps(oxidizer, oxidizerDischarge, fuel, fuelDischarge);
        List<Stream> oxidizerWays =
                sheet.split("split.oxidizer", "oxidizer to the generator", pumped.oxidizer(), gasOxidizer / oxidizer);
        List<Stream> fuelWays =
                sheet.split("split.fuel", "fuel to the generator", pumped.fuel(), (gas - gasOxidizer) / fuel);

        BurnerDesign burner = sheet.concept().burners().get(Burner.GENERATOR);
        double available = Math.min(
                oxidizerDischarge - sheet.upstreamOfValve(Side.OXIDIZER, 0),
                fuelDischarge - sheet.upstreamOfValve(Side.FUEL, 0));
        double pressure = sheet.generatorPressure(available / (1 + burner.injectorLoss()), gas);
        Stream hot = sheet.burn(
                Burner.GENERATOR,
                sheet.valve(
                        Side.OXIDIZER,
                        "valve.generator_oxidizer",
                        "generator oxidizer valve",
                        oxidizerWays.get(0),
                        available),
                sheet.valve(Side.FUEL, "valve.generator_fuel", "generator fuel valve", fuelWays.get(0), available),
                pressure);
        sheet.closesTemperature(Burner.GENERATOR);

        GasFlow.dump(sheet, hot, x);

        Stream oxidizerMain = sheet.deliver(Side.OXIDIZER, oxidizerWays.get(1), sheet.injectorInlet(Side.OXIDIZER));
        Stream fuelMain = sheet.deliver(Side.FUEL, fuelWays.get(1), sheet.injectorInlet(Side.FUEL));
        sheet.chamber(
                List.of(sheet.liquidInjector(Side.OXIDIZER, oxidizerMain), sheet.liquidInjector(Side.FUEL, fuelMain)));
    }
}

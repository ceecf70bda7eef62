package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Machinery;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.Propellant;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.ArrayList;
import java.util.List;

/**
 * A gas generator that decomposes one of the propellants by itself: peroxide as oxidizer, or hydrazine as fuel.
 * <pre>
 * tanks - pumps -+- lines - (jacket) - valves - injectors - chamber
 *                +- valve - decomposition chamber - turbines - exhaust nozzle        (monopropellant only)
 * </pre>
 * The gas is as hot as the decomposition makes it; the turbine pressure ratio is given. Unknown: gas flow, and with two
 * shafts the share of the fuel turbine. Closed by: power of each shaft.
 */
public record DecompositionGenerator() implements Cycle {

    private static final About ABOUT = new About(
            "decomposition-generator",
            "Monopropellant gas generator",
            "one propellant decomposes by itself, drives the turbines and is dumped",
            new CycleTraits(
                    BuiltPressures.OPEN,
                    CycleTraits.Closure.GAS_FLOW,
                    List.of(Burner.DECOMPOSITION),
                    CycleTraits.ANY,
                    true,
                    false,
                    0));
    private static final PartKey GENERATOR_VALVE = PartKey.of(PartKind.VALVE, "generator", "generator valve");

    /** Gas temperature to start from (K). */
    private static final double USUAL_TEMPERATURE = 1000;

    @Override
    public About about() {
        return ABOUT;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        List<Unknown> unknowns = new ArrayList<>();
        unknowns.add(GasFlow.flow(guess, USUAL_TEMPERATURE, "gas flow"));
        unknowns.addAll(Drive.unknowns(guess));
        return unknowns;
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        Side side = decomposing(sheet.concept());
        Traced gas = x.next();
        Traced total = sheet.chamberFlow().plus(gas);
        Traced oxidizer = sheet.oxidizerOf(total);
        Traced fuel = total.minus(oxidizer);
        Traced discharge = sheet.upstream(side, sheet.injectorInlet(side));
        Traced otherDischarge = sheet.upstream(side.other(), sheet.injectorInlet(side.other()));
        boolean oxidizing = side == Side.OXIDIZER;
        Machinery.Pumped pumped = sheet.machinery()
                .mainPumps(
                        oxidizer, oxidizing ? discharge : otherDischarge, fuel, oxidizing ? otherDischarge : discharge);
        Stream own = oxidizing ? pumped.oxidizer() : pumped.fuel();
        Stream other = oxidizing ? pumped.fuel() : pumped.oxidizer();
        List<Stream> ways = sheet.split(GasFlow.generatorBranch(side), own, gas.over(sheet.flowOf(own)));

        Traced available = discharge.minus(sheet.valveDrop(side));
        Traced share = sheet.burnerLoss(Burner.DECOMPOSITION).onePlus();
        Stream in = sheet.valve(side, GENERATOR_VALVE, ways.get(0), available);
        GasFlow.dump(
                sheet,
                Burner.DECOMPOSITION,
                sheet.decompose(Burner.DECOMPOSITION, in, sheet.generatorPressure(available.over(share), gas)),
                x);

        sheet.chamber(List.of(delivered(sheet, side, ways.get(1)), delivered(sheet, side.other(), other)));
    }

    private static Side decomposing(Concept concept) {
        for (Side side : Side.values()) {
            if (concept.feed(side).propellant().roles().contains(Propellant.Role.MONOPROPELLANT)) {
                return side;
            }
        }
        throw new InvalidInput(
                "",
                "cycle",
                "decomposition-generator with "
                        + concept.feed(Side.OXIDIZER).propellant().name() + " and "
                        + concept.feed(Side.FUEL).propellant().name(),
                "neither of them decomposes by itself: one must have the role monopropellant");
    }

    private static Stream delivered(Flowsheet sheet, Side side, Stream pumped) {
        return sheet.liquidInjector(side, sheet.deliver(side, pumped, sheet.injectorInlet(side)));
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
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
import java.util.ArrayList;
import java.util.List;

/**
 * All of one propellant passes a preburner, with a little of the other, and the turbines, and burns to the end in the
 * chamber.
 * <pre>
 * rich tank - pump - line - (jacket) - valve - preburner - duct - turbines - duct - gas injector - chamber
 * lean tank - pump -+- line - (jacket) - valve - injector - chamber
 *                   +- kick pump - valve - preburner
 * </pre>
 * Given: gas temperature or turbine pressure ratio; unknown: mixture of the preburner, the other of the two, and with two
 * shafts the share of the fuel turbine. Closed by: gas temperature if given, power of each shaft.
 */
public enum StagedCombustion implements Cycle {
    FUEL_RICH("staged-fuel-rich", "Staged combustion, fuel-rich", Side.FUEL, Burner.FUEL_RICH),
    OXYGEN_RICH("staged-oxygen-rich", "Staged combustion, oxygen-rich", Side.OXIDIZER, Burner.OXIDIZER_RICH);

    private static final PartKey HOT_GAS_DUCT = PartKey.of(PartKind.LINE, "hot_gas", "hot-gas duct");
    private static final PartKey TURBINE_EXHAUST_DUCT =
            PartKey.of(PartKind.LINE, "turbine_exhaust", "turbine exhaust duct");
    private static final PartKey GAS_INJECTOR = PartKey.of(PartKind.INJECTOR, "gas", "gas injector");

    private final About about;
    private final Side rich;
    private final Burner burner;

    StagedCombustion(String id, String title, Side rich, Burner burner) {
        this.rich = rich;
        this.burner = burner;
        this.about = new About(
                id,
                title,
                "all the " + rich.key() + " passes a preburner and the turbines on its way to the chamber",
                new CycleTraits(
                        BuiltPressures.STAGED,
                        CycleTraits.Closure.RATIO_OR_TEMPERATURE,
                        List.of(burner),
                        CycleTraits.ANY,
                        false,
                        true,
                        0));
    }

    @Override
    public About about() {
        return about;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        List<Unknown> unknowns = new ArrayList<>(Preburner.unknowns(guess, burner, Drive.leading(guess.concept())));
        unknowns.addAll(Drive.unknowns(guess));
        return unknowns;
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        Side lean = rich.other();
        Preburner preburner = Preburner.of(sheet, burner, Drive.leading(sheet.concept()), x);
        Traced oxidizer = sheet.oxidizerOf(sheet.chamberFlow());
        Traced fuel = sheet.chamberFlow().minus(oxidizer);
        Traced richFlow = rich == Side.FUEL ? fuel : oxidizer;
        Traced leanFlow = sheet.chamberFlow().minus(richFlow);

        Traced richDischarge = sheet.upstream(rich, preburner.injectorInlet());
        Traced leanDischarge = sheet.upstream(lean, sheet.injectorInlet(lean));
        Machinery.Pumped pumped = rich == Side.FUEL
                ? sheet.machinery().mainPumps(oxidizer, leanDischarge, fuel, richDischarge)
                : sheet.machinery().mainPumps(oxidizer, richDischarge, fuel, leanDischarge);
        Stream richPumped = rich == Side.FUEL ? pumped.fuel() : pumped.oxidizer();
        Stream leanPumped = rich == Side.FUEL ? pumped.oxidizer() : pumped.fuel();

        List<Stream> leanWays = sheet.split(
                PartKey.branch(
                        lean.key(),
                        lean.key() + " to the preburner",
                        lean.key() + " to the preburner",
                        lean.key() + " to the chamber"),
                leanPumped,
                preburner.ratio().times(richFlow).over(leanFlow));
        Stream richIn = sheet.deliver(rich, richPumped, preburner.injectorInlet());
        Stream leanIn = toPreburner(sheet, lean, leanWays.get(0), preburner.injectorInlet());
        Stream gas = rich == Side.FUEL
                ? sheet.burn(burner, leanIn, richIn, preburner.pressure())
                : sheet.burn(burner, richIn, leanIn, preburner.pressure());

        Stream inlet = sheet.hotDuct(HOT_GAS_DUCT, gas);
        sheet.closesTemperature(burner, inlet);
        Stream expanded = Drive.expand(sheet, inlet, preburner.turbineExit(), x);
        sheet.machinery().closesShafts();
        Stream returned = sheet.hotDuct(TURBINE_EXHAUST_DUCT, expanded);

        Stream leanMain = sheet.deliver(lean, leanWays.get(1), sheet.injectorInlet(lean));
        sheet.chamber(
                List.of(sheet.injector(GAS_INJECTOR, returned.line(), returned), sheet.liquidInjector(lean, leanMain)));
    }

    /** The part of the lean propellant that goes to the preburner needs more pressure than the chamber's part. */
    private static Stream toPreburner(Flowsheet sheet, Side lean, Stream in, Traced injectorInlet) {
        Traced needed = sheet.upstreamOfValve(lean, injectorInlet);
        Stream raised =
                needed.value() > in.pressure() * 1.0001 ? sheet.machinery().kickPump(lean, in, needed) : in;
        return sheet.valve(
                lean,
                PartKey.of(PartKind.VALVE, "preburner_" + lean.key(), "preburner " + lean.key() + " valve"),
                raised,
                injectorInlet);
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.GasPathDesign;
import dev.penstock.cycles.concept.ShaftDesign;
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
 * Part of the fuel is heated in the jacket; a little of that drives the turbines and is dumped, the rest burns.
 * <pre>
 * fuel tank - pump -+- line - jacket - valve -+- duct - turbines - exhaust nozzle
 *                   |                         +- valve -+
 *                   +- valve ---------------------------+- injector - chamber
 * oxidizer tank - pump - line - valve - injector - chamber
 * </pre>
 * The turbine pressure ratio is given. Unknown: bleed flow, and with two shafts the share of the fuel turbine. Closed by:
 * power of each shaft.
 */
public record ExpanderBleed() implements Cycle {

    private static final About ABOUT = new About(
            "expander-bleed",
            "Expander bleed",
            "a little of the fuel that the chamber heats drives the turbines and is dumped",
            new CycleTraits(
                    BuiltPressures.EXPANDERS,
                    CycleTraits.Closure.GAS_FLOW,
                    List.of(),
                    List.of(
                            ShaftDesign.Arrangement.DUAL,
                            ShaftDesign.Arrangement.GEARED,
                            ShaftDesign.Arrangement.SINGLE),
                    true,
                    false,
                    0.5));
    private static final PartKey FUEL_SPLIT =
            PartKey.branch("fuel", "fuel to the jacket", "fuel to the jacket", "fuel past the jacket");
    private static final PartKey BLEED_SPLIT =
            PartKey.branch("bleed", "bleed branch", "warm fuel to the turbines", "warm fuel to the chamber");
    private static final PartKey HOT_GAS_DUCT = PartKey.of(PartKind.LINE, "hot_gas", "turbine duct");
    private static final PartKey FUEL_WARM_VALVE = PartKey.of(PartKind.VALVE, "fuel_warm", "warm fuel valve");
    private static final PartKey FUEL_MERGE = PartKey.of(PartKind.MERGE, "fuel", "fuel merge");
    private static final PartKey FUEL_DIRECT_VALVE = PartKey.of(PartKind.VALVE, "fuel_direct", "direct fuel valve");
    private static final double LARGEST_BLEED = 0.98;

    @Override
    public About about() {
        return ABOUT;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        double power = guess.pumpPower(Side.FUEL, 1.7) + guess.pumpPower(Side.OXIDIZER, 1.3);
        double heated = guess.concept().gasPath().heatedShare() * guess.flow(Side.FUEL);
        double flow = Math.min(power / 1.2e6, 0.3 * heated); // hydrogen at some 300 K gives about 1.2 MJ/kg
        List<Unknown> unknowns = new ArrayList<>();
        unknowns.add(new Unknown("bleed flow", "kg/s", 1e-3 * flow, LARGEST_BLEED * heated, flow, flow));
        unknowns.addAll(Drive.unknowns(guess));
        return unknowns;
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        GasPathDesign path = sheet.concept().gasPath();
        Traced bleed = x.next();
        Traced total = sheet.chamberFlow().plus(bleed);
        Traced oxidizer = sheet.oxidizerOf(total);
        Traced fuel = total.minus(oxidizer);
        Traced injection = sheet.injectorInlet(Side.FUEL);
        Traced heatedOutlet = sheet.upstreamOfValve(Side.FUEL, injection);
        Machinery.Pumped pumped = sheet.machinery()
                .mainPumps(
                        oxidizer,
                        sheet.upstream(Side.OXIDIZER, sheet.injectorInlet(Side.OXIDIZER)),
                        fuel,
                        sheet.upstream(Side.FUEL, heatedOutlet));

        boolean all = path.heatedShare() >= 1;
        List<Stream> ways = all ? List.of(pumped.fuel()) : sheet.split(FUEL_SPLIT, pumped.fuel(), sheet.heatedShare());
        Stream heated = sheet.heated(sheet.deliver(Side.FUEL, ways.get(0), heatedOutlet));
        List<Stream> parts = sheet.split(BLEED_SPLIT, heated, bleed.over(sheet.flowOf(heated)));
        Stream inlet = sheet.hotDuct(HOT_GAS_DUCT, parts.get(0));
        Traced ratio = sheet.statedRatio(Drive.leading(sheet.concept())).orElseThrow();
        sheet.exhaust(sheet.boostTurbines()
                .behindTurbines(
                        Drive.expand(sheet, inlet, sheet.pressureOf(inlet).over(ratio), x)));
        sheet.machinery().closesShafts();

        Stream warm = sheet.valve(Side.FUEL, FUEL_WARM_VALVE, parts.get(1), injection);
        Stream toInjector = all
                ? warm
                : sheet.merge(FUEL_MERGE, warm, sheet.valve(Side.FUEL, FUEL_DIRECT_VALVE, ways.get(1), injection));
        Stream oxidizerIn = sheet.deliver(Side.OXIDIZER, pumped.oxidizer(), sheet.injectorInlet(Side.OXIDIZER));
        sheet.chamber(
                List.of(sheet.liquidInjector(Side.OXIDIZER, oxidizerIn), sheet.liquidInjector(Side.FUEL, toInjector)));
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.GasPathDesign;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.LineKey;
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
 * The fuel is heated in the jacket, drives the turbines and burns in the chamber.
 * <pre>
 * closed: fuel tank - pump - line - jacket - valve -+- duct - turbines -+- duct - gas injector - chamber
 *                                                   +- bypass valve ----+
 * split:  fuel tank - pump -+- second pump - line - jacket - valve -+- duct - turbines -+- merge - injector
 *                           |                                       +- bypass valve ----+   |
 *                           +- valve -------------------------------------------------------+
 * oxidizer tank - pump - line - valve - injector - chamber
 * </pre>
 * Unknown: turbine pressure ratio, and with two shafts the share of the fuel turbine. Closed by: power of each shaft. The
 * temperature before the turbines is what the jacket gives.
 */
public enum Expander implements Cycle {
    CLOSED("expander", "Expander", "all the fuel is heated by the chamber and drives the turbines before it burns", 1),
    SPLIT(
            "split-expander",
            "Split expander",
            "part of the fuel is heated by the chamber and drives the turbines, the rest goes straight to the injector",
            0.5);

    private static final PartKey FUEL_SPLIT =
            PartKey.branch("fuel", "fuel to the jacket", "fuel to the jacket", "fuel past the jacket");
    private static final PartKey FUEL_DIRECT_VALVE = PartKey.of(PartKind.VALVE, "fuel_direct", "direct fuel valve");
    private static final PartKey FUEL_MERGE = PartKey.of(PartKind.MERGE, "fuel", "fuel merge");
    private static final PartKey TURBINE_EXHAUST_DUCT =
            PartKey.of(PartKind.LINE, "turbine_exhaust", "turbine exhaust duct");
    private static final PartKey GAS_INJECTOR = PartKey.of(PartKind.INJECTOR, "gas", "fuel injector");

    private static final double HIGHEST_PRESSURE_RATIO = 20;

    private final About about;

    Expander(String id, String title, String summary, double heatedShare) {
        this.about = new About(
                id,
                title,
                summary,
                new CycleTraits(
                        BuiltPressures.EXPANDERS,
                        CycleTraits.Closure.RATIO,
                        List.of(),
                        List.of(
                                ShaftDesign.Arrangement.GEARED,
                                ShaftDesign.Arrangement.DUAL,
                                ShaftDesign.Arrangement.SINGLE),
                        false,
                        true,
                        heatedShare));
    }

    @Override
    public About about() {
        return about;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        List<Unknown> unknowns = new ArrayList<>();
        unknowns.add(new Unknown("turbine pressure ratio", "-", 1.005, HIGHEST_PRESSURE_RATIO, 0.2, 1.2));
        unknowns.addAll(TurbineBypass.unknowns(guess, "turbine bypass"));
        unknowns.addAll(Drive.unknowns(guess));
        return unknowns;
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        GasPathDesign path = sheet.concept().gasPath();
        Traced duct = sheet.ductShare();
        Traced ratio = x.next();
        Traced exit = sheet.gasInjectorInlet().over(duct);
        Traced heatedOutlet = exit.times(ratio).over(duct);
        Traced oxidizer = sheet.oxidizerOf(sheet.chamberFlow());
        Traced fuel = sheet.chamberFlow().minus(oxidizer);
        Traced heatedDischarge = sheet.upstream(Side.FUEL, heatedOutlet);
        Traced plainDischarge = sheet.upstreamOfValve(Side.FUEL, exit);
        boolean split = path.heatedShare() < 1;

        Machinery.Pumped pumped = sheet.machinery()
                .mainPumps(
                        oxidizer,
                        sheet.upstream(Side.OXIDIZER, sheet.injectorInlet(Side.OXIDIZER)),
                        fuel,
                        split ? plainDischarge : heatedDischarge);
        if (split) {
            List<Stream> ways = sheet.split(FUEL_SPLIT, pumped.fuel(), sheet.heatedShare());
            Stream raised = sheet.machinery().secondPump(Side.FUEL, ways.get(0), heatedDischarge);
            Stream warm = throughTurbines(sheet, raised, heatedOutlet, exit, x);
            Stream cold = sheet.valve(Side.FUEL, FUEL_DIRECT_VALVE, ways.get(1), exit);
            toChamber(sheet, pumped.oxidizer(), sheet.merge(FUEL_MERGE, warm, cold));
        } else {
            toChamber(sheet, pumped.oxidizer(), throughTurbines(sheet, pumped.fuel(), heatedOutlet, exit, x));
        }
    }

    private static Stream throughTurbines(Flowsheet sheet, Stream pumped, Traced heatedOutlet, Traced exit, Values x) {
        Traced bypass = TurbineBypass.share(sheet, x);
        Stream heated = sheet.heated(sheet.deliver(Side.FUEL, pumped, heatedOutlet));
        return TurbineBypass.around(sheet, Side.FUEL, "", heated, bypass, exit, inlet -> {
            Stream expanded = Drive.expand(sheet, inlet, exit, x);
            sheet.machinery().closesShafts();
            return expanded;
        });
    }

    private static void toChamber(Flowsheet sheet, Stream oxidizerPumped, Stream fuel) {
        Stream returned = sheet.hotDuct(TURBINE_EXHAUST_DUCT, fuel);
        Stream oxidizer = sheet.deliver(Side.OXIDIZER, oxidizerPumped, sheet.injectorInlet(Side.OXIDIZER));
        sheet.chamber(List.of(
                sheet.injector(GAS_INJECTOR, LineKey.of(Side.FUEL), returned),
                sheet.liquidInjector(Side.OXIDIZER, oxidizer)));
    }
}

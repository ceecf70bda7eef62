package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
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
 * Each propellant is heated in a jacket of its own, drives the turbine of its own pump and burns in the chamber.
 * <pre>
 * each side: tank - pump - line - jackets - valve -+- duct - turbine -+- duct - gas injector - chamber
 *                                                  +- bypass valve ---+
 * </pre>
 * Unknown: the pressure ratio of each turbine. Closed by: power of each shaft. The temperatures before the turbines are what
 * the jackets give. No shaft carries both propellants, so that no seal has to part them.
 */
public record DualExpander() implements Cycle {

    private static final About ABOUT = new About(
            "dual-expander",
            "Dual expander",
            "fuel and oxidizer are heated by the chamber, each drives its own pump, and both burn",
            new CycleTraits(
                    BuiltPressures.EXPANDERS,
                    CycleTraits.Closure.RATIO,
                    List.of(),
                    List.of(ShaftDesign.Arrangement.DUAL),
                    false,
                    true,
                    1,
                    List.of(Side.FUEL, Side.OXIDIZER)));
    private static final double LOWEST_PRESSURE_RATIO = 1.005;
    private static final double HIGHEST_PRESSURE_RATIO = 20;
    private static final double FIRST_PRESSURE_RATIO = 1.25;

    @Override
    public About about() {
        return ABOUT;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        List<Unknown> unknowns = new ArrayList<>();
        for (Side side : List.of(Side.FUEL, Side.OXIDIZER)) {
            unknowns.add(new Unknown(
                    "pressure ratio of the " + TurbinePlace.of(side).title(),
                    "-",
                    LOWEST_PRESSURE_RATIO,
                    HIGHEST_PRESSURE_RATIO,
                    0.2,
                    FIRST_PRESSURE_RATIO));
            unknowns.addAll(TurbineBypass.unknowns(
                    guess, "bypass of the " + TurbinePlace.of(side).title()));
        }
        return unknowns;
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        Way fuel = Way.of(sheet, Side.FUEL, x);
        Way oxidizer = Way.of(sheet, Side.OXIDIZER, x);
        Traced oxidizerFlow = sheet.oxidizerOf(sheet.chamberFlow());
        Machinery.Pumped pumped = sheet.machinery()
                .mainPumps(
                        oxidizerFlow,
                        sheet.upstream(Side.OXIDIZER, oxidizer.heatedOutlet),
                        sheet.chamberFlow().minus(oxidizerFlow),
                        sheet.upstream(Side.FUEL, fuel.heatedOutlet));
        Stream oxidizerGas = oxidizer.throughTurbine(sheet, pumped.oxidizer());
        Stream fuelGas = fuel.throughTurbine(sheet, pumped.fuel());
        sheet.machinery().closesShafts();
        sheet.chamber(List.of(fuelGas, oxidizerGas));
    }

    /**
     * The way of one propellant behind its pump.
     *
     * @param side propellant
     * @param exit pressure behind the turbine (Pa)
     * @param heatedOutlet pressure behind jackets and valve (Pa)
     * @param bypass share that passes by the turbine (-)
     */
    private record Way(Side side, Traced exit, Traced heatedOutlet, Traced bypass) {

        static Way of(Flowsheet sheet, Side side, Values x) {
            Traced ratio = x.next();
            Traced bypass = TurbineBypass.share(sheet, x);
            Traced duct = sheet.ductShare();
            Traced exit = sheet.gasInjectorInlet().over(duct);
            return new Way(side, exit, exit.times(ratio).over(duct), bypass);
        }

        /** Warm fuel drives boost pumps of both propellants beside its own turbine. */
        private Stream inlet(Flowsheet sheet, Stream gas) {
            Side[] boosts = side == Side.FUEL ? Side.values() : new Side[0];
            return sheet.boostTurbines()
                    .besideTurbines(
                            gas, exit, rest -> sheet.machinery().turbine(TurbinePlace.of(side), rest, exit), boosts);
        }

        Stream throughTurbine(Flowsheet sheet, Stream pumped) {
            String word = side.key();
            Stream heated = sheet.heated(sheet.deliver(side, pumped, heatedOutlet));
            Stream expanded =
                    TurbineBypass.around(sheet, side, word, heated, bypass, exit, inlet -> inlet(sheet, inlet));
            Stream returned = sheet.hotDuct(
                    PartKey.of(PartKind.LINE, word + "_turbine_exhaust", word + " turbine exhaust duct"), expanded);
            return sheet.injector(
                    PartKey.of(PartKind.INJECTOR, word + "_gas", word + " gas injector"), LineKey.of(side), returned);
        }
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The valve beside the turbines of a heated propellant. A new engine passes by them the share that its concept states, nothing
 * mostly; a built one holds its pressure with it.
 */
final class TurbineBypass {

    private TurbineBypass() {}

    /** The share, where it is to be found. */
    static List<Unknown> unknowns(FirstGuess guess, String name) {
        if (!guess.built()) {
            return List.of();
        }
        double usual = guess.concept().gasPath().turbineBypass();
        return List.of(new Unknown(name, "-", 1e-4, 0.9, 0.05, Math.max(usual, 0.01)));
    }

    /** Share that passes by the turbines (-). */
    static Traced share(Flowsheet sheet, Values x) {
        double usual = sheet.concept().gasPath().turbineBypass();
        return sheet.built() ? x.next() : sheet.given(usual, ConceptTables.EXPANDER.of(GasInputs.TURBINE_BYPASS));
    }

    /**
     * A duct and turbines with the valve beside them; without it where nothing passes by.
     *
     * @param sheet where the components are laid
     * @param side propellant
     * @param word what tells its parts from those of the other propellant; empty if that drives no turbine
     * @param heated what the jackets deliver
     * @param share share that passes by (-)
     * @param exit pressure behind the turbines (Pa)
     * @param turbines from the gas before the turbines to that behind them
     * @return what leaves turbines and valve
     */
    static Stream around(
            Flowsheet sheet,
            Side side,
            String word,
            Stream heated,
            Traced share,
            Traced exit,
            UnaryOperator<Stream> turbines) {
        String id = word.isEmpty() ? "" : word + "_";
        String label = word.isEmpty() ? "" : word + " ";
        UnaryOperator<Stream> expanded = gas ->
                turbines.apply(sheet.hotDuct(PartKey.of(PartKind.LINE, id + "hot_gas", label + "turbine duct"), gas));
        if (share.value() == 0) {
            return expanded.apply(heated);
        }
        List<Stream> ways = sheet.split(
                PartKey.branch(
                        id + "bypass",
                        label + "turbine bypass branch",
                        "gas to the " + label + "turbines",
                        "gas past the " + label + "turbines"),
                heated,
                share.oneMinus());
        Stream driven = expanded.apply(ways.get(0));
        Stream past = sheet.valve(
                side, PartKey.of(PartKind.VALVE, id + "bypass", label + "turbine bypass valve"), ways.get(1), exit);
        return sheet.merge(PartKey.of(PartKind.MERGE, id + "bypass", label + "turbine bypass merge"), driven, past);
    }
}

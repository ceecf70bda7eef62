package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.ArrayList;
import java.util.List;

/** What cycles share that make gas for the turbines and dump it: flow and mixture as unknowns, and the way out. */
final class GasFlow {

    private static final PartKey HOT_GAS_DUCT = PartKey.of(PartKind.LINE, "hot_gas", "hot-gas duct");

    /** Half of an isentropic drop of fuel-rich gas over its temperature, order of magnitude (J/(kg·K)). */
    private static final double WORK_PER_KELVIN = 200;

    private GasFlow() {}

    /** Where a propellant divides into what makes gas and what the chamber burns. */
    static PartKey generatorBranch(Side side) {
        String taken = side.key() + " to the generator";
        return PartKey.branch(side.key(), taken, taken, side.key() + " to the chamber");
    }

    static List<Unknown> unknowns(FirstGuess guess, Burner burner, String name) {
        double temperature = guess.concept().burners().get(burner).temperature().orElseThrow();
        double lean = guess.leanRatio(burner, temperature, guess.concept().chamberPressure());
        List<Unknown> unknowns = new ArrayList<>();
        unknowns.add(flow(guess, temperature, name));
        unknowns.add(new Unknown("mixture of the " + burner.title(), "-", 1e-3 * lean, 20 * lean, lean, lean));
        unknowns.addAll(Drive.unknowns(guess));
        return unknowns;
    }

    static Unknown flow(FirstGuess guess, double temperature, String name) {
        double power = guess.pumpPower(Side.FUEL, 1.5) + guess.pumpPower(Side.OXIDIZER, 1.3);
        double flow = Math.min(power / (WORK_PER_KELVIN * temperature), 0.3 * guess.chamberFlow());
        return new Unknown(name, "kg/s", 1e-4 * flow, 2 * guess.chamberFlow(), flow, flow);
    }

    /** Duct, turbines at the concept's pressure ratio, exhaust; states the power of the shafts. */
    static void dump(Flowsheet sheet, Burner burner, Stream hot, Values x) {
        Stream inlet = sheet.hotDuct(HOT_GAS_DUCT, hot);
        sheet.closesTemperature(burner, inlet);
        Traced ratio = sheet.statedRatio(Drive.leading(sheet.concept())).orElseThrow();
        sheet.exhaust(sheet.boostTurbines()
                .behindTurbines(
                        Drive.expand(sheet, inlet, sheet.pressureOf(inlet).over(ratio), x)));
        sheet.machinery().closesShafts();
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Pressures and unknowns of a preburner whose gas goes on to the chamber: from the gas injector backwards through duct,
 * turbine and duct to the burner and its own injectors.
 *
 * @param ratio lean over rich propellant in the burner, by mass (-)
 * @param turbineExit pressure behind the turbine (Pa)
 * @param pressure pressure in the burner (Pa)
 * @param injectorInlet pressure before its injectors (Pa)
 */
record Preburner(Traced ratio, Traced turbineExit, Traced pressure, Traced injectorInlet) {

    private static final double LOWEST_PRESSURE_RATIO = 1.002;
    private static final double HIGHEST_PRESSURE_RATIO = 25;

    /** Temperature to start from where the balance is to find it (K). */
    private static final double USUAL_TEMPERATURE = 750;

    static List<Unknown> unknowns(FirstGuess guess, Burner burner, TurbinePlace place) {
        OptionalDouble temperature = guess.concept().burners().get(burner).temperature();
        double start = guess.leanRatio(
                burner,
                temperature.orElse(USUAL_TEMPERATURE),
                1.6 * guess.concept().chamberPressure());
        List<Unknown> unknowns = new ArrayList<>();
        unknowns.add(new Unknown("mixture of the " + burner.title(), "-", 0.02 * start, 30 * start, start, start));
        if (guess.concept().turbines().get(place).pressureRatio().isEmpty()) {
            unknowns.add(new Unknown(
                    "pressure ratio of the " + place.title(),
                    "-",
                    LOWEST_PRESSURE_RATIO,
                    HIGHEST_PRESSURE_RATIO,
                    0.2,
                    1.15));
        }
        return unknowns;
    }

    static Preburner of(Flowsheet sheet, Burner burner, TurbinePlace place, Values x) {
        Traced ratio = x.next();
        Traced pressureRatio = sheet.statedRatio(place).orElseGet(x::next);
        Traced duct = sheet.ductShare();
        Traced exit = sheet.gasInjectorInlet().over(duct);
        Traced pressure = exit.times(pressureRatio).over(duct);
        return new Preburner(
                ratio, exit, pressure, pressure.times(sheet.burnerLoss(burner).onePlus()));
    }
}

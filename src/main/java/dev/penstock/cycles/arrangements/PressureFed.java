package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.input.InputKey;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Tanks under pressure push the propellants into the chamber.
 * <pre>
 * tank - suction line - discharge line - (jacket) - valve - injector - chamber        for each propellant
 * </pre>
 * The pressure budget closes it without an unknown: each tank takes the pressure that its line needs, or, where the
 * concept states a tank pressure, the valve takes what is left over.
 */
public record PressureFed() implements Cycle {

    private static final About ABOUT = new About(
            "pressure-fed",
            "Pressure-fed",
            "tank pressure drives the propellants into the chamber",
            new CycleTraits(
                    BuiltPressures.TANKS, CycleTraits.Closure.TANK_PRESSURE, List.of(), List.of(), false, false, 0));

    @Override
    public About about() {
        return ABOUT;
    }

    @Override
    public List<Unknown> unknowns(FirstGuess guess) {
        return List.of();
    }

    @Override
    public void layOut(Flowsheet sheet, Values x) {
        Traced oxidizer = sheet.oxidizerOf(sheet.chamberFlow());
        sheet.chamber(List.of(
                line(sheet, Side.OXIDIZER, oxidizer),
                line(sheet, Side.FUEL, sheet.chamberFlow().minus(oxidizer))));
    }

    private static Stream line(Flowsheet sheet, Side side, Traced flow) {
        FeedDesign feed = sheet.concept().feed(side);
        Traced needed = sheet.upstream(side, sheet.injectorInlet(side)).plus(sheet.suctionLoss(side));
        OptionalDouble given = feed.tankPressure();
        InputKey stated = ConceptTables.tank(side).of(FeedInputs.TANK_PRESSURE);
        if (given.isPresent() && given.getAsDouble() < needed.value() * (1 - 1e-12)) {
            throw new dev.penstock.errors.LimitReached(
                    stated.path(),
                    String.format(
                            Locale.ROOT,
                            "a chamber pressure of %.4g MPa needs %.4g MPa in the %s tank, which holds %.4g MPa; "
                                    + "raise %s or lower the chamber pressure",
                            sheet.concept().chamberPressure() / 1e6,
                            needed.value() / 1e6,
                            side.key(),
                            given.getAsDouble() / 1e6,
                            stated.path()));
        }
        Traced tank = given.isPresent() ? sheet.given(given.getAsDouble(), stated) : needed;
        return sheet.liquidInjector(
                side, sheet.deliver(side, sheet.fromTank(side, flow, tank), sheet.injectorInlet(side)));
    }
}

package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Machinery;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.provenance.Traced;
import java.util.List;

/**
 * Motors drive the pumps from a battery.
 * <pre>
 * tank - pump - line - (jacket) - valve - injector - chamber        for each propellant
 * </pre>
 * The pressure budget closes it without an unknown; motor and battery follow from the pump power.
 */
public record ElectricPump() implements Cycle {

    private static final About ABOUT = new About(
            "electric-pump",
            "Electric pumps",
            "motors drive the pumps from a battery",
            new CycleTraits(
                    BuiltPressures.OPEN,
                    CycleTraits.Closure.MOTOR_POWER,
                    List.of(),
                    List.of(ShaftDesign.Arrangement.DUAL, ShaftDesign.Arrangement.SINGLE),
                    false,
                    false,
                    0));

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
        Machinery.Pumped pumped = sheet.machinery()
                .mainPumps(
                        oxidizer,
                        sheet.upstream(Side.OXIDIZER, sheet.injectorInlet(Side.OXIDIZER)),
                        sheet.chamberFlow().minus(oxidizer),
                        sheet.upstream(Side.FUEL, sheet.injectorInlet(Side.FUEL)));
        sheet.machinery().motors();
        sheet.chamber(List.of(
                delivered(sheet, Side.OXIDIZER, pumped.oxidizer()), delivered(sheet, Side.FUEL, pumped.fuel())));
    }

    private static Stream delivered(Flowsheet sheet, Side side, Stream pumped) {
        return sheet.liquidInjector(side, sheet.deliver(side, pumped, sheet.injectorInlet(side)));
    }
}

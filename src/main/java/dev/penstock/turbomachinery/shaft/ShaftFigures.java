package dev.penstock.turbomachinery.shaft;

import static dev.penstock.provenance.Place.Role.PUMPS;
import static dev.penstock.provenance.Place.Role.TURBINES;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.pump.PumpSpeed;
import dev.penstock.turbomachinery.speed.ShaftTorsion;

/** What a shaft publishes. */
public final class ShaftFigures {

    /** Figures of a shaft among its machines. */
    public static final FigureTable<ShaftBalance> ALL = FigureTable.named(ShaftBalance::name)
            .word("name", "shaft", ShaftBalance::name)
            .number("speed_rad_s", "speed", Notation.SPEED, ShaftBalance::speed)
            .by(PumpSpeed.CARD)
            .word("speed_set_by", "speed set by", ShaftBalance::speedSetBy)
            .word("pumps", "pumps", ShaftBalance::driven)
            .word("turbines", "driven by", ShaftBalance::drivers)
            .number("power_delivered_W", "delivered", Notation.POWER, ShaftBalance::powerDelivered)
            .from(ShaftFigures::delivered)
            .number("power_absorbed_W", "absorbed", Notation.POWER, ShaftBalance::powerAbsorbed)
            .by(MechanicalLosses.CARD, of(PUMPS, "power_W"))
            .number("power_taken_off_W", "taken off by gear", Notation.POWER, ShaftBalance::powerTakenOff)
            .by(MechanicalLosses.CARD, of(PUMPS, "power_W"))
            .number("mechanical_loss_W", "mechanical loss", Notation.POWER, ShaftBalance::mechanicalLoss)
            .by(MechanicalLosses.CARD, own("power_absorbed_W", "power_taken_off_W"), given())
            .number("diameter_m", "diameter", significant("m", "mm", 1e3, 3), ShaftBalance::diameter)
            .by(ShaftTorsion.CARD, own("power_delivered_W", "speed_rad_s"), given())
            .number("mass_kg", "mass", Notation.MASS, ShaftBalance::mass)
            .by(TurbopumpMass.CARD, own("power_delivered_W", "speed_rad_s"))
            .table();

    private ShaftFigures() {}

    /** A motor is no turbine: what it delivers is what the pumps take and the shaft loses. */
    private static Origin delivered(ShaftBalance shaft, Place at) {
        Place.Source from = at.all(TURBINES).isEmpty()
                ? own("power_absorbed_W", "power_taken_off_W", "mechanical_loss_W")
                : of(TURBINES, "power_W");
        return new Origin(MechanicalLosses.CARD, from.paths(at));
    }
}

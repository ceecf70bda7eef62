package dev.penstock.chamber;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes losses off an ideal expansion one after the other, so that the steps add up to the whole. */
final class LossAccount {

    private final IdealExpansion ideal;
    private final List<NamedLoss> losses = new ArrayList<>();
    private final List<Warning> warnings = new ArrayList<>();
    private double vacuumImpulse;
    private double characteristicVelocity;

    LossAccount(IdealExpansion ideal) {
        this.ideal = ideal;
        this.vacuumImpulse = ideal.vacuumImpulse();
        this.characteristicVelocity = ideal.characteristicVelocity();
    }

    void takeOff(LossKind kind, LossModel.Result result, Optional<ModelCard> card) {
        double after = vacuumImpulse * result.factor();
        losses.add(new NamedLoss(kind.title(), result.factor(), vacuumImpulse - after, card, result.note()));
        result.warning().ifPresent(warnings::add);
        vacuumImpulse = after;
        characteristicVelocity *= result.velocityFactor();
    }

    List<NamedLoss> losses() {
        return losses;
    }

    List<Warning> warnings() {
        return warnings;
    }

    double vacuumImpulse() {
        return vacuumImpulse;
    }

    double characteristicVelocity() {
        return characteristicVelocity;
    }

    /** Delivered vacuum thrust per throat area (N/m²). */
    double vacuumThrustPerArea() {
        return ideal.chamberPressure() * vacuumImpulse / characteristicVelocity;
    }
}

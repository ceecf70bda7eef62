package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes losses off an ideal expansion one after the other, so that the steps add up to the whole. */
public final class LossAccount {

    private final IdealExpansion ideal;
    private final List<Taken> taken = new ArrayList<>();
    private final List<Warning> warnings = new ArrayList<>();
    private double filmFactor = 1;
    private double vacuumImpulse;
    private double characteristicVelocity;

    /** A loss, before anybody reads of it. */
    private record Taken(LossKind kind, LossModel.Result result, double impulse, Optional<ModelCard> card) {

        NamedLoss named() {
            return new NamedLoss(
                    Optional.of(kind), kind.title(), result.factor(), impulse, card, new LossNote(result.note()));
        }
    }

    public LossAccount(IdealExpansion ideal) {
        this.ideal = ideal;
        this.vacuumImpulse = ideal.vacuumImpulse();
        this.characteristicVelocity = ideal.characteristicVelocity();
    }

    public void takeOff(LossKind kind, LossModel.Result result, Optional<ModelCard> card) {
        double after = vacuumImpulse * result.factor();
        taken.add(new Taken(kind, result, vacuumImpulse - after, card));
        result.warning().ifPresent(warnings::add);
        vacuumImpulse = after;
        characteristicVelocity *= result.velocityFactor();
        filmFactor = kind == LossKind.FILM_COOLING ? result.velocityFactor() : filmFactor;
    }

    public List<NamedLoss> losses() {
        return taken.stream().map(Taken::named).toList();
    }

    public List<Warning> warnings() {
        return warnings;
    }

    public double vacuumImpulse() {
        return vacuumImpulse;
    }

    public double characteristicVelocity() {
        return characteristicVelocity;
    }

    /** c* after over c* before the loss to film and outer zone (-). */
    public double filmFactor() {
        return filmFactor;
    }

    /** Delivered vacuum thrust per throat area (N/m²). */
    public double vacuumThrustPerArea() {
        return ideal.chamberPressure() * vacuumImpulse / characteristicVelocity;
    }
}

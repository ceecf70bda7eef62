package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.LossKind;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.Optional;
import java.util.function.Supplier;

/** Computes one loss of a thrust chamber when the concept does not state its efficiency. */
public abstract class LossModel {

    /** Whether a loss changes with the size of the chamber, everything else the same. */
    protected enum Size {
        MATTERS,
        INDIFFERENT
    }

    private final LossKind kind;
    private final ModelCard card;
    private final Size size;

    /**
     * @param kind which loss it computes
     * @param card equation, source and range
     * @param size whether it changes with the size of the chamber
     */
    protected LossModel(LossKind kind, ModelCard card, Size size) {
        this.kind = kind;
        this.card = card;
        this.size = size;
    }

    /** @return which loss it computes */
    public final LossKind kind() {
        return kind;
    }

    /** @return equation, source and range */
    public final ModelCard card() {
        return card;
    }

    /** @return whether the loss changes with the size of the chamber, everything else the same */
    public final boolean dependsOnSize() {
        return size == Size.MATTERS;
    }

    /**
     * @param chamber chamber whose loss is wanted
     * @return impulse after over impulse before this loss, with its evidence
     */
    public abstract Result evaluate(LossCase chamber);

    /**
     * @param chamber chamber whose efficiency is stated for its design point
     * @return what that efficiency is multiplied by at the operating point (-)
     */
    public double partFlow(LossCase chamber) {
        return 1;
    }

    /**
     * A loss factor and its evidence.
     *
     * @param factor impulse after over impulse before this loss (-)
     * @param velocityFactor c* after over c* before this loss (-)
     * @param note makes one line for the reader, may be empty text; a search for a size never asks
     * @param warning present outside the model's fit
     */
    public record Result(double factor, double velocityFactor, Supplier<String> note, Optional<Warning> warning) {

        public Result {
            Require.positive("loss", "factor (-)", factor);
            Require.positive("loss", "c* factor (-)", velocityFactor);
        }

        /** As the other, with the line made already. */
        public Result(double factor, double velocityFactor, String note, Optional<Warning> warning) {
            this(factor, velocityFactor, () -> note, warning);
        }

        /** A loss of the nozzle, which leaves c* alone. */
        public static Result nozzle(double factor, Supplier<String> note, Optional<Warning> warning) {
            return new Result(factor, 1, note, warning);
        }

        /** A loss of the nozzle, which leaves c* alone. */
        public static Result nozzle(double factor, String note, Optional<Warning> warning) {
            return new Result(factor, 1, note, warning);
        }

        /** A loss of the nozzle, which leaves c* alone. */
        public static Result nozzle(double factor, String note) {
            return nozzle(factor, note, Optional.empty());
        }

        /** A loss of the combustor, which lowers impulse and c* alike. */
        public static Result combustor(double factor, String note) {
            return new Result(factor, factor, note, Optional.empty());
        }
    }
}

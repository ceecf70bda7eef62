package dev.penstock.chamber.loss;

import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.Optional;
import java.util.function.Supplier;

/** Computes one loss of a thrust chamber when the concept does not state its efficiency. */
public abstract class LossModel {

    /** A loss as a function of the size of the chamber, everything else the same. */
    @FunctionalInterface
    public interface OfSize {

        /**
         * @param drawing the wall at that size, of the same design and area ratio
         * @return impulse after over impulse before this loss, with its evidence
         */
        Result at(ContourBuilder.Drawing drawing);
    }

    private final LossKind kind;
    private final ModelCard card;

    /**
     * @param kind which loss it computes
     * @param card equation, source and range
     */
    protected LossModel(LossKind kind, ModelCard card) {
        this.kind = kind;
        this.card = card;
    }

    /** @return which loss it computes */
    public final LossKind kind() {
        return kind;
    }

    /** @return equation, source and range */
    public final ModelCard card() {
        return card;
    }

    /**
     * What does not change with size is worked out once, here; all of it, unless a model says otherwise.
     *
     * @param chamber chamber of any size
     * @return its loss over size
     */
    public OfSize ofSize(LossCase chamber) {
        Result same = evaluate(chamber);
        return drawing -> same;
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

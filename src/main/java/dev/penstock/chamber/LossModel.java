package dev.penstock.chamber;

import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.Optional;

/** Computes one loss of a thrust chamber when the concept does not state its efficiency. */
interface LossModel {

    /** @return which loss it computes */
    LossKind kind();

    /** @return equation, source and range */
    ModelCard card();

    /**
     * @param chamber chamber whose loss is wanted
     * @return impulse after over impulse before this loss, with its evidence
     */
    Result evaluate(LossCase chamber);

    /**
     * A loss factor and its evidence.
     *
     * @param factor impulse after over impulse before this loss (-)
     * @param note one line for the reader, may be empty text
     * @param warning present outside the model's fit
     */
    record Result(double factor, String note, Optional<Warning> warning) {

        public Result {
            Require.positive("loss", "factor (-)", factor);
        }

        static Result of(double factor, String note) {
            return new Result(factor, note, Optional.empty());
        }
    }
}

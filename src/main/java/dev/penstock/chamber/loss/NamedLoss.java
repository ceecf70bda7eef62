package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.LossKind;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.Optional;

/**
 * One step from the ideal to the delivered specific impulse.
 *
 * @param kind which loss of the chamber; empty for what the engine loses beside it
 * @param name name of the loss
 * @param factor impulse after over impulse before this loss (-)
 * @param impulseLoss vacuum impulse lost in this step, in the order of the list (m/s)
 * @param model the model that gave the factor; empty if the concept stated it
 * @param note what the reader must know, may be empty text
 */
public record NamedLoss(
        Optional<LossKind> kind,
        String name,
        double factor,
        double impulseLoss,
        Optional<ModelCard> model,
        LossNote note) {

    public NamedLoss {
        Require.positive(name, "factor (-)", factor);
        Require.finite(name, "impulse loss (m/s)", impulseLoss);
    }
}

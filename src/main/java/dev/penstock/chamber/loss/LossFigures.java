package dev.penstock.chamber.loss;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;

/** What a loss publishes. */
public final class LossFigures {

    /** Figures of a loss. */
    public static final FigureTable<NamedLoss> ALL = FigureTable.named(NamedLoss::name)
            .word("name", "loss", NamedLoss::name)
            .number("factor", "factor", Notation.significant("", 5), NamedLoss::factor)
            .number(
                    "impulse_loss_m_s",
                    "impulse lost",
                    new Notation("m/s", "s", velocity -> Notation.fixed(velocity / Constants.STANDARD_GRAVITY, 2)),
                    NamedLoss::impulseLoss)
            .word("model", "model id", loss -> loss.model().map(ModelCard::id))
            .word("note", "note", NamedLoss::note)
            .word("model_title", "model", loss -> loss.model()
                    .map(ModelCard::title)
                    .orElse("stated by the concept"))
            .outsideDocuments()
            .word("source", "source", loss -> loss.model().map(ModelCard::sources))
            .outsideDocuments()
            .table();

    private LossFigures() {}
}

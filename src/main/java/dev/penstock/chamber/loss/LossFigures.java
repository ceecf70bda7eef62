package dev.penstock.chamber.loss;

import static dev.penstock.provenance.Place.Role.BEFORE;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.values;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import java.util.List;

/** What a loss publishes. */
public final class LossFigures {

    /** How losses add up to what is delivered. */
    public static final ModelCard DELIVERED = new ModelCard(
            "chamber.delivered",
            "Delivered performance",
            "c* = c*_ideal Π factors on c*; C_F = C_F,ideal Π factors on C_F; F = ṁ c* C_F",
            "losses small against the whole",
            "about 1 % of specific impulse",
            List.of("nasa-sp-125"));

    /** Figures of a loss. */
    public static final FigureTable<NamedLoss> ALL = FigureTable.named(NamedLoss::name)
            .word("name", "loss", NamedLoss::name)
            .number("factor", "factor", Notation.significant("", 5), NamedLoss::factor)
            .from((loss, at) -> loss.model()
                    .map(model -> Origin.of(model, values(BEFORE).paths(at), given().paths(at)))
                    .orElseGet(() -> Origin.given("stated by the concept", "concept file, efficiencies")))
            .number(
                    "impulse_loss_m_s",
                    "impulse lost",
                    new Notation("m/s", "s", velocity -> Notation.fixed(velocity / Constants.STANDARD_GRAVITY, 2)),
                    NamedLoss::impulseLoss)
            .by(DELIVERED, own("factor"), values(BEFORE))
            .word("model", "model id", loss -> loss.model().map(ModelCard::id))
            .word("note", "note", loss -> loss.note().toString())
            .word("model_title", "model", loss -> loss.model()
                    .map(ModelCard::title)
                    .orElse("stated by the concept"))
            .outsideDocuments()
            .word("source", "source", loss -> loss.model().map(ModelCard::sources))
            .outsideDocuments()
            .table();

    private LossFigures() {}
}

package dev.penstock.turbomachinery.mass;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import dev.penstock.turbomachinery.shaft.TurbopumpMass;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Kind of a part of an engine, with the model of its mass and how far built parts scatter about it. */
public enum MassPart {
    CHAMBER(ChamberMass.CARD, new Spread(1.5 / 1.8, 1, 2.5 / 1.8), EngineMassModel.COMMON),
    EXTENSION(ChamberMass.CARD, new Spread(0.75, 1, 1.5), EngineMassModel.COMMON),
    INJECTOR(ChamberMass.CARD, new Spread(0.5, 1, 1.8), EngineMassModel.COMMON),
    TURBOPUMP(TurbopumpMass.CARD, TurbopumpMass.SCATTER, "humble-1995"),
    BURNER(EngineMassModel.CARD, new Spread(0.5, 1, 1.7), EngineMassModel.COMMON),
    LINE(EngineMassModel.CARD, new Spread(0.6, 1, 1.6), EngineMassModel.COMMON),
    VALVE(EngineMassModel.CARD, new Spread(0.5, 1, 1.6), EngineMassModel.COMMON),
    GIMBAL(EngineMassModel.CARD, new Spread(0.5, 1, 1.7), EngineMassModel.COMMON),
    DUCT(DuctMass.CARD, new Spread(0.5, 1, 2), EngineMassModel.COMMON),
    FRAME(ThrustFrame.CARD, new Spread(0.5, 1, 2), EngineMassModel.COMMON),
    REST(EngineMassModel.CARD, new Spread(0.5, 1, 1.6), "docs/validation/ratings.md"),
    /** What all parts of an engine miss together: the discrepancy of the sum, by the residuals of built engines (decision 0163). */
    ENGINE(EngineMassModel.CARD, new Spread(1 / 1.4, 1, 1.4), "docs/validation/bands.md"),
    /** Its scatter comes with the specific powers of motor, inverter and battery. */
    ELECTRIC(ElectricDrive.CARD, Spread.exactly(1), EngineMassModel.COMMON),
    /** A whole engine by one relation. */
    WHOLE(WholeEngineRelations.CARD, Spread.exactly(1), EngineMassModel.COMMON);

    private final ModelCard card;
    private final Spread scatter;
    private final String source;

    MassPart(ModelCard card, Spread scatter, String source) {
        this.card = card;
        this.scatter = scatter;
        this.source = source;
    }

    /** @return model of its mass */
    public ModelCard card() {
        return card;
    }

    /** @return mass of built parts over what the model gives (-) */
    public Spread scatter() {
        return scatter;
    }

    /** @return factor on its mass, for who knows a part better than the model */
    public Input<Double> factor() {
        return Input.ratio(
                        name().toLowerCase(Locale.ROOT) + "_factor",
                        Range.of(0.05, 20),
                        "Mass of this kind of part over what the model gives")
                .usual(Usual.of(scatter, "the model as it stands, " + card.id() + "; scatter of built parts", source));
    }

    /** @return the parts whose mass a concept may scale: those with a scatter of their own */
    public static List<MassPart> scaled() {
        return Arrays.stream(values()).filter(p -> p.scatter.low() < 1).toList();
    }

    /** @return those of {@link #scaled()} that are parts of an engine, not all of it */
    public static List<MassPart> parts() {
        return scaled().stream().filter(p -> p != ENGINE).toList();
    }

    /** @return the factor of every scaled part, as a table of a concept file */
    public static InputGroup group() {
        return InputGroup.table(
                "mass",
                "Factors on the masses of parts",
                scaled().stream().map(MassPart::factor).toArray(Input<?>[]::new));
    }
}

package dev.penstock.chamber.loss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.Designs;
import dev.penstock.chamber.Mixtures;
import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Identity: a loss worked out at one size and asked for at another is that of a chamber of the other size. */
class LossOfSizeTest {

    private static final double AREA_RATIO = 30;
    private static final double THROAT_RADIUS = 0.08;

    /** The second chamber has no cylinder; the third is so short that the layer starts at the injector where it is larger. */
    @ParameterizedTest
    @CsvSource({"2.5, 1.2", "2.5, 0.1", "1.3, 0.1"})
    void aLossOfSizeIsThatOfAChamberOfTheSize(double contraction, double characteristicLength) {
        CombustorDesign combustor = Designs.combustor(contraction, characteristicLength);
        LossCase first = chamber(combustor, THROAT_RADIUS);
        for (LossModel model : new LossModel[] {new BoundaryLayerLoss(), new KineticsLoss(), new TwoPhaseLoss()}) {
            LossModel.OfSize loss = model.ofSize(first);
            for (double size : new double[] {0.0001, 0.002, 0.3, 0.97, 1, 1.25, 8}) {
                LossCase other = chamber(combustor, size * THROAT_RADIUS);
                assertThat(loss.at(other.drawing()).factor())
                        .as("%s at %s", model.kind(), size)
                        .isCloseTo(model.evaluate(other).factor(), within(1e-10));
            }
        }
    }

    private static LossCase chamber(CombustorDesign combustor, double throatRadius) {
        Reactants reactants = Mixtures.mix(Mixtures.named("O2"), Mixtures.named("CH4"), 3.4);
        NozzleFlow nozzle = Mixtures.nozzle(reactants);
        NozzleDesign bell = Designs.bell(AREA_RATIO);
        ChamberDesign design = new ChamberDesign(7e6, combustor, bell, ExpansionMode.SHIFTING, Efficiencies.MODELLED);
        Expansion expansion = nozzle.expand(reactants, design.chamberPressure(), ExpansionMode.SHIFTING);
        IdealExpansion ideal = expansion.toAreaRatio(AREA_RATIO);
        return new LossCase(
                design,
                Injection.of(reactants),
                ideal,
                expansion.profile(AREA_RATIO),
                ContourBuilder.draw(combustor, bell, AREA_RATIO, throatRadius),
                nozzle.solver(),
                new NearLosses());
    }
}

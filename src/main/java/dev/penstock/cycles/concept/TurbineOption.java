package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import java.util.OptionalDouble;

/**
 * A turbine of a concept.
 *
 * @param pressureRatio inlet total over exit static pressure (-); empty if the balance is to find it
 * @param bypass share of the gas before it that passes by it (-)
 * @param design what else the concept fixes
 */
public record TurbineOption(OptionalDouble pressureRatio, double bypass, TurbineDesign design) {

    public TurbineOption {
        pressureRatio.ifPresent(r -> Require.within("turbine", "pressure ratio (-)", r, 1.001, 200));
        Require.within("turbine", "bypass (-)", bypass, 0, 0.9);
    }

    /** @return the same turbine with another design */
    TurbineOption with(TurbineDesign other) {
        return new TurbineOption(pressureRatio, bypass, other);
    }

    /** @return the same turbine, whose pressure ratio the balance is to find */
    public TurbineOption open() {
        return new TurbineOption(OptionalDouble.empty(), bypass, design);
    }
}

package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import java.util.OptionalDouble;

/**
 * A turbine of a concept.
 *
 * @param pressureRatio inlet total over exit static pressure (-); empty if the balance is to find it
 * @param design what else the concept fixes
 */
public record TurbineOption(OptionalDouble pressureRatio, TurbineDesign design) {

    public TurbineOption {
        pressureRatio.ifPresent(r -> Require.within("turbine", "pressure ratio (-)", r, 1.001, 200));
    }
}

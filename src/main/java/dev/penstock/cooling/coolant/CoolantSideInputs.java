package dev.penstock.cooling.coolant;

import dev.penstock.input.Input;
import dev.penstock.input.Usual;

/** What a file may say of how heat reaches the coolant. */
public final class CoolantSideInputs {

    public static final Input<CoolantSideDesign.Correlation> CORRELATION = Input.choice(
                    "correlation", CoolantSideDesign.Correlation.class, "Correlation of heat transfer to the coolant")
            .usual(Usual.of(CoolantSideDesign.Correlation.AUTOMATIC, "by coolant and state", ""));
    public static final Input<Boolean> CURVATURE = Input.flag(
                    "curvature", "Whether the curvature of the throat raises friction and heat transfer")
            .usual(Usual.of(true, "curvature of the throat taken along", ""));
    public static final Input<Boolean> ROUGH_WALL = Input.flag(
                    "rough_wall", "Whether roughness raises heat transfer along with friction")
            .usual(Usual.of(true, "what rubs stirs: pipes of one roughness for both", "norris-1970, from memory"));

    private CoolantSideInputs() {}
}

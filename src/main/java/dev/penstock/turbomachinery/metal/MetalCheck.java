package dev.penstock.turbomachinery.metal;

import dev.penstock.errors.Require;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part with the oxygen and hydrogen that it meets, and the published tests of its metal.
 *
 * @param name name of the part for people
 * @param station number of the station whose state it meets
 * @param metal family of its metal
 * @param medium what it meets
 * @param pressure absolute pressure (Pa)
 * @param temperature temperature of the medium (K)
 * @param oxygenFraction mole fraction of oxygen (-); empty if the composition is not known
 * @param hydrogenFraction mole fraction of hydrogen (-); empty if the composition is not known
 */
public record MetalCheck(
        String name,
        int station,
        AlloyFamily metal,
        String medium,
        double pressure,
        double temperature,
        OptionalDouble oxygenFraction,
        OptionalDouble hydrogenFraction) {

    /** Less of a gas than this is none (-). */
    private static final double TRACE = 1e-3;

    /** Mole fraction of hydrogen above which a gas is one of hydrogen: that of fuels with carbon has half of it at most. */
    private static final double MOSTLY = 0.6;

    public MetalCheck {
        Require.positive(name, "pressure (Pa)", pressure);
        Require.positive(name, "temperature (K)", temperature);
    }

    /** @return whether it meets warm oxygen or hydrogen, or gas of unknown composition */
    public boolean concerned() {
        return !known() || oxygenPressure().isPresent() || hydrogenPressure().isPresent();
    }

    /** @return whether the composition of what it meets is known */
    public boolean known() {
        return oxygenFraction.isPresent() && hydrogenFraction.isPresent();
    }

    /** @return partial pressure of warm oxygen (Pa); empty if there is none, it is cold or not known */
    public OptionalDouble oxygenPressure() {
        return partial(oxygenFraction, PromotedCombustion.COLDEST);
    }

    /** @return partial pressure of warm hydrogen (Pa); empty if there is none, it is cold or not known */
    public OptionalDouble hydrogenPressure() {
        return partial(hydrogenFraction, HydrogenEmbrittlement.COLDEST);
    }

    private OptionalDouble partial(OptionalDouble fraction, double coldest) {
        return fraction.orElse(0) > TRACE && temperature >= coldest
                ? OptionalDouble.of(fraction.getAsDouble() * pressure)
                : OptionalDouble.empty();
    }

    /** @return the test in oxygen that decides; empty without warm oxygen or without a test */
    public Optional<AlloyFamily.OxygenTest> oxygenTest() {
        return oxygenPressure().isPresent() ? metal.leastInOxygen() : Optional.empty();
    }

    /** @return the test in hydrogen that decides; empty without warm hydrogen or without a test */
    public Optional<AlloyFamily.HydrogenTest> hydrogenTest() {
        return hydrogenPressure().isPresent()
                ? metal.weakestInHydrogen(hydrogenPressure().getAsDouble())
                : Optional.empty();
    }

    /** @return partial pressure of oxygen over the threshold (-), see {@link PromotedCombustion} */
    public OptionalDouble overThreshold() {
        return oxygenTest()
                .map(test -> OptionalDouble.of(
                        PromotedCombustion.ratio(test, oxygenPressure().orElseThrow())))
                .orElse(OptionalDouble.empty());
    }

    /** @return notched strength over that without hydrogen (-), see {@link HydrogenEmbrittlement} */
    public OptionalDouble strengthRatio() {
        return hydrogenTest()
                .map(test -> OptionalDouble.of(HydrogenEmbrittlement.strengthRatio(
                        test, hydrogenPressure().orElseThrow())))
                .orElse(OptionalDouble.empty());
    }

    /** @return whether it may burn after all: it burnt on in the test, and hot gas may lower the threshold so far */
    boolean nearBurning() {
        double over = overThreshold().orElse(0);
        return over <= 1
                && over > 1 / PromotedCombustion.HOT
                && oxygenTest().orElseThrow().burnt();
    }

    /** @return what became of it, for people */
    public String verdict() {
        if (!known()) {
            return "composition not known, not judged";
        }
        if (oxygenPressure().isPresent() && oxygenTest().isEmpty()) {
            return "no test in oxygen held";
        }
        if (hydrogenPressure().isPresent() && hydrogenTest().isEmpty()) {
            return "no test in hydrogen held";
        }
        if (overThreshold().orElse(0) > 1) {
            return oxygenTest().orElseThrow().burnt() ? "BURNS ON" : "ABOVE WHAT WAS TRIED";
        }
        if (nearBurning()) {
            return "may burn on: hot gas lowers the threshold";
        }
        return strengthRatio().isPresent()
                ? "embrittlement "
                        + HydrogenEmbrittlement.HarmClass.of(strengthRatio().getAsDouble())
                                .title()
                : "bears it";
    }

    /** @return the tests that decide, with their sources; empty text if none does */
    public String source() {
        StringBuilder text = new StringBuilder();
        oxygenTest()
                .ifPresent(t ->
                        text.append("oxygen, ").append(t.alloy()).append(": ").append(t.source()));
        hydrogenTest().ifPresent(t -> text.append(text.isEmpty() ? "" : "; ")
                .append("hydrogen, ")
                .append(t.alloy())
                .append(": ")
                .append(t.source()));
        return text.toString();
    }

    /** @return what is usual of the metal where it is, in words */
    public String note() {
        double hydrogen = hydrogenPressure().orElse(0);
        if (oxygenPressure().orElse(0) > hydrogen) {
            return metal.inOxygen();
        }
        return hydrogen > MOSTLY * pressure ? metal.inHydrogen() : metal.inFuelGas();
    }
}

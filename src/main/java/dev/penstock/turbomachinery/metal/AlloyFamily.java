package dev.penstock.turbomachinery.metal;

import dev.penstock.errors.Require;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Alloys that behave alike in oxygen and hydrogen, with the published tests of them.
 *
 * @param id what a concept writes
 * @param name name for people
 * @param inOxygen what is usual of it in oxygen, in words
 * @param inHydrogen what is usual of it in hydrogen, in words
 * @param inFuelGas what is usual of it in fuels with carbon and their gas, in words
 * @param oxygen tests in oxygen; none if none is held
 * @param hydrogen tests in hydrogen; none if none is held
 */
public record AlloyFamily(
        String id,
        String name,
        String inOxygen,
        String inHydrogen,
        String inFuelGas,
        List<OxygenTest> oxygen,
        List<HydrogenTest> hydrogen) {

    /**
     * Promoted combustion of a rod in still oxygen at room temperature.
     *
     * @param alloy what was tested
     * @param threshold least pressure at which it burnt on, or the highest tried (Pa)
     * @param burnt whether it burnt on there; if not, the threshold is only what was tried
     * @param source where that comes from
     */
    public record OxygenTest(String alloy, double threshold, boolean burnt, String source) {

        public OxygenTest {
            Require.positive(alloy, "threshold (Pa)", threshold);
        }
    }

    /**
     * Notched tensile test in hydrogen at room temperature.
     *
     * @param alloy what was tested
     * @param strengthRatio strength over that in helium (-)
     * @param pressure pressure of the hydrogen (Pa)
     * @param source where that comes from
     */
    public record HydrogenTest(String alloy, double strengthRatio, double pressure, String source) {

        public HydrogenTest {
            Require.positive(alloy, "strength ratio (-)", strengthRatio);
            Require.positive(alloy, "pressure (Pa)", pressure);
        }
    }

    public AlloyFamily {
        oxygen = List.copyOf(oxygen);
        hydrogen = List.copyOf(hydrogen);
    }

    /** @return the alloy that burns on at the least pressure; empty if no test is held */
    public Optional<OxygenTest> leastInOxygen() {
        return oxygen.stream().min(Comparator.comparingDouble(OxygenTest::threshold));
    }

    /**
     * @param pressure partial pressure of hydrogen (Pa)
     * @return the alloy that is weakest there; empty if no test is held
     */
    public Optional<HydrogenTest> weakestInHydrogen(double pressure) {
        return hydrogen.stream()
                .min(Comparator.comparingDouble(test -> HydrogenEmbrittlement.strengthRatio(test, pressure)));
    }
}

package dev.penstock.turbomachinery.metal;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every part of an engine that meets warm oxygen, hydrogen or gas with them.
 *
 * @param parts the parts, in the order of the arrangement
 */
public record MetalReport(List<MetalCheck> parts) {

    private static final double HOT = 350;

    public MetalReport {
        parts = parts.stream().filter(MetalCheck::concerned).toList();
    }

    /** @return the part nearest to burning on; empty if none meets warm oxygen with a test held */
    public Optional<MetalCheck> nearestToBurning() {
        return parts.stream()
                .filter(part -> part.overThreshold().isPresent())
                .max(Comparator.comparingDouble(part -> part.overThreshold().getAsDouble()));
    }

    /** @return the part that hydrogen weakens most; empty if none meets warm hydrogen with a test held */
    public Optional<MetalCheck> weakest() {
        return parts.stream()
                .filter(part -> part.strengthRatio().isPresent())
                .min(Comparator.comparingDouble(part -> part.strengthRatio().getAsDouble()));
    }

    /** @return the limits of the parts that are nearest to theirs */
    public List<LimitCheck> limits() {
        List<LimitCheck> limits = new ArrayList<>();
        nearestToBurning()
                .ifPresent(part -> limits.add(LimitCheck.atMost(
                        MetalLimit.OXYGEN_OVER_THRESHOLD,
                        MetalLimit.OWNER,
                        part.overThreshold().orElseThrow(),
                        1,
                        "",
                        part.name() + ", " + part.source())));
        weakest()
                .ifPresent(part -> limits.add(LimitCheck.atLeast(
                        MetalLimit.STRENGTH_IN_HYDROGEN,
                        MetalLimit.OWNER,
                        part.strengthRatio().orElseThrow(),
                        HydrogenEmbrittlement.LEAST,
                        "",
                        part.name() + ", " + part.source())));
        return limits;
    }

    /** @return what the reader must know; those that may turn a limit first */
    public List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        for (MetalCheck part : parts) {
            untested(part).ifPresent(warnings::add);
        }
        nearestToBurning().filter(MetalCheck::nearBurning).ifPresent(part -> warnings.add(near(part)));
        weakest()
                .filter(part -> part.strengthRatio().orElseThrow() < HydrogenEmbrittlement.DOUBTFUL)
                .ifPresent(part -> warnings.add(weak(part)));
        boolean hot = parts.stream().anyMatch(part -> part.oxygenPressure().isPresent() && part.temperature() > HOT);
        if (hot) {
            warnings.add(warning(
                            PromotedCombustion.CARD,
                            "thresholds in oxygen are of rods at room temperature; hot streaming gas, thin edges and rubs"
                                    + " lower them, by an unpublished factor (%.0f is taken)",
                            PromotedCombustion.HOT)
                    .asAside());
        }
        return warnings;
    }

    private static Optional<Warning> untested(MetalCheck part) {
        boolean oxygen = part.oxygenPressure().isPresent() && part.oxygenTest().isEmpty();
        boolean hydrogen =
                part.hydrogenPressure().isPresent() && part.hydrogenTest().isEmpty();
        return oxygen || hydrogen
                ? Optional.of(warning(
                        oxygen ? PromotedCombustion.CARD : HydrogenEmbrittlement.CARD,
                        "%s: no test of %s %s is held, so nothing says that it bears it",
                        part.name(),
                        part.metal().id(),
                        oxygen ? "in oxygen" : "in hydrogen"))
                : Optional.empty();
    }

    private static Warning near(MetalCheck part) {
        AlloyFamily.OxygenTest test = part.oxygenTest().orElseThrow();
        return warning(
                PromotedCombustion.CARD,
                "%s: %s meets %.3g MPa of oxygen at %.0f K, and %s burns on from %.3g MPa at room temperature; hot gas"
                        + " may halve that",
                part.name(),
                part.metal().id(),
                part.oxygenPressure().orElseThrow() / 1e6,
                part.temperature(),
                test.alloy(),
                test.threshold() / 1e6);
    }

    private static Warning weak(MetalCheck part) {
        double ratio = part.strengthRatio().orElseThrow();
        return warning(
                HydrogenEmbrittlement.CARD,
                "%s: %s keeps %.0f %% of its notched strength in %.3g MPa of hydrogen (class %s); plate it, or show by"
                        + " fracture mechanics that it bears it",
                part.name(),
                part.metal().id(),
                100 * ratio,
                part.hydrogenPressure().orElseThrow() / 1e6,
                HydrogenEmbrittlement.HarmClass.of(ratio).title());
    }

    private static Warning warning(ModelCard model, String sentence, Object... values) {
        return new Warning(model.id(), String.format(Locale.ROOT, sentence, values));
    }
}

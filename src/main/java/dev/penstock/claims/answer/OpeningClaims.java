package dev.penstock.claims.answer;

import dev.penstock.claims.figure.Candidate;
import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.prior.MainUnknowns;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.input.InputKind;
import dev.penstock.input.InputValue;
import dev.penstock.quantities.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Writes a claims file about a balanced engine, to begin with: its cycle and propellants, what its concept states as certain, and a few
 * of its figures as claims. What every judgement seeks is claimed and not certain, so that there is something to judge. The mirror of
 * {@link BestConcept}.
 */
public final class OpeningClaims {

    /** What is seen of an engine from outside, and what a judgement seeks. */
    private static final List<String> FIGURES = List.of(
            "engine.isp_vacuum", "engine.chamber_pressure", "engine.mixture_ratio", "engine.area_ratio", "engine.mass");

    /** What has a table of its own in a claims file. */
    private static final Set<String> PROPELLANTS = Arrays.stream(Side.values())
            .map(side -> new FeedInputs(side).propellantPath())
            .collect(Collectors.toUnmodifiableSet());

    private OpeningClaims() {}

    /**
     * @param balance balanced engine
     * @return text of a claims file
     */
    public static String of(EngineBalance balance) {
        Concept concept = balance.concept();
        StringBuilder text = new StringBuilder();
        List<String> left = new ArrayList<>();
        StringBuilder given = new StringBuilder("\n[given]\n");
        for (InputValue input : concept.document().inputs()) {
            String key = input.key();
            if (!input.given() || !key.contains(".") || PROPELLANTS.contains(key)) {
                continue;
            }
            if (ClaimPaths.input(key).isEmpty() || ClaimPaths.ofVehicle(key)) {
                left.add(key);
            } else if (!MainUnknowns.sought(key)) {
                input.toml().ifPresent(value -> given.append(quoted(key))
                        .append(" = ")
                        .append(value)
                        .append('\n'));
            }
        }
        text.append("# Begun from the estimate of ")
                .append(plain(concept.name()))
                .append(".\n");
        if (!left.isEmpty()) {
            text.append("# Left out, since no claim can be certain of it: ")
                    .append(plain(String.join(", ", left)))
                    .append(".\n");
        }
        text.append("name = ").append(quoted("About " + concept.name())).append('\n');
        text.append("cycle = ").append(quoted(concept.cycle().id())).append("\n\n[propellants]\n");
        text.append("oxidizer = ").append(quoted(concept.oxidizer().id())).append('\n');
        text.append("fuel = ").append(quoted(concept.fuel().id())).append('\n');
        FIGURES.forEach(path -> written(path, balance).ifPresent(value -> text.append("\n[claims.")
                .append(quoted(path))
                .append("]\nvalue = ")
                .append(quoted(value))
                .append("\nwithin = ")
                .append(quoted(Math.round(100 * Claim.USUAL_SHARE) + " %"))
                .append("\nsource = ")
                .append(quoted("estimate of " + concept.name()))
                .append('\n')));
        return text.append(given).toString();
    }

    private static Optional<String> written(String path, EngineBalance balance) {
        ClaimFigure figure = ClaimPaths.figure(path).orElseThrow();
        OptionalDouble value = figure.of().apply(new Candidate(balance, Optional.empty(), Optional.empty()));
        return value.isPresent()
                ? Optional.of(UnitSystem.METRIC.reading(() -> figure.notation().writeWithUnit(value.getAsDouble())))
                : Optional.empty();
    }

    private static String quoted(String text) {
        return new InputKind.Text().toml(plain(text));
    }

    /** On one line. */
    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }
}

package dev.penstock.study.space;

import dev.penstock.errors.InvalidInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Units;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a constraint as people write it. */
final class ConstraintText {

    private static final Pattern BOUND = Pattern.compile("(.+?)\\s*(<=|>=|≤|≥)\\s*(.+)");
    private static final Pattern NUMBER = Pattern.compile("[-+\\d.eE_]+");
    private static final String ALLOWED = "write FIGURE<=VALUE or FIGURE>=VALUE, the value in SI or with its unit, for"
            + " example \"cooling.peak_wall_temperature_K<=900\", or within_limits";

    private ConstraintText() {}

    static Constraint read(String text, CasePaths paths) {
        String option = "--subject-to";
        if (text.strip().equals(CaseFigures.WITHIN_LIMITS)) {
            return Constraint.withinLimits();
        }
        Matcher matcher = BOUND.matcher(text.strip());
        if (!matcher.matches()) {
            throw new InvalidInput("", option, text, ALLOWED);
        }
        StudyFigure figure = paths.figure(option, matcher.group(1));
        if (figure.path().equals(CaseFigures.WITHIN_LIMITS)) {
            throw new InvalidInput(
                    "", option, text, "all limits are kept or not: write within_limits alone, without a bound");
        }
        boolean atMost = matcher.group(2).equals("<=") || matcher.group(2).equals("≤");
        String unit = figure.notation().siUnit();
        double bound = number(matcher.group(3), unit)
                .orElseThrow(() -> new InvalidInput(
                        "",
                        option,
                        text,
                        unit.isEmpty()
                                ? "the bound is a plain number"
                                : "the bound is a number in " + unit + ", or one with a unit of that kind"));
        return new Constraint(figure, atMost, bound);
    }

    private static Optional<Double> number(String text, String unit) {
        Optional<Double> plain = Units.parse(text, Dimension.RATIO)
                .filter(v -> NUMBER.matcher(text).matches());
        return plain.isPresent()
                ? plain
                : Arrays.stream(Dimension.values())
                        .filter(d -> d.siUnit().equals(unit) && !unit.isEmpty())
                        .map(d -> Units.parse(text, d))
                        .flatMap(Optional::stream)
                        .findFirst();
    }
}

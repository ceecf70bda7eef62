package dev.penstock.app;

import dev.penstock.app.options.OptionReader;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.cost.CostTerms;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** What is asked of the effort of a launch. */
final class CostOption {

    @Option(
            names = "--cost",
            description =
                    "instead show the effort of a launch in work-years with the first stage lost and brought back, and from"
                            + " how many flights coming back pays: the weakest numbers of all")
    private boolean asked;

    @Option(
            names = "--uses",
            paramLabel = "COUNT",
            description = "with --cost: flights of a stage that comes back; " + CostTerms.USES + " if not stated")
    private Optional<String> uses = Optional.empty();

    @Option(
            names = "--refurbishment",
            paramLabel = "SHARE",
            description = "with --cost: effort between two flights over that of building the stage; "
                    + CostTerms.USUAL_REFURBISHMENT
                    + ", a third to three times that as band, if not stated")
    private Optional<String> refurbishment = Optional.empty();

    @Option(
            names = "--launches-per-year",
            paramLabel = "COUNT",
            description = "with --cost: launches of a year in a run of ten years; " + CostTerms.LAUNCHES_PER_YEAR
                    + " if not stated")
    private Optional<String> launches = Optional.empty();

    @Option(
            names = "--learning",
            paramLabel = "SLOPE",
            description = "with --cost: effort of the doubled number built over that of the number; "
                    + CostTerms.LEARNING + " if not stated")
    private Optional<String> learning = Optional.empty();

    /** Whether the effort is asked for. */
    boolean asked() {
        return asked;
    }

    /** What is asked; problems are noted in the reader. */
    CostTerms terms(OptionReader reader) {
        double flights = value(reader, "--uses", uses, Range.of(1, 1000)).orElse(CostTerms.USES);
        if (flights != Math.rint(flights)) {
            reader.problem("--uses", uses.orElseThrow(), "write a whole number of flights");
        }
        OptionalDouble share = value(reader, "--refurbishment", refurbishment, Range.of(0.001, 2));
        double perYear = value(reader, "--launches-per-year", launches, Range.of(0.1, 1000))
                .orElse(CostTerms.LAUNCHES_PER_YEAR);
        double slope = value(reader, "--learning", learning, Range.of(0.5, 1)).orElse(CostTerms.LEARNING);
        Spread band = share.isPresent()
                ? CostTerms.REFURBISHMENT.times(share.getAsDouble() / CostTerms.USUAL_REFURBISHMENT)
                : CostTerms.REFURBISHMENT;
        return new CostTerms((int) flights, band, perYear, CostTerms.YEARS, slope);
    }

    private OptionalDouble value(OptionReader reader, String option, Optional<String> text, Range allowed) {
        if (text.isPresent() && !asked) {
            reader.problem(option, text.get(), "it needs --cost");
        }
        return reader.optional(option, text, Dimension.RATIO, allowed);
    }
}

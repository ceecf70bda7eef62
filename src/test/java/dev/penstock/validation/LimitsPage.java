package dev.penstock.validation;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.SearchFailed;
import dev.penstock.fluids.FluidLibrary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What {@code limit} says of engines that flew, given how they are built, for docs/validation/limits.md. */
final class LimitsPage {

    /** Ratio of reach to what flew that the median is aimed to lie in, and the least that any is aimed at (-). */
    private static final double LOW = 0.9;

    private static final double HIGH = 1.3;
    private static final double LEAST = 0.8;

    /** What the binding limit is worth, in words, by engine. */
    private static final Map<String, String> JUDGEMENT = LimitJudgements.ALL;

    /**
     * A row of the table of technology with the row of the table of engines that it belongs to.
     *
     * @param flown chamber pressure that flew
     * @param engine the rest that the question needs
     */
    record Case(FlownTechnology flown, PublishedEngine engine) {

        String concept() {
            boolean cooled = !engine.cycle().equals("pressure-fed");
            return String.format(
                    Locale.ROOT,
                    "name = \"%s\"%ncycle = \"%s\"%ntechnology = \"%s\"%n[propellants]%noxidizer = \"%s\"%nfuel = \"%s\"%n"
                            + "mixture_ratio = %s%n[engine]%nthrust_vacuum = \"%s kN\"%nchamber_pressure = \"%s MPa\"%n"
                            + "chambers = %d%n[nozzle]%narea_ratio = %s%n%s",
                    engine.name(),
                    engine.cycle(),
                    flown.level().orElseThrow().word(),
                    engine.oxidizer(),
                    engine.fuel(),
                    engine.text("mixture_ratio"),
                    engine.text("thrust_vac_kN"),
                    flown.text("chamber_pressure_MPa"),
                    engine.chambers(),
                    engine.text("expansion_ratio"),
                    cooled ? "[cooling]\ncoolant = \"fuel\"\n" : "");
        }
    }

    /**
     * What came out.
     *
     * @param question the case
     * @param reach highest chamber pressure within limits (MPa); empty if none was found
     * @param binding the limit that ends it, or why there is no answer
     */
    record Row(Case question, OptionalDouble reach, String binding) {

        double flown() {
            return question.flown().number("chamber_pressure_MPa").orElseThrow();
        }

        OptionalDouble ratio() {
            return reach.isPresent() ? OptionalDouble.of(reach.getAsDouble() / flown()) : OptionalDouble.empty();
        }

        /** Highest pressure that flew or was tested of the same level, cycle and propellants (MPa). */
        double kind() {
            return FlownTechnology.all().stream()
                    .filter(f -> f.level().equals(question.flown().level()))
                    .filter(f -> List.of("cycle", "oxidizer", "fuel").stream()
                            .allMatch(c -> f.text(c).equals(question.flown().text(c))))
                    .flatMapToDouble(f -> f.number("chamber_pressure_MPa").stream())
                    .max()
                    .orElseThrow();
        }

        OptionalDouble kindRatio() {
            return reach.isPresent() ? OptionalDouble.of(reach.getAsDouble() / kind()) : OptionalDouble.empty();
        }

        String line() {
            return String.format(
                            Locale.ROOT,
                            "| %s | %s | %s | %s/%s | %.2f | %s | %s | %.2f | %s | %s | %s |%n",
                            question.flown().engine(),
                            question.flown().level().orElseThrow().word(),
                            question.engine().cycle(),
                            question.engine().text("oxidizer"),
                            question.engine().text("fuel"),
                            flown(),
                            reach.isPresent() ? String.format(Locale.ROOT, "%.1f", reach.getAsDouble()) : "none",
                            shown(ratio()),
                            kind(),
                            shown(kindRatio()),
                            binding,
                            JUDGEMENT.getOrDefault(question.engine().name(), ""))
                    .replace("\r\n", "\n");
        }
    }

    private static String shown(OptionalDouble ratio) {
        return ratio.isPresent() ? String.format(Locale.ROOT, "%.2f", ratio.getAsDouble()) : "";
    }

    private static double median(List<Row> rows, Function<Row, OptionalDouble> ratio) {
        double[] ratios = rows.stream()
                .mapToDouble(row -> ratio.apply(row).orElse(0))
                .sorted()
                .toArray();
        return 0.5 * (ratios[(ratios.length - 1) / 2] + ratios[ratios.length / 2]);
    }

    private final EngineStudy study = EngineStudy.open();
    private final ConceptReader reader = new ConceptReader(FluidLibrary.open());

    /** Rows with enough data: a level, and an engine whose thrust, propellants, mixture and nozzle are in the other table. */
    static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (FlownTechnology flown : FlownTechnology.all()) {
            String name = flown.engine().replaceAll(" \\(.*", "");
            Optional<PublishedEngine> engine = PublishedEngine.all().stream()
                    .filter(e -> e.name().equals(name))
                    .filter(e -> e.lacking().isEmpty())
                    .findFirst();
            if (engine.isPresent() && flown.level().isPresent()) {
                cases.add(new Case(flown, engine.get()));
            }
        }
        return cases;
    }

    Row row(Case question) {
        try {
            LimitResult result = study.reach(reader.parse(question.engine().name(), question.concept(), Map.of()));
            return new Row(question, OptionalDouble.of(result.chamberPressure() / 1e6), result.bindingLimit());
        } catch (SearchFailed e) {
            OptionalDouble last = Double.isNaN(e.last()) ? OptionalDouble.empty() : OptionalDouble.of(e.last() / 1e6);
            return new Row(question, last, "at least that: nothing was computed beyond");
        } catch (PenstockException e) {
            return new Row(question, OptionalDouble.empty(), e.getMessage());
        }
    }

    /** The page from its rows. */
    static String text(List<Row> rows) {
        StringBuilder page = new StringBuilder(
                """
                # How far built engines could go

                Written by `LimitsPageTest`, whose long part runs with `-Dpenstock.limits.long=true`; with
                `-Dpenstock.docs.write=true` besides it writes the page anew. One row is computed in every build.

                For every row of `src/test/resources/validation/technology.csv` that belongs to a level of technology and to an engine
                of `engines.csv` with enough data: the highest chamber pressure within limits, from cycle, propellants, mixture ratio,
                thrust, number of chambers, area ratio and `technology` alone, with a jacket of fuel and everything else by default,
                against the pressure that flew. What flew was possible; that something did not fly does not make it impossible, so
                a ratio above one is no miss by itself. "Kind" is the highest that flew or was tested of the same level, cycle and
                propellants. The levels were set with these engines in view (decisions 0115, 0106 and 0172), none of
                their numbers by an engine's ratio.

                | engine | technology | cycle | propellants | flown MPa | reaches MPa | ratio | kind MPa | ratio | binds | judged |
                |---|---|---|---|--:|--:|--:|--:|--:|---|---|
                """);
        rows.forEach(row -> page.append(row.line()));
        double median = median(rows, Row::ratio);
        long low = rows.stream().filter(row -> row.ratio().orElse(0) < LEAST).count();
        page.append(String.format(
                        Locale.ROOT,
                        "%nMedian ratio %.2f over %d engines, where none counts as zero; aimed at is %.1f to %.1f: %s; against the highest of"
                                + " its kind %.2f. Below %.1f, though it flew: %d; aimed at is none: %s.%n",
                        median,
                        rows.size(),
                        LOW,
                        HIGH,
                        median >= LOW && median <= HIGH ? "met" : "missed",
                        median(rows, Row::kindRatio),
                        LEAST,
                        low,
                        low == 0 ? "met" : "missed")
                .replace("\r\n", "\n"));
        return page.toString();
    }
}

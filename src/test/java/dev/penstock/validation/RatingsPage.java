package dev.penstock.validation;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.provenance.LimitCheck;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Whether every built engine balances at its own rating, and within limits or not, for docs/validation/ratings.md. */
final class RatingsPage {

    /** Of a limit that is missed at a rating that flew: what is known of it. */
    private static final Map<String, String> KNOWN = Map.of(
            "J-2S",
            "it ran on the ground only; how thick its tubes were is not published, and the wall decides",
            "RD-0124",
            "soot thins with pressure, and chambers of 74 kN are hard to cool; its film is not known, 5 % of the fuel by its level here");

    /**
     * What came out.
     *
     * @param question the engine
     * @param balance it balanced at its rating
     */
    record Row(RatedEngine question, EngineBalance balance) {

        List<LimitCheck> missed() {
            return balance.limits().stream().filter(l -> !l.met()).toList();
        }

        String words() {
            return missed().isEmpty()
                    ? ""
                    : KNOWN.getOrDefault(question.engine().name(), "nothing known here that explains it");
        }

        String line() {
            PublishedEngine engine = question.engine();
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %s/%s | %s | %s | %s | %s | %.1f | %s | %s | %s |",
                    engine.name(),
                    engine.cycle(),
                    engine.text("oxidizer"),
                    engine.text("fuel"),
                    engine.shown("chamber_pressure_MPa"),
                    question.level(),
                    missed().isEmpty() ? "yes" : "no",
                    missed().stream().map(Row::told).collect(Collectors.joining("; ")),
                    balance.engine().vacuumIsp(),
                    off(balance.engine().vacuumIsp(), engine.published("isp_vac_s")),
                    off(balance.mass().total().mode(), engine.published("mass_kg")),
                    words());
        }

        private static String told(LimitCheck limit) {
            return String.format(
                    Locale.ROOT,
                    "%s %.4g%s, %s %.4g",
                    limit.name(),
                    limit.value(),
                    limit.unit().isEmpty() ? "" : " " + limit.unit(),
                    limit.upper() ? "at most" : "at least",
                    limit.limit());
        }

        private static String off(double computed, OptionalDouble published) {
            return published.isPresent()
                    ? String.format(Locale.ROOT, "%+.1f %%", 100 * (computed / published.getAsDouble() - 1))
                    : "";
        }
    }

    private final EngineStudy study = EngineStudy.open();
    private final ConceptReader reader = new ConceptReader(FluidLibrary.open());

    /** The engine balanced at its rating; what refuses it is thrown. */
    Row row(RatedEngine question) {
        return new Row(question, study.balance(reader.parse(question.engine().name(), question.concept(), Map.of())));
    }

    /** The page from its rows. */
    static String text(List<Row> rows) {
        StringBuilder page = new StringBuilder(
                """
                # Built engines at their ratings

                Written by `RatingsPageTest`; with `-Dpenstock.docs.write=true` it writes the page anew.

                Every row of `src/test/resources/validation/engines.csv` from which a concept can be written, through the whole balance at
                the chamber pressure that flew: cycle, propellants, mixture ratio, thrust, number of chambers, area ratio and turbine gas
                temperature as published, for dumped gas its pressure ratio, its level of technology where `technology.csv` has it, and of its machines and walls what the notes
                of the two tables say (`RatedEngine`); at the tank outlets of engines with pumps what their class has, 0.50 and 0.35 MPa on the
                ground, 0.28 and 0.23 MPa in flight. Everything else is the program's usual value; nothing is set to make an engine come
                out right. Impulse and mass are held against the published ones; an asterisk marks a pressure from memory.

                | engine | cycle | propellants | MPa | technology | within limits | misses | impulse s | off | mass off | known of it |
                |---|---|---|--:|---|---|---|--:|--:|--:|---|
                """);
        rows.forEach(row -> page.append(row.line()).append('\n'));
        long within = rows.stream().filter(r -> r.missed().isEmpty()).count();
        page.append(String.format(
                Locale.ROOT,
                "%nAll %d balance, %d of them within limits.%n%nNot here, since too little of them is published:%n%n",
                rows.size(),
                within));
        PublishedEngine.all().stream().filter(e -> e.lacking().isPresent()).forEach(e -> page.append("- ")
                .append(e.name())
                .append(": ")
                .append(e.lacking().orElseThrow())
                .append('\n'));
        page.append(
                """

                One engine is not put as it is built. Redstone A-7 drives its turbine with peroxide that it carries for that alone;
                here a generator burns its own propellants at the same temperature, which decides no limit. The film of Redstone A-7 is seen, its share is that of an
                engine of its time (`technology.csv`, V-2); those of the level with tubes and a storable fuel were chosen knowing LR-87.
                """);
        page.append(AimedMisses.text(rows));
        return page.toString().replace("\r\n", "\n");
    }
}

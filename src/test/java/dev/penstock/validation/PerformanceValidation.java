package dev.penstock.validation;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.Designs;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.InjectionState;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.quantities.Constants;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Computes the specific impulse of every published engine from its mixture ratio, chamber pressure, area ratio and thrust,
 * everything else by default, for {@code docs/validation/performance.md}.
 */
public final class PerformanceValidation {

    /** Published sea-level figures further than this from what the published vacuum figures imply are not compared. */
    private static final double CONTRADICTION = 0.05;

    /** The published 1667 °F of one of them; one value for all engines that burn hydrazines. */
    private static final String STORABLE_GENERATOR = "1180 K";

    /** Largest miss aimed at for a single engine (-). */
    static final double WORST = 0.03;

    /** Engines that miss their vacuum or sea-level figure by more than {@link #WORST}, and why. */
    static final Map<String, String> CAUSES = new TreeMap<>(
            Map.of(
                    "LR-87-AJ-7",
                    "its impulses are those of the AJ-5 and do not belong together: 259 s at sea level means 285 s in vacuum with a full "
                            + "nozzle of area ratio 8, not 297 s. The program agrees with the sea-level figure",
                    "YF-77",
                    "at sea level the computed flow leaves the wall before the exit, which leaves more thrust than a full nozzle; the "
                            + "published 310.2 s are within 2 % of the vacuum figure less p_a·A_e. The area ratio is from memory"));

    /** Engines whose impulse is not that of a cycle here, and why. */
    private static final Map<String, String> UNLIKE = Map.of(
            "Redstone A-7", "its turbine runs on peroxide carried for that alone, and its thrust holds that exhaust");

    private final FluidLibrary fluids = FluidLibrary.open(Path.of("").toAbsolutePath());
    private final SpeciesLibrary species = SpeciesLibrary.open(Path.of("").toAbsolutePath());
    private final EngineStudy study = EngineStudy.open(Path.of("").toAbsolutePath());
    private final ConceptReader reader = new ConceptReader(fluids);

    /**
     * One engine computed.
     *
     * @param engine published figures
     * @param vacuum specific impulse in vacuum (s)
     * @param seaLevel specific impulse at sea level (s)
     * @param chamber thrust chamber behind it
     * @param seaLevelComparable whether the published sea-level figure agrees with the published vacuum figures
     */
    record Row(
            PublishedEngine engine,
            double vacuum,
            double seaLevel,
            ChamberPerformance chamber,
            boolean seaLevelComparable) {

        double vacuumError() {
            return vacuum / engine.number("isp_vac_s") - 1;
        }

        boolean missed() {
            return Math.abs(vacuumError()) > WORST
                    || seaLevelComparable && Math.abs(seaLevelError().orElse(0)) > WORST;
        }

        OptionalDouble seaLevelError() {
            OptionalDouble published = engine.published("isp_sl_s");
            return published.isPresent()
                    ? OptionalDouble.of(seaLevel / published.getAsDouble() - 1)
                    : OptionalDouble.empty();
        }
    }

    /** What could not be computed, and why. */
    record Missing(PublishedEngine engine, String reason) {}

    /** All rows and what is missing. */
    record Outcome(List<Row> rows, List<Missing> missing) {

        double meanVacuumError() {
            return rows.stream()
                    .mapToDouble(r -> Math.abs(r.vacuumError()))
                    .average()
                    .orElseThrow();
        }

        double worstVacuumError() {
            return rows.stream()
                    .mapToDouble(r -> Math.abs(r.vacuumError()))
                    .max()
                    .orElseThrow();
        }

        /** Engines with a figure beyond the target. */
        List<String> missed() {
            return rows.stream()
                    .filter(Row::missed)
                    .map(row -> row.engine().name())
                    .sorted()
                    .toList();
        }

        private List<Double> seaLevelErrors() {
            return rows.stream()
                    .filter(Row::seaLevelComparable)
                    .map(Row::seaLevelError)
                    .filter(OptionalDouble::isPresent)
                    .map(e -> Math.abs(e.getAsDouble()))
                    .toList();
        }

        double meanSeaLevelError() {
            return seaLevelErrors().stream().mapToDouble(e -> e).average().orElseThrow();
        }

        double worstSeaLevelError() {
            return seaLevelErrors().stream().mapToDouble(e -> e).max().orElseThrow();
        }
    }

    /** The nominal energy release of NASA SP-125 (-), the same for every engine: what no choice of ours has touched. */
    private static final double NOMINAL = 0.975;

    /** Every engine by the program's own defaults. */
    Outcome compute() {
        return compute(Efficiencies.MODELLED);
    }

    /** Every engine with one nominal energy release. */
    Outcome computeNominal() {
        return compute(Efficiencies.MODELLED.with(LossKind.ENERGY_RELEASE, NOMINAL));
    }

    private Outcome compute(Efficiencies efficiencies) {
        List<Row> rows = new ArrayList<>();
        List<Missing> missing = new ArrayList<>();
        for (PublishedEngine engine : PublishedEngine.all()) {
            Optional<String> lacking = engine.lacking().or(() -> Optional.ofNullable(UNLIKE.get(engine.name())));
            if (lacking.isPresent()) {
                missing.add(new Missing(engine, lacking.get()));
                continue;
            }
            try {
                rows.add(open(engine) ? balanced(engine, efficiencies) : closed(engine, efficiencies));
            } catch (InvalidInput e) {
                boolean unknownCycle =
                        e.problems().stream().anyMatch(problem -> problem.key().equals("cycle"));
                missing.add(new Missing(engine, unknownCycle ? "the cycle is not modelled" : e.getMessage()));
            } catch (PenstockException e) {
                missing.add(new Missing(engine, e.getMessage()));
            }
        }
        return new Outcome(rows, missing);
    }

    /** Whether part of the flow leaves elsewhere than through the throat. */
    private static boolean open(PublishedEngine engine) {
        return List.of("gas-generator", "tap-off", "expander-bleed").contains(engine.cycle());
    }

    /** All flow through the throat, with the enthalpy it has in the tanks: the chamber decides. */
    private Row closed(PublishedEngine engine, Efficiencies efficiencies) {
        Propellant oxidizer = fluids.propellant(engine.oxidizer());
        Propellant fuel = fluids.propellant(engine.fuel());
        Reactants reactants = Reactants.ofTanks(oxidizer, fuel, engine.number("mixture_ratio"));
        InjectorDesign injection = InjectorDesign.of(
                engine.cycle().startsWith("staged") || engine.fuel().equals("hydrogen")
                        ? InjectionState.GAS_LIQUID
                        : InjectionState.LIQUID_LIQUID,
                engine.cycle().equals("staged-oxygen-rich"));
        ChamberDesign design = new ChamberDesign(
                1e6 * engine.number("chamber_pressure_MPa"),
                Designs.combustor(2.5, 1.0).withInjector(injection),
                Designs.bell(engine.number("expansion_ratio")),
                ExpansionMode.SHIFTING,
                efficiencies);
        ChamberPerformance chamber = new ThrustChamber(NozzleFlow.of(species, reactants))
                .forVacuumThrust(
                        design, Injection.of(reactants), 1e3 * engine.number("thrust_vac_kN") / engine.chambers());
        double seaLevel = chamber.profile().throat().pressure() > Constants.STANDARD_ATMOSPHERE
                ? chamber.seaLevelSpecificImpulse()
                : 0;
        return row(engine, chamber.vacuumSpecificImpulse(), seaLevel, chamber);
    }

    private Row balanced(PublishedEngine engine, Efficiencies efficiencies) {
        EngineBalance balance = study.balance(reader.parse(engine.name(), concept(engine, efficiencies), Map.of()));
        return row(engine, balance.engine().vacuumIsp(), balance.engine().seaLevelIsp(), balance.chamber());
    }

    private static Row row(PublishedEngine engine, double vacuum, double seaLevel, ChamberPerformance chamber) {
        double published = engine.number("isp_vac_s");
        double pressureTerm = Constants.STANDARD_ATMOSPHERE
                * engine.number("expansion_ratio")
                * chamber.characteristicVelocity()
                / (1e6 * engine.number("chamber_pressure_MPa") * Constants.STANDARD_GRAVITY);
        OptionalDouble seaLevelPublished = engine.published("isp_sl_s");
        boolean comparable = seaLevelPublished.isPresent()
                && Math.abs(seaLevelPublished.getAsDouble() / (published - pressureTerm) - 1) < CONTRADICTION;
        return new Row(engine, vacuum, seaLevel, chamber, comparable);
    }

    private static String concept(PublishedEngine engine, Efficiencies efficiencies) {
        StringBuilder stated = new StringBuilder("\n[efficiencies]\n");
        efficiencies.stated().forEach((loss, value) -> stated.append(loss.key() + " = " + value + "\n"));
        String table = engine.storable() && engine.cycle().equals("gas-generator")
                ? "\n[gas_generator]\ntemperature = \"" + STORABLE_GENERATOR + "\"\n"
                : engine.cycle().startsWith("expander") ? "\n[cooling]\ncoolant = \"fuel\"\n" : "";
        return String.format(
                Locale.ROOT,
                "name = \"%s\"%ncycle = \"%s\"%n[propellants]%noxidizer = \"%s\"%nfuel = \"%s\"%nmixture_ratio = %s%n"
                        + "[engine]%nthrust_vacuum = \"%s kN\"%nchamber_pressure = \"%s MPa\"%nchambers = %d%n[nozzle]%narea_ratio = %s%n%s",
                engine.name(),
                engine.cycle(),
                engine.oxidizer(),
                engine.fuel(),
                engine.text("mixture_ratio"),
                engine.text("thrust_vac_kN"),
                engine.text("chamber_pressure_MPa"),
                engine.chambers(),
                engine.text("expansion_ratio"),
                table + stated);
    }

    /** The page, from an outcome. */
    static String page(Outcome outcome, Outcome nominal) {
        StringBuilder text = new StringBuilder();
        text.append(
                """
                # Validation of delivered performance

                Written by `PerformanceValidation` (in `src/test/java`) from the published figures in
                `src/test/resources/validation/engines.csv`; a test computes every number again. To write it anew:

                    mvn -q test -Dtest=PerformanceValidationTest -Dpenstock.docs.write=true

                ## What is compared

                Each engine is computed from four published figures: mixture ratio, chamber pressure, area ratio and vacuum
                thrust, and from how many chambers share that. Everything else is what the program assumes when a concept says nothing: an 80 %% bell, the contraction
                ratio usual for the throat, every loss by its model. **Nothing is tuned to a single engine.** Of energy release, vaporisation
                and mixing come from the literature; two numbers, what a fuel-rich zone along the wall costs engines of kerosene and of
                hydrazines, are chosen with these engines in view (below, each left out in turn). Propellants enter at their storage
                state. Closed cycles pass everything through the throat with tank enthalpy, so the thrust chamber decides;
                engines that dump turbine gas are balanced as a whole, at their published engine mixture ratio.
                Engines that burn hydrazines in a gas generator run it at %s, the published temperature of one of them.

                The published figures are quoted from secondary pages; those with an asterisk are from memory, those with a dagger
                worked out from others. Ratings of one engine differ among sources by up to 1 %%.

                ## Vacuum and sea-level specific impulse

                | Engine | Cycle | Propellants | MR | p_c MPa | ε | vac computed s | published s | miss %% | sea level computed s | published s | miss %% |
                |---|---|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|
                """
                        .formatted(STORABLE_GENERATOR));
        for (Row row : outcome.rows()) {
            PublishedEngine e = row.engine();
            OptionalDouble seaLevel = row.seaLevelError();
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s/%s | %s | %s | %s | %.1f | %s | %+.2f | %s | %s | %s |%n",
                    e.name(),
                    e.cycle(),
                    e.text("oxidizer"),
                    e.text("fuel"),
                    e.shown("mixture_ratio"),
                    e.shown("chamber_pressure_MPa"),
                    e.shown("expansion_ratio"),
                    row.vacuum(),
                    e.shown("isp_vac_s"),
                    100 * row.vacuumError(),
                    seaLevel.isPresent() ? String.format(Locale.ROOT, "%.1f", row.seaLevel()) : "",
                    e.shown("isp_sl_s"),
                    seaLevel.isEmpty()
                            ? ""
                            : String.format(
                                    Locale.ROOT,
                                    row.seaLevelComparable() ? "%+.2f" : "(%+.2f)",
                                    100 * seaLevel.getAsDouble())));
        }
        text.append(String.format(
                Locale.ROOT,
                """

                Vacuum: mean absolute miss %.2f %%, worst %.2f %%, over %d engines. Sea level: mean %.2f %%, worst %.2f %%.
                The target is a mean of at most 1.5 %% and a worst miss of at most %.0f %%.
                """,
                100 * outcome.meanVacuumError(),
                100 * outcome.worstVacuumError(),
                outcome.rows().size(),
                100 * outcome.meanSeaLevelError(),
                100 * outcome.worstSeaLevelError(),
                100 * WORST));
        text.append(String.format(
                Locale.ROOT,
                """

                For comparison, with one energy release of %s for every engine (the nominal value of [nasa-sp-125], which no
                choice here has touched) the vacuum misses are %.2f %% in the mean and %.2f %% at worst, over %d engines.
                """,
                NOMINAL,
                100 * nominal.meanVacuumError(),
                100 * nominal.worstVacuumError(),
                nominal.rows().size()));
        text.append(families(outcome))
                .append(missed(outcome))
                .append(leftOut(outcome))
                .append(contradictions(outcome))
                .append(missing(outcome))
                .append(waterfall(outcome));
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    /** Misses of the engines of each kind of fuel: what energy release by model leaves of a bias. */
    private static String families(Outcome outcome) {
        Map<String, List<Double>> families = new TreeMap<>();
        for (Row row : outcome.rows()) {
            String fuel = row.engine().fuel();
            String family =
                    switch (fuel) {
                        case "hydrogen" -> "hydrogen";
                        case "rp-1" -> "kerosene";
                        default -> "hydrazines";
                    };
            families.computeIfAbsent(family, f -> new ArrayList<>()).add(100 * row.vacuumError());
        }
        StringBuilder text = new StringBuilder(
                """

                What remains by family. The mean of a family is a bias only where it exceeds the spread of its engines over the root of
                their number, the last column; no constant is chosen for hydrogen.

                | Family | engines | mean miss % | lowest % | highest % | spread over root of number % |
                |---|--:|--:|--:|--:|--:|
                """);
        families.forEach((family, misses) -> {
            double mean = misses.stream().mapToDouble(m -> m).average().orElseThrow();
            double squares =
                    misses.stream().mapToDouble(m -> (m - mean) * (m - mean)).sum();
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %+.2f | %+.2f | %+.2f | %.2f |%n",
                    family,
                    misses.size(),
                    mean,
                    misses.stream().mapToDouble(m -> m).min().orElseThrow(),
                    misses.stream().mapToDouble(m -> m).max().orElseThrow(),
                    Math.sqrt(squares / (misses.size() - 1) / misses.size())));
        });
        return text.toString();
    }

    /** Engines beyond the target, with the cause as far as it is known. */
    private static String missed(Outcome outcome) {
        StringBuilder text = new StringBuilder("\nBeyond the target:\n\n");
        outcome.missed().forEach(name -> text.append("- ")
                .append(name)
                .append(": ")
                .append(CAUSES.getOrDefault(name, "cause not known"))
                .append(".\n"));
        return text.toString();
    }

    /** What each engine with a usual wall zone says of it, and what it misses by the mean of the others of its group. */
    private static String leftOut(Outcome outcome) {
        FluidLibrary fluids = FluidLibrary.open(Path.of("").toAbsolutePath());
        Map<Double, Map<String, Double>> groups = new TreeMap<>();
        for (Row row : outcome.rows()) {
            double zone = fluids.propellant(row.engine().fuel())
                    .combustion()
                    .wallZone()
                    .orElse(0);
            if (zone > 0) {
                groups.computeIfAbsent(zone, z -> new LinkedHashMap<>())
                        .put(row.engine().name(), 1 - (1 - zone) / (1 + row.vacuumError()));
            }
        }
        StringBuilder text = new StringBuilder(
                """

                ## The two numbers that are chosen: the wall zone

                What a fuel-rich zone along the wall costs of c*, as each engine says of it if every other model is right; what is in use
                for its fuel; the mean of the other engines of that group; and what the engine misses if that mean were in use.

                | Engine | says % of c* | in use % | mean of the others % | miss by that % |
                |---|--:|--:|--:|--:|
                """);
        groups.forEach((zone, says) -> says.forEach((engine, own) -> {
            double sum = says.values().stream().mapToDouble(z -> z).sum();
            double others = (sum - own) / (says.size() - 1);
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %.1f | %.1f | %.1f | %+.2f |%n",
                    engine,
                    100 * own,
                    100 * zone,
                    100 * others,
                    100 * ((1 - others) / (1 - own) - 1)));
        }));
        return text.toString();
    }

    private static String contradictions(Outcome outcome) {
        StringBuilder text = new StringBuilder();
        outcome.rows().stream()
                .filter(r -> r.seaLevelError().isPresent() && !r.seaLevelComparable())
                .forEach(r -> text.append(String.format(
                        Locale.ROOT,
                        "%nIn brackets and not in the mean: the published sea-level figure of %s (%s s) differs by more than "
                                + "%.0f %% from its published vacuum figure less p_a·A_e, so the two cannot both belong to a "
                                + "full-flowing nozzle of the published area ratio.%n",
                        r.engine().name(),
                        r.engine().text("isp_sl_s"),
                        100 * CONTRADICTION)));
        return text.toString();
    }

    private static String missing(Outcome outcome) {
        if (outcome.missing().isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder("\n## Not computed\n\n");
        outcome.missing().forEach(m -> text.append("- ")
                .append(m.engine().name())
                .append(" (")
                .append(m.engine().cycle())
                .append("): ")
                .append(m.reason())
                .append("\n"));
        return text.toString();
    }

    private static String waterfall(Outcome outcome) {
        StringBuilder text = new StringBuilder(
                """

                ## From ideal to delivered: vacuum specific impulse of the thrust chamber

                Ideal is shifting equilibrium at the chamber's own mixture ratio; each column is what that loss takes, in s.

                | Engine | ideal |""");
        List<String> names = outcome.rows().get(0).chamber().losses().stream()
                .map(NamedLoss::name)
                .toList();
        names.forEach(name -> text.append(' ').append(name).append(" |"));
        text.append(" delivered | engine |\n|---|")
                .append("--:|".repeat(names.size() + 3))
                .append('\n');
        for (Row row : outcome.rows()) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %.1f |",
                    row.engine().name(),
                    row.chamber().ideal().vacuumSpecificImpulse()));
            for (NamedLoss loss : row.chamber().losses()) {
                text.append(String.format(Locale.ROOT, " %.1f |", loss.impulseLoss() / Constants.STANDARD_GRAVITY));
            }
            text.append(String.format(
                    Locale.ROOT, " %.1f | %.1f |%n", row.chamber().vacuumSpecificImpulse(), row.vacuum()));
        }
        return text.toString();
    }
}

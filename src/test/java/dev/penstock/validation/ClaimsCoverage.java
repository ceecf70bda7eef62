package dev.penstock.validation;

import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.claims.answer.Band;
import dev.penstock.claims.answer.Judge;
import dev.penstock.claims.answer.JudgeEffort;
import dev.penstock.claims.answer.Judgement;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.claims.likelihood.Workshop;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.HomeFolder;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.quantities.Constants;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Built engines judged from thrust, impulse and mass, or exit diameter where there is no mass, with chamber pressure, mixture
 * ratio and cycle hidden. How many chambers there are is given, since everybody can count them. The exit diameter follows from the table's area ratio and a throat by the ideal characteristic
 * velocity less three per cent (common practice, no source), since the table has no throats.
 */
final class ClaimsCoverage {

    private static final double DELIVERED = 0.97;

    /** One engine judged: whether the 90 % intervals hold the truth, and how probable its own cycle was. */
    record Row(
            PublishedEngine engine,
            Band pressure,
            Band ratio,
            double probability,
            String leader,
            double effective,
            boolean holdsPressure,
            boolean holdsRatio) {

        String line() {
            return String.format(
                    Locale.ROOT,
                    "| %s | %.2f | %.2f to %.2f | %s | %.2f | %.2f to %.2f | %s | %s %.0f %% | %s | %.0f |",
                    engine.name(),
                    engine.number("chamber_pressure_MPa"),
                    pressure.p05() / 1e6,
                    pressure.p95() / 1e6,
                    holdsPressure ? "held" : "missed",
                    engine.number("mixture_ratio"),
                    ratio.p05(),
                    ratio.p95(),
                    holdsRatio ? "held" : "missed",
                    engine.cycle(),
                    100 * probability,
                    leader,
                    effective);
        }
    }

    private ClaimsCoverage() {}

    /** Engines of which enough is in the table, those that live on the heat of a jacket last: their balances take longest. */
    static List<PublishedEngine> engines() {
        return PublishedEngine.all().stream()
                .filter(e -> e.lacking().isEmpty())
                .sorted(Comparator.comparing(ClaimsCoverage::onJacketHeat))
                .toList();
    }

    private static boolean onJacketHeat(PublishedEngine e) {
        return Cycle.all().stream()
                .anyMatch(c -> c.id().equals(e.cycle()) && c.traits().livesOnJacketHeat());
    }

    static Row judged(PublishedEngine e, String cycles, int points, Workers workers) {
        Workshop workshop = new Workshop(HomeFolder.find(), Concepts.FLUIDS, Concepts.STUDY);
        // What comes last, each claim held against the others, is not asked.
        AtomicBoolean enough = new AtomicBoolean();
        Judgement j = new Judge(
                        workshop,
                        new ClaimsReader(Concepts.FLUIDS).parse(e.name(), text(e, cycles), Map.of()),
                        new JudgeEffort(points, 1),
                        workers,
                        enough::get,
                        (done, of, what) -> enough.set(what.startsWith(Judge.WITHOUT)),
                        rough -> {})
                .judge();
        Band pressure = band(j, "engine.chamber_pressure_Pa");
        Band ratio = band(j, "engine.mixture_ratio");
        double truePressure = e.number("chamber_pressure_MPa") * 1e6;
        double trueRatio = e.number("mixture_ratio");
        double probability = j.kinds().stream()
                .filter(k -> k.hypothesis().cycle().id().equals(e.cycle()))
                .mapToDouble(Judgement.Kind::probability)
                .sum();
        return new Row(
                e,
                pressure,
                ratio,
                probability,
                j.kinds().get(0).hypothesis().cycle().id(),
                j.effectiveSamples(),
                truePressure >= pressure.p05() && truePressure <= pressure.p95(),
                trueRatio >= ratio.p05() && trueRatio <= ratio.p95());
    }

    private static Band band(Judgement j, String path) {
        return j.figures().stream()
                .filter(f -> f.path().equals(path))
                .findFirst()
                .orElseThrow()
                .posterior();
    }

    static String text(PublishedEngine e, String cycles) {
        String second = e.published("mass_kg").isPresent()
                ? "[claims.\"engine.mass\"]\nvalue = \"" + e.number("mass_kg") + " kg\"\nwithin = \"10 %\"\n"
                : "[claims.\"engine.exit_diameter\"]\nvalue = \"" + exitDiameter(e) + " m\"\nwithin = \"3 %\"\n";
        return """
                name = "%s"
                cycle = %s
                [propellants]
                oxidizer = "%s"
                fuel = "%s"
                [claims."engine.isp_vacuum"]
                value = "%s s"
                within = "1 %%"
                %s
                [given]
                "engine.thrust_vacuum" = "%s kN"
                "engine.chambers" = %d
                """
                .formatted(
                        e.name(),
                        cycles,
                        e.oxidizer(),
                        e.fuel(),
                        e.number("isp_vac_s"),
                        second,
                        e.number("thrust_vac_kN"),
                        e.chambers());
    }

    static double exitDiameter(PublishedEngine e) {
        Propellant oxidizer = Concepts.FLUIDS.propellant(e.oxidizer());
        Propellant fuel = Concepts.FLUIDS.propellant(e.fuel());
        Reactants reactants = Reactants.ofTanks(oxidizer, fuel, e.number("mixture_ratio"));
        double pressure = e.number("chamber_pressure_MPa") * 1e6;
        double ratio = e.number("expansion_ratio");
        double velocity = DELIVERED
                * NozzleFlow.of(SpeciesLibrary.open(HomeFolder.find()), reactants)
                        .expand(reactants, pressure, ExpansionMode.SHIFTING)
                        .toAreaRatio(ratio)
                        .characteristicVelocity();
        double flow =
                e.number("thrust_vac_kN") * 1e3 / (e.number("isp_vac_s") * Constants.STANDARD_GRAVITY) / e.chambers();
        return Math.sqrt(4 / Math.PI * ratio * flow * velocity / pressure);
    }
}

package dev.penstock.validation;

import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.questions.BuiltEngineMiss;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.SampledEngine;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/** Where published figures of built engines lie among the samples of what is promised, for docs/validation/bands.md. */
final class BandsPage {

    static final int SAMPLES = 19;

    private static final double RPM = Math.PI / 30;
    private static final double SHARE = 0.9;

    /** A quantity of the table of engines, the path of such a figure, and how a balance gives it. */
    record Quantity(String column, String path, String name, Function<EngineBalance, OptionalDouble> figure) {}

    /**
     * A published figure among samples.
     *
     * @param family what its fuel is, by which errors may hang together
     * @param published the figure
     * @param likely what the balance with every input at its most likely value gives
     * @param values what the samples give, rising
     */
    record Place(String engine, String family, Quantity quantity, double published, double likely, double[] values) {

        /** Logarithm of published over most likely (-). */
        double miss() {
            return Math.log(published / likely);
        }

        /** Share of the samples below the most likely value (-). */
        double rankOfLikely() {
            return Arrays.stream(values).filter(v -> v < likely).count() / (double) values.length;
        }

        /** What is declared of the quantity, if it is. */
        Optional<BuiltEngineMiss> declared() {
            return BuiltEngineMiss.of(quantity.path(), family.equals("hydrogen"));
        }

        /** Percentile of the samples alone. */
        double sampled(double share) {
            return percentile(Optional.empty(), share);
        }

        /** Percentile of the band that the program gives. */
        double percentile(double share) {
            return percentile(declared(), share);
        }

        double percentile(Optional<BuiltEngineMiss> miss, double share) {
            DescriptiveStatistics samples = new DescriptiveStatistics(values);
            return BuiltEngineMiss.percentile(
                    samples, miss.map(m -> m.beyond(samples)).orElse(0.0), 100 * share);
        }

        boolean insideSamples() {
            return inside(Optional.empty());
        }

        boolean inside() {
            return inside(declared());
        }

        boolean inside(Optional<BuiltEngineMiss> miss) {
            return published >= percentile(miss, 0.05) && published <= percentile(miss, 0.95);
        }

        /** Fifth of the samples, or of the whole band, that the published figure lies in. */
        int fifth(Optional<BuiltEngineMiss> miss) {
            return (int) DoubleStream.of(0.2, 0.4, 0.6, 0.8)
                    .filter(s -> published > percentile(miss, s))
                    .count();
        }

        /** Whether a miss of the same kind is declared for another figure. */
        boolean alike(Place other) {
            return declared().equals(other.declared());
        }
    }

    static final List<Quantity> QUANTITIES = List.of(
            new Quantity(
                    "isp_vac_s", "engine.isp_vacuum_s", "vacuum impulse, s", b -> path(b, "engine.isp_vacuum_s", 1)),
            new Quantity(
                    "isp_sl_s",
                    "engine.isp_sea_level_s",
                    "sea-level impulse, s",
                    b -> path(b, "engine.isp_sea_level_s", 1)),
            new Quantity(
                    "fuel_pump_discharge_MPa",
                    "pumps.fuel-pump.discharge_pressure_Pa",
                    "fuel discharge, MPa",
                    b -> pump(b, "fuel", true)),
            new Quantity(
                    "ox_pump_discharge_MPa",
                    "pumps.oxidizer-pump.discharge_pressure_Pa",
                    "oxidizer discharge, MPa",
                    b -> pump(b, "oxidizer", true)),
            new Quantity(
                    "fuel_pump_speed_rpm",
                    "pumps.fuel-pump.speed_rad_s",
                    "fuel pump speed, rpm",
                    b -> pump(b, "fuel", false)),
            new Quantity(
                    "ox_pump_speed_rpm",
                    "pumps.oxidizer-pump.speed_rad_s",
                    "oxidizer pump speed, rpm",
                    b -> pump(b, "oxidizer", false)),
            new Quantity(
                    "fuel_turbine_power_MW",
                    "turbines.main-turbine.power_W",
                    "turbine power, fuel or main, MW",
                    BandsPage::turbine),
            new Quantity(
                    "gas_generator_or_preburner_flow_kg_s",
                    "turbines.main-turbine.mass_flow_kg_s",
                    "generator or preburner flow, kg/s",
                    BandsPage::gas),
            new Quantity(
                    "coolant_temperature_rise_K",
                    "cooling.coolant_temperature_rise_K",
                    "temperature rise, K",
                    b -> path(b, "cooling.coolant_temperature_rise_K", 1)),
            new Quantity("mass_kg", "engine.mass_kg", "dry mass, kg", b -> path(b, "engine.mass_kg", 1)));

    private static OptionalDouble path(EngineBalance balance, String path, double scale) {
        OptionalDouble value = dev.penstock.study.Measure.ALL.stream()
                .filter(m -> m.path().equals(path))
                .findFirst()
                .orElseThrow()
                .of(balance);
        return value.isPresent() ? OptionalDouble.of(scale * value.getAsDouble()) : value;
    }

    private static OptionalDouble pump(EngineBalance balance, String side, boolean pressure) {
        return balance.pumps().stream()
                .filter(p -> p.name()
                        .equals(
                                pressure
                                        ? RatedEngine.dischargingPump(
                                                balance.concept().name(), side)
                                        : side + " pump"))
                .mapToDouble(p -> pressure ? p.duty().dischargePressure() / 1e6 : p.speed() / RPM)
                .findFirst();
    }

    private static OptionalDouble turbine(EngineBalance balance) {
        return balance.turbines().stream()
                .filter(t -> t.name().startsWith(balance.turbines().size() > 1 ? "fuel" : "main"))
                .mapToDouble(t -> t.power() / 1e6)
                .findFirst();
    }

    private static OptionalDouble gas(EngineBalance balance) {
        return balance.components().stream()
                .filter(c -> c.kind() == PartKind.GAS_GENERATOR || c.kind() == PartKind.PREBURNER)
                .map(c -> balance.station(c.outlets().get(0)))
                .mapToDouble(Station::massFlow)
                .findFirst();
    }

    /** What propellants of one kind are called. */
    private static String family(PublishedEngine engine) {
        return switch (engine.fuel()) {
            case "hydrogen" -> "hydrogen";
            case "rp-1", "ethanol-75" -> "carbon fuels";
            default -> "hydrazines";
        };
    }

    /**
     * An engine with its samples.
     *
     * @param places its seen figures
     * @param asked how many samples were asked for
     * @param closed how many of them balance
     */
    record Sampled(String engine, List<Place> places, int asked, int closed) {}

    private final FluidLibrary fluids = FluidLibrary.open();
    private final ConceptReader reader = new ConceptReader(fluids);
    private final EngineRuns runs = new EngineRuns(Path.of("").toAbsolutePath(), fluids);

    /** Every seen figure of an engine among its samples. */
    Sampled places(RatedEngine question, int samples) {
        PublishedEngine engine = question.engine();
        EngineBalance likely = runs.study().balance(reader.parse(engine.name(), question.concept(), Map.of()));
        SampledEngine sampled = SampledEngine.of(runs, likely, samples);
        List<Place> places = new ArrayList<>();
        for (Quantity quantity : QUANTITIES) {
            OptionalDouble published = engine.seen(quantity.column());
            double[] values = sampled.samples().stream()
                    .map(quantity.figure())
                    .flatMapToDouble(OptionalDouble::stream)
                    .sorted()
                    .toArray();
            OptionalDouble most = quantity.figure().apply(likely);
            if (published.isPresent() && most.isPresent() && values.length > samples / 4) {
                places.add(new Place(
                        engine.name(), family(engine), quantity, published.getAsDouble(), most.getAsDouble(), values));
            }
        }
        return new Sampled(engine.name(), places, samples, sampled.samples().size());
    }

    /** What some figures miss, as it would be declared from them alone (-). */
    static BuiltEngineMiss missed(List<Place> places) {
        double square =
                places.stream().mapToDouble(p -> p.miss() * p.miss()).average().orElseThrow();
        return new BuiltEngineMiss("of others", Math.sqrt(square), places.size());
    }

    /** Figures inside bands that hold what the other engines' figures miss. */
    static long leftOut(List<Place> places) {
        return places.stream()
                .filter(place -> {
                    List<Place> others = places.stream()
                            .filter(p -> !p.engine().equals(place.engine()) && p.alike(place))
                            .toList();
                    return place.inside(others.isEmpty() ? Optional.empty() : Optional.of(missed(others)));
                })
                .count();
    }

    private static String ranks(List<Place> places, Function<Place, Integer> fifth) {
        int[] ranks = new int[5];
        places.forEach(p -> ranks[fifth.apply(p)]++);
        return Arrays.stream(ranks).mapToObj(Integer::toString).collect(Collectors.joining(" "));
    }

    private static String row(String name, List<Place> places, long leftOut) {
        long inside = places.stream().filter(Place::inside).count();
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %s | %d | %.0f %% | %s | %s | %d | %.0f %% |\n",
                name,
                places.size(),
                places.stream().filter(Place::insideSamples).count(),
                ranks(places, p -> p.fifth(Optional.empty())),
                inside,
                100.0 * inside / places.size(),
                interval(inside, places.size()),
                ranks(places, p -> p.fifth(p.declared())),
                leftOut,
                100.0 * leftOut / places.size());
    }

    /** Wilson's interval of a share at 90 %, in per cent: what so few points tell. */
    static String interval(long inside, int of) {
        double z = 1.645;
        double share = inside / (double) of;
        double middle = (share + z * z / (2 * of)) / (1 + z * z / of);
        double half = z / (1 + z * z / of) * Math.sqrt(share * (1 - share) / of + z * z / (4.0 * of * of));
        return String.format(
                Locale.ROOT, "%.0f to %.0f", Math.max(0, 100 * (middle - half)), Math.min(100, 100 * (middle + half)));
    }

    static String text(List<Sampled> engines) {
        List<Place> places = engines.stream().flatMap(e -> e.places().stream()).toList();
        StringBuilder page = new StringBuilder(
                """
                # Bands against built engines

                Written by `BandsPageTest`, whose long part runs with `-Dpenstock.bands.long=true`; with `-Dpenstock.docs.write=true` besides it
                writes the page anew.

                Every engine of [ratings](ratings.md), put to the program as there, each sampled 19 times over all of its inputs
                that have a spread, as `balance --uncertainty` does; a sample that closes no balance is left out. Only figures that were read
                somewhere count, not those from memory. A band is from the 5th to the 95th percentile and should hold 90 % of them; the
                interval beside the share is what so few points tell of the true one (Wilson's, 90 %). Ranks are fifths of a band, from the
                published figure below nearly all cases to above nearly all: even would be right, a heap on the left means computed too high.

                Inputs alone do not span what built engines miss. So each quantity has a miss e, declared once in
                `BuiltEngineMiss` (decision 0194): the root mean square of ln(published/most likely) over the figures of this page,
                widened by Student's distribution since they are few. What the samples do not explain of it is added to every band in quadrature: in
                `balance`, `limit`, sweeps and vehicles. "Inputs alone" is the samples by themselves, "whole" what the program gives. Left out: the figures
                inside bands whose miss comes from the other engines only.

                | quantity | figures | inputs alone: inside | ranks | whole: inside | share | true share, % | ranks | left out: inside | share |
                |---|--:|--:|---|--:|--:|---|---|--:|--:|
                """);
        Map<String, List<Place>> byQuantity = new LinkedHashMap<>();
        QUANTITIES.forEach(q -> byQuantity.put(
                q.name(), places.stream().filter(p -> p.quantity() == q).toList()));
        byQuantity.values().removeIf(List::isEmpty);
        byQuantity.forEach((name, some) -> page.append(row(name, some, leftOut(some))));
        long leftOut =
                byQuantity.values().stream().mapToLong(BandsPage::leftOut).sum();
        page.append(row("**all**", places, leftOut));
        declared(page, places);
        page.append(
                "\nOutside their bands:\n\n| engine | quantity | published | 5 % | median | 95 % |\n|---|---|--:|--:|--:|--:|\n");
        places.stream()
                .filter(p -> !p.inside())
                .forEach(p -> page.append(String.format(
                        Locale.ROOT,
                        "| %s | %s | %.4g | %.4g | %.4g | %.4g |\n",
                        p.engine(),
                        p.quantity().name(),
                        p.published(),
                        p.percentile(0.05),
                        p.percentile(0.5),
                        p.percentile(0.95))));
        families(page, places);
        likely(page, places);
        closed(page, engines);
        long inside = places.stream().filter(Place::inside).count();
        page.append(String.format(
                Locale.ROOT,
                "\n%d of %d figures, %.0f %%, left out %.0f %%; aimed at is 85 to 95 %%: %s. Figures of one engine hang"
                        + " together, so that there is less in them than their number says; a quantity with fewer than ten figures"
                        + " tells a band that is far too narrow from one that is right, and no more.\n",
                inside,
                places.size(),
                100.0 * inside / places.size(),
                100.0 * leftOut / places.size(),
                Math.abs(leftOut / (double) places.size() - SHARE) <= 0.05 ? "met" : "missed"));
        return page.toString();
    }

    /** What is declared beside what this page shows. */
    private static void declared(StringBuilder page, List<Place> places) {
        page.append(
                """

                What is declared, what the figures here show, and what they show with any one engine left out; half band: that of the samples alone and that
                of the whole, in the mean of the engines.

                | miss of | figures declared | declared % | shown % | one left out % | half band by inputs % | whole % |
                |---|--:|--:|--:|---|--:|--:|
                """);
        for (BuiltEngineMiss miss : BuiltEngineMiss.all()) {
            List<Place> some = places.stream()
                    .filter(p -> p.declared().equals(Optional.of(miss)))
                    .toList();
            DoubleSummaryStatistics others = some.stream()
                    .map(p -> some.stream()
                            .filter(o -> !o.engine().equals(p.engine()))
                            .toList())
                    .filter(o -> !o.isEmpty())
                    .mapToDouble(o -> 100 * missed(o).share())
                    .summaryStatistics();
            page.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %.1f | %.1f | %.1f to %.1f | %.1f | %.1f |\n",
                    miss.quantity(),
                    miss.figures(),
                    100 * miss.share(),
                    100 * missed(some).share(),
                    others.getMin(),
                    others.getMax(),
                    half(some, Place::sampled),
                    half(some, Place::percentile)));
        }
    }

    private static double half(List<Place> places, BiFunction<Place, Double, Double> percentile) {
        return places.stream()
                .mapToDouble(p -> 50 * Math.log(percentile.apply(p, 0.95) / percentile.apply(p, 0.05)))
                .average()
                .orElseThrow();
    }

    /** Whether propellants of one kind read high or low together. */
    private static void families(StringBuilder page, List<Place> places) {
        page.append(
                """

                What hangs together: mean of published over most likely, less one, by fuel, and its standard error where there are two or
                more. A mean beyond twice its error is a bias that a family has in common.

                | quantity | fuel | engines | mean, % | error, % | |
                |---|---|--:|--:|--:|---|
                """);
        for (Quantity quantity : QUANTITIES) {
            for (String family : List.of("hydrogen", "carbon fuels", "hydrazines")) {
                double[] misses = places.stream()
                        .filter(p -> p.quantity() == quantity && p.family().equals(family))
                        .mapToDouble(Place::miss)
                        .toArray();
                if (misses.length > 1) {
                    double mean = Arrays.stream(misses).average().orElseThrow();
                    double error = Math.sqrt(Arrays.stream(misses)
                                    .map(m -> (m - mean) * (m - mean))
                                    .sum()
                            / (misses.length - 1)
                            / misses.length);
                    page.append(String.format(
                            Locale.ROOT,
                            "| %s | %s | %d | %+.1f | %.1f | %s |\n",
                            quantity.name(),
                            family,
                            misses.length,
                            100 * Math.expm1(mean),
                            100 * error,
                            Math.abs(mean) > 2 * error ? "bias" : ""));
                }
            }
        }
    }

    /** The most likely value should lie near the median of its own samples. */
    private static void likely(StringBuilder page, List<Place> places) {
        page.append(
                """

                Where the most likely value lies among its own samples, in per cent, lowest and highest of the engines; 50 is the median.

                | quantity | lowest | highest | outside the samples' band | outside the whole band |
                |---|--:|--:|--:|--:|
                """);
        for (Quantity quantity : QUANTITIES) {
            double[] ranks = places.stream()
                    .filter(p -> p.quantity() == quantity)
                    .mapToDouble(p -> 100 * p.rankOfLikely())
                    .sorted()
                    .toArray();
            if (ranks.length > 0) {
                page.append(String.format(
                        Locale.ROOT,
                        "| %s | %.0f | %.0f | %d | %d |\n",
                        quantity.name(),
                        ranks[0],
                        ranks[ranks.length - 1],
                        Arrays.stream(ranks).filter(r -> r < 5 || r > 95).count(),
                        places.stream()
                                .filter(p -> p.quantity() == quantity)
                                .filter(p -> p.likely() < p.percentile(0.05) || p.likely() > p.percentile(0.95))
                                .count()));
            }
        }
    }

    private static void closed(StringBuilder page, List<Sampled> engines) {
        int asked = engines.stream().mapToInt(Sampled::asked).sum();
        int closed = engines.stream().mapToInt(Sampled::closed).sum();
        page.append(String.format(
                Locale.ROOT,
                "\n%d of %d samples close. Fewer than nine tenths of them:%s\n",
                closed,
                asked,
                engines.stream()
                        .filter(e -> e.closed() < 0.9 * e.asked())
                        .map(e -> " " + e.engine() + " (" + e.closed() + ")")
                        .reduce((a, b) -> a + "," + b)
                        .orElse(" none")
                        .concat(".")));
    }
}

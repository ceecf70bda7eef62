package dev.penstock.validation;

import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.SampledEngine;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Where published figures of built engines lie among the samples of what is promised, for docs/validation/bands.md. */
final class BandsPage {

    static final int SAMPLES = 19;

    private static final double RPM = Math.PI / 30;
    private static final double SHARE = 0.9;

    /** A quantity of the table of engines and how a balance gives it. */
    record Quantity(String column, String name, Function<EngineBalance, OptionalDouble> figure) {}

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

        double percentile(double share) {
            double at = share * (values.length - 1);
            int low = (int) Math.floor(at);
            double part = at - low;
            return low + 1 < values.length ? (1 - part) * values[low] + part * values[low + 1] : values[low];
        }

        boolean inside() {
            return published >= percentile(0.05) && published <= percentile(0.95);
        }

        /** Share of the samples below the published figure (-). */
        double rank() {
            return Arrays.stream(values).filter(v -> v < published).count() / (double) values.length;
        }

        /** Distance of the published figure from the median over that of the 5 or 95 % end (-); 1 at the end of the band. */
        double reach() {
            double median = percentile(0.5);
            double end = published < median ? median - percentile(0.05) : percentile(0.95) - median;
            return end > 0 ? Math.abs(published - median) / end : Double.POSITIVE_INFINITY;
        }
    }

    static final List<Quantity> QUANTITIES = List.of(
            new Quantity("isp_vac_s", "vacuum impulse, s", b -> path(b, "engine.isp_vacuum_s", 1)),
            new Quantity("isp_sl_s", "sea-level impulse, s", b -> path(b, "engine.isp_sea_level_s", 1)),
            new Quantity("fuel_pump_discharge_MPa", "fuel discharge, MPa", b -> pump(b, "fuel", true)),
            new Quantity("ox_pump_discharge_MPa", "oxidizer discharge, MPa", b -> pump(b, "oxidizer", true)),
            new Quantity("fuel_pump_speed_rpm", "fuel pump speed, rpm", b -> pump(b, "fuel", false)),
            new Quantity("ox_pump_speed_rpm", "oxidizer pump speed, rpm", b -> pump(b, "oxidizer", false)),
            new Quantity("fuel_turbine_power_MW", "turbine power, fuel or main, MW", BandsPage::turbine),
            new Quantity("gas_generator_or_preburner_flow_kg_s", "generator or preburner flow, kg/s", BandsPage::gas),
            new Quantity(
                    "coolant_temperature_rise_K",
                    "temperature rise, K",
                    b -> path(b, "cooling.coolant_temperature_rise_K", 1)),
            new Quantity("mass_kg", "dry mass, kg", b -> path(b, "engine.mass_kg", 1)));

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

    /** Share of figures inside bands that are stretched until they hold nine tenths of the other engines' figures (-). */
    static double leftOut(List<Place> places) {
        long inside = 0;
        for (Place place : places) {
            double[] others = places.stream()
                    .filter(p -> !p.engine().equals(place.engine()))
                    .mapToDouble(Place::reach)
                    .sorted()
                    .toArray();
            inside += others.length > 0 && place.reach() <= stretch(others) ? 1 : 0;
        }
        return inside / (double) places.size();
    }

    /** Factor on half a band with which it holds nine tenths of some figures (-). */
    static double stretch(double[] rising) {
        int needed = (int) Math.ceil(SHARE * rising.length);
        return rising[Math.max(0, needed - 1)];
    }

    private static String row(String name, List<Place> places, boolean one) {
        long inside = places.stream().filter(Place::inside).count();
        int[] ranks = new int[5];
        places.forEach(p -> ranks[Math.min(4, (int) (5 * p.rank()))]++);
        double[] reach = places.stream().mapToDouble(Place::reach).sorted().toArray();
        return String.format(
                        Locale.ROOT,
                        "| %s | %d | %d | %.0f %% | %s | %d %d %d %d %d | %s | %s |%n",
                        name,
                        places.size(),
                        inside,
                        100.0 * inside / places.size(),
                        interval(inside, places.size()),
                        ranks[0],
                        ranks[1],
                        ranks[2],
                        ranks[3],
                        ranks[4],
                        one ? String.format(Locale.ROOT, "%.1f", stretch(reach)) : "",
                        one && places.size() > 2 ? String.format(Locale.ROOT, "%.0f %%", 100 * leftOut(places)) : "")
                .replace("\r\n", "\n");
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
                writes the page anew. One engine is sampled in every build.

                Every engine of [ratings](ratings.md), put to the program as there, each sampled 19 times over all of its inputs
                that have a spread, as `study uncertainty` does; a sample that closes no balance is left out. Only figures that were read
                somewhere count, not those from memory. A band is from the 5th to the 95th percentile and should hold 90 % of them; the
                interval beside it is what so few points tell of the true share (Wilson's, 90 %). Ranks are fifths of the samples, from the
                published figure below nearly all of them to above nearly all: even would be right, a heap on the left means computed too high. Stretch is
                the factor on the half width of a band with which it would hold nine tenths. Left out: share of the figures
                inside bands stretched, or shrunk, by what the other engines ask for.

                Two spreads are discrepancies in the sense of Kennedy and O'Hagan [kennedy-ohagan-2001]: what built engines miss that no
                other input explains, taken from the residuals of these engines (decision 0163). They are inputs like any other, so that
                every band of every command holds them: `mass.engine_factor` moves all parts of an engine together, `lines.*_valve_loss` all that a
                propellant loses between its pump and its injector. Speeds have none: built shafts lie on both sides of what their limits allow, and
                an input that made shafts slower only, tried from 0.45 to 1, left 9 of 18 speeds inside and moved powers and masses too high.

                | quantity | figures | inside | share | true share, % | ranks | stretch | left out |
                |---|--:|--:|--:|---|---|--:|--:|
                """);
        Map<String, List<Place>> byQuantity = new LinkedHashMap<>();
        QUANTITIES.forEach(q -> byQuantity.put(
                q.name(), places.stream().filter(p -> p.quantity() == q).toList()));
        byQuantity.forEach((name, some) -> page.append(some.isEmpty() ? "" : row(name, some, true)));
        page.append(row("**all**", places, false));
        page.append(
                "\nOutside their bands:\n\n| engine | quantity | published | 5 % | median | 95 % |\n|---|---|--:|--:|--:|--:|\n");
        places.stream()
                .filter(p -> !p.inside())
                .forEach(p -> page.append(String.format(
                                Locale.ROOT,
                                "| %s | %s | %.4g | %.4g | %.4g | %.4g |%n",
                                p.engine(),
                                p.quantity().name(),
                                p.published(),
                                p.percentile(0.05),
                                p.percentile(0.5),
                                p.percentile(0.95))
                        .replace("\r\n", "\n")));
        families(page, places);
        likely(page, places);
        closed(page, engines);
        long inside = places.stream().filter(Place::inside).count();
        page.append(String.format(
                        Locale.ROOT,
                        "%n%d of %d figures, %.0f %%; aimed at is 85 to 95 %%: %s. The spreads of energy release, valves and of the whole mass were set in view of these engines (decisions 0163 and 0173), none of the others. Figures of one engine hang"
                                + " together, so that there is less in them than their number says; a quantity with fewer than ten figures"
                                + " tells a band that is far too narrow from one that is right, and no more.%n",
                        inside,
                        places.size(),
                        100.0 * inside / places.size(),
                        Math.abs(inside / (double) places.size() - SHARE) <= 0.05 ? "met" : "missed")
                .replace("\r\n", "\n"));
        return page.toString();
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

                | quantity | lowest | highest | outside its band |
                |---|--:|--:|--:|
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
                        "| %s | %.0f | %.0f | %d |\n",
                        quantity.name(),
                        ranks[0],
                        ranks[ranks.length - 1],
                        Arrays.stream(ranks).filter(r -> r < 5 || r > 95).count()));
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

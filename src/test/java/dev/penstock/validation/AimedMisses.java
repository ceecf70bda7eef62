package dev.penstock.validation;

import dev.penstock.cycles.sheet.EngineBalance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How far the most likely figures of built engines miss, beside what is aimed at; every large miss with its cause. */
final class AimedMisses {

    /** What is held against an aim: columns of the table of engines, and the mean absolute miss that is aimed at. */
    private static final Map<String, Aim> AIMS = new LinkedHashMap<>();

    static {
        AIMS.put("impulse", new Aim(List.of("isp_vac_s", "isp_sl_s"), 0.010));
        AIMS.put("pump discharge", new Aim(List.of("fuel_pump_discharge_MPa", "ox_pump_discharge_MPa"), 0.08));
        AIMS.put("turbine power", new Aim(List.of("fuel_turbine_power_MW"), 0.10));
        AIMS.put("shaft speed", new Aim(List.of("fuel_pump_speed_rpm", "ox_pump_speed_rpm"), 0.20));
        AIMS.put("generator flow", new Aim(List.of("gas_generator_or_preburner_flow_kg_s"), 0.10));
        AIMS.put("dry mass", new Aim(List.of("mass_kg"), 0.12));
    }

    private static final String LEAN =
            "built jackets and what leads to them lose more than the usual pressure budget; what the jacket takes is not published";

    private static final String SLOW =
            "the built shaft is slower than its limits allow, by a choice that no rule here makes";

    /** Its row mixes two ratings: power, thrust and impulse of one, another power and thrust of the other. */
    private static final String MIXED = "Redstone A-7";

    /** Of a miss above twice its aim: what is known of it, by engine and aim. */
    private static final Map<String, String> CAUSES = Map.ofEntries(
            Map.entry(
                    "AJ10-118K, impulse",
                    "pressure, area ratio and impulse are from memory; finite rates take 9.5 s of a small throat at 0.9 MPa"),
            Map.entry("LR-87-AJ-7, impulse", "its impulses contradict each other, see performance.md"),
            Map.entry(
                    "AJ10-137, impulse",
                    "its film of 7 % of the flow is charged beside the usual wall zone of hydrazines, which was settled on engines"
                            + " with films; without it +0.4 %"),
            Map.entry("R-4D-11, impulse", "finite rates take 12.8 s at 0.7 MPa, as if frozen at the throat"),
            Map.entry(
                    "Redstone A-7, impulse",
                    "its figures are perhaps those of another fuel (from memory: with alcohol 218 s at sea level); its turbine runs on peroxide,"
                            + " here on its own propellants"),
            Map.entry("YF-77, impulse", "at sea level the computed flow separates, see performance.md"),
            Map.entry(
                    "Vulcain 1, pump discharge",
                    "from memory; 12.5 MPa leave 0.19 of 10.5 MPa for injector, valve and line together"),
            Map.entry(
                    "Redstone A-7, turbine power",
                    "its impulse is 9 % low and its flow as much too high; an early engine of 2.2 MPa lost less on the way to its chamber"),
            Map.entry("RD-170, pump discharge", LEAN),
            Map.entry("RD-0110, pump discharge", LEAN),
            Map.entry("RD-0124, pump discharge", LEAN),
            Map.entry("LE-5A, shaft speed", "from memory; " + SLOW),
            Map.entry(
                    "Redstone A-7, shaft speed",
                    "without inducers, as put here, suction limits it at the tank pressure of its class; its own is not published"),
            Map.entry("RD-0110, generator flow", "the fuel pump's discharge comes out low, and the power with it"),
            Map.entry("LE-5A, dry mass", "its wide nozzle is counted as a cooled wall like the chamber's"),
            Map.entry(
                    "RD-253, dry mass",
                    "the lightest of all for its thrust: its parts with a relation weigh as much as all of it, pumps and lines most"),
            Map.entry("Viking 5C, dry mass", "from memory; its water tank and its frame are not in the sum"),
            Map.entry("Redstone A-7, dry mass", "double walls of steel, peroxide system and frame of the early 1950s"));

    /**
     * @param columns of the table of engines
     * @param mean mean absolute miss that is aimed at (-)
     */
    private record Aim(List<String> columns, double mean) {}

    /** One figure: computed over published, less one (-). */
    private record Miss(String engine, String what, boolean seen, double published, double computed) {

        double off() {
            return computed / published - 1;
        }

        /** Above twice what is aimed at in the mean. */
        boolean large(Aim aim) {
            return Math.abs(off()) > 2 * aim.mean();
        }
    }

    private AimedMisses() {}

    private static List<Miss> of(Aim aim, List<RatingsPage.Row> rows) {
        List<Miss> misses = new ArrayList<>();
        for (String column : aim.columns()) {
            BandsPage.Quantity quantity = BandsPage.QUANTITIES.stream()
                    .filter(q -> q.column().equals(column))
                    .findFirst()
                    .orElseThrow();
            for (RatingsPage.Row row : rows) {
                PublishedEngine engine = row.question().engine();
                EngineBalance balance = row.balance();
                OptionalDouble published = engine.published(column);
                OptionalDouble computed = quantity.figure().apply(balance);
                if (published.isPresent() && computed.isPresent()) {
                    misses.add(new Miss(
                            engine.name(),
                            quantity.name(),
                            engine.seen(column).isPresent(),
                            published.getAsDouble(),
                            computed.getAsDouble()));
                }
            }
        }
        return misses;
    }

    private static Optional<String> cause(String aim, Miss miss) {
        return Optional.ofNullable(CAUSES.get(miss.engine() + ", " + aim));
    }

    /** Misses above twice their aim of which nothing is known. */
    static List<String> unexplained(List<RatingsPage.Row> rows) {
        List<String> lines = new ArrayList<>();
        AIMS.forEach((name, aim) -> of(aim, rows).stream()
                .filter(m -> m.large(aim) && cause(name, m).isEmpty())
                .forEach(m -> lines.add(m.engine() + ", " + name)));
        return lines;
    }

    static String text(List<RatingsPage.Row> rows) {
        StringBuilder page = new StringBuilder(
                """

                ## Misses beside what is aimed at

                Mean absolute miss of the most likely figures of these engines. Energy release was chosen in view of them; its leave-one-out
                misses are on [performance](performance.md). What has no relation of its own in the dry mass, 40 % of what has one, was chosen with them
                in view (decision 0231): with the share that the other fifteen ask for, an engine left out misses by 11.6 % in the mean. The highest specific speed of main pumps is the middle of a published range, taken with them in
                view (decision 0198, with each left out); valves, orifices and ducts are from published schedules of two other engines, with these
                in view (decision 0214, with each left out). Limits behind speeds of small pumps and shares of chamber pressure are round numbers settled with
                some of them in view ([turbomachinery](turbomachinery.md)); nothing else behind these figures was, so that what is shown is what an
                engine left out would show. Redstone A-7 is in every mean; its row mixes two ratings (758 hp beside 737 hp at 347 kN, 416 kN at 265 s), so the mean of the
                others stands beside. "All" counts figures from memory as well.

                | quantity | aim, mean % | seen figures | mean % | median % | worst % | without Redstone: mean % | all figures | mean % | worst % |
                |---|--:|--:|--:|--:|--:|--:|--:|--:|--:|
                """);
        StringBuilder large = new StringBuilder();
        AIMS.forEach((name, aim) -> {
            List<Miss> misses = of(aim, rows);
            List<Miss> seen = misses.stream().filter(Miss::seen).toList();
            page.append(String.format(
                    Locale.ROOT,
                    "| %s | %.0f | %d | %.1f | %.1f | %.1f | %.1f | %d | %.1f | %.1f |\n",
                    name,
                    100 * aim.mean(),
                    seen.size(),
                    100 * mean(seen),
                    100 * median(seen),
                    100 * worst(seen),
                    100
                            * mean(seen.stream()
                                    .filter(m -> !m.engine().equals(MIXED))
                                    .toList()),
                    misses.size(),
                    100 * mean(misses),
                    100 * worst(misses)));
            misses.stream()
                    .filter(m -> m.large(aim))
                    .forEach(m -> large.append(String.format(
                            Locale.ROOT,
                            "| %s | %s%s | %.4g | %.4g | %+.1f | %s |\n",
                            m.engine(),
                            m.what(),
                            m.seen() ? "" : "*",
                            m.published(),
                            m.computed(),
                            100 * m.off(),
                            cause(name, m).orElse("nothing known here that explains it"))));
        });
        page.append(
                """

                Misses above twice the aim; an asterisk marks a published figure from memory:

                | engine | quantity | published | computed | miss % | what is known of it |
                |---|---|--:|--:|--:|---|
                """);
        return page.append(large).toString();
    }

    private static double mean(List<Miss> misses) {
        return misses.stream().mapToDouble(m -> Math.abs(m.off())).average().orElse(0);
    }

    private static double median(List<Miss> misses) {
        double[] sorted =
                misses.stream().mapToDouble(m -> Math.abs(m.off())).sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private static double worst(List<Miss> misses) {
        return misses.stream().mapToDouble(m -> Math.abs(m.off())).max().orElse(0);
    }
}

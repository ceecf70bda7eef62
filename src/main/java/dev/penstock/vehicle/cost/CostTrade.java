package dev.penstock.vehicle.cost;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.Spread;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ReuseTrade;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Effort of a launch with the first stage lost and brought back, and from how many flights coming back pays.
 *
 * @param terms what was asked
 * @param rows effort of a launch, by way of recovery and number of flights
 * @param breakEvens from how many flights each way of coming back pays
 * @param byUses effort of a launch over flights of the first stage, a line for each way of recovery
 * @param byRate the same over launches of a year, at the number of flights asked for
 */
public record CostTrade(
        CostTerms terms, List<Row> rows, List<BreakEven> breakEvens, List<Line> byUses, List<Line> byRate) {

    /** Where lines have points: flights of a stage, launches of a year. */
    private static final int[] STEPS = {1, 2, 3, 4, 5, 7, 10, 15, 20, 30, 50, 70, 100};

    public CostTrade {
        rows = List.copyOf(rows);
        breakEvens = List.copyOf(breakEvens);
        byUses = List.copyOf(byUses);
        byRate = List.copyOf(byRate);
    }

    /**
     * Effort over one of the things asked.
     *
     * @param mode what becomes of the first stage
     * @param points the points, from left to right
     */
    public record Line(Recovery.Mode mode, List<Point> points) {

        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * A point of a line.
     *
     * @param at flights of a stage, or launches of a year (-)
     * @param perTonne effort for a tonne of payload, with its band of {@link CostRelations#BAND} and more (work-years/t)
     */
    public record Point(double at, Spread perTonne) {}

    /** What must be read with any of these numbers. */
    public static final Warning WEAKEST = new Warning(
                    LaunchCost.CARD.id(),
                    "effort is the weakest number here: regressions from memory over hardware of the last century, off by a"
                            + " factor of " + CostRelations.BAND
                            + " either way; development, propellant, range, insurance and lost stages are not in it; read"
                            + " ratios between rows, not values")
            .asAside();

    /**
     * Effort of a launch.
     *
     * @param mode what becomes of the first stage
     * @param cost its effort
     */
    public record Row(Recovery.Mode mode, LaunchCost cost) {}

    /**
     * From how many flights of a stage a tonne of payload takes less effort than with the stage lost.
     *
     * @param mode what becomes of the first stage
     * @param payloadLost share of the payload for a kilogram of start mass that coming back costs (-)
     * @param cheap flights at the lowest share of refurbishment; empty if never in the run
     * @param usual the same at the share believed in
     * @param dear the same at the highest share
     * @param share refurbishment over building up to which coming back pays with the flights asked for (-); empty if at none
     */
    public record BreakEven(
            Recovery.Mode mode,
            double payloadLost,
            OptionalInt cheap,
            OptionalInt usual,
            OptionalInt dear,
            OptionalDouble share) {}

    /**
     * @param ways the vehicle with its first stage lost and brought back
     * @param terms what is asked
     * @return effort of each that closes
     */
    public static CostTrade of(List<ReuseTrade.Row> ways, CostTerms terms) {
        List<Row> rows = new ArrayList<>();
        List<BreakEven> breakEvens = new ArrayList<>();
        List<Line> byUses = new ArrayList<>();
        List<Line> byRate = new ArrayList<>();
        Optional<VehicleSizing> lost = ways.stream()
                .filter(way -> way.recovery().mode() == Recovery.Mode.NONE)
                .flatMap(way -> way.sizing().stream())
                .findFirst();
        for (ReuseTrade.Row way : ways) {
            Recovery.Mode mode = way.recovery().mode();
            if (way.sizing().isEmpty() || !(way.sizing().get().payload() > 0)) {
                continue;
            }
            VehicleSizing vehicle = way.sizing().get();
            byUses.add(line(mode, vehicle, step -> step <= terms.launches(), terms::withUses));
            byRate.add(line(mode, vehicle, step -> true, terms::withLaunchesPerYear));
            if (mode == Recovery.Mode.NONE) {
                rows.add(new Row(mode, LaunchCost.of(vehicle, false, terms)));
                continue;
            }
            for (int uses : new TreeSet<>(List.of(1, 2, 5, terms.uses()))) {
                rows.add(new Row(mode, LaunchCost.of(vehicle, true, terms.withUses(uses))));
            }
            lost.ifPresent(other -> breakEvens.add(breakEven(mode, vehicle, other, terms)));
        }
        return new CostTrade(terms, rows, breakEvens, byUses, byRate);
    }

    private static Line line(
            Recovery.Mode mode, VehicleSizing vehicle, IntPredicate asked, IntFunction<CostTerms> terms) {
        return new Line(
                mode,
                IntStream.of(STEPS)
                        .filter(asked)
                        .mapToObj(step -> new Point(
                                step,
                                LaunchCost.of(vehicle, mode != Recovery.Mode.NONE, terms.apply(step))
                                        .total()
                                        .times(1000 / vehicle.payload())))
                        .toList());
    }

    private static BreakEven breakEven(Recovery.Mode mode, VehicleSizing back, VehicleSizing lost, CostTerms terms) {
        double target = LaunchCost.of(lost, false, terms).perTonne();
        Spread r = terms.refurbishment();
        return new BreakEven(
                mode,
                1 - back.payloadFraction() / lost.payloadFraction(),
                pays(back, terms, r.low(), target),
                pays(back, terms, r.mode(), target),
                pays(back, terms, r.high(), target),
                share(back, terms, target));
    }

    /** Effort is linear in the share of refurbishment, so that two shares tell where it meets the effort with the stage lost. */
    private static OptionalDouble share(VehicleSizing back, CostTerms terms, double target) {
        double none = LaunchCost.of(back, true, terms.withRefurbishment(0)).perTonne();
        double whole = LaunchCost.of(back, true, terms.withRefurbishment(1)).perTonne();
        double share = (target - none) / (whole - none);
        return whole > none && share >= 0 ? OptionalDouble.of(share) : OptionalDouble.empty();
    }

    private static OptionalInt pays(VehicleSizing back, CostTerms terms, double share, double target) {
        CostTerms exact = terms.withRefurbishment(share);
        int most = (int) terms.launches();
        for (int uses = 1; uses <= most; uses++) {
            if (LaunchCost.of(back, true, exact.withUses(uses)).perTonne() <= target) {
                return OptionalInt.of(uses);
            }
        }
        return OptionalInt.empty();
    }
}

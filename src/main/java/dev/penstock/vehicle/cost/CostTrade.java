package dev.penstock.vehicle.cost;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.Spread;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ReuseTrade;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * Effort of a launch with the first stage lost and brought back, and from how many flights coming back pays.
 *
 * @param terms what was asked
 * @param rows effort of a launch, by way of recovery and number of flights
 * @param breakEvens from how many flights each way of coming back pays
 */
public record CostTrade(CostTerms terms, List<Row> rows, List<BreakEven> breakEvens) {

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
     */
    public record BreakEven(
            Recovery.Mode mode, double payloadLost, OptionalInt cheap, OptionalInt usual, OptionalInt dear) {}

    /**
     * @param ways the vehicle with its first stage lost and brought back
     * @param terms what is asked
     * @return effort of each that closes
     */
    public static CostTrade of(List<ReuseTrade.Row> ways, CostTerms terms) {
        List<Row> rows = new ArrayList<>();
        List<BreakEven> breakEvens = new ArrayList<>();
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
            if (mode == Recovery.Mode.NONE) {
                rows.add(new Row(mode, LaunchCost.of(vehicle, false, terms)));
                continue;
            }
            for (int uses : new TreeSet<>(List.of(1, 2, 5, terms.uses()))) {
                rows.add(new Row(mode, LaunchCost.of(vehicle, true, terms.withUses(uses))));
            }
            lost.ifPresent(other -> breakEvens.add(breakEven(mode, vehicle, other, terms)));
        }
        return new CostTrade(terms, rows, breakEvens);
    }

    private static BreakEven breakEven(Recovery.Mode mode, VehicleSizing back, VehicleSizing lost, CostTerms terms) {
        double target = LaunchCost.of(lost, false, terms).perTonne();
        Spread r = terms.refurbishment();
        return new BreakEven(
                mode,
                1 - back.payloadFraction() / lost.payloadFraction(),
                pays(back, terms, r.low(), target),
                pays(back, terms, r.mode(), target),
                pays(back, terms, r.high(), target));
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

package dev.penstock.cycles.arrangements;

import dev.penstock.combustion.GasGeneratorGas.Branch;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.fluids.state.FluidState;
import java.util.Locale;

/** Rough numbers to start a solution from. */
public final class FirstGuess {

    public static final double PUMP_EFFICIENCY = 0.65;

    private final BalanceModels balanceModels;
    private final double chamberFlow;

    public FirstGuess(BalanceModels balanceModels, double chamberFlow) {
        this.balanceModels = balanceModels;
        this.chamberFlow = chamberFlow;
    }

    /** Whether the machines are built already. */
    public boolean built() {
        return balanceModels.built().isPresent();
    }

    public Concept concept() {
        return balanceModels.concept();
    }

    /** Flow through the throat (kg/s). */
    public double chamberFlow() {
        return chamberFlow;
    }

    /** Flow of one propellant into the chamber (kg/s). */
    public double flow(Side side) {
        double ratio = concept().mixtureRatio();
        return chamberFlow * (side == Side.OXIDIZER ? ratio : 1) / (1 + ratio);
    }

    /** Power of a main pump to a multiple of chamber pressure (W). */
    public double pumpPower(Side side, double multiple) {
        FeedDesign feed = concept().feed(side);
        FluidState tank = balanceModels.tankState(
                feed, feed.tankPressure().orElse(concept().chamberPressure()));
        return flow(side) * multiple * concept().chamberPressure() / (tank.density() * PUMP_EFFICIENCY);
    }

    /**
     * Flow of the lean propellant over the rich one that gives a burner its temperature.
     *
     * @throws LimitReached if no mixture is that cold or that hot
     */
    public double leanRatio(Burner burner, double temperature, double pressure) {
        double oxidizer = tankEnthalpy(Side.OXIDIZER);
        double fuel = tankEnthalpy(Side.FUEL);
        double diluted =
                concept().burners().get(burner).diluent().map(d -> d.share()).orElse(0.0);
        double third = concept()
                .burners()
                .get(burner)
                .diluent()
                .map(d -> balanceModels.storedEnthalpy(d.fluid(), d.tankPressure()))
                .orElse(0.0);
        boolean oxidizerRich = burner == Burner.OXIDIZER_RICH;
        try {
            double ratio = balanceModels
                    .gasMaker(burner)
                    .mixtureRatioFor(
                            r -> balanceModels.mixture(
                                    burner, r, 1, (1 - diluted) * (r * oxidizer + fuel) / (1 + r) + diluted * third),
                            pressure,
                            temperature,
                            oxidizerRich ? Branch.OXIDIZER_RICH : Branch.FUEL_RICH);
            return oxidizerRich ? 1 / ratio : ratio;
        } catch (OutsideValidity e) {
            throw new LimitReached(
                    burner.key() + ".temperature",
                    String.format(
                            Locale.ROOT,
                            "no mixture of %s and %s gives the %s a temperature of %.0f K (%s); change %s.temperature",
                            concept().oxidizer().name(),
                            concept().fuel().name(),
                            burner.title(),
                            temperature,
                            e.getMessage(),
                            burner.key()));
        }
    }

    public double tankEnthalpy(Side side) {
        FeedDesign feed = concept().feed(side);
        double pressure = feed.tankPressure().orElse(concept().chamberPressure());
        return feed.propellant()
                .absoluteEnthalpy(balanceModels.tankState(feed, pressure).enthalpy());
    }
}

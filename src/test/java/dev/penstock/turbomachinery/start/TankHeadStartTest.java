package dev.penstock.turbomachinery.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.turbomachinery.PerfectGas;
import dev.penstock.turbomachinery.SampleTurbine;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TankHeadStartTest {

    private static final double CP = 2650;
    private static final PerfectGas GAS = new PerfectGas(CP, 1.10);
    private static final double HOT = 900;
    private static final TurbineMap TURBINE = new TurbineMap(SampleTurbine.twoRows());

    /** Two bar in the tank over 0.2 bar behind the engine, through a way out that chokes late. */
    private static final TankHeadStart.Feed FEED = new TankHeadStart.Feed(0.4e6, 6e6, 2e4, 0.02e6, 0.05);

    private static final TankHeadStart.Metal WARM = new TankHeadStart.Metal(CP * 60, 60, 8e4, 18, 4e5, 300);

    private static TankHeadStart burner(double inertia, double pumpPower) {
        return start(Optional.empty(), inertia, pumpPower);
    }

    private static TankHeadStart start(Optional<TankHeadStart.Metal> metal, double inertia, double pumpPower) {
        return new TankHeadStart(
                GAS,
                FEED,
                metal,
                CP * HOT,
                List.of(new TankHeadStart.Stage(TURBINE, 3000, 1, 1, 0)),
                new TankHeadStart.Shafts(inertia, pumpPower));
    }

    /** Textbook of gas dynamics, from memory: ṁ√(RT)/(A p) is 0.6847 for γ = 1.4 and 0.6673 for γ = 1.3. */
    @Test
    void aChokedThroatPassesWhatTextbooksSay() {
        PerfectGas air = new PerfectGas(1004.5, 1.4);
        PerfectGas burnt = new PerfectGas(1500, 1.3);
        double rt = 1004.5 * (0.4 / 1.4) * 300;
        double rtBurnt = 1500 * (0.3 / 1.3) * 1200;
        assertThat(TankHeadStart.choking(air.atPressureTemperature(1e6, 300)) * Math.sqrt(rt))
                .isCloseTo(0.6847, within(5e-5));
        assertThat(TankHeadStart.choking(burnt.atPressureTemperature(5e6, 1200)) * Math.sqrt(rtBurnt))
                .isCloseTo(0.6673, within(5e-5));
    }

    /** Identity: at every moment the liquid flows by what is left of head and pump rise over the resistance. */
    @Test
    void flowFollowsFromTheHead() {
        TankHeadRun run = burner(4e6, 6e5).to(0.3);
        assertThat(run.reached()).isTrue();
        assertThat(run.why()).isEmpty();
        assertThat(run.points()).hasSizeGreaterThan(10).allSatisfy(p -> {
            double head = 0.4e6 + 6e6 * p.speedFraction() * p.speedFraction();
            assertThat(2e4 * p.flow() * p.flow()).isCloseTo(head - p.pressure(), within(1e-3 * head));
            assertThat(p.temperature()).isCloseTo(HOT, withinPercentage(1e-6));
        });
        assertThat(run.metalTemperature()).isZero();
    }

    /** Identity: what flowed is flow over time. */
    @Test
    void propellantUsedIsFlowOverTime() {
        TankHeadRun run = burner(4e6, 6e5).to(0.3);
        double sum = 0;
        for (int i = 1; i < run.points().size(); i++) {
            TankHeadRun.Point a = run.points().get(i - 1);
            TankHeadRun.Point b = run.points().get(i);
            sum += 0.5 * (a.flow() + b.flow()) * (b.time() - a.time());
        }
        assertThat(run.used()).isCloseTo(sum, withinPercentage(0.2));
        TankHeadRun.Point last = run.points().get(run.points().size() - 1);
        assertThat(last.time()).isEqualTo(run.time());
        assertThat(run.speedFraction()).isBetween(0.3, 0.32);
    }

    /** Identity of the equation of motion: twice the inertia takes twice the time over the same course. */
    @Test
    void timeGoesWithInertia() {
        double once = burner(4e6, 6e5).to(0.3).time();
        double twice = burner(8e6, 6e5).to(0.3).time();
        assertThat(twice / once).isCloseTo(2, within(0.02));
    }

    /** Torque at rest over a hundredth of the design torque: it goes with the inverse of the pumps' power. */
    @Test
    void breakawayIsMeasuredByThePumps() {
        double light = burner(4e6, 3e5).to(0.05).breakaway();
        double heavy = burner(4e6, 6e5).to(0.05).breakaway();
        assertThat(light).isCloseTo(2 * heavy, withinPercentage(1e-6));
        TankHeadRun stuck = burner(4e6, 6e5 * 1.01 * heavy).to(0.3);
        assertThat(stuck.reached()).isFalse();
        assertThat(stuck.breakaway()).isCloseTo(1 / 1.01, withinPercentage(1e-6));
        assertThat(stuck.why()).contains("does not break the shafts away");
        assertThat(stuck.points()).hasSize(1);
    }

    /** Where it hangs, turbines give what pumps and friction take. */
    @Test
    void itHangsWherePumpsTakeAll() {
        TankHeadRun run = burner(1e5, 9e6).to(1);
        assertThat(run.reached()).isFalse();
        assertThat(run.why()).contains("pumps and friction");
        assertThat(run.speedFraction()).isBetween(0.01, 0.999);
    }

    /** Identity: the metal loses what the propellant takes up, C dT = -∫ṁ (h - h_cold) dt. */
    @Test
    void warmMetalGivesItsHeatToThePropellant() {
        TankHeadRun run = start(Optional.of(WARM), 2e6, 3e5).to(0.2);
        assertThat(run.points().get(0).metalTemperature()).isEqualTo(300);
        double taken = 0;
        for (int i = 1; i < run.points().size(); i++) {
            TankHeadRun.Point a = run.points().get(i - 1);
            TankHeadRun.Point b = run.points().get(i);
            double heatA = a.flow() * CP * (a.temperature() - 60);
            double heatB = b.flow() * CP * (b.temperature() - 60);
            taken += 0.5 * (heatA + heatB) * (b.time() - a.time());
        }
        assertThat(taken).isPositive();
        assertThat(4e5 * (300 - run.metalTemperature())).isCloseTo(taken, withinPercentage(1));
        assertThat(run.points()).allSatisfy(p -> assertThat(p.temperature()).isBetween(60.0, p.metalTemperature()));
    }

    /** The first moment: NTU = hA/(ṁ cp) with hA as ṁ^0.8 gives the effectiveness of the warm jacket. */
    @Test
    void gasLeavesTheJacketByItsTransferUnits() {
        TankHeadRun.Point first =
                start(Optional.of(WARM), 2e6, 3e5).to(0.02).points().get(0);
        double units = 8e4 * Math.pow(first.flow() / 18, 0.8) / (first.flow() * CP);
        assertThat(first.temperature()).isCloseTo(60 + (300 - 60) * (1 - Math.exp(-units)), within(0.5));
    }

    @Test
    void aShareOfTheSpeedIsAskedFor() {
        assertThatThrownBy(() -> burner(4e6, 6e5).to(1.2)).isInstanceOf(OutsideValidity.class);
    }

    /**
     * The equation of motion, worked anew from the points of a run: the pressure behind the turbines passes the flow through the choked way
     * out, two turbines in series share the drop 0.6 to 0.4 at speeds of their own, and what they give over the pumps' and the
     * friction's share is the gain of speed. The first turbine passes the flow.
     */
    @Test
    void theGainOfSpeedIsWhatTheTurbinesGiveOverPumpsAndFriction() {
        double wayOut = 0.008;
        TankHeadStart.Feed feed = new TankHeadStart.Feed(0.4e6, 6e6, 2e4, 0.02e6, wayOut);
        TankHeadRun run = new TankHeadStart(
                        GAS,
                        feed,
                        Optional.empty(),
                        CP * HOT,
                        List.of(
                                new TankHeadStart.Stage(TURBINE, 3000, 1, 0.6, 0.5),
                                new TankHeadStart.Stage(TURBINE, 2500, 1, 0.4, 0)),
                        new TankHeadStart.Shafts(4e6, 2e5))
                .to(0.3);
        assertThat(run.why()).isEmpty();
        double exponent = 0.1 / 1.1;
        double choking = TankHeadStart.choking(GAS.atPressureTemperature(1e5, HOT));
        List<TankHeadRun.Point> points = run.points();
        int looked = 0;
        for (int i = 5; i < points.size() - 1; i += 7) {
            TankHeadRun.Point p = points.get(i);
            double n = p.speedFraction();
            if (n < 0.05) {
                continue; // the rate changes too fast for its difference
            }
            looked++;
            double exit = Math.max(Math.max(0.02e6, p.flow() / (wayOut * choking)), p.pressure() / 30);
            double drop = CP * HOT * (1 - Math.pow(exit / p.pressure(), exponent));
            double power = p.flow()
                    * (0.6 * drop * TURBINE.efficiency(n * 3000, 0.6 * drop)
                            + 0.4 * drop * TURBINE.efficiency(n * 2500, 0.4 * drop));
            double rate = (power / n - 2e5 * n * n - 0.01 * 2e5) / 4e6;
            TankHeadRun.Point before = points.get(i - 1);
            TankHeadRun.Point after = points.get(i + 1);
            double gain = (after.speedFraction() - before.speedFraction()) / (after.time() - before.time());
            assertThat(gain).as("at " + n).isCloseTo(rate, withinPercentage(2));
            double passed = TURBINE.at(GAS, p.pressure(), CP * HOT, Math.max(exit, 0.5 * p.pressure()), n * 3000)
                    .massFlow();
            assertThat(p.flow()).isCloseTo(passed, withinPercentage(0.01));
        }
        assertThat(looked).isGreaterThan(3);
    }

    @Test
    void aTankBelowTheSurroundingsSendsNothing() {
        TankHeadStart.Feed none = new TankHeadStart.Feed(0.0201e6, 6e6, 2e4, 0.02e6, 0.05);
        TankHeadRun run = new TankHeadStart(
                        GAS,
                        none,
                        Optional.of(WARM),
                        CP * HOT,
                        List.of(new TankHeadStart.Stage(TURBINE, 3000, 1, 1, 0)),
                        new TankHeadStart.Shafts(4e6, 6e5))
                .to(0.3);
        assertThat(run.reached()).isFalse();
        assertThat(run.why()).contains("no gas flows at rest");
        assertThat(run.metalTemperature()).isEqualTo(300);
        assertThat(run.points()).isEmpty();
    }
}

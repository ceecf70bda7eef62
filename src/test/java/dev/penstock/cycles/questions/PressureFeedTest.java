package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.GasGenerator;
import dev.penstock.cycles.arrangements.PressureFed;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PressureFeedTest {

    private static final EngineBalance PLOVER = Concepts.balance("plover.toml");
    private static final PressureFeed LIFE = Concepts.STUDY.pressureFeed(PLOVER).orElseThrow();

    private static PressureFeed feed(String... changes) {
        List<String> all = new ArrayList<>(List.of("pressurization.burn_time", "100 s"));
        all.addAll(List.of(changes));
        return Concepts.STUDY
                .pressureFeed(Concepts.STUDY.balance(Concepts.example(new PressureFed(), all.toArray(String[]::new))))
                .orElseThrow();
    }

    /** Identity: life starts at the balance. */
    @Test
    void aBlowdownStartsAsBalanced() {
        PressureFeed.Point begin = LIFE.begin();
        assertThat(begin.vacuumThrust()).isCloseTo(PLOVER.engine().vacuumThrust(), withinPercentage(0.01));
        assertThat(begin.vacuumIsp()).isCloseTo(PLOVER.engine().vacuumIsp(), withinPercentage(0.01));
        assertThat(begin.mixtureRatio()).isCloseTo(1.65, within(1e-4));
        assertThat(begin.expelled()).isZero();
    }

    @Test
    void everythingFallsAsTheTanksEmpty() {
        List<PressureFeed.Point> points = LIFE.points();
        for (int i = 1; i < points.size(); i++) {
            assertThat(points.get(i).chamberPressure())
                    .isLessThan(points.get(i - 1).chamberPressure());
            assertThat(points.get(i).vacuumThrust())
                    .isLessThan(points.get(i - 1).vacuumThrust());
            assertThat(points.get(i).time()).isGreaterThan(points.get(i - 1).time());
        }
        assertThat(LIFE.end().injectorDrop()).isLessThan(0.5 * LIFE.begin().injectorDrop());
    }

    /** Conservation: what is loaded is what flows, and both tanks end together. */
    @Test
    void theTanksEndTogetherAndGiveWhatTheyHold() {
        double loaded = LIFE.tanks().stream()
                .mapToDouble(PressureFeed.Tank::propellantMass)
                .sum();
        assertThat(loaded).isCloseTo(420, within(1e-6));
        double left =
                LIFE.tanks().stream().mapToDouble(PressureFeed.Tank::residual).sum();
        assertThat(left).isLessThan(0.002 * loaded);
        double burnt = 0;
        for (int i = 1; i < LIFE.points().size(); i++) {
            PressureFeed.Point a = LIFE.points().get(i - 1);
            PressureFeed.Point b = LIFE.points().get(i);
            burnt += 0.5 * (a.massFlow() + b.massFlow()) * (b.time() - a.time());
        }
        assertThat(burnt).isCloseTo(loaded - left, withinPercentage(0.1));
    }

    /** Identity: an orifice passes the root of its pressure drop; here the drop from tank to injector face. */
    @Test
    void flowGoesWithTheRootOfThePressureDrop() {
        PressureFeed.Point begin = LIFE.begin();
        PressureFeed.Point end = LIFE.end();
        double face = PLOVER.components().stream()
                .filter(c -> c.kind() == PartKind.INJECTOR)
                .mapToDouble(c -> PLOVER.station(c.outlets().get(0)).pressure())
                .findFirst()
                .orElseThrow();
        double throttle = end.chamberPressure() / begin.chamberPressure();
        double ratio = end.massFlow() / (1 + end.mixtureRatio()) / (begin.massFlow() / (1 + begin.mixtureRatio()));
        double drops = (end.fuelTankPressure() - throttle * face) / (begin.fuelTankPressure() - face);
        assertThat(ratio).isCloseTo(Math.sqrt(drops), withinPercentage(0.05));
    }

    /** Limit: with hardly any propellant beside the gas nothing falls. */
    @Test
    void aTankFullOfGasHoldsItsPressure() {
        PressureFeed feed = feed("pressurization.feed", "blowdown", "pressurization.initial_ullage", "0.95");
        assertThat(feed.end().chamberPressure()).isCloseTo(feed.begin().chamberPressure(), withinPercentage(6));
        assertThat(feed.tanks().get(1).blowdownRatio()).isCloseTo(1 / 0.95, withinPercentage(0.3));
    }

    @Test
    void withoutHeatThePressureFallsFurther() {
        String[] common = {"pressurization.feed", "blowdown", "pressurization.initial_ullage", "0.5"};
        double warm = feed(common).end().chamberPressure();
        double polytropic = feed(with(common, "polytropic")).end().chamberPressure();
        double cold = feed(with(common, "isentropic")).end().chamberPressure();
        assertThat(warm).isGreaterThan(polytropic);
        assertThat(polytropic).isGreaterThan(cold);
    }

    private static String[] with(String[] common, String law) {
        List<String> all = new ArrayList<>(List.of(common));
        all.addAll(List.of("pressurization.expansion", law));
        return all.toArray(String[]::new);
    }

    @Test
    void aRegulatorHoldsTheEngineAndHeatSavesGas() {
        PressureFeed cold = feed();
        assertThat(cold.end().vacuumThrust()).isEqualTo(cold.begin().vacuumThrust());
        assertThat(cold.end().time()).isCloseTo(100, within(1e-9));
        PressureFeed hot = feed("pressurization.feed", "heated", "pressurization.heated_temperature", "550 K");
        assertThat(hot.bottle().orElseThrow().mass())
                .isLessThan(0.5 * hot.unheated().orElseThrow().mass());
        assertThat(hot.unheated().orElseThrow().loaded())
                .isCloseTo(cold.bottle().orElseThrow().loaded(), withinPercentage(1e-6));
        assertThat(hot.heater().orElseThrow().power())
                .isCloseTo(hot.bottle().orElseThrow().heat() / 100, withinPercentage(1e-6));
    }

    @Test
    void whatIsNoPressurantIsRefused() {
        assertThatThrownBy(() -> Concepts.example(new PressureFed(), "pressurization.gas", "oxygen"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("write a fluid with the role pressurant, such as helium");
        assertThatThrownBy(() -> Concepts.example(new GasGenerator(), "pressurization.feed", "blowdown"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("pressurization");
    }

    @Test
    void cyclesWithPumpsHaveNoPressureFeed() {
        assertThat(Concepts.read("heron.toml").pressurization()).isEmpty();
    }
}

package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingPoint;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.engine.EngineCharts;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.mass.MassPart;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several equal chambers on one set of pumps. Expected values are identities and conservation. */
class SeveralChambersTest {

    private static final Path PRESSURE_FED = Path.of("cycles/dunlin.toml");
    private static final Path PUMPED = Path.of("cycles/heron.toml");

    private static Concept withoutPumps(int chambers, String thrust) {
        return Concepts.READER.read(
                PRESSURE_FED, Map.of("engine.chambers", Integer.toString(chambers), "engine.thrust_vacuum", thrust));
    }

    private static Concept pumped(int chambers) {
        return Concepts.READER.read(PUMPED, Map.of("engine.chambers", Integer.toString(chambers)));
    }

    /** Without pumps nothing is shared but the tanks: three chambers are three engines. */
    @Test
    void chambersWithoutPumpsAreAsManyEngines() {
        EngineBalance one = Concepts.STUDY.balance(withoutPumps(1, "30 kN"));
        EngineBalance three = Concepts.STUDY.balance(withoutPumps(3, "90 kN"));
        same(three.engine().throatDiameter(), one.engine().throatDiameter());
        same(three.engine().vacuumIsp(), one.engine().vacuumIsp());
        same(three.engine().massFlow(), 3 * one.engine().massFlow());
        same(three.engine().seaLevelThrust(), 3 * one.engine().seaLevelThrust());
        same(three.thrustAt(3e4), 3 * one.thrustAt(3e4));
        same(three.tankOutlet(Side.FUEL).pressure(), one.tankOutlet(Side.FUEL).pressure());
        for (MassPart part : new MassPart[] {MassPart.CHAMBER, MassPart.INJECTOR, MassPart.EXTENSION}) {
            same(mass(three, part), 3 * mass(one, part));
        }
    }

    @Test
    void heatOfEveryJacketReachesTheCommonCoolant() {
        EngineBalance engine = Concepts.STUDY.balance(pumped(4));
        assertThat(engine.residualWorst()).isLessThan(1e-8);
        assertThat(engine.engine().seaLevelThrust()).isCloseTo(620e3, within(1.0));
        same(
                engine.engine().massFlow(),
                engine.stations().stream()
                        .filter(s -> s.name().endsWith("tank outlet"))
                        .mapToDouble(s -> s.massFlow())
                        .sum());
        JacketResult jacket = engine.cooling().get(0);
        Component part = engine.components().stream()
                .filter(c -> c.kind() == PartKind.JACKET)
                .findFirst()
                .orElseThrow();
        double flow = engine.station(part.inlets().get(0)).massFlow();
        double rise = engine.station(part.outlets().get(0)).enthalpy()
                - engine.station(part.inlets().get(0)).enthalpy();
        assertThat(flow * rise).isCloseTo(4 * jacket.heatLoad(), within(1e-7 * flow * rise));
        assertThat(new EngineCharts(engine, "").flow().svg()).contains("4 thrust chambers");
    }

    /** The engine as built, run at its design point, is the engine that was designed. */
    @Test
    void theDesignPointIsFoundAgain() {
        EngineBalance engine = Concepts.STUDY.balance(pumped(2));
        OperatingPoint point = Concepts.STUDY
                .offDesign(engine, List.of(OperatingCommand.throttle(1)))
                .get(0)
                .point()
                .orElseThrow();
        double designed = engine.engine().vacuumThrust();
        assertThat(point.vacuumThrust()).isCloseTo(designed, within(1e-3 * designed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1.5", "49", "\"four\""})
    void aCountThatIsNoneIsRefusedWithWhatIsAllowed(String count) {
        assertThatThrownBy(() -> Concepts.READER.read(PUMPED, Map.of("engine.chambers", count)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("engine.chambers")
                .hasMessageContaining("a whole number from 1 to 48");
    }

    private static double mass(EngineBalance engine, MassPart part) {
        return engine.mass().items().stream()
                .filter(item -> item.part() == part)
                .map(MassItem::mass)
                .mapToDouble(spread -> spread.mode())
                .sum();
    }

    private static void same(double one, double other) {
        assertThat(one).isCloseTo(other, within(1e-7 * Math.abs(other) + 1e-9));
    }
}

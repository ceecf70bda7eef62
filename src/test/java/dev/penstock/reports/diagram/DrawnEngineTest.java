package dev.penstock.reports.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.turbomachinery.pump.PumpSizing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawnEngineTest {

    /** Conservation, read off the plates: what enters a part leaves it, and a pump passes what it was sized for. */
    @ParameterizedTest
    @ValueSource(strings = {"gannet.toml", "razorbill.toml", "heron.toml"})
    void flowsAddUpAtEveryPart(String file) {
        EngineBalance balance = Concepts.balance(file);
        DrawnEngine engine = DrawnEngine.of(balance);
        for (Component c : engine.components) {
            double in = flow(engine, c.inlets());
            double out = flow(engine, c.outlets());
            if (!c.inlets().isEmpty() && !c.outlets().isEmpty()) {
                assertThat(in).as(c.id()).isCloseTo(out, within(2e-3 * out));
            }
            for (PumpSizing pump : balance.pumps()) {
                if (c.label().equals(pump.name())) {
                    double sized = pump.duty().massFlow();
                    assertThat(in).as(pump.name()).isCloseTo(sized, within(2e-3 * sized));
                }
            }
        }
    }

    private static double flow(DrawnEngine engine, List<Integer> plates) {
        return engine.plates.stream()
                .filter(p -> plates.contains(p.number()))
                .mapToDouble(p -> Double.parseDouble(p.lower().split(" ")[0]))
                .sum();
    }

    @Test
    void everyBoostPumpShowsWhatTurnsIt() {
        EngineBalance balance = Concepts.balance("gannet.toml");
        DrawnEngine engine = DrawnEngine.of(balance);
        List<String> boosts = engine.components.stream()
                .filter(c -> c.kind() == PartKind.PUMP && c.label().contains("boost"))
                .map(Component::id)
                .toList();
        assertThat(boosts).hasSize(2).allSatisfy(boost -> assertThat(engine.shafts)
                .anySatisfy(shaft -> {
                    assertThat(shaft.driven()).contains(boost);
                    assertThat(engine.components.stream().map(Component::id)).containsAll(shaft.driving());
                }));
        String svg = FlowDiagram.svg("d", "t", engine, Optional.empty());
        assertThat(svg).contains("oxidizer hydraulic turbine", "kg/s back");
        for (Side side : Side.values()) {
            PumpSizing main = balance.machines().pump(PumpKey.main(side)).orElseThrow();
            assertThat(svg).contains("passes " + StationPlate.flow(main.duty().massFlow()));
        }
    }

    /** Each numbered plate is a link that a keyboard reaches, and says its station to who does not see it. */
    @Test
    void platesLeadToTheirStation() {
        EngineBalance balance = Concepts.balance("heron.toml");
        String svg = FlowDiagram.svg("d", "t", DrawnEngine.of(balance), Optional.of(n -> "#at" + n));
        balance.stations().forEach(s -> assertThat(svg)
                .contains("<a href=\"#at" + s.number() + "\" aria-label=\"station " + s.number() + ", " + s.name()));
        assertThat(svg).contains("role=\"group\"");
    }

    @Test
    void motorsAreDrawnOnTheirShafts() {
        String svg = FlowDiagram.svg("d", "t", DrawnEngine.of(Concepts.balance("dotterel.toml")), Optional.empty());
        assertThat(svg).contains("data-component=\"motor.fuel\"", "data-component=\"motor.oxidizer\"", ">battery<");
    }

    @Test
    void anEngineWithoutPumpsShowsItsPressurant() {
        DrawnEngine engine = DrawnEngine.of(Concepts.balance("dunlin.toml"));
        assertThat(FlowDiagram.svg("d", "t", engine, Optional.empty()))
                .contains("pressurant bottle", "regulator", "L/s");
        assertThat(engine.components)
                .filteredOn(c -> c.kind() == PartKind.TANK)
                .hasSize(2)
                .allSatisfy(tank -> assertThat(tank.inlets()).hasSize(1));
    }

    @Test
    void everyKindOfNozzleWallHasASignAndACaptionOfItsOwn() {
        List<NozzleWall> all = List.of(NozzleWall.values());
        assertThat(all).extracting(NozzleWall::sign).doesNotHaveDuplicates();
        for (ExtensionKind kind : ExtensionKind.values()) {
            NozzleWall.Drawn drawn = NozzleWall.uncooled(
                    new ExtensionDesign(kind, "niobium-c103", OptionalDouble.empty()), OptionalDouble.of(12));
            assertThat(drawn.wall().name()).isEqualTo(kind.name());
            assertThat(drawn.caption()).endsWith(" from area ratio 12.0");
        }
        assertThat(NozzleWall.of(Concepts.balance("heron.toml")).caption()).isEqualTo("cooled by channels to the exit");
    }
}

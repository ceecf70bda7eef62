package dev.penstock.cycles.origin;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** By definition of the numbering: along oxidizer, then fuel, then burnt gas, the larger branch first. */
class StationOrderTest {

    /** By hand: oxidizer 1, 3, 5 and fuel 2, 4 as laid; the fuel divides at 4 into 6 (small) and 7; all but 6 burn to 8. */
    @Test
    void numbersRunAlongEachPropellantAndTheLargerBranch() {
        StationOrder order = StationOrder.along(List.of(
                part(List.of(), out(1, Content.OXIDIZER, 9)),
                part(List.of(), out(2, Content.FUEL, 5)),
                part(List.of(1), out(3, Content.OXIDIZER, 9)),
                part(List.of(2), out(4, Content.FUEL, 5)),
                part(List.of(3), out(5, Content.OXIDIZER, 9)),
                part(List.of(4), out(6, Content.FUEL, 1), out(7, Content.FUEL, 4)),
                part(List.of(5, 7), out(8, Content.BURNT_GAS, 13))));
        assertThat(IntStream.rangeClosed(1, 8).map(order::of)).containsExactly(1, 4, 2, 5, 3, 7, 6, 8);
    }

    /** A line that comes together again is numbered behind both of its branches. */
    @Test
    void whatIsBroughtTogetherComesLast() {
        StationOrder order = StationOrder.along(List.of(
                part(List.of(), out(1, Content.FUEL, 5)),
                part(List.of(1), out(2, Content.FUEL, 1), out(3, Content.FUEL, 4)),
                part(List.of(2, 3), out(4, Content.FUEL, 5))));
        assertThat(IntStream.rangeClosed(1, 4).map(order::of)).containsExactly(1, 3, 2, 4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron.toml", "gannet.toml", "razorbill.toml", "avocet.toml", "dunlin.toml"})
    void stationsOfTheDemosFollowTheFlowWithoutJumps(String file) {
        EngineBalance balance = Concepts.balance(file);
        List<Integer> numbers = balance.stations().stream().map(Station::number).toList();
        assertThat(numbers)
                .isEqualTo(IntStream.rangeClosed(1, numbers.size()).boxed().toList());
        Map<Content, List<Integer>> bySide = balance.stations().stream()
                .collect(Collectors.groupingBy(
                        Station::content, TreeMap::new, Collectors.mapping(Station::number, Collectors.toList())));
        int first = 1;
        for (List<Integer> side : bySide.values()) {
            assertThat(side)
                    .isEqualTo(
                            IntStream.range(first, first + side.size()).boxed().toList());
            first += side.size();
        }
        for (Component c : balance.components()) {
            for (int in : c.inlets()) {
                c.outlets().forEach(out -> assertThat(out).as(c.id()).isGreaterThan(in));
            }
            boolean line = c.inlets().size() == 1 && c.outlets().size() == 1;
            if (line && same(balance, c)) {
                assertThat(c.outlets().get(0)).as(c.id()).isEqualTo(c.inlets().get(0) + 1);
            }
        }
    }

    private static boolean same(EngineBalance balance, Component c) {
        return balance.station(c.inlets().get(0)).content()
                == balance.station(c.outlets().get(0)).content();
    }

    /** Each way of a branch is called by where it leads, so that no two stations of an engine share a name. */
    @ParameterizedTest
    @ValueSource(strings = {"heron.toml", "gannet.toml", "razorbill.toml", "avocet.toml"})
    void noTwoStationsShareAName(String file) {
        assertThat(Concepts.balance(file).stations().stream().map(Station::name))
                .doesNotHaveDuplicates()
                .noneMatch(name -> name.contains("branch"));
    }

    private static StationOrder.Part part(List<Integer> in, StationOrder.Outlet... out) {
        return new StationOrder.Part(in, List.of(out));
    }

    private static StationOrder.Outlet out(int laid, Content content, double flow) {
        return new StationOrder.Outlet(laid, content, flow);
    }
}

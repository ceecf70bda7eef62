package dev.penstock.reports.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.Port;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Station;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FlowDiagramTest {

    private static final Pattern BOX =
            Pattern.compile("<rect x=\"(-?[\\d.]+)\" y=\"(-?[\\d.]+)\" width=\"([\\d.]+)\" height=\"([\\d.]+)\"");
    private static final Pattern SIZE = Pattern.compile("viewBox=\"0 0 ([\\d.]+) ([\\d.]+)\"");

    /** An arrangement grown at random: parts in a row, splits and junctions, all ending in one chamber. */
    private static final class Grown {

        final List<Component> components = new ArrayList<>();
        final List<Station> stations = new ArrayList<>();
        final List<FlowDiagram.Shaft> shafts = new ArrayList<>();

        Grown(Random random) {
            List<Integer> open = new ArrayList<>();
            for (Content side : List.of(Content.OXIDIZER, Content.FUEL)) {
                open.add(station(side));
                part(PartKind.TANK, List.of(), List.of(open.get(open.size() - 1)));
            }
            String pump = "";
            for (int i = random.nextInt(25); i > 0; i--) {
                int inlet = open.remove(random.nextInt(open.size()));
                Content medium = stations.get(inlet - 1).content();
                switch (random.nextInt(5)) {
                    case 0 -> {
                        open.add(station(medium));
                        open.add(station(medium));
                        part(PartKind.SPLIT, List.of(inlet), open.subList(open.size() - 2, open.size()));
                    }
                    case 1 -> {
                        List<Integer> inlets = new ArrayList<>(List.of(inlet));
                        if (!open.isEmpty()) {
                            inlets.add(open.remove(random.nextInt(open.size())));
                        }
                        open.add(station(Content.BURNT_GAS));
                        part(PartKind.PREBURNER, inlets, open.subList(open.size() - 1, open.size()));
                    }
                    default -> {
                        open.add(station(medium));
                        PartKind kind = List.of(PartKind.PUMP, PartKind.VALVE, PartKind.TURBINE, PartKind.JACKET)
                                .get(random.nextInt(4));
                        String id = part(kind, List.of(inlet), open.subList(open.size() - 1, open.size()));
                        if (kind == PartKind.PUMP) {
                            pump = id;
                        } else if (kind == PartKind.TURBINE && !pump.isEmpty()) {
                            shafts.add(new FlowDiagram.Shaft(List.of(pump), List.of(id)));
                        }
                    }
                }
            }
            part(PartKind.CHAMBER, open, List.of());
        }

        private int station(Content content) {
            int number = stations.size() + 1;
            stations.add(stationOf(number, "station <" + number + ">", content));
            return number;
        }

        private String part(PartKind kind, List<Integer> inlets, List<Integer> outlets) {
            components.add(new Component(
                    PartKey.of(kind, Integer.toString(components.size()), "a & b " + components.size()),
                    inlets,
                    outlets,
                    0,
                    0));
            return components.get(components.size() - 1).id();
        }

        String svg() {
            return FlowDiagram.svg("d", "title", DrawnEngine.of(components, stations, shafts), Optional.empty());
        }
    }

    private static Station stationOf(int number, String name, Content content) {
        return new Station(
                number,
                PartKey.of(PartKind.VALVE, name, name).at(Port.BEHIND),
                "medium",
                content,
                1.234e7,
                123.4,
                500,
                0,
                12.34);
    }

    @Property(tries = 150)
    void boxesNeverOverlapAndStayOnThePaper(@ForAll long seed) {
        String svg = new Grown(new Random(seed)).svg();
        Matcher size = SIZE.matcher(svg);
        assertThat(size.find()).isTrue();
        Rectangle2D paper =
                new Rectangle2D.Double(0, 0, Double.parseDouble(size.group(1)), Double.parseDouble(size.group(2)));
        List<Rectangle2D> boxes = boxes(svg);
        for (int i = 0; i < boxes.size(); i++) {
            assertThat(paper.contains(boxes.get(i)))
                    .as("box %d of seed %d", i, seed)
                    .isTrue();
            for (int j = 0; j < i; j++) {
                assertThat(boxes.get(i).intersects(boxes.get(j)))
                        .as("boxes %d and %d of seed %d", i, j, seed)
                        .isFalse();
            }
        }
    }

    private static List<Rectangle2D> boxes(String svg) {
        List<Rectangle2D> boxes = new ArrayList<>();
        Matcher matcher = BOX.matcher(svg);
        while (matcher.find()) {
            boxes.add(new Rectangle2D.Double(
                    Double.parseDouble(matcher.group(1)),
                    Double.parseDouble(matcher.group(2)),
                    Double.parseDouble(matcher.group(3)),
                    Double.parseDouble(matcher.group(4))));
        }
        return boxes;
    }

    @Property(tries = 50)
    void everyStationAndPartIsDrawnOnceAndTheSameEachTime(@ForAll long seed) {
        Grown grown = new Grown(new Random(seed));
        String svg = grown.svg();
        grown.stations.forEach(s -> assertThat(svg).containsOnlyOnce("data-station=\"" + s.number() + "\""));
        grown.components.forEach(c -> assertThat(svg).containsOnlyOnce("data-component=\"" + c.id() + "\""));
        assertThat(grown.svg()).isEqualTo(svg);
    }

    @Test
    void textIsEscaped() {
        String svg = new Grown(new Random(1)).svg();
        assertThat(svg).contains("station &lt;1&gt;", "a &amp; b").doesNotContain("station <1>", "a & b");
    }

    @Test
    void aCircleIsRefused() {
        List<Station> stations = List.of(stationOf(1, "a", Content.OXIDIZER), stationOf(2, "b", Content.OXIDIZER));
        List<Component> circle = List.of(
                new Component(PartKey.of(PartKind.VALVE, "x", "x"), List.of(1), List.of(2), 0, 0),
                new Component(PartKey.of(PartKind.VALVE, "y", "y"), List.of(2), List.of(1), 0, 0));
        assertThatThrownBy(
                        () -> FlowDiagram.svg("d", "t", DrawnEngine.of(circle, stations, List.of()), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("circle");
    }
}

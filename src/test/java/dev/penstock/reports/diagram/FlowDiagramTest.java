package dev.penstock.reports.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Component.Kind;
import dev.penstock.cycles.sheet.Station;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
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
            for (String side : List.of("oxygen", "methane")) {
                open.add(station(side));
                part(Kind.TANK, List.of(), List.of(open.get(open.size() - 1)));
            }
            String pump = "";
            for (int i = random.nextInt(25); i > 0; i--) {
                int inlet = open.remove(random.nextInt(open.size()));
                String medium = stations.get(inlet - 1).medium();
                switch (random.nextInt(5)) {
                    case 0 -> {
                        open.add(station(medium));
                        open.add(station(medium));
                        part(Kind.SPLIT, List.of(inlet), open.subList(open.size() - 2, open.size()));
                    }
                    case 1 -> {
                        List<Integer> inlets = new ArrayList<>(List.of(inlet));
                        if (!open.isEmpty()) {
                            inlets.add(open.remove(random.nextInt(open.size())));
                        }
                        open.add(station("fuel-rich gas"));
                        part(Kind.PREBURNER, inlets, open.subList(open.size() - 1, open.size()));
                    }
                    default -> {
                        open.add(station(medium));
                        Kind kind = List.of(Kind.PUMP, Kind.VALVE, Kind.TURBINE, Kind.JACKET)
                                .get(random.nextInt(4));
                        String id = part(kind, List.of(inlet), open.subList(open.size() - 1, open.size()));
                        if (kind == Kind.PUMP) {
                            pump = id;
                        } else if (kind == Kind.TURBINE && !pump.isEmpty()) {
                            shafts.add(new FlowDiagram.Shaft("shaft", List.of(pump), List.of(id)));
                        }
                    }
                }
            }
            part(Kind.CHAMBER, open, List.of());
        }

        private int station(String medium) {
            int number = stations.size() + 1;
            stations.add(new Station(number, "station <" + number + ">", medium, 1.234e7, 123.4, 500, 0, 12.34));
            return number;
        }

        private String part(Kind kind, List<Integer> inlets, List<Integer> outlets) {
            String id = "part." + components.size();
            components.add(new Component(id, kind, "a & b " + components.size(), inlets, outlets, 0, 0));
            return id;
        }

        String svg() {
            return FlowDiagram.svg("d", "title", components, stations, shafts, "oxygen", "methane");
        }
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
        List<Station> stations = List.of(
                new Station(1, "a", "oxygen", 1e5, 90, 1000, 0, 1), new Station(2, "b", "oxygen", 1e5, 90, 1000, 0, 1));
        List<Component> circle = List.of(
                new Component("x", Kind.VALVE, "x", List.of(1), List.of(2), 0, 0),
                new Component("y", Kind.VALVE, "y", List.of(2), List.of(1), 0, 0));
        assertThatThrownBy(() -> FlowDiagram.svg("d", "t", circle, stations, List.of(), "oxygen", "methane"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("circle");
    }
}

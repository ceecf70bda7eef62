package dev.penstock.reports.engine;

import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.cycles.trail.FeedFigures;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.turbomachinery.feed.PressurantBottle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** What keeps tanks under pressure, and the engine over its life: JSON object, terminal tables, section of a page. */
public final class PressureFeedView {

    private static final double BAR = 1e5;

    private final PressureFeed feed;

    /** @param feed tanks, pressurant and life of an engine without pumps */
    public PressureFeedView(PressureFeed feed) {
        this.feed = feed;
    }

    /** @return JSON object */
    public Map<String, Object> json() {
        return FigureJson.of(FeedFigures.ALL, feed);
    }

    private boolean falls() {
        return feed.design().feed() == PressurizationDesign.Feed.BLOWDOWN;
    }

    /** @return tables for a terminal */
    public String text() {
        StringBuilder text = new StringBuilder();
        text.append(TextTable.of(tanks())).append(System.lineSeparator());
        if (falls()) {
            text.append(TextTable.of(life())).append(System.lineSeparator());
        }
        sentences().forEach(s -> text.append(s).append(System.lineSeparator()));
        return text.toString();
    }

    private PageTable tanks() {
        return FigureRows.list(
                "Tanks",
                FeedFigures.TANKS,
                "pressure_feed.tanks",
                FeedFigures.FedTank.of(feed),
                "name propellant_mass_kg volume_m3 pressure_begin_Pa pressure_end_Pa gas_mass_kg residual_kg");
    }

    private PageTable life() {
        return FigureRows.list(
                "Life",
                FeedFigures.POINTS,
                "pressure_feed.points",
                FeedFigures.Moment.of(feed),
                "expelled time_s chamber_pressure_Pa mixture_ratio thrust_vacuum_N isp_vacuum_s injector_drop_share");
    }

    private List<String> sentences() {
        List<String> list = new ArrayList<>();
        String gas = feed.design().gas().fluid().name();
        if (falls()) {
            PressureFeed.Point begin = feed.begin();
            PressureFeed.Point end = feed.end();
            list.add(gas + " closed into the tanks expands ("
                    + feed.design().law().name().toLowerCase(Locale.ROOT) + ") from an ullage of "
                    + Notation.PERCENT.write(feed.design().oxidizerUllage()) + " (oxidizer) and "
                    + Notation.PERCENT.write(feed.design().fuelUllage()) + " (fuel): tank pressure falls by "
                    + Notation.significant(feed.tanks().get(0).blowdownRatio(), 3) + " (oxidizer) and "
                    + Notation.significant(feed.tanks().get(1).blowdownRatio(), 3) + " (fuel) to one.");
            list.add("From start to end of life thrust goes from " + Notation.FORCE.write(begin.vacuumThrust()) + " to "
                    + Notation.FORCE.write(end.vacuumThrust()) + " kN, specific impulse from "
                    + Notation.fixed(begin.vacuumIsp(), 1) + " to " + Notation.fixed(end.vacuumIsp(), 1)
                    + " s, mixture ratio from " + Notation.significant(begin.mixtureRatio(), 4) + " to "
                    + Notation.significant(end.mixtureRatio(), 4)
                    + "; the tanks are loaded so that they end together.");
        }
        feed.bottle()
                .ifPresent(b -> list.add("A bottle of " + Notation.significant(b.volume() * 1e3, 3) + " l and "
                        + Notation.significant(b.bottleMass(), 3) + " kg holds " + Notation.significant(b.loaded(), 3)
                        + " kg of "
                        + gas + "; it is spent at " + Notation.PRESSURE.write(b.endPressure()) + " bar and "
                        + Notation.TEMPERATURE.write(b.endTemperature()) + " K, and the gas enters the tanks at "
                        + Notation.TEMPERATURE.write(b.tankTemperature()) + " K."));
        feed.heater()
                .ifPresent(h -> list.add("Heating takes " + Notation.POWER.write(h.power()) + " from "
                        + (h.source() == PressurizationDesign.HeatSource.NOZZLE_COIL
                                ? "a coil about the nozzle"
                                : "electric power")
                        + ", " + Notation.significant(100 * h.jetShare(), 2) + " % of the jet's power, and saves "
                        + Notation.significant(feed.massSaved(), 3) + " kg of gas and bottle"
                        + (h.impulseCost().isPresent()
                                ? "; the heat missing in the jet costs "
                                        + Notation.significant(h.impulseCost().getAsDouble(), 2)
                                        + " s of specific impulse."
                                : ".")));
        list.add("Total impulse in vacuum: " + Notation.significant(feed.totalImpulse() / 1e6, 4) + " MN·s.");
        return list;
    }

    /** @return section of a page */
    public PageSection section() {
        return new PageSection(
                "pressurization",
                "Pressurization",
                "What pushes the propellant out, and what becomes of the engine over its life?",
                sentences(),
                List.of(falls() ? lifeChart() : massChart()),
                List.of(tanks()),
                List.of(life()));
    }

    private Drawing lifeChart() {
        List<LineChart.Panel> panels = List.of(
                new LineChart.Panel(
                        "pressure (bar)",
                        3,
                        true,
                        List.of(
                                curve("oxidizer tank", Ink.OXIDIZER, p -> p.oxidizerTankPressure() / BAR),
                                curve("fuel tank", Ink.FUEL, p -> p.fuelTankPressure() / BAR),
                                curve("chamber", Ink.GAS, p -> p.chamberPressure() / BAR))),
                new LineChart.Panel(
                        "thrust, vacuum (kN)",
                        2,
                        true,
                        List.of(curve("thrust", Ink.STEEL, p -> p.vacuumThrust() / 1e3))),
                new LineChart.Panel(
                        "Isp, vacuum (s)",
                        2,
                        false,
                        List.of(curve("specific impulse", Ink.GAIN, PressureFeed.Point::vacuumIsp))),
                new LineChart.Panel(
                        "mixture ratio",
                        2,
                        false,
                        List.of(curve("mixture ratio", Ink.MUTED, PressureFeed.Point::mixtureRatio))));
        return new Drawing(
                LineChart.svg("p-life", "The engine as its tanks empty", "propellant expelled (%)", panels, 640),
                "Pressures, thrust, specific impulse and mixture ratio against the propellant expelled, with nothing"
                        + " that regulates.",
                true);
    }

    private Curve curve(String name, Ink ink, ToDoubleFunction<PressureFeed.Point> y) {
        return new Curve(
                name,
                ink,
                false,
                feed.points().stream()
                        .map(p -> new Curve.Point(100 * p.expelled(), y.applyAsDouble(p)))
                        .toList());
    }

    private Drawing massChart() {
        List<SpanChart.Bar> bars = new ArrayList<>();
        feed.unheated().ifPresent(b -> bars.addAll(masses("unheated", b)));
        feed.bottle().ifPresent(b -> bars.addAll(masses(feed.heater().isPresent() ? "heated" : "regulated", b)));
        return new Drawing(
                SpanChart.svg("p-mass", "Pressurant and its bottle", "mass (kg)", true, bars),
                "Gas loaded and the bottle that holds it.",
                false);
    }

    private static List<SpanChart.Bar> masses(String what, PressurantBottle b) {
        return List.of(
                new SpanChart.Bar(what + ": gas", 0, b.loaded(), Ink.GAIN, Notation.significant(b.loaded(), 3) + " kg"),
                new SpanChart.Bar(
                        what + ": bottle",
                        0,
                        b.bottleMass(),
                        Ink.STEEL,
                        Notation.significant(b.bottleMass(), 3) + " kg"));
    }
}

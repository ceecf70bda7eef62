package dev.penstock.reports.engine;

import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Figure;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.turbomachinery.feed.PressurantBottle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("feed", feed.design().feed().name().toLowerCase(Locale.ROOT));
        map.put("gas", feed.design().gas().id());
        map.put("tanks", feed.tanks().stream().map(PressureFeedView::tank).toList());
        map.put("points", feed.points().stream().map(PressureFeedView::point).toList());
        map.put("total_impulse_N_s", feed.totalImpulse());
        map.put("bottle", feed.bottle().map(PressureFeedView::bottle));
        map.put("bottle_unheated", feed.unheated().map(PressureFeedView::bottle));
        map.put("heater", feed.heater().map(h -> {
            Map<String, Object> heater = new LinkedHashMap<>();
            heater.put("source", source(h));
            heater.put("power_W", h.power());
            heater.put("share_of_jet_power", h.jetShare());
            h.impulseCost().ifPresent(cost -> heater.put("isp_cost_s", cost));
            heater.put("mass_saved_kg", saved());
            return heater;
        }));
        return map;
    }

    private static Map<String, Object> tank(PressureFeed.Tank tank) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", tank.side().key());
        map.put("propellant_mass_kg", tank.propellantMass());
        map.put("volume_m3", tank.volume());
        map.put("pressure_begin_Pa", tank.beginPressure());
        map.put("pressure_end_Pa", tank.endPressure());
        map.put("blowdown_ratio", tank.blowdownRatio());
        map.put("gas_mass_kg", tank.gasMass());
        map.put("vapour_pressure_Pa", tank.vapourPressure());
        map.put("residual_kg", tank.residual());
        return map;
    }

    private static Map<String, Object> point(PressureFeed.Point p) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("expelled", p.expelled());
        map.put("time_s", p.time());
        map.put("oxidizer_tank_pressure_Pa", p.oxidizerTankPressure());
        map.put("fuel_tank_pressure_Pa", p.fuelTankPressure());
        map.put("chamber_pressure_Pa", p.chamberPressure());
        map.put("mixture_ratio", p.mixtureRatio());
        map.put("thrust_vacuum_N", p.vacuumThrust());
        map.put("isp_vacuum_s", p.vacuumIsp());
        map.put("mass_flow_kg_s", p.massFlow());
        map.put("injector_drop_share", p.injectorDrop());
        return map;
    }

    private static Map<String, Object> bottle(PressurantBottle b) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("gas_loaded_kg", b.loaded());
        map.put("gas_used_kg", b.used());
        map.put("volume_m3", b.volume());
        map.put("bottle_mass_kg", b.bottleMass());
        map.put("end_pressure_Pa", b.endPressure());
        map.put("end_temperature_K", b.endTemperature());
        map.put("tank_gas_temperature_K", b.tankTemperature());
        map.put("heat_J", b.heat());
        return map;
    }

    private static String source(PressureFeed.Heater heater) {
        return heater.source() == PressurizationDesign.HeatSource.NOZZLE_COIL ? "nozzle coil" : "electric";
    }

    private double saved() {
        return feed.unheated().orElseThrow().mass()
                - feed.bottle().orElseThrow().mass();
    }

    private boolean falls() {
        return feed.design().feed() == PressurizationDesign.Feed.BLOWDOWN;
    }

    /** @return tables for a terminal */
    public String text() {
        StringBuilder text = new StringBuilder();
        TextTable tanks = new TextTable()
                .header("tank", "propellant kg", "volume m³", "begin bar", "end bar", "gas kg", "left over kg");
        feed.tanks().forEach(t -> tanks.row(tankCells(t)));
        text.append(tanks.text()).append(System.lineSeparator());
        if (falls()) {
            TextTable life = new TextTable()
                    .header("expelled", "s", "chamber bar", "mixture", "thrust kN", "Isp vac s", "injector drop");
            feed.points().forEach(p -> life.row(pointCells(p)));
            text.append(life.text()).append(System.lineSeparator());
        }
        sentences().forEach(s -> text.append(s).append(System.lineSeparator()));
        return text.toString();
    }

    private static String[] tankCells(PressureFeed.Tank t) {
        return new String[] {
            t.side().key(),
            Figures.significant(t.propellantMass(), 4),
            Figures.significant(t.volume(), 3),
            Figures.bar(t.beginPressure()),
            Figures.bar(t.endPressure()),
            Figures.significant(t.gasMass(), 3),
            Figures.significant(t.residual(), 3)
        };
    }

    private static String[] pointCells(PressureFeed.Point p) {
        return new String[] {
            Figures.percent(p.expelled()),
            Figures.significant(p.time(), 4),
            Figures.bar(p.chamberPressure()),
            Figures.significant(p.mixtureRatio(), 4),
            Figures.kilonewton(p.vacuumThrust()),
            Figures.fixed(p.vacuumIsp(), 1),
            Figures.percent(p.injectorDrop())
        };
    }

    private List<String> sentences() {
        List<String> list = new ArrayList<>();
        String gas = feed.design().gas().fluid().name();
        if (falls()) {
            PressureFeed.Point begin = feed.begin();
            PressureFeed.Point end = feed.end();
            list.add(gas + " closed into the tanks expands ("
                    + feed.design().law().name().toLowerCase(Locale.ROOT) + ") from an ullage of "
                    + Figures.percent(feed.design().oxidizerUllage()) + " (oxidizer) and "
                    + Figures.percent(feed.design().fuelUllage()) + " (fuel): tank pressure falls by "
                    + Figures.significant(feed.tanks().get(0).blowdownRatio(), 3) + " (oxidizer) and "
                    + Figures.significant(feed.tanks().get(1).blowdownRatio(), 3) + " (fuel) to one.");
            list.add("From start to end of life thrust goes from " + Figures.kilonewton(begin.vacuumThrust()) + " to "
                    + Figures.kilonewton(end.vacuumThrust()) + " kN, specific impulse from "
                    + Figures.fixed(begin.vacuumIsp(), 1) + " to " + Figures.fixed(end.vacuumIsp(), 1)
                    + " s, mixture ratio from " + Figures.significant(begin.mixtureRatio(), 4) + " to "
                    + Figures.significant(end.mixtureRatio(), 4)
                    + "; the tanks are loaded so that they end together.");
        }
        feed.bottle()
                .ifPresent(b -> list.add("A bottle of " + Figures.significant(b.volume() * 1e3, 3) + " l and "
                        + Figures.significant(b.bottleMass(), 3) + " kg holds " + Figures.significant(b.loaded(), 3)
                        + " kg of "
                        + gas + "; it is spent at " + Figures.bar(b.endPressure()) + " bar and "
                        + Figures.kelvin(b.endTemperature()) + " K, and the gas enters the tanks at "
                        + Figures.kelvin(b.tankTemperature()) + " K."));
        feed.heater()
                .ifPresent(h -> list.add("Heating takes " + Figures.power(h.power()) + " from "
                        + (h.source() == PressurizationDesign.HeatSource.NOZZLE_COIL
                                ? "a coil about the nozzle"
                                : "electric power")
                        + ", " + Figures.significant(100 * h.jetShare(), 2) + " % of the jet's power, and saves "
                        + Figures.significant(saved(), 3) + " kg of gas and bottle"
                        + (h.impulseCost().isPresent()
                                ? "; the heat missing in the jet costs "
                                        + Figures.significant(h.impulseCost().getAsDouble(), 2)
                                        + " s of specific impulse."
                                : ".")));
        list.add("Total impulse in vacuum: " + Figures.significant(feed.totalImpulse() / 1e6, 4) + " MN·s.");
        return list;
    }

    /** @return section of a page */
    public PageSection section() {
        PageTable.Builder tanks = PageTable.titled(
                "Tanks",
                "<tank",
                "propellant (kg)",
                "volume (m³)",
                "pressure at start (bar)",
                "at end (bar)",
                "gas closed in (kg)",
                "left over (kg)");
        feed.tanks().forEach(t -> tanks.row(tankCells(t))
                .traced(PageTable.traces(
                        "pressure_feed.tanks." + t.side().key(),
                        "",
                        "propellant_mass_kg",
                        "volume_m3",
                        "pressure_begin_Pa",
                        "pressure_end_Pa",
                        "gas_mass_kg",
                        "residual_kg")));
        PageTable.Builder life = PageTable.titled(
                "Life",
                "expelled",
                "time (s)",
                "chamber (bar)",
                "mixture ratio",
                "thrust, vacuum (kN)",
                "Isp, vacuum (s)",
                "injector drop / chamber");
        for (int i = 0; i < feed.points().size(); i++) {
            life.row(pointCells(feed.points().get(i)))
                    .traced(PageTable.traces(
                            "pressure_feed.points." + i,
                            "expelled",
                            "time_s",
                            "chamber_pressure_Pa",
                            "mixture_ratio",
                            "thrust_vacuum_N",
                            "isp_vacuum_s",
                            "injector_drop_share"));
        }
        return new PageSection(
                "pressurization",
                "Pressurization",
                "What pushes the propellant out, and what becomes of the engine over its life?",
                sentences(),
                List.of(falls() ? lifeChart() : massChart()),
                List.of(tanks.table()),
                List.of(life.table()));
    }

    private Figure lifeChart() {
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
        return new Figure(
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

    private Figure massChart() {
        List<SpanChart.Bar> bars = new ArrayList<>();
        feed.unheated().ifPresent(b -> bars.addAll(masses("unheated", b)));
        feed.bottle().ifPresent(b -> bars.addAll(masses(feed.heater().isPresent() ? "heated" : "regulated", b)));
        return new Figure(
                SpanChart.svg("p-mass", "Pressurant and its bottle", "mass (kg)", true, bars),
                "Gas loaded and the bottle that holds it.",
                false);
    }

    private static List<SpanChart.Bar> masses(String what, PressurantBottle b) {
        return List.of(
                new SpanChart.Bar(what + ": gas", 0, b.loaded(), Ink.GAIN, Figures.significant(b.loaded(), 3) + " kg"),
                new SpanChart.Bar(
                        what + ": bottle",
                        0,
                        b.bottleMass(),
                        Ink.STEEL,
                        Figures.significant(b.bottleMass(), 3) + " kg"));
    }
}

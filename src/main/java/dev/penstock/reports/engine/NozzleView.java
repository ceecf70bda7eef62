package dev.penstock.reports.engine;

import static dev.penstock.provenance.Place.Role.WHOLE;
import static dev.penstock.provenance.Place.fixed;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.chamber.PlugNozzle;
import dev.penstock.chamber.atmosphere.AscentAverage;
import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.contour.ContourPoint;
import dev.penstock.chamber.loss.Vaporisation;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Nozzle of a balanced engine: contour, behaviour with altitude, over an ascent and throttled. */
public final class NozzleView {

    private static final double[] ALTITUDES = {0, 1e3, 2e3, 5e3, 10e3, 15e3, 20e3, 30e3, 40e3, 60e3, 80e3};
    private static final double[] THROTTLES = {1, 0.8, 0.6, 0.4, 0.2, 0.1};

    private static final Origin CHOSEN = Origin.given("step of the table", "chosen here");
    private static final Place.Source GRAVITY = fixed("constants.standard_gravity_m_s2");

    /** What the engine gives at an altitude. */
    private record Height(
            double altitude,
            double ambient,
            double thrust,
            double isp,
            OptionalDouble plug,
            double chamber,
            ModelCard expansion) {}

    /** What throttled combustion costs. */
    private record Flow(double throttle, double factor) {}

    private static final Notation ISP = significant("s", 4);

    /** Figures of a point of the wall. */
    private static final FigureTable<ContourPoint> WALL = FigureTable.<ContourPoint>ofOne()
            .number("x_m", "distance", Notation.LENGTH, ContourPoint::x)
            .by(ContourBuilder.CARD, of(WHOLE, "area_ratio"), of(WHOLE, "throat_radius_m"))
            .number("radius_m", "radius", Notation.LENGTH, ContourPoint::radius)
            .by(ContourBuilder.CARD, of(WHOLE, "area_ratio"), of(WHOLE, "throat_radius_m"))
            .table();

    private static final FigureTable<Height> HEIGHTS = FigureTable.<Height>ofOne()
            .number("altitude_m", "altitude", significant("m", "km", 1e-3, 3), Height::altitude)
            .from((h, at) -> CHOSEN)
            .number("ambient_pressure_Pa", "ambient", significant("Pa", "bar", 1e-5, 4), Height::ambient)
            .by(StandardAtmosphere1976.CARD, own("altitude_m"))
            .number("thrust_N", "thrust", Notation.FORCE, Height::thrust)
            .by(Height::expansion, own("ambient_pressure_Pa"), fixed("engine.thrust_vacuum_N", "chamber.exit_area_m2"))
            .number("isp_s", "engine Isp", ISP, Height::isp)
            .by(Definitions.IMPULSE, own("thrust_N"), fixed("engine.mass_flow_kg_s"), GRAVITY)
            .optional("isp_with_ideal_plug_s", "ideal plug Isp", ISP, Height::plug)
            .by(PlugNozzle.CARD, own("ambient_pressure_Pa"), fixed("engine.thrust_vacuum_N"), GRAVITY)
            .leftOutIfAbsent()
            .number("chamber_isp_s", "chamber Isp", ISP, Height::chamber)
            .by(Height::expansion, own("ambient_pressure_Pa"), fixed("chamber.vacuum_impulse_m_s"), GRAVITY)
            .table();

    private static final FigureTable<NozzleView> ASCENT = FigureTable.<NozzleView>ofOne()
            .number("burn_time_s", "burn", Notation.fixed("s", "s", 1, 0), v -> v.ascentTime)
            .from((v, at) -> Origin.given("stated with the question", "command line"))
            .number("isp_average_s", "Isp, averaged", Notation.fixed("s", "s", 1, 1), NozzleView::average)
            .by(
                    AscentAverage.CARD,
                    own("burn_time_s"),
                    fixed("engine.thrust_vacuum_N", "engine.mass_flow_kg_s", "chamber.exit_area_m2"))
            .table();

    private static final FigureTable<Flow> FLOWS = FigureTable.<Flow>ofOne()
            .number("throttle", "throttle", Notation.PERCENT, Flow::throttle)
            .from((f, at) -> CHOSEN)
            .number("characteristic_velocity_factor", "c* factor", significant("", 4), Flow::factor)
            .by(Vaporisation.CARD, own("throttle"), fixed("engine.chamber_mixture_ratio"))
            .table();

    static final FigureTable<NozzleView> ALL = FigureTable.<NozzleView>ofOne()
            .word("name", "concept", v -> v.balance.concept().name())
            .number("area_ratio", "area ratio", significant("", 4), v -> v.balance
                    .engine()
                    .areaRatio())
            .by(ModelCard.SAME, fixed("engine.area_ratio"))
            .number("throat_radius_m", "throat radius", Notation.fixed("m", "mm", 1e3, 1), v -> v.contour()
                    .throatRadius())
            .by(Definitions.RATIO, fixed("engine.throat_diameter_m"))
            .number("nozzle_length_m", "throat to exit", Notation.fixed("m", "mm", 1e3, 0), v -> v.contour()
                    .nozzleLength())
            .by(ContourBuilder.CARD, own("area_ratio", "throat_radius_m"))
            .number("chamber_length_m", "injector to throat", Notation.fixed("m", "mm", 1e3, 0), v -> v.contour()
                    .chamberLength())
            .by(ContourBuilder.CARD, own("throat_radius_m"))
            .each("contour", v -> v.contour().points(), WALL)
            .each("altitudes", NozzleView::heights, HEIGHTS)
            .part("ascent", Optional::of, ASCENT)
            .each("throttle", NozzleView::flows, FLOWS)
            .word("warnings", "warnings", v -> v.balance.chamber().warnings().stream()
                    .map(w -> w.source() + ": " + w.message())
                    .toList())
            .table();

    private final EngineBalance balance;
    private final double ascentTime;
    private final double pressureDecay;
    private final Atmosphere air = new StandardAtmosphere1976();

    /**
     * @param balance balanced engine
     * @param ascentTime burn time of the ascent to average over (s)
     * @param pressureDecay time in which the ambient pressure falls to 1/e on that ascent (s)
     */
    public NozzleView(EngineBalance balance, double ascentTime, double pressureDecay) {
        this.balance = balance;
        this.ascentTime = ascentTime;
        this.pressureDecay = pressureDecay;
    }

    /** @return the contour as comma-separated points */
    public String csv() {
        return balance.chamber().contour().toCsv();
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        return FigureJson.of(ALL, this);
    }

    private ChamberContour contour() {
        return balance.chamber().contour();
    }

    private List<Height> heights() {
        List<Height> heights = new ArrayList<>();
        for (double altitude : ALTITUDES) {
            double pressure = air.at(altitude).pressure();
            heights.add(new Height(
                    altitude,
                    pressure,
                    balance.thrustAt(pressure),
                    balance.ispAt(pressure),
                    compensated(pressure),
                    balance.chamber().impulseAt(pressure) / Constants.STANDARD_GRAVITY,
                    balance.chamber().altitudeCard()));
        }
        return heights;
    }

    private List<Flow> flows() {
        return DoubleStream.of(THROTTLES)
                .mapToObj(throttle ->
                        new Flow(throttle, balance.vaporisation(throttle).partFlow()))
                .toList();
    }

    /** @return tables for a terminal */
    public String text() {
        String line = System.lineSeparator();
        return balance.concept().name() + ": area ratio " + said("area_ratio") + ", throat radius "
                + said("throat_radius_m") + ", nozzle " + said("nozzle_length_m") + " long, chamber "
                + said("chamber_length_m") + line + line
                + TextTable.of(FigureRows.list(
                        "",
                        HEIGHTS,
                        "altitudes",
                        heights(),
                        "altitude_m ambient_pressure_Pa thrust_N isp_s chamber_isp_s isp_with_ideal_plug_s"))
                + String.format(
                        Locale.ROOT,
                        "%nThe ideal plug is the engine with a cluster whose flow expands to the ambient pressure up to the"
                                + " same area ratio; an upper bound.%nAveraged over an ascent of %.0f s, ambient pressure falling"
                                + " to 1/e every %.0f s: %s s%n%n",
                        ascentTime,
                        pressureDecay,
                        ASCENT.figure("isp_average_s").text(this))
                + TextTable.of(
                        FigureRows.list("", FLOWS, "throttle", flows(), "throttle characteristic_velocity_factor"))
                + line + "Throttle is chamber pressure over that of the design. Factor on c* of an injector with fixed"
                + " orifices, against the design." + line
                + BalanceText.warnings(balance.chamber().warnings());
    }

    private String said(String key) {
        Figure<NozzleView> figure = ALL.figure(key);
        return figure.notation().writeWithUnit(figure.number(this).orElseThrow());
    }

    private double average() {
        return AscentAverage.specificImpulse(
                balance::thrustAt,
                balance.engine().massFlow(),
                AscentAverage.exponential(Constants.STANDARD_ATMOSPHERE, pressureDecay),
                ascentTime);
    }

    /** Impulse of the engine with a plug for its bell; empty where the ambient pressure is too high for the model. */
    private OptionalDouble compensated(double pressure) {
        try {
            double thrust = balance.concept().chambers() * new PlugNozzle(balance.chamber()).thrustAt(pressure)
                    + balance.exhausts().stream()
                            .mapToDouble(j -> j.thrustAt(pressure))
                            .sum();
            return OptionalDouble.of(thrust / balance.engine().massFlow() / Constants.STANDARD_GRAVITY);
        } catch (OutsideValidity e) {
            return OptionalDouble.empty();
        }
    }
}

package dev.penstock.reports.engine;

import dev.penstock.chamber.PlugNozzle;
import dev.penstock.chamber.atmosphere.AscentAverage;
import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.chamber.loss.ThrottledCombustion;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.quantities.Constants;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Nozzle of a balanced engine: contour, behaviour with altitude, over an ascent and at part flow. */
public final class NozzleView {

    private static final double[] ALTITUDES = {0, 1e3, 2e3, 5e3, 10e3, 15e3, 20e3, 30e3, 40e3, 60e3, 80e3};
    private static final double[] THROTTLES = {1, 0.8, 0.6, 0.4, 0.2, 0.1};

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
        Map<String, Object> map = new LinkedHashMap<>();
        ChamberContour contour = balance.chamber().contour();
        map.put("name", balance.concept().name());
        map.put("area_ratio", balance.engine().areaRatio());
        map.put("throat_radius_m", contour.throatRadius());
        map.put("nozzle_length_m", contour.nozzleLength());
        map.put("chamber_length_m", contour.chamberLength());
        List<Map<String, Object>> points = new ArrayList<>();
        contour.points().forEach(p -> points.add(ordered("x_m", p.x(), "radius_m", p.radius())));
        map.put("contour", points);
        List<Map<String, Object>> heights = new ArrayList<>();
        for (double altitude : ALTITUDES) {
            double pressure = air.at(altitude).pressure();
            Map<String, Object> row = ordered("altitude_m", altitude, "ambient_pressure_Pa", pressure);
            row.put("thrust_N", balance.thrustAt(pressure));
            row.put("isp_s", balance.ispAt(pressure));
            compensated(pressure).ifPresent(isp -> row.put("chamber_isp_with_ideal_plug_s", isp));
            row.put("chamber_isp_s", balance.chamber().impulseAt(pressure) / Constants.STANDARD_GRAVITY);
            heights.add(row);
        }
        map.put("altitudes", heights);
        AscentAverage average = average();
        map.put("ascent", ordered("burn_time_s", ascentTime, "isp_average_s", average.specificImpulse()));
        List<Map<String, Object>> flows = new ArrayList<>();
        for (double throttle : THROTTLES) {
            flows.add(ordered(
                    "mass_flow_fraction", throttle, "characteristic_velocity_factor", throttledFactor(throttle)));
        }
        map.put("throttle", flows);
        map.put(
                "warnings",
                balance.chamber().warnings().stream()
                        .map(w -> w.source() + ": " + w.message())
                        .toList());
        return map;
    }

    /** @return tables for a terminal */
    public String text() {
        ChamberContour contour = balance.chamber().contour();
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%s: area ratio %.4g, throat radius %.1f mm, nozzle %.0f mm long, chamber %.0f mm%n%n",
                balance.concept().name(),
                balance.engine().areaRatio(),
                contour.throatRadius() * 1e3,
                contour.nozzleLength() * 1e3,
                contour.chamberLength() * 1e3));
        TextTable heights = new TextTable()
                .header("altitude km", "ambient bar", "thrust kN", "engine Isp s", "chamber Isp s", "ideal plug Isp s");
        for (double altitude : ALTITUDES) {
            double pressure = air.at(altitude).pressure();
            OptionalDouble plug = compensated(pressure);
            heights.row(
                    Figures.significant(altitude / 1e3, 3),
                    Figures.significant(pressure / 1e5, 4),
                    Figures.significant(balance.thrustAt(pressure) / 1e3, 4),
                    Figures.significant(balance.ispAt(pressure), 4),
                    Figures.significant(balance.chamber().impulseAt(pressure) / Constants.STANDARD_GRAVITY, 4),
                    plug.isPresent() ? Figures.significant(plug.getAsDouble(), 4) : "-");
        }
        text.append(heights.text());
        text.append(String.format(
                Locale.ROOT,
                "%nThe ideal plug is a cluster whose flow expands to the ambient pressure up to the same area ratio; an upper"
                        + " bound.%nAveraged over an ascent of %.0f s, ambient pressure falling to 1/e every %.0f s:"
                        + " %.1f s%n%n",
                ascentTime,
                pressureDecay,
                average().specificImpulse()));
        TextTable flows = new TextTable().header("mass flow", "c* factor");
        for (double throttle : THROTTLES) {
            flows.row(Figures.significant(100 * throttle, 3) + " %", Figures.significant(throttledFactor(throttle), 4));
        }
        text.append(flows.text());
        text.append(
                String.format("%nFactor on c* of a throttled injector with fixed orifices, against design flow.%n"));
        balance.chamber().warnings().forEach(w -> text.append("warning, ")
                .append(w.source())
                .append(": ")
                .append(w.message())
                .append(System.lineSeparator()));
        return text.toString();
    }

    private AscentAverage average() {
        return AscentAverage.over(
                balance::thrustAt,
                balance.engine().massFlow(),
                AscentAverage.exponential(Constants.STANDARD_ATMOSPHERE, pressureDecay),
                ascentTime);
    }

    private double throttledFactor(double throttle) {
        double design = balance.chamber().losses().stream()
                .filter(loss -> loss.name().equals(LossKind.ENERGY_RELEASE.title()))
                .mapToDouble(NamedLoss::factor)
                .findFirst()
                .orElse(1);
        return ThrottledCombustion.energyRelease(design, throttle) / design;
    }

    /** Empty where the ambient pressure is too high for the model. */
    private OptionalDouble compensated(double pressure) {
        try {
            return OptionalDouble.of(
                    new PlugNozzle(balance.chamber()).impulseAt(pressure) / Constants.STANDARD_GRAVITY);
        } catch (OutsideValidity e) {
            return OptionalDouble.empty();
        }
    }

    private static Map<String, Object> ordered(String a, double valueA, String b, double valueB) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(a, valueA);
        map.put(b, valueB);
        return map;
    }
}

package dev.penstock.cycles.trail;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingPoint;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.pump.PumpPoint;
import java.util.Map;
import java.util.Optional;

/** What a built engine publishes away from its design point. */
public final class OperatingFigures {

    private static final Notation ISP = Notation.fixed("s", "s", 1, 1);

    /** Figures of a command. */
    public static final FigureTable<OperatingCommand> COMMAND = FigureTable.<OperatingCommand>ofOne()
            .number("throttle", "throttle", Notation.PERCENT, OperatingCommand::throttle)
            .optional("mixture_ratio_asked", "mixture ratio asked", significant("", 4), OperatingCommand::mixtureRatio)
            .leftOutIfAbsent()
            .table();

    /** Figures of a pump there. */
    public static final FigureTable<Map.Entry<String, PumpPoint>> PUMPS =
            FigureTable.<Map.Entry<String, PumpPoint>>named(Map.Entry::getKey)
                    .number("speed_rad_s", "speed", Notation.SPEED, pump -> pump.getValue()
                            .speed())
                    .number("discharge_pressure_Pa", "discharge", Notation.PRESSURE, pump -> pump.getValue()
                            .dischargePressure())
                    .number("efficiency", "efficiency", Notation.PERCENT, pump -> pump.getValue()
                            .efficiency())
                    .number("power_W", "power", Notation.POWER, pump -> pump.getValue()
                            .power())
                    .number("flow_ratio", "flow over best", significant("", 3), pump -> pump.getValue()
                            .flowRatio())
                    .number("stall_margin", "stall margin", Notation.MARGIN, pump -> pump.getValue()
                            .stallMargin())
                    .number("cavitation_margin", "cavitation margin", Notation.MARGIN, pump -> pump.getValue()
                            .cavitationMargin())
                    .table();

    /** Figures of an operating point. */
    public static final FigureTable<OperatingPoint> POINT = FigureTable.<OperatingPoint>ofOne()
            .number("chamber_pressure_Pa", "chamber", Notation.PRESSURE, OperatingPoint::chamberPressure)
            .number("mixture_ratio", "mixture ratio", significant("", 4), OperatingPoint::mixtureRatio)
            .number("thrust_vacuum_N", "thrust, vacuum", Notation.FORCE, OperatingPoint::vacuumThrust)
            .number("thrust_sea_level_N", "thrust, sea level", Notation.FORCE, OperatingPoint::seaLevelThrust)
            .number("isp_vacuum_s", "Isp, vacuum", ISP, OperatingPoint::vacuumIsp)
            .number("mass_flow_kg_s", "flow", Notation.MASS_FLOW, OperatingPoint::massFlow)
            .keyed("pumps", point -> point.pumps().entrySet().stream().toList(), PUMPS)
            .word("gas_temperatures_K", "gas temperatures", OperatingPoint::gasTemperatures)
            .optional(
                    "coolant_temperature_rise_K",
                    "coolant temperature rise",
                    Notation.TEMPERATURE,
                    OperatingPoint::coolantTemperatureRise)
            .leftOutIfAbsent()
            .optional(
                    "peak_wall_temperature_K",
                    "hottest wall",
                    Notation.TEMPERATURE,
                    OperatingPoint::peakWallTemperature)
            .leftOutIfAbsent()
            .each("limits", OperatingPoint::limits, CheckFigures.LIMITS)
            .word("within_limits", "within limits", OperatingPoint::withinLimits)
            .number("residual_worst", "worst relative residual", significant("", 2), OperatingPoint::residualWorst)
            .optional("gas_temperature_K", "hottest gas", Notation.TEMPERATURE, OperatingPoint::hottestGas)
            .outsideDocuments()
            .word("tightest", "tightest margin", point -> tightest(point)
                    .map(l -> CheckFigures.title(l) + " " + Notation.MARGIN.write(l.margin()))
                    .orElse("none"))
            .outsideDocuments()
            .table();

    private OperatingFigures() {}

    /**
     * @param point an operating point
     * @return the limit with the least margin there
     */
    public static Optional<LimitCheck> tightest(OperatingPoint point) {
        return LimitCheck.tightest(point.limits());
    }
}

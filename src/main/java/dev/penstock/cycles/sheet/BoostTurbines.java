package dev.penstock.cycles.sheet;

import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.Port;
import dev.penstock.errors.LimitReached;
import dev.penstock.provenance.Traced;
import dev.penstock.turbomachinery.turbine.BoostTurbine;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Turbines that turn boost pumps on hot gas or warmed propellant. Their power is known when the gas comes by, since pumps are laid
 * out first: those beside other turbines, or beside a valve, take the share of the flow that gives it and lead it back behind; those in
 * the exhaust let all of it pass and take the pressure.
 */
public final class BoostTurbines {

    /** Most of a flow that may drive boost pumps (-). */
    private static final double MOST = 0.9;

    private final Flowsheet sheet;

    BoostTurbines(Flowsheet sheet) {
        this.sheet = sheet;
    }

    /** Sides whose boost pump is driven so. */
    List<Side> driven(BoostDesign.Drive drive) {
        return Arrays.stream(Side.values())
                .filter(side -> boost(side).filter(b -> b.drive() == drive).isPresent())
                .toList();
    }

    private Optional<BoostDesign> boost(Side side) {
        return sheet.concept().feed(side).boost();
    }

    /**
     * Turbines of boost pumps beside the main turbines.
     *
     * @param in gas before the main turbines
     * @param exit pressure behind them (Pa)
     * @param turbines the main turbines
     * @param from sides whose boost pumps this gas drives, if it drives any
     * @return all the gas, behind them
     */
    public Stream besideTurbines(Stream in, Traced exit, UnaryOperator<Stream> turbines, Side... from) {
        BoostDesign.Drive drive = in.medium().burnt() ? BoostDesign.Drive.HOT_GAS : BoostDesign.Drive.WARM_FUEL;
        List<Side> sides = driven(drive).stream()
                .filter(side -> Arrays.asList(from).contains(side))
                .toList();
        return beside(sides, in, exit, turbines);
    }

    /** Turbines of boost pumps beside the valve behind the jackets; the fuel is a liquid again behind it. */
    Stream besideValve(Stream in, Traced exit, UnaryOperator<Stream> valve) {
        List<Side> sides = driven(BoostDesign.Drive.WARM_FUEL);
        if (sides.isEmpty() || sheet.concept().cycle().traits().livesOnJacketHeat()) {
            return valve.apply(in);
        }
        return beside(sides, in, exit, valve);
    }

    private Stream beside(List<Side> sides, Stream in, Traced exit, UnaryOperator<Stream> rest) {
        Stream on = in;
        Deque<Side> passed = new ArrayDeque<>();
        Deque<Stream> behind = new ArrayDeque<>();
        for (Side side : sides) {
            List<Stream> ways = sheet.split(PartKey.boostBranch(side), on, share(side, on, exit));
            Shaft shaft = sheet.machinery().boostShaft(side);
            sheet.recorder().ifPresent(r -> r.drives(ways.get(0), shaft, side));
            passed.push(side);
            behind.push(turbine(side, ways.get(0), exit));
            on = ways.get(1);
        }
        Stream out = rest.apply(on);
        for (Side side : passed) {
            out = sheet.merge(PartKey.boostMerge(side), out, behind.pop());
        }
        return out;
    }

    private Traced share(Side side, Stream in, Traced exit) {
        double flow = BoostTurbine.driveFlow(
                power(side),
                sheet.gasOf(in).fluid(),
                in.pressure(),
                in.enthalpy(),
                exit.value(),
                boost(side).orElseThrow().driveEfficiency());
        if (!(flow < MOST * in.flow())) {
            throw new LimitReached(
                    ConceptTables.boostPump(side).of(FeedInputs.DRIVE).path(),
                    String.format(
                            Locale.ROOT,
                            "the %s boost pump takes %.4g kW, for which %.4g kg/s would have to pass its turbine and %.4g kg/s"
                                    + " of %s are there; drive it by a gear or by liquid",
                            side.key(),
                            power(side) / 1e3,
                            flow,
                            in.flow(),
                            in.medium().name()));
        }
        return Traced.made(flow / in.flow(), sheet.pressureOf(in), exit, sheet.flowOf(in), efficiency(side));
    }

    /** Turbines of boost pumps in the exhaust of the main turbines, one behind the other. */
    public Stream behindTurbines(Stream exhaust) {
        Stream gas = exhaust;
        for (Side side : driven(BoostDesign.Drive.TURBINE_EXHAUST)) {
            double exit = BoostTurbine.exitPressure(
                    power(side),
                    sheet.gasOf(gas).fluid(),
                    gas.pressure(),
                    gas.enthalpy(),
                    gas.flow(),
                    boost(side).orElseThrow().driveEfficiency());
            Traced made = Traced.made(exit, sheet.pressureOf(gas), sheet.flowOf(gas), efficiency(side));
            gas = turbine(side, gas, made);
        }
        return gas;
    }

    private Traced efficiency(Side side) {
        return sheet.given(
                boost(side).orElseThrow().driveEfficiency(),
                ConceptTables.boostPump(side).of(FeedInputs.DRIVE_EFFICIENCY));
    }

    private double power(Side side) {
        return sheet.machinery().boostShaft(side).neededPower();
    }

    private Stream turbine(Side side, Stream in, Traced exit) {
        Shaft shaft = sheet.machinery().boostShaft(side);
        double power = shaft.neededPower();
        PartKey part = PartKey.boostTurbine(side);
        Stream out = sheet.outlet(part.at(Port.EXIT), in.medium(), exit.value(), in.enthalpy() - power / in.flow(), in);
        sheet.recorder().ifPresent(r -> {
            shaft.drivenBy(String.format(
                    Locale.ROOT,
                    "turbine on %.3g kg/s of %s",
                    in.flow(),
                    in.medium().name()));
            r.worked(out, in, exit, List.of(StationRecorder.delivered(shaft)));
        });
        sheet.component(part, List.of(in), List.of(out), 0, -power);
        sheet.step(in.line(), part, in, out);
        return out;
    }
}

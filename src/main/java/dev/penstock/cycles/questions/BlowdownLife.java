package dev.penstock.cycles.questions;

import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.errors.LimitReached;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * An engine whose tank pressures fall as it burns. Its hardware stays: throat, nozzle, lines and orifices, nothing that
 * regulates.
 * <pre>
 * each side   p_tank = t p_face + Δp_design (ṁ/ṁ_design)²        t chamber pressure over that of the design
 * chamber     ṁ_o + ṁ_f = t ṁ_design c*_design/c*
 * life        dm_o, dm_f by the mixture ratio at each moment, second order in the propellant expelled
 * </pre>
 * Liquids keep their density; a jacket's loss goes with its flow squared like all others. Thrust and c* come from the
 * whole balance at the chamber pressure and mixture ratio so found. Ends when one of the tanks is empty. Not thread-safe.
 */
public final class BlowdownLife {

    /** Equations and range. */
    public static final ModelCard CARD = new ModelCard(
            "cycles.blowdown-life",
            "Engine on falling tank pressure",
            "p_tank = t p_face + Δp (ṁ/ṁ_design)² on each side; ṁ = t ṁ_design c*_design/c*; F and Isp from the balance of"
                    + " the same hardware at t p_c and r; steps of second order in the propellant expelled",
            "tank pressure above chamber pressure; no regulator, no trim",
            "that of the ullage's law and of the balance",
            List.of("common practice, no source"));

    private static final int STEPS = 16;
    private static final int ROUNDS = 6;
    private static final double LOWEST = 0.02;
    private static final double TOLERANCE = 1e-7;

    /** Pressure in a tank when a share of its propellant is gone. */
    interface Tank {
        double pressure(Side side, double gone);
    }

    /** Chamber pressure over that of the design, and flows (kg/s). */
    private record Flow(double throttle, double oxidizer, double fuel) {

        double total() {
            return oxidizer + fuel;
        }

        double share() {
            return oxidizer / total();
        }
    }

    /** Propellant loaded and what is still there (kg). */
    private record Contents(double oxidizerLoaded, double fuelLoaded, double oxidizer, double fuel) {

        /** What is left of it when some is burnt, a share of it oxidizer. */
        Contents less(double burnt, double share) {
            return new Contents(oxidizerLoaded, fuelLoaded, oxidizer - burnt * share, fuel - burnt * (1 - share));
        }

        /** What can be burnt before a tank is empty. */
        double least(double wanted, double share) {
            return Math.min(wanted, Math.min(oxidizer / share, fuel / (1 - share)));
        }

        /** Share of a side's propellant that is gone. */
        double gone(Side side) {
            double here = side == Side.OXIDIZER ? oxidizer / oxidizerLoaded : fuel / fuelLoaded;
            return Math.min(1, Math.max(0, 1 - here));
        }
    }

    private final EngineBalance design;
    private final OffDesign engine;
    private final Tank tank;
    private final double[] designFlow;
    private final double[] designDrop;
    private final double face;
    private final double[] left = new double[2];

    BlowdownLife(Balancer balancer, EngineBalance design, Tank tank) {
        this.design = design;
        this.engine = OffDesign.withoutRegulation(balancer, design);
        this.tank = tank;
        this.designFlow =
                new double[] {design.engine().oxidizerFlow(), design.engine().fuelFlow()};
        this.face = facePressure();
        this.designDrop = new double[] {tank.pressure(Side.OXIDIZER, 0) - face, tank.pressure(Side.FUEL, 0) - face};
    }

    /** Points from full to spent tanks. */
    List<PressureFeed.Point> run(double oxidizerMass, double fuelMass) {
        double total = oxidizerMass + fuelMass;
        Contents contents = new Contents(oxidizerMass, fuelMass, oxidizerMass, fuelMass);
        double time = 0;
        List<PressureFeed.Point> points = new ArrayList<>();
        OperatingPoint performance =
                at(design.concept().chamberPressure(), design.engine().mixtureRatio());
        double velocity = velocityShare(performance);
        Flow flow = flow(contents, velocity);
        points.add(point(0, 0, flow, performance, contents));
        for (int step = 1; step <= STEPS; step++) {
            double wanted = total / STEPS;
            double first = flow.share();
            Flow predicted = flow(contents.less(contents.least(wanted, first), first), velocity);
            double share = 0.5 * (first + predicted.share());
            double burnt = contents.least(wanted, share);
            contents = contents.less(burnt, share);
            double before = flow.total();
            for (int round = 0; round < ROUNDS; round++) {
                flow = flow(contents, velocity);
                performance = at(flow.throttle() * design.concept().chamberPressure(), flow.oxidizer() / flow.fuel());
                double found = velocityShare(performance);
                boolean settled = Math.abs(found - velocity) < TOLERANCE;
                velocity = found;
                if (settled) {
                    break;
                }
            }
            time += 0.5 * burnt * (1 / before + 1 / flow.total());
            double gone = 1 - (contents.oxidizer() + contents.fuel()) / total;
            points.add(point(gone, time, flow, performance, contents));
            if (burnt < wanted * (1 - 1e-9)) {
                break;
            }
        }
        left[0] = Math.max(0, contents.oxidizer());
        left[1] = Math.max(0, contents.fuel());
        return points;
    }

    /** Propellant left when the other tank is empty (kg). */
    double residual(Side side) {
        return left[side.ordinal()];
    }

    private Flow flow(Contents contents, double velocity) {
        double po = tank.pressure(Side.OXIDIZER, contents.gone(Side.OXIDIZER));
        double pf = tank.pressure(Side.FUEL, contents.gone(Side.FUEL));
        double highest = 0.999999 * Math.min(po, pf) / face;
        if (!(highest > LOWEST) || surplus(LOWEST, po, pf, velocity) < 0) {
            throw new LimitReached(
                    "tank pressure",
                    String.format(
                            Locale.ROOT,
                            "at %.4g and %.4g MPa in the tanks the chamber pressure falls below %.2g of the design; state a"
                                    + " larger pressurization.initial_ullage",
                            po / 1e6,
                            pf / 1e6,
                            LOWEST));
        }
        double throttle = RootFinder.between(
                        "chamber pressure of a blowdown", t -> surplus(t, po, pf, velocity), LOWEST, highest, 1e-12)
                .value();
        return new Flow(throttle, side(0, throttle, po), side(1, throttle, pf));
    }

    /** Flow that the tanks push in over flow that the throat passes, less one; falls with chamber pressure. */
    private double surplus(double throttle, double po, double pf, double velocity) {
        double in = side(0, throttle, po) + side(1, throttle, pf);
        return in / (throttle * (designFlow[0] + designFlow[1]) / velocity) - 1;
    }

    private double side(int i, double throttle, double pressure) {
        return designFlow[i] * Math.sqrt(Math.max(0, pressure - throttle * face) / designDrop[i]);
    }

    private OperatingPoint at(double chamberPressure, double mixtureRatio) {
        return engine.at(
                OperatingCommand.throttle(chamberPressure / design.concept().chamberPressure())
                        .withMixtureRatio(mixtureRatio));
    }

    /** c* over that of the design (-), from chamber pressure and flow through the throat. */
    private double velocityShare(OperatingPoint point) {
        double designShare =
                design.concept().chamberPressure() / design.engine().massFlow();
        return point.chamberPressure() / point.massFlow() / designShare;
    }

    private PressureFeed.Point point(
            double gone, double time, Flow flow, OperatingPoint performance, Contents contents) {
        double drop = Double.POSITIVE_INFINITY;
        for (Side side : Side.values()) {
            double now = side == Side.OXIDIZER ? flow.oxidizer() : flow.fuel();
            double share = now / designFlow[side.ordinal()];
            drop = Math.min(drop, design.concept().feed(side).injectorLoss() * share * share / flow.throttle());
        }
        return new PressureFeed.Point(
                gone,
                time,
                tank.pressure(Side.OXIDIZER, contents.gone(Side.OXIDIZER)),
                tank.pressure(Side.FUEL, contents.gone(Side.FUEL)),
                performance.chamberPressure(),
                performance.mixtureRatio(),
                performance.vacuumThrust(),
                performance.vacuumIsp(),
                performance.massFlow(),
                drop);
    }

    /** Pressure at the injector face of the design (Pa): behind the injectors. */
    private double facePressure() {
        return design.components().stream()
                .filter(c -> c.kind() == PartKind.INJECTOR)
                .mapToDouble(c -> design.station(c.outlets().get(0)).pressure())
                .min()
                .orElseThrow();
    }
}

package dev.penstock.cycles.questions;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.BurnerDesign;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Concept.AtPressure;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.DesignLimits;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.concept.TurbineOption;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.InjectorLimit;
import dev.penstock.cycles.sheet.Auditor;
import dev.penstock.cycles.sheet.BuiltMachines;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.cycles.sheet.Shaft;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.cycles.solving.PressureContinuation;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.pump.PumpLimit;
import dev.penstock.turbomachinery.pump.PumpPoint;
import dev.penstock.turbomachinery.turbine.TurbineLimit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A built engine at another chamber pressure, mixture ratio or tank pressure. Throat, nozzle, channels, pumps and turbine
 * nozzles stay as they are; valves hold the commanded chamber pressure and mixture ratio.
 * <pre>
 * liquid losses   Δp = Δp_design (ṁ/ṁ_design)², ṁ from p_c A_t/c* with the design's c*
 * gas losses      the same share of pressure, since density goes with it
 * pumps           as slow as gives the pressures needed; both at the same share of design speed on one turbine
 * turbines        flow as their nozzles let through; gas temperature follows in staged cycles, a bypass in expanders;
 *                 in cycles that dump gas the temperature is held and the pressure before the nozzles goes with the flow
 * </pre>
 * Small pumps (kick, boost) keep their efficiency; the second of two turbines on a gas stream has a trim valve. c* moves
 * with mixture ratio by a few per cent, which is left out of the losses alone.
 */
final class OffDesign {

    private static final double SMALLEST_STALL_MARGIN = 0;

    /** What is left of the valve's loss when its orifice is opened (-): common practice, no source. */
    private static final double OPEN_VALVE = 0.3;

    private static final int MOST_HALVINGS = 3;
    private static final String COMMON = "common practice, no source";

    private final Balancer balancer;
    private final EngineBalance design;
    private final BuiltMachines machines;
    private final boolean regulated;
    private final List<Balancer.Solved> solved = new ArrayList<>();

    /** An engine whose own balance is solved. */
    OffDesign(Balancer balancer, EngineBalance design, Balancer.Solved own) {
        this(balancer, design, own, true);
    }

    private OffDesign(Balancer balancer, EngineBalance design, Balancer.Solved own, boolean regulated) {
        this.regulated = regulated;
        this.balancer = balancer;
        this.design = design;
        this.machines = new BuiltMachines(design);
        this.solved.add(own);
    }

    /** An engine without pumps whose tanks have whatever pressure a command needs; valves and orifices stay as they are. */
    static OffDesign withoutRegulation(Balancer balancer, EngineBalance design) {
        return new OffDesign(balancer, design, new PressureContinuation(balancer).solve(design.concept()), false);
    }

    /** The engine at a command; starts from the nearest point that is solved, if need be by way of the middle. */
    OperatingPoint at(OperatingCommand command) {
        Concept concept = concept(command);
        Balancer.Solved near = nearest(concept);
        Balancer.Solved found = lead(command, near, MOST_HALVINGS);
        solved.add(found);
        return point(command, found);
    }

    /** Straight from a solved point, else by way of the middle, and again: whatever fails on a long way may do on a short one. */
    private Balancer.Solved lead(OperatingCommand command, Balancer.Solved near, int halvings) {
        Concept concept = concept(command);
        try {
            return balancer.solve(concept, Optional.of(near), Optional.of(machines));
        } catch (InvalidInput | ConservationViolated e) {
            throw e;
        } catch (PenstockException e) {
            if (halvings == 0) {
                throw e;
            }
            Concept from = near.balanceModels().concept();
            OperatingCommand middle = new OperatingCommand(
                    Math.sqrt(from.chamberPressure() * concept.chamberPressure())
                            / design.concept().chamberPressure(),
                    OptionalDouble.of(Math.sqrt(from.mixtureRatio() * concept.mixtureRatio())),
                    command.oxidizerTankPressure(),
                    command.fuelTankPressure());
            return lead(command, lead(middle, near, halvings - 1), halvings - 1);
        }
    }

    private Balancer.Solved nearest(Concept concept) {
        return solved.stream()
                .min(Comparator.comparingDouble(s -> distance(s.balanceModels().concept(), concept)))
                .orElseThrow();
    }

    private static double distance(Concept a, Concept b) {
        return Math.abs(Math.log(a.chamberPressure() / b.chamberPressure()))
                + 2 * Math.abs(Math.log(a.mixtureRatio() / b.mixtureRatio()));
    }

    // ---- the concept that the command makes of the design

    private Concept concept(OperatingCommand command) {
        Concept own = design.concept();
        double pressure = command.throttle() * own.chamberPressure();
        double ratio = command.mixtureRatio().orElse(own.mixtureRatio());
        Map<Burner, BurnerDesign> burners = new LinkedHashMap<>();
        boolean floats = own.cycle().traits().closure() == CycleTraits.Closure.RATIO_OR_TEMPERATURE;
        own.burners()
                .forEach((burner, b) -> burners.put(
                        burner,
                        new BurnerDesign(
                                floats ? OptionalDouble.empty() : b.temperature(),
                                Math.min(1, b.injectorLoss() * command.throttle()),
                                b.gasModel(),
                                b.diluent())));
        Map<TurbinePlace, TurbineOption> turbines = new LinkedHashMap<>();
        own.turbines().forEach((place, option) -> turbines.put(place, floats ? option.open() : option));
        AtPressure built = other -> concept(new OperatingCommand(
                other / own.chamberPressure(),
                command.mixtureRatio(),
                command.oxidizerTankPressure(),
                command.fuelTankPressure()));
        double throat = 2 * Math.sqrt(design.chamber().throatArea() / Math.PI);
        return new Concept(
                own.document(),
                own.name(),
                own.description(),
                own.cycle(),
                feed(Side.OXIDIZER, command, ratio, command.oxidizerTankPressure()),
                feed(Side.FUEL, command, ratio, command.fuelTankPressure()),
                ratio,
                new ThrustTarget(ThrustTarget.Kind.THROAT_DIAMETER, throat, own.chambers()),
                own.chamber()
                        .withChamberPressure(pressure)
                        .withInjector(own.chamber()
                                .combustor()
                                .injector()
                                .throttled(command.throttle(), share(Side.OXIDIZER, ratio), share(Side.FUEL, ratio))),
                own.cooling(),
                own.uncooledWall(),
                burners,
                turbines,
                own.shafts(),
                own.gasPath(),
                own.electric(),
                own.limits(),
                own.mass(),
                own.metals(),
                own.pressurization(),
                built);
    }

    /** A side's share of the flow over that of the design. */
    private double share(Side side, double ratio) {
        double before = design.concept().mixtureRatio();
        return side == Side.OXIDIZER ? ratio / (1 + ratio) * (1 + before) / before : (1 + before) / (1 + ratio);
    }

    private FeedDesign feed(Side side, OperatingCommand command, double ratio, OptionalDouble tankPressure) {
        FeedDesign own = design.concept().feed(side);
        double flow = command.throttle() * share(side, ratio);
        double scale = flow * flow / command.throttle();
        OptionalDouble held = tankPressure.isPresent() ? tankPressure : tankOf(side, own);
        OptionalDouble tank = regulated ? held : OptionalDouble.empty();
        return new FeedDesign(
                own.propellant(),
                tank,
                own.tankTemperature(),
                own.suctionLoss() * flow * flow,
                own.lineLoss() * scale,
                own.valveLoss() * scale * valveShare(),
                own.injectorLoss() * scale,
                own.pump(),
                own.boost());
    }

    /** With no pump to speed up, valves open as far as the calibration orifice allowed. */
    private double valveShare() {
        return regulated && !design.concept().cycle().traits().pumped() ? OPEN_VALVE : 1;
    }

    /** A pressure-fed engine keeps the tank pressure that its balance found. */
    private OptionalDouble tankOf(Side side, FeedDesign own) {
        return own.tankPressure().isPresent()
                ? own.tankPressure()
                : OptionalDouble.of(design.tankOutlet(side).pressure() * (1 + 1e-9));
    }

    // ---- the result

    private OperatingPoint point(OperatingCommand command, Balancer.Solved solved) {
        Flowsheet sheet = solved.sheet();
        ChamberPerformance chamber = solved.update().assumptions().chamber();
        double worst =
                sheet.residuals().stream().mapToDouble(Residual::relative).max().orElse(0);
        if (worst > Auditor.ALLOWED) {
            throw new ConservationViolated("operating point", worst, Auditor.ALLOWED);
        }
        double ambient = Constants.STANDARD_ATMOSPHERE;
        boolean sonic = chamber.profile().throat().pressure() > ambient;
        double jets = solved.update().jets().stream()
                .mapToDouble(ExhaustJet::vacuumThrust)
                .sum();
        double flow = sheet.tankStreams().stream().mapToDouble(Stream::flow).sum() + sheet.diluentFlow();
        int chambers = design.concept().chambers();
        EngineBalance.Nozzles nozzles =
                new EngineBalance.Nozzles(chambers, chamber, solved.update().jets());
        double vacuum = chambers * chamber.vacuumThrust() + jets;
        List<JacketResult> jackets = solved.jackets();
        Map<String, Double> temperatures = temperatures(sheet);
        return new OperatingPoint(
                command,
                solved.balanceModels().concept().chamberPressure(),
                solved.balanceModels().concept().mixtureRatio(),
                vacuum,
                sonic ? nozzles.thrustAt(ambient) : 0,
                vacuum / flow / Constants.STANDARD_GRAVITY,
                flow,
                sheet.diluentFlow(),
                nozzles,
                sheet.machinery().pumpPoints(),
                temperatures,
                jackets.stream()
                        .mapToDouble(JacketResult::coolantTemperatureRise)
                        .max(),
                jackets.stream().mapToDouble(JacketResult::peakWallTemperature).max(),
                limits(sheet, temperatures, jackets),
                worst);
    }

    private boolean gas(Side side) {
        InjectorDesign injector = design.concept().chamber().combustor().injector();
        return side == Side.OXIDIZER
                ? injector.oxidizer().gas()
                : injector.fuel().gas();
    }

    private static Map<String, Double> temperatures(Flowsheet sheet) {
        Map<String, Double> map = new LinkedHashMap<>();
        for (Shaft shaft : sheet.machinery().shafts()) {
            shaft.turbines()
                    .forEach(use -> map.put(
                            use.name(),
                            use.duty()
                                    .gas()
                                    .atPressureEnthalpy(
                                            use.duty().inletPressure(),
                                            use.duty().inletEnthalpy())
                                    .temperature()));
        }
        return map;
    }

    private List<LimitCheck> limits(Flowsheet sheet, Map<String, Double> temperatures, List<JacketResult> jackets) {
        List<LimitCheck> limits = new ArrayList<>();
        DesignLimits own = design.concept().limits();
        for (Map.Entry<String, PumpPoint> entry : sheet.machinery().pumpPoints().entrySet()) {
            PumpPoint point = entry.getValue();
            limits.add(LimitCheck.atLeast(
                    PumpLimit.STALL_MARGIN, entry.getKey(), point.stallMargin(), SMALLEST_STALL_MARGIN, "-", COMMON));
            limits.add(LimitCheck.atLeast(
                    PumpLimit.CAVITATION_MARGIN, entry.getKey(), point.cavitationMargin(), 0, "-", "nasa-sp-8052"));
            limits.add(LimitCheck.atMost(
                    PumpLimit.DISCHARGE_PRESSURE,
                    entry.getKey(),
                    point.dischargePressure(),
                    own.dischargePressure(),
                    "Pa",
                    own.dischargeSource()));
        }
        for (Shaft shaft : sheet.machinery().shafts()) {
            shaft.turbines()
                    .forEach(use -> limits.add(LimitCheck.atMost(
                            TurbineLimit.INLET_TEMPERATURE,
                            use.name(),
                            temperatures.get(use.name()),
                            use.design().inletTemperatureLimit(),
                            "K",
                            "nasa-sp-125")));
        }
        for (Side side : Side.values()) {
            if (!gas(side)) {
                limits.add(LimitCheck.atLeast(
                        InjectorLimit.CHUGGING_DROP,
                        side.key() + " injector",
                        sheet.concept().feed(side).injectorLoss(),
                        InjectorLimit.LEAST_DROP,
                        "-",
                        COMMON));
            }
        }
        jackets.forEach(j -> limits.addAll(j.limits()));
        return limits;
    }
}

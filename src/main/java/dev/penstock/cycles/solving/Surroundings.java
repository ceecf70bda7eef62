package dev.penstock.cycles.solving;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.flow.CombustorPressure;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasProfiles;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CoolingDesign;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.sheet.Assumptions;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.ExhaustNozzle;
import dev.penstock.cycles.sheet.FirstGuess;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Medium;
import dev.penstock.cycles.sheet.Plant;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.numerics.FixedPoint;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Chamber, jacket and exhaust around a cycle: computed from a solved arrangement, and held while it is solved. What has
 * not moved is not computed again. Not thread-safe.
 */
final class Surroundings {

    private static final double UNMOVED = 1e-12;

    /** Guess of the jacket's heat over the power of the jet (-), before the jacket is known. */
    private static final double HEAT_SHARE = 0.02;

    /** Guess of the jacket's pressure drop over chamber pressure (-), before the jacket is known. */
    private static final double DROP_SHARE = 0.15;

    /** Guess of the pressure before a jacket whose coolant drives turbines, over chamber pressure (-). */
    private static final double PUMPED_SHARE = 2;

    /** Solutions of the jacket that may choose the correlation by pressure; later ones keep it. */
    private static final int CHOOSING_SOLUTIONS = 3;

    /** New assumptions with the dumped jets that belong to them. */
    public record Update(Assumptions assumptions, List<ExhaustJet> jets) {}

    private final Plant plant;
    private final Concept concept;
    private Optional<ChannelLayout> layout = Optional.empty();
    private CoolantSideDesign coolantSide;
    private boolean toBeSized = true;
    private boolean resized;
    private int jacketSolutions;
    private double lastDistance;
    private double[] lastChamberInputs = {};
    private ChamberPerformance lastChamber;
    private OptionalDouble nearArea = OptionalDouble.empty();
    private HotGasProfile lastProfile;
    private double[] lastJacketInputs = {};
    private Optional<JacketCase> lastQuestion = Optional.empty();
    private Optional<JacketLoad> lastJacket = Optional.empty();

    Surroundings(Plant plant) {
        this.plant = plant;
        this.concept = plant.concept();
    }

    int jacketSolutions() {
        return jacketSolutions;
    }

    double lastDistance() {
        return lastDistance;
    }

    // ---- starting points

    Assumptions first() {
        FirstGuess guess = new FirstGuess(plant, 1);
        double ratio = concept.mixtureRatio();
        double enthalpy = (ratio * guess.tankEnthalpy(Side.OXIDIZER) + guess.tankEnthalpy(Side.FUEL)) / (1 + ratio);
        ChamberPerformance chamber = chamber(plant.mixture(ratio, 1, enthalpy), firstThrust());
        Assumptions open = new Assumptions(chamber.massFlow(), faceRatio(chamber), 0, 0, chamber, Optional.empty());
        if (concept.cooling().isEmpty()) {
            return open;
        }
        if (concept.cycle().traits().livesOnJacketHeat()) {
            Optional<JacketLoad> rough = roughly(chamber);
            if (rough.isPresent()) {
                return open.with(
                        chamber.massFlow(), rough.get().heatLoad(), rough.get().pressureDrop());
            }
        }
        double jet = 0.5 * chamber.massFlow() * chamber.vacuumImpulse() * chamber.vacuumImpulse();
        double heat = Math.min(HEAT_SHARE * jet, mostHeat(chamber.massFlow()));
        return open.with(chamber.massFlow(), heat, DROP_SHARE * concept.chamberPressure());
    }

    /**
     * A jacket at a guessed inlet. Where the heat drives the pumps, no balance is found from a heat load that is half the
     * true one.
     */
    private Optional<JacketLoad> roughly(ChamberPerformance chamber) {
        CoolingDesign cooling = concept.cooling().orElseThrow();
        FeedDesign feed = concept.feed(cooling.coolant());
        double pressure = PUMPED_SHARE * concept.chamberPressure();
        try {
            double tankPressure = feed.tankPressure().orElse(concept.chamberPressure());
            FluidState tank = plant.tankState(feed, tankPressure);
            double pumped = tank.enthalpy() + (pressure - tankPressure) / (tank.density() * FirstGuess.PUMP_EFFICIENCY);
            JacketCase question = new JacketCase(
                    HotGasProfiles.of(chamber, concept.fuel().combustion().soot()),
                    feed.propellant(),
                    pressure,
                    pumped,
                    coolantFlow(chamber.massFlow()),
                    cooling.jacket(),
                    cooling.heatFluxFactor());
            JacketSolver jackets = plant.models().jackets();
            return Optional.of(jackets.load(jackets.sized(question)));
        } catch (PenstockException e) {
            // a guess that does not pass; the share of the jet's power must do
            return Optional.empty();
        }
    }

    /** Flow through the jacket for a flow through the throat (kg/s). */
    private double coolantFlow(double chamberFlow) {
        CoolingDesign cooling = concept.cooling().orElseThrow();
        double ratio = concept.mixtureRatio();
        double share = cooling.coolant() == Side.OXIDIZER ? ratio / (1 + ratio) : 1 / (1 + ratio);
        return chamberFlow * share * cooling.flowFraction() * concept.gasPath().heatedShare();
    }

    /** Heat that warms the coolant half-way to the end of its fluid's model (W). */
    private double mostHeat(double chamberFlow) {
        CoolingDesign cooling = concept.cooling().orElseThrow();
        FeedDesign feed = concept.feed(cooling.coolant());
        double flow = coolantFlow(chamberFlow);
        Fluid fluid = feed.propellant().fluid();
        double pressure = 1.5 * concept.chamberPressure();
        double warm = 0.5 * (feed.tankTemperature() + Math.min(fluid.range().maximumTemperature(), 700));
        double rise = fluid.atPressureTemperature(pressure, warm).enthalpy()
                - fluid.atPressureTemperature(pressure, feed.tankTemperature()).enthalpy();
        return flow * rise;
    }

    /** Assumptions of a neighbouring concept, moved to this one's chamber pressure. */
    Assumptions startingFrom(Assumptions near) {
        double pressure = concept.chamberPressure() / near.chamber().design().chamberPressure();
        layout = near.jacket().map(JacketLoad::layout);
        toBeSized = plant.built().isEmpty();
        return near.with(near.chamberFlow(), near.heatLoad(), near.jacketDrop() * pressure);
    }

    private double firstThrust() {
        double value = concept.thrust().value();
        return switch (concept.thrust().kind()) {
            case VACUUM_THRUST -> value;
            case SEA_LEVEL_THRUST -> 1.15 * value;
            case THROAT_DIAMETER -> 1.6 * Math.PI / 4 * value * value * concept.chamberPressure();
        };
    }

    // ---- one round

    Update update(Flowsheet sheet, Assumptions assumed) {
        resized = false;
        List<ExhaustJet> jets = new ArrayList<>();
        for (Stream stream : sheet.exhaustStreams()) {
            Medium.Gas gas = (Medium.Gas) stream.medium();
            jets.add(ExhaustNozzle.jet(
                    "turbine exhaust",
                    gas.fluid(),
                    stream.pressure(),
                    stream.enthalpy(),
                    stream.flow(),
                    concept.gasPath().exhaust()));
        }
        double oxidizer = sheet.chamberStreams().stream()
                .mapToDouble(Stream::oxidizerFlow)
                .sum();
        double fuel =
                sheet.chamberStreams().stream().mapToDouble(Stream::fuelFlow).sum();
        ChamberPerformance chamber =
                chamberAgain(oxidizer / (oxidizer + fuel), sheet.chamberEnthalpy(), thrust(jets, assumed.chamber()));
        Optional<JacketLoad> jacket = jacketAgain(sheet, chamber);
        Assumptions next = new Assumptions(
                chamber.massFlow(),
                faceRatio(chamber),
                jacket.map(JacketLoad::heatLoad).orElse(0.0),
                jacket.map(JacketLoad::pressureDrop).orElse(0.0),
                chamber,
                jacket);
        return new Update(next, jets);
    }

    /** Vacuum thrust left for the chamber (N). */
    private double thrust(List<ExhaustJet> jets, ChamberPerformance before) {
        double target = concept.thrust().value();
        double left;
        switch (concept.thrust().kind()) {
            case VACUUM_THRUST ->
                left = target
                        - jets.stream().mapToDouble(ExhaustJet::vacuumThrust).sum();
            case SEA_LEVEL_THRUST -> {
                double ambient = Constants.STANDARD_ATMOSPHERE;
                double jetThrust =
                        jets.stream().mapToDouble(j -> j.thrustAt(ambient)).sum();
                double share = before.thrustAt(ambient) / before.vacuumThrust();
                if (!(share > 0.02)) {
                    throw new LimitReached(
                            "engine.thrust_sea_level",
                            String.format(
                                    Locale.ROOT,
                                    "at a chamber pressure of %.3g MPa and an area ratio of %.3g the nozzle gives no thrust at "
                                            + "sea level; lower nozzle.area_ratio or raise the chamber pressure",
                                    concept.chamberPressure() / 1e6,
                                    before.areaRatio()));
                }
                left = (target - jetThrust) / share;
            }
            default -> left = before.vacuumThrust();
        }
        if (!(left > 0)) {
            throw new LimitReached("engine.thrust", "the turbine exhaust alone gives more than the thrust asked for");
        }
        return left;
    }

    private ChamberPerformance chamberAgain(double oxidizerShare, double enthalpy, double thrust) {
        double[] inputs = {oxidizerShare, enthalpy, thrust};
        if (moved(inputs, lastChamberInputs)) {
            Reactants mixture = plant.mixture(oxidizerShare, 1 - oxidizerShare, enthalpy);
            lastChamber = chamber(mixture, thrust);
            lastProfile = null;
            lastChamberInputs = inputs;
        }
        return lastChamber;
    }

    private ChamberPerformance chamber(Reactants mixture, double thrust) {
        ThrustChamber chambers = plant.chamber(mixture);
        Injection injection = injection(mixture);
        if (concept.thrust().kind() == ThrustTarget.Kind.THROAT_DIAMETER) {
            double diameter = concept.thrust().value();
            return chambers.forThroatArea(concept.chamber(), injection, Math.PI / 4 * diameter * diameter);
        }
        ChamberPerformance sized = chambers.forVacuumThrust(concept.chamber(), injection, thrust, nearArea);
        nearArea = OptionalDouble.of(sized.throatArea());
        return sized;
    }

    /** The fuel's own part is told apart where some of it runs along the wall as a film. */
    private Injection injection(Reactants mixture) {
        if (concept.chamber().combustor().filmFuelFraction() == 0) {
            return Injection.of(mixture);
        }
        return Injection.of(
                mixture, Reactants.single(concept.fuel(), concept.fuel().formationEnthalpy()));
    }

    private double faceRatio(ChamberPerformance chamber) {
        return CombustorPressure.ratio(
                chamber.profile().at(concept.chamber().combustor().contractionRatio(), false));
    }

    /** The jacket of the last round with everything that a report says of it. */
    Optional<JacketResult> jacketInFull() {
        return lastQuestion.map(plant.models().jackets()::solve);
    }

    private Optional<JacketLoad> jacketAgain(Flowsheet sheet, ChamberPerformance chamber) {
        if (concept.cooling().isEmpty()) {
            return Optional.empty();
        }
        Stream inlet = sheet.coolantInlet();
        Medium.Liquid liquid = (Medium.Liquid) inlet.medium();
        double own = liquid.ownEnthalpy(inlet.enthalpy());
        double[] inputs = {
            inlet.pressure(),
            own,
            inlet.flow(),
            chamber.massFlow(),
            chamber.ideal().chamber().enthalpy()
        };
        if (moved(inputs, lastJacketInputs)) {
            lastJacket = Optional.of(jacket(chamber, inlet.pressure(), own, inlet.flow()));
            lastJacketInputs = inputs;
        }
        return lastJacket;
    }

    private JacketLoad jacket(ChamberPerformance chamber, double pressure, double ownEnthalpy, double flow) {
        CoolingDesign cooling = concept.cooling().orElseThrow();
        if (lastProfile == null || chamber != lastChamber) {
            lastProfile = HotGasProfiles.of(chamber, concept.fuel().combustion().soot());
        }
        JacketCase question = new JacketCase(
                lastProfile,
                concept.feed(cooling.coolant()).propellant(),
                pressure,
                ownEnthalpy,
                flow,
                cooling.jacket(),
                cooling.heatFluxFactor());
        if (jacketSolutions < CHOOSING_SOLUTIONS) {
            coolantSide = JacketSolver.withCorrelation(question).design().coolantSide();
        }
        question = question.withDesign(cooling.jacket().withCoolantSide(coolantSide));
        if (cooling.jacket().channels().open()) {
            if (toBeSized) {
                toBeSized = false;
                resized = true;
                layout = Optional.of(
                        plant.models().jackets().sized(question).design().channels());
            }
            question = question.withDesign(question.design().withChannels(layout.get()));
        }
        jacketSolutions++;
        lastQuestion = Optional.of(question);
        return plant.models().jackets().load(question);
    }

    private static boolean moved(double[] now, double[] before) {
        if (before.length != now.length) {
            return true;
        }
        for (int i = 0; i < now.length; i++) {
            if (Math.abs(now[i] - before[i]) > UNMOVED * Math.abs(before[i])) {
                return true;
            }
        }
        return false;
    }

    // ---- how far the rounds still move

    double[] scales(Assumptions a) {
        return new double[] {a.chamberFlow(), heatScale(a), concept.chamberPressure()};
    }

    private static double heatScale(Assumptions a) {
        return Math.max(Math.abs(a.heatLoad()), 1e3 * a.chamberFlow());
    }

    double distance(Assumptions a, Assumptions b) {
        lastDistance = Math.max(
                Math.abs(a.chamberFlow() - b.chamberFlow()) / a.chamberFlow(),
                Math.max(
                        Math.abs(a.heatLoad() - b.heatLoad()) / heatScale(a),
                        Math.abs(a.jacketDrop() - b.jacketDrop()) / concept.chamberPressure()));
        lastDistance = Math.max(lastDistance, Math.abs(a.faceRatio() - b.faceRatio()));
        return lastDistance;
    }

    Assumptions mixed(FixedPoint mixer, Assumptions assumed, Assumptions next) {
        double[] x = {assumed.chamberFlow(), assumed.heatLoad(), assumed.jacketDrop()};
        double[] image = {next.chamberFlow(), next.heatLoad(), next.jacketDrop()};
        if (resized) {
            mixer.reset();
            return next;
        }
        double[] mixed = mixer.next(x, image);
        boolean sane = alike(mixed[0], next.chamberFlow()) && alike(mixed[1], next.heatLoad()) && mixed[2] >= 0;
        if (!sane) {
            mixer.reset();
            return next;
        }
        return next.with(mixed[0], mixed[1], mixed[2]);
    }

    /** Whether an extrapolated value is of the size of the one that was computed. */
    private static boolean alike(double mixed, double computed) {
        return computed == 0 || mixed / computed > 0.2 && mixed / computed < 5;
    }
}

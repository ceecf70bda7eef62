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
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.cycles.sheet.CarriedValues;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.ExhaustNozzle;
import dev.penstock.cycles.sheet.FirstGuess;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Medium;
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
 * not moved is not computed again: each round is handed what the rounds before it have found. Keeps nothing itself.
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

    /**
     * What the rounds so far have found.
     *
     * @param chamber chamber of the last round, with what it was asked
     * @param throatArea where the next search for a throat starts (m²)
     * @param jacket jacket of the last round, with what it was asked
     * @param channels channels to keep where the concept leaves them open; empty if they are to be sized
     * @param jacketSolutions jackets solved
     */
    public record Known(
            Optional<KnownChamber> chamber,
            OptionalDouble throatArea,
            Optional<KnownJacket> jacket,
            Optional<ChannelLayout> channels,
            int jacketSolutions) {

        private static final Known NOTHING =
                new Known(Optional.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty(), 0);

        private Known withChannels(Optional<ChannelLayout> kept) {
            return new Known(chamber, throatArea, jacket, kept, jacketSolutions);
        }

        private Known withChamber(KnownChamber found, OptionalDouble area) {
            return new Known(Optional.of(found), area, jacket, channels, jacketSolutions);
        }

        private Known withJacket(KnownJacket found) {
            return new Known(
                    chamber,
                    throatArea,
                    Optional.of(found),
                    Optional.of(found.question.design().channels()),
                    jacketSolutions + 1);
        }
    }

    /** A chamber and the numbers that it was computed from. */
    public record KnownChamber(List<Double> inputs, ChamberPerformance performance) {}

    /** A jacket, the numbers that it was computed from, the chamber it cools, and the question as it was put. */
    public record KnownJacket(List<Double> inputs, ChamberPerformance chamber, JacketCase question, JacketLoad load) {}

    /** Where the rounds begin. */
    public record Start(CarriedValues assumptions, Known known) {}

    /**
     * What a round has found.
     *
     * @param assumptions new assumptions
     * @param jets dumped jets that belong to them
     * @param known what the next round may use of it
     * @param resized whether the jacket has got new channels, so that it does not continue the rounds before
     */
    public record Update(CarriedValues assumptions, List<ExhaustJet> jets, Known known, boolean resized) {}

    private final BalanceModels balanceModels;
    private final Concept concept;

    Surroundings(BalanceModels balanceModels) {
        this.balanceModels = balanceModels;
        this.concept = balanceModels.concept();
    }

    // ---- starting points

    Start first() {
        FirstGuess guess = new FirstGuess(balanceModels, 1);
        double ratio = concept.mixtureRatio();
        double enthalpy = (ratio * guess.tankEnthalpy(Side.OXIDIZER) + guess.tankEnthalpy(Side.FUEL)) / (1 + ratio);
        ChamberPerformance chamber =
                chamber(balanceModels.mixture(ratio, 1, enthalpy), firstThrust(), OptionalDouble.empty());
        Known known = new Known(Optional.empty(), nextThroatArea(chamber), Optional.empty(), Optional.empty(), 0);
        return new Start(first(chamber), known);
    }

    private CarriedValues first(ChamberPerformance chamber) {
        CarriedValues open = new CarriedValues(chamber.massFlow(), faceRatio(chamber), 0, 0, chamber, Optional.empty());
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
            FluidState tank = balanceModels.tankState(feed, tankPressure);
            double pumped = tank.enthalpy() + (pressure - tankPressure) / (tank.density() * FirstGuess.PUMP_EFFICIENCY);
            JacketCase question = new JacketCase(
                    HotGasProfiles.of(chamber, concept.fuel().combustion().soot()),
                    feed.propellant(),
                    pressure,
                    pumped,
                    coolantFlow(chamber.massFlow()),
                    cooling.jacket(),
                    cooling.heatFluxFactor());
            JacketSolver jackets = balanceModels.models().jackets();
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

    /** CarriedValues of a neighbouring concept, moved to this one's chamber pressure. */
    Start startingFrom(CarriedValues near) {
        double pressure = concept.chamberPressure() / near.chamber().design().chamberPressure();
        Optional<ChannelLayout> built =
                balanceModels.built().flatMap(b -> near.jacket().map(JacketLoad::layout));
        return new Start(
                near.with(near.chamberFlow(), near.heatLoad(), near.jacketDrop() * pressure),
                Known.NOTHING.withChannels(built));
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

    /**
     * Computes chamber, jacket and jets from the flows of a solved arrangement.
     *
     * @param sheet the arrangement
     * @param assumed what it was solved with
     * @param known what the rounds before this one have found
     * @return what follows from it
     */
    Update update(Flowsheet sheet, CarriedValues assumed, Known known) {
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
        Known withChamber = chamberAgain(
                known, oxidizer / (oxidizer + fuel), sheet.chamberEnthalpy(), thrust(jets, assumed.chamber()));
        ChamberPerformance chamber = withChamber.chamber.orElseThrow().performance;
        Known found = concept.cooling().isPresent() ? jacketAgain(withChamber, sheet, chamber) : withChamber;
        Optional<JacketLoad> jacket = found.jacket.map(KnownJacket::load);
        CarriedValues next = new CarriedValues(
                chamber.massFlow(),
                faceRatio(chamber),
                jacket.map(JacketLoad::heatLoad).orElse(0.0),
                jacket.map(JacketLoad::pressureDrop).orElse(0.0),
                chamber,
                jacket);
        boolean resized = found.jacket.isPresent()
                && known.channels.isEmpty()
                && concept.cooling().orElseThrow().jacket().channels().open();
        return new Update(next, jets, found, resized);
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

    private Known chamberAgain(Known known, double oxidizerShare, double enthalpy, double thrust) {
        List<Double> inputs = List.of(oxidizerShare, enthalpy, thrust);
        if (known.chamber.isPresent() && !moved(inputs, known.chamber.get().inputs)) {
            return known;
        }
        Reactants mixture = balanceModels.mixture(oxidizerShare, 1 - oxidizerShare, enthalpy);
        ChamberPerformance chamber = chamber(mixture, thrust, known.throatArea);
        return known.withChamber(new KnownChamber(inputs, chamber), nextThroatArea(chamber));
    }

    /** A throat that is searched for starts from the last one. */
    private OptionalDouble nextThroatArea(ChamberPerformance chamber) {
        return concept.thrust().kind() == ThrustTarget.Kind.THROAT_DIAMETER
                ? OptionalDouble.empty()
                : OptionalDouble.of(chamber.throatArea());
    }

    private ChamberPerformance chamber(Reactants mixture, double thrust, OptionalDouble nearArea) {
        ThrustChamber chambers = balanceModels.chamber(mixture);
        Injection injection = injection(mixture);
        if (concept.thrust().kind() == ThrustTarget.Kind.THROAT_DIAMETER) {
            double diameter = concept.thrust().value();
            return chambers.forThroatArea(concept.chamber(), injection, Math.PI / 4 * diameter * diameter);
        }
        return chambers.forVacuumThrust(concept.chamber(), injection, thrust, nearArea);
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
    Optional<JacketResult> jacketInFull(Known known) {
        return known.jacket.map(jacket -> balanceModels.models().jackets().solve(jacket.question));
    }

    private Known jacketAgain(Known known, Flowsheet sheet, ChamberPerformance chamber) {
        Stream inlet = sheet.coolantInlet();
        Medium.Liquid liquid = (Medium.Liquid) inlet.medium();
        double own = liquid.ownEnthalpy(inlet.enthalpy());
        List<Double> inputs = List.of(
                inlet.pressure(),
                own,
                inlet.flow(),
                chamber.massFlow(),
                chamber.ideal().chamber().enthalpy());
        if (known.jacket.isPresent() && !moved(inputs, known.jacket.get().inputs)) {
            return known;
        }
        JacketCase question = question(known, chamber, inlet.pressure(), own, inlet.flow());
        JacketLoad load = balanceModels.models().jackets().load(question);
        return known.withJacket(new KnownJacket(inputs, chamber, question, load));
    }

    /** The gas along the wall; that of the last jacket if it cools the same chamber. */
    private HotGasProfile profile(Known known, ChamberPerformance chamber) {
        Optional<KnownJacket> same = known.jacket.filter(jacket -> jacket.chamber == chamber);
        return same.isPresent()
                ? same.get().question.gas()
                : HotGasProfiles.of(chamber, concept.fuel().combustion().soot());
    }

    private JacketCase question(
            Known known, ChamberPerformance chamber, double pressure, double ownEnthalpy, double flow) {
        CoolingDesign cooling = concept.cooling().orElseThrow();
        JacketCase asked = new JacketCase(
                profile(known, chamber),
                concept.feed(cooling.coolant()).propellant(),
                pressure,
                ownEnthalpy,
                flow,
                cooling.jacket(),
                cooling.heatFluxFactor());
        CoolantSideDesign side = known.jacketSolutions < CHOOSING_SOLUTIONS
                ? JacketSolver.withCorrelation(asked).design().coolantSide()
                : known.jacket.orElseThrow().question.design().coolantSide();
        JacketCase named = asked.withDesign(cooling.jacket().withCoolantSide(side));
        if (!cooling.jacket().channels().open()) {
            return named;
        }
        return known.channels
                .map(kept -> named.withDesign(named.design().withChannels(kept)))
                .orElseGet(() -> balanceModels.models().jackets().sized(named));
    }

    private static boolean moved(List<Double> now, List<Double> before) {
        for (int i = 0; i < now.size(); i++) {
            if (Math.abs(now.get(i) - before.get(i)) > UNMOVED * Math.abs(before.get(i))) {
                return true;
            }
        }
        return false;
    }

    // ---- how far the rounds still move

    double[] scales(CarriedValues a) {
        return new double[] {a.chamberFlow(), heatScale(a), concept.chamberPressure()};
    }

    private static double heatScale(CarriedValues a) {
        return Math.max(Math.abs(a.heatLoad()), 1e3 * a.chamberFlow());
    }

    double distance(CarriedValues a, CarriedValues b) {
        double moved = Math.max(
                Math.abs(a.chamberFlow() - b.chamberFlow()) / a.chamberFlow(),
                Math.max(
                        Math.abs(a.heatLoad() - b.heatLoad()) / heatScale(a),
                        Math.abs(a.jacketDrop() - b.jacketDrop()) / concept.chamberPressure()));
        return Math.max(moved, Math.abs(a.faceRatio() - b.faceRatio()));
    }

    CarriedValues mixed(FixedPoint mixer, CarriedValues assumed, Update found) {
        CarriedValues next = found.assumptions;
        double[] x = {assumed.chamberFlow(), assumed.heatLoad(), assumed.jacketDrop()};
        double[] image = {next.chamberFlow(), next.heatLoad(), next.jacketDrop()};
        if (found.resized) {
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

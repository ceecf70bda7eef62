package dev.penstock.cycles.solving;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.combustion.WorkingState;
import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.DumpDesign;
import dev.penstock.cooling.design.ExhaustFilm;
import dev.penstock.cooling.design.FilmSource;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasProfiles;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.march.SizingStart;
import dev.penstock.cycles.arrangements.FirstGuess;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.cycles.sheet.CarriedValues;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Medium;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The jacket of one cooling circuit of one chamber in the rounds of {@link Surroundings}. Keeps nothing itself. */
final class JacketRounds {

    /** Guess of the heat of all jackets over the power of the jet (-), before they are known. */
    private static final double HEAT_SHARE = 0.02;

    /** Guess of the jacket's pressure drop over chamber pressure (-), before the jacket is known. */
    private static final double DROP_SHARE = 0.15;

    /** Guess of the pressure before a jacket whose coolant drives turbines, over chamber pressure (-). */
    private static final double PUMPED_SHARE = 2;

    /** Pressures that are tried before a jacket whose coolant does not pass, each so many times the one before (-). */
    private static final int MOST_ROUGH_PRESSURES = 8;

    private static final double ROUGH_STEP = 1.5;

    /**
     * Channels are sized for what the coolant brings in the answer itself: anew in every round until that has moved by less
     * than this share (-). Then they are held, so that the rounds end.
     */
    private static final double SIZED = 1e-7;

    /**
     * Sizings begin where one has ended whose numbers differ by less (-). That one stays: sizings that begin at the same place are
     * the same function of what they are asked, whatever error they leave, and the rounds settle.
     */
    private static final double NEAR = 1e-4;

    /** Solutions of the jacket that size its channels at most; later ones keep them. */
    private static final int SIZING_SOLUTIONS = 10;

    /** Solutions of the jacket that may choose the correlation by pressure; later ones keep it. */
    private static final int CHOOSING_SOLUTIONS = 3;

    /**
     * What the rounds so far have found.
     *
     * @param found jacket of the last round, with what it was asked
     * @param built channels of an engine that is built; empty if they are to be sized
     * @param sizedFor what the coolant and the chamber brought when the channels of the last round were sized
     * @param start where sizings begin
     * @param solutions jackets solved
     */
    record Known(
            Optional<Found> found,
            Optional<ChannelLayout> built,
            Optional<List<Double>> sizedFor,
            Optional<Start> start,
            int solutions) {

        static final Known NOTHING = withChannels(Optional.empty());

        static Known withChannels(Optional<ChannelLayout> built) {
            return new Known(Optional.empty(), built, Optional.empty(), Optional.empty(), 0);
        }

        private Known with(Found jacket, boolean kept, Optional<SizingStart> ended) {
            boolean near = start.isPresent() && !Surroundings.moved(jacket.inputs, start.get().inputs, NEAR);
            return new Known(
                    Optional.of(jacket),
                    built,
                    kept ? sizedFor : Optional.of(jacket.inputs),
                    near ? start : ended.map(e -> new Start(jacket.inputs, e)),
                    solutions + 1);
        }

        /** Channels that a round with these numbers keeps. */
        private Optional<ChannelLayout> kept(List<Double> inputs) {
            boolean settled = solutions >= SIZING_SOLUTIONS
                    || sizedFor.isPresent() && !Surroundings.moved(inputs, sizedFor.get(), SIZED);
            return built.isPresent() || !settled
                    ? built
                    : found.map(f -> f.question.design().channels());
        }
    }

    /** Where sizings begin, and the numbers that it was found with. */
    record Start(List<Double> inputs, SizingStart sizing) {}

    /** A jacket, the numbers that it was computed from, the chamber it cools, and the question as it was put. */
    record Found(List<Double> inputs, ChamberPerformance chamber, JacketCase question, JacketLoad load) {}

    private final BalanceModels balanceModels;
    private final Concept concept;
    private final CoolingCircuit circuit;

    JacketRounds(BalanceModels balanceModels, CoolingCircuit circuit) {
        this.balanceModels = balanceModels;
        this.concept = balanceModels.concept();
        this.circuit = circuit;
    }

    // ---- starting points

    /** What is taken for granted before anything is known. */
    CarriedValues.Jacket first(ChamberPerformance chamber) {
        boolean stated = !circuit.jacket().channels().open();
        if (stated || concept.cycle().traits().livesOnJacketHeat()) {
            Optional<JacketLoad> rough = roughly(chamber);
            if (rough.isPresent()) {
                return new CarriedValues.Jacket(
                        concept.chambers() * rough.get().heatLoad(), rough.get().pressureDrop(), Optional.empty());
            }
        }
        double flow = concept.chambers() * chamber.massFlow();
        double jet = 0.5 * flow * chamber.vacuumImpulse() * chamber.vacuumImpulse();
        double heat = Math.min(HEAT_SHARE * jet / concept.cooling().size(), mostHeat(flow));
        return new CarriedValues.Jacket(heat, dropShare() * concept.chamberPressure(), Optional.empty());
    }

    private double dropShare() {
        return circuit.dump().map(d -> DROP_SHARE * d.pressureShare()).orElse(DROP_SHARE);
    }

    /**
     * A jacket at a guessed inlet. Where the heat drives the pumps, no balance is found from a heat load that is half the
     * true one; where channels are stated, none from a pressure at which the coolant does not pass them.
     */
    private Optional<JacketLoad> roughly(ChamberPerformance chamber) {
        double pressure =
                circuit.dump().map(DumpDesign::pressureShare).orElse(PUMPED_SHARE) * concept.chamberPressure();
        for (int i = 0; i < MOST_ROUGH_PRESSURES; i++) {
            Optional<JacketLoad> load = roughly(chamber, pressure);
            if (load.isPresent()) {
                return load;
            }
            pressure *= ROUGH_STEP;
        }
        return Optional.empty();
    }

    private Optional<JacketLoad> roughly(ChamberPerformance chamber, double pressure) {
        FeedDesign feed = concept.feed(circuit.coolant());
        try {
            double pumped = pumped(feed, pressure);
            JacketCase question = new JacketCase(
                    HotGasProfiles.of(chamber, concept.fuel()),
                    feed.propellant(),
                    pressure,
                    pumped,
                    coolantFlow(chamber.massFlow()),
                    circuit.jacket(),
                    circuit.heatFluxFactor(),
                    first() ? Optional.empty() : Optional.of(guessedFilm(pressure)));
            JacketSolver jackets = balanceModels.jackets();
            return Optional.of(jackets.load(jackets.sized(question)));
        } catch (PenstockException e) {
            // a guess that does not pass; the share of the jet's power must do
            return Optional.empty();
        }
    }

    /** Enthalpy behind a pump that raises a propellant from its tank to a pressure, on its fluid's own zero (J/kg). */
    private double pumped(FeedDesign feed, double pressure) {
        double tankPressure = feed.tankPressure().orElse(concept.chamberPressure());
        FluidState tank = balanceModels.tankState(feed, tankPressure);
        return tank.enthalpy() + (pressure - tankPressure) / (tank.density() * FirstGuess.PUMP_EFFICIENCY);
    }

    private FilmSource guessedFilm(double pressure) {
        FeedDesign feed = concept.feed(concept.cooling().get(0).coolant());
        return new FilmSource(feed.propellant(), pumped(feed, pressure));
    }

    private boolean first() {
        return circuit.equals(concept.cooling().get(0));
    }

    /** Flow through the jacket for a flow through the throat (kg/s). */
    private double coolantFlow(double chamberFlow) {
        double ratio = concept.mixtureRatio();
        boolean oxidizer = circuit.coolant() == Side.OXIDIZER;
        double share = oxidizer ? ratio / (1 + ratio) : 1 / (1 + ratio);
        double heated = oxidizer || !circuit.returns() ? 1 : concept.gasPath().heatedShare();
        return chamberFlow * share * circuit.flowFraction() * heated;
    }

    /** Heat that warms the coolant half-way to the end of its fluid's model (W). */
    private double mostHeat(double chamberFlow) {
        FeedDesign feed = concept.feed(circuit.coolant());
        double flow = coolantFlow(chamberFlow);
        Fluid fluid = feed.propellant().fluid();
        double pressure =
                Math.min(1.5 * concept.chamberPressure(), fluid.range().maximumPressure());
        double warm = 0.5 * (feed.tankTemperature() + Math.min(fluid.range().maximumTemperature(), 700));
        // from the tank's own pressure: a cryogen as cold as in the tank is solid at the pressure of the jacket
        double cold = balanceModels
                .tankState(feed, feed.tankPressure().orElse(concept.chamberPressure()))
                .enthalpy();
        return flow * (fluid.atPressureTemperature(pressure, warm).enthalpy() - cold);
    }

    // ---- one round

    /** The jacket with the coolant of a solved arrangement; that of the last round if nothing has moved. */
    Known again(Known known, Flowsheet sheet, ChamberPerformance chamber) {
        Stream inlet = sheet.coolantInlet(circuit.key());
        double own = ownEnthalpy(inlet);
        List<Double> inputs = new ArrayList<>(List.of(
                inlet.pressure(),
                own,
                inlet.flow(),
                chamber.massFlow(),
                chamber.ideal().chamber().enthalpy()));
        Optional<FilmSource> film = first() ? Optional.empty() : Optional.of(film(sheet));
        film.ifPresent(f -> inputs.add(f.enthalpy()));
        if (known.found.isPresent() && !Surroundings.moved(inputs, known.found.get().inputs, Surroundings.UNMOVED)) {
            return known;
        }
        JacketCase asked = new JacketCase(
                profile(known, chamber),
                concept.feed(circuit.coolant()).propellant(),
                inlet.pressure(),
                own,
                inlet.flow() / concept.chambers(),
                circuit.jacket(),
                circuit.heatFluxFactor(),
                film,
                exhaust(sheet));
        Optional<ChannelLayout> kept = known.kept(inputs);
        JacketSolver.Sized sized = withChannels(kept, withCorrelation(known, asked), known.start.map(Start::sizing));
        JacketLoad load = balanceModels.jackets().load(sized.question());
        return known.with(new Found(inputs, chamber, sized.question(), load), kept.isPresent(), sized.start());
    }

    private static double ownEnthalpy(Stream coolant) {
        return ((Medium.Liquid) coolant.medium()).ownEnthalpy(coolant.enthalpy());
    }

    /** Turbine gas that runs along the nozzle of one chamber; where there are several exhausts, the flow of all at their mean state. */
    private Optional<ExhaustFilm> exhaust(Flowsheet sheet) {
        OptionalDouble into = concept.gasPath().exhaust().into();
        if (into.isEmpty() || sheet.exhaustStreams().isEmpty()) {
            return Optional.empty();
        }
        double flow = 0;
        double capacity = 0;
        double energy = 0;
        for (Stream stream : sheet.exhaustStreams()) {
            WorkingState state =
                    ((Medium.Gas) stream.medium()).fluid().atPressureEnthalpy(stream.pressure(), stream.enthalpy());
            flow += stream.flow();
            capacity += stream.flow() * state.isobaricHeatCapacity();
            energy += stream.flow() * state.isobaricHeatCapacity() * state.temperature();
        }
        return Optional.of(
                new ExhaustFilm(into.getAsDouble(), flow / concept.chambers(), energy / capacity, capacity / flow));
    }

    /** A film is made of the coolant of the circuit that begins at the injector. */
    private FilmSource film(Flowsheet sheet) {
        CoolingCircuit at = concept.cooling().get(0);
        return new FilmSource(concept.feed(at.coolant()).propellant(), ownEnthalpy(sheet.coolantInlet(at.key())));
    }

    /** The gas along the wall; that of the last jacket if it cools the same chamber. */
    private HotGasProfile profile(Known known, ChamberPerformance chamber) {
        return known.found
                .filter(jacket -> jacket.chamber == chamber)
                .map(jacket -> jacket.question.gas())
                .orElseGet(() -> HotGasProfiles.of(chamber, concept.fuel()));
    }

    private JacketCase withCorrelation(Known known, JacketCase asked) {
        CoolantSideDesign side = known.solutions < CHOOSING_SOLUTIONS
                ? JacketSolver.withCorrelation(asked).design().coolantSide()
                : known.found.orElseThrow().question.design().coolantSide();
        return asked.withDesign(circuit.jacket().withCoolantSide(side));
    }

    private JacketSolver.Sized withChannels(
            Optional<ChannelLayout> kept, JacketCase named, Optional<SizingStart> start) {
        return kept.filter(k -> circuit.jacket().channels().open())
                .map(k -> new JacketSolver.Sized(named.withDesign(named.design().withChannels(k)), start))
                .orElseGet(() -> balanceModels.jackets().sized(named, start));
    }

    /** The jacket of the last round with everything that a report says of it. */
    JacketResult inFull(Known known) {
        return balanceModels.jackets().solve(known.found.orElseThrow().question);
    }
}

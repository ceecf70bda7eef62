package dev.penstock.study;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.Merit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.input.InputFile;
import dev.penstock.vehicle.EngineSource;
import dev.penstock.vehicle.FlownSizer;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.HowFar;
import dev.penstock.vehicle.PayloadToOrbit;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.engine.BalancedEngine;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.MissionInputs;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.reading.EngineChanges;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ReuseTrade;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Sizes vehicles with the engines that their stages name, each engine balanced first. */
public final class VehicleRuns {

    private final EngineRuns engines;

    /** @param engines balances the engines */
    public VehicleRuns(EngineRuns engines) {
        this.engines = engines;
    }

    /**
     * @param file vehicle file, or concept file with a table {@code [vehicle]}
     * @param changes values by dotted path that replace or add to what the file says
     * @param progress told of each engine that is balanced
     * @return the vehicle
     * @throws InvalidInput if anything in the file cannot be used
     * @throws dev.penstock.errors.PenstockException if an engine or the vehicle has no solution
     */
    public VehicleSizing size(Path file, Map<String, String> changes, Progress progress) {
        Request request = request(file, changes, progress);
        return new VehicleSizer().size(request.plan(), request.source());
    }

    /**
     * Sizes a vehicle on the losses of its own flight.
     *
     * @param file vehicle file, or concept file with a table {@code [vehicle]}
     * @param changes values by dotted path that replace or add to what the file says
     * @param balancing told of each engine that is balanced
     * @param flying told of the flight in hundredths
     * @return the vehicle and its flight
     * @throws InvalidInput if anything in the file cannot be used
     * @throws dev.penstock.errors.PenstockException if an engine, the vehicle or the flight has no solution
     */
    public FlownSizing fly(Path file, Map<String, String> changes, Progress balancing, Progress flying) {
        Request request = request(file, changes, balancing);
        return new FlownSizer(new StandardAtmosphere1976())
                .size(
                        request.plan(),
                        request.source(),
                        (fraction, what) -> flying.done((int) Math.round(100 * fraction), 100, what));
    }

    /**
     * Sizes a vehicle with its first stage lost, landed downrange, and landed where it started.
     *
     * @param file vehicle file, or concept file with a table {@code [vehicle]}
     * @param changes values by dotted path that replace or add to what the file says
     * @param progress told of each engine that is balanced
     * @return what became of each
     * @throws InvalidInput if anything in the file cannot be used
     * @throws dev.penstock.errors.PenstockException if an engine has no solution
     */
    public List<ReuseTrade.Row> reuse(Path file, Map<String, String> changes, Progress progress) {
        Request request = request(file, changes, progress);
        return new ReuseTrade().rows(request.plan(), request.source());
    }

    /**
     * As above, each vehicle sized on its own flight.
     *
     * @param file vehicle file, or concept file with a table {@code [vehicle]}
     * @param changes values by dotted path that replace or add to what the file says
     * @param balancing told of each engine that is balanced
     * @param flying told of the flights in hundredths
     * @return what became of each
     * @throws InvalidInput if anything in the file cannot be used
     * @throws dev.penstock.errors.PenstockException if an engine has no solution
     */
    public List<ReuseTrade.Row> reuseFlown(
            Path file, Map<String, String> changes, Progress balancing, Progress flying) {
        Request request = request(file, changes, balancing);
        int ways = Recovery.Mode.values().length;
        return new ReuseTrade().rows(request.plan(), (plan, done) -> {
            FlownSizing flown = new FlownSizer(new StandardAtmosphere1976())
                    .size(
                            plan,
                            request.source(),
                            (part, what) -> flying.done((int) Math.round(100 * (done + part) / ways), 100, what));
            return new ReuseTrade.Made(flown.sizing(), Optional.of(flown));
        });
    }

    /**
     * How far a vehicle gets that does not close.
     *
     * @param reason why it does not
     * @param file vehicle file, or concept file with a table {@code [vehicle]}
     * @param changes values by dotted path that replace or add to what the file says
     * @param fly whether what would close is flown too
     * @return how far it gets and what would close it
     */
    public HowFar howFar(LimitReached reason, Path file, Map<String, String> changes, boolean fly) {
        Request request = request(file, changes, Progress.NONE);
        HowFar.Flyer flyer =
                (plan, source) -> new FlownSizer(new StandardAtmosphere1976()).size(plan, source, FlightProgress.NONE);
        return HowFar.of(
                reason.getMessage(),
                request.plan(),
                request.source(),
                fly && request.plan().ascent().isPresent() ? Optional.of(flyer) : Optional.empty());
    }

    /**
     * What a vehicle carries to other orbits as it is.
     *
     * @param flown the vehicle with its flight
     * @param file its file
     * @param changes values by dotted path that it was read with
     * @param altitudes heights of the orbits (m)
     * @param inclinations their inclinations (rad)
     * @param progress told of each orbit that is done
     * @return the payload to each; altitudes move fastest
     */
    public List<PayloadToOrbit> orbits(
            FlownSizing flown,
            Path file,
            Map<String, String> changes,
            List<Double> altitudes,
            List<Double> inclinations,
            Progress progress) {
        List<double[]> all = new ArrayList<>();
        inclinations.forEach(i -> altitudes.forEach(h -> all.add(new double[] {h, i})));
        return Parallel.map(all, o -> "orbit", o -> orbit(flown, file, changes, o[0], o[1]), progress);
    }

    private PayloadToOrbit orbit(
            FlownSizing flown, Path file, Map<String, String> changes, double altitude, double inclination) {
        boolean inConcept = InputFile.read(file, changes).root().has("cycle");
        String mission = (inConcept ? "vehicle." : "") + MissionInputs.MISSION.key() + ".";
        Map<String, String> other = new LinkedHashMap<>(changes);
        other.put(mission + MissionInputs.ORBIT_ALTITUDE.key(), altitude + " m");
        other.put(mission + MissionInputs.INCLINATION.key(), inclination + " rad");
        try {
            VehiclePlan plan = inConcept
                    ? engines.vehicles()
                            .readConcept(file.toString(), InputFile.read(file).text(), other)
                            .orElseThrow()
                    : engines.vehicles().read(file, other);
            return PayloadToOrbit.of(
                    flown, plan.ascent().orElseThrow(), plan.mission(), inclination, new StandardAtmosphere1976());
        } catch (InvalidInput e) {
            return PayloadToOrbit.without(altitude, inclination, e);
        }
    }

    /**
     * @param file vehicle file, or concept file with a table {@code [vehicle]}
     * @param changes values by dotted path that replace or add to what the file says
     * @param plan what the file says of the vehicle
     * @return the concept of each engine, by its file; by none where the concept carries the vehicle
     */
    public Map<Optional<Path>, Concept> concepts(Path file, Map<String, String> changes, VehiclePlan plan) {
        if (InputFile.read(file, changes).root().has("cycle")) {
            return Map.of(Optional.empty(), engines.read(file, changes));
        }
        List<Path> files = engineFiles(plan);
        Function<Path, Map<String, String>> own = ofEngines(files, changes);
        Map<Optional<Path>, Concept> concepts = new LinkedHashMap<>();
        files.forEach(engine -> concepts.put(Optional.of(engine), engines.read(engine, own.apply(engine))));
        return concepts;
    }

    private record Request(VehiclePlan plan, EngineSource source) {}

    private Request request(Path file, Map<String, String> changes, Progress progress) {
        InputFile input = InputFile.read(file, changes);
        if (input.root().has("cycle")) {
            Optional<VehiclePlan> plan = engines.vehicles().readConcept(file.toString(), input.text(), changes);
            if (plan.isEmpty()) {
                throw new InvalidInput(
                        file.toString(), "vehicle", "missing", "write a table [vehicle], or name a vehicle file");
            }
            EnginePerformance engine = new BalancedEngine(
                    balances(List.of(file), f -> changes, progress).get(0));
            return new Request(plan.get(), concept -> engine);
        }
        VehiclePlan plan = engines.vehicles().read(file, changes);
        List<Path> files = engineFiles(plan);
        List<EngineBalance> balances = balances(files, ofEngines(files, changes), progress);
        Map<Path, EngineBalance> byFile = new LinkedHashMap<>();
        for (int i = 0; i < files.size(); i++) {
            byFile.put(files.get(i), balances.get(i));
        }
        return new Request(plan, source(byFile));
    }

    /**
     * @param concept an engine
     * @return that the vehicle in its file should start as light as possible for its payload; empty if it has none
     * @throws InvalidInput if what it says of a vehicle cannot be used
     */
    public Optional<Merit> leastStartMass(Concept concept) {
        return engines.vehicles()
                .of(concept)
                .map(plan -> new Merit("start mass over payload", "", true, balance -> {
                    VehicleSizing sizing = size(plan, balance);
                    return sizing.startMass() / sizing.payload();
                }));
    }

    /**
     * @param plan vehicle whose stages name no engine file
     * @param balance engine of every stage
     * @return the vehicle
     */
    public static VehicleSizing size(VehiclePlan plan, EngineBalance balance) {
        EnginePerformance engine = new BalancedEngine(balance);
        return new VehicleSizer().size(plan, concept -> engine);
    }

    /**
     * @param plan vehicle
     * @param balances engine by concept file
     * @return the vehicle
     */
    public static VehicleSizing size(VehiclePlan plan, Map<Path, EngineBalance> balances) {
        return new VehicleSizer().size(plan, source(balances));
    }

    /**
     * @param balances engine by concept file
     * @return gives each engine to the vehicles that name it
     */
    public static EngineSource source(Map<Path, EngineBalance> balances) {
        Map<Path, EnginePerformance> engines = new LinkedHashMap<>();
        balances.forEach((file, balance) -> engines.put(file, new BalancedEngine(balance)));
        return file -> engines.get(file.orElseThrow());
    }

    /**
     * @param plan vehicle
     * @return the concept files of its engines, each once
     */
    public static List<Path> engineFiles(VehiclePlan plan) {
        return plan.engineFiles();
    }

    /** The changes of each engine, which go by its name. */
    private Function<Path, Map<String, String>> ofEngines(List<Path> files, Map<String, String> changes) {
        EngineChanges sorted = EngineChanges.of(changes);
        if (sorted.engines().isEmpty()) {
            return file -> Map.of();
        }
        Map<Path, String> names = new LinkedHashMap<>();
        files.forEach(file -> names.put(file, engines.read(file, Map.of()).name()));
        sorted.check(names.values());
        return file -> sorted.of(names.get(file));
    }

    private List<EngineBalance> balances(
            List<Path> files, Function<Path, Map<String, String>> changes, Progress progress) {
        List<EngineBalance> balances = new ArrayList<>();
        for (Outcome outcome : engines.balance(files, changes, progress)) {
            outcome.failure().ifPresent(failure -> {
                throw failure;
            });
            balances.add(outcome.balance().orElseThrow());
        }
        return balances;
    }
}

package dev.penstock;

import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.HomeFolder;
import dev.penstock.quantities.Range;
import dev.penstock.reports.text.AnswerOrigin;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.JsonText;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.reading.VehicleReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Estimates liquid rocket engines and the vehicles that follow from them.
 *
 * <pre>{@code
 * Penstock penstock = Penstock.open();
 * Engine engine = penstock.balance(EngineConcept.read(Path.of("heron.toml")));
 * double isp = engine.vacuumIsp();
 * }</pre>
 *
 * <p>Everything is in SI units; pressures are absolute. Where a number comes from and how well it agrees with published ones is
 * written in Penstock's documentation, with the source of every equation; a limit names the source of its bound. Answers are
 * estimates for comparing and explaining concepts, not a release for design, test or operation.
 *
 * <p>Whatever fails throws a {@link dev.penstock.errors.PenstockException} with one sentence that says what to do:
 * {@link InvalidInput} if a key or value cannot be used (all of them together), {@link dev.penstock.errors.LimitReached} if no
 * balance exists, {@link dev.penstock.errors.NotConverged} if none is found, {@link dev.penstock.errors.OutsideValidity} if an
 * equation has no meaning at these numbers, {@link dev.penstock.errors.PropertyFailure} if the property library has no answer or is
 * not there, {@link dev.penstock.errors.ConservationViolated} if an answer does not conserve mass and energy.
 *
 * <p>Safe to share between threads. An answer depends on the data and on what is asked, on nothing else: neither on earlier
 * questions nor on the thread; the same question has the same answer in every bit.
 *
 * <p>The property library CoolProp is not part of the archive. Penstock finds it in {@code .penstock/coolprop} of the home folder,
 * where {@link #fetchCoolProp} puts it once, or where the environment variable {@code PENSTOCK_COOLPROP} says: a folder with
 * CoolProp's Python wheel, or its own shared library. It needs the python3 that it was fetched with. One CoolProp serves a process:
 * that of the first home folder which needs it.
 */
public final class Penstock {

    private static final Range MIXTURE_RATIO = Range.of(1e-3, 1e3);
    private static final Range CHAMBER_PRESSURE = Range.of(100, 2e8);
    private static final Range AREA_RATIO = Range.of(1, 5000);

    private final Path home;
    private final FluidLibrary fluids;
    private final ConceptReader reader;
    private final EngineRuns runs;

    private Penstock(Path home) {
        this.home = home;
        this.fluids = FluidLibrary.open(home);
        this.reader = new ConceptReader(fluids);
        this.runs = new EngineRuns(home, fluids);
    }

    /**
     * Opens the data of the home folder: that of the system property {@code penstock.home}, else of the environment variable
     * {@code PENSTOCK_HOME}, else the working folder.
     *
     * @return Penstock with these data
     */
    public static Penstock open() {
        return open(HomeFolder.find());
    }

    /**
     * @param home home folder; if it holds a folder {@code fluids} those data are used, otherwise those in Penstock's archive
     * @return Penstock with these data; files are read when they are first needed
     */
    public static Penstock open(Path home) {
        return new Penstock(home.toAbsolutePath().normalize());
    }

    /**
     * Fetches CoolProp with {@code python3 -m pip} into {@code .penstock} of the home folder, once; does nothing when it is there.
     * Needs python3 with pip, and a package index within reach.
     *
     * @throws dev.penstock.errors.PropertyFailure if it cannot be fetched, saying why
     */
    public void fetchCoolProp() {
        CoolPropFetch.into(home);
    }

    /** @return ids of all fluids, sorted */
    public List<String> fluids() {
        return fluids.ids();
    }

    /**
     * Closes a concept at its chamber pressure: flow, pressure and power of every component in balance, with the coolant's
     * temperature rise, the turbomachinery and the losses that follow.
     *
     * @param concept what is asked for
     * @return the balanced engine
     * @throws InvalidInput with every key or value that cannot be used
     * @throws dev.penstock.errors.LimitReached if no balance exists
     * @throws dev.penstock.errors.NotConverged if none is found
     * @throws dev.penstock.errors.OutsideValidity if a model has no meaning at the concept's numbers
     * @throws dev.penstock.errors.PropertyFailure if CoolProp is not there or has no answer
     * @throws dev.penstock.errors.ConservationViolated if the result does not conserve mass and energy
     */
    public Engine balance(EngineConcept concept) {
        return Answers.engine(balanced(concept));
    }

    /**
     * The same balance with every figure that there is.
     *
     * @param concept what is asked for
     * @return a JSON document; its keys end in the SI unit of the value
     * @throws dev.penstock.errors.PenstockException as {@link #balance} does
     */
    public String balanceAsJson(EngineConcept concept) {
        AnswerOrigin origin = new AnswerOrigin("balance", Penstock.class.getName() + ".balanceAsJson");
        return JsonText.of(origin.with(FigureJson.of(EngineFigures.ALL, balanced(concept))));
    }

    /**
     * Finds the highest chamber pressure at which a concept closes within all its limits, and the best one for impulse.
     *
     * @param concept what is asked for; its own chamber pressure has no part in the answer
     * @return the engines there and the limit that binds
     * @throws InvalidInput with every key or value that cannot be used
     * @throws dev.penstock.errors.LimitReached if no chamber pressure keeps the limits, or none is ever reached
     * @throws dev.penstock.errors.SearchFailed if nothing could be computed where the search ends
     * @throws dev.penstock.errors.PropertyFailure if CoolProp is not there or has no answer
     */
    public PressureLimit limit(EngineConcept concept) {
        LimitResult result = runs.study().limit(read(concept));
        return new PressureLimit(
                result.chamberPressure(),
                result.bindingLimit(),
                result.explanation(),
                Answers.engine(result.balance()),
                result.best().map(LimitResult.Best::why).orElseThrow(),
                Answers.engine(result.best().orElseThrow().balance()));
    }

    /**
     * Sizes a vehicle whose stages all use one engine: start mass from payload or the reverse, propellant, tanks and dry mass.
     *
     * @param concept an engine with keys below {@code vehicle}
     * @return the vehicle
     * @throws InvalidInput with every key or value that cannot be used, or if the concept has no vehicle
     * @throws dev.penstock.errors.PenstockException if the engine or the vehicle has no solution
     */
    public Vehicle size(EngineConcept concept) {
        VehiclePlan plan = new VehicleReader(fluids)
                .readConcept(concept.source(), concept.text(), concept.changes())
                .orElseThrow(() -> new InvalidInput(
                        concept.source(), "vehicle", "missing", "write what the vehicle is to carry and where to"));
        return Answers.vehicle(VehicleRuns.size(plan, balanced(concept)));
    }

    /**
     * Sizes a vehicle of different stages.
     *
     * @param file vehicle file, whose stages name the concept files of their engines
     * @return the vehicle
     * @throws InvalidInput with every key or value that cannot be used
     * @throws dev.penstock.errors.PenstockException if an engine or the vehicle has no solution
     */
    public Vehicle size(Path file) {
        return Answers.vehicle(new VehicleRuns(runs).size(file, Map.of(), Progress.NONE));
    }

    /**
     * Burns two propellants, injected as they are stored, in chemical equilibrium and expands the gas without losses.
     *
     * @param oxidizer id of an oxidizer, one of {@link #fluids}
     * @param fuel id of a fuel, one of {@link #fluids}
     * @param mixtureRatio oxidizer over fuel by mass (-), 0.001 to 1000
     * @param chamberPressure pressure in the chamber (Pa, absolute), 100 to 2e8
     * @param areaRatios exit over throat area of each nozzle asked for (-), 1 to 5000
     * @return the gas and the nozzles
     * @throws InvalidInput if there is no such propellant or a number is outside its range
     * @throws dev.penstock.errors.NotConverged if no equilibrium is found
     * @throws dev.penstock.errors.OutsideValidity if the gas gets too cold for the species data on the way
     */
    public Combustion combust(
            String oxidizer, String fuel, double mixtureRatio, double chamberPressure, double... areaRatios) {
        List<InvalidInput.Problem> problems = new ArrayList<>();
        check(problems, "mixture ratio", mixtureRatio, MIXTURE_RATIO, "");
        check(problems, "chamber pressure", chamberPressure, CHAMBER_PRESSURE, "Pa");
        for (double areaRatio : areaRatios) {
            check(problems, "area ratio", areaRatio, AREA_RATIO, "");
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
        Propellant oxygen = propellant(oxidizer, Propellant.Role.OXIDIZER);
        Propellant burnt = propellant(fuel, Propellant.Role.FUEL);
        Reactants reactants = Reactants.ofTanks(oxygen, burnt, mixtureRatio);
        Expansion expansion = NozzleFlow.of(SpeciesLibrary.open(home), reactants)
                .expand(reactants, chamberPressure, ExpansionMode.SHIFTING);
        List<IdealExpansion> nozzles = new ArrayList<>();
        for (double areaRatio : areaRatios) {
            nozzles.add(expansion.toAreaRatio(areaRatio));
        }
        return Answers.combustion(chamberPressure, expansion, nozzles);
    }

    private Propellant propellant(String id, Propellant.Role role) {
        Propellant propellant = fluids.propellant(id);
        if (!propellant.roles().contains(role)) {
            List<String> fitting = fluids.ids().stream()
                    .filter(other -> fluids.propellant(other).roles().contains(role))
                    .toList();
            throw new InvalidInput(
                    "",
                    role.name().toLowerCase(java.util.Locale.ROOT),
                    '"' + id + '"',
                    "allowed are " + String.join(", ", fitting));
        }
        return propellant;
    }

    private EngineBalance balanced(EngineConcept concept) {
        return runs.study().balance(read(concept));
    }

    private Concept read(EngineConcept concept) {
        return reader.parse(concept.source(), concept.text(), concept.changes());
    }

    private static void check(
            List<InvalidInput.Problem> problems, String what, double value, Range allowed, String unit) {
        if (!allowed.contains(value)) {
            problems.add(
                    new InvalidInput.Problem("", what, Double.toString(value), "allowed is " + allowed.describe(unit)));
        }
    }
}

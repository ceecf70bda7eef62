package dev.penstock.vehicle.stage;

import static dev.penstock.provenance.Place.Role.BEFORE;
import static dev.penstock.provenance.Place.Role.ENGINE;
import static dev.penstock.provenance.Place.Role.TARGET;
import static dev.penstock.provenance.Place.Role.WHOLE;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.table;
import static dev.penstock.provenance.Place.values;
import static dev.penstock.quantities.Notation.TONNES;
import static dev.penstock.quantities.Notation.fixed;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Words;
import dev.penstock.quantities.Notation;
import dev.penstock.vehicle.engine.SolidMotor;
import dev.penstock.vehicle.mass.BodyShape;
import dev.penstock.vehicle.mass.CoastBoilOff;
import dev.penstock.vehicle.mass.MassLine;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.plan.MissionInputs;
import dev.penstock.vehicle.plan.Recovery;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What a sized stage publishes, with its boosters and its dry mass line by line. */
public final class StageFigures {

    static final Notation SPEED = fixed("m/s", "m/s", 1, 0);
    static final Notation KILOGRAMS = significant("kg", 4);

    private static final Notation VOLUME = significant("m³", 4);
    private static final Notation METRES = fixed("m", "m", 1, 2);
    private static final Notation TIME = fixed("s", "s", 1, 0);
    private static final Notation SCATTER = new Notation("", "", share -> "± " + fixed(100 * share, 0) + " %");

    private static final ModelCard LOADED = card(
            "loaded",
            "Propellant loaded",
            "(burned + start-up + kept for recovery + boiled off in a coast)/(1 − residual − boil-off)",
            "everywhere");
    private static final ModelCard MIXTURE = card(
            "mixture",
            "Oxidizer and fuel by the mixture ratio",
            "m_o = m r/(1 + r); m_f = m/(1 + r); m without a third fluid",
            "everywhere");
    private static final ModelCard TANK =
            card("tank", "Tank volume", "V = m/ρ/(1 − ullage)", "loading density of the propellant");
    private static final ModelCard SHAPE = card(
            "shape",
            "Shape of the stage",
            "cylinder with heads that holds both tanks; diameter given or from the slenderness",
            "everywhere");
    private static final ModelCard COUNT = card(
            "engine-count",
            "Fewest engines that suffice",
            "n F/(m0 g0) ≥ thrust to weight, also with those lost that may be",
            "everywhere");
    private static final ModelCard THRUST_TO_WEIGHT =
            card("thrust-to-weight", "Thrust to weight", "n F/(m0 g0)", "at ignition");
    private static final ModelCard BURN = card("burn-time", "Burn time", "t = m_burned/ṁ", "full thrust");
    private static final ModelCard SQUARES = card(
            "scatter",
            "Scatter of a sum",
            "√(Σ(scatter × mass)² + (" + MassTable.COMMON + " Σ mass)²)",
            "what is estimated, by flown stages");

    private static final Place.Source ALLOWANCES = table("allowances");
    private static final Place.Source COAST = at -> at.all(Place.Role.PLAN).stream()
            .filter(path -> path.endsWith("." + MissionInputs.PARKING_COAST.key()))
            .toList();
    private static final String VENTED = "vented_propellant_kg";
    private static final String DILUENT_SHARE = "diluent_share";
    private static final Place.Source GROWTH = given("growth_margin");
    private static final Place.Source THRUST =
            given("thrust_to_weight", "thrust_to_weight_engine_out", "engines", "engines_out", "ignition_pressure");

    /**
     * A line of the dry mass with the table that it stands in.
     *
     * @param table the table
     * @param line the line
     */
    public record DryLine(MassTable table, MassLine line) {

        /**
         * @param table dry mass of a stage or a booster
         * @return its lines
         */
        public static List<DryLine> of(MassTable table) {
            return table.lines().stream().map(line -> new DryLine(table, line)).toList();
        }
    }

    /** Figures of a line of the dry mass. */
    public static final FigureTable<DryLine> DRY_MASS = dryMass("dry_mass_kg");

    /** Tanks of a stage or a booster, beside their volumes; a solid one has none. */
    private static final FigureTable<Optional<StageContents>> TANKS = FigureTable.<Optional<StageContents>>ofOne()
            .optional(
                    "oxidizer_tank_diameter_m",
                    "diameter",
                    METRES,
                    o -> o.map(c -> 2 * c.oxidizerTank().radius()))
            .by(SHAPE, own("oxidizer_tank_m3", "diameter_m"))
            .outsideDocuments()
            .optional(
                    "oxidizer_tank_length_m",
                    "length",
                    METRES,
                    o -> o.map(c -> c.oxidizerTank().length()))
            .by(SHAPE, own("oxidizer_tank_m3", "diameter_m"))
            .outsideDocuments()
            .optional(
                    "fuel_tank_diameter_m",
                    "diameter",
                    METRES,
                    o -> o.map(c -> 2 * c.fuelTank().radius()))
            .by(SHAPE, own("fuel_tank_m3", "diameter_m"))
            .outsideDocuments()
            .optional(
                    "fuel_tank_length_m",
                    "length",
                    METRES,
                    o -> o.map(c -> c.fuelTank().length()))
            .by(SHAPE, own("fuel_tank_m3", "diameter_m"))
            .outsideDocuments()
            .table();

    /** Figures of all boosters of a stage together. */
    public static final FigureTable<BoosterSizing> BOOSTERS = FigureTable.<BoosterSizing>ofOne()
            .count("count", "boosters", BoosterSizing::count)
            .by(ModelCard.SAME, given("count"))
            .word("engine", "engine", BoosterSizing::engineName)
            .number("start_mass_kg", "start mass", TONNES, BoosterSizing::startMass)
            .by(Definitions.SUM, own("propellant_mass_kg", "dry_mass_kg"))
            .number("propellant_mass_kg", "propellant", TONNES, b -> b.count() * b.loadedEach())
            .by(LOADED, own("count"), given("propellant"))
            .optional("oxidizer_mass_kg", "oxidizer", TONNES, b -> b.liquid()
                    .map(l -> l.count() * l.propellant().oxidizer()))
            .from((b, at) -> mixture(at, b.liquid().orElseThrow().propellant()))
            .leftOutIfAbsent()
            .optional("fuel_mass_kg", "fuel", TONNES, b -> b.liquid()
                    .map(l -> l.count() * l.propellant().fuel()))
            .from((b, at) -> mixture(at, b.liquid().orElseThrow().propellant()))
            .leftOutIfAbsent()
            .number("dry_mass_kg", "dry", TONNES, b -> b.count() * b.dryMass().total())
            .from((b, at) -> Origin.of(
                    Definitions.SUM,
                    VehiclePlaces.lines(at, "dry_mass_of_one", b.dryMass(), "mass_kg"),
                    own("count").paths(at),
                    GROWTH.paths(at)))
            .number("isp_s", "Isp", fixed("s", "s", 1, 1), BoosterSizing::vacuumIsp)
            .by(
                    b -> b.liquid().isPresent() ? ModelCard.SAME : SolidMotor.CARD,
                    of(ENGINE, "isp_vacuum_s"),
                    given("isp", "propellant"))
            .number("burn_time_s", "burn", TIME, BoosterSizing::burnTime)
            .by(
                    b -> b.liquid().isPresent() ? BURN : SolidMotor.CARD,
                    own("propellant_mass_kg", "count", "engines"),
                    of(ENGINE, "mass_flow_kg_s"),
                    ALLOWANCES)
            .each("dry_mass_of_one", b -> DryLine.of(b.dryMass()), dryMass("dry_mass_of_one_kg"))
            .count("engines", "engines", b -> b.count() * b.plan().engines())
            .by(Definitions.PRODUCT, own("count"), given("engines"))
            .outsideDocuments()
            .word("name", "stage", b -> b.count() + " boosters")
            .outsideDocuments()
            .number("dry_mass_of_one_kg", "dry mass of one", KILOGRAMS, b -> b.dryMass()
                    .total())
            .from((b, at) -> Origin.of(
                    Definitions.SUM,
                    ofOne(b, at, "mass_kg"),
                    own("dry_mass_of_one_growth_margin_kg").paths(at)))
            .outsideDocuments()
            .number("dry_mass_of_one_growth_margin_kg", "growth margin of one", KILOGRAMS, b -> b.dryMass()
                    .growth())
            .from((b, at) -> Origin.of(Definitions.SUM, ofOne(b, at, "mass_kg"), GROWTH.paths(at)))
            .outsideDocuments()
            .number("dry_mass_of_one_growth_share", "share of the growth margin", Notation.PERCENT, b -> b.dryMass()
                    .share(b.dryMass().growth()))
            .by(Definitions.RATIO, own("dry_mass_of_one_growth_margin_kg", "dry_mass_of_one_kg"))
            .outsideDocuments()
            .number("dry_mass_of_one_share", "whole dry mass", Notation.PERCENT, b -> 1)
            .by(Definitions.RATIO, own("dry_mass_of_one_kg"))
            .outsideDocuments()
            .number("dry_mass_of_one_scatter_share", "scatter of the dry mass over it", SCATTER, b -> b.dryMass()
                    .share(b.dryMass().scatter()))
            .from((b, at) -> Origin.of(SQUARES, ofOne(b, at, "scatter"), ofOne(b, at, "mass_kg")))
            .outsideDocuments()
            .optional("oxidizer_tank_m3", "oxidizer tank", VOLUME, b -> b.liquid()
                    .map(l -> l.contents().oxidizerTank().volume()))
            .by(TANK, own("oxidizer_mass_kg", "count"), of(ENGINE, "oxidizer_density_kg_m3"), ALLOWANCES)
            .outsideDocuments()
            .optional("fuel_tank_m3", "fuel tank", VOLUME, b -> b.liquid()
                    .map(l -> l.contents().fuelTank().volume()))
            .by(TANK, own("fuel_mass_kg", "count"), of(ENGINE, "fuel_density_kg_m3"), ALLOWANCES)
            .outsideDocuments()
            .number("diameter_m", "diameter", significant("m", 4), BoosterSizing::diameter)
            .by(SHAPE, own("oxidizer_tank_m3", "fuel_tank_m3"), given("diameter"))
            .outsideDocuments()
            .with(TANKS, b -> b.liquid().map(LiquidBoosters::contents))
            .table();

    /** Figures of the body that a stage is given. */
    public static final FigureTable<BodyFit> BODY = FigureTable.<BodyFit>ofOne()
            .word("shape", "shape", b -> Words.of(b.body().kind()))
            .word("fits", "tanks fit", BodyFit::fits)
            .number("volume_m3", "volume", VOLUME, b -> b.body().volume())
            .by(BodyShape.CARD, table("body"))
            .number("tanks_m3", "tanks", VOLUME, BodyFit::tanks)
            .by(BodyShape.CARD, table("body"))
            .number("missing_m3", "missing for the tanks", VOLUME, b -> b.body().missing(b.tanks()))
            .by(BodyShape.CARD, own("volume_m3", "tanks_m3"), table("body"))
            .number("height_m", "height", METRES, b -> b.body().height())
            .by(BodyShape.CARD, table("body"))
            .number("height_needed_m", "height needed", METRES, b -> b.body().heightFor(b.tanks()))
            .by(BodyShape.CARD, own("volume_m3", "tanks_m3", "height_m"), table("body"))
            .table();

    /** Figures of a stage. */
    public static final FigureTable<StageSizing> STAGES = FigureTable.named(StageSizing::name)
            .word("name", "stage", StageSizing::name)
            .word("engine", "engine", s -> s.engine().name())
            .count("engines", "engines", StageSizing::engines)
            .by(COUNT, own("start_mass_kg"), of(ENGINE, "thrust_vacuum_N"), THRUST)
            .number("start_mass_kg", "start mass", TONNES, StageSizing::startMass)
            .from(StageFigures::startMass)
            .number("propellant_mass_kg", "propellant", TONNES, s -> s.propellant()
                    .loaded())
            .from(StageFigures::loaded)
            .number("oxidizer_mass_kg", "oxidizer", TONNES, s -> s.propellant().oxidizer())
            .from((s, at) -> mixture(at, s.propellant()))
            .number("fuel_mass_kg", "fuel", TONNES, s -> s.propellant().fuel())
            .from((s, at) -> mixture(at, s.propellant()))
            .optional(
                    "diluent_mass_kg",
                    "third fluid",
                    TONNES,
                    s -> s.propellant().diluentShare() > 0
                            ? OptionalDouble.of(s.propellant().diluent())
                            : OptionalDouble.empty())
            .by(Definitions.PRODUCT, own("propellant_mass_kg"), of(ENGINE, DILUENT_SHARE))
            .leftOutIfAbsent()
            .number("oxidizer_tank_m3", "oxidizer tank", VOLUME, StageSizing::oxidizerTankVolume)
            .by(TANK, own("oxidizer_mass_kg"), of(ENGINE, "oxidizer_density_kg_m3"), ALLOWANCES)
            .number("fuel_tank_m3", "fuel tank", VOLUME, StageSizing::fuelTankVolume)
            .by(TANK, own("fuel_mass_kg"), of(ENGINE, "fuel_density_kg_m3"), ALLOWANCES)
            .number("dry_mass_kg", "dry", TONNES, s -> s.dryMass().total())
            .from((s, at) -> lines(Definitions.SUM, s, at, "mass_kg", own("dry_mass_growth_margin_kg")))
            .number("delta_v_m_s", "delta-v", SPEED, StageSizing::deltaV)
            .by(LagrangeStaging.CARD, values(TARGET), given("delta_v_share"))
            .number("isp_s", "Isp", fixed("s", "s", 1, 1), StageSizing::isp)
            .by(ModelCard.SAME, of(ENGINE, "isp_vacuum_s"))
            .number("burned_propellant_kg", "burned", TONNES, s -> s.propellant()
                    .burned())
            .by(RocketEquation.CARD, own("start_mass_kg", "delta_v_m_s", "isp_s"), ALLOWANCES)
            .number("residual_propellant_kg", "residual", TONNES, s -> s.propellant()
                    .residual())
            .by(LOADED, own("propellant_mass_kg"), ALLOWANCES)
            .optional(
                    VENTED,
                    "boiled off in the coast",
                    TONNES,
                    s -> s.propellant().vented() > 0
                            ? Optional.of(s.propellant().vented())
                            : Optional.empty())
            .by(CoastBoilOff.CARD, own("oxidizer_tank_m3", "fuel_tank_m3", "diameter_m"), ALLOWANCES, COAST)
            .leftOutIfAbsent()
            .number("final_mass_kg", "final mass", TONNES, StageSizing::finalMass)
            .from((s, at) -> Origin.of(
                    Definitions.DIFFERENCE,
                    own("start_mass_kg", "burned_propellant_kg").paths(at),
                    beside(s, at),
                    ALLOWANCES.paths(at)))
            .number("mass_ratio", "mass ratio", significant("", 4), StageSizing::massRatio)
            .by(Definitions.RATIO, own("burned_propellant_kg", "final_mass_kg"))
            .number("thrust_to_weight", "thrust / weight", fixed("", "", 1, 2), StageSizing::thrustToWeight)
            .from((s, at) -> Origin.of(
                    THRUST_TO_WEIGHT,
                    own("engines", "start_mass_kg").paths(at),
                    at.all(ENGINE, "thrust_vacuum_N"),
                    beside(s, at)))
            .number("burn_time_s", "burn", TIME, StageSizing::burnTime)
            .by(BURN, own("burned_propellant_kg", "engines"), of(ENGINE, "mass_flow_kg_s"))
            .number("diameter_m", "diameter", significant("m", 4), s -> s.contents()
                    .diameter())
            .by(SHAPE, own("oxidizer_tank_m3", "fuel_tank_m3"), given("diameter"))
            .number("length_m", "length", significant("m", 4), s -> s.contents().length())
            .by(SHAPE, own("diameter_m", "oxidizer_tank_m3", "fuel_tank_m3"))
            .number("recovery_propellant_kg", "kept for recovery", TONNES, s -> s.propellant()
                    .recovery())
            .by(Recovery.CARD, own("isp_s", "start_mass_kg", "dry_mass_kg"), table("recovery"))
            .number(
                    "structural_coefficient",
                    "structural coefficient",
                    significant("", 4),
                    StageSizing::structuralCoefficient)
            .by(Definitions.RATIO, own("dry_mass_kg", "propellant_mass_kg"))
            .number("dry_mass_scatter_kg", "scatter of the dry mass", KILOGRAMS, s -> s.dryMass()
                    .scatter())
            .from((s, at) -> Origin.of(
                    SQUARES,
                    VehiclePlaces.lines(at, "dry_mass", s.dryMass(), "scatter"),
                    VehiclePlaces.lines(at, "dry_mass", s.dryMass(), "mass_kg")))
            .number("dry_mass_growth_margin_kg", "growth margin", KILOGRAMS, s -> s.dryMass()
                    .growth())
            .from((s, at) -> lines(Definitions.SUM, s, at, "mass_kg", GROWTH))
            .each("dry_mass", s -> DryLine.of(s.dryMass()), DRY_MASS)
            .part("boosters", StageSizing::boosters, BOOSTERS, VehiclePlaces::boosters)
            .leftOutIfAbsent()
            .part("body", StageSizing::body, BODY)
            .leftOutIfAbsent()
            .number("above_kg", "carried", TONNES, StageSizing::above)
            .by(ModelCard.SAME, values(BEFORE))
            .outsideDocuments()
            .number("dry_mass_share", "whole dry mass", Notation.PERCENT, s -> 1)
            .by(Definitions.RATIO, own("dry_mass_kg"))
            .outsideDocuments()
            .number("dry_mass_growth_share", "share of the growth margin", Notation.PERCENT, s -> s.dryMass()
                    .share(s.dryMass().growth()))
            .by(Definitions.RATIO, own("dry_mass_growth_margin_kg", "dry_mass_kg"))
            .outsideDocuments()
            .number("dry_mass_scatter_share", "scatter of the dry mass over it", SCATTER, s -> s.dryMass()
                    .share(s.dryMass().scatter()))
            .by(SQUARES, own("dry_mass_scatter_kg", "dry_mass_kg"))
            .outsideDocuments()
            .with(TANKS, s -> Optional.of(s.contents()))
            .table();

    private StageFigures() {}

    private static FigureTable<DryLine> dryMass(String whole) {
        return FigureTable.<DryLine>named(dry -> dry.line().name())
                .word("name", "part", dry -> dry.line().name())
                .number("mass_kg", "mass", KILOGRAMS, dry -> dry.line().mass())
                .from(StageFigures::line)
                .number("share", "share", Notation.PERCENT, dry -> dry.table().share(dry.line()))
                .by(Definitions.RATIO, own("mass_kg"), of(WHOLE, whole))
                .number("scatter", "scatter", SCATTER, dry -> dry.line().scatter())
                .from((dry, at) ->
                        Origin.given("scatter of the relation", dry.line().source()))
                .word("source", "source", dry -> dry.line().source())
                .table();
    }

    private static List<String> ofOne(BoosterSizing boosters, Place at, String key) {
        return VehiclePlaces.lines(at, "dry_mass_of_one", boosters.dryMass(), key);
    }

    private static Origin line(DryLine dry, Place at) {
        MassLine.Made made = dry.line().made();
        Place.Source basis =
                switch (made.basis()) {
                    case PLAN -> here -> List.of();
                    case ENGINES ->
                        here -> Stream.concat(
                                        of(WHOLE, "engines").paths(here).stream(),
                                        made.inputs().isEmpty()
                                                ? of(ENGINE, "mass_kg").paths(here).stream()
                                                : Stream.empty())
                                .toList();
                    case STAGE -> StageFigures::ofStage;
                };
        String[] keys =
                Stream.concat(made.inputs().stream(), made.factors().stream()).toArray(String[]::new);
        List<String> stated = keys.length == 0 ? List.of() : given(keys).paths(at);
        List<String> from = basis.paths(at);
        return stated.isEmpty() && from.isEmpty()
                ? Origin.given("stated by the plan", "vehicle file")
                : Origin.of(made.model(), from, stated);
    }

    /** What the lines of a stage are made from. */
    private static List<String> ofStage(Place line) {
        List<String> paths = new ArrayList<>();
        for (String key : List.of("start_mass_kg", "propellant_mass_kg", "engines")) {
            paths.addAll(line.all(WHOLE, key));
        }
        for (String key :
                List.of("thrust_vacuum_N", "mass_flow_kg_s", "oxidizer_tank_pressure_Pa", "fuel_tank_pressure_Pa")) {
            paths.addAll(line.all(ENGINE, key));
        }
        paths.addAll(ALLOWANCES.paths(line));
        paths.addAll(given("diameter").paths(line));
        return paths;
    }

    private static Origin lines(ModelCard model, StageSizing stage, Place at, String key, Place.Source more) {
        return Origin.of(model, VehiclePlaces.lines(at, "dry_mass", stage.dryMass(), key), more.paths(at));
    }

    private static List<String> beside(StageSizing stage, Place at) {
        return stage.boosters().isPresent() ? own("boosters.start_mass_kg").paths(at) : List.of();
    }

    private static Origin loaded(StageSizing stage, Place at) {
        return Origin.of(
                LOADED,
                own("burned_propellant_kg", "recovery_propellant_kg", "engines").paths(at),
                stage.propellant().vented() > 0 ? own(VENTED).paths(at) : List.of(),
                at.all(ENGINE, "mass_flow_kg_s"),
                ALLOWANCES.paths(at));
    }

    private static Origin mixture(Place at, PropellantLoad load) {
        return Origin.of(
                MIXTURE,
                own("propellant_mass_kg").paths(at),
                at.all(ENGINE, "mixture_ratio"),
                load.diluentShare() > 0 ? at.all(ENGINE, DILUENT_SHARE) : List.of());
    }

    private static Origin startMass(StageSizing stage, Place at) {
        return Origin.of(
                Definitions.SUM,
                own("above_kg", "propellant_mass_kg", "dry_mass_kg").paths(at),
                beside(stage, at));
    }

    static ModelCard card(String id, String title, String equation, String range) {
        return ModelCard.definition("vehicle." + id, title, equation, range, "exact within its assumptions");
    }
}

package dev.penstock.cycles.solving;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.NearChamber;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.flow.CombustorPressure;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.arrangements.FirstGuess;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ExhaustDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.cycles.sheet.CarriedValues;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.ExhaustNozzle;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Medium;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.errors.LimitReached;
import dev.penstock.numerics.FixedPoint;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Chamber, jackets and exhaust around a cycle: computed from a solved arrangement, and held while it is solved. What has
 * not moved is not computed again: each round is handed what the rounds before it have found. Keeps nothing itself.
 */
final class Surroundings {

    /** Numbers that differ by less ask the same (-). */
    static final double UNMOVED = 1e-12;

    /** Place of the first jacket among the numbers that are mixed. */
    private static final int FIRST_JACKET = 3;

    /**
     * What the rounds so far have found.
     *
     * @param chamber chamber of the last round, with what it was asked
     * @param near where the next chamber starts; moves along with the rounds of one balance
     * @param jackets jackets, in the order of the concept's circuits
     */
    public record Known(Optional<KnownChamber> chamber, NearChamber near, List<JacketRounds.Known> jackets) {

        public Known {
            jackets = List.copyOf(jackets);
        }

        private Known withChamber(KnownChamber found) {
            return new Known(Optional.of(found), near, jackets);
        }

        private Known withJackets(List<JacketRounds.Known> found) {
            return new Known(chamber, near, found);
        }
    }

    /** A chamber and the numbers that it was computed from. */
    public record KnownChamber(List<Double> inputs, ChamberPerformance performance) {}

    /** Where the rounds begin. */
    public record Start(CarriedValues assumptions, Known known) {}

    /**
     * What a round has found.
     *
     * @param assumptions new assumptions
     * @param jets dumped jets that belong to them
     * @param known what the next round may use of it
     */
    public record Update(CarriedValues assumptions, List<ExhaustJet> jets, Known known) {}

    private final BalanceModels balanceModels;
    private final Concept concept;
    private final List<JacketRounds> circuits;

    Surroundings(BalanceModels balanceModels) {
        this.balanceModels = balanceModels;
        this.concept = balanceModels.concept();
        this.circuits = concept.cooling().stream()
                .map(circuit -> new JacketRounds(balanceModels, circuit))
                .toList();
    }

    // ---- starting points

    Start first() {
        FirstGuess guess = new FirstGuess(balanceModels, 1);
        double ratio = concept.mixtureRatio();
        double enthalpy = (ratio * guess.tankEnthalpy(Side.OXIDIZER) + guess.tankEnthalpy(Side.FUEL)) / (1 + ratio);
        NearChamber near = new NearChamber();
        ChamberPerformance chamber = chamber(balanceModels.mixture(ratio, 1, enthalpy), firstThrust(), near);
        List<JacketRounds.Known> nothing =
                circuits.stream().map(c -> JacketRounds.Known.NOTHING).toList();
        Known known = new Known(Optional.empty(), near, nothing);
        return new Start(first(chamber), known);
    }

    private CarriedValues first(ChamberPerformance chamber) {
        List<CarriedValues.Jacket> jackets =
                circuits.stream().map(circuit -> circuit.first(chamber)).toList();
        return new CarriedValues(
                concept.chambers() * chamber.massFlow(), faceRatio(chamber), seaLevelShare(chamber), jackets, chamber);
    }

    /** Assumptions of a neighbouring concept, moved to this one's chamber pressure. */
    Start startingFrom(CarriedValues near) {
        double pressure = concept.chamberPressure() / near.chamber().design().chamberPressure();
        boolean built = balanceModels.built().isPresent();
        List<CarriedValues.Jacket> jackets = near.jackets().stream()
                .map(j -> j.with(j.heatLoad(), j.pressureDrop() * pressure))
                .toList();
        List<JacketRounds.Known> kept = near.jackets().stream()
                .map(j -> JacketRounds.Known.withChannels(
                        j.load().filter(load -> built).map(JacketLoad::layout)))
                .toList();
        return new Start(
                near.with(near.chamberFlow(), near.faceRatio(), near.seaLevelShare(), jackets),
                new Known(Optional.empty(), new NearChamber(), kept));
    }

    private double firstThrust() {
        double value = concept.thrust().value();
        return switch (concept.thrust().kind()) {
            case VACUUM_THRUST -> value;
            case SEA_LEVEL_THRUST -> 1.15 * value;
            case THROAT_DIAMETER -> 1.6 * Math.PI / 4 * value * value * concept.chamberPressure() * concept.chambers();
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
            ExhaustDesign design = concept.gasPath().exhaust();
            jets.add(
                    design.into().isPresent()
                            ? ExhaustNozzle.intoNozzle(
                                    sheet.exhaustPart(),
                                    gas.fluid(),
                                    stream.pressure(),
                                    stream.enthalpy(),
                                    stream.flow(),
                                    design,
                                    assumed.chamber())
                            : ExhaustNozzle.jet(
                                    sheet.exhaustPart(),
                                    gas.fluid(),
                                    stream.pressure(),
                                    stream.enthalpy(),
                                    stream.flow(),
                                    design));
        }
        for (Flowsheet.Dumped dumped : sheet.dumpedCoolant()) {
            Stream stream = dumped.stream();
            jets.add(ExhaustNozzle.jet(
                    PartKey.dump(dumped.circuit().key()),
                    ((Medium.Gas) stream.medium()).fluid(),
                    stream.pressure(),
                    stream.enthalpy(),
                    stream.flow(),
                    ExhaustDesign.dumping(dumped.circuit().dump().orElseThrow())));
        }
        double oxidizer = sheet.chamberStreams().stream()
                .mapToDouble(Stream::oxidizerFlow)
                .sum();
        double fuel =
                sheet.chamberStreams().stream().mapToDouble(Stream::fuelFlow).sum();
        Known withChamber =
                chamberAgain(known, oxidizer / (oxidizer + fuel), sheet.chamberEnthalpy(), thrust(jets, assumed));
        ChamberPerformance chamber = withChamber.chamber.orElseThrow().performance;
        List<JacketRounds.Known> jackets = new ArrayList<>();
        List<CarriedValues.Jacket> carried = new ArrayList<>();
        for (int i = 0; i < circuits.size(); i++) {
            JacketRounds.Known before = known.jackets.get(i);
            JacketRounds.Known after = circuits.get(i).again(before, sheet, chamber);
            JacketLoad load = after.found().orElseThrow().load();
            jackets.add(after);
            carried.add(new CarriedValues.Jacket(
                    concept.chambers() * load.heatLoad(), load.pressureDrop(), Optional.of(load)));
        }
        double flow = concept.chambers() * chamber.massFlow();
        CarriedValues next = new CarriedValues(flow, faceRatio(chamber), seaLevelShare(chamber), carried, chamber);
        return new Update(next, jets, withChamber.withJackets(jackets));
    }

    /** Vacuum thrust left for the chambers together (N). */
    private double thrust(List<ExhaustJet> jets, CarriedValues assumed) {
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
                double share = assumed.seaLevelShare();
                if (!(share > 0.02)) {
                    throw new LimitReached(
                            "engine.thrust_sea_level",
                            String.format(
                                    Locale.ROOT,
                                    "at a chamber pressure of %.3g MPa and an area ratio of %.3g the nozzle gives no thrust at "
                                            + "sea level; lower nozzle.area_ratio or raise the chamber pressure",
                                    concept.chamberPressure() / 1e6,
                                    assumed.chamber().areaRatio()));
                }
                left = (target - jetThrust) / share;
            }
            default -> left = target;
        }
        if (!(left > 0)) {
            throw new LimitReached("engine.thrust", "what is dumped alone gives more than the thrust asked for");
        }
        return left;
    }

    private Known chamberAgain(Known known, double oxidizerShare, double enthalpy, double thrust) {
        List<Double> inputs = List.of(oxidizerShare, enthalpy, thrust);
        if (known.chamber.isPresent() && !moved(inputs, known.chamber.get().inputs, UNMOVED)) {
            return known;
        }
        Reactants mixture = balanceModels.mixture(oxidizerShare, 1 - oxidizerShare, enthalpy);
        ChamberPerformance chamber = chamber(mixture, thrust, known.near);
        return known.withChamber(new KnownChamber(inputs, chamber));
    }

    /** One chamber of those that give a thrust together. */
    private ChamberPerformance chamber(Reactants mixture, double thrust, NearChamber near) {
        ThrustChamber chambers = balanceModels.chamber(mixture);
        Injection injection = injection(mixture);
        if (concept.thrust().kind() == ThrustTarget.Kind.THROAT_DIAMETER) {
            double diameter = concept.thrust().value();
            return chambers.forThroatArea(concept.chamber(), injection, Math.PI / 4 * diameter * diameter, near);
        }
        return chambers.forVacuumThrust(concept.chamber(), injection, thrust / concept.chambers(), near);
    }

    /** The fuel's own part is told apart where the gas along the wall is another than that of the core. */
    private Injection injection(Reactants mixture) {
        if (!concept.chamber().combustor().shieldsWall()) {
            return Injection.of(mixture);
        }
        return Injection.of(
                mixture, Reactants.single(concept.fuel(), concept.fuel().formationEnthalpy()));
    }

    /** One where no thrust at sea level is asked for: a chamber below the pressure of the air has none. */
    private double seaLevelShare(ChamberPerformance chamber) {
        return atSeaLevel() ? chamber.thrustAt(Constants.STANDARD_ATMOSPHERE) / chamber.vacuumThrust() : 1;
    }

    private boolean atSeaLevel() {
        return concept.thrust().kind() == ThrustTarget.Kind.SEA_LEVEL_THRUST;
    }

    private double faceRatio(ChamberPerformance chamber) {
        return CombustorPressure.ratio(
                chamber.profile().at(concept.chamber().combustor().contractionRatio(), false));
    }

    /** The jackets of the last round with everything that a report says of them. */
    List<JacketResult> jacketsInFull(Known known) {
        List<JacketResult> jackets = new ArrayList<>();
        for (int i = 0; i < circuits.size(); i++) {
            jackets.add(circuits.get(i).inFull(known.jackets.get(i)));
        }
        return jackets;
    }

    /** Whether any number has moved by more than a share of what it was. */
    static boolean moved(List<Double> now, List<Double> before, double share) {
        for (int i = 0; i < now.size(); i++) {
            if (Math.abs(now.get(i) - before.get(i)) > share * Math.abs(before.get(i))) {
                return true;
            }
        }
        return false;
    }

    // ---- how far the rounds still move

    /** Flow, pressure at the face, share at sea level where thrust is asked for there, then heat and pressure drop of each jacket. */
    private double[] vector(CarriedValues a) {
        double[] x = new double[FIRST_JACKET + 2 * circuits.size()];
        x[0] = a.chamberFlow();
        x[1] = a.faceRatio();
        x[2] = atSeaLevel() ? a.seaLevelShare() : 0;
        for (int i = 0; i < circuits.size(); i++) {
            x[FIRST_JACKET + 2 * i] = a.jackets().get(i).heatLoad();
            x[FIRST_JACKET + 1 + 2 * i] = a.jackets().get(i).pressureDrop();
        }
        return x;
    }

    double[] scales(CarriedValues a) {
        double[] scales = vector(a);
        scales[1] = 1;
        scales[2] = 1;
        for (int i = 0; i < circuits.size(); i++) {
            scales[FIRST_JACKET + 2 * i] = heatScale(a, i);
            scales[FIRST_JACKET + 1 + 2 * i] = concept.chamberPressure();
        }
        return scales;
    }

    /** What a change of the heat of a jacket is measured by (W). */
    static double heatScale(CarriedValues a, int circuit) {
        return Math.max(Math.abs(a.jackets().get(circuit).heatLoad()), 1e3 * a.chamberFlow());
    }

    double distance(CarriedValues a, CarriedValues b) {
        double[] scales = scales(a);
        double[] before = vector(a);
        double[] after = vector(b);
        double moved = 0;
        for (int i = 0; i < scales.length; i++) {
            moved = Math.max(moved, Math.abs(before[i] - after[i]) / scales[i]);
        }
        return moved;
    }

    /** @param chosen whether machines have become others in this round */
    CarriedValues mixed(FixedPoint mixer, CarriedValues assumed, Update found, boolean chosen) {
        CarriedValues next = found.assumptions;
        if (chosen) {
            // what was found so far belongs to other machines
            mixer.reset();
            return next;
        }
        double[] image = vector(next);
        double[] mixed = mixer.next(vector(assumed), image);
        boolean sane = alike(mixed[0], image[0]) && alike(mixed[1], image[1]) && alike(mixed[2], image[2]);
        List<CarriedValues.Jacket> jackets = new ArrayList<>();
        for (int i = 0; i < circuits.size(); i++) {
            int heat = FIRST_JACKET + 2 * i;
            sane &= alike(mixed[heat], image[heat]) && mixed[heat + 1] >= 0;
            jackets.add(next.jackets().get(i).with(mixed[heat], mixed[heat + 1]));
        }
        if (!sane) {
            mixer.reset();
            return next;
        }
        return next.with(mixed[0], mixed[1], mixed[2], jackets);
    }

    /** Whether an extrapolated value is of the size of the one that was computed. */
    private static boolean alike(double mixed, double computed) {
        return computed == 0 || mixed / computed > 0.2 && mixed / computed < 5;
    }
}

package dev.penstock.vehicle.reading;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.input.Input;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import dev.penstock.vehicle.plan.MissionInputs;
import dev.penstock.vehicle.plan.OrbitEntry;
import dev.penstock.vehicle.plan.SunSynchronous;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Reads the {@code [mission]} table: either {@code delta_v}, the whole ideal delta-v, or a target with the losses on
 * the way to it by name.
 */
final class MissionReader {

    private static final String USUAL = "usual figure, from memory: not computed for this vehicle";
    private static final String TABLE = "mission.";
    /** Key of a stated loss that is as unsure as drag is. */
    private static final String DRAG = "drag";

    private final InputTable table;
    private final List<String> notes;
    private final List<DeltaVBudget.Term> terms = new ArrayList<>();

    private Optional<Target> target = Optional.empty();
    private OptionalDouble coast = OptionalDouble.empty();
    private double insertion;
    private double inclination;
    private double latitude;

    MissionReader(InputTable table, List<String> notes) {
        this.table = table;
        this.notes = notes;
    }

    Optional<DeltaVBudget> budget() {
        OptionalDouble whole = table.number(MissionInputs.DELTA_V);
        boolean orbit = Stream.of(
                        MissionInputs.ORBIT_ALTITUDE,
                        MissionInputs.ORBITAL_SPEED,
                        MissionInputs.PERIGEE_ALTITUDE,
                        MissionInputs.APOGEE_ALTITUDE,
                        MissionInputs.C3)
                .anyMatch(table::has);
        if (table.has(MissionInputs.DELTA_V) == orbit) {
            table.problem(
                    MissionInputs.DELTA_V,
                    orbit ? "given together with an orbit" : "missing, and no orbit given",
                    "write delta_v = \"9400 m/s\" for the whole delta-v, or a target such as orbit_altitude = \"200 km\" with losses");
        }
        if (orbit) {
            addOrbit();
        } else {
            whole.ifPresent(value -> stated(Kind.SPEED, "ideal delta-v", value, MissionInputs.DELTA_V.key()));
        }
        addLosses(orbit);
        addReserves(orbit);
        double sum = terms.stream().mapToDouble(DeltaVBudget.Term::value).sum();
        if (!terms.isEmpty() && !(sum > 0)) {
            table.problem(MissionInputs.LOSSES.key(), "the terms add up to " + sum + " m/s", "the sum must be above 0");
        }
        return terms.isEmpty() || !(sum > 0) ? Optional.empty() : Optional.of(new DeltaVBudget(terms));
    }

    /** @return where it goes, if that is given by heights or energy and the ascent can end on the way there */
    Optional<Target> target() {
        return target.filter(t -> insertion <= t.highestLevel());
    }

    /** @return time in a parking orbit (s); empty for one burn */
    OptionalDouble parkingCoast() {
        return coast;
    }

    /** @return height at which the ascent ends (m) */
    double insertion() {
        return insertion;
    }

    /** @return whether the flight chooses that height */
    boolean insertionFree() {
        return !table.has(MissionInputs.INSERTION_ALTITUDE) && !endsAtPerigee();
    }

    /** Whether one burn ends at the perigee of an ellipse, so that nothing is left to do at the apogee. */
    private boolean endsAtPerigee() {
        return target.filter(t -> t instanceof Target.Orbit orbit
                        && orbit.perigee() < orbit.apogee()
                        && orbit.perigee() <= MissionInputs.DIRECT_PERIGEE)
                .isPresent();
    }

    /** @return latitude of the launch site (rad); zero where none is given */
    double latitude() {
        return latitude;
    }

    /** @return inclination of the orbit (rad) */
    double inclination() {
        return inclination;
    }

    private void add(Kind kind, String name, double value, String source, ModelCard model, String... inputs) {
        List<String> keys = Stream.of(inputs).map(input -> TABLE + input).toList();
        terms.add(new DeltaVBudget.Term(kind, name, value, source, Optional.of(model), keys));
    }

    private void stated(Kind kind, String name, double value, String input) {
        add(kind, name, value, "given", ModelCard.SAME, input);
    }

    private void addOrbit() {
        OptionalDouble speed = table.number(MissionInputs.ORBITAL_SPEED);
        target = new TargetReader(table).target();
        double usual = MissionInputs.INSERTION.value();
        double highest = target.map(Target::highestLevel).orElse(usual);
        insertion = table.read(
                MissionInputs.INSERTION_ALTITUDE,
                endsAtPerigee()
                        ? Usual.of(highest, "the perigee", Usual.COMMON)
                        : Usual.of(Math.min(highest, usual), "200 km, or the orbit where that is lower", Usual.COMMON));
        if (insertion > highest) {
            table.problem(
                    MissionInputs.INSERTION_ALTITUDE,
                    text("%.0f km", insertion / 1e3),
                    text("it must not be above the orbit of %.0f km", highest / 1e3));
        }
        coast = table.number(MissionInputs.PARKING_COAST);
        if (coast.isPresent() && target.isPresent() && nothingToBurn(target.get())) {
            table.problem(
                    MissionInputs.PARKING_COAST,
                    text("%.0f s", coast.getAsDouble()),
                    "a second burn needs a target above the parking orbit: raise the orbit or state a lower insertion_altitude");
        }
        if (speed.isPresent()) {
            stated(Kind.SPEED, "orbital speed", speed.getAsDouble(), MissionInputs.ORBITAL_SPEED.key());
        } else {
            target.ifPresent(t -> terms.addAll(
                    new OrbitEntry(Planet.EARTH, Math.min(insertion, highest), t, coast.isPresent()).terms()));
        }
        addRotation();
    }

    private boolean nothingToBurn(Target there) {
        return there.highest().isPresent() && there.highest().getAsDouble() <= insertion;
    }

    private void addRotation() {
        OptionalDouble site = table.number(MissionInputs.LATITUDE);
        latitude = site.orElse(0);
        OptionalDouble given = table.number(MissionInputs.INCLINATION);
        if (given.isPresent() && site.isPresent() && unreachable(given.getAsDouble(), latitude)) {
            table.problem(
                    MissionInputs.INCLINATION,
                    text("%.2f deg", Math.toDegrees(given.getAsDouble())),
                    text("from a latitude of %.2f deg the least is that latitude", Math.toDegrees(latitude)));
        }
        inclination = given.orElseGet(() -> Math.abs(site.orElse(Math.PI / 2)));
        boolean withSun = table.read(MissionInputs.SUN_SYNCHRONOUS);
        if (withSun) {
            turnWithSun(given, site);
        }
        if (given.isPresent() || site.isPresent() || withSun) {
            add(
                    Kind.CREDIT,
                    "rotation of the Earth",
                    -Planet.EARTH.rotationCredit(inclination),
                    withSun
                            ? text("ω R cos i, %.2f deg, the plane turns with the sun", Math.toDegrees(inclination))
                            : "ω R cos i, launched into the plane",
                    withSun ? SunSynchronous.CARD : Planet.ROTATION,
                    withSun
                            ? new String[] {
                                MissionInputs.SUN_SYNCHRONOUS.key(),
                                MissionInputs.ORBIT_ALTITUDE.key(),
                                MissionInputs.PERIGEE_ALTITUDE.key(),
                                MissionInputs.APOGEE_ALTITUDE.key()
                            }
                            : new String[] {MissionInputs.INCLINATION.key(), MissionInputs.LATITUDE.key()});
        }
    }

    /** The inclination of an orbit whose plane turns with the sun, from its heights. */
    private void turnWithSun(OptionalDouble given, OptionalDouble site) {
        if (given.isPresent()) {
            table.problem(
                    MissionInputs.INCLINATION,
                    text("%.2f deg", Math.toDegrees(given.getAsDouble())),
                    "it follows from the height of a sun-synchronous orbit: leave one of the two out");
            return;
        }
        if (!(target.orElse(null) instanceof Target.Orbit orbit)) {
            table.problem(
                    MissionInputs.SUN_SYNCHRONOUS,
                    "true",
                    "only an orbit by its height turns with the sun: give orbit_altitude, or perigee_altitude and"
                            + " apogee_altitude");
            return;
        }
        OptionalDouble found = SunSynchronous.inclination(orbit);
        if (found.isEmpty()) {
            table.problem(
                    MissionInputs.SUN_SYNCHRONOUS,
                    "true",
                    text(
                            "the plane of an orbit of %.0f by %.0f km turns too slowly at any inclination: take a lower one",
                            orbit.perigee() / 1e3, orbit.apogee() / 1e3));
        } else if (site.isPresent() && unreachable(found.getAsDouble(), latitude)) {
            table.problem(
                    MissionInputs.SUN_SYNCHRONOUS,
                    "true",
                    text(
                            "its inclination of %.2f deg is not reached from a latitude of %.2f deg",
                            Math.toDegrees(found.getAsDouble()), Math.toDegrees(latitude)));
        } else {
            inclination = found.getAsDouble();
        }
    }

    private static boolean unreachable(double inclination, double latitude) {
        double least = Math.abs(latitude) - 1e-9;
        return inclination < least || inclination > Math.PI - least;
    }

    private void addLosses(boolean orbit) {
        InputTable losses = table.table(MissionInputs.LOSSES);
        double drag = table.read(MissionInputs.DRAG_FACTOR);
        double others = table.read(MissionInputs.LOSS_FACTOR);
        for (String name : losses.keys()) {
            Kind kind = name.equals(DRAG) ? Kind.DRAG_LOSS : Kind.LOSS;
            double factor = kind == Kind.DRAG_LOSS ? drag : others;
            losses.number(MissionInputs.loss(name))
                    .ifPresent(value -> add(
                            kind,
                            name.replace('_', ' ') + " loss",
                            value * factor,
                            factor == 1 ? "given" : text("given, times %.4g", factor),
                            Definitions.PRODUCT,
                            "losses." + name,
                            factor(kind).key()));
        }
        if (orbit && losses.keys().isEmpty()) {
            usual(Kind.LOSS, "gravity loss", DeltaVBudget.USUAL_GRAVITY_LOSS * others);
            usual(Kind.DRAG_LOSS, "drag loss", DeltaVBudget.USUAL_OTHER_LOSS * drag);
            usual(Kind.LOSS, "steering loss", DeltaVBudget.USUAL_OTHER_LOSS * others);
            usual(Kind.LOSS, "back-pressure loss", DeltaVBudget.USUAL_OTHER_LOSS * others);
            double together = terms.stream()
                    .filter(term -> term.kind() == Kind.LOSS || term.kind() == Kind.DRAG_LOSS)
                    .mapToDouble(DeltaVBudget.Term::value)
                    .sum();
            notes.add(String.format(
                    Locale.ROOT,
                    "the ascent losses to orbit (%.0f m/s together) are usual figures, not computed for this"
                            + " vehicle: state them in [mission.losses] or fly the ascent",
                    together));
        }
    }

    private void usual(Kind kind, String name, double value) {
        add(kind, name, value, USUAL, DeltaVBudget.USUAL_LOSSES, factor(kind).key());
    }

    private static Input<Double> factor(Kind kind) {
        return kind == Kind.DRAG_LOSS ? MissionInputs.DRAG_FACTOR : MissionInputs.LOSS_FACTOR;
    }

    private void addReserves(boolean orbit) {
        table.number(MissionInputs.DEORBIT)
                .ifPresent(value -> stated(Kind.MANOEUVRE, "deorbit", value, MissionInputs.DEORBIT.key()));
        double fraction =
                table.read(MissionInputs.RESERVE_FRACTION, orbit ? Usual.common(0.01) : Usual.of(0.0, "none", ""));
        if (fraction > 0) {
            double sum = terms.stream().mapToDouble(DeltaVBudget.Term::value).sum();
            String source =
                    table.has(MissionInputs.RESERVE_FRACTION) ? "given" : "1 % of the sum: common practice, no source";
            add(Kind.RESERVE, "flight reserve", fraction * sum, source, DeltaVBudget.SHARE_KEPT, "");
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}

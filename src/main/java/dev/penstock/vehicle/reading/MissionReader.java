package dev.penstock.vehicle.reading;

import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import dev.penstock.vehicle.plan.MissionInputs;
import dev.penstock.vehicle.plan.OrbitEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Reads the {@code [mission]} table: either {@code delta_v}, the whole ideal delta-v, or an orbit with the losses on
 * the way to it by name.
 */
final class MissionReader {

    private static final String USUAL = "usual figure, from memory: not computed for this vehicle";
    private static final String TABLE = "mission.";

    private final InputTable table;
    private final List<String> notes;
    private final List<DeltaVBudget.Term> terms = new ArrayList<>();

    private OptionalDouble altitude = OptionalDouble.empty();
    private double insertion;
    private double inclination;
    private double latitude;

    MissionReader(InputTable table, List<String> notes) {
        this.table = table;
        this.notes = notes;
    }

    Optional<DeltaVBudget> budget() {
        OptionalDouble whole = table.number(MissionInputs.DELTA_V);
        boolean orbit = table.has(MissionInputs.ORBIT_ALTITUDE) || table.has(MissionInputs.ORBITAL_SPEED);
        if (table.has(MissionInputs.DELTA_V) == orbit) {
            table.problem(
                    MissionInputs.DELTA_V,
                    orbit ? "given together with an orbit" : "missing, and no orbit given",
                    "write delta_v = \"9400 m/s\" for the whole delta-v, or orbit_altitude = \"200 km\" with losses");
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

    /** @return height of the final orbit (m), if an orbit is given by height */
    OptionalDouble altitude() {
        return altitude;
    }

    /** @return height at which the ascent ends (m) */
    double insertion() {
        return insertion;
    }

    /** @return whether the flight chooses that height */
    boolean insertionFree() {
        return !table.has(MissionInputs.INSERTION_ALTITUDE);
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
        altitude = table.number(MissionInputs.ORBIT_ALTITUDE);
        double usual = MissionInputs.INSERTION.value();
        double target = altitude.orElse(usual);
        insertion = table.read(
                MissionInputs.INSERTION_ALTITUDE,
                Usual.of(Math.min(target, usual), "200 km, or the orbit where that is lower", Usual.COMMON));
        if (insertion > target) {
            table.problem(
                    MissionInputs.INSERTION_ALTITUDE,
                    text("%.0f km", insertion / 1e3),
                    text("it must not be above the orbit of %.0f km", target / 1e3));
        }
        if (speed.isPresent()) {
            stated(Kind.SPEED, "orbital speed", speed.getAsDouble(), MissionInputs.ORBITAL_SPEED.key());
        } else if (altitude.isPresent()) {
            addTransfer(target);
        }
        addRotation();
    }

    private void addTransfer(double target) {
        terms.addAll(new OrbitEntry(Planet.EARTH, Math.min(insertion, target), target).terms());
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
        if (given.isPresent() || site.isPresent()) {
            add(
                    Kind.CREDIT,
                    "speed of the rotating ground",
                    -Planet.EARTH.rotationCredit(inclination),
                    "ω R cos i, launched into the plane",
                    Planet.ROTATION,
                    MissionInputs.INCLINATION.key(),
                    MissionInputs.LATITUDE.key());
        }
    }

    private static boolean unreachable(double inclination, double latitude) {
        double least = Math.abs(latitude) - 1e-9;
        return inclination < least || inclination > Math.PI - least;
    }

    private void addLosses(boolean orbit) {
        InputTable losses = table.table(MissionInputs.LOSSES);
        for (String name : losses.keys()) {
            losses.number(MissionInputs.loss(name))
                    .ifPresent(value -> stated(Kind.LOSS, name.replace('_', ' ') + " loss", value, "losses." + name));
        }
        if (orbit && losses.keys().isEmpty()) {
            terms.add(new DeltaVBudget.Term(Kind.LOSS, "gravity loss", 1300, USUAL));
            terms.add(new DeltaVBudget.Term(Kind.LOSS, DeltaVBudget.DRAG_LOSS, 100, USUAL));
            terms.add(new DeltaVBudget.Term(Kind.LOSS, "steering loss", 100, USUAL));
            terms.add(new DeltaVBudget.Term(Kind.LOSS, "back-pressure loss", 100, USUAL));
            notes.add("the ascent losses to orbit (1600 m/s together) are usual figures, not computed for this"
                    + " vehicle: state them in [mission.losses] or fly the ascent");
        }
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

package dev.penstock.vehicle.reading;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the {@code [mission]} table: either {@code delta_v}, the whole ideal speed gain, or an orbit with the losses on
 * the way to it by name.
 */
final class MissionReader {

    private static final String USUAL = "usual figure, from memory: not computed for this vehicle";
    private static final Range SPEED = Range.of(1, 1e5);
    private static final Range ALTITUDE = Range.of(100e3, 1e9);

    /** An orbit above this is entered by way of an ellipse that starts here (m): common practice, no source. */
    private static final double INSERTION = 200e3;

    private final InputTable table;
    private final List<String> notes;
    private final List<DeltaVBudget.Term> terms = new ArrayList<>();

    private OptionalDouble altitude = OptionalDouble.empty();
    private double insertion;
    private double inclination;

    MissionReader(InputTable table, List<String> notes) {
        this.table = table;
        this.notes = notes;
    }

    Optional<DeltaVBudget> budget() {
        OptionalDouble whole = table.optionalQuantity("delta_v", Dimension.VELOCITY, SPEED);
        boolean orbit = table.has("orbit_altitude") || table.has("orbital_speed");
        if (table.has("delta_v") == orbit) {
            table.problem(
                    "delta_v",
                    orbit ? "given together with an orbit" : "missing, and no orbit given",
                    "write delta_v = \"9400 m/s\" for the whole speed gain, or orbit_altitude = \"200 km\" with losses");
        }
        if (orbit) {
            addOrbit();
        } else {
            whole.ifPresent(value -> add(Kind.SPEED, "ideal speed gain", value, "given"));
        }
        addLosses(orbit);
        addReserves(orbit);
        double sum = terms.stream().mapToDouble(DeltaVBudget.Term::value).sum();
        if (!terms.isEmpty() && !(sum > 0)) {
            table.problem("losses", "the terms add up to " + sum + " m/s", "the sum must be above 0");
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

    /** @return inclination of the orbit (rad) */
    double inclination() {
        return inclination;
    }

    private void add(Kind kind, String name, double value, String source) {
        terms.add(new DeltaVBudget.Term(kind, name, value, source));
    }

    private void addOrbit() {
        OptionalDouble speed = table.optionalQuantity("orbital_speed", Dimension.VELOCITY, SPEED);
        altitude = table.optionalQuantity("orbit_altitude", Dimension.LENGTH, ALTITUDE);
        double target = altitude.orElse(INSERTION);
        insertion = table.quantity(
                "insertion_altitude",
                Dimension.LENGTH,
                Range.of(100e3, Math.min(2e6, target)),
                Math.min(target, INSERTION));
        if (speed.isPresent()) {
            add(Kind.SPEED, "orbital speed", speed.getAsDouble(), "given");
        } else if (altitude.isPresent()) {
            addTransfer(target);
        }
        addRotation();
    }

    private void addTransfer(double target) {
        if (target - insertion < 1) {
            add(
                    Kind.SPEED,
                    "orbital speed",
                    Planet.EARTH.circularSpeed(target),
                    text("circular at %.0f km", target / 1e3));
            return;
        }
        add(
                Kind.SPEED,
                "orbital speed",
                Planet.EARTH.speed(insertion, insertion, target),
                text("at the perigee of %.0f by %.0f km", insertion / 1e3, target / 1e3));
        add(
                Kind.MANOEUVRE,
                "circularisation",
                Planet.EARTH.circularSpeed(target) - Planet.EARTH.speed(target, insertion, target),
                text("at the apogee of %.0f km", target / 1e3));
    }

    private void addRotation() {
        OptionalDouble latitude = table.optionalQuantity("latitude", Dimension.ANGLE, Range.of(-1.5708, 1.5708));
        OptionalDouble given = table.optionalQuantity("inclination", Dimension.ANGLE, Range.of(0, Math.PI));
        if (given.isPresent() && latitude.isPresent() && unreachable(given.getAsDouble(), latitude.getAsDouble())) {
            table.problem(
                    "inclination",
                    text("%.2f deg", Math.toDegrees(given.getAsDouble())),
                    text(
                            "from a latitude of %.2f deg the least is that latitude",
                            Math.toDegrees(latitude.getAsDouble())));
        }
        inclination = given.orElseGet(() -> Math.abs(latitude.orElse(Math.PI / 2)));
        if (given.isPresent() || latitude.isPresent()) {
            add(
                    Kind.CREDIT,
                    "speed of the rotating ground",
                    -Planet.EARTH.rotationCredit(inclination),
                    "ω R cos i, launched into the plane");
        }
    }

    private static boolean unreachable(double inclination, double latitude) {
        double least = Math.abs(latitude) - 1e-9;
        return inclination < least || inclination > Math.PI - least;
    }

    private void addLosses(boolean orbit) {
        InputTable losses = table.table("losses");
        for (String name : losses.keys()) {
            losses.optionalQuantity(name, Dimension.VELOCITY, Range.of(-1e4, 1e4))
                    .ifPresent(value -> add(Kind.LOSS, name.replace('_', ' ') + " loss", value, "given"));
        }
        if (orbit && losses.keys().isEmpty()) {
            add(Kind.LOSS, "gravity loss", 1300, USUAL);
            add(Kind.LOSS, "drag loss", 100, USUAL);
            add(Kind.LOSS, "steering loss", 100, USUAL);
            add(Kind.LOSS, "back-pressure loss", 100, USUAL);
            notes.add("the losses on the way to orbit (1600 m/s together) are usual figures, not computed for this"
                    + " vehicle: state them in [mission.losses] or fly the ascent");
        }
    }

    private void addReserves(boolean orbit) {
        table.optionalQuantity("deorbit", Dimension.VELOCITY, Range.of(0, 1e4))
                .ifPresent(value -> add(Kind.MANOEUVRE, "deorbit", value, "given"));
        double fraction = table.quantity("reserve_fraction", Dimension.RATIO, Range.of(0, 0.2), orbit ? 0.01 : 0);
        if (fraction > 0) {
            double sum = terms.stream().mapToDouble(DeltaVBudget.Term::value).sum();
            String source = table.has("reserve_fraction") ? "given" : "1 % of the sum: common practice, no source";
            add(Kind.RESERVE, "flight reserve", fraction * sum, source);
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}

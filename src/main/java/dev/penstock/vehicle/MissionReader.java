package dev.penstock.vehicle;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.ascent.Planet;
import java.util.ArrayList;
import java.util.List;
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

    private final InputTable table;
    private final List<String> notes;

    MissionReader(InputTable table, List<String> notes) {
        this.table = table;
        this.notes = notes;
    }

    Optional<DeltaVBudget> budget() {
        List<DeltaVBudget.Term> terms = new ArrayList<>();
        OptionalDouble whole = table.optionalQuantity("delta_v", Dimension.VELOCITY, SPEED);
        boolean orbit = table.has("orbit_altitude") || table.has("orbital_speed");
        if (table.has("delta_v") == orbit) {
            table.problem(
                    "delta_v",
                    orbit ? "given together with an orbit" : "missing, and no orbit given",
                    "write delta_v = \"9400 m/s\" for the whole speed gain, or orbit_altitude = \"200 km\" with losses");
        }
        if (orbit) {
            addOrbit(terms);
        } else {
            whole.ifPresent(value -> terms.add(new DeltaVBudget.Term("ideal speed gain", value, "given")));
        }
        addLosses(terms, orbit);
        double reserve = table.quantity("reserve_fraction", Dimension.RATIO, Range.of(0, 0.2), orbit ? 0.01 : 0);
        double sum = terms.stream().mapToDouble(DeltaVBudget.Term::value).sum();
        if (reserve > 0) {
            String source = table.has("reserve_fraction") ? "given" : "1 % of the sum: common practice, no source";
            terms.add(new DeltaVBudget.Term("flight reserve", reserve * sum, source));
        }
        if (!terms.isEmpty() && !(sum > 0)) {
            table.problem("losses", "the terms add up to " + sum + " m/s", "the sum must be above 0");
        }
        return terms.isEmpty() || !(sum > 0) ? Optional.empty() : Optional.of(new DeltaVBudget(terms));
    }

    private void addOrbit(List<DeltaVBudget.Term> terms) {
        OptionalDouble speed = table.optionalQuantity("orbital_speed", Dimension.VELOCITY, SPEED);
        OptionalDouble altitude = table.optionalQuantity("orbit_altitude", Dimension.LENGTH, ALTITUDE);
        if (speed.isPresent()) {
            terms.add(new DeltaVBudget.Term("orbital speed", speed.getAsDouble(), "given"));
        } else if (altitude.isPresent()) {
            terms.add(new DeltaVBudget.Term(
                    "orbital speed",
                    Planet.EARTH.circularSpeed(altitude.getAsDouble()),
                    String.format(java.util.Locale.ROOT, "circular at %.0f km", altitude.getAsDouble() / 1e3)));
        }
        OptionalDouble latitude = table.optionalQuantity("latitude", Dimension.ANGLE, Range.of(-1.5708, 1.5708));
        OptionalDouble inclination = table.optionalQuantity("inclination", Dimension.ANGLE, Range.of(0, Math.PI));
        if (inclination.isPresent()
                && latitude.isPresent()
                && unreachable(inclination.getAsDouble(), latitude.getAsDouble())) {
            table.problem(
                    "inclination",
                    String.format(java.util.Locale.ROOT, "%.2f deg", Math.toDegrees(inclination.getAsDouble())),
                    String.format(
                            java.util.Locale.ROOT,
                            "from a latitude of %.2f deg the least is that latitude",
                            Math.toDegrees(latitude.getAsDouble())));
        }
        if (inclination.isPresent() || latitude.isPresent()) {
            double plane = inclination.orElseGet(() -> Math.abs(latitude.getAsDouble()));
            terms.add(new DeltaVBudget.Term(
                    "speed of the rotating ground",
                    -Planet.EARTH.rotationCredit(plane),
                    "ω R cos i, launched into the plane"));
        }
    }

    private static boolean unreachable(double inclination, double latitude) {
        double least = Math.abs(latitude) - 1e-9;
        return inclination < least || inclination > Math.PI - least;
    }

    private void addLosses(List<DeltaVBudget.Term> terms, boolean orbit) {
        InputTable losses = table.table("losses");
        for (String name : losses.keys()) {
            losses.optionalQuantity(name, Dimension.VELOCITY, Range.of(-1e4, 1e4))
                    .ifPresent(value ->
                            terms.add(new DeltaVBudget.Term(name.replace('_', ' ') + " loss", value, "given")));
        }
        if (orbit && losses.keys().isEmpty()) {
            terms.add(new DeltaVBudget.Term("gravity loss", 1300, USUAL));
            terms.add(new DeltaVBudget.Term("drag loss", 100, USUAL));
            terms.add(new DeltaVBudget.Term("steering loss", 100, USUAL));
            terms.add(new DeltaVBudget.Term("back-pressure loss", 100, USUAL));
            notes.add("the losses on the way to orbit (1600 m/s together) are usual figures, not computed for this"
                    + " vehicle: state them in [mission.losses] or fly the ascent");
        }
    }
}

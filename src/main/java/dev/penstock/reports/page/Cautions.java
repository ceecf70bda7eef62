package dev.penstock.reports.page;

import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.Propellant;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.LiquidBoosters;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What every report says about how far its numbers reach, and about the dangers behind them. */
public final class Cautions {

    private static final String AUTHORITY =
            "This is an estimate for comparing concepts. It is not a design release: nothing may be built, filled or"
                    + " fired on its authority.";
    private static final String FRAGMENTS =
            "Pressure vessels and turbomachinery fail with fragments. They need the codes and the licensed practice of"
                    + " the place where they are made and run.";

    private Cautions() {}

    /**
     * @param propellants what is in the tanks
     * @return what no estimate may leave out, and how these propellants hurt people, as their files say
     */
    public static List<String> dangers(Stream<Propellant> propellants) {
        Stream<String> own = propellants
                .filter(p -> !p.hazards().isEmpty())
                .map(p -> p.name() + ": " + String.join("; ", p.hazards()) + ".")
                .distinct();
        return Stream.of(Stream.of(AUTHORITY), own, Stream.of(FRAGMENTS))
                .flatMap(s -> s)
                .toList();
    }

    /**
     * @param engines engines
     * @return what can hurt people about them
     */
    public static List<String> dangersOf(Stream<EngineBalance> engines) {
        return dangers(engines.flatMap(
                b -> Stream.of(b.concept().oxidizer(), b.concept().fuel())));
    }

    /**
     * @param vehicle sized vehicle
     * @return what can hurt people about it, boosters included
     */
    public static List<String> dangersOf(VehicleSizing vehicle) {
        return dangers(vehicle.stages().stream()
                .flatMap(s -> Stream.concat(
                        Stream.of(s.engine()),
                        s.boosters().flatMap(BoosterSizing::liquid).stream().map(LiquidBoosters::engine)))
                .flatMap(e -> Stream.of(e.oxidizer().propellant(), e.fuel().propellant())));
    }

    public static List<String> of(EngineBalance balance) {
        List<String> list = new ArrayList<>();
        list.add("Steady operation at full thrust; start, shut-down and control are not part of it.");
        list.add(
                "Propellants are real fluids: pumps, lines and jacket use their equations of state; valves and lines are"
                        + " adiabatic.");
        list.add(
                "Station pressures are total and absolute; the chamber pressure is the stagnation pressure at the nozzle"
                        + " entrance.");
        list.add("Burnt gas is an ideal-gas mixture, perfectly mixed and one-dimensional, "
                + switch (balance.chamber().ideal().mode()) {
                    case SHIFTING -> "in chemical equilibrium all through the nozzle before losses are taken off.";
                    case FROZEN -> "with its composition frozen in the chamber before losses are taken off.";
                    case FROZEN_AT_THROAT -> "frozen at the throat before losses are taken off.";
                });
        if (balance.chamber().ideal().mode() == ExpansionMode.SHIFTING) {
            list.add(
                    "Real recombination lags behind equilibrium: the ideal value is an upper bound, and the kinetic loss"
                            + " covers the difference only roughly.");
        }
        if (!balance.turbines().isEmpty()) {
            list.add(
                    "Machines are sized for this one point; their efficiencies come from correlations with a scatter of"
                            + " several points.");
        }
        if (!balance.cooling().isEmpty()) {
            list.add("The jacket is a steady one-dimensional march; heat-transfer correlations scatter by 15 to 25 %.");
            list.add(
                    "What gas and fuel do to a copper liner over its life is no limit here: it oxidises where streaks are rich in"
                            + " oxygen, and sulphur of a fuel eats it from some 580 K on (from memory, docs/theory/cooling.md).");
        }
        return list;
    }

    /** @return what every sizing of a vehicle takes for granted */
    public static List<String> ofVehicle() {
        return List.of(
                "Each stage follows the rocket equation on the vacuum impulse of its engine just balanced; losses are terms of"
                        + " the velocity budget, stated, usual or flown.",
                "Dry mass is added up line by line from published relations, each with its scatter; a growth margin comes on"
                        + " top. Fifteen flown stages lie some 20 % about such sums.",
                "Without shares of its own the delta-v is split for the least start mass, which knows nothing of gravity"
                        + " loss.",
                "The fairing goes overboard where the flight says, or with the ignition of its stage; throttled engines keep their vacuum impulse.",
                "A flight is that of a point mass in one plane over a round, turning planet in still standard air: no lift, no"
                        + " wind, no steering out of the plane.");
    }
}

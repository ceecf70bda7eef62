package dev.penstock.cycles.origin;

import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import java.util.Objects;

/**
 * A part of an arrangement, declared once: what joins it to others, lists it, draws it or asks for it says this key. What a
 * propellant, a machine, a burner or a jacket brings is made from its own key; what only one arrangement has is a constant there.
 *
 * @param kind what it is
 * @param id stable dotted id, for example "pump.fuel"
 * @param label name for people
 * @param noun what the names of its stations call it, the label mostly; for a branch what flows in its first way
 * @param rest for a branch what flows in its second way; empty for others
 */
public record PartKey(PartKind kind, String id, String label, String noun, String rest) {

    public static final PartKey CHAMBER = new PartKey(PartKind.CHAMBER, "chamber", "thrust chamber", "chamber", "");
    public static final PartKey NOZZLE = new PartKey(PartKind.NOZZLE, "nozzle", "nozzle");
    public static final PartKey EXHAUST_DUCT = of(PartKind.LINE, "exhaust", "exhaust duct");
    public static final PartKey EXHAUST = exhaust("exhaust", "turbine exhaust nozzle", "turbine exhaust");

    /** Where turbine gas is led into the main nozzle. */
    public static final PartKey EXHAUST_SLOTS =
            exhaust("exhaust", "turbine exhaust into the nozzle", "turbine exhaust");

    /** Where the pressure at the injector face becomes that at the nozzle entrance. */
    public static final PartKey COMBUSTION = new PartKey(PartKind.CHAMBER, "chamber", "heat addition in the chamber");

    public PartKey {
        Objects.requireNonNull(kind, "kind");
    }

    /** A way out for what does not burn in the chamber; its noun is the name of its jet. */
    private static PartKey exhaust(String id, String label, String jet) {
        return new PartKey(PartKind.EXHAUST, id, label, jet, "");
    }

    private PartKey(PartKind kind, String id, String label) {
        this(kind, id, label, label, "");
    }

    /**
     * @param kind what it is
     * @param name name of its own among its kind
     * @param label name for people
     * @return the key of a part that only some arrangements have
     */
    public static PartKey of(PartKind kind, String name, String label) {
        return new PartKey(kind, kind.prefix() + "." + name, label);
    }

    /**
     * @param name name of its own among branches
     * @param label name for people
     * @param first what flows in the first way, for example "fuel to the generator"
     * @param rest what flows in the second way, for example "fuel to the chamber"
     * @return the key of a place where a line divides
     */
    public static PartKey branch(String name, String label, String first, String rest) {
        return new PartKey(PartKind.SPLIT, PartKind.SPLIT.prefix() + "." + name, label, first, rest);
    }

    /**
     * @param count how many equal ones stand side by side
     * @return the same part, whose label counts them
     */
    public PartKey times(int count) {
        return count == 1 ? this : new PartKey(kind, id, count + " " + label + "s", noun, rest);
    }

    // ---- what each propellant has

    public static PartKey tank(Side side) {
        return of(PartKind.TANK, side.key(), side.key() + " tank");
    }

    public static PartKey suctionLine(Side side) {
        return of(PartKind.LINE, side.key() + "_suction", side.key() + " suction line");
    }

    public static PartKey dischargeLine(Side side) {
        return of(PartKind.LINE, side.key() + "_discharge", side.key() + " discharge line");
    }

    public static PartKey valve(Side side) {
        return of(PartKind.VALVE, side.key(), side.key() + " valve");
    }

    public static PartKey injector(Side side) {
        return of(PartKind.INJECTOR, side.key(), side.key() + " injector");
    }

    // ---- machines

    public static PartKey pump(PumpKey pump) {
        return new PartKey(PartKind.PUMP, pump.id(), pump.label());
    }

    public static PartKey turbine(TurbinePlace place) {
        return of(PartKind.TURBINE, place.key(), place.title());
    }

    /** Where gas parts that passes by a turbine. */
    public static PartKey turbineBranch(TurbinePlace place) {
        return branch(
                "past_" + place.key() + "_turbine",
                "branch before the " + place.title(),
                "gas to the wheel of the " + place.title(),
                "gas past the " + place.title());
    }

    public static PartKey turbineBypass(TurbinePlace place) {
        return of(PartKind.ORIFICE, "past_" + place.key() + "_turbine", place.title() + " bypass");
    }

    public static PartKey turbineMerge(TurbinePlace place) {
        return of(PartKind.MERGE, "past_" + place.key() + "_turbine", place.title() + " and its bypass");
    }

    public static PartKey motor(ShaftKey shaft) {
        return of(PartKind.MOTOR, shaft.id(), "motor of the " + shaft.title());
    }

    /** Feeds all motors of an engine; it is drawn with them. */
    public static PartKey battery() {
        return of(PartKind.BATTERY, "motors", "battery");
    }

    /** Turns a boost pump on liquid from behind the main pump. */
    public static PartKey hydraulicTurbine(Side side) {
        return of(PartKind.TURBINE, side.key() + "_boost", side.key() + " hydraulic turbine");
    }

    /** Turns a boost pump on gas or on warmed fuel. */
    public static PartKey boostTurbine(Side side) {
        return of(PartKind.TURBINE, side.key() + "_boost", side.key() + " boost turbine");
    }

    /** Where what turns a boost pump parts from the rest. */
    public static PartKey boostBranch(Side side) {
        String turbine = side.key() + " boost turbine";
        return branch(side.key() + "_boost", "branch to the " + turbine, "to the " + turbine, "past the " + turbine);
    }

    public static PartKey boostMerge(Side side) {
        return of(PartKind.MERGE, side.key() + "_boost", side.key() + " boost turbine and the rest");
    }

    // ---- pressurant, which is drawn with an engine that it feeds

    public static PartKey bottle() {
        return of(PartKind.BOTTLE, "pressurant", "pressurant bottle");
    }

    /**
     * @param tanks what it serves, for example "fuel "; empty for all tanks
     * @return the key of a regulator
     */
    public static PartKey regulator(String tanks) {
        return of(PartKind.REGULATOR, tanks.isEmpty() ? "tanks" : tanks.strip(), tanks + "regulator");
    }

    public static PartKey heater() {
        return of(PartKind.HEATER, "pressurant", "gas heater");
    }

    // ---- burners

    public static PartKey burner(Burner burner) {
        return new PartKey(
                switch (burner) {
                    case GENERATOR, TAP_OFF, DECOMPOSITION -> PartKind.GAS_GENERATOR;
                    case FUEL_RICH, OXIDIZER_RICH -> PartKind.PREBURNER;
                },
                burner.key(),
                burner.title());
    }

    /** The injector of a burner, which is no component of its own. */
    public static PartKey injector(Burner burner) {
        return of(PartKind.INJECTOR, burner.key(), burner.title() + " injector");
    }

    /** Tank of a third fluid. */
    public static PartKey diluentTank() {
        return of(PartKind.TANK, "diluent", "diluent tank");
    }

    public static PartKey diluentValve() {
        return of(PartKind.VALVE, "diluent", "diluent valve");
    }

    // ---- jackets

    public static PartKey jacket(CircuitKey circuit) {
        return new PartKey(PartKind.JACKET, circuit.id("jacket"), circuit.label(), circuit.word() + "jacket", "");
    }

    public static PartKey coolantBranch(CircuitKey circuit) {
        String branch = circuit.word() + "coolant branch";
        return new PartKey(
                PartKind.SPLIT,
                circuit.id("split.coolant"),
                branch,
                "coolant to the " + circuit.word() + "jacket",
                "coolant past the " + circuit.word() + "jacket");
    }

    public static PartKey bypass(CircuitKey circuit) {
        return new PartKey(PartKind.ORIFICE, circuit.id("orifice.bypass"), circuit.word() + "jacket bypass");
    }

    public static PartKey coolantMerge(CircuitKey circuit) {
        return new PartKey(PartKind.MERGE, circuit.id("merge.coolant"), circuit.word() + "coolant merge");
    }

    /** Where the pressure of a coolant falls to that before a jacket behind which it is dumped. */
    public static PartKey dumpOrifice(CircuitKey circuit) {
        return new PartKey(PartKind.ORIFICE, circuit.id("orifice.dump"), circuit.word() + "dump orifice");
    }

    /** The nozzles through which a coolant leaves that is dumped behind its jacket. */
    public static PartKey dump(CircuitKey circuit) {
        return exhaust(circuit.id("exhaust.dump"), circuit.word() + "coolant dump", circuit.word() + "coolant dump");
    }

    // ---- stations

    /**
     * @param port a way out
     * @return the station there
     */
    public StationKey at(Port port) {
        return new StationKey(this, port);
    }
}

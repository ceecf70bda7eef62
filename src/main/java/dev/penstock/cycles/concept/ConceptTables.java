package dev.penstock.cycles.concept;

import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.DumpInputs;
import dev.penstock.input.TableKey;

/** Tables of a concept file that more than its reader speaks of. */
public final class ConceptTables {

    public static final TableKey PROPELLANTS = new TableKey("propellants");
    public static final TableKey ENGINE = new TableKey("engine");
    public static final TableKey NOZZLE = new TableKey(ChamberInputs.NOZZLE.key());
    public static final TableKey CHAMBER = new TableKey(ChamberInputs.CHAMBER.key());
    public static final TableKey EFFICIENCIES = new TableKey(ChamberInputs.EFFICIENCIES.key());
    public static final TableKey TANKS = new TableKey("tanks");
    public static final TableKey LINES = new TableKey("lines");
    public static final TableKey INJECTOR = new TableKey("injector");
    public static final TableKey PUMPS = new TableKey("pumps");
    public static final TableKey BOOST_PUMPS = new TableKey("boost_pumps");
    public static final TableKey COOLING = circuit(CircuitKey.FIRST);
    public static final TableKey FILM = COOLING.in("film");
    public static final TableKey OUTER_ZONE = COOLING.in("outer_zone");
    public static final TableKey SHAFTS = new TableKey("shafts");
    public static final TableKey TURBINES = new TableKey("turbines");
    public static final TableKey EXPANDER = new TableKey("expander");
    public static final TableKey EXHAUST = new TableKey("exhaust");
    public static final TableKey METALS = new TableKey("metals");
    public static final TableKey LIMITS = new TableKey("limits");
    public static final TableKey DILUENT = burner(Burner.GENERATOR).in("diluent");

    /** Key of the word from which defaults of walls, speeds and masses follow. */
    public static final String TECHNOLOGY = "technology";

    private ConceptTables() {}

    public static TableKey tank(Side side) {
        return TANKS.in(side.key());
    }

    public static TableKey metals(Side side) {
        return METALS.in(side.key());
    }

    public static TableKey pump(Side side) {
        return PUMPS.in(side.key());
    }

    public static TableKey boostPump(Side side) {
        return BOOST_PUMPS.in(side.key());
    }

    public static TableKey turbine(TurbinePlace place) {
        return TURBINES.in(place.key());
    }

    public static TableKey burner(Burner burner) {
        return new TableKey(burner.key());
    }

    public static TableKey circuit(CircuitKey circuit) {
        return new TableKey(circuit.table());
    }

    /** What a circuit says of a coolant that it dumps. */
    public static TableKey dump(CircuitKey circuit) {
        return circuit(circuit).in(DumpInputs.GROUP.key());
    }
}

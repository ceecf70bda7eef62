package dev.penstock.quantities;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Units in which people read quantities. Whatever is written on a thread is written in the one that the reader has chosen for
 * that thread; without a choice in practical metric units. Documents and inputs never depend on it.
 */
public enum UnitSystem {
    /** The SI with its prefixes: no bar, no tonne, no turns a minute. */
    SI("si", "SI", Map.of("bar", "MPa", "mbar", "kPa", "rpm", "rad/s", "t", "Mg", "t/s", "Mg/s")),

    /** As engineers of metric countries read: bar, kN, mm, rpm, t. Every notation is declared in it. */
    METRIC("metric", "practical metric", Map.of()),

    /** US customary units, absolute temperatures and their differences in degrees Rankine. */
    US(
            "us",
            "US customary",
            Map.ofEntries(
                    Map.entry("Pa", "psi"),
                    Map.entry("kPa", "psi"),
                    Map.entry("bar", "psi"),
                    Map.entry("MPa", "psi"),
                    Map.entry("K", "°R"),
                    Map.entry("N", "lbf"),
                    Map.entry("kN", "lbf"),
                    Map.entry("kg/s", "lb/s"),
                    Map.entry("t/s", "lb/s"),
                    Map.entry("W", "hp"),
                    Map.entry("kW", "hp"),
                    Map.entry("MW", "hp"),
                    Map.entry("mm", "in"),
                    Map.entry("m", "ft"),
                    Map.entry("km", "nmi"),
                    Map.entry("m²", "ft²"),
                    Map.entry("m³", "ft³"),
                    Map.entry("m/s", "ft/s"),
                    Map.entry("km/s", "ft/s"),
                    Map.entry("m/s²", "ft/s²"),
                    Map.entry("kg", "lb"),
                    Map.entry("t", "lb"),
                    Map.entry("kg/m³", "lb/ft³"),
                    Map.entry("kg/m²", "lb/ft²"),
                    Map.entry("kg/N", "lb/klbf"),
                    Map.entry("kg/kN", "lb/klbf"),
                    Map.entry("J", "Btu"),
                    Map.entry("J/kg", "ft·lbf/lb"),
                    Map.entry("kJ/kg", "Btu/lb"),
                    Map.entry("J/(kg·K)", "Btu/(lb·°R)"),
                    Map.entry("W/kg", "hp/lb"),
                    Map.entry("W/m²", "Btu/(in²·s)"),
                    Map.entry("MW/m²", "Btu/(in²·s)"),
                    Map.entry("W/(m·K)", "Btu/(h·ft·°R)"),
                    Map.entry("Pa·s", "lbf·s/ft²"),
                    Map.entry("1/K", "1/°R")));

    private static final ThreadLocal<UnitSystem> CHOSEN = ThreadLocal.withInitial(() -> METRIC);

    private final String id;
    private final String title;
    private final Map<String, String> units;

    UnitSystem(String id, String title, Map<String, String> units) {
        this.id = id;
        this.title = title;
        this.units = units;
    }

    /** @return short name, as a browser keeps it */
    public String id() {
        return id;
    }

    /** @return name for people */
    public String title() {
        return title;
    }

    /**
     * @param id short name, or anything else
     * @return the system of that name; practical metric if there is none
     */
    public static UnitSystem named(String id) {
        return Arrays.stream(values()).filter(s -> s.id.equals(id)).findFirst().orElse(METRIC);
    }

    /** @return the system in which this thread writes */
    public static UnitSystem chosen() {
        return CHOSEN.get();
    }

    /**
     * @param writing writes something
     * @param <T> kind of what is written
     * @return what is written, in this system
     */
    public <T> T reading(Supplier<T> writing) {
        UnitSystem before = CHOSEN.get();
        CHOSEN.set(this);
        try {
            return writing.get();
        } finally {
            CHOSEN.set(before);
        }
    }

    /** Has the rest of this thread's work, until the next choice, written in this system. */
    public void choose() {
        CHOSEN.set(this);
    }

    /**
     * @param unit unit in which engineers of metric countries read a quantity
     * @return the unit in which it is read in this system; the same where there is no other
     */
    String unit(String unit) {
        return units.getOrDefault(unit, unit);
    }
}

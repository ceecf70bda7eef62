package dev.penstock.fluids;

import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.Optional;

/**
 * What the file of a propellant or coolant says for the models of engine and vehicle, each key declared once: the reader asks for it by
 * this declaration, and the reference page is made from it.
 */
public enum PropellantKey {
    WALL_ZONE_LOSS(
            Table.COMBUSTION,
            "wall_zone_loss",
            Dimension.RATIO,
            Range.of(0, 0.3),
            Need.FUEL_OR_MONOPROPELLANT,
            "share of the theoretical c* that the fuel-rich zone costs which injectors of this fuel usually lay along the wall",
            ""),
    CHARACTERISTIC_LENGTH(
            Table.COMBUSTION,
            "characteristic_length",
            Dimension.LENGTH,
            Range.of(0.1, 10),
            Need.FUEL,
            "usual L* of a chamber; an oxidizer's goes before its fuel's",
            "the fuel's"),
    DROP_BURNING_FACTOR(
            Table.COMBUSTION,
            "drop_burning_factor",
            Dimension.RATIO,
            Range.of(1, 10),
            Need.NOBODY,
            "how many times as fast its drops burn as they would evaporate, for what decomposes in its own vapour",
            "1"),
    INJECTED_AS(
            Table.COMBUSTION,
            "injected_as",
            "`\"liquid\"` or `\"gas\"`",
            Need.FUEL,
            "how it usually reaches the injector",
            "liquid"),
    SOOT(
            Table.COMBUSTION,
            "soot",
            "`true` or `false`",
            Need.FUEL,
            "whether its fuel-rich flame lays soot on the wall",
            "no"),
    RELEASES_AMMONIA(
            Table.COMBUSTION,
            "releases_ammonia",
            "`true` or `false`",
            Need.FUEL,
            "whether it decomposes into ammonia, which dissociates slowly: equilibrium is then doubted, and the propellant alone, if"
                    + " it has the atoms of hydrazine, is decomposed with a stated dissociation",
            "no"),
    EQUILIBRIUM_FAILS_BELOW(
            Table.COMBUSTION,
            "equilibrium_fails_below",
            Dimension.RATIO,
            Range.of(0.01, 50),
            Need.NOBODY,
            "mixture ratio below which its gas is known not to reach equilibrium; such a state carries a warning",
            "none known"),
    COLLAPSE_FACTOR(
            Table.TANK,
            "collapse_factor",
            Dimension.RATIO,
            Range.of(1, 10),
            Need.LOADED,
            "pressurant used over the gas that would fill the tank without cooling or condensing",
            ""),
    COLD_COLLAPSE_FACTOR(
            Table.TANK,
            "cold_collapse_factor",
            Dimension.RATIO,
            Range.of(1, 10),
            Need.NOBODY,
            "the same where it is loaded below 200 K",
            "`collapse_factor`"),
    OWN_VAPOUR_COLLAPSE_FACTOR(
            Table.TANK,
            "own_vapour_collapse_factor",
            Dimension.RATIO,
            Range.of(1, 10),
            Need.COLD,
            "the same for its own vapour",
            "refused as its own pressurant"),
    OWN_VAPOUR_TEMPERATURE(
            Table.TANK,
            "own_vapour_temperature",
            Dimension.TEMPERATURE,
            Range.of(20, 1000),
            Need.COLD,
            "temperature of its own vapour behind the engine",
            "refused as its own pressurant"),
    TANK_MASS(
            Table.TANK,
            "tank_mass",
            Dimension.DENSITY,
            Range.of(0.1, 1000),
            Need.LOADED,
            "mass of a launch vehicle's tank over its volume",
            ""),
    INSULATION_MASS(
            Table.TANK,
            "insulation_mass",
            Dimension.AREAL_MASS,
            Range.NOT_NEGATIVE,
            Need.COLD,
            "mass of insulation over the tank's surface; used where it is loaded below 200 K",
            "refused below 200 K"),
    LINE_VELOCITY(
            Table.TANK,
            "line_velocity",
            Dimension.VELOCITY,
            Range.of(0.1, 200),
            Need.LOADED,
            "velocity in the feed line of a stage",
            ""),
    CORRELATION(
            Table.COOLING,
            "correlation",
            "a name that `cooling.correlation` of a concept takes",
            Need.COOLANT,
            "heat-transfer correlation",
            "refused as a coolant"),
    SUPERCRITICAL_CORRELATION(
            Table.COOLING,
            "supercritical_correlation",
            "a name that `cooling.correlation` of a concept takes",
            Need.NOBODY,
            "the one where it enters above its critical pressure",
            "`correlation`");

    /** Who must state a key. */
    public enum Need {
        NOBODY(""),
        FUEL("every fuel"),
        FUEL_OR_MONOPROPELLANT("every fuel and monopropellant"),
        LOADED("every fuel and oxidizer"),
        COLD("every fuel and oxidizer that is loaded below 200 K"),
        COOLANT("every coolant");

        private final String who;

        Need(String who) {
            this.who = who;
        }

        /** @return who must, in words; empty for nobody */
        public String who() {
            return who;
        }
    }

    /** Where a key stands, and whose models read it. */
    public enum Table {
        COMBUSTION("combustion", "engine"),
        TANK("tank", "vehicle"),
        COOLING("cooling", "engine");

        private final String key;
        private final String reader;

        Table(String key, String reader) {
            this.key = key;
            this.reader = reader;
        }

        /** @return key of the table */
        public String key() {
            return key;
        }

        /** @return whose models read it */
        public String reader() {
            return reader;
        }
    }

    private final Table table;
    private final String key;
    private final Optional<Dimension> dimension;
    private final Range range;
    private final String allowed;
    private final Need need;
    private final String title;
    private final String absent;

    PropellantKey(Table table, String key, Dimension dimension, Range range, Need need, String title, String absent) {
        this.table = table;
        this.key = key;
        this.dimension = Optional.of(dimension);
        this.range = range;
        this.allowed = dimension.description() + ", " + range.describe(dimension.siUnit());
        this.need = need;
        this.title = title;
        this.absent = absent;
    }

    PropellantKey(Table table, String key, String allowed, Need need, String title, String absent) {
        this.table = table;
        this.key = key;
        this.dimension = Optional.empty();
        this.range = Range.NOT_NEGATIVE;
        this.allowed = allowed;
        this.need = need;
        this.title = title;
        this.absent = absent;
    }

    /** @return where it stands */
    public Table table() {
        return table;
    }

    /** @return its key there */
    public String key() {
        return key;
    }

    /** @return dimension of a number; empty for words and flags */
    Optional<Dimension> dimension() {
        return dimension;
    }

    /** @return allowed range of a number, SI */
    Range range() {
        return range;
    }

    /** @return what may be written */
    public String allowed() {
        return allowed;
    }

    /** @return who must state it */
    public Need need() {
        return need;
    }

    /** @return what it means */
    public String title() {
        return title;
    }

    /** @return what its absence means; empty where it is refused */
    public String absent() {
        return absent;
    }
}

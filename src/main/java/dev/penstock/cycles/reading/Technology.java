package dev.penstock.cycles.reading;

import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cooling.gas.GasSideInputs;
import dev.penstock.cooling.gas.SootLayer;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallInputs;
import dev.penstock.input.Input;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.Words;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How and when an engine is built: what a concept says with one word, and which of its defaults follow from it. The levels rest on
 * {@code src/test/resources/validation/technology.csv}, chamber pressures flown by kind of wall. A level has values of its own for what
 * that table tells (walls, film, generator gas); the speeds and masses, of which it tells nothing, are moved inside the range that is
 * published for them.
 */
public enum Technology {
    /** What most files mean: each default stands for itself, whatever its time. */
    UNSTATED("each default stands for itself", Map.of(), 0, 0),
    /** Walls of tubes flew to 8 MPa. */
    BRAZED_TUBES(
            "walls of brazed tubes of steel or nickel, as of the 1960s",
            settings(
                    set(WallInputs.MATERIAL, "stainless-347", "tubes of steel 347 flew to 5 MPa")
                            .withSootingFuel(
                                    "inconel-718", "kerosene engines flew with tubes of nickel alloys, to 7.8 MPa"),
                    set(WallInputs.WALL_THICKNESS, 0.33e-3, "0.33 mm flew in steel 347")
                            .withSootingFuel(0.46e-3, "0.46 mm flew in a nickel alloy, with kerosene"),
                    set(JacketInputs.CHANNELS, ChannelKind.TUBE, "brazed tubes"),
                    soot(),
                    set(
                                    GasSideInputs.FILM_FUEL_FRACTION,
                                    0.10,
                                    "a tenth of the fuel flew as film with alcohol; storable engines had films too")
                            .withColdFuel(0.0, "hydrogen engines of tubes flew without a film, from memory")
                            .withSootingFuel(0.0, "kerosene engines of tubes flew without a film, from memory"),
                    set(JacketInputs.ROUTE, CoolantRoute.Kind.TWO_PASS, "down every second tube and up the others")
                            .withColdFuel(
                                    CoolantRoute.Kind.PASS_AND_A_HALF,
                                    "hydrogen flew in a pass and a half, from a manifold on the nozzle")),
            -0.5,
            0),
    /** Hydrogen engines from 1981 on: 10 to 22 MPa. */
    COPPER_CHANNELS(
            "channels milled in a copper alloy and closed by plating or brazing, as of the 1980s",
            settings(
                    set(WallInputs.MATERIAL, "copper-silver-zirconium", "copper alloys flew to 22 MPa with hydrogen"),
                    copperWall(),
                    set(JacketInputs.CHANNELS, ChannelKind.MILLED, "milled channels")),
            0,
            0),
    /** Kerosene and storable engines of staged combustion: 14 to 27 MPa. */
    COPPER_AND_FILM(
            "brazed channels in a copper alloy under a film of fuel, as of staged kerosene and storable engines",
            settings(
                    set(
                            WallInputs.MATERIAL,
                            "copper-zirconium",
                            "nearest to the chromium copper that flew to 27 MPa with kerosene"),
                    copperWall(),
                    set(JacketInputs.CHANNELS, ChannelKind.MILLED, "brazed channels"),
                    coking(),
                    film(0.05)),
            0.5,
            0),
    /** Engines from the 2010s on. */
    PRINTED_COPPER(
            "printed or laser-closed channels in a dispersion-hardened copper alloy, as of the 2010s",
            settings(
                    set(WallInputs.MATERIAL, "grcop-42", "the alloy made for printing, common practice, no source"),
                    set(WallInputs.WALL_THICKNESS, 0.60e-3, "thinnest printed wall, common practice, no source"),
                    set(JacketInputs.CHANNELS, ChannelKind.MILLED, "printed channels"),
                    coking(),
                    film(0.03)),
            0.5,
            -0.5);

    /**
     * A default of a level.
     *
     * @param usual the default
     * @param coldFuel the default with a fuel that is stored cold
     * @param sootingFuel the default with a fuel whose flame lays soot on the wall
     */
    private record Setting<T>(Input<T> input, Usual<T> usual, Usual<T> coldFuel, Usual<T> sootingFuel) {

        Setting(Input<T> input, Usual<T> usual) {
            this(input, usual, usual, usual);
        }

        Setting<T> withColdFuel(T value, String reason) {
            return new Setting<>(input, usual, Usual.of(value, reason, ""), sootingFuel);
        }

        Setting<T> withSootingFuel(T value, String reason) {
            return new Setting<>(input, usual, coldFuel, Usual.of(value, reason, ""));
        }
    }

    private final String description;
    private final Map<Input<?>, Setting<?>> settings;
    private final double speeds;
    private final double masses;

    Technology(String description, Map<Input<?>, Setting<?>> settings, double speeds, double masses) {
        this.description = description;
        this.settings = settings;
        this.speeds = speeds;
        this.masses = masses;
    }

    private static <T> Setting<T> set(Input<T> input, T value, String reason) {
        return new Setting<>(input, Usual.of(value, reason, ""));
    }

    private static Setting<Double> copperWall() {
        return set(WallInputs.WALL_THICKNESS, 0.70e-3, "thinnest copper wall usual then, from memory");
    }

    /** The published layer on a wall of tubes; the calorimeter, of a uniform mixture, has the least. */
    private static Setting<Double> soot() {
        Usual<Double> usual = Usual.of(
                new Spread(1, SootLayer.TEXTBOOK_OVER_MEASURED, SootLayer.TEXTBOOK_OVER_MEASURED),
                "the deposit on tubes of a kerosene chamber, " + SootLayer.TEXTBOOK_OVER_MEASURED
                        + " times that of a calorimeter of uniform mixture",
                "nasa-sp-125");
        return new Setting<>(GasSideInputs.SOOT_FACTOR, usual);
    }

    private static Setting<Double> coking() {
        Usual<Double> usual = Usual.of(
                new Spread(0, 0.5, 1),
                "half-way to the hottest coolant-side wall that is known to serve with refined fuel at high velocity",
                "");
        return new Setting<>(JacketInputs.COKING_SHARE, usual);
    }

    private static Setting<Double> film(double fraction) {
        return set(
                GasSideInputs.FILM_FUEL_FRACTION,
                fraction,
                "films flew; of the chamber's fuel, common practice, no source");
    }

    private static Map<Input<?>, Setting<?>> settings(Setting<?>... all) {
        Map<Input<?>, Setting<?>> map = new LinkedHashMap<>();
        Arrays.stream(all).forEach(setting -> map.put(setting.input(), setting));
        return Map.copyOf(map);
    }

    /** @return the word that a concept writes */
    public String word() {
        return Words.of(this);
    }

    /** @return what it means, as part of a sentence */
    public String description() {
        return description;
    }

    /** @return the words of all levels */
    public static List<String> words() {
        return Arrays.stream(values()).map(Technology::word).toList();
    }

    /**
     * @param word what a concept writes
     * @return that level; {@link #UNSTATED} for a word that is none
     */
    static Technology of(String word) {
        return Arrays.stream(values())
                .filter(level -> level.word().equals(word))
                .findFirst()
                .orElse(UNSTATED);
    }

    /**
     * Value of its own for an input.
     *
     * @param coldFuel whether the fuel is stored cold
     * @param soots whether its flame lays soot on the wall
     */
    @SuppressWarnings("unchecked")
    <T> Optional<Usual<T>> own(Input<T> input, boolean coldFuel, boolean soots) {
        return Optional.ofNullable((Setting<T>) settings.get(input))
                .map(setting -> coldFuel ? setting.coldFuel() : soots ? setting.sootingFuel() : setting.usual());
    }

    /** Place of speeds in their published range: 0 the most likely, 1 the highest, -1 the lowest. */
    double speeds() {
        return speeds;
    }

    /** Place of the masses of parts in the scatter of built ones: 0 the most likely, -1 the lightest. */
    double masses() {
        return masses;
    }
}

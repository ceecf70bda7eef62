package dev.penstock.fluids;

import dev.penstock.fluids.property.Composition;
import dev.penstock.fluids.traits.CombustionTraits;
import dev.penstock.fluids.traits.CoolantTraits;
import dev.penstock.fluids.traits.GeneratorGasData;
import dev.penstock.fluids.traits.Metal;
import dev.penstock.fluids.traits.MetalAttack;
import dev.penstock.fluids.traits.PropellantTraits;
import dev.penstock.fluids.traits.TankTraits;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * Reads what a fluid's file says for the models of engine and vehicle. What a role needs must be there: no model guesses
 * at it from the fluid's name.
 */
final class PropellantTraitsReader {

    private static final Range COLLAPSE = Range.of(1, 10);
    private static final List<String> STATES = List.of("liquid", "gas");
    private static final List<String> VERDICTS = List.of("caution", "barred");

    private final InputTable root;
    private final boolean oxidizer;
    private final boolean fuel;
    private final boolean monopropellant;
    private final boolean coolant;

    PropellantTraitsReader(InputTable root, Set<Propellant.Role> roles) {
        this.root = root;
        this.oxidizer = roles.contains(Propellant.Role.OXIDIZER);
        this.fuel = roles.contains(Propellant.Role.FUEL);
        this.monopropellant = roles.contains(Propellant.Role.MONOPROPELLANT);
        this.coolant = roles.contains(Propellant.Role.COOLANT);
    }

    /**
     * @param coldest lowest temperature at which it is loaded (K)
     * @return what the file says
     */
    PropellantTraits read(double coldest) {
        return new PropellantTraits(combustion(), tank(coldest), cooling(), metals());
    }

    private CombustionTraits combustion() {
        InputTable table = root.table("combustion");
        OptionalDouble zone = quantity(
                table,
                "wall_zone_loss",
                Dimension.RATIO,
                Range.of(0, 0.3),
                fuel || monopropellant,
                "a share of the theoretical characteristic velocity; every fuel and monopropellant states it");
        OptionalDouble length = quantity(
                table,
                "characteristic_length",
                Dimension.LENGTH,
                Range.of(0.1, 10),
                fuel,
                "a fuel states the usual L* of its chambers");
        boolean gas = fuel
                ? table.choice("injected_as", STATES).equals("gas")
                : table.choice("injected_as", STATES, "liquid").equals("gas");
        boolean soot = flag(table, "soot");
        boolean ammonia = flag(table, "releases_ammonia");
        OptionalDouble fails = table.optionalQuantity("equilibrium_fails_below", Dimension.RATIO, Range.of(0.01, 50));
        table.optionalText("source");
        return new CombustionTraits(zone, length, gas, soot, ammonia, fails, generatorGas(table));
    }

    private static Optional<GeneratorGasData> generatorGas(InputTable combustion) {
        InputTable table = combustion.table("generator_gas");
        if (!combustion.has("generator_gas")) {
            return Optional.empty();
        }
        table.optionalText("source");
        Composition oxidizer = Composition.read(table.table("oxidizer"));
        List<Double> ratio = table.quantities("mixture_ratio", Dimension.RATIO, Range.of(0.001, 100));
        List<Double> temperature = table.quantities("temperature", Dimension.TEMPERATURE, Range.of(250, 3500));
        List<Double> heat = table.quantities("heat_capacity", Dimension.SPECIFIC_HEAT, Range.of(100, 50000));
        List<Double> gamma = table.quantities("gamma", Dimension.RATIO, Range.of(1.001, 1.7));
        double lowest = table.quantity("lowest_mixture_ratio", Dimension.RATIO, Range.of(0.001, 100));
        double highest = table.quantity("highest_mixture_ratio", Dimension.RATIO, Range.of(0.001, 100));
        Map<String, Double> denseAs = new TreeMap<>();
        if (table.has("dense_as")) {
            InputTable moles = table.table("dense_as");
            moles.keys().forEach(name -> denseAs.put(name, moles.quantity(name, Dimension.RATIO, Range.of(0, 1))));
        }
        Optional<String> doubt = table.optionalText("doubt");
        int rows = ratio.size();
        if (rows < 2 || temperature.size() != rows || heat.size() != rows || gamma.size() != rows) {
            table.problem(
                    "mixture_ratio",
                    rows + " values",
                    "mixture_ratio, temperature, heat_capacity and gamma need the same number of values, at least two");
        } else if (!rises(ratio) || !rises(temperature)) {
            table.problem("mixture_ratio", ratio.toString(), "mixture_ratio and temperature must rise");
        }
        return Optional.of(new GeneratorGasData(
                oxidizer.elements(), ratio, temperature, heat, gamma, lowest, highest, denseAs, doubt));
    }

    private static boolean rises(List<Double> values) {
        for (int i = 1; i < values.size(); i++) {
            if (values.get(i) <= values.get(i - 1)) {
                return false;
            }
        }
        return true;
    }

    private TankTraits tank(double coldest) {
        InputTable table = root.table("tank");
        boolean loaded = fuel || oxidizer;
        boolean cold = loaded && coldest < TankTraits.COLD_BELOW;
        String each = "every fuel and oxidizer states it";
        String cool = "what is loaded below 200 K states it";
        table.optionalText("source");
        return new TankTraits(
                quantity(table, "collapse_factor", Dimension.RATIO, COLLAPSE, loaded, each),
                table.optionalQuantity("cold_collapse_factor", Dimension.RATIO, COLLAPSE),
                quantity(table, "own_vapour_collapse_factor", Dimension.RATIO, COLLAPSE, cold, cool),
                quantity(table, "own_vapour_temperature", Dimension.TEMPERATURE, Range.of(20, 1000), cold, cool),
                quantity(table, "tank_mass", Dimension.DENSITY, Range.of(0.1, 1000), loaded, each),
                quantity(table, "insulation_mass", Dimension.AREAL_MASS, Range.NOT_NEGATIVE, cold, cool),
                quantity(table, "line_velocity", Dimension.VELOCITY, Range.of(0.1, 200), loaded, each));
    }

    private CoolantTraits cooling() {
        InputTable table = root.table("cooling");
        table.optionalText("source");
        if (coolant && !table.has("correlation")) {
            table.problem(
                    "correlation",
                    "missing",
                    "write a correlation that cooling.correlation of a concept takes; every coolant states one");
        }
        return new CoolantTraits(table.optionalText("correlation"), table.optionalText("supercritical_correlation"));
    }

    private Map<Metal, MetalAttack> metals() {
        if (oxidizer && !root.has("metals")) {
            root.problem(
                    "metals",
                    "missing",
                    "write [metals.titanium] and the like with verdict and reason, or an empty [metals]; every oxidizer"
                            + " states what it does to metals");
        }
        Map<Metal, MetalAttack> attacks = new EnumMap<>(Metal.class);
        InputTable table = root.table("metals");
        for (Metal metal : Metal.values()) {
            String key = metal.name().toLowerCase(Locale.ROOT);
            InputTable attack = table.table(key);
            if (table.has(key)) {
                attack.optionalText("source");
                attacks.put(
                        metal,
                        new MetalAttack(attack.choice("verdict", VERDICTS).equals("barred"), attack.text("reason")));
            }
        }
        return attacks;
    }

    /** True or false, which a fuel must say. */
    private boolean flag(InputTable table, String key) {
        if (fuel && !table.has(key)) {
            table.problem(key, "missing", "write true or false; every fuel states it");
        }
        return table.flag(key, false);
    }

    private static OptionalDouble quantity(
            InputTable table, String key, Dimension dimension, Range allowed, boolean needed, String why) {
        if (needed && !table.has(key)) {
            table.problem(key, "missing", "write " + dimension.description() + "; " + why);
        }
        return table.optionalQuantity(key, dimension, allowed);
    }
}

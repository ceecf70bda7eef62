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

    private static final List<String> STATES = List.of("liquid", "gas");
    private static final List<String> VERDICTS = List.of("caution", "barred");

    private final InputTable root;
    private final boolean oxidizer;
    private final boolean fuel;
    private final boolean monopropellant;
    private final boolean coolant;
    private final double coldest;

    /**
     * @param root the file
     * @param roles what it serves as
     * @param coldest lowest temperature at which it is loaded (K)
     */
    PropellantTraitsReader(InputTable root, Set<Propellant.Role> roles, double coldest) {
        this.coldest = coldest;
        this.root = root;
        this.oxidizer = roles.contains(Propellant.Role.OXIDIZER);
        this.fuel = roles.contains(Propellant.Role.FUEL);
        this.monopropellant = roles.contains(Propellant.Role.MONOPROPELLANT);
        this.coolant = roles.contains(Propellant.Role.COOLANT);
    }

    /** @return what the file says */
    PropellantTraits read() {
        return new PropellantTraits(combustion(), tank(), cooling(), metals());
    }

    private CombustionTraits combustion() {
        InputTable table = root.table(PropellantKey.Table.COMBUSTION.key());
        OptionalDouble zone = quantity(table, PropellantKey.WALL_ZONE_LOSS);
        OptionalDouble length = quantity(table, PropellantKey.CHARACTERISTIC_LENGTH);
        double burning = quantity(table, PropellantKey.DROP_BURNING_FACTOR).orElse(1);
        String injected = PropellantKey.INJECTED_AS.key();
        boolean gas = (must(PropellantKey.INJECTED_AS)
                        ? table.choice(injected, STATES)
                        : table.choice(injected, STATES, "liquid"))
                .equals("gas");
        boolean soot = flag(table, PropellantKey.SOOT);
        boolean ammonia = flag(table, PropellantKey.RELEASES_AMMONIA);
        OptionalDouble fails = quantity(table, PropellantKey.EQUILIBRIUM_FAILS_BELOW);
        table.optionalText("source");
        return new CombustionTraits(zone, length, burning, gas, soot, ammonia, fails, generatorGas(table));
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

    private TankTraits tank() {
        InputTable table = root.table(PropellantKey.Table.TANK.key());
        table.optionalText("source");
        return new TankTraits(
                quantity(table, PropellantKey.COLLAPSE_FACTOR),
                quantity(table, PropellantKey.COLD_COLLAPSE_FACTOR),
                quantity(table, PropellantKey.OWN_VAPOUR_COLLAPSE_FACTOR),
                quantity(table, PropellantKey.OWN_VAPOUR_TEMPERATURE),
                quantity(table, PropellantKey.TANK_MASS),
                quantity(table, PropellantKey.INSULATION_MASS),
                quantity(table, PropellantKey.LINE_VELOCITY));
    }

    private CoolantTraits cooling() {
        InputTable table = root.table(PropellantKey.Table.COOLING.key());
        table.optionalText("source");
        refuseIfMissing(table, PropellantKey.CORRELATION, "a correlation that cooling.correlation of a concept takes");
        return new CoolantTraits(
                table.optionalText(PropellantKey.CORRELATION.key()),
                table.optionalText(PropellantKey.SUPERCRITICAL_CORRELATION.key()));
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

    private boolean must(PropellantKey key) {
        return switch (key.need()) {
            case NOBODY -> false;
            case FUEL -> fuel;
            case FUEL_OR_MONOPROPELLANT -> fuel || monopropellant;
            case LOADED -> fuel || oxidizer;
            case COLD -> (fuel || oxidizer) && coldest < TankTraits.COLD_BELOW;
            case COOLANT -> coolant;
        };
    }

    private void refuseIfMissing(InputTable table, PropellantKey key, String what) {
        if (must(key) && !table.has(key.key())) {
            table.problem(
                    key.key(), "missing", "write " + what + "; " + key.need().who() + " states it");
        }
    }

    private boolean flag(InputTable table, PropellantKey key) {
        refuseIfMissing(table, key, "true or false");
        return table.flag(key.key(), false);
    }

    private OptionalDouble quantity(InputTable table, PropellantKey key) {
        Dimension dimension = key.dimension().orElseThrow();
        refuseIfMissing(table, key, dimension.description());
        return table.optionalQuantity(key.key(), dimension, key.range());
    }
}

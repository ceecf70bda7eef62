package dev.penstock.cycles.reading;

import dev.penstock.combustion.GasModel;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.BurnerDesign;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.ExhaustDesign;
import dev.penstock.cycles.concept.GasPathDesign;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.TurbineOption;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.UncertainInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.pump.LightLiquid;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads what a concept says about turbine gas: burners, turbines, shafts, ducts and exhaust, as far as its cycle has them. */
final class GasKeys {

    private static final Range TEMPERATURES = Range.of(250, 3500);

    private final Map<Burner, Supplier<BurnerDesign>> burners = new EnumMap<>(Burner.class);
    private final Map<TurbinePlace, Supplier<TurbineOption>> turbines = new EnumMap<>(TurbinePlace.class);
    private final ShaftDesign shafts;
    private final GasPathDesign path;

    GasKeys(ConceptKeys root, CycleTraits traits, Propellant fuel) {
        shafts = shafts(root, traits, fuel);
        OptionalDouble temperatureLimit = traits.turbines()
                ? root.table("limits")
                        .optional(
                                "turbine_temperature",
                                Dimension.TEMPERATURE,
                                Range.of(200, 3000),
                                "by gas, see the turbines")
                : OptionalDouble.empty();
        for (TurbinePlace place : places(traits)) {
            ConceptKeys keys = root.table("turbines").table(place.key());
            OptionalDouble ratio = OptionalDouble.empty();
            if (!sharesPressures(traits, place)) {
                ratio = traits.closure() == CycleTraits.Closure.GAS_FLOW
                        ? TurbineKeys.ratio(keys, usualRatio(traits), "5 to 25 are usual, " + ConceptKeys.COMMON)
                        : TurbineKeys.openRatio(keys, traits.closure() == CycleTraits.Closure.RATIO);
            }
            OptionalDouble found = ratio;
            Supplier<TurbineDesign> design =
                    TurbineKeys.read(keys, oxygenRich(traits, place), traits.livesOnJacketHeat(), temperatureLimit);
            turbines.put(place, () -> new TurbineOption(found, design.get()));
        }
        for (Burner burner : traits.burners()) {
            readBurner(root, burner, traits);
        }
        path = path(root, traits);
    }

    private void readBurner(ConceptKeys root, Burner burner, CycleTraits traits) {
        ConceptKeys keys = tableOf(root, burner);
        double usual = usualTemperature(burner);
        OptionalDouble temperature;
        if (burner == Burner.DECOMPOSITION) {
            temperature = OptionalDouble.empty();
        } else if (traits.closure() == CycleTraits.Closure.GAS_FLOW) {
            temperature = OptionalDouble.of(keys.quantity(
                    "temperature",
                    Dimension.TEMPERATURE,
                    TEMPERATURES,
                    usual,
                    "850 to 1100 K are usual, nasa-sp-8081"));
        } else {
            TurbinePlace place = drivenBy(traits, burner);
            boolean ratioGiven = root.table("turbines").table(place.key()).has("pressure_ratio");
            boolean given = keys.has("temperature");
            if (given && ratioGiven) {
                keys.problem(
                        "temperature",
                        "given together with turbines." + place.key() + ".pressure_ratio",
                        "write one of them; the other closes the power balance");
            }
            temperature = ratioGiven
                    ? keys.optional("temperature", Dimension.TEMPERATURE, TEMPERATURES, "closes the power balance")
                    : OptionalDouble.of(keys.quantity(
                            "temperature",
                            Dimension.TEMPERATURE,
                            TEMPERATURES,
                            usual,
                            "middle of the range in use, " + ConceptKeys.COMMON));
        }
        double loss = keys.quantity(
                "injector_loss",
                Dimension.RATIO,
                Range.of(0, 0.5),
                0.12,
                "10 to 20 % of burner pressure, " + ConceptKeys.COMMON);
        GasModel model = keys.choice(
                "gas_model",
                GasModel.class,
                GasModel.AUTOMATIC,
                "measured data where equilibrium is known to be wrong, else equilibrium without soot, frozen");
        OptionalDouble t = temperature;
        burners.put(burner, () -> new BurnerDesign(t, loss, model));
    }

    private static double usualTemperature(Burner burner) {
        return switch (burner) {
            case GENERATOR -> 900;
            case FUEL_RICH -> 850;
            case OXIDIZER_RICH -> 680;
            case TAP_OFF -> 1000;
            case DECOMPOSITION -> 0;
        };
    }

    private static ConceptKeys tableOf(ConceptKeys root, Burner burner) {
        ConceptKeys keys = root;
        for (String part : burner.key().split("\\.")) {
            keys = keys.table(part);
        }
        return keys;
    }

    private List<TurbinePlace> places(CycleTraits traits) {
        if (!traits.turbines()) {
            return List.of();
        }
        return shafts.oneTurbine() ? List.of(TurbinePlace.MAIN) : List.of(TurbinePlace.FUEL, TurbinePlace.OXIDIZER);
    }

    /** The oxidizer turbine takes the pressures that the fuel turbine leaves it, where one burner feeds both. */
    private static boolean sharesPressures(CycleTraits traits, TurbinePlace place) {
        return place == TurbinePlace.OXIDIZER && !traits.ownBurners();
    }

    private static boolean oxygenRich(CycleTraits traits, TurbinePlace place) {
        boolean only = traits.burners().equals(List.of(Burner.OXIDIZER_RICH));
        boolean own = traits.burners().contains(Burner.OXIDIZER_RICH) && place == TurbinePlace.OXIDIZER;
        return only || own;
    }

    private TurbinePlace drivenBy(CycleTraits traits, Burner burner) {
        if (shafts.oneTurbine()) {
            return TurbinePlace.MAIN;
        }
        boolean own = traits.ownBurners() && burner == Burner.OXIDIZER_RICH;
        return own ? TurbinePlace.OXIDIZER : TurbinePlace.FUEL;
    }

    private static ShaftDesign shafts(ConceptKeys root, CycleTraits traits, Propellant fuel) {
        if (!traits.pumped()) {
            return new ShaftDesign(
                    ShaftDesign.Arrangement.DUAL,
                    ShaftDesign.GasPath.PARALLEL,
                    1,
                    OptionalDouble.empty(),
                    GearTeeth.pitchLineSpeed().spread().mode(),
                    MechanicalLosses.usual(false));
        }
        ConceptKeys keys = root.table("shafts");
        List<ShaftDesign.Arrangement> allowed = traits.arrangements();
        boolean two = LightLiquid.is(fuel.loadingDensity()) && allowed.contains(ShaftDesign.Arrangement.DUAL);
        ShaftDesign.Arrangement usual = two ? ShaftDesign.Arrangement.DUAL : allowed.get(0);
        ShaftDesign.Arrangement arrangement = keys.choice(
                "arrangement",
                ShaftDesign.Arrangement.class,
                usual,
                "two shafts where the densities differ as with hydrogen, " + ConceptKeys.COMMON);
        if (!allowed.contains(arrangement)) {
            List<String> names = new ArrayList<>();
            allowed.forEach(a -> names.add(a.name().toLowerCase(java.util.Locale.ROOT)));
            keys.problem(
                    "arrangement", arrangement.name().toLowerCase(java.util.Locale.ROOT), "this cycle allows " + names);
        }
        boolean sharing = arrangement == ShaftDesign.Arrangement.DUAL && traits.turbines() && !traits.ownBurners();
        ShaftDesign.GasPath path = sharing
                ? keys.choice("gas_path", ShaftDesign.GasPath.class, ShaftDesign.GasPath.PARALLEL, ConceptKeys.COMMON)
                : ShaftDesign.GasPath.PARALLEL;
        UncertainInput teeth = GearTeeth.pitchLineSpeed();
        double gear = 1;
        OptionalDouble pumpRatio = OptionalDouble.empty();
        double limit = teeth.spread().mode();
        if (arrangement == ShaftDesign.Arrangement.GEARED) {
            gear = keys.quantity(
                    "gear_ratio", Dimension.RATIO, Range.of(0.1, 10), 1, "turbine on the fuel pump's shaft");
            pumpRatio = keys.optional(
                    "pump_speed_ratio", Dimension.RATIO, Range.of(0.05, 20), "each pump at its own best speed");
            limit = keys.quantity(teeth.key(), Dimension.VELOCITY, Range.of(5, 400), limit, teeth.source());
        }
        return new ShaftDesign(arrangement, path, gear, pumpRatio, limit, losses(keys, arrangement));
    }

    private static MechanicalLosses losses(ConceptKeys keys, ShaftDesign.Arrangement arrangement) {
        boolean geared = arrangement == ShaftDesign.Arrangement.GEARED;
        MechanicalLosses usual = MechanicalLosses.usual(geared);
        double mechanical = keys.quantity(
                "mechanical_efficiency",
                Dimension.RATIO,
                Range.of(0.5, 1),
                usual.mechanicalEfficiency(),
                ConceptKeys.COMMON);
        double gear = geared
                ? keys.quantity(
                        "gear_efficiency",
                        Dimension.RATIO,
                        Range.of(0.5, 1),
                        usual.gearEfficiency(),
                        ConceptKeys.COMMON)
                : 1;
        double accessories = keys.quantity(
                "accessory_power", Dimension.POWER, Range.of(0, 1e8), usual.accessoryPower(), "none unless stated");
        boolean sound = mechanical > 0 && gear > 0 && accessories >= 0;
        return sound ? new MechanicalLosses(mechanical, gear, accessories) : usual;
    }

    private static double usualRatio(CycleTraits traits) {
        return traits.burners().contains(Burner.TAP_OFF) ? 12 : traits.livesOnJacketHeat() ? 6 : 16;
    }

    private static GasPathDesign path(ConceptKeys root, CycleTraits traits) {
        double duct = traits.turbines()
                ? root.table("lines")
                        .quantity(
                                "hot_gas_loss",
                                Dimension.RATIO,
                                Range.of(0, 0.3),
                                0.02,
                                "of duct pressure, " + ConceptKeys.COMMON)
                : 0;
        double injector = traits.gasInjector()
                ? root.table("injector")
                        .quantity(
                                "gas_loss",
                                Dimension.RATIO,
                                Range.of(0, 0.5),
                                0.08,
                                "of chamber pressure, " + ConceptKeys.COMMON)
                : 0;
        double heated = 1;
        double bypass = 0;
        if (traits.livesOnJacketHeat()) {
            ConceptKeys keys = root.table("expander");
            heated = traits.heatedShare() < 1
                    ? keys.quantity(
                            "heated_share",
                            Dimension.RATIO,
                            Range.of(0.05, 1),
                            traits.heatedShare(),
                            ConceptKeys.COMMON)
                    : 1;
            bypass = traits.dumps()
                    ? 0
                    : keys.quantity(
                            "turbine_bypass",
                            Dimension.RATIO,
                            Range.of(0, 0.6),
                            0.05,
                            "margin for control, " + ConceptKeys.COMMON);
            boolean cooled = root.has("cooling")
                    && root.table("cooling").raw().text("coolant", "fuel").equals("fuel");
            if (!cooled) {
                root.problem(
                        "cooling.coolant",
                        "not fuel",
                        "this cycle lives on the heat that the fuel takes up in the jacket");
            }
        }
        return new GasPathDesign(
                sound(duct), sound(injector), exhaust(root, traits), heated > 0 ? heated : 1, sound(bypass));
    }

    /** A placeholder after a noted problem is no number; the concept is refused anyway. */
    private static double sound(double value) {
        return value >= 0 ? value : 0;
    }

    private static ExhaustDesign exhaust(ConceptKeys root, CycleTraits traits) {
        if (!traits.dumps()) {
            return new ExhaustDesign(1, 1, 0);
        }
        ConceptKeys keys = root.table("exhaust");
        double ratio = keys.quantity("area_ratio", Dimension.RATIO, Range.of(1, 60), 4, ConceptKeys.COMMON);
        double efficiency = keys.quantity("efficiency", Dimension.RATIO, Range.of(0.3, 1), 0.93, ConceptKeys.COMMON);
        double loss = keys.quantity(
                "duct_loss",
                Dimension.RATIO,
                Range.of(0, 0.8),
                0.15,
                "of turbine exit pressure, " + ConceptKeys.COMMON);
        boolean sound = ratio > 0 && efficiency > 0 && loss >= 0;
        return sound ? new ExhaustDesign(ratio, efficiency, loss) : new ExhaustDesign(1, 1, 0);
    }

    Map<Burner, BurnerDesign> burners() {
        Map<Burner, BurnerDesign> map = new EnumMap<>(Burner.class);
        burners.forEach((place, design) -> map.put(place, design.get()));
        return map;
    }

    Map<TurbinePlace, TurbineOption> turbines() {
        Map<TurbinePlace, TurbineOption> map = new EnumMap<>(TurbinePlace.class);
        turbines.forEach((place, design) -> map.put(place, design.get()));
        return map;
    }

    ShaftDesign shafts() {
        return shafts;
    }

    GasPathDesign path() {
        return path;
    }
}

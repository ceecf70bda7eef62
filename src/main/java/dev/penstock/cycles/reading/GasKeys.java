package dev.penstock.cycles.reading;

import dev.penstock.combustion.GasModel;
import dev.penstock.combustion.MeasuredGeneratorGas;
import dev.penstock.cooling.design.DumpInputs;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.BurnerDesign;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.ExhaustDesign;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.GasPathDesign;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbineOption;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.Input;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.turbomachinery.pump.LightLiquid;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads what a concept says about turbine gas: burners, turbines, shafts, ducts and exhaust, as far as its cycle has them. */
final class GasKeys {

    private static final String COOLEST = "the coolest gas in the fuel's file, hotter than usual";

    private final Map<Burner, Supplier<BurnerDesign>> burners = new EnumMap<>(Burner.class);
    private final Map<TurbinePlace, Supplier<TurbineOption>> turbines = new EnumMap<>(TurbinePlace.class);
    private final ShaftDesign shafts;
    private final GasPathDesign path;

    GasKeys(
            InputTable root,
            FluidLibrary fluids,
            CycleTraits traits,
            Propellant oxidizer,
            Propellant fuel,
            OptionalDouble exhaustInto) {
        shafts = shafts(root, traits, fuel);
        OptionalDouble temperatureLimit = traits.turbines()
                ? root.at(ConceptTables.LIMITS).number(EngineInputs.TURBINE_TEMPERATURE_LIMIT)
                : OptionalDouble.empty();
        for (TurbinePlace place : places(traits)) {
            InputTable keys = root.at(ConceptTables.turbine(place));
            OptionalDouble ratio = OptionalDouble.empty();
            if (!sharesPressures(traits, place)) {
                ratio = traits.closure() == CycleTraits.Closure.GAS_FLOW
                        ? OptionalDouble.of(keys.read(
                                GasInputs.PRESSURE_RATIO,
                                Usual.common(usualRatio(traits)).because("5 to 25 are usual")))
                        : TurbineKeys.openRatio(keys, traits.closure() == CycleTraits.Closure.RATIO);
            }
            OptionalDouble found = ratio;
            double bypass = keys.read(GasInputs.BYPASS);
            Supplier<TurbineDesign> design =
                    TurbineKeys.read(keys, oxygenRich(traits, place), traits.livesOnJacketHeat(), temperatureLimit);
            turbines.put(place, () -> new TurbineOption(found, bypass, design.get()));
        }
        for (Burner burner : traits.burners()) {
            readBurner(root, fluids, burner, traits, coolest(burner, oxidizer, fuel));
        }
        path = path(root, traits, exhaustInto);
    }

    /** What a table of fuel-rich gas begins with; a burner is not asked for colder gas by default. */
    private static OptionalDouble coolest(Burner burner, Propellant oxidizer, Propellant fuel) {
        return burner == Burner.GENERATOR || burner == Burner.FUEL_RICH
                ? MeasuredGeneratorGas.coolest(fuel, oxidizer)
                : OptionalDouble.empty();
    }

    private static Usual<Double> orCoolest(OptionalDouble coolest, Usual<Double> usual) {
        return coolest.isPresent() && coolest.getAsDouble() > usual.value()
                ? Usual.of(coolest.getAsDouble(), COOLEST, "")
                : usual;
    }

    private void readBurner(
            InputTable root, FluidLibrary fluids, Burner burner, CycleTraits traits, OptionalDouble coolest) {
        InputTable keys = root.at(ConceptTables.burner(burner));
        double usual = usualTemperature(burner);
        OptionalDouble temperature;
        if (burner == Burner.DECOMPOSITION) {
            temperature = OptionalDouble.empty();
        } else if (traits.closure() == CycleTraits.Closure.GAS_FLOW) {
            temperature = OptionalDouble.of(keys.read(
                    GasInputs.BURNER_TEMPERATURE,
                    orCoolest(coolest, Usual.of(usual, "850 to 1100 K are usual", "nasa-sp-8081"))));
        } else {
            TurbinePlace place = drivenBy(traits, burner);
            boolean ratioGiven = root.at(ConceptTables.turbine(place)).has(GasInputs.PRESSURE_RATIO);
            boolean given = keys.has(GasInputs.BURNER_TEMPERATURE);
            if (given && ratioGiven) {
                keys.problem(
                        GasInputs.BURNER_TEMPERATURE,
                        "given together with "
                                + ConceptTables.turbine(place)
                                        .of(GasInputs.PRESSURE_RATIO)
                                        .path(),
                        "write one of them; the other closes the power balance");
            }
            temperature = ratioGiven
                    ? keys.number(GasInputs.BURNER_TEMPERATURE, "closes the power balance")
                    : OptionalDouble.of(keys.read(
                            GasInputs.BURNER_TEMPERATURE,
                            orCoolest(coolest, Usual.common(usual).because("middle of the range in use"))));
        }
        double loss = keys.read(GasInputs.BURNER_INJECTOR_LOSS);
        Optional<BurnerDesign.Diluent> diluent = burner == Burner.GENERATOR && keys.has(ConceptTables.DILUENT.key())
                ? diluent(root.at(ConceptTables.DILUENT), fluids)
                : Optional.empty();
        GasModel stated = keys.read(GasInputs.GAS_MODEL);
        if (diluent.isPresent() && stated == GasModel.EMPIRICAL) {
            keys.problem(
                    GasInputs.GAS_MODEL,
                    "\"empirical\"",
                    "nothing was measured of gas with a third fluid in it; allowed is automatic, equilibrium or frozen");
        }
        GasModel model = diluent.isPresent() && stated == GasModel.AUTOMATIC ? GasModel.FROZEN : stated;
        OptionalDouble t = temperature;
        burners.put(burner, () -> new BurnerDesign(t, loss, model, diluent));
    }

    /** A third fluid; empty after a noted problem. */
    private static Optional<BurnerDesign.Diluent> diluent(InputTable keys, FluidLibrary fluids) {
        String id = keys.read(GasInputs.DILUENT_FLUID);
        double share = keys.read(GasInputs.DILUENT_SHARE);
        if (id.isEmpty()) {
            return Optional.empty();
        }
        try {
            Propellant fluid = fluids.propellant(id);
            double pressure =
                    keys.read(GasInputs.DILUENT_TANK_PRESSURE, Usual.of(fluid.storagePressure(), "", fluid.file()));
            return share > 0 && pressure > 0
                    ? Optional.of(new BurnerDesign.Diluent(fluid, share, pressure))
                    : Optional.empty();
        } catch (InvalidInput e) {
            e.problems().forEach(p -> keys.problem(GasInputs.DILUENT_FLUID, p.value(), p.allowed()));
            return Optional.empty();
        }
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

    private List<TurbinePlace> places(CycleTraits traits) {
        if (!traits.turbines()) {
            return List.of();
        }
        return shafts.oneTurbine() ? List.of(TurbinePlace.MAIN) : List.of(TurbinePlace.FUEL, TurbinePlace.OXIDIZER);
    }

    /** The oxidizer turbine takes the pressures that the fuel turbine leaves it, where one burner feeds both. */
    private static boolean sharesPressures(CycleTraits traits, TurbinePlace place) {
        return place == TurbinePlace.OXIDIZER && !traits.ownGas();
    }

    private static boolean oxygenRich(CycleTraits traits, TurbinePlace place) {
        boolean only = traits.burners().equals(List.of(Burner.OXIDIZER_RICH));
        boolean own = place == TurbinePlace.OXIDIZER
                && (traits.burners().contains(Burner.OXIDIZER_RICH)
                        || traits.heated().contains(Side.OXIDIZER));
        return only || own;
    }

    private TurbinePlace drivenBy(CycleTraits traits, Burner burner) {
        if (shafts.oneTurbine()) {
            return TurbinePlace.MAIN;
        }
        boolean own = traits.ownGas() && burner == Burner.OXIDIZER_RICH;
        return own ? TurbinePlace.OXIDIZER : TurbinePlace.FUEL;
    }

    private static ShaftDesign shafts(InputTable root, CycleTraits traits, Propellant fuel) {
        if (!traits.pumped()) {
            return new ShaftDesign(
                    ShaftDesign.Arrangement.DUAL,
                    ShaftDesign.GasPath.PARALLEL,
                    1,
                    OptionalDouble.empty(),
                    1,
                    1,
                    1,
                    GearTeeth.SPEED_LIMIT.standing().value(),
                    MechanicalLosses.usual(false));
        }
        InputTable keys = root.at(ConceptTables.SHAFTS);
        List<ShaftDesign.Arrangement> allowed = traits.arrangements();
        boolean two = LightLiquid.is(fuel.loadingDensity()) && allowed.contains(ShaftDesign.Arrangement.DUAL);
        ShaftDesign.Arrangement usual = two ? ShaftDesign.Arrangement.DUAL : allowed.get(0);
        ShaftDesign.Arrangement wanted = keys.read(
                GasInputs.ARRANGEMENT,
                Usual.common(usual).because("two shafts where the densities differ as with hydrogen"));
        if (!allowed.contains(wanted)) {
            List<String> names = new ArrayList<>();
            allowed.forEach(a -> names.add(a.name().toLowerCase(java.util.Locale.ROOT)));
            keys.problem(
                    GasInputs.ARRANGEMENT,
                    wanted.name().toLowerCase(java.util.Locale.ROOT),
                    "this cycle allows " + names);
        }
        ShaftDesign.Arrangement arrangement = allowed.contains(wanted) ? wanted : usual;
        boolean sharing = arrangement == ShaftDesign.Arrangement.DUAL && traits.turbines() && !traits.ownGas();
        ShaftDesign.GasPath path = sharing ? keys.read(GasInputs.GAS_PATH) : ShaftDesign.GasPath.PARALLEL;
        double gear = 1;
        OptionalDouble pumpRatio = OptionalDouble.empty();
        double limit = GearTeeth.SPEED_LIMIT.standing().value();
        if (arrangement == ShaftDesign.Arrangement.GEARED) {
            gear = keys.read(GasInputs.GEAR_RATIO);
            pumpRatio = keys.number(GasInputs.PUMP_SPEED_RATIO);
            limit = keys.read(GearTeeth.SPEED_LIMIT);
        }
        double share = keys.read(GasInputs.SPEED_SHARE);
        double kick = traits.kickPumps() ? keys.read(GasInputs.KICK_GEAR_RATIO) : 1;
        boolean geared = arrangement == ShaftDesign.Arrangement.GEARED;
        double teeth = geared || kick != 1 ? keys.read(MechanicalLosses.GEAR_EFFICIENCY) : 1;
        MechanicalLosses losses = new MechanicalLosses(
                keys.read(MechanicalLosses.MECHANICAL_EFFICIENCY),
                geared ? teeth : 1,
                keys.read(MechanicalLosses.ACCESSORY_POWER));
        return new ShaftDesign(arrangement, path, gear, pumpRatio, share, kick, kick == 1 ? 1 : teeth, limit, losses);
    }

    private static double usualRatio(CycleTraits traits) {
        return traits.burners().contains(Burner.TAP_OFF) ? 12 : traits.livesOnJacketHeat() ? 6 : 16;
    }

    private static GasPathDesign path(InputTable root, CycleTraits traits, OptionalDouble into) {
        double duct = traits.turbines() ? root.at(ConceptTables.LINES).read(GasInputs.HOT_GAS_LOSS) : 0;
        double injector = traits.gasInjector() ? root.at(ConceptTables.INJECTOR).read(GasInputs.GAS_INJECTOR_LOSS) : 0;
        double heated = 1;
        double bypass = 0;
        if (traits.livesOnJacketHeat()) {
            InputTable keys = root.at(ConceptTables.EXPANDER);
            heated = traits.heatedShare() < 1
                    ? keys.read(GasInputs.HEATED_SHARE, Usual.common(traits.heatedShare()))
                    : 1;
            bypass = traits.dumps() ? 0 : keys.read(GasInputs.TURBINE_BYPASS);
            traits.heated().forEach(side -> needsJacket(root, side));
        }
        return new GasPathDesign(
                sound(duct), sound(injector), exhaust(root, traits, into), heated > 0 ? heated : 1, sound(bypass));
    }

    /** What cools jackets and flows on behind them. */
    static List<String> coolants(InputTable root) {
        List<String> coolants = new ArrayList<>();
        if (root.has(JacketInputs.GROUP)) {
            InputTable keys = root.table(JacketInputs.GROUP);
            coolants.add(keys.text(
                    ConceptInputs.COOLANT.key(),
                    ConceptInputs.COOLANT.standing().value()));
            keys.tables(ConceptInputs.CIRCUITS).stream()
                    .filter(circuit -> !circuit.has(DumpInputs.GROUP))
                    .forEach(circuit -> coolants.add(circuit.text(ConceptInputs.CIRCUIT_COOLANT.key(), "")));
        }
        return coolants;
    }

    private static void needsJacket(InputTable root, Side side) {
        List<String> coolants = coolants(root);
        if (!coolants.contains(side.key())) {
            boolean first = side == Side.FUEL;
            root.problem(
                    first
                            ? ConceptTables.COOLING.of(ConceptInputs.COOLANT).path()
                            : ConceptTables.COOLING.in(ConceptInputs.CIRCUITS).path(),
                    "no circuit of the " + side.key(),
                    "this cycle lives on the heat that the " + side.key() + " takes up in a jacket: write coolant = \""
                            + side.key() + "\" in " + (first ? "[cooling]" : "a table [[cooling.circuits]]")
                            + " or in another circuit");
        }
    }

    /** A placeholder after a noted problem is no number; the concept is refused anyway. */
    private static double sound(double value) {
        return value >= 0 ? value : 0;
    }

    /** Where turbine gas is led into the main nozzle; empty where it is not, no number after a noted problem. */
    static OptionalDouble exhaustInto(InputTable root, CycleTraits traits) {
        if (!traits.dumps()) {
            return OptionalDouble.empty();
        }
        InputTable keys = root.at(ConceptTables.EXHAUST);
        OptionalDouble into = keys.number(GasInputs.EXHAUST_INTO);
        return keys.has(GasInputs.EXHAUST_INTO) ? OptionalDouble.of(into.orElse(Double.NaN)) : into;
    }

    private static ExhaustDesign exhaust(InputTable root, CycleTraits traits, OptionalDouble into) {
        if (!traits.dumps()) {
            return new ExhaustDesign(OptionalDouble.empty(), 1, 1, 0);
        }
        InputTable keys = root.at(ConceptTables.EXHAUST);
        if (keys.has(GasInputs.EXHAUST_INTO) && keys.has(GasInputs.EXHAUST_AREA_RATIO)) {
            keys.problem(
                    GasInputs.EXHAUST_AREA_RATIO,
                    "given together with into_area_ratio",
                    "the gas leaves through a nozzle of its own or through the main one; write one of them");
        }
        double ratio = keys.read(GasInputs.EXHAUST_AREA_RATIO);
        double efficiency = keys.read(GasInputs.EXHAUST_EFFICIENCY);
        double loss = keys.read(GasInputs.DUCT_LOSS);
        double cant = keys.read(GasInputs.EXHAUST_CANT);
        double swivel = keys.read(GasInputs.EXHAUST_SWIVEL);
        for (Input<Double> angle : List.of(GasInputs.EXHAUST_CANT, GasInputs.EXHAUST_SWIVEL)) {
            if (into.isPresent() && keys.has(angle)) {
                keys.problem(
                        angle,
                        "given together with into_area_ratio",
                        "gas that leaves through the main nozzle has no nozzle of its own to point or swivel; write one of them");
            }
        }
        boolean sound = ratio > 0 && efficiency > 0 && loss >= 0 && cant >= 0 && swivel >= 0;
        return sound
                ? new ExhaustDesign(
                        into.stream().filter(x -> x >= 1).findFirst(), ratio, efficiency, loss, cant, swivel)
                : new ExhaustDesign(OptionalDouble.empty(), 1, 1, 0);
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

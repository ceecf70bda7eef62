package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.OptionReader;
import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.engine.CombustView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Burns two propellants in chemical equilibrium and expands the gas. */
@Command(
        name = "combust",
        description = "Burns two propellants at a pressure in chemical equilibrium and expands the gas through a nozzle"
                + " without losses: temperature, composition, characteristic velocity, specific impulse.")
final class CombustCommand extends BaseCommand {

    private static final Range PRESSURES = Range.of(100, 2e8);
    private static final Range AREA_RATIOS = Range.of(1, 5000);

    @Option(names = "--oxidizer", paramLabel = "FLUID", description = "oxidizer, for example oxygen")
    private Optional<String> oxidizer = Optional.empty();

    @Option(names = "--fuel", paramLabel = "FLUID", description = "fuel, for example methane")
    private Optional<String> fuel = Optional.empty();

    @Option(names = "--mixture-ratio", paramLabel = "OF", description = "oxidizer over fuel by mass")
    private Optional<String> mixtureRatio = Optional.empty();

    @Option(names = "--pressure", paramLabel = "P", description = "chamber pressure, absolute, for example 10MPa")
    private Optional<String> pressure = Optional.empty();

    @Option(
            names = "--area-ratio",
            split = ",",
            paramLabel = "E",
            description = "exit over throat area; several as 20,80")
    private List<String> areaRatios = new ArrayList<>();

    @Option(
            names = "--exit-pressure",
            split = ",",
            paramLabel = "P",
            description = "pressure to expand to, for example 101325Pa; several as 1bar,0.1bar")
    private List<String> exitPressures = new ArrayList<>();

    @Option(names = "--frozen", description = "keep the chamber's composition in the expansion")
    private boolean frozen;

    @Option(
            names = "--oxidizer-temperature",
            paramLabel = "T",
            description = "temperature of the oxidizer as injected; its storage temperature otherwise")
    private Optional<String> oxidizerTemperature = Optional.empty();

    @Option(
            names = "--fuel-temperature",
            paramLabel = "T",
            description = "temperature of the fuel as injected; its storage temperature otherwise")
    private Optional<String> fuelTemperature = Optional.empty();

    CombustCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        OptionReader reader = new OptionReader();
        Optional<Propellant> oxygen = propellant(reader, "--oxidizer", oxidizer, Propellant.Role.OXIDIZER);
        Optional<Propellant> burnt = propellant(reader, "--fuel", fuel, Propellant.Role.FUEL);
        double ratio = reader.quantity("--mixture-ratio", mixtureRatio, Dimension.RATIO, Range.of(1e-3, 1e3));
        double chamberPressure = reader.quantity("--pressure", pressure, Dimension.PRESSURE, PRESSURES);
        List<Double> ratios = reader.list("--area-ratio", areaRatios, Dimension.RATIO, AREA_RATIOS);
        List<Double> exits = reader.list("--exit-pressure", exitPressures, Dimension.PRESSURE, Range.of(1e-3, 2e8));
        Optional<FluidState> oxidizerState = injected(reader, "--oxidizer-temperature", oxidizerTemperature, oxygen);
        Optional<FluidState> fuelState = injected(reader, "--fuel-temperature", fuelTemperature, burnt);
        reader.finish();

        Reactants reactants = Reactants.of(
                oxygen.orElseThrow(),
                oxygen.get().absoluteEnthalpy(oxidizerState.orElseThrow().enthalpy()),
                burnt.orElseThrow(),
                burnt.get().absoluteEnthalpy(fuelState.orElseThrow().enthalpy()),
                ratio);
        ExpansionMode mode = frozen ? ExpansionMode.FROZEN : ExpansionMode.SHIFTING;
        Expansion expansion =
                NozzleFlow.of(SpeciesLibrary.open(session.home()), reactants).expand(reactants, chamberPressure, mode);
        List<IdealExpansion> expansions = new ArrayList<>();
        ratios.forEach(e -> expansions.add(expansion.toAreaRatio(e)));
        for (int i = 0; i < exits.size(); i++) {
            expansions.add(toPressure(expansion, exits.get(i), exitPressures.get(i)));
        }
        CombustView view = new CombustView(oxidizerState.get(), fuelState.get(), ratio, mode, expansion, expansions);
        return answer(view::json, view::text);
    }

    private Optional<Propellant> propellant(
            OptionReader reader, String option, Optional<String> id, Propellant.Role role) {
        String word = role == Propellant.Role.OXIDIZER ? "an oxidizer" : "a fuel";
        Optional<Propellant> found = reader.named(option, id, "write the id of " + word, session.fluids()::propellant);
        if (found.isPresent() && !found.get().roles().contains(role)) {
            List<String> fitting = session.fluids().ids().stream()
                    .filter(other -> session.fluids().propellant(other).roles().contains(role))
                    .toList();
            reader.problem(option, id.orElseThrow(), "allowed is " + word + ": " + String.join(", ", fitting));
        }
        return found;
    }

    private static Optional<FluidState> injected(
            OptionReader reader, String option, Optional<String> text, Optional<Propellant> propellant) {
        FluidRange range = propellant.map(p -> p.fluid().range()).orElse(new FluidRange(1, 1e4, 1e9));
        Range allowed = Range.of(range.minimumTemperature(), range.maximumTemperature());
        OptionalDouble temperature = reader.optional(option, text, Dimension.TEMPERATURE, allowed);
        return propellant.map(p -> temperature.isEmpty()
                ? p.storageState()
                : p.fluid().atPressureTemperature(p.storagePressure(), temperature.getAsDouble()));
    }

    private static IdealExpansion toPressure(Expansion expansion, double exitPressure, String text) {
        try {
            return expansion.toExitPressure(exitPressure);
        } catch (OutsideValidity e) {
            throw new InvalidInput("", "--exit-pressure", text, "the nozzle cannot reach it (" + e.getMessage() + ")");
        }
    }
}

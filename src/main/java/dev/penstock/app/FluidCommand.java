package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.OptionReader;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.engine.FluidView;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows a fluid, or its state at a pressure and temperature. */
@Command(
        name = "fluid",
        description = {
            "Real-fluid state of a propellant, coolant or pressurant at a pressure and temperature.",
            "Without a state it shows what the fluid's file says; without a fluid it lists all fluids."
        })
final class FluidCommand extends BaseCommand {

    @Parameters(arity = "0..1", paramLabel = "FLUID", description = "id of the fluid, for example methane")
    private Optional<String> fluid = Optional.empty();

    @Option(names = "--pressure", paramLabel = "P", description = "absolute pressure with its unit, for example 10MPa")
    private Optional<String> pressure = Optional.empty();

    @Option(names = "--temperature", paramLabel = "T", description = "temperature with its unit, for example 110K")
    private Optional<String> temperature = Optional.empty();

    FluidCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        if (fluid.isEmpty()) {
            List<Propellant> all = session.fluids().ids().stream()
                    .map(session.fluids()::propellant)
                    .toList();
            return answer(() -> FluidView.listJson(all), () -> FluidView.listText(all));
        }
        OptionReader reader = new OptionReader();
        Optional<Propellant> found =
                reader.named("FLUID", fluid, "write the id of a fluid", session.fluids()::propellant);
        boolean card = pressure.isEmpty() && temperature.isEmpty();
        FluidRange range = found.map(p -> p.fluid().range()).orElse(new FluidRange(0, 1e5, 1e10));
        double p = card
                ? 0
                : reader.quantity(
                        "--pressure",
                        pressure,
                        Dimension.PRESSURE,
                        new Range(Double.MIN_VALUE, range.maximumPressure()));
        double t = card
                ? 0
                : reader.quantity(
                        "--temperature",
                        temperature,
                        Dimension.TEMPERATURE,
                        Range.of(range.minimumTemperature(), range.maximumTemperature()));
        reader.finish();
        Propellant propellant = found.orElseThrow();
        if (card) {
            return answer(() -> FluidView.cardJson(propellant), () -> FluidView.cardText(propellant));
        }
        FluidState state = propellant.fluid().atPressureTemperature(p, t);
        return answer(() -> FluidView.stateJson(propellant, state), () -> FluidView.stateText(propellant, state));
    }
}

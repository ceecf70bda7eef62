package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OptionReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.engine.StartView;
import dev.penstock.reports.engine.TankHeadView;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.StartRuns;
import dev.penstock.study.TankHeadRuns;
import dev.penstock.turbomachinery.start.BottleStart;
import dev.penstock.turbomachinery.start.TankHeadRun;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sizes the bottle that spins an engine's turbopumps up. */
@Command(
        name = "start",
        description = "Balances a concept and spins its turbopumps up on bottled gas: gas per start, bottle volume and"
                + " mass, or the number of starts that a given bottle holds; or on the pressure in its own tanks.")
final class StartCommand extends BaseCommand {

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Option(names = "--gas", description = "fluid in the bottle; default ${DEFAULT-VALUE}")
    private String gas = UsualFluids.pressurant();

    @Option(
            names = "--bottle-pressure",
            paramLabel = "P",
            defaultValue = "30MPa",
            description = "of the full bottle; default ${DEFAULT-VALUE}")
    private String bottlePressure;

    @Option(
            names = "--bottle-temperature",
            paramLabel = "T",
            defaultValue = "290K",
            description = "of the full and of the re-warmed bottle; default ${DEFAULT-VALUE}")
    private String bottleTemperature;

    @Option(
            names = "--supply-pressure",
            paramLabel = "P",
            defaultValue = "3MPa",
            description = "regulated, at the turbine inlet; default ${DEFAULT-VALUE}")
    private String supplyPressure;

    @Option(
            names = "--speed",
            paramLabel = "FRACTION",
            defaultValue = "0.4",
            description = "speed to reach over design speed; default ${DEFAULT-VALUE}")
    private String speed;

    @Option(
            names = "--rise-time",
            paramLabel = "TIME",
            defaultValue = "1s",
            description = "time in which that speed is reached; default ${DEFAULT-VALUE}")
    private String riseTime;

    @Option(
            names = "--starts",
            paramLabel = "N",
            defaultValue = "1",
            description = "starts that the bottle must hold; default ${DEFAULT-VALUE}")
    private String starts;

    @Option(
            names = "--bottle-volume",
            paramLabel = "V",
            description = "count the starts of such a bottle instead of sizing one")
    private Optional<String> volume = Optional.empty();

    @Option(
            names = "--tank-head",
            description =
                    "start on the pressure in the engine's own tanks instead: expanders on the warmth of their jacket,"
                            + " gas generators lit at tank pressure")
    private boolean tankHead;

    @Option(
            names = "--soak",
            paramLabel = "T",
            defaultValue = "290K",
            description = "metal of the jacket before a start on tank head; default ${DEFAULT-VALUE}")
    private String soak;

    @Mixin
    private ChangeOptions changes;

    StartCommand(Session session) {
        super(session);
    }

    @Override
    protected String mainRows() {
        return tankHead ? super.mainRows() : "shafts";
    }

    @Override
    public Integer call() {
        OptionReader options = new OptionReader();
        double full = value(options, "--bottle-pressure", bottlePressure, Dimension.PRESSURE, Range.of(1e5, 1e8));
        double temperature =
                value(options, "--bottle-temperature", bottleTemperature, Dimension.TEMPERATURE, Range.of(100, 500));
        double supply = value(options, "--supply-pressure", supplyPressure, Dimension.PRESSURE, Range.of(1.5e5, 1e8));
        double fraction = value(options, "--speed", speed, Dimension.RATIO, Range.of(0.01, 1));
        double soaked = value(options, "--soak", soak, Dimension.TEMPERATURE, Range.of(60, 600));
        double rise = value(options, "--rise-time", riseTime, Dimension.TIME, Range.of(0.01, 100));
        OptionalDouble given = options.optional("--bottle-volume", volume, Dimension.VOLUME, Range.of(1e-6, 1000));
        if (!starts.matches("[1-9]\\d{0,2}")) {
            options.problem("--starts", starts, "allowed is a whole number from 1 to 999");
        }
        if (supply > full) {
            options.problem("--supply-pressure", supplyPressure, "allowed is at most the bottle pressure");
        }
        options.finish();
        if (tankHead) {
            return tankHead(balanced(), fraction, soaked);
        }
        Propellant medium = session.fluids().propellant(gas);
        if (!medium.roles().contains(Propellant.Role.PRESSURANT)) {
            throw new InvalidInput("", "--gas", gas, "allowed is a pressurant such as helium or nitrogen");
        }
        EngineBalance balance = balanced();
        BottleStart bottle = new BottleStart(medium.fluid(), full, temperature, supply, Constants.STANDARD_ATMOSPHERE);
        List<StartRuns.ShaftStart> result =
                StartRuns.of(balance, bottle, fraction, rise, Integer.parseInt(starts), given);
        String name = balance.concept().name();
        return answer(() -> StartView.json(name, result), () -> StartView.text(name, result));
    }

    private EngineBalance balanced() {
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        return runs.study().balance(runs.read(found.file(), found.changes()));
    }

    private int tankHead(EngineBalance balance, double fraction, double soaked) {
        TankHeadRun run = TankHeadRuns.of(balance, fraction, soaked);
        String name = balance.concept().name();
        answer(() -> TankHeadView.json(name, run), () -> TankHeadView.text(name, run));
        return run.reached() ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    private static double value(OptionReader options, String name, String text, Dimension dimension, Range allowed) {
        return options.quantity(name, Optional.of(text), dimension, allowed);
    }
}

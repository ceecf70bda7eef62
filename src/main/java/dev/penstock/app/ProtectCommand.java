package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OptionReader;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cooling.protection.Ablator;
import dev.penstock.cooling.protection.HeatSinkWall;
import dev.penstock.cooling.protection.ProtectionStudy;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.engine.ProtectionView;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.StageFall;
import dev.penstock.vehicle.stage.StageSizing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares ways to protect a wall that has no jacket. */
@Command(
        name = "protect",
        description =
                "Compares heat sinks, ablators and transpiration for a wall without a jacket: a chamber that fires in"
                        + " pulses (name a concept; its hottest jacket station is the load), the base of a returning stage (name"
                        + " a vehicle and --stage; it is flown up and down), or any wall (give --flux and --gas-temperature).")
final class ProtectCommand extends BaseCommand {

    private static final double POROUS_SHELL = 8;

    @Parameters(
            paramLabel = "CASE",
            arity = "0..1",
            description = "concept with a jacket, or vehicle with --stage: file, or the name of one in cycles/")
    private Optional<String> file = Optional.empty();

    @Option(
            names = "--time",
            paramLabel = "TIME",
            defaultValue = "5s",
            description = "under load; default ${DEFAULT-VALUE}")
    private String time;

    @Option(names = "--flux", paramLabel = "Q", description = "heat flux to the cold wall, instead of a concept's")
    private Optional<String> flux = Optional.empty();

    @Option(
            names = "--stage",
            paramLabel = "N",
            description = "of the vehicle whose base is protected on its way down, 1 the lowest")
    private Optional<String> stage = Optional.empty();

    @Option(
            names = "--gas-temperature",
            paramLabel = "T",
            defaultValue = "1500K",
            description = "adiabatic wall temperature that goes with --flux; default ${DEFAULT-VALUE}")
    private String gasTemperature;

    @Option(
            names = "--start-temperature",
            paramLabel = "T",
            defaultValue = "300K",
            description = "of the wall; default ${DEFAULT-VALUE}")
    private String startTemperature;

    @Option(
            names = "--coolant",
            paramLabel = "FLUID",
            description = "that seeps through a porous wall; default ${DEFAULT-VALUE}")
    private String coolant = UsualFluids.transpirant();

    @Option(
            names = "--thickness",
            paramLabel = "L",
            description = "of a plain wall: also follow its temperature through the pulses")
    private Optional<String> thickness = Optional.empty();

    @Option(
            names = "--wall",
            paramLabel = "MATERIAL",
            defaultValue = "copper-zirconium",
            description = "of that wall; default ${DEFAULT-VALUE}")
    private String wall;

    @Option(
            names = "--pulses",
            paramLabel = "N",
            defaultValue = "1",
            description = "of --time each; default ${DEFAULT-VALUE}")
    private String pulses;

    @Option(
            names = "--pause",
            paramLabel = "TIME",
            defaultValue = "0s",
            description = "after each; default ${DEFAULT-VALUE}")
    private String pause;

    @Mixin
    private ChangeOptions changes;

    ProtectCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        OptionReader options = new OptionReader();
        double seconds = options.quantity("--time", Optional.of(time), Dimension.TIME, Range.of(0.01, 1e4));
        double hot = options.quantity(
                "--gas-temperature", Optional.of(gasTemperature), Dimension.TEMPERATURE, Range.of(500, 5000));
        double start = options.quantity(
                "--start-temperature", Optional.of(startTemperature), Dimension.TEMPERATURE, Range.of(50, 450));
        var given = options.optional("--flux", flux, Dimension.HEAT_FLUX, Range.of(1e3, 1e9));
        var plain = options.optional("--thickness", thickness, Dimension.LENGTH, Range.of(1e-4, 1));
        double rest = options.quantity("--pause", Optional.of(pause), Dimension.TIME, Range.of(0, 1e5));
        if (!pulses.matches("[1-9]\\d{0,3}")) {
            options.problem("--pulses", pulses, "allowed is a whole number from 1 to 9999");
        }
        if (file.isPresent() == flux.isPresent()) {
            options.problem("CASE", file.orElse("missing"), "give either a concept, a vehicle with --stage, or --flux");
        }
        if (stage.isPresent() && !stage.get().matches("[1-6]")) {
            options.problem("--stage", stage.get(), "allowed is a whole number from 1 to 6");
        }
        if (stage.isPresent() && flux.isPresent()) {
            options.problem("--stage", stage.get(), "it names the load, so leave --flux out");
        }
        options.finish();
        if (stage.isPresent()) {
            return ofStage(file.orElseThrow(), Integer.parseInt(stage.get()));
        }
        ProtectionStudy.Load load = given.isPresent()
                ? ProtectionStudy.Load.ofFlux(given.getAsDouble(), hot, seconds, start)
                : hottest(file.orElseThrow(), seconds, start);
        List<ProtectionStudy.Option> ways = ways(load, session.fluids().propellant(coolant));
        Optional<HeatSinkWall.Outcome> history = plain.isEmpty()
                ? Optional.empty()
                : Optional.of(HeatSinkWall.fire(
                        WallLibrary.open(session.home()).material(wall),
                        plain.getAsDouble(),
                        start,
                        new HeatSinkWall.Firing(
                                load.gasCoefficient(),
                                load.adiabaticWallTemperature(),
                                seconds,
                                rest,
                                Integer.parseInt(pulses))));
        ProtectionView view = new ProtectionView(load, ways, history, Optional.empty());
        return answer(view::json, view::text);
    }

    private List<ProtectionStudy.Option> ways(ProtectionStudy.Load load, Propellant coolant) {
        ProtectionStudy study = new ProtectionStudy(load);
        WallLibrary walls = WallLibrary.open(session.home());
        List<ProtectionStudy.Option> ways = new ArrayList<>(study.compare(
                walls.ids().stream().map(walls::material).toList(),
                List.of(Ablator.SILICA_PHENOLIC, Ablator.CARBON_PHENOLIC, Ablator.CORK)));
        ways.add(study.transpired(coolant, 5e5, 400, POROUS_SHELL));
        return ways;
    }

    /** The vehicle is flown, and the stage comes down; its own fuel seeps through the porous wall. */
    private int ofStage(String name, int number) {
        CaseFiles.Case found = CaseFiles.one(session, name, changes.map());
        FlownSizing flown;
        try (ConsoleProgress flying = ConsoleProgress.of(session, "flying", 100, false)) {
            flown = new VehicleRuns(session.runs()).fly(found.file(), found.changes(), Progress.NONE, flying);
        }
        List<StageSizing> stages = flown.sizing().stages();
        if (number > stages.size()) {
            throw new InvalidInput(
                    name, "--stage", Integer.toString(number), "the vehicle has " + stages.size() + " stages");
        }
        StageFall fall = StageFall.of(flown, number - 1, new StandardAtmosphere1976());
        List<ProtectionStudy.Option> ways =
                ways(fall.load(), stages.get(number - 1).engine().fuel().propellant());
        ProtectionView view = new ProtectionView(fall.load(), ways, Optional.empty(), Optional.of(fall));
        return answer(view::json, view::text);
    }

    private ProtectionStudy.Load hottest(String name, double seconds, double start) {
        CaseFiles.Case found = CaseFiles.one(session, name, changes.map());
        EngineRuns runs = session.runs();
        EngineBalance balance = runs.study().balance(runs.read(found.file(), found.changes()));
        JacketStation station = balance.cooling().stream()
                .flatMap(jacket -> jacket.stations().stream())
                .max(Comparator.comparingDouble(JacketStation::gasSideCoefficient))
                .orElseThrow(() -> new InvalidInput(
                        name,
                        "cooling",
                        "none",
                        "the load is read from a jacket; give the concept one, or use --flux"));
        return new ProtectionStudy.Load(
                station.gasSideCoefficient(), station.adiabaticWallTemperature(), seconds, start);
    }
}

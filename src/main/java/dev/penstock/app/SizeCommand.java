package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.FiguresOption;
import dev.penstock.app.options.OptionReader;
import dev.penstock.app.options.ReportOption;
import dev.penstock.app.options.SamplesOption;
import dev.penstock.app.options.TrajectoryOption;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.slide.EngineSlides;
import dev.penstock.reports.slide.SlideFiles;
import dev.penstock.reports.vehicle.CostView;
import dev.penstock.reports.vehicle.FlightView;
import dev.penstock.reports.vehicle.HowFarView;
import dev.penstock.reports.vehicle.PayloadView;
import dev.penstock.reports.vehicle.ReuseView;
import dev.penstock.reports.vehicle.SpreadView;
import dev.penstock.reports.vehicle.VehicleView;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.study.sample.VehicleUncertainty;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.HowFar;
import dev.penstock.vehicle.PayloadPartials;
import dev.penstock.vehicle.PayloadToOrbit;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.VehicleSpread;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.cost.CostTerms;
import dev.penstock.vehicle.cost.CostTrade;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ReuseTrade;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sizes a vehicle with the engines that it names. */
@Command(
        name = "size",
        description =
                "Balances the engines of a vehicle and sizes it: start mass from payload or the reverse, propellant,"
                        + " tanks, dry mass, stage by stage; on request on the losses of its own flight to orbit.")
final class SizeCommand extends BaseCommand {

    private static final String ORBITS = "orbits";
    private static final Range ALTITUDES = Range.of(100e3, 1e9);
    private static final Range ANGLES = Range.of(0, Math.PI);

    @Parameters(
            paramLabel = "CASE",
            description = "vehicle file, or concept file with a table [vehicle], or the name of one in cycles/")
    private String file;

    @Option(
            names = "--fly",
            description = "fly it to its orbit with the best steering and size it on the losses of that flight")
    private boolean fly;

    @Option(
            names = "--reuse",
            description =
                    "instead compare its first stage lost, landed downrange, and landed where it started; with --fly"
                            + " each is flown, and keeps what its way back takes")
    private boolean reuse;

    @Mixin
    private CostOption cost;

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private ReportOption report;

    @Mixin
    private FiguresOption figures;

    @Mixin
    private TrajectoryOption trajectory;

    @Option(
            names = "--altitudes",
            paramLabel = "FROM..TO:COUNT",
            description =
                    "with --fly: also what the vehicle carries, as it is, to orbits of these altitudes, for example"
                            + " 200..1200km:6")
    private Optional<String> altitudes = Optional.empty();

    @Option(
            names = "--inclinations",
            paramLabel = "FROM..TO:COUNT",
            description = "with --fly: the same for these inclinations, for example 28..98deg:3")
    private Optional<String> inclinations = Optional.empty();

    @Mixin
    private SamplesOption samples;

    SizeCommand(Session session) {
        super(session);
    }

    @Override
    protected String mainRows() {
        return cost.asked() ? "cost.rows" : reuse ? "reuse" : fly ? "flight.points" : "stages";
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of(ORBITS, FlightView.RETURN, HowFarView.SHOWN, HowFarView.SHOWN_STAGES));
    }

    @Override
    public Integer call() {
        trajectory.check(fly && oneVehicle());
        int count = samples.count();
        OptionReader reader = new OptionReader();
        if (!oneVehicle()) {
            String alone = "it cannot go with --reuse or --cost";
            if (count > 0) {
                reader.problem("--uncertainty", Integer.toString(count), alone);
            }
            figures.folder().ifPresent(folder -> reader.problem("--figures", folder.toString(), alone));
        }
        if (reuse && !cost.asked()) {
            report.place()
                    .ifPresent(place -> reader.problem("--report", place.toString(), "it cannot go with --reuse"));
        }
        Optional<List<Double>> heights = series(reader, "--altitudes", altitudes, Dimension.LENGTH, ALTITUDES);
        Optional<List<Double>> angles = series(reader, "--inclinations", inclinations, Dimension.ANGLE, ANGLES);
        CostTerms terms = cost.terms(reader);
        reader.finish();
        VehicleRuns runs = new VehicleRuns(session.runs());
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        if (cost.asked()) {
            List<ReuseTrade.Row> ways = reused(runs, found);
            CostTrade trade = CostTrade.of(ways, terms);
            List<Path> page = trade.rows().isEmpty() ? List.of() : report.write(() -> costs(ways, found, trade));
            answer(() -> CostView.json(trade), () -> CostView.text(trade) + written(page));
            return trade.rows().isEmpty() ? ExitCode.NO_SOLUTION : ExitCode.OK;
        }
        if (reuse) {
            List<ReuseTrade.Row> rows = reused(runs, found);
            answer(() -> ReuseView.json(rows), () -> ReuseView.text(rows));
            return rows.stream().anyMatch(r -> r.sizing().isPresent()) ? ExitCode.OK : ExitCode.NO_SOLUTION;
        }
        try {
            return fly ? flown(runs, found, heights, angles, count) : sized(runs, found, count);
        } catch (LimitReached none) {
            if (!none.limit().equals(VehicleSizer.CLOSURE)) {
                throw none;
            }
            HowFar far = runs.howFar(none, found.file(), found.changes(), fly);
            answer(() -> HowFarView.json(far), () -> HowFarView.text(far));
            return ExitCode.NO_SOLUTION;
        }
    }

    private Map<String, String> costs(List<ReuseTrade.Row> ways, CaseFiles.Case found, CostTrade trade) {
        VehicleSizing sizing =
                ways.stream().flatMap(way -> way.sizing().stream()).findFirst().orElseThrow();
        return Map.of(
                "cost-" + ConceptReports.slug(sizing.plan().name()) + ".html",
                record(found).addTo(CostView.html(sizing, trade, new ConceptReports(session).software())));
    }

    /** Whether the answer is one vehicle and no comparison. */
    private boolean oneVehicle() {
        return !reuse && !cost.asked();
    }

    private List<ReuseTrade.Row> reused(VehicleRuns runs, CaseFiles.Case found) {
        if (!fly) {
            return runs.reuse(found.file(), found.changes(), Progress.NONE);
        }
        try (ConsoleProgress flying = ConsoleProgress.of(session, "flying", 100, false)) {
            return runs.reuseFlown(found.file(), found.changes(), Progress.NONE, flying);
        }
    }

    private int sized(VehicleRuns runs, CaseFiles.Case found, int count) {
        VehicleSizing sizing = runs.size(found.file(), found.changes(), Progress.NONE);
        Optional<VehicleSpread> spread = spread(runs, found, sizing, count);
        List<Path> page = page(found, sizing, () -> VehicleView.html(sizing, new ConceptReports(session).software()));
        return answer(
                () -> with(spread, VehicleView.json(sizing)),
                () -> VehicleView.text(sizing) + spread.map(SpreadView::text).orElse("") + written(page));
    }

    private Optional<VehicleSpread> spread(VehicleRuns runs, CaseFiles.Case found, VehicleSizing sizing, int count) {
        if (count == 0) {
            return Optional.empty();
        }
        try (ConsoleProgress progress = ConsoleProgress.of(session, "sampling", count, false)) {
            return Optional.of(new VehicleUncertainty(
                            session.runs(), sizing, fly, runs.concepts(found.file(), found.changes(), sizing.plan()))
                    .run(count, progress));
        }
    }

    private static Map<String, Object> with(Optional<VehicleSpread> spread, Map<String, Object> document) {
        Map<String, Object> map = new LinkedHashMap<>(document);
        spread.ifPresent(s -> map.put("uncertainty", SpreadView.json(s)));
        return map;
    }

    private Optional<List<Double>> series(
            OptionReader reader, String option, Optional<String> text, Dimension dimension, Range allowed) {
        if (text.isPresent() && !(fly && oneVehicle())) {
            reader.problem(option, text.get(), "it needs --fly");
        }
        return text.map(t -> reader.series(option, t, dimension, allowed, "write a range such as 200..1200km:6"))
                .map(values -> values.stream().sorted().distinct().toList());
    }

    private List<PayloadToOrbit> orbits(
            VehicleRuns runs,
            CaseFiles.Case found,
            FlownSizing flown,
            Optional<List<Double>> heights,
            Optional<List<Double>> angles) {
        if (heights.isEmpty() && angles.isEmpty()) {
            return List.of();
        }
        AscentMission mission = flown.ascent().mission();
        if (!(mission.target() instanceof Target.Orbit round) || round.perigee() < round.apogee()) {
            throw new InvalidInput(
                    found.file().toString(),
                    heights.isPresent() ? "--altitudes" : "--inclinations",
                    heights.or(() -> angles).orElseThrow().toString(),
                    "other orbits are found for a vehicle that goes to a circular orbit, by mission.orbit_altitude");
        }
        List<Double> to = heights.orElse(List.of(round.apogee()));
        List<Double> at = angles.orElse(List.of(mission.inclination()));
        try (ConsoleProgress flying = ConsoleProgress.of(session, "orbits", to.size() * at.size(), false)) {
            return runs.orbits(flown, found.file(), found.changes(), to, at, flying);
        }
    }

    private static Map<String, Object> document(FlownSizing flown, List<PayloadToOrbit> orbits) {
        Map<String, Object> map = FlightView.json(flown);
        map.put("payload_partials", PayloadView.json(partials(flown)));
        if (!orbits.isEmpty()) {
            map.put(ORBITS, PayloadView.json(orbits));
        }
        return map;
    }

    private static PayloadPartials partials(FlownSizing flown) {
        return PayloadPartials.of(flown, new StandardAtmosphere1976());
    }

    private int flown(
            VehicleRuns runs,
            CaseFiles.Case found,
            Optional<List<Double>> heights,
            Optional<List<Double>> angles,
            int count) {
        FlownSizing flown;
        try (ConsoleProgress flying = ConsoleProgress.of(session, "flying", 100, false)) {
            flown = runs.fly(found.file(), found.changes(), Progress.NONE, flying);
        }
        List<PayloadToOrbit> orbits = orbits(runs, found, flown, heights, angles);
        Optional<VehicleSpread> spread = spread(runs, found, flown.sizing(), count);
        List<Path> page = page(
                found, flown.sizing(), () -> VehicleView.html(flown, orbits, new ConceptReports(session).software()));
        List<Path> files =
                Stream.concat(page.stream(), trajectory.write(flown).stream()).toList();
        return answer(
                () -> with(spread, document(flown, orbits)),
                () -> FlightView.text(flown)
                        + PayloadView.text(partials(flown))
                        + PayloadView.text(orbits)
                        + spread.map(SpreadView::text).orElse("")
                        + written(files));
    }

    private List<Path> page(CaseFiles.Case found, VehicleSizing sizing, Supplier<String> html) {
        List<Path> written = new ArrayList<>(report.write(
                () -> Map.of(ConceptReports.vehicleFile(sizing), record(found).addTo(html.get()))));
        written.addAll(figures.write(() -> List.of(new SlideFiles(sizing.plan().name(), EngineSlides.of(sizing)))));
        return written;
    }
}

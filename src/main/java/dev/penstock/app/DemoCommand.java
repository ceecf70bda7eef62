package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ReportFiles;
import dev.penstock.claims.answer.JudgeEffort;
import dev.penstock.claims.answer.Judgement;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.reports.claims.JudgementView;
import dev.penstock.reports.print.PaperSize;
import dev.penstock.reports.study.ComparisonView;
import dev.penstock.reports.vehicle.VehicleView;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Outcome;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Runs everything in {@code cycles/} and writes its reports. */
@Command(
        name = "demo",
        description = "Runs every concept in cycles/ and every vehicle in cycles/vehicles/, prints the comparison and"
                + " writes a page for each into reports/out.")
final class DemoCommand extends BaseCommand implements LocalAction {

    /** Engines of each kind that a story carries here: a rough answer, for people who wait. */
    private static final int CLAIMED = JudgeEffort.FEWEST;

    @Option(names = "--output", paramLabel = "DIR", description = "folder for the pages instead of reports/out")
    private Optional<Path> output = Optional.empty();

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            converter = ReportFiles.PaperName.class,
            description = "print the pages as PDF too, on a4 or letter")
    private Optional<PaperSize> paper = Optional.empty();

    @Option(
            names = "--without-claims",
            description = "leave out the stories in cycles/claims/, which take most of the time")
    private boolean withoutClaims;

    DemoCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        ReportFiles files = new ReportFiles(paper, false);
        List<Path> cases = CaseFiles.in(session.home().resolve("cycles"));
        if (cases.isEmpty()) {
            throw new InvalidInput("", "cycles", "empty", "there must be concept files in " + session.home());
        }
        EngineRuns runs = session.runs();
        List<Outcome> outcomes;
        try (ConsoleProgress progress = ConsoleProgress.of(session, "balancing", cases.size(), true)) {
            outcomes = runs.balance(cases, Map.of(), progress);
        }
        Map<Path, EngineBalance> balances = new LinkedHashMap<>();
        outcomes.forEach(o -> o.balance().ifPresent(b -> balances.put(o.file(), b)));
        Vehicles vehicles = vehicles(balances);

        ConceptReports reports = new ConceptReports(session);
        Map<String, String> pages;
        try (ConsoleProgress progress = ConsoleProgress.of(session, "drawing", balances.size(), true)) {
            pages = reports.of(outcomes, Map.of(), progress);
        }
        vehicles.sized()
                .forEach((file, sizing) -> pages.put(
                        ConceptReports.vehicleFile(sizing),
                        CaseFiles.record(session, "size", List.of(), List.of(new CaseFiles.Case(file, Map.of())))
                                .addTo(VehicleView.html(sizing, reports.software()))));
        Map<Path, Judgement> claims = withoutClaims ? Map.of() : claims();
        claims.forEach((file, judgement) -> pages.put(
                JudgeCommand.slug(judgement) + ".html",
                JudgeCommand.record(session, "judge", List.of("--samples", Integer.toString(CLAIMED)), file, Map.of())
                        .addTo(JudgementView.html(judgement, reports.software()))));
        List<Path> written = files.write(output.orElse(session.home().resolve("reports/out")), pages);
        ComparisonView view = new ComparisonView(outcomes);
        answer(
                () -> json(view, vehicles, claims),
                () -> text(view, vehicles) + text(claims.values()) + written(written));
        boolean all = outcomes.stream().allMatch(o -> o.balance().isPresent())
                && vehicles.failures().isEmpty();
        return all ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    /** Judges the stories of the demo, each roughly. */
    private Map<Path, Judgement> claims() {
        Map<Path, Judgement> claims = new LinkedHashMap<>();
        for (Path file : CaseFiles.in(session.home().resolve("cycles/claims"))) {
            ClaimsFile read = new ClaimsReader(session.fluids()).read(file, Map.of());
            claims.put(
                    file,
                    JudgeCommand.judged(
                            session, read, new JudgeEffort(CLAIMED, JudgeEffort.USUAL.seed()), () -> false));
        }
        return claims;
    }

    private static String text(Collection<Judgement> claims) {
        StringBuilder text = new StringBuilder(claims.isEmpty() ? "" : System.lineSeparator());
        claims.forEach(c -> text.append(JudgementView.brief(c)).append(System.lineSeparator()));
        return text.toString();
    }

    /**
     * Vehicles of the demo.
     *
     * @param sized vehicles by file
     * @param failures why a vehicle has no size, by file
     */
    private record Vehicles(Map<Path, VehicleSizing> sized, Map<Path, String> failures) {}

    private Vehicles vehicles(Map<Path, EngineBalance> balances) {
        Vehicles vehicles = new Vehicles(new LinkedHashMap<>(), new LinkedHashMap<>());
        for (Path file : CaseFiles.in(session.home().resolve("cycles/vehicles"))) {
            try {
                VehiclePlan plan = new VehicleReader(session.fluids()).read(file, Map.of());
                vehicles.sized().put(file, VehicleRuns.size(plan, named(plan, balances)));
            } catch (InvalidInput e) {
                throw e;
            } catch (PenstockException e) {
                vehicles.failures().put(file, e.getMessage());
            }
        }
        return vehicles;
    }

    /** A vehicle names its engines by paths of its own; they are the same files. */
    private static Map<Path, EngineBalance> named(VehiclePlan plan, Map<Path, EngineBalance> balances) {
        Map<Path, EngineBalance> named = new LinkedHashMap<>();
        for (Path wanted : VehicleRuns.engineFiles(plan)) {
            Path place = wanted.toAbsolutePath().normalize();
            EngineBalance balance = balances.entrySet().stream()
                    .filter(e -> e.getKey().toAbsolutePath().normalize().equals(place))
                    .map(Map.Entry::getValue)
                    .findFirst()
                    .orElseThrow(() -> new InvalidInput(
                            plan.name(), "engine", wanted.toString(), "it must be a concept in cycles/ that balances"));
            named.put(wanted, balance);
        }
        return named;
    }

    private static Map<String, Object> json(ComparisonView view, Vehicles vehicles, Map<Path, Judgement> claims) {
        Map<String, Object> map = new LinkedHashMap<>(view.json());
        List<Map<String, Object>> list = new ArrayList<>();
        vehicles.sized().values().forEach(v -> list.add(VehicleView.json(v)));
        map.put("vehicles", list);
        map.put("claims", claims.values().stream().map(JudgementView::json).toList());
        return map;
    }

    private static String text(ComparisonView view, Vehicles vehicles) {
        StringBuilder text = new StringBuilder(view.text());
        vehicles.sized().values().forEach(v -> text.append(System.lineSeparator())
                .append(VehicleView.brief(v)));
        vehicles.failures().forEach((file, why) -> text.append(System.lineSeparator())
                .append(file.getFileName())
                .append(": ")
                .append(why)
                .append(System.lineSeparator()));
        return text.toString();
    }
}

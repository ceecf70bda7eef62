package dev.penstock.app.console;

import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.files.FileNames;
import dev.penstock.reports.chart.DrawingFont;
import dev.penstock.reports.concept.ConceptPage;
import dev.penstock.reports.concept.FeedAnswer;
import dev.penstock.reports.engine.CycleReachView;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.slide.EngineSlides;
import dev.penstock.reports.slide.SlideFiles;
import dev.penstock.reports.study.ComparisonView;
import dev.penstock.reports.text.Release;
import dev.penstock.reports.text.Software;
import dev.penstock.study.Outcome;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the pages of balanced concepts. */
public final class ConceptReports {

    private static final String COMPARISON = "comparison.html";

    private final Session session;

    /** @param session session */
    public ConceptReports(Session session) {
        this.session = session;
    }

    /**
     * @param balance balanced engine
     * @param feed what keeps its tanks under pressure
     * @param further further sections
     * @param command command that makes the page
     * @param options its further options
     * @return its page by file name
     */
    public Map<String, String> of(
            EngineBalance balance, FeedAnswer feed, List<PageSection> further, String command, List<String> options) {
        ConceptPage page = page(balance, feed).madeBy(command, options);
        further.forEach(page::with);
        return Map.of(slug(balance.concept().name()) + ".html", page.html());
    }

    /**
     * @param result engine at the highest chamber pressure
     * @param cycles what other cycles reach, where that was asked
     * @param further further sections
     * @param options further options of the command
     * @return its page by file name, then a drawing and a table of the cycles
     */
    public Map<String, String> of(
            LimitResult result, Optional<CycleReachView> cycles, List<PageSection> further, List<String> options) {
        String name = slug(result.balance().concept().name());
        ConceptPage page = new ConceptPage(result.balance(), Optional.empty(), Optional.of(result), software())
                .madeBy("limit", options);
        further.forEach(page::with);
        Map<String, String> files = new LinkedHashMap<>();
        files.put(name + "-limit.html", page.html());
        cycles.ifPresent(c -> {
            files.put(name + "-cycles.svg", DrawingFont.into(c.svg()));
            files.put(name + "-cycles.csv", c.csv());
        });
        return files;
    }

    /**
     * @param outcomes concepts
     * @param changes changes that all were read with
     * @param progress told of each page that is made
     * @return pages by file name, the comparison first
     */
    public Map<String, String> of(List<Outcome> outcomes, Map<String, String> changes, Progress progress) {
        Map<String, Outcome> byFile = new LinkedHashMap<>();
        Map<String, String> pages = new LinkedHashMap<>();
        for (Outcome outcome : outcomes) {
            if (outcome.balance().isPresent()) {
                String name = slug(outcome.name());
                for (int i = 2; byFile.containsKey(name + ".html"); i++) {
                    name = slug(outcome.name()) + "-" + i;
                }
                byFile.put(name + ".html", outcome);
                pages.put(outcome.name(), name + ".html");
            }
        }
        List<String> names = List.copyOf(byFile.keySet());
        List<String> html = Parallel.map(
                names, name -> name, name -> page(byFile.get(name).balance().orElseThrow()), progress);
        Map<String, String> contents = new LinkedHashMap<>();
        List<CaseFiles.Case> cases = outcomes.stream()
                .map(o -> new CaseFiles.Case(o.file(), changes))
                .toList();
        ReportRecord record = CaseFiles.record(session, "compare", List.of(), cases);
        contents.put(COMPARISON, record.addTo(new ComparisonView(outcomes).html(software(), pages)));
        for (int i = 0; i < names.size(); i++) {
            contents.put(names.get(i), html.get(i));
        }
        return contents;
    }

    /** @return what the pages are made with */
    public Software software() {
        return Software.of(session.home(), Release.version());
    }

    private String page(EngineBalance balance) {
        return page(balance, FeedAnswer.of(() -> session.runs().study(), balance))
                .html();
    }

    /**
     * @param balance balanced engine
     * @return its drawings for an audience, with the vehicle that its concept describes
     */
    public SlideFiles slides(EngineBalance balance) {
        return new SlideFiles(balance.concept().name(), EngineSlides.of(balance, vehicle(balance)));
    }

    private Optional<VehicleSizing> vehicle(EngineBalance balance) {
        return new VehicleReader(session.fluids()).of(balance.concept()).map(plan -> VehicleRuns.size(plan, balance));
    }

    private ConceptPage page(EngineBalance balance, FeedAnswer feed) {
        ConceptPage page = new ConceptPage(balance, vehicle(balance), Optional.empty(), software());
        feed.addTo(page);
        return page;
    }

    /**
     * @param sizing a vehicle
     * @return name of the file of its page
     */
    public static String vehicleFile(VehicleSizing sizing) {
        return "vehicle-" + slug(sizing.plan().name()) + ".html";
    }

    /**
     * @param name name of a concept
     * @return its name as a file name
     */
    public static String slug(String name) {
        String slug = FileNames.of(name);
        return slug.isEmpty() || slug.equals("comparison") ? "concept-" + slug : slug;
    }
}

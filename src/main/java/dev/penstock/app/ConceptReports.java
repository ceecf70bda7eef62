package dev.penstock.app;

import dev.penstock.cycles.ConceptDocument;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.LimitResult;
import dev.penstock.reports.ComparisonView;
import dev.penstock.reports.ConceptPage;
import dev.penstock.reports.PageSection;
import dev.penstock.reports.Software;
import dev.penstock.reports.WholeFiles;
import dev.penstock.study.Outcome;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.VehicleReader;
import dev.penstock.vehicle.VehicleSizing;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Writes the pages of balanced concepts, all of them or none. */
final class ConceptReports {

    private static final String COMPARISON = "comparison.html";

    private final Session session;

    ConceptReports(Session session) {
        this.session = session;
    }

    /**
     * @param folder folder, made if absent
     * @param balance balanced engine
     * @param further further sections
     * @return the page written
     */
    Path write(Path folder, EngineBalance balance, List<PageSection> further) {
        String name = slug(balance.concept().name()) + ".html";
        WholeFiles.write(folder, Map.of(name, page(balance, further)));
        return folder.resolve(name);
    }

    /**
     * @param folder folder, made if absent
     * @param result engine at the highest chamber pressure
     * @return the page written
     */
    Path write(Path folder, LimitResult result) {
        String name = slug(result.balance().concept().name()) + "-limit.html";
        WholeFiles.write(
                folder,
                Map.of(
                        name,
                        new ConceptPage(result.balance(), Optional.empty(), Optional.of(result), software()).html()));
        return folder.resolve(name);
    }

    /**
     * @param folder folder, made if absent
     * @param outcomes concepts
     * @param more further pages by file name
     * @param progress told of each page that is made
     * @return the pages written, the comparison first
     */
    List<Path> write(Path folder, List<Outcome> outcomes, Map<String, String> more, Progress progress) {
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
                names, name -> name, name -> page(byFile.get(name).balance().orElseThrow(), List.of()), progress);
        Map<String, String> contents = new LinkedHashMap<>();
        contents.put(COMPARISON, new ComparisonView(outcomes).html(software(), pages));
        for (int i = 0; i < names.size(); i++) {
            contents.put(names.get(i), html.get(i));
        }
        contents.putAll(more);
        WholeFiles.write(folder, contents);
        return contents.keySet().stream().map(folder::resolve).toList();
    }

    Software software() {
        return Software.of(session.home(), Penstock.Version.text());
    }

    private String page(EngineBalance balance, List<PageSection> further) {
        ConceptDocument document = balance.concept().document();
        Optional<VehicleSizing> vehicle = VehicleReader.readConcept(
                        document.file(), document.text(), document.changes())
                .map(plan -> VehicleRuns.size(plan, balance));
        ConceptPage page = new ConceptPage(balance, vehicle, Optional.empty(), software());
        further.forEach(page::with);
        return page.html();
    }

    /**
     * @param name name of a concept
     * @return its name as a file name
     */
    static String slug(String name) {
        String slug =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return slug.isEmpty() || slug.equals("comparison") ? "concept-" + slug : slug;
    }
}

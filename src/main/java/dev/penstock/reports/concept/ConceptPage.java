package dev.penstock.reports.concept;

import dev.penstock.cycles.concept.ConceptDocument;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.StationRecorder;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.cycles.trail.FeedFigures;
import dev.penstock.cycles.trail.LimitTrail;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.engine.EngineCharts;
import dev.penstock.reports.engine.LimitsSentence;
import dev.penstock.reports.engine.MassView;
import dev.penstock.reports.engine.PressureFeedView;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.page.TrailPart;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.table.VehicleTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Software;
import dev.penstock.study.Measure;
import dev.penstock.study.VehicleTrail;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The report of one concept: a page that needs nothing but itself. Not thread-safe. */
public final class ConceptPage {

    private static final int HEADLINES = 6;

    private final EngineBalance balance;
    private final Software software;
    private final Optional<VehicleSizing> vehicle;
    private final Optional<LimitResult> reach;
    private final EngineCharts charts;
    private final List<PageSection> further = new ArrayList<>();
    private Optional<PressureFeed> feed = Optional.empty();
    private String command;
    private List<String> options = List.of();

    /**
     * @param balance balanced engine
     * @param vehicle vehicle that its concept asks for, if any
     * @param reach how far the concept reaches, where that was asked; the balance is then the one there
     * @param software what the numbers were made with
     */
    public ConceptPage(
            EngineBalance balance, Optional<VehicleSizing> vehicle, Optional<LimitResult> reach, Software software) {
        this.balance = balance;
        this.vehicle = vehicle;
        this.reach = reach;
        this.software = software;
        this.charts = new EngineCharts(balance, "c");
        this.command = reach.isPresent() ? "limit" : "balance";
    }

    /**
     * @param name command that makes this page, where it is neither balance nor limit
     * @param further its options beside the concept and the changes to it
     * @return this page
     */
    public ConceptPage madeBy(String name, List<String> further) {
        command = name;
        options = List.copyOf(further);
        return this;
    }

    /**
     * @param section a further section, shown after the limits
     * @return this page
     */
    public ConceptPage with(PageSection section) {
        further.add(section);
        return this;
    }

    /**
     * @param feed what keeps the tanks of this engine under pressure
     * @return this page
     */
    public ConceptPage fedBy(PressureFeed feed) {
        this.feed = Optional.of(feed);
        return with(new PressureFeedView(feed).section());
    }

    /** @return the page */
    public String html() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", balance.concept().name());
        model.put("subtitle", balance.concept().description());
        model.put(
                "kind",
                balance.concept().cycle().title() + ": "
                        + Propellant.pair(
                                balance.concept().oxidizer(), balance.concept().fuel())
                        + ", mixture ratio "
                        + EngineFigures.SUMMARY.figure("mixture_ratio").text(balance) + ", "
                        + Notation.PRESSURE.writeWithUnit(balance.engine().chamberPressure()) + " in the chamber");
        model.put("limiting", limiting());
        model.put("figures", headline(balance));
        model.put("verdict", verdict());
        model.put("state", !balance.withinLimits() ? "bad" : balance.doubts().isEmpty() ? "good" : "doubt");
        model.put(
                "warnings",
                FigureJson.each(
                        CheckFigures.WARNINGS,
                        balance.warnings().stream().distinct().toList()));
        model.put("sections", sections());
        Trail all = BalanceTrail.of(balance);
        reach.ifPresent(r -> LimitTrail.extend(all, r));
        feed.ifPresent(f -> FeedFigures.record(balance, f, all));
        vehicle.ifPresent(v -> all.include(VehicleTrail.ofConcept(v, balance)));
        TrailPart trail = new TrailPart(all);
        model.put("models", trail.models());
        model.put("numbers", trail.numbers());
        model.put("assumptions", Cautions.of(balance));
        model.put("cautions", Cautions.dangersOf(Stream.of(balance)));
        model.put("software", software);
        ConceptDocument document = balance.concept().document();
        String file = fileName(document.file());
        ReportRecord record = new ReportRecord(
                command, options, document.changes(), List.of(file), Map.of(file, document.text()), software);
        model.put("file", file);
        model.put("line", record.line());
        model.put("source", document.text());
        return record.addTo(Pages.fill("concept.ftlh", model));
    }

    /**
     * @param path path as the concept was read from
     * @return its last part, since a report must not tell where its maker keeps files
     */
    static String fileName(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }

    private static String sentence(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + (text.endsWith(".") ? "" : ".");
    }

    /** The six figures that decide; where a cycle has no turbine or no jacket, the next one takes its place. */
    static List<Map<String, String>> headline(EngineBalance balance) {
        boolean seaLevel = balance.concept().thrust().kind() == ThrustTarget.Kind.SEA_LEVEL_THRUST;
        return Stream.of(
                        seaLevel ? "engine.thrust_sea_level_N" : "engine.thrust_vacuum_N",
                        "engine.isp_vacuum_s",
                        "engine.mass_kg",
                        "engine.thrust_to_weight",
                        "figures.turbine_temperature_K",
                        "cooling.peak_wall_temperature_K",
                        "engine.isp_sea_level_s",
                        "engine.mass_flow_kg_s")
                .flatMap(path -> Measure.named(path).stream())
                .filter(m -> m.of(balance).isPresent())
                .limit(HEADLINES)
                .map(m -> Map.of(
                        "name",
                        m.name() + (m.separated(balance) ? ", flow separated" : ""),
                        "value",
                        m.notation().write(m.of(balance).getAsDouble()),
                        "unit",
                        m.notation().unit(),
                        "trail",
                        m.path()))
                .toList();
    }

    /** What limits the engine, and how sure its mass is, each in a sentence. */
    private List<String> limiting() {
        List<String> sentences = new ArrayList<>();
        Measure.tightest(balance)
                .ifPresent(l -> sentences.add("Nearest to its limit is " + CheckFigures.title(l) + ": "
                        + CheckFigures.value(l) + ", " + CheckFigures.boundary(l) + "."));
        sentences.add("The mass is believed to lie between "
                + Notation.MASS.write(balance.mass().total().low()) + " and "
                + Notation.MASS.writeWithUnit(balance.mass().total().high()) + ".");
        return sentences;
    }

    private String verdict() {
        return "The cycle closes to " + Notation.significant(balance.residualWorst(), 2)
                + " (worst relative residual of mass, energy and shaft power)" + LimitsSentence.of(balance);
    }

    private List<PageSection> sections() {
        List<PageSection> sections = new ArrayList<>();
        reach.ifPresent(r -> sections.add(LimitView.section(r)));
        sections.add(new PageSection(
                "flow",
                "Flow",
                "What goes where, at which pressure and temperature?",
                List.of(sentence(balance.concept().cycle().summary())),
                List.of(charts.flow(number -> "#t:" + StationRecorder.pressure(number))),
                List.of(EngineTables.stations(balance)),
                List.of()));
        sections.add(new PageSection(
                "pressure",
                "Pressure",
                "What makes the pressure, and what uses it up?",
                List.of(),
                List.of(charts.pressures()),
                List.of(),
                List.of(EngineTables.ladder(balance))));
        if (!balance.shafts().isEmpty()) {
            sections.add(new PageSection(
                    "machines",
                    "Turbopumps",
                    "How big, how fast, how much power?",
                    List.of(),
                    List.of(charts.power()),
                    List.of(EngineTables.pumps(balance), EngineTables.turbines(balance), EngineTables.shafts(balance)),
                    List.of()));
        }
        sections.add(new PageSection(
                "performance",
                "Performance",
                "What does the engine deliver, and where is the rest lost?",
                List.of(),
                List.of(charts.losses(), charts.altitude()),
                List.of(EngineTables.chamber(balance)),
                List.of(EngineTables.losses(balance))));
        if (!balance.cooling().isEmpty()) {
            sections.add(new PageSection(
                    "cooling",
                    "Cooling",
                    "Does the wall stay cool enough?",
                    List.of(),
                    balance.cooling().stream().map(charts::jacket).toList(),
                    balance.cooling().stream().map(EngineTables::cooling).toList(),
                    List.of()));
        }
        sections.add(MassView.section(balance));
        sections.add(new PageSection(
                "hardware",
                "Parts",
                "How much has to be built, and does its metal bear what it meets?",
                List.of(
                        "Parts and joints are counted in the arrangement, for comparing arrangements. Thresholds in oxygen are"
                                + " of rods at room temperature, and hot gas lowers them; losses in hydrogen are of short tests at"
                                + " room temperature, where most alloys lose most."),
                List.of(),
                List.of(
                        EngineTables.hardware(balance),
                        EngineTables.metals(balance).filled()),
                List.of()));
        sections.add(new PageSection(
                "limits",
                "Limits",
                "What would stop the hardware, and how far off is it?",
                List.of("A missed limit is a finding, not an error: the cycle closes, but the hardware would not"
                        + " last."),
                List.of(),
                List.of(EngineTables.limits(balance.limits())),
                List.of()));
        sections.addAll(further);
        vehicle.ifPresent(v -> sections.add(VehicleTables.section(v)));
        sections.add(InputsAndWarnings.of(balance));
        sections.add(new PageSection(
                "evidence",
                "Evidence",
                "Does everything add up again?",
                List.of("Mass and energy are added up again at every component from the station table alone, and for"
                        + " the engine as a whole."),
                List.of(),
                List.of(EngineTables.residuals(balance)),
                List.of(EngineTables.audit(balance))));
        return sections;
    }
}

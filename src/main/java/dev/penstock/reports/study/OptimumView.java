package dev.penstock.reports.study;

import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.search.Objective;
import dev.penstock.study.search.OptimumResult;
import dev.penstock.study.search.Question;
import dev.penstock.study.space.Constraint;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The best point of a case: JSON document, terminal tables, page. */
public final class OptimumView {

    private final OptimumResult result;
    private final Question question;
    private final StudySpace space;
    private final Objective objective;
    private final PointWords words;

    /** @param result what a search found */
    public OptimumView(OptimumResult result) {
        this.result = result;
        this.question = result.question();
        this.space = question.space();
        this.objective = question.objectives().get(0);
        this.words = new PointWords(question);
    }

    /** @return JSON document, SI */
    public Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", question.subject().name());
        map.put("objective", PointWords.goal(objective));
        map.put("best", words.document(space, result.best()));
        Map<String, Object> filed = new LinkedHashMap<>();
        question.subject().own(space).ifPresent(own -> filed.put("inputs", space.document(own)));
        filed.put("figures", words.figures(result.filed()));
        filed.put("feasible", question.feasible(result.filed()));
        result.filed().failure().ifPresent(f -> filed.put("failure", f.sentence()));
        map.put("file", filed);
        if (Double.isFinite(result.gain())) {
            map.put("gain", result.gain());
        }
        map.put("constraints", words.constraints(result.best()));
        map.put("evaluations", result.evaluations());
        map.put("starts", result.starts().stream().map(this::start).toList());
        map.put("vary", PointWords.vary(space));
        map.put("seed", (int) result.seed());
        map.put("complete", result.complete());
        return map;
    }

    private Map<String, Object> start(OptimumResult.Start start) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("from", space.document(start.from()));
        map.put("inputs", space.document(start.values()));
        if (Double.isFinite(start.objective())) {
            map.put(objective.figure().path(), start.objective());
        }
        map.put("feasible", start.feasible());
        map.put("evaluations", start.evaluations());
        map.put("smooth_finish", start.smooth());
        return map;
    }

    /** @return what was found, in a sentence or two */
    private List<String> sentences() {
        List<String> lines = new ArrayList<>();
        if (!result.best().closes()) {
            lines.add("Nothing closes: "
                    + result.best().failure().map(f -> f.sentence()).orElse(""));
        } else if (!result.feasible()) {
            lines.add("No point that was tried keeps every constraint; the nearest is shown. Missed: "
                    + words.missed(result.best()) + ".");
        } else if (Double.isFinite(result.gain())) {
            String missed = words.missed(result.filed());
            lines.add("Gain over the file: " + Notation.significant(100 * result.gain(), 3) + " %"
                    + (missed.isEmpty() ? "." : "; the file itself misses: " + missed + "."));
        }
        if (!result.complete()) {
            lines.add("Stopped on the way: this is the best so far.");
        }
        long near = result.starts().stream().filter(this::asGood).count();
        int starts = result.starts().size();
        lines.add(
                result.evaluations() + " points tried from "
                        + (starts == 1
                                ? "one start; another may find a better one."
                                : starts + " starts, of which " + near
                                        + " ended within a thousandth of the best. The best of several starts need not be the best there is."));
        return lines;
    }

    private boolean asGood(OptimumResult.Start start) {
        double best = result.best().figures()[0];
        return start.feasible() == result.feasible() && Math.abs(start.objective() - best) <= 1e-3 * Math.abs(best);
    }

    private PageTable inputs() {
        Optional<double[]> own = question.subject().own(space);
        PageTable.Builder table = PageTable.titled("Inputs", "<input", "file", "best", "from", "to");
        for (int i = 0; i < space.size(); i++) {
            Variable variable = space.variables().get(i);
            int at = i;
            boolean list = variable.named();
            table.row(
                    variable.words(),
                    own.map(o -> PointWords.text(variable, o[at])).orElse("-"),
                    PointWords.text(variable, result.best().values()[i]),
                    list ? "listed" : PointWords.text(variable, variable.at(0)),
                    list ? "values" : PointWords.text(variable, variable.at(1)));
        }
        return table.table();
    }

    private PageTable figures() {
        PageTable.Builder table = PageTable.titled("Figures", "<figure", "file", "best", "<asked for");
        List<StudyFigure> figures = question.figures();
        for (int k = 0; k < figures.size(); k++) {
            StudyFigure figure = figures.get(k);
            Optional<Constraint> constraint =
                    k > 0 && k <= question.constraints().size()
                            ? Optional.of(question.constraints().get(k - 1))
                            : Optional.empty();
            double best = result.best().figures()[k];
            table.marked(
                    constraint.map(c -> c.kept(best)).orElse(true) ? "" : "missed",
                    figure.title(),
                    PointWords.text(figure, result.filed().figures()[k]),
                    PointWords.text(figure, best),
                    k == 0
                            ? objective.goal()
                            : constraint
                                    .map(c -> c.readable() + (c.kept(best) ? ": kept" : ": MISSED"))
                                    .orElse(""));
        }
        return table.table();
    }

    private PageTable starts() {
        PageTable.Builder table = PageTable.titled(
                "Starts", "no.", objective.figure().title(), "points tried", "<constraints", "<ended by");
        int number = 1;
        for (OptimumResult.Start start : result.starts()) {
            table.row(
                    Integer.toString(number++),
                    PointWords.text(objective.figure(), start.objective()),
                    Integer.toString(start.evaluations()),
                    start.feasible() ? "kept" : "missed",
                    start.smooth() ? "quadratic programming" : "evolution strategy");
        }
        return table.table();
    }

    /** @return tables for a terminal */
    public String text() {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(title()).append(line).append(line);
        for (PageTable table : List.of(inputs(), figures(), starts())) {
            text.append(TextTable.of(table)).append(line);
        }
        sentences().forEach(s -> text.append(s).append(line));
        if (result.best().closes()) {
            text.append(line)
                    .append("See it: ")
                    .append(words.here(space, result.best()))
                    .append(line);
        }
        return text.toString();
    }

    /** @return what was asked */
    public String title() {
        return question.subject().name() + ": " + objective.readable() + " over " + space.size()
                + (space.size() == 1 ? " input" : " inputs");
    }

    /**
     * @param software what the numbers were made with
     * @return the page
     */
    public String html(Software software) {
        return page(question.subject(), title(), "Optimised", sections(), software);
    }

    /** @return what the page holds */
    public List<PageSection> sections() {
        List<String> said = new ArrayList<>(sentences());
        if (result.best().closes()) {
            said.add("See it: " + words.again(space, result.best()));
        }
        OptimumCharts charts = new OptimumCharts(result);
        return List.of(
                new PageSection(
                        "best",
                        "Best",
                        "Where is it best, and what is gained?",
                        said,
                        List.of(charts.inputs()),
                        List.of(inputs(), figures()),
                        List.of()),
                new PageSection(
                        "starts",
                        "Starts",
                        "Did the starts agree?",
                        List.of(),
                        charts.history().stream().toList(),
                        List.of(starts()),
                        List.of()));
    }

    /**
     * @param subject case of the study
     * @param title what was asked
     * @param kind kind of the study
     * @param sections what was found
     * @param software what the numbers were made with
     * @return page of a study that holds no engine
     */
    public static String page(
            StudyCase subject, String title, String kind, List<PageSection> sections, Software software) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", title);
        model.put("estimate", "study");
        model.put("kind", kind);
        model.put("subtitle", "");
        model.put("sections", sections);
        model.put("assumptions", List.of());
        model.put("cautions", Cautions.dangers(subject.propellants().stream()));
        model.put("software", software);
        return Pages.fill("sweep.ftlh", model);
    }
}

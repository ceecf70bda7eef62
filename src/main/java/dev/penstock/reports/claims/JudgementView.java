package dev.penstock.reports.claims;

import dev.penstock.claims.answer.Band;
import dev.penstock.claims.answer.Judgement;
import dev.penstock.provenance.KeyPath;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.PairChart;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A judgement as JSON document, terminal text and page. */
public final class JudgementView {

    /** Part of the document that only claims with several pairs of propellants have. */
    public static final String PROPELLANTS = "propellants";

    private static final double WHOLE = 100;
    /** A band narrower than this share of its median is one number. */
    private static final double CERTAIN = 1e-6;
    /** Where most of a page's room would go to a band that hardly anything is left of. */
    private static final double WIDEST = 160;

    private JudgementView() {}

    /**
     * @param judgement what follows
     * @return JSON document
     */
    public static Map<String, Object> json(Judgement judgement) {
        return JudgementJson.of(judgement);
    }

    /**
     * @param judgement what follows
     * @return text for a terminal
     */
    public static String text(Judgement judgement) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder();
        text.append(judgement.name())
                .append(": ")
                .append(judgement.verdict().key())
                .append(line);
        judgement.sentences().forEach(s -> text.append("  ").append(s).append(line));
        for (PageTable table : tables(judgement)) {
            text.append(line).append(TextTable.of(table));
        }
        text.append(line).append(effort(judgement)).append(line);
        judgement.cautions().forEach(c -> text.append(c).append(line));
        return text.toString();
    }

    /**
     * @param judgement what follows
     * @return one line
     */
    public static String brief(Judgement judgement) {
        String first = judgement.kinds().stream()
                .filter(k -> k.probability() > 0)
                .findFirst()
                .map(k -> String.format(
                        Locale.ROOT, ", %s %.0f %%", k.hypothesis().cycle().id(), 100 * k.probability()))
                .orElse("");
        String about = judgement.figures().stream()
                .filter(f -> f.path().equals(judgement.about()))
                .findFirst()
                .map(f -> ", " + f.title() + " "
                        + f.notation().writeWithUnit(f.posterior().p05()) + " to "
                        + f.notation().writeWithUnit(f.posterior().p95()))
                .orElse("");
        return judgement.name() + ": " + judgement.verdict().key() + first + about;
    }

    /**
     * @param j what follows
     * @return in one sentence, what it took
     */
    public static String effort(Judgement j) {
        return String.format(
                Locale.ROOT,
                "%.0f effective samples of %d balances, %d of which do not close; seed %d%s",
                j.effectiveSamples(),
                j.evaluations(),
                j.impossible(),
                j.seed(),
                j.complete() ? "" : "; stopped");
    }

    private static List<PageTable> tables(Judgement j) {
        List<PageTable> tables = new ArrayList<>();
        tables.add(JudgementTables.claims(j));
        tables.add(JudgementTables.kinds(j));
        if (!j.unknowns().isEmpty()) {
            tables.add(JudgementTables.findings("Unknowns", j.unknowns(), true));
            tables.add(JudgementTables.findings("Figures", j.figures(), false));
        }
        JudgementTables.medians(j).ifPresent(tables::add);
        if (!j.nextFacts().isEmpty()) {
            tables.add(JudgementTables.nextFacts(j));
        }
        return tables;
    }

    /**
     * @param judgement what follows
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(Judgement judgement, Software software) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", judgement.name());
        model.put("estimate", "claims judged");
        model.put("kind", kind(judgement));
        model.put("subtitle", judgement.complete() ? "" : "Stopped: this is the answer of what was done.");
        model.put("sections", sections(judgement));
        List<String> assumptions = new ArrayList<>(List.of(effort(judgement) + "."));
        assumptions.addAll(judgement.cautions());
        model.put("assumptions", assumptions);
        model.put("cautions", Cautions.dangers(Stream.of()));
        model.put("software", software);
        return Pages.fill("sweep.ftlh", model);
    }

    /** How the claims stand, and the kind of engine that they fit best. */
    private static String kind(Judgement j) {
        int count = j.claims().size();
        String claims =
                count + (count == 1 ? " claim: " : " claims: ") + j.verdict().key();
        return j.kinds().stream()
                .filter(k -> j.kinds().size() > 1 && k.probability() > 0)
                .findFirst()
                .map(k -> claims + "; most probable is "
                        + k.hypothesis().cycle().title().toLowerCase(Locale.ROOT)
                        + " with " + k.hypothesis().oxidizer().id() + " and "
                        + k.hypothesis().fuel().id() + ", " + Notation.PERCENT.writeWithUnit(k.probability()))
                .orElse(claims);
    }

    /** The words of a judgement for readers of a page: what is named by its key in a file is named in words. */
    private static String plain(Judgement j, String text) {
        return Stream.concat(
                        j.claims().stream().map(h -> h.claim().path()),
                        Stream.concat(j.unknowns().stream(), j.figures().stream())
                                .map(Judgement.Finding::path))
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed())
                .reduce(text, (said, path) -> said.replace(path, words(path)));
    }

    private static String words(String path) {
        return KeyPath.words(path).replace(", ", " ").replace(" isp ", " Isp ");
    }

    /**
     * @param judgement what follows
     * @return verdict, cycles, unknowns, figures and further facts, as far as there are any
     */
    public static List<PageSection> sections(Judgement judgement) {
        List<PageSection> sections = new ArrayList<>();
        sections.add(section(
                "verdict",
                "Verdict: " + judgement.verdict().key(),
                "Do the claims fit together?",
                judgement.sentences().stream()
                        .map(s -> sentence(plain(judgement, s)))
                        .toList(),
                List.of(),
                List.of(JudgementTables.claims(judgement).inWords(s -> plain(judgement, s)))));
        sections.add(section(
                "cycle",
                "Which cycle",
                "Which kind of engine was it, and why not another?",
                List.of(),
                kinds(judgement).stream().toList(),
                List.of(JudgementTables.kinds(judgement).inWords(s -> plain(judgement, s)))));
        if (!judgement.unknowns().isEmpty()) {
            sections.add(unknowns(judgement));
            sections.add(figures(judgement));
        }
        if (!judgement.nextFacts().isEmpty()) {
            sections.add(section(
                    "next",
                    "What would tell most",
                    "Which further fact would narrow the answer most?",
                    List.of("Each fact known within 2 %, by the expected narrowing of "
                            + plain(judgement, JudgementTables.about(judgement)) + "."),
                    List.of(),
                    List.of(JudgementTables.nextFacts(judgement))));
        }
        return sections;
    }

    private static String sentence(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }

    private static PageSection section(
            String id,
            String title,
            String question,
            List<String> text,
            List<Drawing> figures,
            List<PageTable> tables) {
        return new PageSection(id, title, question, text, figures, tables, List.of());
    }

    private static PageSection unknowns(Judgement j) {
        List<Drawing> drawings = new ArrayList<>();
        drawings.add(bands("c-unknowns", "Unknowns before and after the claims", j.unknowns(), false));
        if (j.pairs().size() > 1) {
            drawings.add(new Drawing(
                    PairChart.svg(
                            "c-pairs",
                            "Unknowns that are tied to each other",
                            j.pairs().stream().map(JudgementView::series).toList()),
                    "Samples of the unknowns that are tied to each other most, two by two.",
                    true));
        }
        return section(
                "unknowns",
                "Unknowns",
                "What must the engine have been like?",
                List.of(),
                drawings,
                List.of(JudgementTables.findings("Unknowns", j.unknowns(), true).inWords(s -> plain(j, s))));
    }

    private static PairChart.Series series(Judgement.Series s) {
        String unit = s.notation().unit().isEmpty() ? "" : " (" + s.notation().unit() + ")";
        return new PairChart.Series(words(s.path()) + unit, s.values(), s.notation()::write);
    }

    private static PageSection figures(Judgement j) {
        List<PageTable> tables = new ArrayList<>(List.of(JudgementTables.findings("Figures", j.figures(), false)));
        JudgementTables.medians(j).ifPresent(tables::add);
        return section(
                "figures",
                "Figures",
                "What follows for what the engine does?",
                List.of(),
                List.of(bands("c-figures", "Figures before and after the claims", j.figures(), true)),
                tables);
    }

    /** Before and after of each number, in per cent of the 90 % interval before. */
    private static Drawing bands(String id, String title, List<Judgement.Finding> findings, boolean titled) {
        List<SpanChart.Bar> bars = new ArrayList<>();
        for (Judgement.Finding f : findings) {
            String name = titled ? f.title() : words(f.path());
            Optional<Band> prior = f.prior().filter(b -> b.p95() - b.p05() > CERTAIN * Math.abs(b.p50()));
            if (prior.isEmpty()) {
                continue;
            }
            double low = prior.get().p05();
            double scale = WHOLE / (prior.get().p95() - low);
            bars.add(new SpanChart.Bar(name, 0, WHOLE, Ink.RULE, text(f, prior.get())));
            bars.add(new SpanChart.Bar(
                    "after",
                    shown((f.posterior().p05() - low) * scale),
                    shown((f.posterior().p95() - low) * scale),
                    Ink.OXIDIZER,
                    text(f, f.posterior())));
        }
        return new Drawing(
                SpanChart.svg(id, title, "per cent of the 90 % interval before the claims", false, bars),
                title + ". Grey, the 90 % interval of each number before the claims; blue, after them.",
                true);
    }

    private static double shown(double per) {
        return Math.max(WHOLE - WIDEST, Math.min(WIDEST, per));
    }

    private static String text(Judgement.Finding f, Band band) {
        return f.notation().write(band.p05()) + " to " + f.notation().writeWithUnit(band.p95());
    }

    private static Optional<Drawing> kinds(Judgement j) {
        if (j.kinds().size() < 2) {
            return Optional.empty();
        }
        List<SpanChart.Bar> bars = j.kinds().stream()
                .map(k -> new SpanChart.Bar(
                        k.hypothesis().title(),
                        0,
                        WHOLE * k.probability(),
                        Ink.GAIN,
                        String.format(Locale.ROOT, "%.1f %%", WHOLE * k.probability())))
                .toList();
        return Optional.of(new Drawing(
                SpanChart.svg("c-cycles", "Probability of each kind of engine", "probability (%)", true, bars),
                "Probability of each kind of engine, all alike before the claims.",
                false));
    }
}

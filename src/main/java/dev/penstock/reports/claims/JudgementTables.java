package dev.penstock.reports.claims;

import dev.penstock.claims.answer.Band;
import dev.penstock.claims.answer.Judgement;
import dev.penstock.claims.file.Claim;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.text.PageTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables of a judgement, for pages and terminals alike. */
final class JudgementTables {

    private static final String NONE = "-";

    private JudgementTables() {}

    static PageTable claims(Judgement j) {
        PageTable.Builder table = PageTable.titled(
                "Claims",
                "<claim",
                "<stated",
                "predicted by the others 5 %",
                "50 %",
                "95 %",
                "tension",
                "from all 5 %",
                "50 %",
                "95 %",
                "<source");
        for (Judgement.Held h : j.claims()) {
            List<String> cells = new ArrayList<>(List.of(h.claim().path(), stated(h)));
            cells.addAll(band(h.predicted(), h.notation()));
            cells.add(h.predicted().isPresent() ? String.format(Locale.ROOT, "%+.1f", h.tension()) : NONE);
            cells.addAll(band(h.posterior(), h.notation()));
            cells.add(h.claim().source());
            table.marked(Math.abs(h.tension()) > 3 ? "missed" : "", cells.toArray(String[]::new));
        }
        return table.table();
    }

    private static String stated(Judgement.Held h) {
        Claim c = h.claim();
        Notation n = h.notation();
        if (c.value().isPresent()) {
            return n.writeWithUnit(c.value().getAsDouble()) + " ± "
                    + n.write(c.high().getAsDouble() - c.value().getAsDouble());
        }
        if (c.low().isPresent() && c.high().isPresent()) {
            return n.write(c.low().getAsDouble()) + " to "
                    + n.writeWithUnit(c.high().getAsDouble());
        }
        return c.low().isPresent()
                ? "at least " + n.writeWithUnit(c.low().getAsDouble())
                : "at most " + n.writeWithUnit(c.high().orElseThrow());
    }

    private static List<String> band(Optional<Band> band, Notation n) {
        return band.map(b -> List.of(n.write(b.p05()), n.write(b.p50()), n.write(b.p95())))
                .orElse(List.of(NONE, NONE, NONE));
    }

    static PageTable kinds(Judgement j) {
        boolean pairs = j.kinds().stream()
                        .map(k -> k.hypothesis().fuel().id()
                                + k.hypothesis().oxidizer().id())
                        .distinct()
                        .count()
                > 1;
        List<String> titles = new ArrayList<>(List.of("<cycle"));
        if (pairs) {
            titles.add("<propellants");
        }
        titles.addAll(List.of("probability", "<why"));
        PageTable.Builder table = PageTable.titled("Which cycle", titles.toArray(String[]::new));
        for (Judgement.Kind k : j.kinds()) {
            List<String> cells = new ArrayList<>(List.of(k.hypothesis().cycle().title()));
            if (pairs) {
                cells.add(k.hypothesis().oxidizer().id() + " / "
                        + k.hypothesis().fuel().id());
            }
            cells.add(Notation.PERCENT.write(k.probability()));
            cells.add(k.reason());
            table.marked(k == j.kinds().get(0) && k.probability() > 0 ? "best" : "", cells.toArray(String[]::new));
        }
        return table.table();
    }

    static PageTable findings(String caption, List<Judgement.Finding> findings, boolean sources) {
        List<String> titles =
                new ArrayList<>(List.of("<number", "<unit", "before 5 %", "50 %", "95 %", "after 5 %", "50 %", "95 %"));
        if (sources) {
            titles.add("<believed before because");
        }
        PageTable.Builder table = PageTable.titled(caption, titles.toArray(String[]::new));
        for (Judgement.Finding f : findings) {
            List<String> cells = new ArrayList<>(
                    List.of(sources ? f.path() : f.title(), f.notation().unit()));
            cells.addAll(band(f.prior(), f.notation()));
            cells.addAll(band(Optional.of(f.posterior()), f.notation()));
            if (sources) {
                cells.add(f.source());
            }
            table.row(cells.toArray(String[]::new));
        }
        return table.table();
    }

    /** What the figure is called that further facts should narrow. */
    static String about(Judgement j) {
        return Stream.concat(j.figures().stream(), j.unknowns().stream())
                .filter(f -> f.path().equals(j.about()))
                .map(Judgement.Finding::title)
                .findFirst()
                .orElse(j.about());
    }

    static PageTable nextFacts(Judgement j) {
        PageTable.Builder table =
                PageTable.titled("What would tell most", "<fact", "<path", "narrows " + about(j) + " by");
        j.nextFacts().forEach(f -> table.row(f.title(), f.path(), Notation.PERCENT.write(f.gain())));
        return table.table();
    }

    /** Medians of headline figures of each kind, side by side; nothing where there is one kind. */
    static Optional<PageTable> medians(Judgement j) {
        List<Judgement.Kind> kinds =
                j.kinds().stream().filter(k -> !k.medians().isEmpty()).limit(6).toList();
        if (kinds.size() < 2) {
            return Optional.empty();
        }
        List<String> titles = new ArrayList<>(List.of("<figure", "<unit"));
        boolean fuels =
                kinds.stream().map(k -> k.hypothesis().fuel().id()).distinct().count() > 1;
        kinds.forEach(k -> titles.add(k.hypothesis().cycle().id()
                + (fuels ? ", " + k.hypothesis().fuel().id() : "")));
        PageTable.Builder table = PageTable.titled("Medians of each kind", titles.toArray(String[]::new));
        for (Judgement.Finding f : j.figures()) {
            List<String> cells = new ArrayList<>(List.of(f.title(), f.notation().unit()));
            for (Judgement.Kind k : kinds) {
                Double median = k.medians().get(f.path());
                cells.add(median == null ? NONE : f.notation().write(median));
            }
            table.row(cells.toArray(String[]::new));
        }
        return Optional.of(table.table());
    }
}

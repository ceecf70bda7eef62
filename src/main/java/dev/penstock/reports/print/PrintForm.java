package dev.penstock.reports.print;

import dev.penstock.reports.chart.Ink;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A page made ready for paper: the style sheet of paper instead of that of screens, the colours of light paper, folded
 * parts open, drawings no wider than the sheet, and a bookmark for each section. Pages are written so that they are
 * well-formed XML as well as HTML.
 */
final class PrintForm {

    private static final String DOCTYPE = "<!DOCTYPE html>";
    /** Sections that are left out with the trail. */
    private static final Set<String> APPENDED = Set.of("models", "file", "trail");

    private static final double SIDE_MARGIN = 15 * 72 / 25.4;
    private static final double HEAD_AND_FOOT = 38 * 72 / 25.4;
    /** A drawing's caption, and the heading and text above it, share the sheet with it (points). */
    private static final double BESIDE_DRAWING = 150;
    /** The title of a page without a list of its parts, and what may stand between it and the first drawing (points). */
    private static final double TITLE = 190;

    private static final int NAMED = 4;
    /** Least room for a heading and what follows it, where that is not a drawing (points). */
    private static final double BESIDE_TEXT = 130;
    /** Points per px of a drawing that need not shrink. */
    private static final double LARGEST_SCALE = 0.75;

    /** The drawing library mistakes its fonts for finished at this very size, and sets them at 1 px. */
    private static final Pattern UNSET_SIZE = Pattern.compile("font-size: ?12(?:\\.0)?px");

    private final Document document;
    private final PaperSize size;

    private final Map<Element, Double> heights = new HashMap<>();

    private PrintForm(Document document, PaperSize size) {
        this.document = document;
        this.size = size;
    }

    static PrintForm of(String html, PaperSize size, boolean withTrail) {
        PrintForm form = new PrintForm(parse(html), size);
        if (!withTrail) {
            form.leaveTrailOut();
        }
        form.restyle();
        form.unfold();
        form.shortenTrail();
        form.head();
        form.cautionFirst();
        new PrintTables(form.document, size.width() - 2 * SIDE_MARGIN).fit();
        form.fitDrawings();
        form.keepHeadings();
        form.unlink();
        form.bookmark();
        return form;
    }

    Document document() {
        return document;
    }

    /** @return program that made the page, as the page says */
    String maker() {
        return all("meta").stream()
                .filter(m -> m.getAttribute("name").equals("generator"))
                .map(m -> m.getAttribute("content"))
                .findFirst()
                .orElse("Penstock");
    }

    private static Document parse(String html) {
        String text = html.strip();
        if (text.startsWith(DOCTYPE)) {
            text = text.substring(DOCTYPE.length());
        }
        for (Ink ink : Ink.values()) {
            text = text.replace(ink.css(), ink.lightCss());
        }
        text = UNSET_SIZE.matcher(text).replaceAll("font-size:12.01px");
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(text.strip())));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("a page is not well-formed: " + e.getMessage(), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void restyle() {
        Element style = all("style").get(0);
        String css = sheet().replace("{paper}", size.id()).replace("{text}", PrintFonts.TEXT);
        for (Ink ink : Ink.values()) {
            css = css.replace(ink.css(), ink.lightCss());
        }
        style.setTextContent(css.replace("{code}", PrintFonts.CODE));
    }

    /**
     * Models, concept file and trail, and what is folded in the other sections, fill half of the sheets and are read on a
     * screen; the attached page has them.
     */
    private void leaveTrailOut() {
        List<Element> out = new ArrayList<>();
        for (Element section : all("section")) {
            if (APPENDED.contains(section.getAttribute("id"))) {
                out.add(section);
            } else {
                out.addAll(all(section, "details"));
            }
        }
        all("a").stream()
                .filter(a -> APPENDED.contains(a.getAttribute("href").replace("#", "")))
                .forEach(out::add);
        if (out.isEmpty()) {
            return;
        }
        out.forEach(e -> e.getParentNode().removeChild(e));
        Element said = line(
                "star",
                "Models, folded tables, the file and the trail of every number are in the page attached to this document.");
        all("footer").get(0).appendChild(said);
    }

    private void unfold() {
        for (Element summary : all("summary")) {
            summary.getParentNode().removeChild(summary);
        }
    }

    /** Inputs stand in tables of their own, and a long list of what went in is whole on the attached page. */
    private void shortenTrail() {
        for (Element entry : all("p")) {
            String id = entry.getAttribute("id");
            if (id.startsWith("t:concept.") || id.startsWith("t:plan.")) {
                entry.getParentNode().removeChild(entry);
            } else if (id.startsWith("t:")) {
                List<Element> inputs = all(entry, "a");
                if (inputs.size() > NAMED) {
                    Node last = inputs.get(NAMED - 1);
                    while (last.getNextSibling() != null) {
                        entry.removeChild(last.getNextSibling());
                    }
                    entry.appendChild(document.createTextNode(" and more"));
                }
            }
        }
    }

    /** What stands above and below every sheet. */
    private void head() {
        Element body = all("body").get(0);
        Node first = body.getFirstChild();
        body.insertBefore(line("running", text("h1") + " · " + text("p", "kind")), first);
        body.insertBefore(line("foot", maker() + " · " + text("p", "caution")), first);
    }

    /** Where a page begins with a list of its parts, the cautions fill the rest of the first sheet. */
    private void cautionFirst() {
        List<Element> contents = all("nav");
        all("section").stream()
                .filter(s -> s.getAttribute("id").equals("cautions") && !contents.isEmpty())
                .forEach(s -> contents.get(0)
                        .getParentNode()
                        .insertBefore(s, contents.get(0).getNextSibling()));
    }

    private Element line(String name, String text) {
        Element line = document.createElement("div");
        line.setAttribute("class", name);
        line.setTextContent(text);
        return line;
    }

    private String text(String name) {
        return all(name).get(0).getTextContent().strip();
    }

    private String text(String name, String kind) {
        return all(name).stream()
                .filter(e -> e.getAttribute("class").equals(kind))
                .map(e -> e.getTextContent().strip())
                .findFirst()
                .orElse("");
    }

    /** Drawings are laid out in px; here they get their size on the sheet. */
    private void fitDrawings() {
        double widest = size.width() - 2 * SIDE_MARGIN - 2;
        double highest = size.height() - HEAD_AND_FOOT - BESIDE_DRAWING;
        List<Element> drawings = all("svg");
        for (Element svg : drawings) {
            boolean onFirstSheet = svg == drawings.get(0) && all("nav").isEmpty();
            double width = Double.parseDouble(svg.getAttribute("width"));
            double height = Double.parseDouble(svg.getAttribute("height"));
            double scale =
                    Math.min(LARGEST_SCALE, Math.min(widest / width, (highest - (onFirstSheet ? TITLE : 0)) / height));
            heights.put(svg, height * scale);
            svg.setAttribute("viewBox", "0 0 " + Math.round(width) + " " + Math.round(height));
            svg.setAttribute(
                    "style",
                    svg.getAttribute("style")
                            + String.format(Locale.ROOT, ";width:%.2fpt;height:%.2fpt", width * scale, height * scale));
        }
    }

    /** A section begins on a new sheet unless its heading and first drawing or short table still fit. */
    private void keepHeadings() {
        for (Element section : all("section")) {
            double least = all(section, "svg").stream()
                    .findFirst()
                    .map(svg -> heights.get(svg) + BESIDE_DRAWING)
                    .orElseGet(() -> BESIDE_TEXT + PrintTables.heightOfFirst(section));
            section.setAttribute("style", String.format(Locale.ROOT, "-fs-page-break-min-height:%.0fpt", least));
        }
    }

    /** Links to other files lead nowhere once a sheet is handed on. */
    private void unlink() {
        Set<String> places = new HashSet<>();
        all("*").forEach(e -> places.add(e.getAttribute("id")));
        for (Element link : all("a")) {
            String target = link.getAttribute("href");
            if (!target.startsWith("#") || !places.contains(target.substring(1))) {
                link.removeAttribute("href");
            }
        }
    }

    private void bookmark() {
        Element bookmarks = document.createElement("bookmarks");
        for (Element section : all("section")) {
            List<Element> titles = all(section, "h2");
            if (!titles.isEmpty()) {
                Element bookmark = document.createElement("bookmark");
                bookmark.setAttribute("name", titles.get(0).getTextContent().strip());
                bookmark.setAttribute("href", "#" + section.getAttribute("id"));
                bookmarks.appendChild(bookmark);
            }
        }
        all("head").get(0).appendChild(bookmarks);
    }

    private List<Element> all(String name) {
        return all(document.getDocumentElement(), name);
    }

    private static List<Element> all(Element within, String name) {
        NodeList found = within.getElementsByTagName(name);
        List<Element> list = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            list.add((Element) found.item(i));
        }
        return list;
    }

    private static String sheet() {
        try (InputStream in = PrintForm.class.getResourceAsStream("paper.css")) {
            if (in == null) {
                throw new IllegalStateException("paper.css is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

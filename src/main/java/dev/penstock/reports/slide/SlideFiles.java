package dev.penstock.reports.slide;

import dev.penstock.files.FileNames;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.DrawingFont;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.Plate;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Drawings for an audience as files: each wide and square, light and dark, as SVG and as PNG. */
public final class SlideFiles {

    private static final double EDGE = 48;
    private static final double TITLE = 46;
    private static final double SENTENCE = 33;
    private static final double SMALL = 20;
    private static final int PAGE_WIDTH = 1600;
    private static final int PAGE_HEIGHT = 720;

    private final String name;
    private final List<Slide> slides;

    /**
     * @param name what the drawings are about, for titles and file names
     * @param slides the drawings, in their order
     */
    public SlideFiles(String name, List<Slide> slides) {
        this.name = name;
        this.slides = List.copyOf(slides);
    }

    /** @return contents by file name */
    public Map<String, byte[]> files() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int i = 0; i < slides.size(); i++) {
            Slide slide = slides.get(i);
            for (SlideSize size : SlideSize.values()) {
                for (boolean light : new boolean[] {true, false}) {
                    String file = String.format(
                            Locale.ROOT,
                            "%s-%02d-%s-%s-%s",
                            FileNames.of(name),
                            i + 1,
                            slide.key(),
                            size.key(),
                            light ? "light" : "dark");
                    String svg = Plate.svg(
                            file,
                            name + ": " + slide.title() + ". " + slide.sentence(),
                            size.width(),
                            size.height(),
                            g -> draw(g, slide, size, light));
                    files.put(file + ".svg", DrawingFont.into(svg).getBytes(StandardCharsets.UTF_8));
                    files.put(file + ".png", Plate.png(size.width(), size.height(), g -> draw(g, slide, size, light)));
                }
            }
        }
        return files;
    }

    /**
     * @param files contents by file name
     * @return a ZIP archive of them
     */
    public static byte[] archive(Map<String, byte[]> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /**
     * @param id id of the drawing on its page
     * @param slide a drawing for an audience
     * @return the same for a page, whose caption says what a sheet says around it
     */
    public static Drawing drawing(String id, Slide slide) {
        Rectangle2D room = new Rectangle2D.Double(EDGE / 2, EDGE / 2, PAGE_WIDTH - EDGE, PAGE_HEIGHT - EDGE);
        String caption = slide.title() + ". " + slide.sentence();
        String svg = Plate.svg(
                id, caption, PAGE_WIDTH, PAGE_HEIGHT, g -> slide.painter().draw(new Pencil(g, true), room));
        return new Drawing(svg, caption, true);
    }

    private void draw(Graphics2D g, Slide slide, SlideSize size, boolean light) {
        Pencil pencil = new Pencil(g, light);
        double width = size.width();
        double height = size.height();
        pencil.fill(new Rectangle2D.Double(0, 0, width, height), pencil.color(Ink.PAPER));
        pencil.fill(new Rectangle2D.Double(0, 0, width, 10), pencil.color(Ink.GAIN));
        pencil.text(name, EDGE, EDGE + TITLE * 0.8, TITLE, true, pencil.color(Ink.TEXT));
        double after = EDGE + Pencil.width(name, TITLE, true) + 22;
        double titleSize = Math.min(TITLE * 0.72, (width - EDGE - after) / Pencil.width(slide.title(), 1, false));
        pencil.text(slide.title(), after, EDGE + TITLE * 0.8, titleSize, false, pencil.color(Ink.MUTED));
        List<String> lines = Pencil.wrapped(slide.sentence(), width - 2 * EDGE, SENTENCE, false);
        double foot = height - EDGE - SMALL * 0.6;
        double first = foot - SMALL * 1.4 - (lines.size() - 1) * SENTENCE * Pencil.LEADING;
        pencil.lines(lines, EDGE, first, SENTENCE, false, pencil.color(Ink.TEXT));
        pencil.right(
                "An estimate by Penstock, not a design release.",
                width - EDGE,
                foot + SMALL * 0.9,
                SMALL,
                false,
                pencil.color(Ink.MUTED));
        double top = EDGE + TITLE * 1.75;
        double bottom = first - SENTENCE * 1.35;
        slide.painter().draw(pencil, new Rectangle2D.Double(EDGE, top, width - 2 * EDGE, bottom - top));
    }
}

package dev.penstock.reports.chart;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.DefaultStyleHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGeneratorContext.GraphicContextDefaults;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * What a chart is drawn on to become SVG. Text is measured without rounding to pixels, coordinates have one decimal, and
 * looks are CSS, since a theme's variables do not work in attributes. Used by one thread.
 */
final class SvgCanvas extends SVGGraphics2D {

    private static final int DECIMALS = 1;
    /** How far beyond its clip nobody sees a line (px): half of one, and its cap. */
    private static final double BEYOND = 1;
    /** Batik breaks lines before the end of each tag. */
    private static final Pattern BREAK_IN_TAG = Pattern.compile("\\n\\s*(?=/?>)");

    /** Batik declares it on every drawing; nothing here links. */
    private static final String LINK_NAMESPACE = " xmlns:xlink=\"" + SVGConstants.XLINK_NAMESPACE_URI + '"';

    private final String id;
    private final Graphics2D ruler;

    private SvgCanvas(SVGGeneratorContext context, String id) {
        super(context, false);
        this.id = id;
        ruler = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics();
        ruler.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    private SvgCanvas(SvgCanvas other) {
        super(other);
        id = other.id;
        ruler = other.ruler;
    }

    /**
     * @param id identifier, unique in a page; those of the drawing's parts begin with it
     * @return an empty canvas
     */
    static SvgCanvas of(String id) {
        Document document = GenericDOMImplementation.getDOMImplementation()
                .createDocument(SVGConstants.SVG_NAMESPACE_URI, SVGConstants.SVG_SVG_TAG, null);
        GraphicContextDefaults defaults = new GraphicContextDefaults();
        defaults.setFont(ChartFont.of(12));
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setGraphicContextDefaults(defaults);
        context.setComment(null);
        context.setPrecision(DECIMALS);
        context.setIDGenerator(new PrefixedIds(id));
        context.setStyleHandler(new HouseStyle());
        return new SvgCanvas(context, id);
    }

    /**
     * @param title what the drawing shows, for those who cannot see it
     * @param width width (px)
     * @param height height (px)
     * @return the drawing as an {@code svg} element
     */
    String svg(String title, int width, int height) {
        Element root = getRoot();
        root.setAttributeNS(null, SVGConstants.SVG_ID_ATTRIBUTE, id);
        root.setAttributeNS(null, SVGConstants.SVG_VIEW_BOX_ATTRIBUTE, "0 0 " + width + " " + height);
        root.setAttributeNS(null, SVGConstants.SVG_WIDTH_ATTRIBUTE, String.valueOf(width));
        root.setAttributeNS(null, SVGConstants.SVG_HEIGHT_ATTRIBUTE, String.valueOf(height));
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS(null, "aria-labelledby", id + "-title");
        Element name = getDOMFactory().createElementNS(SVGConstants.SVG_NAMESPACE_URI, SVGConstants.SVG_TITLE_TAG);
        name.setAttributeNS(null, SVGConstants.SVG_ID_ATTRIBUTE, id + "-title");
        name.appendChild(getDOMFactory().createTextNode(title));
        Element definitions = (Element) root.getFirstChild();
        definitions.setAttributeNS(null, SVGConstants.SVG_ID_ATTRIBUTE, id + "-definitions");
        root.insertBefore(name, definitions);
        return text(root);
    }

    private String text(Element root) {
        StringWriter out = new StringWriter();
        try {
            stream(root, out, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // A declaration and a document type stand before it, which have no place inside a page.
        String svg = out.toString().replace(LINK_NAMESPACE, "");
        return BREAK_IN_TAG
                .matcher(svg.substring(svg.indexOf("<svg")))
                .replaceAll("")
                .strip();
    }

    @Override
    public Graphics create() {
        return new SvgCanvas(this);
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return ruler.getFontMetrics(font);
    }

    @Override
    public void draw(Shape shape) {
        unclipped(getStroke().createStrokedShape(shape).getBounds2D(), () -> super.draw(shape));
    }

    @Override
    public void fill(Shape shape) {
        unclipped(shape.getBounds2D(), () -> super.fill(shape));
    }

    @Override
    public void drawString(String text, float x, float y) {
        Rectangle2D size = getFontMetrics(getFont()).getStringBounds(text, this);
        size.setRect(size.getX() + x, size.getY() + y, size.getWidth(), size.getHeight());
        unclipped(size, () -> super.drawString(text, x, y));
    }

    /** What lies inside the clip is written without it: a browser cuts out every element that names one, by itself. */
    private void unclipped(Rectangle2D box, Runnable drawn) {
        Shape clip = getClip();
        if (clip == null || !inside(box, clip)) {
            drawn.run();
            return;
        }
        setClip(null);
        drawn.run();
        setClip(clip);
    }

    private static boolean inside(Rectangle2D box, Shape clip) {
        Rectangle2D edge = clip.getBounds2D();
        double inner = 0.01;
        return clip.contains(
                        edge.getX() + inner,
                        edge.getY() + inner,
                        edge.getWidth() - 2 * inner,
                        edge.getHeight() - 2 * inner)
                && box.getMinX() > edge.getMinX() - BEYOND
                && box.getMinY() > edge.getMinY() - BEYOND
                && box.getMaxX() < edge.getMaxX() + BEYOND
                && box.getMaxY() < edge.getMaxY() + BEYOND;
    }

    /** Several drawings share a page, and with it one space of names. */
    private static final class PrefixedIds extends SVGIDGenerator {

        private final String prefix;

        PrefixedIds(String prefix) {
            this.prefix = prefix;
        }

        @Override
        public String generateID(String kind) {
            return prefix + "-" + super.generateID(kind);
        }
    }

    /** Our list of fonts, no hints that change text or colours, and no colour by name, so that all follow the theme. */
    private static final class HouseStyle extends DefaultStyleHandler {

        private static final Set<String> HINTS = Set.of(
                SVGConstants.SVG_TEXT_RENDERING_ATTRIBUTE,
                SVGConstants.SVG_COLOR_RENDERING_ATTRIBUTE,
                SVGConstants.SVG_COLOR_INTERPOLATION_ATTRIBUTE,
                SVGConstants.SVG_IMAGE_RENDERING_ATTRIBUTE);

        @Override
        @SuppressWarnings("rawtypes")
        public void setStyle(Element element, Map style, SVGGeneratorContext context) {
            Map<String, String> ours = new HashMap<>();
            for (Object name : style.keySet()) {
                if (!HINTS.contains(name)) {
                    ours.put((String) name, value((String) name, (String) style.get(name)));
                }
            }
            super.setStyle(element, ours, context);
        }

        private static String value(String name, String value) {
            if (name.equals(SVGConstants.SVG_FONT_FAMILY_ATTRIBUTE)) {
                return ChartFont.FAMILIES.replace('"', '\'');
            }
            return value.equals(SVGConstants.CSS_WHITE_VALUE) ? Ink.PAPER.rgb() : value;
        }
    }
}

package dev.penstock.reports.print;

import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import dev.penstock.numerics.Cancellation;
import java.awt.Rectangle;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.w3c.dom.Element;

/**
 * Prints a page as PDF: no browser, nothing from outside, the same bytes each time. Fonts are embedded and drawings stay
 * vectors. Where the trail of its numbers is printed, the numbers lead to it. The page and the files that it holds are
 * attached, so that the numbers can be made again from the PDF alone.
 */
public final class PdfReport {

    /** Bytes that a page may hold when it is read again: far more than one of ours has. */
    public static final int LARGEST_PAGE = 64 << 20;

    private PdfReport() {}

    /**
     * Draws with words that can be selected. Printing is drawing for most of its time: work that nobody wants any more ends at
     * the next drawing.
     */
    private static final class StoppableDrawer extends BatikSVGDrawer {

        @Override
        public SVGImage buildSVGImage(
                Element drawing, Box box, CssContext context, double width, double height, double dots) {
            Cancellation.check();
            SVGImage image = super.buildSVGImage(drawing, box, context, width, height, dots);
            return new SVGImage() {
                @Override
                public int getIntrinsicWidth() {
                    return image.getIntrinsicWidth();
                }

                @Override
                public int getIntrinsicHeight() {
                    return image.getIntrinsicHeight();
                }

                @Override
                public void drawSVG(OutputDevice device, RenderingContext rendering, double x, double y) {
                    Cancellation.check();
                    image.drawSVG(device, rendering, x, y);
                    Rectangle place = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), rendering);
                    float wide = (float) (place.width / dots);
                    float high = (float) (place.height / dots);
                    device.drawWithGraphics(
                            (float) x, (float) y, wide, high, graphics -> DrawingText.write(drawing, graphics, wide));
                }
            };
        }
    }

    /**
     * @param html a page that one of the views made
     * @param size paper
     * @return the PDF
     */
    public static byte[] of(String html, PaperSize size) {
        return of(html, size, false);
    }

    /**
     * @param html a page that one of the views made
     * @param size paper
     * @param withTrail whether models, folded tables, the file and the trail of its numbers are printed too
     * @return the PDF
     */
    public static byte[] of(String html, PaperSize size, boolean withTrail) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        write(html, size, withTrail, out);
        return out.toByteArray();
    }

    /**
     * @param html a page that one of the views made
     * @param size paper
     * @param withTrail whether models, folded tables, the file and the trail of its numbers are printed too
     * @param out where the PDF goes; it stays open
     * @throws UncheckedIOException if that cannot be written
     * @throws java.util.concurrent.CancellationException if the work on this thread is to stop
     */
    public static void write(String html, PaperSize size, boolean withTrail, OutputStream out) {
        XRLog.setLoggingEnabled(false);
        PrintForm form = PrintForm.of(html, size, withTrail);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useSVGDrawer(new StoppableDrawer());
        builder.usePdfUaAccessibility(true);
        builder.useReplacementText("\u25a1");
        builder.useExternalResourceAccessControl(
                (uri, kind) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        PrintFonts.addTo(builder);
        builder.withW3cDocument(form.document(), null);
        builder.withProducer(form.maker());
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            try (PDDocument pdf = renderer.getPdfDocument()) {
                finish(pdf, html);
                Attachments.add(pdf, html);
                pdf.save(out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * @param pdf a PDF that was printed here, or any other
     * @return the page that it was printed from; empty if it does not hold one
     * @throws IOException if it is not a PDF, or holds a page larger than {@link #LARGEST_PAGE}
     */
    public static Optional<String> page(byte[] pdf) throws IOException {
        return Attachments.page(pdf);
    }

    /** The time of printing would make two prints of one page differ. */
    private static void finish(PDDocument pdf, String html) {
        PDDocumentInformation about = pdf.getDocumentInformation();
        about.setCreationDate(null);
        about.setModificationDate(null);
        pdf.setDocumentId((long) html.hashCode());
    }
}

package dev.penstock.reports.print;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Files within a PDF: those that its page holds, and the page itself. */
final class Attachments {

    private static final String PAGE = "page.html";
    private static final Pattern HELD = Pattern.compile(
            "<a(?: id=\"[a-z]+\")? download=\"([^\"]+)\" href=\"data:([a-z/]+);base64,([A-Za-z0-9+/=]+)\"");

    private Attachments() {}

    static void add(PDDocument pdf, String html) throws IOException {
        Map<String, PDComplexFileSpecification> files = new TreeMap<>();
        files.put(PAGE, file(pdf, PAGE, "text/html", html.getBytes(StandardCharsets.UTF_8)));
        Matcher held = HELD.matcher(html);
        while (held.find()) {
            byte[] content = Base64.getDecoder().decode(held.group(3));
            files.put(held.group(1), file(pdf, held.group(1), held.group(2), content));
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(new LinkedHashMap<>(files));
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(pdf.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        pdf.getDocumentCatalog().setNames(names);
    }

    private static PDComplexFileSpecification file(PDDocument pdf, String name, String type, byte[] content)
            throws IOException {
        PDEmbeddedFile file = new PDEmbeddedFile(pdf, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
        file.setSubtype(type);
        file.setSize(content.length);
        PDComplexFileSpecification specification = new PDComplexFileSpecification();
        specification.setFile(name);
        specification.setFileUnicode(name);
        specification.setEmbeddedFile(file);
        specification.setEmbeddedFileUnicode(file);
        return specification;
    }

    /** @return the page that a PDF was printed from; empty if it holds none */
    static Optional<String> page(byte[] bytes) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            PDDocumentNameDictionary names = pdf.getDocumentCatalog().getNames();
            if (names == null || names.getEmbeddedFiles() == null) {
                return Optional.empty();
            }
            Map<String, PDComplexFileSpecification> files =
                    names.getEmbeddedFiles().getNames();
            if (files == null || !files.containsKey(PAGE)) {
                return Optional.empty();
            }
            return Optional.of(text(files.get(PAGE).getEmbeddedFile()));
        }
    }

    /** Unpacks as far as a page goes: a few packed bytes of a file from elsewhere may stand for more than memory holds. */
    private static String text(PDEmbeddedFile packed) throws IOException {
        List<COSName> filters = packed.getFilters();
        if (!filters.isEmpty() && !filters.equals(List.of(COSName.FLATE_DECODE))) {
            throw new IOException("its page is packed in a way that is not read: " + filters);
        }
        try (InputStream raw = packed.getCOSObject().createRawInputStream();
                InputStream in = filters.isEmpty() ? raw : new InflaterInputStream(raw)) {
            byte[] bytes = in.readNBytes(PdfReport.LARGEST_PAGE + 1);
            if (bytes.length > PdfReport.LARGEST_PAGE) {
                throw new IOException("a page may hold " + (PdfReport.LARGEST_PAGE >> 20) + " MiB");
            }
            return new String(bytes, StandardCharsets.UTF_8);
        }
    }
}

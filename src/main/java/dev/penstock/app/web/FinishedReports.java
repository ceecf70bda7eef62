package dev.penstock.app.web;

import dev.penstock.reports.print.PaperSize;
import dev.penstock.reports.print.PdfReport;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Finished reports, kept for a while so that a frame or a download can fetch them. */
final class FinishedReports {

    private static final int KEPT = 16;
    private static final String PAGE = ".html";
    private static final String PRINT = ".pdf";

    private final Recent<String, Report> reports = new Recent<>(KEPT);

    private final RequestWorkers workers;

    /** @param workers print the papers */
    FinishedReports(RequestWorkers workers) {
        this.workers = workers;
    }

    private record Report(String name, byte[] content) {}

    /**
     * @param asker who asks for it
     * @param name file name for a download, without ending
     * @param html page
     * @param form "html", or the paper to print it on
     * @return its id
     * @throws Refusal if there is no such form
     */
    String put(Asker asker, String name, String html, String form) {
        if (form.isEmpty() || form.equals("html")) {
            return put(name + PAGE, html.getBytes(StandardCharsets.UTF_8));
        }
        PaperSize paper = PaperSize.named(form)
                .orElseThrow(() -> new Refusal(422, "a report comes as html, or on paper: a4 or letter"));
        return put(name + PRINT, workers.print(asker, () -> PdfReport.of(html, paper)));
    }

    private String put(String name, byte[] content) {
        String id = UUID.randomUUID().toString();
        reports.put(id, new Report(name, content));
        return id;
    }

    private Report get(String id) {
        return reports.get(id).orElseThrow(() -> new Refusal(404, "this report is not kept any more; make it again"));
    }

    /** Answers with a report, to be shown or, with the parameter {@code download}, to be kept as a file. */
    void show(Context request) {
        Report report = get(request.pathParam("id"));
        Gate.reportHeaders(request);
        if (request.queryParam("download") != null) {
            request.header("Content-Disposition", "attachment; filename=\"" + report.name() + "\"");
        }
        request.contentType(report.name().endsWith(PRINT) ? "application/pdf" : LocalServer.HTML)
                .result(report.content());
    }

    /**
     * @param name name of a concept or vehicle
     * @return it as a file name without ending
     */
    static String fileName(String name) {
        String plain = name.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "report" : plain;
    }
}

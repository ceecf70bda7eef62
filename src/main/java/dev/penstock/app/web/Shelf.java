package dev.penstock.app.web;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** Finished reports, kept for a while so that a frame or a download can fetch them. */
final class Shelf {

    private static final int KEPT = 16;

    private final Map<String, Report> reports = new LinkedHashMap<>();

    private record Report(String name, String html) {}

    /**
     * @param name file name for a download
     * @param html page
     * @return its id
     */
    synchronized String put(String name, String html) {
        String id = UUID.randomUUID().toString();
        reports.put(id, new Report(name, html));
        while (reports.size() > KEPT) {
            reports.remove(reports.keySet().iterator().next());
        }
        return id;
    }

    private synchronized Report get(String id) {
        Report report = reports.get(id);
        if (report == null) {
            throw new Refusal(404, "this report is not kept any more; make it again");
        }
        return report;
    }

    /** Answers with a report, to be shown or, with the parameter {@code download}, to be kept as a file. */
    void show(Context request) {
        Report report = get(request.pathParam("id"));
        Gate.reportHeaders(request);
        if (request.queryParam("download") != null) {
            request.header("Content-Disposition", "attachment; filename=\"" + report.name() + "\"");
        }
        request.contentType(Workbench.HTML).result(report.html());
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

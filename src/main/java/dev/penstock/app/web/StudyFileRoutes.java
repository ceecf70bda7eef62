package dev.penstock.app.web;

import dev.penstock.errors.InvalidInput;
import dev.penstock.study.StudyFile;
import dev.penstock.study.StudyInputs;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Opens and saves studies: the same files that the command line does again. */
final class StudyFileRoutes {

    private static final String UP = "../";

    private final Workspace workspace;

    StudyFileRoutes(Workspace workspace) {
        this.workspace = workspace;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/studies", this::list);
        routes.get("/api/study", this::open);
        routes.post("/api/study", this::save);
    }

    /** Names the studies that can be read; one that cannot is named with its problem when it is opened. */
    private void list(Context request) {
        List<Map<String, Object>> studies = new ArrayList<>();
        for (String file : workspace.studies()) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("file", file);
            try {
                StudyFile study = StudyFile.parse(file, workspace.read(file).text());
                map.put("name", study.name());
                map.put("study", study.kind().key());
            } catch (InvalidInput e) {
                map.put("name", file);
                map.put("study", "");
            }
            studies.add(map);
        }
        LocalServer.json(request, Map.of("studies", studies));
    }

    private void open(Context request) {
        Workspace.Document document =
                workspace.read(Optional.ofNullable(request.queryParam("name")).orElse(""));
        LocalServer.json(request, answer(document, StudyFile.parse(document.name(), document.text())));
    }

    private Map<String, Object> answer(Workspace.Document document, StudyFile study) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("file", document.name());
        map.put("version", document.version());
        map.put("name", study.name());
        map.put("study", study.kind().key());
        map.put(
                "cases",
                study.cases().stream().map(c -> inWorkspace(document, c)).toList());
        map.put("changes", study.changes());
        map.put("vary", study.vary());
        map.put("samples", study.samples());
        map.put("fly", study.fly());
        map.put("further", study.further());
        return map;
    }

    /** A study names its cases by path; the browser knows them by their names in the workspace. */
    private String inWorkspace(Workspace.Document document, String file) {
        Path place = workspace.place(document.name()).getParent().resolve(file).normalize();
        return workspace
                .nameOf(place)
                .orElseThrow(() -> new Refusal(403, "the study names a file outside the workspace: " + file));
    }

    private void save(Context request) {
        RequestBody body = RequestBody.of(request);
        StudyFile study = of(body, body.text("name"));
        String text = study.text();
        if (!StudyFile.parse(body.text("as"), text).equals(study)) {
            throw new Refusal(422, "this study cannot be written as a file");
        }
        if (!body.text("as").startsWith(Workspace.STUDIES + "/")) {
            throw new Refusal(422, "studies are kept in the folder " + Workspace.STUDIES);
        }
        LocalServer.json(request, answer(workspace.save(body.text("as"), text, body.text("version")), study));
    }

    /** The study that a page has been set to. */
    StudyFile of(RequestBody body, String name) {
        List<String> cases = body.texts("cases");
        cases.forEach(workspace::place);
        StudyFile.Kind kind = kind(body.text("study"));
        Map<String, List<String>> further = new LinkedHashMap<>();
        for (String key : StudyInputs.keys(kind)) {
            List<String> texts = body.texts(key);
            if (!texts.isEmpty()) {
                if (StudyInputs.isWhole(key) && !texts.get(0).matches("\\d{1,9}")) {
                    throw new Refusal(422, key + " is " + texts.get(0) + "; write a whole number");
                }
                further.put(key, texts);
            }
        }
        return new StudyFile(
                name,
                kind,
                cases.stream().map(c -> UP + c).toList(),
                body.changes("changes"),
                body.texts("vary"),
                (int) Math.min(Math.max(-1, body.number("samples")), Integer.MAX_VALUE),
                body.flag("fly"),
                further);
    }

    private static StudyFile.Kind kind(String name) {
        for (StudyFile.Kind kind : StudyFile.Kind.values()) {
            if (kind.key().equals(name.toLowerCase(Locale.ROOT))) {
                return kind;
            }
        }
        throw new Refusal(
                422,
                "a study is one of "
                        + Arrays.stream(StudyFile.Kind.values())
                                .map(StudyFile.Kind::key)
                                .collect(Collectors.joining(", ")));
    }
}

package dev.penstock.app.console;

import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputFile;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.text.Release;
import dev.penstock.reports.text.Software;
import dev.penstock.vehicle.reading.VehicleReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the files of cases: as a path, or by the name of a concept that comes with Penstock. */
public final class CaseFiles {

    private static final String ENDING = ".toml";

    private CaseFiles() {}

    /**
     * A case ready to be read.
     *
     * @param file its file
     * @param changes values by dotted path that replace or add to what the file says
     */
    public record Case(Path file, Map<String, String> changes) {

        public Case {
            changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
        }
    }

    /**
     * @param session session
     * @param name path of a case or of a page that was made from one, or name of a case that comes with Penstock
     * @param changes changes asked for; they come after those that a page was made with
     * @return the case
     * @throws InvalidInput if there is none
     */
    public static Case one(Session session, String name, Map<String, String> changes) {
        Path file = find(session, List.of(name)).get(0);
        if (!PageFiles.is(file)) {
            return new Case(file, changes);
        }
        ReportRecord record = checked(session, file);
        if (record.cases().size() != 1) {
            throw new InvalidInput(
                    "",
                    "CASE",
                    name,
                    "it holds " + record.cases().size() + " cases; take the page of one, or penstock reproduce");
        }
        Map<String, String> all = new LinkedHashMap<>(record.changes());
        all.putAll(changes);
        return new Case(
                PageFiles.unpack(session, file, record).resolve(record.cases().get(0)), all);
    }

    /**
     * @param session session
     * @param names paths of cases or of pages that were made from some, or names of cases that come with Penstock
     * @return files of the cases; those of a page say what the page was made with
     * @throws InvalidInput naming every case that is not there
     */
    public static List<Path> several(Session session, List<String> names) {
        List<Path> files = new ArrayList<>();
        for (Path file : find(session, names)) {
            files.addAll(PageFiles.is(file) ? held(session, file) : List.of(file));
        }
        return files;
    }

    private static List<Path> held(Session session, Path page) {
        ReportRecord record = checked(session, page);
        Path folder = PageFiles.unpack(session, page, record);
        List<Path> cases = record.cases().stream().map(folder::resolve).toList();
        if (!record.changes().isEmpty()) {
            try {
                for (Path one : cases) {
                    Files.writeString(one, InputFile.with(Files.readString(one), record.changes()));
                }
            } catch (IOException e) {
                throw new InvalidInput(
                        "", "CASE", page.toString(), "its files could not be put where they can be read");
            }
        }
        return cases;
    }

    private static ReportRecord checked(Session session, Path page) {
        ReportRecord record = PageFiles.record(page);
        PageFiles.warning(page, record, Software.of(session.home(), Release.version()))
                .ifPresent(warning -> session.err().println("penstock: " + warning));
        return record;
    }

    /**
     * @param session session
     * @param command command that makes a page
     * @param options its further options
     * @param cases cases that it is given, each a concept or a vehicle; all with the same changes
     * @return what the page has to hold; files are named by their path below the folder that holds them all
     */
    public static ReportRecord record(Session session, String command, List<String> options, List<Case> cases) {
        Map<Path, String> texts = new LinkedHashMap<>();
        for (Case one : cases) {
            InputFile input = InputFile.read(one.file(), one.changes());
            texts.put(place(one.file()), input.text());
            if (!input.root().has("cycle")) {
                for (Path engine : new VehicleReader(session.fluids())
                        .read(one.file(), one.changes())
                        .engineFiles()) {
                    texts.put(place(engine), InputFile.read(engine, Map.of()).text());
                }
            }
        }
        Path common = common(texts.keySet());
        Map<String, String> files = new LinkedHashMap<>();
        texts.forEach((file, text) -> files.put(name(common, file), text));
        return new ReportRecord(
                command,
                options,
                cases.get(0).changes(),
                cases.stream().map(one -> name(common, place(one.file()))).toList(),
                files,
                Software.of(session.home(), Release.version()));
    }

    private static Path place(Path file) {
        return file.toAbsolutePath().normalize();
    }

    private static Path common(Set<Path> files) {
        Path common = files.iterator().next().getParent();
        for (Path file : files) {
            while (!file.startsWith(common)) {
                common = common.getParent();
            }
        }
        return common;
    }

    private static String name(Path common, Path file) {
        return common.relativize(file).toString().replace('\\', '/');
    }

    /**
     * @param session session
     * @param names paths, or names of files in {@code cycles/} and {@code cycles/vehicles/} without their ending
     * @return the files
     * @throws InvalidInput naming every case that is not there
     */
    public static List<Path> find(Session session, List<String> names) {
        List<Path> files = new ArrayList<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        for (String name : names) {
            Path file = find(session, name);
            if (Files.isRegularFile(file)) {
                files.add(file);
            } else {
                problems.add(new InvalidInput.Problem(
                        "",
                        "CASE",
                        name,
                        "write the path of a concept file, or one of "
                                + String.join(", ", names(session.home().resolve("cycles")))));
            }
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
        return files;
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new InvalidInput(
                    "",
                    "CASE",
                    name,
                    "it cannot name a file here (" + e.getReason() + "); letters beyond ASCII need a locale in UTF-8,"
                            + " such as LC_ALL=C.UTF-8");
        }
    }

    private static Path find(Session session, String name) {
        Path path = path(name);
        if (Files.exists(path) || !name.matches("[\\w-]+")) {
            return path;
        }
        Path concept = session.home().resolve("cycles").resolve(name + ENDING);
        return Files.exists(concept)
                ? concept
                : session.home().resolve("cycles/vehicles").resolve(name + ENDING);
    }

    private static List<String> names(Path folder) {
        return in(folder).stream()
                .map(file -> file.getFileName().toString())
                .map(file -> file.substring(0, file.length() - ENDING.length()))
                .toList();
    }

    /**
     * @param folder a folder
     * @return the TOML files directly in it, sorted; none if it does not exist
     */
    public static List<Path> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}

package dev.penstock.app;

import dev.penstock.app.console.Session;

import dev.penstock.input.HomeFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes the JSON documents of the commands that answer with numbers, for every demo file and for a folder of further
 * concepts, so that two versions of the program can be compared number by number (src/bench/compare_answers.py). Each
 * command runs on a thread of its own.
 */
public final class AnswersRun {

    private static final List<String> PAIRS = List.of(
            "oxygen hydrogen 6.0",
            "oxygen methane 3.4",
            "oxygen rp-1 2.5",
            "oxygen propane 2.9",
            "oxygen ethanol 1.6",
            "oxygen ammonia 1.3",
            "nitrogen-tetroxide mmh 2.0",
            "nitrogen-tetroxide udmh 2.5",
            "nitrogen-tetroxide hydrazine-50 1.9",
            "nitrous-oxide ethanol 4.5",
            "hydrogen-peroxide-98 rp-1 7.0");

    private final Path folder;

    private AnswersRun(Path folder) {
        this.folder = folder;
    }

    /**
     * @param arguments folder to write into, and a folder of further concept files (optional)
     * @throws Exception if a file cannot be read or written
     */
    public static void main(String[] arguments) throws Exception {
        AnswersRun run = new AnswersRun(Files.createDirectories(Path.of(arguments[0])));
        Path home = HomeFolder.find();
        for (Path concept : files(home.resolve("cycles"))) {
            for (String command : List.of("balance", "limit", "cool", "size", "nozzle")) {
                run.ask(command, concept);
            }
        }
        for (Path vehicle : files(home.resolve("cycles").resolve("vehicles"))) {
            run.ask("size", vehicle);
        }
        for (String pair : PAIRS) {
            String[] p = pair.split(" ");
            run.write(
                    "combust-" + p[0] + "-" + p[1],
                    "combust",
                    "--oxidizer",
                    p[0],
                    "--fuel",
                    p[1],
                    "--mixture-ratio",
                    p[2],
                    "--pressure",
                    "10MPa",
                    "--area-ratio",
                    "10,40");
        }
        if (arguments.length > 1) {
            for (Path concept : files(Path.of(arguments[1]))) {
                for (String command : List.of("balance", "limit", "cool", "nozzle")) {
                    run.ask(command, concept);
                }
            }
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(f -> f.toString().endsWith(".toml")).sorted().toList();
        }
    }

    private void ask(String command, Path file) throws Exception {
        String name = file.getFileName().toString().replace(".toml", "");
        write(command + "-" + name, command, file.toString());
    }

    private void write(String name, String... command) throws Exception {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> arguments = new ArrayList<>(List.of(command));
        arguments.add("--json");
        int[] code = new int[1];
        Thread thread = new Thread(() -> {
            Session session = Session.open(HomeFolder.find(), java.io.InputStream.nullInputStream(), new PrintWriter(out), new PrintWriter(err), false);
            code[0] = CommandLineProgram.run(session, arguments.toArray(String[]::new));
        });
        thread.start();
        thread.join();
        String text = code[0] == 0 ? out.toString() : "{\"exit\": " + code[0] + ", \"said\": \"" + escaped(err) + "\"}";
        Files.writeString(folder.resolve(name + ".json"), text);
    }

    private static String escaped(StringWriter err) {
        return err.toString().replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    }
}

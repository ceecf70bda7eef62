package dev.penstock.app;

import dev.penstock.app.console.Session;
import dev.penstock.input.HomeFolder;
import dev.penstock.reports.text.JsonText;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    /** Commands that have options of their own; each is asked for its document and for what it prints. */
    private static final List<String> OTHERS = List.of(
            "fluid",
            "fluid methane",
            "fluid methane --pressure 10MPa --temperature 110K",
            "compare heron gannet dunlin curlew",
            "sweep heron --vary engine.chamber_pressure=6..9MPa:3",
            "sweep heron --vary engine.chamber_pressure=6..8MPa:2 --vary propellants.mixture_ratio=2.2..2.4:2",
            "sweep heron --vary engine.chamber_pressure=6..8MPa:2 --samples 8",
            "balance heron --uncertainty 20",
            "limit dunlin --uncertainty 20",
            "limit heron --cycles",
            "off-design heron --throttle 1,0.8",
            "start heron --starts 2",
            "start curlew --tank-head",
            "protect heron --time 5s",
            "protect --flux 2MW/m2 --gas-temperature 3000K --time 5s",
            "trade skerry --pair oxygen/methane/3.4",
            "study upper-stages",
            "size skerry --reuse",
            "size skerry --fly",
            "size gannet",
            "cool heron --map --pressures 6..8MPa:2 --thrusts 500..900kN:2",
            "explain heron engine.isp_vacuum_s --depth 4",
            "explain skerry payload_kg --depth 4",
            "nozzle heron --burn-time 150s",
            "balance heron",
            "balance dunlin",
            "limit dunlin",
            "cool heron",
            "size skerry-boosted",
            "combust --oxidizer oxygen --fuel methane --mixture-ratio 3.4 --pressure 10MPa --area-ratio 10,40");

    private final Path folder;

    private AnswersRun(Path folder) {
        this.folder = folder;
    }

    /**
     * @param arguments folder to write into, and a folder of further concept files (optional); "others" instead of that
     *     folder asks the commands with options of their own only, and a third argument those of them that hold it
     * @throws Exception if a file cannot be read or written
     */
    public static void main(String[] arguments) throws Exception {
        AnswersRun run = new AnswersRun(Files.createDirectories(Path.of(arguments[0])));
        if (arguments.length > 1 && arguments[1].equals("others")) {
            String part = arguments.length > 2 ? arguments[2] : "";
            for (String command : OTHERS) {
                if (command.contains(part)) {
                    run.others(command);
                }
            }
            return;
        }
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

    private void others(String command) throws Exception {
        String name = command.replaceAll("[^a-zA-Z0-9.]+", "-");
        write(name, command.split(" "));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = said(List.of(command.split(" ")), out, err);
        Files.writeString(folder.resolve(name + ".text.json"), JsonText.of(Map.of(
                "exit", code, "out", out.toString().lines().toList(), "err", err.toString().lines().toList())));
    }

    private void write(String name, String... command) throws Exception {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> arguments = new ArrayList<>(List.of(command));
        arguments.add("--json");
        int code = said(arguments, out, err);
        String text = code == 0 ? out.toString() : "{\"exit\": " + code + ", \"said\": \"" + escaped(err) + "\"}";
        Files.writeString(folder.resolve(name + ".json"), text);
    }

    private static int said(List<String> arguments, StringWriter out, StringWriter err) throws Exception {
        int[] code = new int[1];
        Thread thread = new Thread(() -> {
            Session session = Session.open(HomeFolder.find(), java.io.InputStream.nullInputStream(), new PrintWriter(out), new PrintWriter(err), false);
            code[0] = CommandLineProgram.run(session, arguments.toArray(String[]::new));
        });
        thread.start();
        thread.join();
        return code[0];
    }

    private static String escaped(StringWriter err) {
        return err.toString().replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    }
}

package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.NewFiles;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.OptionReader;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.reading.ConceptTemplate;
import dev.penstock.files.OutputFile;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes a concept file to start from. */
@Command(
        name = "new",
        description = {
            "Writes a commented file to start from: a concept of a cycle, a vehicle, claims or a study, with what it must state, and"
                    + " every other input with its default and what that rests on.",
            "Without a kind it lists them."
        })
final class NewCommand extends BaseCommand implements LocalAction {

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "KIND",
            description = "a cycle, for example gas-generator, or vehicle, claims, study")
    private Optional<String> cycle = Optional.empty();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FILE",
            description = "file to write, KIND.toml otherwise; an existing file is not touched")
    private Optional<Path> file = Optional.empty();

    NewCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        if (cycle.isEmpty()) {
            return answer(NewCommand::listJson, NewCommand::listText);
        }
        OptionReader reader = new OptionReader();
        Optional<Cycle> found =
                Cycle.all().stream().filter(c -> c.id().equals(cycle.get())).findFirst();
        Optional<NewFiles> other = NewFiles.named(cycle.get());
        if (found.isEmpty() && other.isEmpty()) {
            List<String> words = Stream.concat(
                            Cycle.all().stream().map(Cycle::id),
                            Arrays.stream(NewFiles.values()).map(NewFiles::word))
                    .toList();
            reader.problem("KIND", cycle.get(), "allowed are " + String.join(", ", words));
        }
        Path place = file.orElse(Path.of(cycle.get() + ".toml"));
        if (Files.exists(place)) {
            reader.problem("FILE", place.toString(), "there is such a file already; name another");
        }
        reader.finish();
        String name = place.getFileName().toString().replaceFirst("\\.toml$", "");
        OutputFile output = new OutputFile("FILE", place);
        String text = other.map(o -> o.text(name, output.folder(), session.home()))
                .orElseGet(() -> new ConceptTemplate(session.fluids(), VehicleInputs.IN_CONCEPT)
                        .text(found.orElseThrow(), name));
        String next = other.map(NewFiles::next).orElse("balance");
        output.write(text);
        return answer(
                () -> Map.of("file", place.toString(), "kind", cycle.get()),
                () -> "wrote " + place + "; next: penstock " + next + " " + place + System.lineSeparator());
    }

    private static Map<String, Object> listJson() {
        Map<String, Object> lists = new LinkedHashMap<>();
        lists.put(
                "cycles",
                Cycle.all().stream()
                        .map(c -> {
                            Map<String, Object> map = new LinkedHashMap<>();
                            map.put("id", c.id());
                            map.put("title", c.title());
                            map.put("summary", c.summary());
                            return map;
                        })
                        .toList());
        lists.put(
                "others",
                Arrays.stream(NewFiles.values())
                        .map(file -> Map.of("id", file.word(), "summary", file.summary()))
                        .toList());
        return lists;
    }

    private static String listText() {
        TextTable table = new TextTable().header("kind", "<what it is");
        Cycle.all().forEach(c -> table.row(c.id(), c.summary()));
        Arrays.stream(NewFiles.values()).forEach(file -> table.row(file.word(), file.summary()));
        return table.text();
    }
}

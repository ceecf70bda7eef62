package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.OptionReader;
import dev.penstock.app.console.Session;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.reading.ConceptTemplate;
import dev.penstock.errors.InvalidInput;
import dev.penstock.files.WholeFiles;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes a concept file to start from. */
@Command(
        name = "new",
        description = {
            "Writes a commented concept file to start from: what a concept must state, and every other input of the cycle"
                    + " with its default and what that rests on.",
            "Without a cycle it lists the cycles."
        })
final class NewCommand extends BaseCommand implements LocalAction {

    @Parameters(index = "0", arity = "0..1", paramLabel = "CYCLE", description = "cycle, for example gas-generator")
    private Optional<String> cycle = Optional.empty();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FILE",
            description = "file to write, CYCLE.toml otherwise; an existing file is not touched")
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
        if (found.isEmpty()) {
            List<String> ids = Cycle.all().stream().map(Cycle::id).toList();
            reader.problem("CYCLE", cycle.get(), "allowed are " + String.join(", ", ids));
        }
        Path place = file.orElse(Path.of(cycle.get() + ".toml"));
        if (Files.exists(place)) {
            reader.problem("FILE", place.toString(), "there is such a file already; name another");
        }
        reader.finish();
        String name = place.getFileName().toString().replaceFirst("\\.toml$", "");
        String text = new ConceptTemplate(session.fluids(), VehicleInputs.IN_CONCEPT).text(found.orElseThrow(), name);
        Path folder = place.toAbsolutePath().getParent();
        if (folder == null) {
            throw new InvalidInput("", "FILE", place.toString(), "write the path of a file");
        }
        WholeFiles.write(folder, Map.of(place.getFileName().toString(), text));
        return answer(
                () -> Map.of("file", place.toString(), "cycle", cycle.get()),
                () -> "wrote " + place + "; next: penstock balance " + place + System.lineSeparator());
    }

    private static Map<String, Object> listJson() {
        return Map.of(
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
    }

    private static String listText() {
        TextTable table = new TextTable().header("cycle", "<what it does");
        Cycle.all().forEach(c -> table.row(c.id(), c.summary()));
        return table.text();
    }
}

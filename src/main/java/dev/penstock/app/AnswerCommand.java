package dev.penstock.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.penstock.app.console.AnswerLine;
import dev.penstock.app.console.AnswerRequest;
import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.Session;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputFile;
import dev.penstock.reports.text.AnswerOrigin;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** Answers the requests of another program until there are no more: over all processors, in the order of the requests. */
@Command(
        name = "answer",
        description = {
            "Answers requests of another program without a start for each: a JSON object a line on standard input, one a"
                    + " line on standard output.",
            "A request: {\"id\": 1, \"command\": \"balance\", \"case\": \"heron\", \"set\": {\"engine.chamber_pressure\": \"9 MPa\"}};"
                    + " in place of \"case\", \"concept\" holds a concept file as text or as an object of its keys; \"options\""
                    + " is a list of further words of the command line.",
            "An answer: {\"id\": 1, \"exit_code\": 0, \"answer\": what the command prints with --json}, or \"problems\","
                    + " a list of sentences, where the exit code is not 0."
        })
final class AnswerCommand extends BaseCommand implements LocalAction {

    private static final String SENT = "concept.toml";
    private static final String PREFIX = "penstock: ";

    /** A concept and its changes, with all that JSON adds in signs. */
    private static final int LONGEST = 4 * InputFile.LARGEST;

    private final Set<String> commands = Set.copyOf(CommandLineProgram.answering());
    private final Map<String, Set<String>> outputs = new ConcurrentHashMap<>();

    AnswerCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        Reader requests = new BufferedReader(new InputStreamReader(session.in(), StandardCharsets.UTF_8));
        try {
            InOrder.answer(() -> next(requests), this::replied, this::printed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return ExitCode.OK;
    }

    /** A program that no longer reads wants no more answers. */
    private boolean printed(char[] reply) {
        session.out().write(reply);
        return !session.out().checkError();
    }

    /** Options of a command that say where its answer goes. */
    private Set<String> outputs(String command) {
        return outputs.computeIfAbsent(
                command,
                name -> outputs(CommandLineProgram.commandLine(session, name)
                        .getSubcommands()
                        .get(name)
                        .getCommandSpec()));
    }

    private static Set<String> outputs(CommandSpec command) {
        return command.options().stream()
                .filter(BaseCommand::isOutput)
                .flatMap(option -> Arrays.stream(option.names()))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Reads a line, of one that is too long as much as shows it; empty at the end. */
    private static Optional<String> next(Reader requests) throws IOException {
        StringBuilder line = new StringBuilder();
        int c = requests.read();
        if (c < 0) {
            return Optional.empty();
        }
        for (; c >= 0 && c != '\n'; c = requests.read()) {
            if (line.length() <= LONGEST) {
                line.append((char) c);
            }
        }
        return Optional.of(line.toString());
    }

    /** The line that answers a line; nothing for an empty one. */
    private char[] replied(String line) {
        return line.isBlank() ? new char[0] : reply(line).text();
    }

    private AnswerLine reply(String line) {
        JsonNode id = NullNode.getInstance();
        try {
            if (line.length() > LONGEST) {
                throw new InvalidInput(
                        "", "request", line.substring(0, 40), "a request may hold " + LONGEST / 1024 + " KiB");
            }
            ObjectNode object = AnswerRequest.object(line);
            id = AnswerRequest.id(object);
            return answered(id, AnswerRequest.of(object, commands, this::outputs));
        } catch (InvalidInput e) {
            List<String> problems =
                    e.problems().stream().map(InvalidInput.Problem::sentence).toList();
            return new AnswerLine(id, ExitCode.BAD_INPUT, Map.of(), problems);
        } catch (IOException e) {
            return new AnswerLine(
                    id,
                    ExitCode.NO_SOLUTION,
                    Map.of(),
                    List.of("the concept could not be put where it can be read: " + e));
        }
    }

    private AnswerLine answered(JsonNode id, AnswerRequest request) throws IOException {
        if (request.concept().isEmpty()) {
            return answered(id, request, request.named().map(List::of).orElse(List.of()));
        }
        Path folder = Files.createTempDirectory("penstock-answer");
        Path file = folder.resolve(SENT);
        try {
            Files.writeString(file, request.concept().get());
            return answered(id, request, List.of(file.toString()));
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }

    private AnswerLine answered(JsonNode id, AnswerRequest request, List<String> cases) {
        List<String> words = new ArrayList<>(List.of(request.command()));
        words.addAll(cases);
        words.addAll(request.options());
        request.changes().forEach((path, value) -> words.addAll(List.of("--set", path + "=" + value)));
        words.add("--json");
        Map<String, Object> answer = new LinkedHashMap<>();
        StringWriter problems = new StringWriter();
        String[] line = words.toArray(String[]::new);
        int code = CommandLineProgram.run(session.forRequest(answer::putAll, new PrintWriter(problems)), line);
        if (code == ExitCode.OK && request.concept().isPresent()) {
            // The file is gone by the time that anybody reads the line.
            words.set(1, SENT);
            answer.put(
                    AnswerOrigin.COMMAND,
                    AnswerOrigin.of(request.command(), words).line());
        }
        List<String> sentences = problems.toString()
                .lines()
                .map(sentence -> plain(sentence, request, cases))
                .toList();
        return new AnswerLine(id, code, answer, sentences);
    }

    /** Without the program's name, which nobody doubts, and the folder that a concept lay in. */
    private static String plain(String sentence, AnswerRequest request, List<String> cases) {
        String said = sentence.startsWith(PREFIX) ? sentence.substring(PREFIX.length()) : sentence;
        return request.concept().isPresent() ? said.replace(cases.get(0), SENT) : said;
    }
}

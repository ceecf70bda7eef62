package dev.penstock.app.console;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.Spelling;
import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The one place where a failure becomes a sentence on the error stream and an exit code. */
public final class Failures implements CommandLine.IExecutionExceptionHandler, CommandLine.IParameterExceptionHandler {

    private static final String NAME = "penstock: ";
    /** As many as a terminal shows and a person mends at once. */
    private static final int MOST_SENTENCES = 20;

    private final PrintWriter err;
    private final UnpackedPages pages;

    /**
     * @param err where problems go
     * @param pages pages whose files problems may name
     */
    public Failures(PrintWriter err, UnpackedPages pages) {
        this.err = err;
        this.pages = pages;
    }

    @Override
    public int handleExecutionException(Exception exception, CommandLine command, ParseResult result) {
        Throwable failure = cause(exception);
        List<String> sentences = sentences(failure);
        sentences.stream().limit(MOST_SENTENCES).forEach(sentence -> err.println(NAME + pages.shown(sentence)));
        if (sentences.size() > MOST_SENTENCES) {
            err.println(NAME + "and " + (sentences.size() - MOST_SENTENCES) + " more problems; mend these first");
        }
        if (verbose(result)) {
            failure.printStackTrace(err);
        } else if (!expected(failure)) {
            err.println(NAME + "this is a defect of Penstock; run again with --verbose and report the trace");
        }
        err.flush();
        return ExitCode.of(failure);
    }

    @Override
    public int handleParseException(ParameterException exception, String[] arguments) {
        err.println(NAME + sentence(exception));
        err.flush();
        return ExitCode.BAD_INPUT;
    }

    /**
     * Tells of what no command expects: memory or stack used up, or a broken installation.
     *
     * @param failure what went wrong
     * @return exit code
     */
    public int handle(Error failure) {
        err.println(NAME + "this is a defect of Penstock, or the machine is short of memory: " + failure);
        failure.printStackTrace(err);
        err.flush();
        return ExitCode.NO_SOLUTION;
    }

    /**
     * @param failure what went wrong
     * @return one sentence per problem
     */
    static List<String> sentences(Throwable failure) {
        if (failure instanceof InvalidInput input) {
            return input.problems().stream().map(InvalidInput.Problem::sentence).toList();
        }
        String message = failure.getMessage();
        return expected(failure) && message != null
                ? List.of(message)
                : List.of(failure.getClass().getSimpleName() + (message == null ? "" : ": " + message));
    }

    /** What a command may end with: a problem of its question, or an interrupt before it had anything to tell. */
    private static boolean expected(Throwable failure) {
        return failure instanceof PenstockException || failure instanceof CancellationException;
    }

    private static Throwable cause(Throwable exception) {
        boolean wrapper = exception instanceof ExecutionException || exception instanceof CompletionException;
        return wrapper && exception.getCause() != null ? cause(exception.getCause()) : exception;
    }

    private static boolean verbose(ParseResult result) {
        for (ParseResult level = result; level != null; level = level.hasSubcommand() ? level.subcommand() : null) {
            if (level.hasMatchedOption("--verbose")) {
                return true;
            }
        }
        return false;
    }

    private static String sentence(ParameterException exception) {
        CommandLine command = exception.getCommandLine();
        String help = "; see " + command.getCommandSpec().qualifiedName() + " --help";
        if (exception instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String word = unmatched.getUnmatched().get(0);
            boolean option = word.startsWith("-");
            Stream<String> known = option
                    ? command.getCommandSpec().options().stream().map(OptionSpec::longestName)
                    : command.getSubcommands().keySet().stream();
            String kind = option ? "option" : command.getSubcommands().isEmpty() ? "argument" : "command";
            return kind + " " + word + " is not known"
                    + known.min(Comparator.comparingInt(name -> Spelling.distance(name, word)))
                            .filter(name -> Spelling.distance(name, word) <= 1 + word.length() / 3)
                            .map(name -> "; did you mean " + name + "?")
                            .orElse(help);
        }
        String message = exception.getMessage();
        return Character.toLowerCase(message.charAt(0)) + message.substring(1) + help;
    }
}

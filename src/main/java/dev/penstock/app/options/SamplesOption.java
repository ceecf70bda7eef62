package dev.penstock.app.options;

import dev.penstock.errors.InvalidInput;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that asks for samples of the uncertain inputs. */
public final class SamplesOption {

    /** Fewer samples say nothing of percentiles. */
    private static final int FEWEST = 20;

    @Option(
            names = "--uncertainty",
            paramLabel = "N",
            description = "also answer for N samples of the uncertain inputs, limits among them: percentiles of every"
                    + " figure, and what drives it")
    private Optional<String> samples = Optional.empty();

    /** Number of samples; zero if none are asked for. */
    public int count() {
        if (samples.isEmpty()) {
            return 0;
        }
        String text = samples.get();
        if (!text.matches("\\d{1,5}") || Integer.parseInt(text) < FEWEST) {
            throw new InvalidInput("", "--uncertainty", text, "allowed is a whole number from " + FEWEST + " to 99999");
        }
        return Integer.parseInt(text);
    }
}

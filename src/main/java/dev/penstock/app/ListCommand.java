package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.Listing;
import dev.penstock.app.console.Session;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Lists what can be named in files and options. */
@Command(
        name = "list",
        description =
                "Lists what can be named in files and options: fluids, gas, walls, cycles, limits, figures, inputs;"
                        + " each with its key and where it is documented.")
final class ListCommand extends BaseCommand {

    @Parameters(
            paramLabel = "KIND",
            converter = KindName.class,
            description = "fluids, gas, walls, cycles, limits, figures or inputs")
    private Listing.Kind kind;

    ListCommand(Session session) {
        super(session);
    }

    @Override
    protected String mainRows() {
        return "entries";
    }

    @Override
    public Integer call() {
        Listing listing = kind.of(session);
        return answer(listing::json, listing::text);
    }

    /** Reads the name of a kind. */
    static final class KindName implements ITypeConverter<Listing.Kind> {

        @Override
        public Listing.Kind convert(String word) {
            return Arrays.stream(Listing.Kind.values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(word + " is not known, allowed are "
                            + Arrays.stream(Listing.Kind.values())
                                    .map(Listing.Kind::word)
                                    .collect(Collectors.joining(", "))));
        }
    }
}

package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.input.HomeFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the pages about fluid files say is what is declared and what stands in the files. */
class PropellantKeysPageTest {

    private static final Path PAGE = Path.of("docs/propellant-keys.md");

    private static String page() {
        StringBuilder text = new StringBuilder(
                """
                # Propellant keys

                What the file of a propellant or coolant in `fluids/` says for the models of engine and vehicle. Made from the declarations
                in `PropellantKey`, from which the reader asks for each key too: `mvn test -Dtest=PropellantKeysPageTest
                -Dpenstock.docs.write=true`. What else a file holds stands in [fluids/README.md](../fluids/README.md). Where a
                key is missing that must be there, the file is refused with its name and line.
                """);
        for (PropellantKey.Table table : PropellantKey.Table.values()) {
            text.append("\n## `[")
                    .append(table.key())
                    .append("]`, read by the ")
                    .append(table.reader());
            text.append(
                    "\n\n| key | meaning | what may be written | must be stated by | if absent |\n|---|---|---|---|---|\n");
            text.append(Arrays.stream(PropellantKey.values())
                    .filter(key -> key.table() == table)
                    .map(PropellantKeysPageTest::row)
                    .collect(Collectors.joining()));
        }
        return text.toString();
    }

    private static String row(PropellantKey key) {
        return "| `" + key.key() + "` | " + key.title() + " | " + key.allowed() + " | "
                + key.need().who() + " | " + key.absent() + " |\n";
    }

    /** Rewritten with {@code -Dpenstock.docs.write=true}. */
    @Test
    void thePageIsWhatIsDeclared() throws IOException {
        if (Boolean.getBoolean("penstock.docs.write")) {
            Files.writeString(PAGE, page());
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page());
    }

    @Test
    void theSpeciesInTheReadmeStandsInTheData() throws IOException {
        String readme = Files.readString(HomeFolder.find().resolve("fluids/README.md"));
        String entry = readme.replaceFirst("(?s).*```toml\\n(.*?)\\n```.*", "$1");
        assertThat(entry).startsWith("[[species]]").contains("coefficients");
        assertThat(Files.readString(HomeFolder.find().resolve("fluids/gas/carbon-oxygen-hydrogen.toml")))
                .contains(entry);
    }
}

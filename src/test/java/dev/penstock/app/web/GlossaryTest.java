package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.study.Measure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The glossary: one sentence for each term, in order, and the same in the documents as on the page. */
class GlossaryTest {

    private static final Path PAGE = Path.of("docs/glossary.md");
    private static final String HEAD =
            "# Glossary\n\nOne sentence for each term, as the local page shows it where the term stands.\n"
                    + "Written from `app/web/glossary.txt` by `mvn test -Dtest=GlossaryTest -Dpenstock.docs.write=true`.\n\n";

    private final List<String[]> entries =
            new Site().glossary().lines().map(line -> line.split(": ", 2)).toList();

    @Test
    void theDocumentSaysTheSame() throws IOException {
        String text = entries.stream()
                .map(e -> "- **" + e[0] + "**: " + e[1] + "\n")
                .collect(Collectors.joining("", HEAD, ""));
        if (Boolean.getBoolean("penstock.docs.write")) {
            Files.writeString(PAGE, text);
        }
        assertThat(PAGE).hasContent(text);
    }

    @Test
    void everyEntryIsATermAndOneSentenceInOrder() {
        assertThat(entries).allSatisfy(e -> assertThat(e).hasSize(2));
        assertThat(entries).extracting(e -> e[0]).isSorted().doesNotHaveDuplicates();
        assertThat(entries)
                .allSatisfy(
                        e -> assertThat(e[1]).endsWith(".").matches("[A-Z].*").doesNotContain(". "));
    }

    @Test
    void everyHeadlineFigureIsExplained() {
        for (Measure measure : Measure.ALL) {
            String name =
                    " " + measure.name().toLowerCase(java.util.Locale.ROOT).replaceAll("[,:]", " ") + " ";
            assertThat(entries).as(name).anyMatch(e -> name.contains(" " + e[0] + " "));
        }
    }
}

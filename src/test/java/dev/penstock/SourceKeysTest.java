package dev.penstock;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.provenance.ModelCard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every model card can be followed to an entry in docs/sources, and no two cards share an id. */
class SourceKeysTest {

    private static final Pattern ENTRY = Pattern.compile("^- \\*\\*([\\w.-]+)\\*\\*", Pattern.MULTILINE);

    @Test
    void everyModelCardNamesSourcesThatAreListed() throws Exception {
        Set<String> known = keys();
        List<String> missing = new ArrayList<>();
        for (ModelCard card : DeclaredCards.all().keySet()) {
            for (String source : card.sources()) {
                if (!source.startsWith("common practice") && !known.contains(source)) {
                    missing.add(card.id() + " names " + source);
                }
            }
        }
        assertThat(missing).as("sources missing from docs/sources/*.md").isEmpty();
    }

    @Test
    void modelCardIdsAreUnique() throws Exception {
        Map<String, ModelCard> byId = new HashMap<>();
        for (ModelCard card : DeclaredCards.all().keySet()) {
            ModelCard other = byId.put(card.id(), card);
            assertThat(other == null || other.equals(card)).as(card.id()).isTrue();
        }
        assertThat(byId).isNotEmpty();
    }

    private static Set<String> keys() throws IOException {
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> pages = Files.list(Path.of("docs/sources"))) {
            for (Path page : pages.toList()) {
                Matcher matcher = ENTRY.matcher(Files.readString(page));
                while (matcher.find()) {
                    keys.add(matcher.group(1));
                }
            }
        }
        return keys;
    }
}

package dev.penstock;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.provenance.ModelCard;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Holds docs/equations.md to the model cards of the classes: every equation with its range, its source and a link to the
 * class that computes it. Run with {@code -Dpenstock.docs.write=true} to write the page.
 */
class EquationsPageTest {

    private static final Path PAGE = Path.of("docs/equations.md");

    @Test
    void thePageListsEveryModelCard() throws Exception {
        String page = page();
        if (Boolean.getBoolean("penstock.docs.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page);
    }

    @Test
    void theMapLeadsToEveryFolder() throws Exception {
        String map = Files.readString(Path.of("docs/architecture.md"));
        for (String folder : folders().keySet()) {
            assertThat(map).contains("(equations.md#" + anchor(folder) + ")");
        }
    }

    private static Map<String, Map<String, String>> folders() throws Exception {
        Map<String, Map<String, String>> folders = new TreeMap<>();
        for (Map.Entry<ModelCard, Class<?>> entry : DeclaredCards.all().entrySet()) {
            String folder = entry.getValue().getPackageName().replace("dev.penstock.", "");
            folders.computeIfAbsent(folder, f -> new TreeMap<>())
                    .put(entry.getKey().id(), row(entry.getKey(), entry.getValue()));
        }
        return folders;
    }

    private static String row(ModelCard card, Class<?> owner) {
        Class<?> file = owner;
        while (file.getEnclosingClass() != null) {
            file = file.getEnclosingClass();
        }
        String path = "../src/main/java/" + file.getName().replace('.', '/') + ".java";
        return "| " + cell(card.title()) + " | `" + cell(card.equation()) + "` | " + cell(card.range()) + " | "
                + String.join(", ", card.sources()) + " | [`" + file.getSimpleName() + "`](" + path + ") |\n";
    }

    private static String cell(String text) {
        return text.strip().replaceAll("\\s+", " ").replace("|", "\\|");
    }

    private static String anchor(String folder) {
        return folder.replace(".", "");
    }

    private static String page() throws Exception {
        StringBuilder page = new StringBuilder();
        page.append("# Equations\n\n");
        page.append("Every model of the program, by folder: its equation, where it holds, its source (explained in ")
                .append("[sources](sources.md)) and the class that computes it. Written from the classes' own model ")
                .append("cards and held to them by a test.\n");
        folders().forEach((folder, rows) -> {
            page.append("\n## ").append(folder).append("\n\n");
            page.append("| model | equation | range | source | class |\n|---|---|---|---|---|\n");
            rows.values().forEach(page::append);
        });
        return page.toString();
    }
}

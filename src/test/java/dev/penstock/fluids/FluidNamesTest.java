package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.LiteralTree;
import com.sun.source.util.TreeScanner;
import dev.penstock.ParsedSources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Main code knows no fluid by its name: neither by the id of its file nor by the beginning of one. */
class FluidNamesTest {

    private static final Path HOME = Path.of("").toAbsolutePath();

    @Test
    void noTextOfMainCodeIsAFluidsName() throws IOException {
        Set<String> names = names();
        assertThat(names).contains("rp-1", "uh-", "hydrogen-peroxide", "oxygen");
        List<String> found = new ArrayList<>();
        for (Text text : texts(HOME.resolve("src/main/java"))) {
            if (names.contains(text.value().toLowerCase(Locale.ROOT))) {
                found.add(text.file() + ": \"" + text.value() + "\"");
            }
        }
        assertThat(found).as("texts that are ids of fluids, or how ids begin").isEmpty();
    }

    /** A name in code would be found. */
    @Test
    void theScanSeesTextsInCodeAndAnnotations(@TempDir Path sample) throws IOException {
        Files.writeString(
                sample.resolve("Sample.java"),
                "/** A \"comment\". */ class Sample { @Deprecated(since = \"noted\") boolean f(String id) {"
                        + " return id.startsWith(\"written\"); } }");
        assertThat(texts(sample)).extracting(Text::value).containsExactly("noted", "written");
    }

    /** Ids in lower case, and their beginnings up to a hyphen, with and without it. */
    private static Set<String> names() {
        Set<String> names = new TreeSet<>();
        for (String id : FluidLibrary.open(HOME).ids()) {
            names.add(id);
            for (int hyphen = id.indexOf('-'); hyphen > 0; hyphen = id.indexOf('-', hyphen + 1)) {
                names.add(id.substring(0, hyphen));
                names.add(id.substring(0, hyphen + 1));
            }
        }
        return names;
    }

    private record Text(String file, String value) {}

    private static List<Text> texts(Path folder) throws IOException {
        List<Text> texts = new ArrayList<>();
        ParsedSources.each(
                folder,
                (file, unit) -> new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitLiteral(LiteralTree literal, Void nothing) {
                        if (literal.getValue() instanceof String value) {
                            texts.add(new Text(file, value));
                        }
                        return null;
                    }
                }.scan(unit, null));
        return texts;
    }
}

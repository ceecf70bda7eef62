package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Holds a generated page against its checked-in copy: the same words in the same order, and numbers that agree within one of
 * the last place that is printed, so that a rounding that falls the other way does not break the build while any change of a
 * result that a reader could see does. With
 * {@code -Dpenstock.docs.write=true} the page is written instead.
 */
final class PageNumbers {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.-])[+-]?\\d+(\\.\\d+)?(?:e[+-]?\\d+)?");

    private PageNumbers() {}

    static void holdAgainst(Path page, String generated) throws IOException {
        if (Boolean.getBoolean("penstock.docs.write")) {
            Files.createDirectories(page.getParent());
            Files.writeString(page, generated, StandardCharsets.UTF_8);
            return;
        }
        String[] written = Files.readString(page, StandardCharsets.UTF_8).split("\n");
        String[] now = generated.split("\n");
        assertThat(now).as("lines of " + page).hasSameSizeAs(written);
        for (int i = 0; i < now.length; i++) {
            assertThat(NUMBER.matcher(now[i]).replaceAll("#"))
                    .as("line %d of %s, write it anew with -Dpenstock.docs.write=true", i + 1, page)
                    .isEqualTo(NUMBER.matcher(written[i]).replaceAll("#"));
            List<Figure> a = numbers(now[i]);
            List<Figure> b = numbers(written[i]);
            for (int k = 0; k < a.size(); k++) {
                assertThat(Math.abs(a.get(k).value() - b.get(k).value()))
                        .as(
                                "number %d in line %d of %s: now \"%s\", written \"%s\"; write it anew with -Dpenstock.docs.write=true",
                                k + 1, i + 1, page, now[i], written[i])
                        .isLessThanOrEqualTo(1.001 * b.get(k).lastPlace());
            }
        }
    }

    /** A number of a line, and what one of its last place is worth. */
    private record Figure(double value, double lastPlace) {

        static Figure of(String text) {
            BigDecimal number = new BigDecimal(text);
            return new Figure(number.doubleValue(), number.ulp().doubleValue());
        }
    }

    private static List<Figure> numbers(String line) {
        List<Figure> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(line);
        while (matcher.find()) {
            numbers.add(Figure.of(matcher.group()));
        }
        return numbers;
    }
}

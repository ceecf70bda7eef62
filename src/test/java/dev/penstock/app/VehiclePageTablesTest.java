package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of vehicles and of engines side by side: tables add up to the headline, and nothing is praised for being small. */
class VehiclePageTablesTest {

    @TempDir
    Path folder;

    @Test
    void propellantOfTheTableIsThatOfTheHeadlineBoostersIncluded() throws IOException {
        Path page = folder.resolve("boosted.html");
        Run run = Run.of("size", "cycles/vehicles/skerry-boosted.toml", "--report", page.toString());
        assertThat(run.err()).isEmpty();
        String html = Files.readString(page);
        assertThat(html).contains("vehicle estimate").doesNotContain("engine estimate");
        String table = html.substring(html.indexOf("<caption>Stages"));
        table = table.substring(0, table.indexOf("</table>"));
        double sum = 0;
        Matcher row =
                Pattern.compile("<tr><th scope=\"row\".*?</tr>", Pattern.DOTALL).matcher(table);
        while (row.find()) {
            sum += Double.parseDouble(
                    row.group().split("</t[hd]>")[3].replaceAll("<[^>]*>", "").strip());
        }
        Matcher whole = Pattern.compile("propellant mass, all stages</dt><dd><a [^>]*>([\\d.]+)")
                .matcher(html);
        assertThat(whole.find()).isTrue();
        // Both are written to four digits.
        assertThat(sum).isCloseTo(Double.parseDouble(whole.group(1)), within(0.2));
        assertThat(html).contains("Dry mass of one booster");
    }

    @Test
    void anEngineIsNotBestForBeingSmallAndASeparatedImpulseSaysSo() throws IOException {
        Path page = folder.resolve("compared.html");
        Run run = Run.of("compare", "cycles/heron.toml", "cycles/dunlin.toml", "--report", page.toString());
        assertThat(run.err()).isEmpty();
        String html = Files.readString(page);
        assertThat(column(html, "engine mass, dry (kg)")).hasSize(2).noneMatch(VehiclePageTablesTest::best);
        assertThat(column(html, "exit diameter (mm)")).hasSize(2).noneMatch(VehiclePageTablesTest::best);
        assertThat(column(html, "Isp vac (s)"))
                .satisfiesExactly(c -> assertThat(best(c)).isFalse(), c -> assertThat(best(c))
                        .isTrue());
        // Dunlin's nozzle of area ratio 80 at 10 bar separates at sea level, as its warning says.
        assertThat(column(html, "Isp s.l. (s)"))
                .satisfiesExactly(c -> assertThat(c).doesNotContain("flow separated"), c -> assertThat(c)
                        .contains("flow separated"));
        // Dangers are those of the propellants at hand: nothing of peroxide, which neither engine has.
        assertThat(html).contains("Monomethylhydrazine: poisonous").doesNotContain("concentrated peroxide");
    }

    /** Cells of the column with that heading, one for each concept, as they stand in the page. */
    private static List<String> column(String html, String heading) {
        for (String table : html.split("<table")) {
            List<String> headings = parts(table, "<th scope=\"col\"[^>]*>([^<]*)</th>");
            int at = headings.indexOf(heading);
            if (at > 0) {
                return parts(table, "(?s)<tr><th scope=\"row\">(.*?)</tr>").stream()
                        .map(row -> parts(row, "(?s)(<td.*?</td>)").get(at - 1))
                        .toList();
            }
        }
        return List.of();
    }

    private static List<String> parts(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(part -> part.group(1))
                .toList();
    }

    private static boolean best(String cell) {
        return cell.startsWith("<td class=\"n best\"");
    }

    @Test
    void aRefusalAnswersInTheUnitThatWasWritten() {
        assertThat(Run.of("balance", "cycles/heron.toml", "--set", "engine.chamber_pressure=-5 MPa")
                        .err())
                .contains("\"-5 MPa\"; allowed is 0.02 to 100 MPa");
        assertThat(Run.of("balance", "cycles/heron.toml", "--set", "nozzle.cone_half_angle=1 deg")
                        .err())
                .contains("\"1 deg\"; allowed is 5 to 40 deg");
    }
}

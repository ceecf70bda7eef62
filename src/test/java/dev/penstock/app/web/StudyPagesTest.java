package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.study.StudyFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;

/** Concepts side by side and sweeps, in a browser. */
class StudyPagesTest extends BrowserTest {

    @Test
    void conceptsStandSideBySide() {
        go("/together");
        patience().until(b -> !b.findElements(By.cssSelector("#files input")).isEmpty());
        id("go").click();
        waitFor("3 concepts balanced");
        assertThat(browser.findElements(By.cssSelector("#out thead th")).size()).isGreaterThan(1);
        assertThat(browser.findElements(By.cssSelector("#out td.differs"))).isNotEmpty();
    }

    @Test
    void aStoppedSweepKeepsWhatIsDone() {
        explore("heron.toml", "engine.chamber_pressure", "6", "10", "200");
        id("go").click();
        patience().until(b -> id("count").getText().matches("[1-9]\\d* of 200"));
        id("stop").click();
        waitFor("Stopped");
        assertThat(browser.findElement(By.cssSelector("#out .verdict")).getText())
                .contains("what was done is kept");
        assertThat(browser.findElements(By.cssSelector("#out svg"))).isNotEmpty();
    }

    @Test
    void aCurveHasBandsLimitsAndFourWaysToKeepIt() throws IOException {
        explore("heron.toml", "gas_generator.temperature", "1100", "1200", "3");
        id("band").click();
        refill("samples", "4");
        id("go").click();
        waitFor("Swept");
        assertThat(id("count").getText()).isEqualTo("15 of 15");
        assertThat(browser.findElement(By.cssSelector("#out figcaption")).getText())
                .contains("A main turbine: inlet temperature, above 1150 K")
                .contains("nine tenths of the sampled engines");
        click("CSV");
        assertThat(new String(download("sweep.csv"), StandardCharsets.UTF_8))
                .contains("isp_vacuum_s_p5,isp_vacuum_s_p95")
                .hasLineCount(4);
        click("JSON");
        assertThat(Served.JSON
                        .readTree(download("sweep.json"))
                        .at("/points/0/band/closed")
                        .asInt())
                .isEqualTo(4);
        click("SVG");
        assertThat(new String(download("sweep-1.svg"), StandardCharsets.UTF_8))
                .startsWith("<svg")
                .doesNotContain("var(--");
        click("PNG");
        byte[] png = download("sweep-1.png");
        assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth()).isEqualTo(1720);
    }

    @Test
    void aMapDrawsWhereALimitIsMissed() {
        explore("heron.toml", "gas_generator.temperature", "1100", "1200", "2");
        new Select(id("path2")).selectByValue("engine.chamber_pressure");
        assertThat(id("band").isEnabled()).isFalse();
        refill("count2", "2");
        id("go").click();
        waitFor("Swept");
        assertThat(browser.findElements(By.cssSelector("#out figure"))).hasSize(2);
        assertThat(browser.findElement(By.cssSelector("#out figure svg")).getText())
                .contains("A: main turbine: inlet temperature begins to be missed")
                .contains("a limit is missed")
                .doesNotContain("no solution");
        new Select(id("of")).selectByValue("mass_kg");
        patience().until(b -> b.findElement(By.cssSelector("#out figcaption"))
                .getText()
                .startsWith("Engine mass"));
        assertThat(browser.findElement(By.cssSelector("#out figure svg title")).getAttribute("textContent"))
                .isEqualTo("engine mass, dry (kg)");
    }

    @Test
    void aSweepKeptAsAStudyOpensAgainWithTheSameNumbers() throws IOException {
        explore("dunlin.toml", "engine.chamber_pressure", "0.9", "1.1", "2");
        id("go").click();
        waitFor("Swept");
        click("CSV");
        String first = new String(download("sweep.csv"), StandardCharsets.UTF_8);
        refill("study-name", "browser-sweep");
        press(id("study-save"));
        waitFor("Saved as studies/browser-sweep.toml");
        assertThat(StudyFile.read(served.workspace.resolve("studies/browser-sweep.toml"))
                        .vary())
                .containsExactly("engine.chamber_pressure=0.9..1.1MPa:2");
        go("/explore?study=studies/browser-sweep.toml");
        waitFor("Swept");
        click("CSV");
        String[] again = new String(download("sweep.csv"), StandardCharsets.UTF_8).split("[,\n]");
        String[] before = first.split("[,\n]");
        assertThat(again).hasSameSizeAs(before);
        for (int i = 0; i < before.length; i++) {
            if (before[i].matches("-?\\d+\\.\\d+(E-?\\d+)?")) {
                double value = Double.parseDouble(before[i]);
                // A warm study starts from another guess than a cold one, which moves the last bits of the solution.
                assertThat(Double.parseDouble(again[i])).isCloseTo(value, within(1e-9 * Math.abs(value) + 1e-12));
            } else {
                assertThat(again[i]).isEqualTo(before[i]);
            }
        }
    }

    @Test
    void aChoiceOfConceptsCanBeTakenBackAndKept() throws IOException {
        go("/together");
        patience().until(b -> !b.findElements(By.cssSelector("#files input")).isEmpty());
        int chosen = chosen();
        browser.findElement(By.cssSelector("#files input[value='heron.toml']")).click();
        assertThat(chosen()).isEqualTo(chosen + 1);
        id("undo").click();
        assertThat(chosen()).isEqualTo(chosen);
        assertThat(id("undo").isEnabled()).isFalse();
        refill("study-name", "browser-three");
        id("study-save").click();
        waitFor("Saved as studies/browser-three.toml");
        assertThat(StudyFile.read(served.workspace.resolve("studies/browser-three.toml"))
                        .cases())
                .hasSize(chosen)
                .allMatch(c -> c.startsWith("../"));
    }

    private static int chosen() {
        return browser.findElements(By.cssSelector("#files input:checked")).size();
    }

    private static void explore(String file, String path, String from, String to, String count) {
        go("/explore?file=" + file);
        patience().until(b -> !b.findElements(By.cssSelector("#path1 option")).isEmpty());
        new Select(id("path1")).selectByValue(path);
        refill("from1", from);
        refill("to1", to);
        refill("count1", count);
    }

    private static void click(String name) {
        press(browser.findElement(By.xpath("//*[@id='out']//*[self::a or self::button][.='" + name + "']")));
    }
}

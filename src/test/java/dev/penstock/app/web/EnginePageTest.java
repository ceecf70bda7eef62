package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;

/** The page of one concept, in a browser. */
class EnginePageTest extends BrowserTest {

    @TempDir
    static Path folder;

    @BeforeEach
    void openHeron() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
    }

    @Test
    void aChangeInAnyUnitBalancesAnewAndShowsWhatWasBefore() {
        changePressure("1300 psi");
        // 1300 psi is 89.63 bar: 6894.757 Pa to the pound per square inch (NIST SP 811, appendix B; from memory).
        assertThat(measure("chamber_pressure_Pa"))
                .contains("89.63 bar")
                .contains("was 80.00 bar")
                .contains("+12.04 %");
        id("undo").click();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("80.00 bar"));
        assertThat(id("undo").isEnabled()).isFalse();
    }

    @Test
    void aMissedLimitShowsWhereItSits() {
        type("in-gas_generator-temperature", "1300 K");
        patience().until(b -> !b.findElements(By.cssSelector("#flow .fault")).isEmpty());
        assertThat(browser.findElement(By.cssSelector("#flow .fault")).getAttribute("data-component"))
                .contains("turbine");
        assertThat(id("verdict").getText()).contains("misses 1");
    }

    @Test
    void whatHasNoBalanceShowsWhereItSits() {
        patience().until(b -> !b.findElements(By.cssSelector("#flow svg")).isEmpty());
        type("in-gas_generator-temperature", "1500 K");
        patience().until(b -> !b.findElements(By.cssSelector("#flow .fault")).isEmpty());
        assertThat(browser.findElement(By.cssSelector("#flow .fault")).getText())
                .contains("gas generator")
                .contains("no balance");
        assertThat(id("problems").getText()).contains("no mixture of Liquid oxygen and Kerosene (RP-1)");
        assertThat(id("results").getAttribute("class")).contains("stale");
    }

    @Test
    void aWrongValueIsNamedAtItsInput() {
        type("in-engine-chamber_pressure", "8 seconds");
        patience().until(b -> !b.findElements(By.cssSelector(".field.wrong")).isEmpty());
        assertThat(id("problems").getText()).contains("engine.chamber_pressure").contains("pressure");
        assertThat(id("in-engine-chamber_pressure").getAttribute("aria-invalid"))
                .isEqualTo("true");
    }

    @Test
    void aSavedConceptOpensAgainWithTheSameNumbers() {
        changePressure("8.5 MPa");
        String impulse = measure("isp_vacuum_s").split("\n")[0];
        id("as").sendKeys("browser-saved");
        id("saveas").click();
        patience().until(b -> Files.exists(served.workspace.resolve("browser-saved.toml")));
        go("/?file=browser-saved.toml");
        waitFor("Balanced in");
        assertThat(measure("isp_vacuum_s").split("\n")[0]).isEqualTo(impulse);
        assertThat(measure("chamber_pressure_Pa")).startsWith("85.00 bar");
    }

    @Test
    void whatSomebodyElseWroteMeanwhileIsShownAndNothingIsLost() throws IOException {
        Path shared = served.workspace.resolve("shared-page.toml");
        Files.writeString(shared, served.text("dunlin.toml"));
        go("/?file=shared-page.toml");
        waitFor("Balanced in");
        changePressure("1.1 MPa");
        String theirs = served.text("dunlin.toml") + "# a remark of somebody else\n";
        Files.writeString(shared, theirs);
        press(id("save"));
        patience().until(b -> id("conflict").isDisplayed());
        assertThat(id("conflict").getText())
                .contains("Two versions of shared-page.toml")
                .contains("chamber_pressure = \"1.1 MPa\"")
                .contains("# a remark of somebody else");
        assertThat(id("conflict").findElements(By.tagName("mark")))
                .extracting(WebElement::getText)
                .contains("# a remark of somebody else", "chamber_pressure = \"1.1 MPa\"");
        assertThat(shared).hasContent(theirs);
        press(id("conflict").findElement(By.xpath(".//button[.='Save under that name']")));
        waitFor("Saved as shared-page-mine.toml");
        assertThat(shared).hasContent(theirs);
        assertThat(served.text("shared-page-mine.toml")).contains("chamber_pressure = \"1.1 MPa\"");
        assertThat(id("conflict").isDisplayed()).isFalse();
    }

    @Test
    void aBadUploadIsExplainedAndHarmless() throws IOException {
        Path bad =
                Files.writeString(folder.resolve("bad.toml"), "name = \"<img src=x onerror=alert(1)>\"\ncycle = 3\n");
        id("upload").sendKeys(bad.toString());
        patience().until(b -> !id("problems").getText().isEmpty());
        assertThat(id("problems").getText()).contains("bad.toml");
        assertThat(browser.findElements(By.cssSelector("#problems img"))).isEmpty();
        assertThat(id("title").getText()).isEqualTo("Heron");
    }

    @Test
    void aHostileNameStaysText() throws IOException {
        String hostile = "<img src=x onerror=document.title=1>'&";
        Files.writeString(
                served.workspace.resolve("hostile.toml"),
                served.text("dunlin.toml").replaceFirst("name = .*", "name = \"" + hostile + "\""));
        go("/?file=hostile.toml");
        waitFor("Balanced in");
        assertThat(id("title").getText()).isEqualTo(hostile);
        patience().until(b -> !b.findElements(By.cssSelector("#charts svg")).isEmpty());
        assertThat(browser.findElements(By.cssSelector("main img"))).isEmpty();
        assertThat(browser.getTitle()).isEqualTo("Engine · Penstock");
        id("report").click();
        String page = new String(download("img-src-x-onerror-document-title-1.html"), StandardCharsets.UTF_8);
        assertThat(page).doesNotContain("<img").contains("&lt;img src=x");
    }

    @Test
    void theReportIsDownloaded() {
        id("report").click();
        assertThat(new String(download("Heron.html"), StandardCharsets.UTF_8)).contains("<h1>Heron</h1>");
    }

    @Test
    void theReportIsDownloadedOnPaperToo() throws IOException {
        new Select(id("form")).selectByValue("letter");
        id("report").click();
        byte[] pdf = download("Heron.pdf");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(612f, within(0.5f)); // 8.5 in
            assertThat(new PDFTextStripper().getText(document)).contains("Heron");
        }
    }

    @Test
    void aNumberTellsWhereItComesFrom() {
        browser.findElement(By.cssSelector("[data-measure=isp_vacuum_s] .opener"))
                .click();
        patience().until(b -> id("why").isDisplayed());
        assertThat(id("why").getText()).contains("Isp = F/(ṁ g₀)").contains("engine.mass_flow_kg_s");
        browser.findElement(By.cssSelector("#why li .opener")).click();
        patience().until(b -> id("why-title").getText().startsWith("engine.thrust_vacuum_N"));
        browser.switchTo().activeElement().sendKeys(Keys.ESCAPE);
        assertThat(id("why").isDisplayed()).isFalse();
    }

    @Test
    void theKeyboardAloneReachesAnInputAndChangesIt() {
        browser.findElement(By.tagName("body")).sendKeys(Keys.TAB);
        assertThat(browser.switchTo().activeElement().getText()).isEqualTo("Skip to the contents");
        new Actions(browser).sendKeys(Keys.TAB).sendKeys(Keys.ENTER).perform();
        for (int i = 0; i < 5; i++) {
            WebElement here = browser.switchTo().activeElement();
            if ("in-engine-chamber_pressure".equals(here.getAttribute("id"))) {
                here.sendKeys(Keys.chord(Keys.CONTROL, "a"), "8.2 MPa", Keys.ENTER);
                patience().until(b -> measure("chamber_pressure_Pa").startsWith("82.00 bar"));
                return;
            }
            new Actions(browser).sendKeys(Keys.TAB).perform();
        }
        throw new AssertionError("eight keys did not reach the chamber pressure");
    }
}

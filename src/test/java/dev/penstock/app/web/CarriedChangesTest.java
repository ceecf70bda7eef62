package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.cycles.concept.CycleKind;
import dev.penstock.fluids.FluidLibrary;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;

/** What is changed on the page travels with its address, can be taken back and done again, and says at its field what is wrong. */
class CarriedChangesTest extends BrowserTest {

    private static final String CHANGED = "?file=heron.toml&set.engine.chamber_pressure=85+bar";

    @Test
    void aLinkShowsWhatItsSenderSawOnEveryPage() {
        go("/" + CHANGED);
        waitFor("Balanced in");
        assertThat(measure("chamber_pressure_Pa")).startsWith("85.00 bar");
        WebElement jacket = browser.findElement(By.linkText("Jacket"));
        assertThat(jacket.getAttribute("href")).contains("set.engine.chamber_pressure=85");
        jacket.click();
        patience().until(b -> b.getCurrentUrl().contains("/jacket"));
        waitFor("Done.");
        assertThat(id("out").getText()).contains("engine.chamber_pressure = 85 bar");
    }

    @Test
    void aVehicleIsSizedWithTheChangesOfItsEngineAndHandsThemBack() {
        go("/vehicle?file=vehicles%2Fskerry.toml");
        waitFor("Sized in");
        String saved = firstFigure();
        go("/" + CHANGED);
        waitFor("Balanced in");
        browser.findElement(By.linkText("Vehicle")).click();
        patience().until(b -> b.getCurrentUrl().contains("/vehicle"));
        waitFor("Sized in");
        new Select(id("file")).selectByVisibleText("vehicles/skerry");
        patience().until(b -> id("title").getText().equals("Skerry"));
        waitFor("Sized in");
        assertThat(id("engine").getText())
                .startsWith("With the unsaved changes of heron: engine.chamber_pressure = 85 bar.");
        assertThat(firstFigure()).doesNotStartWith(saved);
        assertThat(browser.findElement(By.linkText("Engine")).getAttribute("href"))
                .contains("/" + CHANGED);
        press(id("engine").findElement(By.tagName("button")));
        patience().until(b -> !id("engine").isDisplayed() && firstFigure().startsWith(saved));
        assertThat(browser.findElement(By.linkText("Engine")).getAttribute("href"))
                .contains("?file=heron.toml&vehicle=")
                .doesNotContain("85");
    }

    @Test
    void claimsBeginFromTheOpenEngineAndWaitForIt() throws IOException {
        go("/" + CHANGED);
        waitFor("Balanced in");
        browser.findElement(By.linkText("Claims")).click();
        patience().until(b -> b.getCurrentUrl().contains("/claims"));
        waitFor("Read: ");
        assertThat(id("title").getText()).isEqualTo("About Heron");
        assertThat(id("engine").getText())
                .startsWith("About heron with its unsaved changes (engine.chamber_pressure = 85 bar)");
        assertThat(id("in-engine-chamber_pressure-value").getAttribute("value")).isEqualTo("85.00 bar");
        type("in-engine-mass-within", "30 %");
        patience().until(b -> b.getCurrentUrl().contains("set.claims.engine.mass.within"));
        String sent = browser.getCurrentUrl();
        browser.findElement(By.linkText("Engine")).click();
        waitFor("Balanced in");
        assertThat(measure("chamber_pressure_Pa")).startsWith("85.00 bar");
        browser.findElement(By.linkText("Claims")).click();
        patience().until(b -> b.getCurrentUrl().equals(sent));
        waitFor("Read: ");
        assertThat(id("in-engine-mass-within").getAttribute("value")).isEqualTo("30 %");
        press(id("saveas"));
        waitFor("Saved as claims/heron.toml");
        ClaimsFile file =
                new ClaimsReader(FluidLibrary.open()).parse("heron", served.text("claims/heron.toml"), Map.of());
        assertThat(file.cycles()).extracting(CycleKind::id).containsExactly("gas-generator");
        // What Heron's file states of size and machines, but not what every judgement seeks.
        assertThat(file.given())
                .containsEntry("engine.thrust_sea_level", "\"620 kN\"")
                .containsEntry("turbines.main.pressure_ratio", "18")
                .doesNotContainKeys(
                        "engine.chamber_pressure", "propellants.mixture_ratio", "nozzle.area_ratio", "name", "cycle");
        assertThat(file.claims())
                .extracting(Claim::path)
                .contains("engine.isp_vacuum", "engine.chamber_pressure", "engine.mass");
    }

    /** With what it was before behind it, where it has changed. */
    private String firstFigure() {
        return id("headline").findElement(By.tagName("dd")).getText();
    }

    @Test
    void aStepBackCanBeDoneAgain() {
        go("/" + CHANGED);
        waitFor("Balanced in");
        id("undo").click();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("80.00 bar"));
        assertThat(browser.getCurrentUrl()).doesNotContain("set.");
        patience().until(b -> id("redo").isEnabled());
        id("redo").click();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("85.00 bar"));
        assertThat(browser.getCurrentUrl()).contains("set.engine.chamber_pressure");
    }

    @Test
    void theBrowsersOwnWayBackLeadsThroughTheChanges() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
        changePressure("82 bar");
        changePressure("83 bar");
        browser.navigate().back();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("82.00 bar"));
        browser.navigate().back();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("80.00 bar"));
        assertThat(browser.getCurrentUrl()).doesNotContain("set.");
        browser.navigate().forward();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("82.00 bar"));
        id("undo").click();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("80.00 bar"));
    }

    @Test
    void whatIsRefusedIsSaidAtItsFieldWhichStaysInView() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
        type("in-nozzle-area_ratio", "-3");
        patience()
                .until(b -> !b.findElements(By.cssSelector(".field.wrong .why")).isEmpty());
        WebElement why = id("in-nozzle-area_ratio-why");
        patience().until(b -> !why.getText().isEmpty());
        assertThat(why.getText()).contains("nozzle.area_ratio").contains("allowed is");
        Object hidden = browser.executeScript(
                "const f = document.getElementById('in-nozzle-area_ratio').getBoundingClientRect();"
                        + "return f.bottom > document.getElementById('status').getBoundingClientRect().top || f.top < 0;");
        assertThat(hidden).isEqualTo(false);
    }

    @Test
    void aFileThatIsNotThereOpensNothingElse() {
        go("/?file=nobody.toml");
        patience().until(b -> !id("problems").getText().isEmpty());
        assertThat(id("problems").getText()).contains("there is no nobody.toml in the workspace");
        assertThat(id("title").getText()).isEqualTo("Engine");
    }

    @Test
    void theArrowKeysReadACurveAndATableIsKeptAsCsv() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
        patience()
                .until(b ->
                        b.findElements(By.cssSelector("#charts svg[data-read]")).size() > 1);
        WebElement altitude =
                browser.findElements(By.cssSelector("#charts svg[data-read]")).get(0);
        new Actions(browser).scrollToElement(altitude).perform();
        browser.executeScript("arguments[0].focus()", altitude);
        new Actions(browser).sendKeys(Keys.HOME).perform();
        String reading = altitude.findElement(By.xpath("ancestor::figure"))
                .findElement(By.className("reading"))
                .getText();
        assertThat(reading).contains("altitude").contains("kN");
        press(browser.findElement(By.cssSelector("[aria-label^='Keep as CSV: Stations']")));
        String csv = new String(download("stations.csv"), StandardCharsets.UTF_8);
        assertThat(csv.lines().findFirst().orElseThrow()).startsWith("no.,station,medium,pressure (bar)");
        assertThat(csv.lines().skip(1).findFirst().orElseThrow()).startsWith("1,oxidizer tank outlet,");
    }

    @Test
    void theVersionThatIsWrittenOverIsKeptBesideTheFile() throws IOException {
        Path shared = served.workspace.resolve("shared-over.toml");
        Files.writeString(shared, served.text("dunlin.toml"));
        go("/?file=shared-over.toml");
        waitFor("Balanced in");
        changePressure("1.1 MPa");
        String theirs = served.text("dunlin.toml") + "# a remark of somebody else\n";
        Files.writeString(shared, theirs);
        press(id("save"));
        patience().until(b -> id("conflict").isDisplayed());
        press(id("conflict").findElement(By.xpath(".//button[.='Write mine over it']")));
        waitFor("Saved as shared-over.toml");
        assertThat(served.text("shared-over.toml")).contains("chamber_pressure = \"1.1 MPa\"");
        assertThat(served.workspace.resolve("shared-over-theirs.toml")).hasContent(theirs);
        patience().until(b -> id("status").getText().contains("kept as shared-over-theirs.toml"));
        id("undo").click();
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("10.00 bar"));
    }

    @Test
    void figuresForAnAudienceComeInOneArchive() throws IOException {
        go("/?file=dunlin.toml");
        waitFor("Balanced in");
        id("slides").click();
        int files = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(download("Dunlin-figures.zip")))) {
            while (zip.getNextEntry() != null) {
                files++;
            }
        }
        // Tanks, chamber, pressures, powers and the chamber cut open, eight files each.
        assertThat((double) files).isCloseTo(5 * 8, within(0.0));
    }
}

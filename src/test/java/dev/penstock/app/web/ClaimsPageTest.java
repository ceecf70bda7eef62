package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.claims.picture.Pinhole;
import dev.penstock.claims.picture.PinholePicture;
import dev.penstock.fluids.FluidLibrary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;

/** Claims in a real browser: read, changed, judged with a first answer on the way, and measured in a picture. */
class ClaimsPageTest extends BrowserTest {

    private static void open(String name) {
        go("/claims?file=claims/" + name + ".toml");
        waitFor("Read: ");
    }

    private static ClaimsFile saved(String name) throws IOException {
        return new ClaimsReader(FluidLibrary.open()).parse(name, served.text("claims/" + name + ".toml"), Map.of());
    }

    private static Claim claim(ClaimsFile file, String path) {
        return file.claims().stream()
                .filter(c -> c.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void claimsAreChangedAddedTakenOutAndSavedWithTheirComments() throws IOException {
        open("petrel");
        assertThat(browser.findElements(By.cssSelector("[data-claim]"))).hasSize(3);
        type("in-engine-isp_vacuum-value", "361 s");
        patience().until(b -> id("save").isEnabled());
        type("new-path", "engine.thrust_sea_level");
        type("new-value", "80 kN");
        type("new-within", "5 %");
        press(id("new-go"));
        patience().until(b -> b.findElements(By.cssSelector("[data-claim]")).size() == 4);
        press(browser.findElement(By.cssSelector("[aria-label='Remove the claim engine.mass']")));
        patience().until(b -> b.findElements(By.cssSelector("[data-claim]")).size() == 3);
        new Select(id("in-nozzle-exit_diameter-kind")).selectByValue("at_least");
        patience().until(b -> !b.findElements(By.id("in-nozzle-exit_diameter-at_least"))
                .isEmpty());
        id("as").sendKeys("changed");
        press(id("saveas"));
        waitFor("Saved as claims/changed.toml");
        ClaimsFile file = saved("changed");
        assertThat(file.claims())
                .extracting(Claim::path)
                .containsExactly("engine.isp_vacuum", "nozzle.exit_diameter", "engine.thrust_sea_level");
        assertThat(claim(file, "engine.isp_vacuum").value()).hasValue(361);
        assertThat(claim(file, "nozzle.exit_diameter").low()).hasValue(1.25);
        assertThat(served.text("claims/changed.toml"))
                .contains("# half of the interval")
                .doesNotContain("250 kg");
    }

    @Test
    void aRefusedClaimSaysWhyAndCanBeTakenBack() {
        open("petrel");
        type("in-engine-isp_vacuum-value", "358 kg");
        patience().until(b -> !id("problems").getText().isEmpty());
        assertThat(id("problems").getText()).contains("engine.isp_vacuum").contains("358 kg");
        assertThat(id("judge").isEnabled()).isFalse();
        press(id("undo"));
        waitFor("Read: ");
        assertThat(id("judge").isEnabled()).isTrue();
    }

    @Test
    void aJudgementShowsARoughAnswerFirstAndThenTheWhole() throws IOException {
        open("shearwater");
        new Select(id("samples")).selectByValue("64");
        press(id("judge"));
        browser.manage().timeouts().implicitlyWait(java.time.Duration.ZERO);
        patience().until(b -> id("verdict").isDisplayed());
        assertThat(id("verdict").getText()).startsWith("First, rough answer");
        assertThat(id("out").getText()).contains("Unknowns").doesNotContain("tension");
        waitFor("Judged");
        assertThat(id("verdict").getText()).startsWith("Contradicted");
        assertThat(id("out").getText())
                .contains("Do the claims fit together?")
                .contains("tension")
                .contains("What would tell most");
        assertThat(browser.findElements(By.cssSelector("#out figure svg"))).isNotEmpty();
        press(id("best-open"));
        patience().until(b -> !b.findElements(By.cssSelector("#best a")).isEmpty());
        assertThat(served.text("shearwater-as-told-best.toml")).contains("pressure-fed");
    }

    @Test
    void aStoppedJudgementKeepsWhatIsDone() {
        open("petrel");
        new Select(id("samples")).selectByValue("480");
        press(id("judge"));
        patience().until(b -> id("stop").isEnabled());
        press(id("stop"));
        waitFor("Stopped");
        assertThat(id("out").getText()).contains("stopped");
    }

    @Test
    void aPictureIsMeasuredInTheBrowserAndItsValuesGoIntoTheFile() throws IOException {
        // A nozzle of known size before a pinhole camera: exit 1.2 m, throat 0.2 m, 1.3 m long, tilted by 25 degrees.
        Pinhole p = new Pinhole(1600, 1200, 4000, 12, Math.toRadians(25), 0.3, 1.2, 0.2, 1.3);
        double[] left = p.seen(-1.5, 1.2, 0);
        double[] right = p.seen(0.5, 1.2, 0);
        Path picture = kept.resolve("nozzle.png");
        Files.write(picture, PinholePicture.png(p, left, right));
        open("petrel");
        id("picture-file").sendKeys(picture.toString());
        waitFor("The picture is 1600 by 1200 pixels");
        id("picture-known").sendKeys("2 m");
        id("picture-angle").sendKeys(Keys.chord(Keys.CONTROL, "a"), "22.6 deg");
        mark(left, right);
        mark(p.point(0, 0.6, 0), p.point(0, -0.6, 0), p.point(0, 0, 0.6));
        mark(p.point(1.3, 0.1, 0), p.point(1.3, -0.1, 0));
        mark(p.point(1.3, 0, 0), p.point(0, 0, 0));
        patience()
                .until(b -> b.findElements(By.cssSelector("[data-measured='nozzle.length']"))
                                .size()
                        == 1);
        assertThat(id("picture-out").getText()).contains("tilted by 2").contains("12");
        press(id("picture-take"));
        patience().until(b -> !b.findElements(By.cssSelector("[data-claim='nozzle.length']"))
                .isEmpty());
        id("as").sendKeys("pictured");
        press(id("saveas"));
        waitFor("Saved as claims/pictured.toml");
        ClaimsFile file = saved("pictured");
        Map<String, Double> truth =
                Map.of("nozzle.exit_diameter", 1.2, "nozzle.area_ratio", 36.0, "nozzle.length", 1.3);
        truth.forEach((path, value) -> {
            Claim claim = claim(file, path);
            double half = claim.high().orElseThrow() - claim.value().orElseThrow();
            assertThat(claim.value().orElseThrow()).as(path).isCloseTo(value, within(half));
            assertThat(half / value).as("half of " + path).isBetween(0.005, 0.35);
            assertThat(claim.source())
                    .contains("measured in a picture: marks")
                    .contains("perspective")
                    .contains("known length");
        });
        assertThat(file.claims()).extracting(Claim::path).doesNotContain("nozzle.throat_diameter");
        assertThat(served.requests).as("the picture stays in the browser").noneMatch(r -> r.contains("nozzle.png"));
    }

    /** Clicks on points of the picture, given in its own pixels. */
    private static void mark(double[]... points) {
        browser.executeScript("document.getElementById('picture-view').scrollIntoView({block: 'start'})");
        for (double[] p : points) {
            List<?> at = (List<?>) browser.executeScript(
                    "const s = document.getElementById('picture-view');"
                            + "const p = new DOMPoint(arguments[0], arguments[1]).matrixTransform(s.getScreenCTM()); return [p.x, p.y];",
                    p[0],
                    p[1]);
            new Actions(browser)
                    .moveToLocation((int) Math.round(((Number) at.get(0)).doubleValue()), (int)
                            Math.round(((Number) at.get(1)).doubleValue()))
                    .click()
                    .perform();
        }
    }
}

package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** Whether everybody can use the pages: rules of axe on light and dark paper, narrow and wide screens, print. */
class BarriersTest extends BrowserTest {

    /** The one rule that another paper can break, and the one that takes longest: it looks at what is below each word. */
    private static final String CONTRAST = "color-contrast";

    @BeforeAll
    static void writeStudies() throws IOException {
        Path studies = Files.createDirectories(served.workspace.resolve("studies"));
        Files.writeString(
                studies.resolve("barriers.toml"),
                "name = \"b\"\nstudy = \"compare\"\ncases = [\"../dunlin.toml\", \"../heron.toml\"]\n");
        Files.writeString(
                studies.resolve("barriers-sweep.toml"),
                "name = \"s\"\nstudy = \"sweep\"\ncases = [\"../dunlin.toml\"]\nsamples = 2\n"
                        + "vary = [\"engine.chamber_pressure=0.9..1.1MPa:2\"]\n");
    }

    @AfterEach
    void backToNormal() {
        browser.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
        paper("screen", "light");
    }

    @ParameterizedTest
    @CsvSource({
        "/?file=heron.toml, Balanced in",
        "/together?study=studies/barriers.toml, 2 concepts balanced",
        "/explore?study=studies/barriers-sweep.toml, Swept",
        "/studies?file=heron.toml, Ready: ",
        "/jacket?file=heron.toml, Done",
        "/studies, ''",
        "/vehicle?file=vehicles/skerry.toml, Sized in",
        "/claims?file=claims/storm.toml, Read: "
    })
    void aPageHasNoBarriersOnLightAndDarkPaperNarrowAndWide(String path, String status) {
        go(path);
        waitFor(status);
        requireNone(axe().analyze(browser));
        widthChangesNoColour();
        paper("screen", "dark");
        // A window of 1280 at 200 % has 640 to fill; a phone has 360.
        for (int width : new int[] {640, 360, 3840}) {
            browser.executeCdpCommand(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of(
                            "width",
                            width,
                            "height",
                            2160,
                            "deviceScaleFactor",
                            width == 640 ? 2 : 1,
                            "mobile",
                            width == 360));
            Number needed = (Number) browser.executeScript("return document.documentElement.scrollWidth");
            assertThat(needed.intValue()).as("sideways scrolling at " + width).isLessThanOrEqualTo(width);
            // The widest page stands for the others: they are laid out alike at both widths.
            if (width == 640 && path.startsWith("/?")) {
                requireNone(axe().disableRules(List.of(CONTRAST)).analyze(browser));
            } else if (width == 360) {
                requireNone(axe().analyze(browser));
                figuresStandFirst();
                paper("screen", "light");
                requireNone(contrast().analyze(browser));
            }
        }
        Number share = (Number) browser.executeScript(
                "return document.querySelector('main').getBoundingClientRect().width / innerWidth");
        assertThat(share.doubleValue()).as("share of a wide screen").isGreaterThan(0.8);
        paper("print", "light");
        assertThat(browser.findElement(By.cssSelector("header nav")).isDisplayed())
                .as("links on paper")
                .isFalse();
    }

    /**
     * What follows from that: colours are those of the paper, so that both papers are looked at where letters are smallest, and wide
     * only one.
     */
    private static void widthChangesNoColour() {
        Object changed = browser.executeScript("const found = []; let queries = 0;"
                + "for (const sheet of document.styleSheets) for (const rule of sheet.cssRules)"
                + "  if (rule instanceof CSSMediaRule && rule.conditionText.includes('width')) { queries++;"
                + "    for (const inner of rule.cssRules) for (const name of inner.style)"
                + "      if (/color|background|opacity|fill|stroke|filter|mix|image|shadow/.test(name)) found.push(inner.cssText); }"
                + "return queries ? found.join(' ') : 'no rule asks for a width';");
        assertThat(changed).isEqualTo("");
    }

    @Test
    void aReportHasNoBarriers() throws IOException {
        go("/?file=dunlin.toml");
        waitFor("Balanced in");
        press(id("report"));
        Path page = Files.write(kept.resolve("shown.html"), download("Dunlin.html"));
        browser.get(page.toUri().toString());
        requireNone(axe().analyze(browser));
        widthChangesNoColour();
        paper("screen", "dark");
        for (int width : new int[] {640, 360}) {
            browser.executeCdpCommand(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", width, "height", 900, "deviceScaleFactor", 2, "mobile", width == 360));
            Number needed = (Number) browser.executeScript("return document.documentElement.scrollWidth");
            assertThat(needed.intValue()).as("sideways scrolling at " + width).isLessThanOrEqualTo(width);
        }
        requireNone(axe().analyze(browser));
        Files.delete(page);
    }

    /** Whoever holds a phone sees what comes out before what goes in. */
    private static void figuresStandFirst() {
        if (!browser.findElements(By.id("headline")).isEmpty()) {
            assertThat(id("headline").getLocation().getY())
                    .isLessThan(id("inputs").getLocation().getY())
                    .isLessThan(id("file").getLocation().getY());
        }
    }

    /** From the top of the page, as somebody without a mouse goes. */
    @Test
    void theChamberPressureIsFewTabStopsAway() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
        int stops = 0;
        while (!"to-pressure".equals(browser.switchTo().activeElement().getAttribute("id"))) {
            browser.switchTo().activeElement().sendKeys(Keys.TAB);
            assertThat(++stops).isLessThan(7);
        }
        browser.switchTo().activeElement().sendKeys(Keys.ENTER);
        assertThat(browser.switchTo().activeElement().getAttribute("id")).isEqualTo("in-engine-chamber_pressure");
    }

    @Test
    void threeFirstStepsAreShownUntilSomebodyClosesThem() {
        go("/?file=heron.toml");
        browser.executeScript("localStorage.removeItem('penstock-first-steps')");
        go("/?file=dunlin.toml");
        waitFor("Balanced in");
        assertThat(id("guide").getText()).contains("First steps, 1 of 3").contains("in any unit");
        requireNone(axe().disableRules(List.of(CONTRAST)).analyze(browser));
        requireNone(contrast().include(List.of("#guide")).analyze(browser));
        id("guide").findElement(By.xpath(".//button[text()='Next']")).click();
        id("guide").findElement(By.xpath(".//button[text()='Next']")).click();
        assertThat(id("guide").getText()).contains("3 of 3").contains("Report").doesNotContain("Next");
        id("guide").findElement(By.xpath(".//button[text()='Close']")).click();
        assertThat(browser.switchTo().activeElement().getAttribute("id")).isEqualTo("steps");
        go("/?file=heron.toml");
        waitFor("Balanced in");
        assertThat(id("guide").getText()).isEmpty();
        press(id("steps"));
        assertThat(id("guide").getText()).contains("1 of 3");
        id("guide").findElement(By.xpath(".//button[text()='Close']")).click();
    }

    @Test
    void theTrailOfANumberHasNoBarriers() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
        press(browser.findElement(By.cssSelector("[data-measure=isp_vacuum_s] .opener")));
        patience().until(b -> id("why").isDisplayed());
        requireNone(axe().include(List.of("#why")).analyze(browser));
        assertThat(browser.switchTo().activeElement().getText()).isEqualTo("Close");
        browser.switchTo().activeElement().click();
        assertThat(browser.switchTo().activeElement().getText()).endsWith(" s");
    }

    private static void paper(String medium, String scheme) {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("media", medium, "features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** Every rule; only what breaks one is told of, in the page itself: what passes would be many times as much. */
    private static AxeBuilder axe() {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        return new AxeBuilder().withOptions(options).setLegacyMode();
    }

    private static AxeBuilder contrast() {
        return axe().withOnlyRules(List.of(CONTRAST));
    }

    private static void requireNone(Results results) {
        assertThat(results.getViolations().stream()
                        .map(rule -> rule.getId() + ": "
                                + rule.getNodes().stream()
                                        .map(n -> n.getHtml())
                                        .limit(3)
                                        .toList())
                        .toList())
                .isEmpty();
    }
}

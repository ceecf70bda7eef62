package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.FluentWait;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The workbench in a real browser. Skipped only where Chromium and its driver are not installed. */
class WorkbenchBrowserTest {

    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private static Served served;
    private static ChromeDriver browser;

    @TempDir
    static Path folder;

    @BeforeAll
    static void open() throws IOException {
        Assumptions.assumeTrue(
                Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
                "the browser tests need Debian's packages chromium and chromium-driver");
        served = new Served(folder);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toFile());
        options.setCapability("goog:loggingPrefs", logs);
        options.setExperimentalOption(
                "prefs",
                Map.of(
                        "download.default_directory",
                        Files.createDirectories(folder.resolve("kept")).toString()));
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--window-size=1400,1200",
                "--user-data-dir=" + folder.resolve("profile"));
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        browser = new ChromeDriver(service, options);
        browser.get(served.workbench.address());
        waitFor("Balanced in");
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
        if (served != null) {
            served.close();
        }
    }

    @BeforeEach
    void start() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
        browser.manage().logs().get(LogType.BROWSER);
    }

    @AfterEach
    void nothingWentWrongUnseen() {
        List<LogEntry> entries = browser.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(e -> e.getLevel().intValue() >= Level.WARNING.intValue())
                // A refused request is what a test asked for; its message is checked by that test.
                .filter(e -> !e.getMessage().contains("the server responded with a status of 4"))
                .toList();
        assertThat(entries).isEmpty();
        assertThat(served.defects).isEmpty();
    }

    private static void go(String path) {
        browser.executeScript(
                "document.querySelectorAll('.field.changed .back').length && (window.onbeforeunload = null)");
        browser.get(served.base + path);
        try {
            browser.switchTo().alert().accept();
        } catch (org.openqa.selenium.NoAlertPresentException none) {
            // Nothing was unsaved.
        }
    }

    /** Pages replace their elements while a test looks; it then looks again. */
    private static FluentWait<WebDriver> patience() {
        return new WebDriverWait(browser, Duration.ofSeconds(60)).ignoring(StaleElementReferenceException.class);
    }

    private static void waitFor(String status) {
        patience().until(b -> b.findElement(By.id("status")).getText().startsWith(status));
    }

    private static WebElement id(String id) {
        return browser.findElement(By.id(id));
    }

    private static void type(String id, String text) {
        WebElement box = id(id);
        if (!box.isDisplayed()) {
            box.findElement(By.xpath("ancestor::details/summary")).click();
        }
        box.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    private static String measure(String key) {
        return browser.findElement(By.cssSelector("[data-measure=" + key + "] dd"))
                .getText();
    }

    private static void changePressure(String text) {
        String before = measure("chamber_pressure_Pa");
        type("in-engine-chamber_pressure", text);
        patience().until(b -> !measure("chamber_pressure_Pa").equals(before));
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
    void theReportIsDownloaded() {
        id("report").click();
        patience().until(b -> Files.exists(folder.resolve("kept").resolve("Heron.html")));
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
        for (int i = 0; i < 80; i++) {
            WebElement here = browser.switchTo().activeElement();
            if ("in-engine-chamber_pressure".equals(here.getAttribute("id"))) {
                here.sendKeys(Keys.chord(Keys.CONTROL, "a"), "8.2 MPa", Keys.ENTER);
                patience().until(b -> measure("chamber_pressure_Pa").startsWith("82.00 bar"));
                return;
            }
            new Actions(browser).sendKeys(Keys.TAB).perform();
        }
        throw new AssertionError("80 presses of the tabulator did not reach the chamber pressure");
    }

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
        go("/explore?file=heron.toml");
        patience().until(b -> !b.findElements(By.cssSelector("#path1 option")).isEmpty());
        new Select(id("path1")).selectByValue("engine.chamber_pressure");
        id("count1").clear();
        id("count1").sendKeys("200");
        id("go").click();
        patience().until(b -> id("count").getText().matches("[1-9]\\d* of 200"));
        id("stop").click();
        waitFor("Stopped");
        assertThat(browser.findElement(By.cssSelector("#out .verdict")).getText())
                .contains("what was done is kept");
        assertThat(browser.findElements(By.cssSelector("#out svg"))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/?file=heron.toml", "/together", "/explore", "/jacket?file=heron.toml", "/vehicle"})
    void aPageHasNoBarriers(String path) {
        go(path);
        patience().until(b -> !b.findElements(By.cssSelector("option, #files input"))
                .isEmpty());
        if (path.contains("heron")) {
            patience().until(b -> b.findElement(By.id("status")).getText().matches("Balanced in.*|Done\\."));
        }
        Results results = new AxeBuilder().analyze(browser);
        assertThat(results.getViolations().stream()
                        .map(rule -> rule.getId() + ": "
                                + rule.getNodes().stream()
                                        .map(n -> n.getHtml())
                                        .limit(3)
                                        .toList())
                        .toList())
                .isEmpty();
    }

    @Test
    void theNarrowestPhoneNeedsNoSidewaysScrolling() {
        Dimension before = browser.manage().window().getSize();
        try {
            browser.executeCdpCommand(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", 360, "height", 800, "deviceScaleFactor", 1, "mobile", true));
            Object overflow = browser.executeScript("return document.documentElement.scrollWidth");
            assertThat(((Number) overflow).intValue()).isLessThanOrEqualTo(360);
        } finally {
            browser.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
            browser.manage().window().setSize(before);
        }
    }
}

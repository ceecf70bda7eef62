package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.FluentWait;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * The local page in a real browser, one for all test classes. Skipped only where Chromium and its driver are not installed.
 * After each test the browser's console must be free of errors.
 */
@ExtendWith(BrowserTest.Shared.class)
abstract class BrowserTest {

    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final ExtensionContext.Namespace OWN = ExtensionContext.Namespace.create(BrowserTest.class);

    protected static Served served;
    protected static ChromeDriver browser;
    protected static Path kept;

    /** Opens the browser before the first class of tests, and closes it after the last. */
    static final class Shared implements BeforeAllCallback {

        @Override
        public void beforeAll(ExtensionContext context) {
            Assumptions.assumeTrue(
                    Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
                    "the browser tests need Debian's packages chromium and chromium-driver");
            context.getRoot().getStore(OWN).getOrComputeIfAbsent("browser", key -> new Opened());
        }
    }

    private static final class Opened implements AutoCloseable {

        private final Path folder;

        Opened() {
            try {
                folder = Files.createTempDirectory("penstock-browser-");
                open(folder);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (RuntimeException e) {
                if (browser != null) {
                    browser.quit();
                }
                throw e;
            }
        }

        @Override
        public void close() throws IOException {
            browser.quit();
            served.close();
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
            }
        }
    }

    private static void open(Path folder) throws IOException {
        served = new Served(folder);
        kept = Files.createDirectories(folder.resolve("kept"));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toFile());
        options.setCapability("goog:loggingPrefs", logs);
        options.setExperimentalOption("prefs", Map.of("download.default_directory", kept.toString()));
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
        // The rules of axe take a busy machine longer than the driver's half minute.
        browser.manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
        browser.get(served.server.address());
        waitFor("Balanced in");
    }

    @BeforeEach
    void forgetOldMessages() {
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

    protected static void go(String path) {
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
    protected static FluentWait<WebDriver> patience() {
        return new WebDriverWait(browser, Duration.ofSeconds(60)).ignoring(StaleElementReferenceException.class);
    }

    protected static void waitFor(String status) {
        patience().until(b -> b.findElement(By.id("status")).getText().startsWith(status));
    }

    /** @return content of a download, once the browser has finished it */
    protected static byte[] download(String name) {
        Path file = kept.resolve(name);
        patience().until(b -> file.toFile().length() > 0);
        try {
            byte[] content = Files.readAllBytes(file);
            Files.delete(file);
            return content;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Clicks an element in the middle of the window, clear of the line of messages at its foot, once drawings that come into view on
     * the way have pushed it to its place.
     */
    protected static void press(WebElement element) {
        patience().until(b -> {
            Object before = top(element);
            browser.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
            return top(element).equals(before);
        });
        element.click();
    }

    private static Object top(WebElement element) {
        return browser.executeScript("return arguments[0].getBoundingClientRect().top + ''", element);
    }

    protected static void refill(String id, String text) {
        id(id).sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
    }

    protected static WebElement id(String id) {
        return browser.findElement(By.id(id));
    }

    protected static void type(String id, String text) {
        WebElement box = id(id);
        if (!box.isDisplayed()) {
            box.findElement(By.xpath("ancestor::details/summary")).click();
        }
        box.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    protected static String measure(String key) {
        return browser.findElement(By.cssSelector("[data-measure=" + key + "] dd"))
                .getText();
    }

    protected static void changePressure(String text) {
        String before = measure("chamber_pressure_Pa");
        type("in-engine-chamber_pressure", text);
        patience().until(b -> !measure("chamber_pressure_Pa").equals(before));
        waitFor("Balanced in");
    }
}

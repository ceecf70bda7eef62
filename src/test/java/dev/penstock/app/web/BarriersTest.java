package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;

/** Whether everybody can use the pages: rules of axe, narrow and wide screens. */
class BarriersTest extends BrowserTest {

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

package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** The page of one vehicle, in a browser. */
class VehiclePageTest extends BrowserTest {

    @BeforeEach
    void openSkerry() {
        go("/vehicle?file=vehicles/skerry.toml");
        waitFor("Sized in");
    }

    @Test
    void aChangeInAnyUnitSizesAnewIsTakenBackAndKept() throws IOException {
        type("in-payload", "22046 lb");
        // 22046 lb is 9999.9 kg: 0.45359237 kg to the pound (NIST SP 811, appendix B; from memory).
        patience().until(b -> measure("payload_kg").startsWith("10.00 t"));
        assertThat(measure("start_mass_kg")).contains("was ").contains("−");
        id("undo").click();
        patience().until(b -> measure("payload_kg").startsWith("12.00 t"));
        type("in-stage[1]-diameter", "3.8 m");
        waitFor("Sized in");
        id("as").sendKeys("browser-vehicle");
        press(id("saveas"));
        waitFor("Saved as vehicles/browser-vehicle.toml");
        assertThat(served.text("vehicles/browser-vehicle.toml"))
                .contains("diameter = \"3.8 m\"")
                .contains("# as many engines as this takes");
    }

    @Test
    void aWrongValueIsNamedAtItsInput() {
        type("in-stage[1]-diameter", "3.6 kg");
        patience().until(b -> !b.findElements(By.cssSelector(".field.wrong")).isEmpty());
        assertThat(id("in-stage[1]-diameter").getAttribute("aria-invalid")).isEqualTo("true");
        id("undo").click();
        waitFor("Sized in");
    }

    @Test
    void aFlightIsStoppedAndFlownAgain() {
        // Pressed by the page itself as soon as it can be: a warm flight is over before a test has looked twice.
        browser.executeScript("const stop = document.getElementById('stop');"
                + "const watch = new MutationObserver(() => {"
                + "  if (!stop.disabled) { watch.disconnect(); stop.click(); } });"
                + "watch.observe(stop, { attributes: true });"
                + "document.getElementById('fly').click();");
        waitFor("No flight");
        assertThat(id("problems").getText()).contains("stopped");
        press(id("fly"));
        waitFor("Flown");
        assertThat(id("verdict").getText()).contains("its own flight");
        assertThat(browser.findElements(By.cssSelector("#figures svg"))).hasSize(4);
        id("report").click();
        assertThat(new String(download("vehicle-Skerry.html"), StandardCharsets.UTF_8))
                .contains("Path to orbit");
    }

    @Test
    void aMassTellsWhereItComesFromDownToTheEngine() {
        press(browser.findElement(By.cssSelector("[data-measure=start_mass_kg] .opener")));
        for (String next : new String[] {
            "stages.first-stage.start_mass_kg",
            "stages.first-stage.propellant_mass_kg",
            "stages.first-stage.burned_propellant_kg",
            "stages.first-stage.isp_s",
            "engines.Heron.isp_vacuum_s",
            "engines.Heron.engine.isp_vacuum_s"
        }) {
            patience().until(b -> !b.findElements(By.xpath("//dialog//li/button[.='" + next + "']"))
                    .isEmpty());
            browser.findElement(By.xpath("//dialog//li/button[.='" + next + "']"))
                    .click();
        }
        patience().until(b -> id("why-title").getText().startsWith("engines.Heron.engine.isp_vacuum_s"));
        assertThat(id("why").getText()).contains("Isp = F/(ṁ g₀)");
    }
}

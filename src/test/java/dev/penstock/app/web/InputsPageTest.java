package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** Inputs of an engine in a real browser: another cycle, choices, sliders, search, reset. */
class InputsPageTest extends BrowserTest {

    private static void open(String query) {
        go("/?file=" + query);
        waitFor("Balanced in");
    }

    @Test
    void anotherCycleTranslatesWhatItCanAndSaysWhatIsLost() {
        open("heron.toml");
        String own = id("kind").getText();
        new Select(id("in-cycle")).selectByValue("tap-off");
        patience().until(b -> id("kind").getText().contains("ap-off"));
        String said = id("switched").getText();
        assertThat(said).contains("gas_generator.temperature (930 K) becomes tap_off.temperature");
        assertThat(browser.getCurrentUrl()).contains("set.cycle=tap-off").contains("set.gas_generator=");
        String link = browser.getCurrentUrl().replaceAll("^https?://[^/]+", "");
        String switched = id("kind").getText();
        press(id("undo"));
        patience().until(b -> id("kind").getText().equals(own));
        assertThat(browser.getCurrentUrl()).doesNotContain("set.");
        assertThat(id("switched").getText()).isEmpty();
        // The link shows the same engine.
        waitFor("Balanced in");
        go(link);
        waitFor("Balanced in");
        assertThat(id("kind").getText()).isEqualTo(switched);
        press(id("undo"));
        patience().until(b -> !b.getCurrentUrl().contains("set."));
        waitFor("Balanced in");
    }

    @Test
    void propellantsTechnologyAndMaterialsAreChoices() {
        open("heron.toml");
        for (String key : List.of(
                "in-cycle", "in-technology", "in-propellants-oxidizer", "in-propellants-fuel", "in-cooling-material")) {
            WebElement box = id(key);
            assertThat(box.getTagName()).as(key).isEqualTo("select");
            assertThat(new Select(box).getOptions().size()).as(key).isGreaterThan(2);
        }
        if (!id("in-propellants-fuel").isDisplayed()) {
            press(id("in-propellants-fuel").findElement(By.xpath("ancestor::details/summary")));
        }
        new Select(id("in-propellants-fuel")).selectByValue("methane");
        patience().until(b -> id("kind").getText().toLowerCase().contains("methane"));
    }

    @Test
    void aSliderBalancesWhileItMovesAndIsOneStepBack() {
        open("heron.toml");
        List<WebElement> sliders = browser.findElements(By.cssSelector("#inputs .slider"));
        assertThat(sliders).hasSize(8);
        WebElement pressure = browser.findElement(By.cssSelector("[data-key='engine.chamber_pressure'] .slider"));
        String before = measure("chamber_pressure_Pa");
        pressure.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("81.60 bar"));
        assertThat(id("in-engine-chamber_pressure").getAttribute("value")).isEqualTo("8.16 MPa");
        waitFor("Balanced in");
        press(id("undo"));
        patience().until(b -> measure("chamber_pressure_Pa").startsWith(before.split("\n")[0]));
        assertThat(id("undo").isEnabled()).isFalse();
    }

    @Test
    void aSearchFindsAnyInputAndResetTakesAllChangesBack() {
        open("heron.toml&set.engine.chamber_pressure=85+bar&set.nozzle.area_ratio=20");
        id("find").sendKeys("suction");
        List<WebElement> found = browser.findElements(By.cssSelector("#inputs .field")).stream()
                .filter(WebElement::isDisplayed)
                .toList();
        assertThat(found).isNotEmpty().hasSizeLessThan(12);
        assertThat(found).allSatisfy(f -> assertThat(f.getAttribute("data-key")).contains("suction"));
        id("find").sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
        assertThat(id("in-engine-chamber_pressure").isDisplayed()).isTrue();
        press(id("reset"));
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("80.00 bar"));
        assertThat(browser.getCurrentUrl()).doesNotContain("set.");
        assertThat(id("reset").isEnabled()).isFalse();
        press(id("undo"));
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("85.00 bar"));
    }
}

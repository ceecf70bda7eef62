package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;

/** One switch for the units of everything that the pages show. */
class UnitSwitchTest extends BrowserTest {

    @BeforeEach
    void openHeron() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
    }

    @AfterEach
    void backToMetric() {
        browser.executeScript("document.cookie = 'penstock-units=metric; path=/'");
    }

    private static void units(String id) {
        new Select(id("units")).selectByValue(id);
    }

    @Test
    void figuresTablesLimitsAndDrawingsFollowTheSwitchAndNothingIsLost() {
        changePressure("8.5 MPa");
        units("us");
        // 8.5 MPa is 1232.8 psi: 6894.757 Pa to the pound per square inch (NIST SP 811, appendix B; from memory).
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("1233 psi"));
        patience().until(b -> id("charts").getText().contains("psi"));
        patience().until(b -> !id("tables").getText().contains("(bar)"));
        assertThat(id("tables").getText())
                .contains("pressure (psi)")
                .contains("temperature (°R)")
                .doesNotContain("(bar)");
        assertThat(id("limits").getText()).contains("°R").doesNotContain(" K\n");
        assertThat(id("flow").getText()).contains("psi").doesNotContain("bar");
        assertThat(id("charts").getText()).doesNotContain("(bar)").doesNotContain("(kN)");
        assertThat(id("in-engine-chamber_pressure").getAttribute("value")).isEqualTo("8.5 MPa");
        assertThat(browser.getCurrentUrl()).contains("set.engine.chamber_pressure");
        units("si");
        patience().until(b -> measure("chamber_pressure_Pa").startsWith("8.500 MPa"));
    }

    @Test
    void theChoiceIsKeptOnAllPages() {
        units("us");
        patience().until(b -> measure("chamber_pressure_Pa").contains("psi"));
        go("/jacket?file=heron.toml");
        waitFor("Done.");
        assertThat(new Select(id("units")).getFirstSelectedOption().getText()).isEqualTo("US customary");
        assertThat(id("out").getText())
                .contains("(psi)")
                .contains("Btu/(in²·s)")
                .doesNotContain("(bar)");
        go("/vehicle?file=vehicles/skerry.toml");
        waitFor("Sized in");
        assertThat(id("headline").getText()).contains(" lb").doesNotContain(" t\n");
        assertThat(id("figures").findElements(By.tagName("svg"))).isNotEmpty();
    }

    @Test
    void aStepOfTheTrailIsReadInTheSameUnits() {
        units("us");
        patience().until(b -> measure("chamber_pressure_Pa").contains("psi"));
        press(browser.findElement(By.cssSelector("[data-measure=chamber_pressure_Pa] .opener")));
        patience().until(b -> id("why").isDisplayed());
        assertThat(id("why-title").getText()).isEqualTo("engine.chamber_pressure_Pa = 1160.30 psi");
    }
}

package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Charts of curves: what was before a change lies behind what is, and a stretch can be looked at alone. */
class ChartReadingTest extends BrowserTest {

    @BeforeEach
    void openHeron() {
        go("/?file=heron.toml");
        waitFor("Balanced in");
        patience().until(b -> !b.findElements(By.cssSelector("#charts svg[data-read]"))
                .isEmpty());
    }

    private static WebElement chart() {
        return browser.findElement(By.cssSelector("#charts svg[data-read]"));
    }

    private static String reading() {
        return chart().findElement(By.xpath("ancestor::figure//output")).getText();
    }

    @Test
    void aChangedEngineIsDrawnOverTheOneOfItsFile() {
        assertThat(chart().getAttribute("data-read")).doesNotContain("before");
        chart().sendKeys(Keys.END, Keys.PAGE_DOWN);
        String own = reading()
                .lines()
                .filter(line -> line.startsWith("specific impulse "))
                .map(line -> line.substring("specific impulse ".length()))
                .findFirst()
                .orElseThrow();
        changePressure("12 MPa");
        patience().until(b -> chart().getAttribute("data-read").contains("specific impulse, before"));
        chart().sendKeys(Keys.END, Keys.PAGE_DOWN);
        assertThat(reading()).containsPattern("specific impulse \\d+").contains("specific impulse, before " + own);
        assertThat(id("charts").getText())
                .contains("Dotted: before the changes.")
                .contains("An upright stroke is the end of the bar before the changes.");
        id("reset").click();
        patience().until(b -> !chart().getAttribute("data-read").contains("before"));
    }

    @Test
    void aDraggedStretchHasAxesOfItsOwnAndADoubleClickShowsAllAgain() {
        browser.executeScript("arguments[0].scrollIntoView({block: 'center'})", chart());
        int width = chart().getSize().getWidth();
        new Actions(browser)
                .moveToElement(chart(), -width / 4, 0)
                .clickAndHold()
                .moveByOffset(width / 4, 0)
                .release()
                .perform();
        String[] ends = chart().getAttribute("data-stretch").split(" ");
        assertThat(Double.parseDouble(ends[0])).isGreaterThan(0);
        assertThat(Double.parseDouble(ends[1])).isLessThan(45);
        assertThat(chart().findElements(By.cssSelector("g.stretch path"))).hasSize(2);
        chart().sendKeys(Keys.HOME);
        assertThat(reading()).startsWith("altitude " + ends[0].substring(0, 4));
        new Actions(browser).moveToElement(chart()).doubleClick().perform();
        assertThat(chart().findElements(By.cssSelector("g.stretch"))).isEmpty();
    }

    @Test
    void theKeysDoTheSame() {
        chart().sendKeys(Keys.HOME, "++");
        String[] ends = chart().getAttribute("data-stretch").split(" ");
        double size = Double.parseDouble(ends[1]) - Double.parseDouble(ends[0]);
        assertThat(size).isBetween(14.0, 17.0);
        chart().sendKeys("-");
        assertThat(chart().getAttribute("data-stretch")).isNotEmpty();
        chart().sendKeys("0");
        assertThat(chart().getAttribute("data-stretch")).isEmpty();
    }
}

package dev.penstock.reports.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void firstColumnLeftFiguresRightUnitsLeft() {
        String text = new TextTable()
                .header("what", "value", "<unit")
                .row("speed", "9.5", "m/s")
                .row("a", "12.25", "")
                .text();
        assertThat(text.lines())
                .containsExactly("what   value  unit", "-----  -----  ----", "speed    9.5  m/s", "a      12.25");
    }
}

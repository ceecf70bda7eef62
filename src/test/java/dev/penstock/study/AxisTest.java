package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.errors.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AxisTest {

    @Test
    void aRangeIncludesItsEnds() {
        Axis axis = Axis.parse("engine.chamber_pressure=4..20MPa:5");
        assertThat(axis.path()).isEqualTo("engine.chamber_pressure");
        assertThat(axis.values()).containsExactly("4 MPa", "8 MPa", "12 MPa", "16 MPa", "20 MPa");
        assertThat(axis.numeric()).isTrue();
    }

    @Test
    void aUnitMayStandAtBothEnds() {
        assertThat(Axis.parse("a.b=1 bar..2 bar:2").values()).containsExactly("1 bar", "2 bar");
        assertThat(Axis.parse("a.b=-1.5e2..0.5 K:3").values()).containsExactly("-150 K", "-74.75 K", "0.5 K");
    }

    @Test
    void plainNumbersNeedNoUnit() {
        assertThat(Axis.parse("propellants.mixture_ratio=2..3:3").values()).containsExactly("2", "2.5", "3");
        assertThat(Axis.parse("x=.5..1.:2").values()).containsExactly("0.5", "1");
    }

    @Test
    void wordsAreAList() {
        Axis axis = Axis.parse("propellants.fuel=methane, rp-1");
        assertThat(axis.values()).containsExactly("methane", "rp-1");
        assertThat(axis.numeric()).isFalse();
        assertThat(Axis.parse("n.a=20,30").numeric()).isTrue();
    }

    @Test
    void peopleReadSixDigitsWhereTheseTellValuesApart() {
        Axis thirds = Axis.parse("a.b=1..2MPa:4");
        assertThat(thirds.values()).containsExactly("1 MPa", "1.333333333 MPa", "1.666666667 MPa", "2 MPa");
        assertThat(thirds.read().values()).containsExactly("1 MPa", "1.33333 MPa", "1.66667 MPa", "2 MPa");
        assertThat(Axis.parse("a.b=1234567..2345678:2").read().values()).containsExactly("1234570", "2345680");
        Axis close = Axis.parse("a.b=1.00000001,1.00000002");
        assertThat(close.read().values()).containsExactlyElementsOf(close.values());
        Axis words = Axis.parse("propellants.fuel=methane,rp-1");
        assertThat(words.read().values()).containsExactlyElementsOf(words.values());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "foo",
                "=1..2:3",
                "a=",
                "a=1..2",
                "a=1..2:1",
                "a=1..2:x",
                "a=1 bar..2 K:3",
                "a=1,,2",
                "a b=1..2:3",
                "a=1..2:99999999999"
            })
    void anythingElseIsBadInput(String text) {
        assertThatThrownBy(() -> Axis.parse(text))
                .isInstanceOf(InvalidInput.class)
                .hasMessageStartingWith("--vary is ");
    }
}

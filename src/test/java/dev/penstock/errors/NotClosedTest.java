package dev.penstock.errors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NotClosedTest {

    /** Sentences that differ by numbers are one reason; the most frequent comes first. */
    @Test
    void reasonsAreGrouped() {
        assertThat(NotClosed.grouped(List.of(
                        "tank: too little",
                        "fuel pump: 31.5 MPa is above 2e7 Pa",
                        "fuel pump: 40 MPa is above 2.5e7 Pa",
                        "oxidizer pump: 40 MPa is above 2.5e7 Pa",
                        "fuel pump: -1,204 MPa is above 3 Pa")))
                .containsExactly(
                        java.util.Map.entry("fuel pump: 31.5 MPa is above 2e7 Pa", 3),
                        java.util.Map.entry("tank: too little", 1),
                        java.util.Map.entry("oxidizer pump: 40 MPa is above 2.5e7 Pa", 1));
    }

    @Test
    void whatPercentilesAreOfIsToldWhereSamplesAreMissing() {
        assertThat(NotClosed.meaning(40, 40)).isEmpty();
        assertThat(NotClosed.meaning(30, 40))
                .hasValueSatisfying(told -> assertThat(told).startsWith("25 % of the samples do not close"));
    }
}

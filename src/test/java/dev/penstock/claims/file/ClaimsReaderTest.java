package dev.penstock.claims.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.errors.InvalidInput;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ClaimsReaderTest {

    private static final String HEAD =
            """
            name = "Test"
            cycle = ["pressure-fed", "gas-generator"]
            [propellants]
            oxidizer = "oxygen"
            fuel = "methane"
            """;

    private static ClaimsFile parse(String text, Map<String, String> changes) {
        return new ClaimsReader(Concepts.FLUIDS).parse("test.toml", HEAD + text, changes);
    }

    private static ClaimsFile parse(String text) {
        return parse(text, Map.of());
    }

    private static List<String> problems(String text) {
        return catchThrowableOfType(InvalidInput.class, () -> parse(text)).problems().stream()
                .map(InvalidInput.Problem::sentence)
                .toList();
    }

    @Test
    void valuesBoundsAndRangesAreReadInTheUnitOfWhatTheyAreAbout() {
        ClaimsFile file = parse(
                """
                [claims."engine.isp_vacuum"]
                value = "365 s"
                within = "3 s"
                [claims."nozzle.exit_diameter"]
                low = "1 m"
                high = "1200 mm"
                [claims."engine.mass"]
                at_most = "0.3 t"
                [claims.engine.chamber_pressure]
                value = "10 MPa"
                within = "10 %"
                source = "a page"
                [given]
                "engine.thrust_vacuum" = "110 kN"
                """);
        assertThat(file.cycles()).hasSize(2);
        Claim impulse = file.claims().get(0);
        assertThat(impulse.value()).hasValue(365);
        // Half of a 90 % interval is 1.645 standard deviations of a normal distribution (table value).
        assertThat(impulse.sigma()).isCloseTo(3 / 1.645, within(1e-3));
        assertThat(file.claims().get(1).low()).hasValue(1);
        assertThat(file.claims().get(1).high()).hasValue(1.2);
        assertThat(file.claims().get(2).high()).hasValue(300);
        assertThat(file.claims().get(3).path()).isEqualTo("engine.chamber_pressure");
        assertThat(file.claims().get(3).sigma()).isCloseTo(1e6 / 1.645, within(1e3));
        assertThat(file.claims().get(3).source()).isEqualTo("a page");
        assertThat(file.given()).containsEntry("engine.thrust_vacuum", "\"110 kN\"");
        assertThat(file.aboutVehicle()).isFalse();
    }

    @Test
    void theLikelihoodIsNormalAboutAValueAndFlatWithinARange() {
        ClaimsFile file = parse(
                """
                [claims."engine.isp_vacuum"]
                value = "365 s"
                within = "3 s"
                [claims."engine.area_ratio"]
                low = 40
                high = 80
                """);
        Claim impulse = file.claims().get(0);
        assertThat(impulse.logLikelihood(365, 0)).isZero();
        assertThat(impulse.logLikelihood(365 + 2 * impulse.sigma(), 0)).isCloseTo(-2, within(1e-12));
        assertThat(impulse.logLikelihood(365 + 2 * impulse.sigma(), impulse.sigma()))
                .isCloseTo(-1 - 0.5 * Math.log(2), within(1e-12));
        Claim ratio = file.claims().get(1);
        assertThat(ratio.logLikelihood(41, 0)).isZero();
        assertThat(ratio.logLikelihood(79, 0)).isZero();
        assertThat(ratio.logLikelihood(90, 0)).isLessThan(-20);
    }

    /** Half and twice a mass are as far from it; a prediction of nothing is not likely. By hand: ln 2 · 100/10/1.645 deviations. */
    @Test
    void aMassErrsByFactors() {
        Claim mass = parse(
                        """
                [claims."engine.mass"]
                value = "100 kg"
                within = "10 kg"
                """)
                .claims()
                .get(0);
        assertThat(mass.logLikelihood(50, 0)).isCloseTo(mass.logLikelihood(200, 0), within(1e-9));
        assertThat(mass.surplus(200)).isCloseTo(Math.log(2) * 100 / 10 * Claim.NINETY, within(1e-9));
        assertThat(mass.logLikelihood(200, 40)).isCloseTo(mass.logLikelihood(50, 10), within(1e-9));
        assertThat(mass.distance(100, 50)).isCloseTo(-mass.distance(100, 200), within(1e-9));
    }

    @Test
    void changesReachClaimsAndWhatIsGiven() {
        String text =
                """
                [claims."engine.isp_vacuum"]
                value = "365 s"
                within = "3 s"
                """;
        ClaimsFile file = parse(
                text,
                Map.of(
                        "claims.engine.isp_vacuum.value", "350 s",
                        "engine.thrust_vacuum", "20 kN",
                        "propellants.mixture_ratio", "3",
                        "propellants.fuel", "propane"));
        assertThat(file.claims()).hasSize(1);
        assertThat(file.claims().get(0).value()).hasValue(350);
        assertThat(file.claims().get(0).sigma()).isCloseTo(3 / 1.645, within(1e-3));
        assertThat(file.given()).containsKeys("engine.thrust_vacuum", "propellants.mixture_ratio");
        assertThat(file.fuels()).containsExactly("propane");
    }

    @Test
    void aVehicleIsBroughtInByAClaimAboutIt() {
        assertThat(parse(
                                """
                [claims."vehicle.start_mass"]
                value = "8 t"
                """)
                        .aboutVehicle())
                .isTrue();
        ClaimsFile reused = parse(
                """
                [claims."vehicle.recovery.mode"]
                value = "downrange"
                [claims."vehicle.burn_time"]
                value = "150 s"
                """);
        assertThat(reused.given()).containsEntry("vehicle.recovery.mode", "\"downrange\"");
        assertThat(reused.claims()).hasSize(1);
    }

    @Test
    void allProblemsAreToldInOneGo() {
        List<String> problems = problems(
                """
                [claims."engine.isp_vacum"]
                value = "365 s"
                [claims."engine.mass"]
                value = "300 K"
                [claims."engine.exit_diameter"]
                value = "1 m"
                at_most = "2 m"
                [claims."engine.area_ratio"]
                low = 80
                high = 40
                [claims."engine.thrust_vacuum"]
                value = "10 kN"
                witin = "1 kN"
                [given]
                "engine.chamber_presure" = "1 MPa"
                "engine.thrst" = "1 kN"
                "engine.foo" = 3
                "nozzle.area_ratio" = "40 K"
                [prior."engine.mass"]
                low = "1 kg"
                high = "2 kg"
                [prior."nozzle.area_ratio"]
                low = 40
                """);
        assertThat(String.join("\n", problems))
                .contains("claims.engine.isp_vacum is not an input or figure; did you mean \"engine.isp_vacuum\"?")
                .contains("given.\"nozzle.area_ratio\" is \"40 K\"")
                .contains("a mass such as")
                .contains(
                        "claims.engine.exit_diameter is stated by value and at_most; write value and within, or low and high, or at_least, or at_most")
                .contains("it must be above the lower end")
                .contains("did you mean within?")
                .contains("did you mean \"engine.chamber_pressure\"?")
                .contains("given.\"engine.thrst\" is \"1 kN\"; did you mean \"engine.thrust_")
                .contains("given.\"engine.foo\" is 3; write the path of an input or figure")
                .contains("prior.nozzle.area_ratio is stated by low; write low and high")
                .contains("not an input with a range");
    }
}

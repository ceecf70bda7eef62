package dev.penstock.vehicle.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.SunSynchronous;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a vehicle can be sent: heights, energies and inclinations against closed formulas and published figures. */
class TargetsTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();

    private static VehiclePlan plan(String mission) {
        String text =
                """
                name = "Somewhere"
                payload = "1 t"
                [mission]
                %s
                [mission.losses]
                gravity = "1200 m/s"
                [[stage]]
                isp = "310 s"
                thrust = "900 kN"
                mixture_ratio = 2.3
                oxidizer_density = "1140 kg/m³"
                fuel_density = "810 kg/m³"
                engines = 1
                [stage.dry_mass]
                structural_coefficient = 0.08
                """
                        .formatted(mission.replace("; ", "\n"));
        return new VehicleReader(FLUIDS).parse(Path.of("somewhere.toml"), text, Map.of());
    }

    private static AscentMission mission(String text) {
        return plan(text).ascent().orElseThrow().mission();
    }

    private static double term(VehiclePlan plan, String name) {
        return plan.mission().terms().stream()
                .filter(term -> term.name().equals(name))
                .mapToDouble(DeltaVBudget.Term::value)
                .sum();
    }

    /**
     * Inclinations by height (km): 758.63 km and 98.43 deg are example 4.7 of [curtis-2014], from memory; the others are figures
     * common in the trade, from memory.
     */
    @ParameterizedTest
    @CsvSource({"758.63, 98.43, 0.02", "500, 97.40, 0.03", "800, 98.60, 0.03"})
    void theInclinationOfASunSynchronousOrbitFollowsFromItsHeight(double height, double inclination, double tolerance) {
        assertThat(Math.toDegrees(SunSynchronous.inclination(Target.circular(height * 1e3))
                        .orElseThrow()))
                .isCloseTo(inclination, within(tolerance));
        assertThat(Math.toDegrees(mission("orbit_altitude = \"%s km\"; sun_synchronous = true".formatted(height))
                        .inclination()))
                .isCloseTo(inclination, within(tolerance));
    }

    @Test
    void soHighAnOrbitTurnsTooSlowly() {
        // the highest that turns with the sun lies near 5970 km; from memory
        assertThat(SunSynchronous.inclination(Target.circular(5900e3))).isPresent();
        assertThat(SunSynchronous.inclination(Target.circular(6050e3))).isEmpty();
    }

    /** An ellipse to the height of a geostationary orbit: 10.25 km/s at 185 km, 2.46 km/s above the circular speed; by hand. */
    @Test
    void anEllipseIsEnteredAtItsPerigeeOrFromAParkingOrbit() {
        String ellipse = "perigee_altitude = \"185 km\"; apogee_altitude = \"35786 km\"";
        VehiclePlan direct = plan(ellipse);
        assertThat(term(direct, "orbital speed")).isCloseTo(10252, within(1.0));
        assertThat(direct.ascent().orElseThrow().insertionFree()).isFalse();
        assertThat(direct.ascent().orElseThrow().mission().insertionAltitude()).isEqualTo(185e3);
        VehiclePlan parked = plan(ellipse + "; parking_coast = \"20 min\"");
        assertThat(term(parked, "orbital speed")).isCloseTo(Planet.EARTH.circularSpeed(185e3), within(1e-6));
        assertThat(term(parked, "second burn")).isCloseTo(2459, within(1.0));
        assertThat(parked.mission().total()).isCloseTo(direct.mission().total(), within(1e-6));
        assertThat(parked.ascent().orElseThrow().mission().parkingCoast()).hasValue(1200);
    }

    /** What raises the perigee at the apogee is what the speeds there differ by. */
    @Test
    void aHighPerigeeIsRaisedAtTheApogee() {
        VehiclePlan plan = plan("perigee_altitude = \"1000 km\"; apogee_altitude = \"20000 km\"");
        assertThat(term(plan, "raising the perigee"))
                .isCloseTo(Planet.EARTH.speed(20e6, 1e6, 20e6) - Planet.EARTH.speed(20e6, 200e3, 20e6), within(1e-6));
        assertThat(plan.ascent().orElseThrow().insertionFree()).isTrue();
    }

    /** v² = 2μ/r + C3. */
    @Test
    void anEscapeIsEnteredByItsEnergy() {
        VehiclePlan plan = plan("c3 = \"10 km²/s²\"");
        double circular = Planet.EARTH.circularSpeed(200e3);
        assertThat(term(plan, "orbital speed")).isCloseTo(Math.sqrt(2 * circular * circular + 10e6), within(1e-6));
        assertThat(plan.ascent().orElseThrow().mission().target()).isEqualTo(new Target.Escape(10e6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    perigee_altitude = "200 km" | apogee_altitude | an elliptic orbit needs
                    perigee_altitude = "900 km"; apogee_altitude = "300 km" | apogee_altitude | must not be below the perigee of 900 km
                    orbit_altitude = "300 km"; c3 = "1 km²/s²" | c3 | one of orbit_altitude
                    c3 = "-1 km²/s²" | c3 | 0
                    c3 = "1 km²/s²"; sun_synchronous = true | sun_synchronous | only an orbit by its height
                    orbit_altitude = "9000 km"; sun_synchronous = true | sun_synchronous | turns too slowly
                    orbit_altitude = "700 km"; sun_synchronous = true; inclination = "98 deg" | inclination | leave one of the two out
                    orbit_altitude = "700 km"; sun_synchronous = true; latitude = "83 deg" | sun_synchronous | not reached from a latitude
                    orbit_altitude = "150 km"; parking_coast = "10 min" | parking_coast | a target above the parking orbit
                    perigee_altitude = "200 km"; apogee_altitude = "900 km"; insertion_altitude = "300 km" | insertion_altitude | not be above
                    """)
    void whatCannotBeIsSaidInOneSentence(String mission, String key, String why) {
        assertThatThrownBy(() -> plan(mission))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("mission." + key)
                .hasMessageContaining(why);
    }
}

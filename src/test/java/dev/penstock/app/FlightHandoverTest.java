package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orekit.bodies.CelestialBody;
import org.orekit.data.DataSource;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.files.ccsds.ndm.ParserBuilder;
import org.orekit.files.ccsds.ndm.odm.oem.Oem;
import org.orekit.files.ccsds.ndm.odm.oem.OemSegment;
import org.orekit.frames.Frame;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;
import org.orekit.utils.TimeStampedPVCoordinates;

/** A flight in the hands of other programs. */
class FlightHandoverTest {

    @TempDir
    private static Path folder;

    private static JsonNode vehicle;
    private static JsonNode flight;

    @BeforeAll
    static void fly() {
        List<String> words = new ArrayList<>(List.of(
                "size",
                "skerry-boosted",
                "--fly",
                "--json",
                "--altitudes",
                "250km,900km",
                "--inclinations",
                "12deg,60deg"));
        for (String name : List.of("flight.csv", "flight.oem", "flight.xml")) {
            words.addAll(List.of("--trajectory", folder.resolve(name).toString()));
        }
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        vehicle = run.document();
        flight = vehicle.get("flight");
    }

    /** The document alone, another integration: the same place, speed, time and mass at the end. */
    @Test
    void theFlightIsFlownAgainFromItsDocument() {
        Refly again = new Refly(flight).toOrbit();
        JsonNode last = event("insertion");
        assertThat(again.uncovered())
                .isCloseTo(event("fairing overboard").get("time_s").doubleValue(), within(0.05));
        assertThat(again.time()).isCloseTo(last.get("time_s").doubleValue(), within(0.05));
        assertThat(again.altitude()).isCloseTo(last.get("altitude_m").doubleValue(), within(50.0));
        assertThat(again.speed()).isCloseTo(last.get("inertial_speed_m_s").doubleValue(), within(0.5));
        assertThat(again.mass()).isCloseTo(last.get("mass_kg").doubleValue(), within(20.0));
    }

    /** The same for an escape with a coast and a second burn, whose path never closes. */
    @Test
    void aSecondBurnIsFlownAgainFromItsDocument() throws IOException {
        Path file = folder.resolve("away.toml");
        Files.writeString(file, AWAY);
        Run run = Run.of("size", file.toString(), "--fly", "--json");
        assertThat(run.code()).as(run.err()).isZero();
        JsonNode away = run.document().get("flight");
        Refly again = new Refly(away).toOrbit();
        JsonNode last = event(away, "target reached");
        assertThat(again.time()).isCloseTo(last.get("time_s").doubleValue(), within(0.05));
        assertThat(again.altitude()).isCloseTo(last.get("altitude_m").doubleValue(), within(100.0));
        assertThat(again.speed()).isCloseTo(last.get("inertial_speed_m_s").doubleValue(), within(0.5));
        assertThat(again.mass()).isCloseTo(last.get("mass_kg").doubleValue(), within(20.0));
        assertThat(event(away, "cut-off").get("time_s").doubleValue() + 900)
                .isCloseTo(away.get("second_burn_s").doubleValue(), within(1e-6));
        Run other = Run.of("size", file.toString(), "--fly", "--altitudes", "300km");
        assertThat(other.code()).isNotZero();
        assertThat(other.err()).contains("--altitudes").contains("circular orbit");
    }

    /** A vehicle of stated engines that leaves for good, by way of a parking orbit. */
    static final String AWAY =
            """
            name = "Away"
            payload = "2 t"
            [mission]
            c3 = "5 km²/s²"
            parking_coast = "15 min"
            latitude = "20 deg"
            [[stage]]
            name = "lower"
            isp = "310 s"
            thrust = "3600 kN"
            exit_area = "3.5 m²"
            mixture_ratio = 2.3
            oxidizer_density = "1140 kg/m³"
            fuel_density = "810 kg/m³"
            engines = 1
            [stage.dry_mass]
            structural_coefficient = 0.08
            [[stage]]
            name = "upper"
            isp = "450 s"
            thrust = "300 kN"
            exit_area = "1.5 m²"
            mixture_ratio = 6
            oxidizer_density = "1140 kg/m³"
            fuel_density = "71 kg/m³"
            engines = 1
            [stage.dry_mass]
            structural_coefficient = 0.1
            """;

    private static JsonNode event(String name) {
        return event(flight, name);
    }

    private static JsonNode event(JsonNode flight, String name) {
        for (JsonNode event : flight.get("events")) {
            if (event.get("event").asText().equals(name)) {
                return event;
            }
        }
        throw new AssertionError(name);
    }

    @Test
    void eventsComeInTheOrderOfTimeAndNoneIsMissing() {
        List<String> names = new ArrayList<>();
        double before = 0;
        for (JsonNode event : flight.get("events")) {
            names.add(event.get("event").asText());
            assertThat(event.get("time_s").doubleValue()).isGreaterThanOrEqualTo(before);
            before = event.get("time_s").doubleValue();
        }
        assertThat(names).contains("release", "tilt", "max q", "ignition", "burnout", "staging", "insertion");
        double most = 0;
        for (JsonNode point : flight.get("points")) {
            assertThat(point.get("part").asText()).isNotEmpty();
            // the definition of the drag: q C_D A, C_D at most the largest of the table
            assertThat(point.get("drag_N").doubleValue())
                    .isLessThanOrEqualTo(point.get("dynamic_pressure_Pa").doubleValue()
                            * flight.at("/drag/reference_area_m2").doubleValue()
                            * 0.521);
            most = Math.max(most, point.get("ambient_pressure_Pa").doubleValue());
        }
        // standard atmosphere on the ground
        assertThat(most).isCloseTo(101_325, within(1.0));
        assertThat(flight.at("/boosters/residual_each_kg").doubleValue()).isPositive();
        assertThat(flight.get("engines").findValuesAsText("name"))
                .contains(flight.at("/boosters/engine").asText());
    }

    @Test
    void theGroundTrackBeginsAtTheSiteAndKeepsToTheInclination() {
        JsonNode track = flight.get("ground_track");
        assertThat(track.get(0).get("latitude_rad").doubleValue())
                .isCloseTo(flight.get("launch_latitude_rad").doubleValue(), within(1e-9));
        assertThat(track.get(0).get("longitude_from_site_rad").doubleValue()).isCloseTo(0, within(1e-12));
        double inclination = flight.get("inclination_rad").doubleValue();
        for (JsonNode point : track) {
            assertThat(Math.abs(point.get("latitude_rad").doubleValue())).isLessThanOrEqualTo(inclination + 1e-12);
        }
        assertThat(track.get(track.size() - 1).get("longitude_from_site_rad").doubleValue())
                .isBetween(0.05, 1.5);
    }

    /**
     * A kilogram in the last stage is a kilogram of payload, and one below is worth less the lower it lies: identities of the rocket
     * equation. More thrust at the same impulse loses less to gravity.
     */
    @Test
    void thePayloadsDerivativesHaveTheirKnownValues() {
        JsonNode partials = Run.of("size", "skerry", "--fly", "--json").json().get("payload_partials");
        assertThat(partials).hasSize(2);
        assertThat(vehicle.at("/payload_partials/0/by_dry_mass").doubleValue()).isCloseTo(-1, within(1e-9));
        JsonNode first = partials.get(0);
        JsonNode last = partials.get(partials.size() - 1);
        assertThat(last.get("by_dry_mass").doubleValue()).isCloseTo(-1, within(1e-9));
        assertThat(first.get("by_dry_mass").doubleValue()).isBetween(-0.6, -0.02);
        assertThat(first.get("by_thrust_kg_N").doubleValue()).isPositive();
        for (JsonNode stage : partials) {
            assertThat(stage.get("by_isp_kg_s").doubleValue()).isPositive();
        }
    }

    /** The vehicle's own orbit takes its own payload; a higher and a steeper one less. */
    @Test
    void otherOrbitsTakeLess() {
        assertThat(vehicle.get("orbits")).hasSize(4);
        double own = vehicle.at("/orbits/0/payload_kg").doubleValue();
        assertThat(own).isCloseTo(vehicle.get("payload_kg").doubleValue(), within(30.0));
        assertThat(vehicle.at("/orbits/1/payload_kg").doubleValue()).isLessThan(own);
        assertThat(vehicle.at("/orbits/2/payload_kg").doubleValue()).isLessThan(own);
    }

    /** Orekit, an independent reader of the standard, gives back every place to a millimetre. */
    @ParameterizedTest
    @ValueSource(strings = {"flight.oem", "flight.xml"})
    void theEphemerisIsReadBackByAnIndependentReader(String name) throws Exception {
        LazyLoadedDataContext context = new LazyLoadedDataContext();
        // TAI less UTC since 2017: 37 s [BIPM]; only the date of creation is in UTC
        context.getTimeScales()
                .addUTCTAIOffsetsLoader(() -> List.of(
                        new OffsetModel(new DateComponents(1972, 1, 1), 10),
                        new OffsetModel(new DateComponents(2017, 1, 1), 37)));
        // the message names its centre; nothing is asked of it, so that no table of planets is needed
        CelestialBody earth = (CelestialBody) Proxy.newProxyInstance(
                CelestialBody.class.getClassLoader(),
                new Class<?>[] {CelestialBody.class},
                (proxy, method, arguments) -> method.getReturnType() == double.class
                        ? 0.0
                        : method.getReturnType() == Frame.class
                                ? context.getFrames().getGCRF()
                                : method.getReturnType() == String.class ? "Earth" : null);
        context.getCelestialBodies().addCelestialBodyLoader("Earth", body -> earth);
        Oem oem = new ParserBuilder(context)
                .buildOemParser()
                .parseMessage(new DataSource(folder.resolve(name).toString()));
        OemSegment segment = oem.getSegments().get(0);
        assertThat(segment.getMetadata().getObjectName()).containsIgnoringCase("skerry");
        List<TimeStampedPVCoordinates> read = segment.getData().getEphemeridesDataLines();
        AbsoluteDate release =
                new AbsoluteDate("2000-01-01T12:00:00", context.getTimeScales().getTAI());

        List<String> lines = Files.readAllLines(folder.resolve("flight.csv"));
        List<String> keys = List.of(lines.get(0).split(","));
        int next = 0;
        double before = -1;
        for (String line : lines.subList(1, lines.size())) {
            Map<String, Double> row = numbers(keys, line.split(","));
            if (row.get("time_s") - before <= 2e-9) {
                continue;
            }
            before = row.get("time_s");
            TimeStampedPVCoordinates there = read.get(next++);
            assertThat(there.getDate().durationFrom(release)).isCloseTo(before, within(2e-9));
            assertThat(there.getPosition().getX()).isCloseTo(row.get("x_m"), within(1e-3));
            assertThat(there.getPosition().getY()).isCloseTo(row.get("y_m"), within(1e-3));
            assertThat(there.getPosition().getZ()).isCloseTo(row.get("z_m"), within(1e-3));
            assertThat(there.getVelocity().getNorm()).isCloseTo(row.get("inertial_speed_m_s"), within(1e-3));
        }
        assertThat(next).isEqualTo(read.size()).isGreaterThan(100);
    }

    private static Map<String, Double> numbers(List<String> keys, String[] cells) {
        Map<String, Double> map = new HashMap<>();
        for (int i = 0; i < cells.length; i++) {
            if (cells[i].matches("-?\\d.*")) {
                map.put(keys.get(i), Double.parseDouble(cells[i]));
            }
        }
        return map;
    }

    @Test
    void aTrajectoryNeedsAFlightAndAKnownEnding() {
        Run run = Run.of("size", "skerry", "--trajectory", "x.txt", "--release", "noon");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems()).hasSize(3).anyMatch(p -> p.contains("it needs --fly"));
    }
}
